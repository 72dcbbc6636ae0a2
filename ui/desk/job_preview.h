#pragma once
// Beside the desk's table: the selected job at a glance.

#include <QFrame>
#include <optional>
#include <vector>

#include "core/job/job.h"
#include "core/store/state_days.h"
#include "ui/desk/next_due.h"

class QLabel;
class QPushButton;
class QStackedLayout;

namespace wg::ui {

class EmptyPane;

/// The site sketch, fitted to the widget.
class SketchThumbnail : public QWidget {
    Q_OBJECT
   public:
    explicit SketchThumbnail(QWidget* parent = nullptr);
    void set_job(const Job& job);

   protected:
    void paintEvent(QPaintEvent* event) override;

   private:
    Job job_;
};

class JobPreview : public QFrame {
    Q_OBJECT
   public:
    explicit JobPreview(QWidget* parent = nullptr);
    /// `days`: of its states, oldest first; empty: not told. `customer`: what leads to the client's; empty: nothing.
    void show_job(const Job& job, const NextDue& due, const std::vector<store::StateDay>& days = {},
                  const QString& customer = {});
    [[nodiscard]] QPushButton* customer_button() const { return customer_; }
    /// Nothing is selected; `empty_desk`: because there is no job at all.
    void show_nothing(bool empty_desk);

   Q_SIGNALS:
    void open_asked();
    void remove_asked();
    void new_asked();
    void customer_asked();

   private:
    QLabel* add_line(QWidget* page, const QString& role);

    QStackedLayout* pages_ = nullptr;
    EmptyPane* nothing_ = nullptr;
    QLabel* title_ = nullptr;
    QLabel* client_ = nullptr;
    QPushButton* customer_ = nullptr;
    QLabel* state_ = nullptr;
    QLabel* due_ = nullptr;
    QLabel* invented_ = nullptr;
    SketchThumbnail* sketch_ = nullptr;
};

}  // namespace wg::ui
