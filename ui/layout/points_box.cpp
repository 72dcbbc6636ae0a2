#include "ui/layout/points_box.h"

#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int most_points_seen = 5;
constexpr int use_mark_px = 14;
constexpr int point_pad_px = 6;
constexpr double point_small_pt = 9.0;
enum PointRole { role_head = Qt::UserRole, role_use, role_forces, role_governed, role_mark };

Mark mark_of_use(double utilisation) {
    if (utilisation > 1.0) return Mark::stop;
    return utilisation > 0.9 ? Mark::caution : Mark::ready;
}

QFont bold_of(QFont font) {
    font.setWeight(QFont::DemiBold);
    return font;
}

QFont small_of(QFont font) {
    font.setPointSizeF(point_small_pt);
    return font;
}

}  // namespace

QSize PointDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {0, QFontMetrics(bold_of(option.font)).height() + 2 * QFontMetrics(small_of(option.font)).height() +
                   2 * point_pad_px};
}

void PointDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Theme& theme = current_theme();
    painter->save();
    if (option.state.testFlag(QStyle::State_Selected) || option.state.testFlag(QStyle::State_MouseOver)) {
        QColor tint = theme.accent;
        tint.setAlphaF(option.state.testFlag(QStyle::State_Selected) ? 0.14F : 0.06F);
        painter->fillRect(option.rect, tint);
    }
    const QRect inner = option.rect.adjusted(8, point_pad_px, -8, -point_pad_px);
    const QFont bold = bold_of(option.font);
    const QFont small = small_of(option.font);
    const int head = QFontMetrics(bold).height();
    const int line = QFontMetrics(small).height();
    const auto mark = static_cast<Mark>(index.data(role_mark).toInt());
    paint_mark(*painter, QRectF(inner.left(), inner.top() + (head - use_mark_px) / 2.0, use_mark_px, use_mark_px), mark,
               theme);
    const int left = inner.left() + use_mark_px + 6;
    const int width = inner.right() - left;
    painter->setFont(bold);
    painter->setPen(theme.text);
    painter->drawText(QRect(left, inner.top(), width, head), Qt::AlignLeft | Qt::AlignVCenter,
                      index.data(role_head).toString());
    painter->setPen(colour_of(mark, theme));
    painter->drawText(QRect(left, inner.top(), width, head), Qt::AlignRight | Qt::AlignVCenter,
                      index.data(role_use).toString());
    painter->setFont(small);
    painter->setPen(theme.text);
    painter->drawText(QRect(left, inner.top() + head, width, line), Qt::AlignLeft | Qt::AlignVCenter,
                      index.data(role_forces).toString());
    painter->setPen(theme.muted);
    painter->drawText(QRect(left, inner.top() + head + line, width, line), Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(small).elidedText(index.data(role_governed).toString(), Qt::ElideRight, width));
    painter->setPen(QPen(theme.rule_line, 1));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(theme.accent, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    painter->restore();
}

PointsBox::PointsBox(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    auto* title = heading_label(tr("Fixing points"), this);
    column->addWidget(title);
    none_ = new QLabel(tr("No fixing point is worked out on this surface."), this);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    column->addWidget(none_);
    list_ = new QListWidget(this);
    list_->setItemDelegate(new PointDelegate(list_));
    list_->setAccessibleName(tr("Fixing points"));
    list_->setAccessibleDescription(tr("Enter shows how the point's use was reached"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setResizeMode(QListView::Adjust);
    list_->setMouseTracking(true);
    column->addWidget(list_);
    working_ = new QPushButton(tr("Show working"), this);
    working_->setToolTip(tr("How the use of the selected point was reached"));
    column->addWidget(working_);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row < 0 || row >= static_cast<int>(rows_.size())) return;
        const Row& chosen = rows_[static_cast<std::size_t>(row)];
        Q_EMIT point_chosen(qs(chosen.placement_id), chosen.number);
    });
    connect(list_, &QListWidget::itemActivated, this, [this] { ask(); });
    connect(working_, &QPushButton::clicked, this, &PointsBox::ask);
    refresh();
}

void PointsBox::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::plan_changed, this, &PointsBox::refresh);
        connect(session_, &JobSession::choice_changed, this, &PointsBox::refresh);
    }
    refresh();
}

void PointsBox::show_surface(const std::string& surface_id) {
    if (surface_id_ == surface_id) return;
    surface_id_ = surface_id;
    refresh();
}

void PointsBox::mark(const std::string& placement_id, int number) {
    const auto at = std::find(rows_.begin(), rows_.end(), Row{placement_id, number});
    if (at == rows_.end()) return;
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(static_cast<int>(at - rows_.begin()));
}

void PointsBox::ask() {
    if (rows_.empty()) return;
    const int row = std::clamp(list_->currentRow(), 0, static_cast<int>(rows_.size()) - 1);
    const Row& chosen = rows_[static_cast<std::size_t>(row)];
    Q_EMIT working_asked(qs(chosen.placement_id), chosen.number);
}

void PointsBox::refresh() {
    const auto plan = session_ != nullptr ? session_->plan() : nullptr;
    const int current = list_->currentRow();
    const QSignalBlocker quiet(list_);
    const QString kn = QStringLiteral("kN");
    rows_.clear();
    // A drag comes by here with every plan: items stay and take new words.
    const auto put = [this](const plan::PlacementPlan& placed, const fixing::FixingPoint& p, const QString& forces) {
        const auto row = static_cast<int>(rows_.size());
        rows_.push_back({placed.placement_id, p.number});
        QListWidgetItem* item = list_->item(row);
        if (item == nullptr) item = new QListWidgetItem(list_);
        const QString governed = tr("governed by %1").arg(qs(p.worst_combination));
        const bool worst = p.number == placed.fixing.worst_point;
        const QString head = tr("Point %1").arg(p.number);
        const QString use = (worst ? tr("worst, %1 used") : tr("%1 used")).arg(percent(p.utilisation));
        item->setData(role_head, head);
        item->setData(role_use, use);
        item->setData(role_forces, forces);
        item->setData(role_governed, tr("by %1").arg(qs(p.worst_combination)));
        item->setData(role_mark, static_cast<int>(mark_of_use(p.utilisation)));
        const QString all = QStringLiteral("%1, %2, %3, %4, %5").arg(head, qs(placed.label), use, forces, governed);
        item->setData(Qt::AccessibleTextRole, all);
        item->setToolTip(all);
    };
    if (plan != nullptr) {
        for (const plan::PlacementPlan& placed : plan->placements) {
            if (placed.surface_id != surface_id_) continue;
            for (const fixing::FixingPoint& p : placed.fixing.points)
                put(placed, p,
                    tr("pull %1, shear %2")
                        .arg(quantity(p.pull_n / 1000.0, kn, 2), quantity(p.shear_n / 1000.0, kn, 2)));
        }
    }
    const auto count = static_cast<int>(rows_.size());
    while (list_->count() > count)
        delete list_->takeItem(list_->count() - 1);
    if (current >= 0 && current < count) list_->setCurrentRow(current);
    none_->setVisible(count == 0);
    list_->setVisible(count > 0);
    working_->setVisible(count > 0);
    if (count > 0) list_->setFixedHeight(std::min(count, most_points_seen) * list_->sizeHintForRow(0) + 4);
}

}  // namespace wg::ui
