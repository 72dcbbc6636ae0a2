#pragma once
// The findings of the current plan: what stands against it, where, and what would mend it.

#include <QListView>
#include <QPointer>
#include <QStyledItemDelegate>
#include <QWidget>
#include <functional>
#include <vector>

#include "core/findings/finding.h"
#include "ui/common/findings_model.h"
#include "ui/common/working_groups.h"

class QLabel;

namespace wg::ui {

class JobSession;

/// Paints one finding: shape and word of the severity, place, message, remedy, rule; wrapped to the view's width.
class FindingDelegate : public QStyledItemDelegate {
    Q_OBJECT
   public:
    explicit FindingDelegate(QListView* view);
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    /// Whether a finding offers its working; without it none does.
    std::function<bool(const Finding&)> has_working;

   Q_SIGNALS:
    void working_asked(const wg::Finding& finding);

   protected:
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;

   private:
    /// Where 'show working' stands in a finding's row.
    [[nodiscard]] QRect link_box(const QRect& row, const QFont& font) const;
    /// Lays the texts out in a width; paints them when there is a painter. Returns the height needed.
    int lay_out(const Finding& finding, const QRect& area, const QFont& font, QPainter* painter) const;

    QListView* view_;
};

class FindingsList : public QWidget {
    Q_OBJECT
   public:
    explicit FindingsList(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    [[nodiscard]] QListView* view() { return view_; }
    /// The current finding while the list has the focus and it has a working.
    [[nodiscard]] const Finding* focused_with_working() const;

   Q_SIGNALS:
    void working_asked(const wg::Finding& finding);
    /// A finding was double clicked or Enter pressed on it.
    void activated(const QString& place_id, wg::Stage stage);

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    void refresh();

    QPointer<JobSession> session_;
    void show_menu(const QPoint& at);

    FindingsModel* model_ = nullptr;
    FindingDelegate* delegate_ = nullptr;
    std::vector<WorkingGroup> workings_;  ///< of the plan shown
    QListView* view_ = nullptr;
    QLabel* count_ = nullptr;
    QLabel* instead_ = nullptr;  ///< shown when there is nothing to list
};

}  // namespace wg::ui
