#pragma once
// The run in axonometric view; follows the plan.

#include <QWidget>

namespace wg::ui {

class JobSession;

class RunView : public QWidget {
    Q_OBJECT
   public:
    explicit RunView(QWidget* parent = nullptr);
    void set_session(JobSession* session);

   protected:
    void paintEvent(QPaintEvent* event) override;

   private:
    JobSession* session_ = nullptr;
};

}  // namespace wg::ui
