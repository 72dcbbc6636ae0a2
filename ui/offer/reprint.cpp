#include "ui/offer/reprint.h"

#include <QBuffer>
#include <QDateTime>
#include <algorithm>
#include <tuple>

#include "core/plan/frozen_plan.h"
#include "core/plan/issued_paper.h"
#include "ui/common/format.h"
#include "ui/documents/logo.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/offer_input.h"

namespace wg::ui {
namespace {

/// Of the job as it was: quotes and answers that were there before this one.
std::string overtaken_then(store::Store& store, const store::IssuedQuote& quote) {
    const auto quotes = store.quotes(quote.job_id);
    const auto answers = store::QuoteBook(store).answers(quote.job_id);
    if (!quotes.ok() || !answers.ok()) return {};
    std::vector<store::IssuedQuote> earlier;
    bool after = false;
    for (const store::IssuedQuote& one : quotes.value()) {
        if (after) earlier.push_back(one);
        after = after || one.id == quote.id;
    }
    std::map<std::string, std::vector<store::QuoteAnswer>> then;
    for (const auto& [id, given] : answers.value()) {
        for (const store::QuoteAnswer& answer : given)
            if (answer.entered_at <= quote.issued_at) then[id].push_back(answer);
    }
    return number_overtaken(earlier, then);
}

/// As an older program's snapshot asks for.
Result<std::shared_ptr<PaperInput>> planned_again(store::Store& store, const store::IssuedQuote& quote,
                                                  const plan::Reference& reference, const PlanFunction& plan_function) {
    const std::string where = "quote " + quote.number;
    const auto job = store.load_revision(quote.job_id, quote.job_revision);
    if (!job.ok()) return job.problems();
    const auto make = [&](const std::string& choice_id) {
        plan::Options options;
        options.choice_id = choice_id;
        return plan_function ? plan_function(job.value(), reference, options)
                             : plan::plan(job.value(), reference, options);
    };
    const auto frozen = quote::frozen_offer(quote.plan_json, where);
    if (!frozen.ok()) return frozen.problems();
    const std::string& shown = frozen.value().choice_id;
    auto planned = make(shown);
    if (!planned.ok()) return planned.problems();
    planned.value().job_revision = quote.job_revision;
    if (plan::plan_to_json(planned.value()) != quote.plan_json) {
        return Problem{where,
                       "comes out otherwise than when it was issued: prices, rules, equipment or weather are no longer "
                       "the same",
                       "Open the paper that was kept"};
    }
    auto out = std::make_shared<PaperInput>();
    out->job = job.value();
    out->plan = std::move(planned).value();
    out->firm = read_firm(&store);
    out->printed_on = QDateTime::fromString(qs(quote.issued_at), Qt::ISODate).toLocalTime().date();
    out->quote_number = qs(quote.number);
    out->takes_place_of = qs(overtaken_then(store, quote));
    const auto& lists = reference.price_lists;
    if (const auto list = lists.find(out->job.price_list); list != lists.end()) out->tariffs = list->second.tariffs;
    for (const Choice& choice : out->job.choices) {
        if (!choice.on_offer || choice.id == shown || out->beside.size() + 1 >= most_on_offer) continue;
        auto other = make(choice.id);
        if (!other.ok()) return other.problems();
        out->beside.push_back(std::make_shared<const plan::Plan>(std::move(other).value()));
    }
    return out;
}

constexpr qsizetype usual_logo_bytes = 64 * 1024;

/// The file itself where it is small, else the picture as large as paper needs it (34 mm at 600 dots per inch): every
/// quote keeps its own.
std::string logo_to_keep(const QByteArray& file, const QImage& drawn) {
    if (!file.isEmpty() && file.size() <= usual_logo_bytes) return file.toStdString();
    constexpr int most_px = 804;
    const QImage fitting = std::max(drawn.width(), drawn.height()) > most_px
                               ? drawn.scaled(most_px, most_px, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                               : drawn;
    // A picture so narrow that its shorter side would fall below what a logo may have stays as it came.
    if (std::min(fitting.width(), fitting.height()) < least_logo_px && !file.isEmpty() && file.size() <= max_logo_bytes)
        return file.toStdString();
    for (const auto& [format, quality, most] :
         {std::tuple{"PNG", -1, 4 * usual_logo_bytes}, std::tuple{"JPEG", 92, qsizetype{max_logo_bytes}}}) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        if (buffer.open(QIODevice::WriteOnly) && fitting.save(&buffer, format, quality) && bytes.size() <= most)
            return bytes.toStdString();
    }
    return {};
}

}  // namespace

std::string snapshot_of(const PaperInput& input, const QByteArray& logo_file, const plan::RuleSet* rules) {
    const Firm& firm = input.firm;
    plan::IssuedPaper paper;
    paper.job = input.job;
    paper.plan = input.plan;
    for (const auto& other : input.beside)
        if (other != nullptr) paper.beside.push_back(*other);
    paper.tariffs = input.tariffs;
    paper.firm = {firm.name.toStdString(),
                  firm.street.toStdString(),
                  firm.town.toStdString(),
                  firm.phone.toStdString(),
                  firm.email.toStdString(),
                  firm.letter.toStdString(),
                  firm.logo.isNull() ? std::string() : logo_to_keep(logo_file, firm.logo),
                  firm.invented,
                  firm.vat_id.toStdString(),
                  firm.register_entry.toStdString(),
                  firm.bank.toStdString(),
                  firm.iban.toStdString(),
                  firm.bic.toStdString()};
    paper.look = look_key(input.look).toStdString();
    paper.printed_on = input.printed_on.toString(Qt::ISODate).toStdString();
    paper.takes_place_of = input.takes_place_of.toStdString();
    return plan::snapshot_with_paper(
        rules == nullptr ? plan::plan_to_json(input.plan) : plan::frozen_plan(input.plan, *rules), paper);
}

Result<std::shared_ptr<PaperInput>> input_of_snapshot(const std::string& snapshot, const std::string& number) {
    auto kept = plan::issued_paper(snapshot, "quote " + number);
    if (!kept.ok()) return kept.problems();
    if (!kept.value()) return std::shared_ptr<PaperInput>();
    plan::IssuedPaper& paper = *kept.value();
    auto out = std::make_shared<PaperInput>();
    out->job = std::move(paper.job);
    out->plan = std::move(paper.plan);
    for (plan::Plan& other : paper.beside)
        out->beside.push_back(std::make_shared<const plan::Plan>(std::move(other)));
    out->tariffs = paper.tariffs;
    const plan::IssuedFirm& firm = paper.firm;
    out->firm.name = qs(firm.name);
    out->firm.street = qs(firm.street);
    out->firm.town = qs(firm.town);
    out->firm.phone = qs(firm.phone);
    out->firm.email = qs(firm.email);
    out->firm.letter = qs(firm.letter);
    out->firm.invented = firm.invented;
    out->firm.vat_id = qs(firm.vat_id);
    out->firm.register_entry = qs(firm.register_entry);
    out->firm.bank = qs(firm.bank);
    out->firm.iban = qs(firm.iban);
    out->firm.bic = qs(firm.bic);
    if (!firm.logo.empty()) {
        const auto logo = logo_from_bytes(QByteArray::fromStdString(firm.logo));
        if (!logo.ok()) return logo.problems();
        out->firm.logo = logo.value();
    }
    out->look = look_from_key(qs(paper.look));
    out->printed_on = QDate::fromString(qs(paper.printed_on), Qt::ISODate);
    out->takes_place_of = qs(paper.takes_place_of);
    out->quote_number = qs(number);
    return out;
}

Result<PrintAgain> input_again(store::Store& store, const store::IssuedQuote& quote, const plan::Reference& reference,
                               const PlanFunction& plan_function) {
    auto kept = input_of_snapshot(quote.plan_json, quote.number);
    if (!kept.ok()) return kept.problems();
    if (kept.value() != nullptr) return PrintAgain{kept.value(), false};
    auto planned = planned_again(store, quote, reference, plan_function);
    if (!planned.ok()) return planned.problems();
    return PrintAgain{std::move(planned).value(), true};
}

}  // namespace wg::ui
