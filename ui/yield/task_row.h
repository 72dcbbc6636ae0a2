#pragma once
// The row above a page that is worked out on demand: button, progress, what the figures belong to.

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;

namespace wg::ui {

class BackgroundTask;

class TaskRow : public QWidget {
    Q_OBJECT
   public:
    /// `words` on the button while nothing runs.
    TaskRow(const QString& words, BackgroundTask* task, QWidget* parent);
    void set_state(const QString& words, bool caution);
    void set_enabled(bool can_start);
    /// Further controls at the right end.
    QHBoxLayout& row() { return *row_; }
    [[nodiscard]] QPushButton* button() const { return button_; }
    [[nodiscard]] QString state() const;

   Q_SIGNALS:
    void start_asked();

   public Q_SLOTS:
    /// After the task was started or has ended.
    void follow();

   private:
    BackgroundTask* task_ = nullptr;
    QHBoxLayout* row_ = nullptr;
    QPushButton* button_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* state_ = nullptr;
    QString words_;
    QString state_words_;
    bool can_start_ = true;
};

}  // namespace wg::ui
