#include "ui/aftercare/papers_page.h"

#include <QDate>
#include <QVBoxLayout>

#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/session_input.h"

namespace wg::ui {

PapersPage::PapersPage(QWidget* parent) : QWidget(parent) {
    notice_ = new NoticeBar(this);
    pane_ = new PaperPane(Paper::service_sheet, this);
    pane_->offer_also(Paper::booklet);
    pane_->offer_also(Paper::record);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_->lie_over({12, 12, 12, 12});
    column->addWidget(pane_, 1);
    connect(pane_, &PaperPane::failed, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    connect(pane_, &PaperPane::saved, this, [this](const QString& path) {
        Q_EMIT status_text(tr("%1 saved as %2").arg(title_of(pane_->shown()), path));
    });
}

void PapersPage::set_session(JobSession* session) {
    session_ = session;
    notice_->clear();
    refresh();
}

void PapersPage::set_firm_source(std::function<Firm()> source) {
    firm_ = std::move(source);
    refresh();
}

void PapersPage::set_picture_source(std::function<QImage(const std::string& sha256)> source) {
    picture_ = std::move(source);
    refresh();
}

void PapersPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void PapersPage::refresh() {
    if (!isVisible()) return;
    std::shared_ptr<const PaperInput> input;
    if (session_ != nullptr) input = input_of(*session_, firm_ ? firm_() : Firm(), QDate::currentDate(), picture_);
    pane_->set_input(input);
    if (session_ != nullptr) pane_->set_ready(session_->settled(), tr("The figures are still being worked out"));
}

}  // namespace wg::ui
