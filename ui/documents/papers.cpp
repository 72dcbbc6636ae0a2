#include "ui/documents/papers.h"

#include <cmath>

#include "core/quantity/iban.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/print_check.h"

namespace wg::ui::paper {

bool has_languages(Paper paper) {
    switch (paper) {
        case Paper::quote:
        case Paper::install_sheet:
        case Paper::cover_letter:
        case Paper::order_confirmation:
        case Paper::change_order:
        case Paper::parts_list:
        case Paper::purchase_list:
        case Paper::purchase_order: return true;
        default: return false;
    }
}

namespace {

std::vector<Page> lay_out_in_this_language(Paper paper, const SharedInput& input) {
    switch (paper) {
        case Paper::quote: return lay_out_quote(input);
        case Paper::install_sheet: return lay_out_install_sheet(input);
        case Paper::survey_sheet: return lay_out_survey_sheet(input);
        case Paper::workings: return lay_out_workings(input);
        case Paper::record: return lay_out_record(input);
        case Paper::service_sheet: return lay_out_service_sheet(input);
        case Paper::booklet: return lay_out_booklet(input);
        case Paper::cover_letter: return lay_out_cover_letter(input);
        case Paper::order_confirmation: return lay_out_order_confirmation(input);
        case Paper::change_order: return lay_out_change_order(input);
        case Paper::parts_list: return lay_out_parts_list(input);
        case Paper::purchase_list: return lay_out_purchase_list(input);
        case Paper::purchase_order: return lay_out_purchase_order(input);
    }
    return {};
}

}  // namespace

std::vector<Page> lay_out(Paper paper, const SharedInput& input) {
    const Language language = has_languages(paper) ? input->look.language : Language::english;
    const PaperLanguage spoken(language);
    std::vector<Page> pages = lay_out_in_this_language(paper, input);
    // Pictures are painted later, each in the language it was laid out in.
    for (Page& page : pages) {
        for (Picture& picture : page.pictures)
            picture.paint = [language, paint = std::move(picture.paint)](QPainter& painter, const QRectF& frame) {
                const PaperLanguage here(language);
                paint(painter, frame);
            };
    }
    return pages;
}

QString date_words(const QDate& date) {
    return date.isValid() ? day(date.toString(Qt::ISODate).toStdString()) : QString();
}

QString client_address(const Client& client) {
    QStringList parts;
    if (!client.street.empty()) parts += qs(client.street);
    const QString town = (qs(client.postcode) + QLatin1Char(' ') + qs(client.town)).trimmed();
    if (!town.isEmpty()) parts += town;
    return parts.join(QStringLiteral(", "));
}

QString hand_words(Hand hand) {
    return hand == Hand::left ? say("left-hand (connections on the left)")
                              : say("right-hand (connections on the right)");
}

QString service_words(const Service& service) {
    if (service.present) return say("there");
    return service.distance_m > 0.0 ? say("bring over %1").arg(quantity(service.distance_m, QStringLiteral("m"), 1))
                                    : say("missing");
}

QString carbon_words(double tonnes) {
    return tonnes < 0.1 ? quantity(tonnes * 1000.0, QStringLiteral("kg"), 1) : quantity(tonnes, QStringLiteral("t"), 3);
}

QString inside_a_sentence(const QString& text) {
    return PaperLanguage::now() == Language::german || text.isEmpty() ? text : text.at(0).toLower() + text.mid(1);
}

void WorkSum::add(const std::string& text, const std::string& unit, double amount, Money net) {
    if (unit == hour_unit) {
        hours += amount;
        timed += net;
    } else {
        others.push_back({text, unit, amount, net});
    }
}

void WorkSum::put_rows(Table& table, const QString& currency, bool with_sums) const {
    const auto sum = [&](Money net) { return with_sums ? money(net, currency) : QString(); };
    table.rows.push_back({QStringList{say("Fitting, tests, start and instruction"),
                                      quantity(hours, QStringLiteral("h"), 1), sum(timed)}});
    for (const Other& one : others)
        table.rows.push_back({QStringList{say_name(one.text), amount_words(one.amount, one.unit), sum(one.net)}});
}

quote::Offered offered_of(const plan::Plan& plan) {
    if (plan.offered) return *plan.offered;
    quote::Offered out;
    for (const parts::Line& line : plan.parts.lines) {
        quote::OfferedLine one;
        one.line = line;
        out.lines.push_back(one);
    }
    return out;
}

QString account_words(const Firm& firm) {
    const QString number = QStringLiteral("IBAN ") + qs(iban_in_groups(firm.iban.toStdString()));
    return firm.bic.isEmpty() ? number : number + QStringLiteral(", BIC ") + firm.bic;
}

void pay_to(Flow& flow, const Firm& firm) {
    if (firm.iban.isEmpty()) return;
    QStringList words{account_words(firm)};
    if (!firm.bank.isEmpty()) words += firm.bank;
    flow.paragraph(
        say("Please pay to %1: %2.").arg(say_name(firm.name.toStdString()), words.join(QStringLiteral(", "))));
}

QString payment_not_set() {
    return say(
        "When to pay is not set here: what you and we have agreed in writing holds, and where nothing is agreed, the "
        "law.");
}

QString amount_words(double value, const std::string& unit) {
    const bool whole = std::fabs(value - std::round(value)) < 1e-9;
    return quantity(value, say_name(unit), whole ? 0 : 2);
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

namespace {

/// What law and trade expect on papers that leave the house.
QStringList numbers_of_firm(Paper paper, const Firm& firm) {
    switch (paper) {
        case Paper::quote:
        case Paper::cover_letter:
        case Paper::order_confirmation:
        case Paper::change_order:
        case Paper::purchase_list:
        case Paper::purchase_order: break;
        default: return {};
    }
    QStringList out;
    if (!firm.register_entry.isEmpty()) out += firm.register_entry;
    if (!firm.vat_id.isEmpty()) out += say("VAT number %1").arg(firm.vat_id);
    // Suppliers are paid, and pay nothing.
    if (paper == Paper::purchase_list || paper == Paper::purchase_order) return out;
    if (!firm.bank.isEmpty()) out += firm.bank;
    if (!firm.iban.isEmpty()) out += account_words(firm);
    return out;
}

}  // namespace

Furniture furniture_of(Paper paper, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    Furniture f;
    const auto add = [&](const QString& text) {
        if (!text.trimmed().isEmpty()) f.firm += text.trimmed();
    };
    add(input.firm.name.isEmpty() ? say("Firm's name and address not entered yet")
                                  : say_name(input.firm.name.toStdString()));
    add(input.firm.street);
    add(input.firm.town);
    QStringList reach;
    if (!input.firm.phone.isEmpty()) reach += input.firm.phone;
    if (!input.firm.email.isEmpty()) reach += input.firm.email;
    if (input.firm.logo.isNull()) {
        add(reach.join(QStringLiteral(", ")));
    } else {
        for (const QString& one : reach)  // beside a logo there is less room
            add(one);
    }
    f.sheet = sheet_of(input.look);
    f.title = title_of(paper);
    f.logo = input.look.black_and_white && !input.firm.logo.isNull()
                 ? input.firm.logo.convertToFormat(QImage::Format_Grayscale8)
                 : input.firm.logo;
    f.below = numbers_of_firm(paper, input.firm);
    // Of what was agreed, which the plan as it is now may no longer be.
    const bool ordered = paper == Paper::order_confirmation || paper == Paper::change_order;
    if (paper == Paper::quote && !input.quote_number.isEmpty()) f.title += QLatin1Char(' ') + input.quote_number;
    // What goes to a supplier names the job by its number alone: no plan, no choice, nobody's name.
    const bool to_supplier = paper == Paper::purchase_order;
    const bool numbered =
        (ordered || to_supplier || paper == Paper::purchase_list) && input.order && !input.order->number.isEmpty();
    // In large print title and number do not fit one line, and the number has to be read whole.
    if (numbered && !input.look.large_print) f.title += QLatin1Char(' ') + input.order->number;
    const bool planned = paper != Paper::survey_sheet && !ordered && !to_supplier && !plan.job_id.empty();
    const auto revision = planned ? plan.job_revision : input.job.revision;
    f.job = say("Job %1, revision %2")
                .arg(input.job.number.empty() ? say("without number") : qs(input.job.number))
                .arg(revision);
    if (ordered || to_supplier)
        f.job = say("Job %1").arg(input.job.number.empty() ? say("without number") : qs(input.job.number));
    if (input.unsaved && !ordered && !to_supplier) f.job += say(" with changes");
    if (numbered && input.look.large_print) f.job = input.order->number + QStringLiteral(", ") + f.job;
    if (planned && !plan.plan_mark.empty()) {
        f.mark = say("mark %1").arg(qs(plan.plan_mark));
        f.code = print_code(plan);
    }
    const Choice* chosen = chosen_choice(input.job);
    const std::string label = ordered   ? (input.order ? input.order->agreed.choice_label : std::string())
                              : planned ? plan.choice_label
                                        : (chosen != nullptr ? chosen->label : std::string());
    if (!to_supplier) f.choice = label.empty() ? say("No choice yet") : say("Choice: ") + qs(label);
    QStringList foot;
    // In large print the day alone, so that the caution behind it has room in every language.
    if (input.printed_on.isValid()) {
        const QString day_printed = date_words(input.printed_on);
        foot += input.look.large_print ? day_printed : say("Printed %1").arg(day_printed);
    }
    // One line, and the caution on it is never cut: in large print the mark in the head has to do.
    if (planned && !plan.content_sha256.empty() && !input.look.large_print) {
        foot += say("content %1").arg(qs(plan.content_sha256.substr(0, 12)));
    }
    if (!to_supplier) foot += say("local codes and licensed practice decide");
    f.foot = foot.join(QStringLiteral(" · "));
    // What was done and read is told whatever has become of the plan.
    if (planned && paper != Paper::record && plan.stopped()) f.marks += say("Not to be issued: has a stop");
    if (input.job.invented || plan.invented || input.firm.invented) {
        f.marks += say("Invented data: for demonstration");
    }
    return f;
}

void findings_boxes(Flow& flow, const std::vector<Finding>& findings, Severity least) {
    for (const Finding& finding : findings) {
        if (static_cast<int>(finding.severity) < static_cast<int>(least)) continue;
        QString title = finding.severity == Severity::stop ? say("Stop") : say("Caution");
        if (finding.severity == Severity::note) title = say("Note");
        if (!finding.place.empty()) title += QStringLiteral(": ") + say_name(finding.place);
        QString text = say_filled(finding.message);
        if (!text.isEmpty() && !text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
        if (!finding.remedy.empty()) text += QLatin1Char(' ') + say_filled(finding.remedy);
        if (!text.isEmpty() && !text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
        flow.caution(finding.severity == Severity::stop ? Sign::stop : Sign::caution, title, text);
    }
}

}  // namespace wg::ui::paper
