#pragma once
// What the refrigerant of this job did: charge, moves of the record, and what is in the system now.

#include <QPointer>
#include <QWidget>

#include "core/plan/plan.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class JobSession;

class JobRegister : public QWidget {
    Q_OBJECT
   public:
    explicit JobRegister(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_plan(const plan::Plan& plan);
    [[nodiscard]] QString words() const;
    [[nodiscard]] QTableWidget* table() const { return table_; }

   private:
    QPointer<JobSession> session_;
    QLabel* words_ = nullptr;
    QLabel* none_ = nullptr;
    QTableWidget* table_ = nullptr;
};

}  // namespace wg::ui
