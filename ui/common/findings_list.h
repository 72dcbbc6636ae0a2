#pragma once
// The findings of the current plan: what stands against it, where, and what would mend it.

#include <QListView>
#include <QPointer>
#include <QStyledItemDelegate>
#include <QWidget>

#include "core/findings/finding.h"
#include "ui/common/findings_model.h"

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

   private:
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

   Q_SIGNALS:
    /// A finding was double clicked or Enter pressed on it.
    void activated(const QString& place_id, wg::Stage stage);

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    void refresh();

    QPointer<JobSession> session_;
    FindingsModel* model_ = nullptr;
    QListView* view_ = nullptr;
    QLabel* count_ = nullptr;
    QLabel* instead_ = nullptr;  ///< shown when there is nothing to list
};

}  // namespace wg::ui
