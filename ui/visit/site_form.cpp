#include "ui/visit/site_form.h"

#include "ui/common/job_session.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {

SiteForm::SiteForm(Verb verb, QWidget* parent) : FormColumn(parent), verb_(std::move(verb)) {
    layout()->setContentsMargins(0, 4, 0, 0);  // it stands inside a form that has its own margins
}

void SiteForm::show_job(const Job& job) {
    for (const auto& show : shows_)
        show(job);
}

QString SiteForm::change(const Take& take) {
    if (session_ == nullptr) return {};
    Site changed = session_->job().site;
    take(changed);
    const QString why = refusal(session_->job(), [&](Job& job) { job.site = changed; });
    if (why.isEmpty()) verb_(*session_, changed);
    return why;
}

}  // namespace wg::ui
