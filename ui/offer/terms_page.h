#pragma once
// The terms of the offer: discount, instalments, how long it holds, the firm's words.

#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/quote/offered.h"
#include "ui/common/job_session.h"

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace wg::ui {

class NoteField;
class NumberField;
class PlaceForm;
class TextField;

class TermsPage : public QWidget {
    Q_OBJECT
   public:
    explicit TermsPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();

    [[nodiscard]] NumberField* discount() const { return discount_; }
    [[nodiscard]] NumberField* valid_days() const { return valid_; }
    [[nodiscard]] QPushButton* add_button() const { return add_; }
    [[nodiscard]] NumberField* instalment(std::size_t n) const { return rows_.at(n).percent; }
    [[nodiscard]] QString together() const;
    [[nodiscard]] PlaceForm* place() const { return place_; }
    /// One box for each other choice, in the job's order.
    [[nodiscard]] const std::vector<QCheckBox*>& beside() const { return beside_; }

   private:
    struct Row {
        std::string id;
        TextField* text = nullptr;
        NumberField* percent = nullptr;
        QLabel* sum = nullptr;
        QPushButton* remove = nullptr;
    };
    void edit(const std::function<void(Offer&)>& change);
    void make_rows(std::size_t count);
    QWidget* make_beside();
    void refresh_beside();
    QWidget* make_money();
    QWidget* make_words();

    QPointer<JobSession> session_;
    NumberField* discount_ = nullptr;
    TextField* reason_ = nullptr;
    NumberField* valid_ = nullptr;
    NoteField* covering_ = nullptr;
    NoteField* terms_ = nullptr;
    PlaceForm* place_ = nullptr;
    QWidget* beside_box_ = nullptr;
    std::vector<QCheckBox*> beside_;
    QGridLayout* grid_ = nullptr;
    std::vector<Row> rows_;
    QLabel* together_ = nullptr;
    QPushButton* add_ = nullptr;
};

}  // namespace wg::ui
