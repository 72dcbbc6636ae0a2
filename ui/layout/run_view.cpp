#include "ui/layout/run_view.h"

#include <QFontInfo>
#include <QPainter>

#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/drawing/run_painter.h"

namespace wg::ui {

RunView::RunView(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Run in space"));
    setMinimumSize(240, 200);
}

void RunView::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::plan_changed, this, [this] { update(); });
        connect(session_, &JobSession::choice_changed, this, [this] { update(); });
    }
    update();
}

void RunView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), current_theme().panel);
    if (session_ == nullptr) return;
    const auto plan = session_->plan();
    const QRectF area = QRectF(rect()).adjusted(8, 8, -8, -8);
    if (plan == nullptr) {
        painter.setPen(current_theme().muted);
        const QString why = session_->plan_problem();
        painter.drawText(area, Qt::AlignCenter | Qt::TextWordWrap,
                         why.isEmpty() ? tr("The run is being worked out \u2026") : why);
        return;
    }
    paint_run(painter, session_->job(), *plan, area, current_theme(), QFontInfo(font()).pixelSize(), 1.2);
}

}  // namespace wg::ui
