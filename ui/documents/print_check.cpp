#include "ui/documents/print_check.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString print_words(const char* text) {
    return QCoreApplication::translate("PrintCheck", text);
}

/// Eight digits as they are printed; empty when these are none.
QString tidy_mark(const QString& text) {
    static const QRegularExpression form(QStringLiteral("^([0-9A-F]{4})[- ]?([0-9A-F]{4})$"));
    const auto match = form.match(text.trimmed().toUpper());
    return match.hasMatch() ? match.captured(1) + QLatin1Char('-') + match.captured(2) : QString();
}

}  // namespace

QString print_code(const plan::Plan& plan) {
    if (plan.plan_mark.empty() || plan.job_id.empty()) return {};
    return QStringLiteral("warmgable:1:%1:%2:%3").arg(qs(plan.job_id)).arg(plan.job_revision).arg(qs(plan.plan_mark));
}

std::optional<PrintCode> read_print_code(const QString& text) {
    const QString clean = text.trimmed();
    if (const QString mark = tidy_mark(clean); !mark.isEmpty()) return PrintCode{QString(), 0, mark};
    const QStringList parts = clean.split(QLatin1Char(':'));
    if (parts.size() != 5 || parts[0].compare(QLatin1String("warmgable"), Qt::CaseInsensitive) != 0) return {};
    if (parts[1] != QLatin1String("1") || parts[2].isEmpty()) return {};
    bool whole = false;
    const qlonglong revision = parts[3].toLongLong(&whole);
    const QString mark = tidy_mark(parts[4]);
    if (!whole || revision < 0 || mark.isEmpty()) return {};
    return PrintCode{parts[2], revision, mark};
}

PrintCheck check_print(const QString& text, const std::string& job_id, std::int64_t revision, const std::string& mark) {
    const auto code = read_print_code(text);
    if (!code) {
        return {PrintState::unreadable,
                print_words("This is not the code of a print: scan it again, or type the mark, like 3FA9-07B2")};
    }
    if (!code->job_id.isEmpty() && code->job_id.compare(qs(job_id), Qt::CaseInsensitive) != 0)
        return {PrintState::other_job, print_words("This print is of another job: do not build from it here")};
    if (!mark.empty() && code->mark == tidy_mark(qs(mark))) {
        // Saving alone raises the revision; what is built is told by the mark.
        if (code->job_id.isEmpty() || code->revision == revision)
            return {PrintState::present, print_words("This print is the present plan: mark %1").arg(code->mark)};
        return {PrintState::present, print_words("This print is the present plan: mark %1. Printed from revision %2, "
                                                 "the job is now at revision %3, its plan unchanged")
                                         .arg(code->mark)
                                         .arg(code->revision)
                                         .arg(revision)};
    }
    const QString now = mark.empty() ? print_words("none") : qs(mark);
    if (code->job_id.isEmpty()) {
        return {PrintState::outdated, print_words("Outdated or of another job: this print has mark %1, the plan is now "
                                                  "revision %2, mark %3. Do not build from it")
                                          .arg(code->mark)
                                          .arg(revision)
                                          .arg(now)};
    }
    return {PrintState::outdated, print_words("Outdated: printed from revision %1, mark %2. The plan is now revision "
                                              "%3, mark %4. Do not build from this print")
                                      .arg(code->revision)
                                      .arg(code->mark)
                                      .arg(revision)
                                      .arg(now)};
}

}  // namespace wg::ui
