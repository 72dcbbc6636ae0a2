#pragma once
// Which prices the offer is reckoned with, what of the place makes the work slower, and what the firm keeps.

#include <QPointer>
#include <QWidget>

#include "ui/common/job_session.h"

class QLabel;

namespace wg::ui {

class CalmCombo;
class NumberField;

class PlaceForm : public QWidget {
    Q_OBJECT
   public:
    explicit PlaceForm(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();

    [[nodiscard]] CalmCombo* list() const { return list_; }
    [[nodiscard]] CalmCombo* access() const { return access_; }
    [[nodiscard]] NumberField* storeys() const { return storeys_; }
    [[nodiscard]] NumberField* distance() const { return distance_; }
    [[nodiscard]] NumberField* trips() const { return trips_; }
    [[nodiscard]] QString list_words() const;
    [[nodiscard]] QString kept_words() const;

   private:
    void edit(const std::function<void(Offer&)>& change);
    void fill_lists();
    void fill_access(const parts::PriceList* list);
    [[nodiscard]] const parts::PriceList* chosen() const;

    QPointer<JobSession> session_;
    CalmCombo* list_ = nullptr;
    QLabel* list_words_ = nullptr;
    CalmCombo* access_ = nullptr;
    NumberField* storeys_ = nullptr;
    NumberField* distance_ = nullptr;
    NumberField* trips_ = nullptr;
    QLabel* kept_ = nullptr;
};

}  // namespace wg::ui
