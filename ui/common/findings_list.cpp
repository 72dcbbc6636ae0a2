#include "ui/common/findings_list.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int pad_px = 10;
constexpr int mark_px = 16;
constexpr int gap_px = 3;
constexpr double small_print_pt = 9.0;

int text_height(const QFont& font, const QString& text, int width) {
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text).height();
}

}  // namespace

FindingDelegate::FindingDelegate(QListView* view) : QStyledItemDelegate(view), view_(view) {}

int FindingDelegate::lay_out(const Finding& finding, const QRect& area, const QFont& font, QPainter* painter) const {
    const Theme& theme = current_theme();
    QFont strong = font;
    strong.setWeight(QFont::DemiBold);
    QFont small = font;
    small.setPointSizeF(small_print_pt);
    const Mark mark = mark_of(finding.severity);
    const int left = area.left() + pad_px;
    const int text_left = left + mark_px + 8;
    const int width = area.right() - pad_px - text_left;
    int y = area.top() + pad_px - 2;

    const QString severity = word_of(mark);
    const int head_height = QFontMetrics(strong).height();
    if (painter != nullptr) {
        paint_mark(*painter, QRectF(left, y + (head_height - mark_px) / 2.0, mark_px, mark_px), mark, theme);
        painter->setFont(strong);
        painter->setPen(colour_of(mark, theme));
        painter->drawText(QRect(text_left, y, width, head_height), Qt::AlignLeft | Qt::AlignVCenter, severity);
        const int used = QFontMetrics(strong).horizontalAdvance(severity) + 8;
        int room = width - used;
        if (has_working && has_working(finding)) {
            const QRect link = link_box(area, font);
            painter->setFont(small);
            painter->setPen(theme.accent);
            painter->drawText(link, Qt::AlignRight | Qt::AlignVCenter, tr("show working"));
            painter->setFont(strong);
            room -= link.width() + 8;
        }
        painter->setPen(theme.text);
        const QString place = QFontMetrics(strong).elidedText(qs(finding.place), Qt::ElideRight, room);
        painter->drawText(QRect(text_left + used, y, room, head_height), Qt::AlignLeft | Qt::AlignVCenter, place);
    }
    y += head_height + gap_px;
    const auto paragraph = [&](const QFont& with, const QColor& colour, const QString& text) {
        if (text.isEmpty()) return;
        const int height = text_height(with, text, width);
        if (painter != nullptr) {
            painter->setFont(with);
            painter->setPen(colour);
            painter->drawText(QRect(text_left, y, width, height), Qt::TextWordWrap, text);
        }
        y += height + gap_px;
    };
    paragraph(font, theme.text, with_signs(finding.message));
    if (!finding.remedy.empty()) paragraph(font, theme.ready, with_signs(finding.remedy));
    paragraph(small, theme.muted, with_signs(finding.rule));
    return y - area.top() + pad_px - gap_px - 2;
}

QRect FindingDelegate::link_box(const QRect& row, const QFont& font) const {
    QFont strong = font;
    strong.setWeight(QFont::DemiBold);
    QFont small = font;
    small.setPointSizeF(small_print_pt);
    const int width = QFontMetrics(small).horizontalAdvance(tr("show working")) + 4;
    return {row.right() - pad_px - width, row.top() + pad_px - 2, width, QFontMetrics(strong).height()};
}

bool FindingDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                                  const QModelIndex& index) {
    const auto* findings = qobject_cast<const FindingsModel*>(index.model());
    const Finding* finding = findings != nullptr ? findings->finding(index) : nullptr;
    if (finding != nullptr && has_working && event->type() == QEvent::MouseButtonRelease) {
        const auto* click = static_cast<QMouseEvent*>(event);
        // A little more than the words: a thumb on a tablet is no needle.
        const QRect target = link_box(option.rect, option.font).adjusted(-6, -8, 8, 8);
        if (click->button() == Qt::LeftButton && target.contains(click->position().toPoint()) &&
            has_working(*finding)) {
            Q_EMIT working_asked(*finding);
            return true;
        }
    }
    return QStyledItemDelegate::editorEvent(event, model, option, index);
}

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* model = qobject_cast<const FindingsModel*>(index.model());
    const Finding* finding = model != nullptr ? model->finding(index) : nullptr;
    if (finding == nullptr) return;
    const Theme& theme = current_theme();
    painter->save();
    if (option.state.testFlag(QStyle::State_Selected) || option.state.testFlag(QStyle::State_MouseOver)) {
        QColor tint = theme.accent;
        tint.setAlphaF(option.state.testFlag(QStyle::State_Selected) ? 0.14F : 0.06F);
        painter->fillRect(option.rect, tint);
    }
    lay_out(*finding, option.rect, option.font, painter);
    painter->setPen(QPen(theme.rule_line, 1));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(theme.accent, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* model = qobject_cast<const FindingsModel*>(index.model());
    const Finding* finding = model != nullptr ? model->finding(index) : nullptr;
    if (finding == nullptr) return {};
    const int width = view_->viewport()->width();
    return {width, lay_out(*finding, QRect(0, 0, width, 0), option.font, nullptr)};
}

