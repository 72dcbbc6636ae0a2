#include "ui/documents/papers.h"

#include <QLocale>
#include <cmath>

#include "ui/common/format.h"
#include "ui/documents/print_check.h"

namespace wg::ui::paper {

std::vector<Page> lay_out(Paper paper, const SharedInput& input) {
    switch (paper) {
        case Paper::quote: return lay_out_quote(input);
        case Paper::install_sheet: return lay_out_install_sheet(input);
        case Paper::survey_sheet: return lay_out_survey_sheet(input);
        case Paper::workings: return lay_out_workings(input);
        case Paper::record: return lay_out_record(input);
        case Paper::service_sheet: return lay_out_service_sheet(input);
        case Paper::booklet: return lay_out_booklet(input);
    }
    return {};
}

QString date_words(const QDate& date) {
    return date.isValid() ? QLocale::c().toString(date, QStringLiteral("d MMMM yyyy")) : QString();
}

QString client_address(const Client& client) {
    QStringList parts;
    if (!client.street.empty()) parts += qs(client.street);
    const QString town = (qs(client.postcode) + QLatin1Char(' ') + qs(client.town)).trimmed();
    if (!town.isEmpty()) parts += town;
    return parts.join(QStringLiteral(", "));
}

QString hand_words(Hand hand) {
    return hand == Hand::left ? QStringLiteral("left-hand (connections on the left)")
                              : QStringLiteral("right-hand (connections on the right)");
}

QString service_words(const Service& service) {
    if (service.present) return QStringLiteral("there");
    return service.distance_m > 0.0
               ? QStringLiteral("bring over %1").arg(quantity(service.distance_m, QStringLiteral("m"), 1))
               : QStringLiteral("missing");
}

QString amount_words(double value, const std::string& unit) {
    const bool whole = std::fabs(value - std::round(value)) < 1e-9;
    return quantity(value, qs(unit), whole ? 0 : 2);
}

Sheet sheet_of(const PaperLook& look) {
    Sheet sheet;
    if (look.form == PageForm::letter) {
        sheet.width = 215.9 * mm;  // 8.5 x 11 in, ANSI/ASME Y14.1
        sheet.height = 279.4 * mm;
        sheet.name = QStringLiteral("Letter");
    }
    sheet.large_print = look.large_print;
    sheet.black_and_white = look.black_and_white;
    return sheet;
}

Furniture furniture_of(Paper paper, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    Furniture f;
    const auto add = [&](const QString& text) {
        if (!text.trimmed().isEmpty()) f.firm += text.trimmed();
    };
    add(input.firm.name.isEmpty() ? QStringLiteral("Firm's name and address not entered yet") : input.firm.name);
    add(input.firm.street);
    add(input.firm.town);
    QStringList reach;
    if (!input.firm.phone.isEmpty()) reach += input.firm.phone;
    if (!input.firm.email.isEmpty()) reach += input.firm.email;
    add(reach.join(QStringLiteral(", ")));
    f.sheet = sheet_of(input.look);
    f.title = title_of(paper);
    const bool planned = paper != Paper::survey_sheet && !plan.job_id.empty();
    const auto revision = planned ? plan.job_revision : input.job.revision;
    f.job = QStringLiteral("Job %1, revision %2")
                .arg(input.job.number.empty() ? QStringLiteral("without number") : qs(input.job.number))
                .arg(revision);
    if (input.unsaved) f.job += QStringLiteral(" with changes");
    if (planned && !plan.plan_mark.empty()) {
        f.mark = QStringLiteral("mark %1").arg(qs(plan.plan_mark));
        f.code = print_code(plan);
    }
    const Choice* chosen = chosen_choice(input.job);
    const std::string label = planned ? plan.choice_label : (chosen != nullptr ? chosen->label : std::string());
    f.choice = label.empty() ? QStringLiteral("No choice yet") : QStringLiteral("Choice: ") + qs(label);
    QStringList foot;
    if (input.printed_on.isValid()) foot += QStringLiteral("Printed %1").arg(date_words(input.printed_on));
    if (planned && !plan.content_sha256.empty()) {
        foot += QStringLiteral("content %1").arg(qs(plan.content_sha256.substr(0, 12)));
    }
    foot += QStringLiteral("local codes and licensed practice decide");
    f.foot = foot.join(QStringLiteral(" · "));
    // What was done and read is told whatever has become of the plan.
    if (planned && paper != Paper::record && plan.stopped()) f.marks += QStringLiteral("Not to be issued: has a stop");
    if (input.job.invented || plan.invented || input.firm.invented) {
        f.marks += QStringLiteral("Invented data: for demonstration");
    }
    return f;
}

void findings_boxes(Flow& flow, const std::vector<Finding>& findings, Severity least) {
    for (const Finding& finding : findings) {
        if (static_cast<int>(finding.severity) < static_cast<int>(least)) continue;
        QString title = finding.severity == Severity::stop ? QStringLiteral("Stop") : QStringLiteral("Caution");
        if (finding.severity == Severity::note) title = QStringLiteral("Note");
        if (!finding.place.empty()) title += QStringLiteral(": ") + qs(finding.place);
        QString text = qs(finding.message);
        if (!text.isEmpty() && !text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
        if (!finding.remedy.empty()) text += QLatin1Char(' ') + qs(finding.remedy);
        if (!text.isEmpty() && !text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
        flow.caution(finding.severity == Severity::stop ? Sign::stop : Sign::caution, title, text);
    }
}

}  // namespace wg::ui::paper
