#pragma once
// Which choice of the job is on screen, and what can be done with it.

#include <QPointer>
#include <QWidget>

class QComboBox;
class QLineEdit;
class QMenu;
class QToolButton;

namespace wg::ui {

class JobSession;

class ChoiceSelector : public QWidget {
    Q_OBJECT
   public:
    explicit ChoiceSelector(QWidget* parent = nullptr);
    void set_session(JobSession* session);

   private:
    void make_menu();
    void refresh();
    [[nodiscard]] std::string current_id() const;

    QPointer<JobSession> session_;
    QComboBox* choices_ = nullptr;
    QToolButton* more_ = nullptr;
    QMenu* menu_ = nullptr;
    QLineEdit* rename_ = nullptr;
    QList<QAction*> need_choice_;
    QAction* mark_ = nullptr;
};

}  // namespace wg::ui