FindingsList::FindingsList(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 0, 12, 0);
    auto* title = new QLabel(tr("Findings"), this);
    title->setProperty("role", QStringLiteral("title"));
    count_ = new QLabel(this);
    count_->setProperty("role", QStringLiteral("muted"));
    count_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    head->addWidget(title);
    head->addWidget(count_, 1);
    column->addLayout(head);

    model_ = new FindingsModel(this);
    view_ = new QListView(this);
    view_->setAccessibleName(tr("Findings"));
    view_->setModel(model_);
    delegate_ = new FindingDelegate(view_);
    delegate_->has_working = [this](const Finding& finding) { return working_of(workings_, finding).has_value(); };
    connect(delegate_, &FindingDelegate::working_asked, this, &FindingsList::working_asked);
    view_->setItemDelegate(delegate_);
    view_->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(view_, &QWidget::customContextMenuRequested, this, &FindingsList::show_menu);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setStyleSheet(QStringLiteral("QListView { border: none; border-radius: 0; }"));
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view_->setResizeMode(QListView::Adjust);
    view_->setMouseTracking(true);
    view_->installEventFilter(this);
    column->addWidget(view_, 1);

    instead_ = new QLabel(this);
    instead_->setWordWrap(true);
    instead_->setMargin(12);
    instead_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    instead_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column->addWidget(instead_, 1);

    connect(view_, &QListView::activated, this, [this](const QModelIndex& index) {
        if (const Finding* finding = model_->finding(index)) {
            Q_EMIT activated(qs(finding->place_id), finding->stage);
        }
    });
    refresh();
}

void FindingsList::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::plan_changed, this, &FindingsList::refresh);
        connect(session_, &JobSession::planning_changed, this, &FindingsList::refresh);
    }
    refresh();
}

void FindingsList::refresh() {
    const plan::Plan* plan = session_ != nullptr ? session_->plan().get() : nullptr;
    QString text;
    if (session_ == nullptr) {
        text = tr("No job is open.");
    } else if (plan != nullptr) {
        workings_ = grouped_workings(*plan);
        model_->set_findings(plan->findings);
        if (plan->findings.empty()) text = tr("Nothing stands against this plan.");
    } else if (!session_->plan_problem().isEmpty()) {
        text = session_->plan_problem();
    } else {
        text = tr("The first plan is being made.");
    }
    if (plan == nullptr) model_->set_findings({});
    instead_->setText(text);
    instead_->setVisible(!text.isEmpty());
    view_->setVisible(text.isEmpty());
    count_->setText(plan != nullptr ? count_text(plan->findings) : QString());
}

const Finding* FindingsList::focused_with_working() const {
    if (!view_->hasFocus()) return nullptr;
    const Finding* finding = model_->finding(view_->currentIndex());
    return finding != nullptr && working_of(workings_, *finding) ? finding : nullptr;
}

void FindingsList::show_menu(const QPoint& at) {
    const Finding* under = model_->finding(view_->indexAt(at));
    if (under == nullptr) return;
    const Finding finding = *under;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(tr("Go to the place"), this,
                    [this, finding] { Q_EMIT activated(qs(finding.place_id), finding.stage); });
    QAction* working = menu->addAction(tr("Show working"), this, [this, finding] { Q_EMIT working_asked(finding); });
    working->setEnabled(working_of(workings_, finding).has_value());
    menu->addAction(tr("Copy"), this, [finding] { QApplication::clipboard()->setText(finding_text(finding)); });
    menu->popup(view_->viewport()->mapToGlobal(at));
}

bool FindingsList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == view_ && event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        const Finding* finding = model_->finding(view_->currentIndex());
        if (finding != nullptr && key->matches(QKeySequence::Copy)) {
            QApplication::clipboard()->setText(finding_text(*finding));
            return true;
        }
        // Item views leave Enter to the platform; here it always leads to the place.
        if (finding != nullptr && (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter)) {
            Q_EMIT activated(qs(finding->place_id), finding->stage);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace wg::ui
