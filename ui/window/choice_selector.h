#pragma once
// Which choice of the job is on screen, and what can be done with it.

#include <QComboBox>
#include <QPointer>
#include <QWidget>

class QLineEdit;
class QMenu;
class QToolButton;

namespace wg::ui {

class JobSession;

/// A combo box that cuts its text with an ellipsis where it does not fit.
class ElidedCombo : public QComboBox {
    Q_OBJECT
   public:
    using QComboBox::QComboBox;

   protected:
    void paintEvent(QPaintEvent* event) override;
};

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
    ElidedCombo* choices_ = nullptr;
    QToolButton* more_ = nullptr;
    QMenu* menu_ = nullptr;
    QLineEdit* rename_ = nullptr;
    QList<QAction*> need_choice_;
    QAction* mark_ = nullptr;
};

}  // namespace wg::ui
