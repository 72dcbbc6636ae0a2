#include "ui/desk/step_words.h"

#include <QCoreApplication>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString in_window(const char* text) {
    return QCoreApplication::translate("StepWords", text);
}

}  // namespace

QString step_name(NextStep step) {
    switch (step) {
        case NextStep::survey: return in_window("Survey the site");
        case NextStep::plan: return in_window("Plan and quote");
        case NextStep::send_quote: return in_window("Send a quote");
        case NextStep::await_answer: return in_window("Answer awaited");
        case NextStep::after_refusal: return in_window("Quote anew or close");
        case NextStep::fit: return in_window("Fit");
        case NextStep::hand_over: return in_window("Hand over");
        case NextStep::service: return in_window("Service due");
        case NextStep::nothing: return in_window("Nothing to do");
    }
    return {};
}

QString step_words(const NextStepOfJob& next, const QDate& today) {
    const QDate since = QDate::fromString(qs(next.since), Qt::ISODate);
    if (next.step == NextStep::nothing || !since.isValid()) return step_words_with_day(next);
    const qint64 days = since.daysTo(today);
    if (days < 1) return step_name(next.step);
    return days == 1 ? in_window("%1, 1 day").arg(step_name(next.step))
                     : in_window("%1, %2 days").arg(step_name(next.step), number(static_cast<double>(days)));
}

QString step_words_with_day(const NextStepOfJob& next) {
    if (next.step == NextStep::nothing)
        return next.since.empty() ? QString() : in_window("Service on %1").arg(day(next.since));
    if (next.since.empty()) return step_name(next.step);
    return in_window("%1 since %2").arg(step_name(next.step), day(next.since));
}

}  // namespace wg::ui
