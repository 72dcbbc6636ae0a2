#include "ui/desk/next_due.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int usual_service_months = 12;
constexpr int quote_valid_days = 30;

QString words(const char* text) {
    return QCoreApplication::translate("NextDue", text);
}

QDate date_of(const std::string& iso8601_text) {
    const QDateTime stamp = QDateTime::fromString(qs(iso8601_text), Qt::ISODate);
    return stamp.isValid() ? stamp.toLocalTime().date() : QDate::fromString(qs(iso8601_text), Qt::ISODate);
}

/// The shortest interval among the services that every job gets under its rule set.
int service_months(const Job& job, const plan::Reference& reference) {
    int months = 0;
    if (const auto rules = reference.rule_sets.find(job.rule_set); rules != reference.rule_sets.end()) {
        for (const plan::ServiceRule& rule : rules->second.service) {
            if (rule.when == "always" && rule.every_months > 0) {
                months = months == 0 ? rule.every_months : std::min(months, rule.every_months);
            }
        }
    }
    return months == 0 ? usual_service_months : months;
}

QDate last_reading(const Job& job) {
    QDate last;
    for (const Reading& reading : job.record) {
        const QDate date = date_of(reading.taken_at);
        if (date.isValid() && (!last.isValid() || date > last)) last = date;
    }
    return last;
}

}  // namespace

NextDue next_due(const Job& job, const std::vector<store::IssuedQuote>& quotes, const plan::Reference& reference,
                 const QDate& today) {
    NextDue due;
    switch (job.state) {
        case JobState::visit:
            due.text = job.survey.visited_on.empty() ? words("Visit the site") : words("Enter the survey, then plan");
            break;
        case JobState::planning:
            due.text =
                job.choices.empty() ? words("Place a first collector") : words("Finish the plan and issue the quote");
            break;
        case JobState::offered: {
            QDate newest;
            for (const store::IssuedQuote& quote : quotes) {
                const QDate date = date_of(quote.issued_at);
                if (date.isValid() && (!newest.isValid() || date > newest)) newest = date;
            }
            due.text = words("Ask for the client's answer to the quote");
            if (newest.isValid()) due.on = newest.addDays(quote_valid_days);
            break;
        }
        case JobState::accepted: due.text = words("Order the parts and fit"); break;
        case JobState::fitted:
            due.text =
                job.record.empty() ? words("Enter the readings of the day") : words("Hand over and put in service");
            break;
        case JobState::in_service: {
            due.text = words("Service");
            const QDate last = last_reading(job);
            if (last.isValid()) due.on = last.addMonths(service_months(job, reference));
            break;
        }
        case JobState::closed: due.text = words("Nothing: the job is closed"); break;
    }
    due.overdue = due.on.isValid() && due.on < today;
    return due;
}

}  // namespace wg::ui
