#pragma once
// The Yield stage: year, day, comfort, sun and light, comparison, cost.

#include <QPointer>

#include "ui/common/stage_widget.h"

class QAction;
class QPushButton;
class QStackedWidget;
class QTabWidget;
class QTimer;
class QToolButton;

namespace wg::ui {

class Comparison;
class ComfortPage;
class CostPage;
class DayPage;
class EmptyPane;
class LightPage;
class NoticeBar;
class RangePage;
class SizingPage;
class YearPage;
struct FigureTable;

class YieldStage : public StageWidget {
    Q_OBJECT
   public:
    explicit YieldStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;

    /// Of the tab that is shown.
    bool save_figures(const QString& path);
    bool save_picture(const QString& path);

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

   private:
    void build_corner();
    void fit_corner();
    void refresh_soon();
    void refresh();
    void ask_and_save(bool picture);
    /// The Cost page compares choices while it is looked at: their plans are asked for and handed on.
    void compare_costs();
    [[nodiscard]] FigureTable figures_shown() const;

    QPointer<JobSession> session_;
    QTimer* timer_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    YearPage* year_ = nullptr;
    DayPage* day_ = nullptr;
    ComfortPage* comfort_ = nullptr;
    LightPage* light_ = nullptr;
    Comparison* comparison_ = nullptr;
    CostPage* cost_ = nullptr;
    RangePage* range_ = nullptr;
    SizingPage* sizing_ = nullptr;
    QPushButton* picture_ = nullptr;
    QAction* picture_action_ = nullptr;
    QWidget* buttons_ = nullptr;   ///< beside the tabs, while there is room for them
    QToolButton* more_ = nullptr;  ///< the same as a menu, where there is not
};

}  // namespace wg::ui
