#pragma once
// Services that fall due, the visit that does them, and the warranty.

#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/aftercare/service.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class JobSession;
class ServiceVisit;

class ServicePage : public QWidget {
    Q_OBJECT
   public:
    explicit ServicePage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// Of a plan that is there.
    void show_plan(const plan::Plan& plan);
    /// Adds the visit in the form to the record; false when something is missing, then said there.
    bool add_visit();
    /// The services and the warranty's end as a calendar file.
    bool save_calendar(const QString& path);
    [[nodiscard]] const std::vector<aftercare::ServiceDate>& dates() const { return dates_; }
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] ServiceVisit* form() const { return form_; }
    [[nodiscard]] QString warranty_words() const;

   Q_SIGNALS:
    void said(const QString& text);

   private:
    QWidget* make_list();
    void fill(const plan::Plan& plan);
    void fill_terms(const plan::Plan& plan);
    [[nodiscard]] std::vector<std::string> ticked() const;

    QPointer<JobSession> session_;
    std::vector<aftercare::ServiceDate> dates_;
    QLabel* started_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* warranty_ = nullptr;
    QPushButton* calendar_ = nullptr;
    ServiceVisit* form_ = nullptr;
};

}  // namespace wg::ui
