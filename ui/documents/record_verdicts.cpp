// Verdicts of the record on paper.

#include <algorithm>
#include <map>

#include "core/commissioning/attempts.h"
#include "ui/common/entry_breaks.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/record_parts.h"
#include "ui/drawing/readings_painter.h"

namespace wg::ui::paper {
namespace {

constexpr double curve_height = 72.0 * mm;

QString verdict_words(commissioning::Verdict verdict) {
    switch (verdict) {
        case commissioning::Verdict::passed: return QStringLiteral("passed");
        case commissioning::Verdict::failed: return QStringLiteral("\u25a0 failed");
        case commissioning::Verdict::cannot_tell: return QStringLiteral("cannot tell");
    }
    return {};
}

/// The entries of those that the chain speaks against: "no. 3 altered"; empty: none. What the chain itself is judged by
/// is no verdict that rests on them.
QString broken_among(const EntryBreaks& breaks, const commissioning::Assessment& one) {
    QStringList broken;
    if (one.subject == "Record") return {};
    for (const std::string& id : one.reading_ids) {
        if (const auto found = breaks.find(id); found != breaks.end())
            broken += QStringLiteral("no. %1 %2").arg(found->second.number).arg(found->second.word);
    }
    return broken.join(QStringLiteral(", "));
}

QString full_stop(QString text) {
    text = text.trimmed();
    if (!text.isEmpty() && !text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
    return text;
}

QString found_words(const commissioning::Assessment& one) {
    QString text = full_stop(with_signs(one.words));
    if (!one.next.empty()) text += QStringLiteral("\nTo do: %1").arg(full_stop(with_signs(one.next)));
    QStringList causes;
    for (const std::string& cause : one.causes)
        causes += with_signs(cause);
    if (!causes.isEmpty())
        text += QStringLiteral("\nLikely, best first: %1").arg(full_stop(causes.join(QStringLiteral("; "))));
    return text;
}

QString reckoned_by(const Working& working) {
    QStringList parts;
    if (!working.formula.empty()) parts += with_signs(working.formula);
    QStringList inputs;
    for (const auto& [name, value] : working.inputs)
        inputs += with_signs(name) + QStringLiteral(": ") + with_signs(value);
    if (!inputs.isEmpty()) parts += inputs.join(QStringLiteral("; "));
    if (!working.result.empty()) parts += QStringLiteral("Result: %1").arg(with_signs(working.result));
    return parts.isEmpty() ? QStringLiteral("the reading alone") : parts.join(QLatin1Char('\n'));
}

QString numbers_of(const std::vector<Reading>& record, const std::vector<std::string>& ids) {
    QStringList numbers;
    for (const std::string& id : ids) {
        if (const std::size_t at = entry_number(record, id); at > 0) numbers += QString::number(at);
    }
    return numbers.join(QStringLiteral(", "));
}

void bands_table(Flow& flow, const std::vector<commissioning::Band>& bands) {
    Table table;
    table.whole = true;
    table.columns = {{QStringLiteral("By the model"), 0.0},
                     {QStringLiteral("Expected"), 52.0, true},
                     {QStringLiteral("Most likely"), 32.0, true},
                     {QStringLiteral("Read"), 28.0, true},
                     {QStringLiteral("Band"), 24.0}};
    for (const commissioning::Band& band : bands) {
        const QString unit = with_signs(' ' + band.unit).trimmed();
        const QString inside = !band.read       ? QStringLiteral("not read")
                               : band.outside() ? QStringLiteral("\u25a0 outside")
                                                : QStringLiteral("inside");
        table.rows.push_back({QStringList{
            with_signs(band.label),
            QStringLiteral("%1 to %2").arg(number(band.low, band.decimals), quantity(band.high, unit, band.decimals)),
            quantity(band.mid, unit, band.decimals), band.read ? quantity(*band.read, unit, band.decimals) : QString(),
            inside}});
    }
    flow.table(table);
}

void workings_of_verdicts(Flow& flow, const plan::Plan& plan) {
    Table table;
    table.columns = {
        {QStringLiteral("Subject"), 34.0}, {QStringLiteral("Reckoned by"), 0.0}, {QStringLiteral("Source"), 56.0}};
    for (const commissioning::Assessment& one : plan.assessments) {
        QString source = one.working.source.empty() ? QStringLiteral("not told") : with_signs(one.working.source);
        if (one.working.assumed) source += QStringLiteral(". At least one input is assumed");
        table.rows.push_back({QStringList{qs(one.subject), reckoned_by(one.working), source}});
    }
    if (table.rows.empty()) return;
    flow.subheading(QStringLiteral("What the verdicts rest on"));
    flow.table(table);
}

void pictures_and_bands(Flow& flow, const SharedInput& input) {
    const auto& all = input->plan.assessments;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const commissioning::Assessment& one = all[i];
        if (one.curve && !one.curve->read.empty()) {
            flow.subheading(QStringLiteral("%1 over time").arg(qs(one.subject)));
            flow.picture(
                QStringLiteral("curve of %1").arg(qs(one.subject)), curve_height, 0.0,
                [input, i, sheet = flow.sheet()](QPainter& painter, const QRectF& frame) {
                    paint_readings(painter, *input->plan.assessments[i].curve, frame, sheet.theme(),
                                   text_units(sheet.least()));
                },
                QStringLiteral("Entries no. %1.").arg(numbers_of(input->job.record, one.reading_ids)));
        }
        if (!one.bands.empty()) {
            flow.subheading(QStringLiteral("%1: what it should be, and what was read").arg(qs(one.subject)));
            bands_table(flow, one.bands);
        }
    }
}

void repeated_tests(Flow& flow, const PaperInput& input) {
    const std::vector<Reading>& record = input.job.record;
    const std::vector<commissioning::Attempt> all = commissioning::attempts(record, input.plan.expected);
    std::map<std::string, int> times;
    for (const commissioning::Attempt& one : all)
        ++times[one.subject];
    Table table;
    table.columns = {{QStringLiteral("When told"), 38.0},
                     {QStringLiteral("Subject"), 36.0},
                     {QStringLiteral("Verdict then"), 24.0},
                     {QStringLiteral("What was found"), 0.0},
                     {QStringLiteral("Entries"), 20.0}};
    for (const commissioning::Attempt& one : all) {
        if (times[one.subject] < 2) continue;
        table.rows.push_back(
            {QStringList{entry_when(record[one.last_entry]), qs(one.subject), verdict_words(one.verdict),
                         full_stop(with_signs(one.words)), numbers_of(record, one.reading_ids)}});
    }
    if (table.rows.empty()) return;
    flow.subheading(QStringLiteral("Tests made more than once, as each was judged"));
    flow.table(table);
}

}  // namespace

void record_verdicts(Flow& flow, const SharedInput& input) {
    const plan::Plan& plan = input->plan;
    flow.heading(QStringLiteral("What the readings say"));
    if (plan.assessments.empty()) {
        flow.paragraph(QStringLiteral("No reading is entered that a verdict could rest on."));
    } else {
        Table table;
        table.columns = {{QStringLiteral("Subject"), 40.0},
                         {QStringLiteral("Verdict"), 24.0},
                         {QStringLiteral("What was found"), 0.0},
                         {QStringLiteral("Entries"), 26.0}};
        const EntryBreaks breaks = entry_breaks(input->job.record);
        for (const commissioning::Assessment& one : plan.assessments) {
            const QString broken = broken_among(breaks, one);
            QString verdict = verdict_words(one.verdict), found = found_words(one);
            if (!broken.isEmpty()) {
                verdict = QStringLiteral("\u25a0 proves nothing");
                found = QStringLiteral("It rests on entry %1. Read it again. As it stands: ").arg(broken) + found;
            }
            table.rows.push_back(
                {QStringList{qs(one.subject), verdict, found, numbers_of(input->job.record, one.reading_ids)}});
        }
        flow.table(table);
    }
    QStringList open;
    for (const std::string& subject : commissioning::outstanding(input->job.record, plan.expected))
        open += qs(subject);
    if (!open.isEmpty()) {
        flow.caution(Sign::caution, QStringLiteral("Not read yet"),
                     QStringLiteral("No reading tells of: %1.").arg(open.join(QStringLiteral(", "))));
    }
    repeated_tests(flow, *input);
    pictures_and_bands(flow, input);
    workings_of_verdicts(flow, plan);
}

}  // namespace wg::ui::paper
