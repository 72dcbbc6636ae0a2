#include "ui/common/ledger.h"

#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <QVBoxLayout>

#include "ui/common/job_session.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int row_height = 46;
constexpr int side_px = 12;
constexpr int gap_px = 12;  ///< between texts in one line
constexpr double small_print_pt = 9.0;

}  // namespace

LedgerRow::LedgerRow(QWidget* parent) : QAbstractButton(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_Hover);
}

void LedgerRow::set_line(const LedgerLine& line) {
    line_ = line;
    const bool has_working = !line.working_key.isEmpty();
    setEnabled(has_working);
    setCursor(has_working ? Qt::PointingHandCursor : Qt::ArrowCursor);
    QStringList said = {line.title, line.value};
    if (!line.range.isEmpty()) said.append(line.range);
    if (!line.change.isEmpty()) said.append(tr("changed by %1").arg(line.change));
    if (line.carried) said.append(tr("from before the last edit"));
    setAccessibleName(said.join(QStringLiteral(", ")));
    setAccessibleDescription(has_working ? tr("Shows the working of this figure") : QString());
    setToolTip(has_working ? tr("Show the working of '%1'").arg(line.title) : QString());
    update();
}

QSize LedgerRow::sizeHint() const {
    return {280, row_height};
}

void LedgerRow::paintEvent(QPaintEvent*) {
    const Theme& theme = current_theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool has_working = !line_.working_key.isEmpty();
    if (has_working && (underMouse() || isDown())) {
        QColor tint = theme.accent;
        tint.setAlphaF(isDown() ? 0.16F : 0.08F);
        painter.fillRect(rect(), tint);
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.accent, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    }
    const QRect inner = rect().adjusted(side_px, 4, -side_px, -4);
    const int half = inner.height() / 2;
    const QRect upper(inner.left(), inner.top(), inner.width(), half + 2);
    const QRect lower(inner.left(), inner.top() + half + 2, inner.width(), half - 2);

    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    painter.setPen(line_.carried ? theme.muted : theme.text);
    painter.drawText(upper, Qt::AlignRight | Qt::AlignVCenter, line_.value);
    const int value_width = QFontMetrics(strong).horizontalAdvance(line_.value);
    painter.setFont(font());
    painter.setPen(theme.text);
    const QString title =
        fontMetrics().elidedText(line_.title, Qt::ElideRight, std::max(0, upper.width() - value_width - 8));
    painter.drawText(upper, Qt::AlignLeft | Qt::AlignVCenter, title);

    QFont small = font();
    small.setPointSizeF(small_print_pt);
    QFont change_font = small;
    change_font.setWeight(QFont::DemiBold);
    const QString offer = has_working ? tr("show working") : QString();
    const auto width_of = [](const QFont& with, const QString& text) {
        return text.isEmpty() ? 0 : QFontMetrics(with).horizontalAdvance(text) + gap_px;
    };
    const int right_part = width_of(small, line_.range) + width_of(change_font, line_.change);
    painter.setFont(small);
    painter.setPen(theme.muted);
    painter.drawText(lower, Qt::AlignRight | Qt::AlignVCenter, line_.range);
    // In a narrow panel the figures go before the offer, which the pointer and the tooltip still make.
    if (width_of(small, offer) + right_part - gap_px <= lower.width()) {
        painter.setPen(theme.accent);
        painter.drawText(lower, Qt::AlignLeft | Qt::AlignVCenter, offer);
    }
    painter.setFont(change_font);
    painter.setPen(theme.text);
    painter.drawText(lower.adjusted(0, 0, -width_of(small, line_.range), 0), Qt::AlignRight | Qt::AlignVCenter,
                     line_.change);
}

Ledger::Ledger(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Ledger"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 4);
    column->setSpacing(0);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(side_px, 0, side_px, 4);
    auto* title = new QLabel(tr("Ledger"), this);
    title->setProperty("role", QStringLiteral("title"));
    state_ = new QLabel(this);
    state_->setProperty("role", QStringLiteral("muted"));
    state_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    head->addWidget(title);
    head->addWidget(state_, 1);
    column->addLayout(head);
    for (const LedgerLine& line : ledger_lines(nullptr, nullptr, false)) {
        auto* row = new LedgerRow(this);
        row->set_line(line);
        connect(row, &LedgerRow::clicked, this, [this, row] { Q_EMIT working_asked(row->line().working_key); });
        column->addWidget(row);
        rows_.push_back(row);
    }
    refresh();
}

void Ledger::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::plan_changed, this, &Ledger::refresh);
        connect(session_, &JobSession::choice_changed, this, &Ledger::refresh);
        connect(session_, &JobSession::planning_changed, this, &Ledger::refresh);
    }
    refresh();
}

void Ledger::refresh() {
    const plan::Plan* plan = session_ != nullptr ? session_->plan().get() : nullptr;
    const plan::Plan* earlier = session_ != nullptr ? session_->earlier_plan().get() : nullptr;
    const bool carried = session_ != nullptr && session_->yield_carried();
    const std::vector<LedgerLine> lines = ledger_lines(plan, earlier, carried);
    for (std::size_t i = 0; i < rows_.size(); ++i)
        rows_[i]->set_line(lines[i]);
    QString state;
    if (carried) {
        state = tr("yield from before the edit");
    } else if (plan != nullptr && plan->invented) {
        state = tr("invented data");
    }
    state_->setText(state);
}

QString Ledger::focused_key() const {
    for (const LedgerRow* row : rows_)
        if (row->hasFocus()) return row->line().working_key;
    return {};
}

}  // namespace wg::ui
