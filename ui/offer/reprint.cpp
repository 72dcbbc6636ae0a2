#include "ui/offer/reprint.h"

#include <QDateTime>

#include "core/plan/frozen_plan.h"
#include "ui/common/format.h"
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

}  // namespace

Result<std::shared_ptr<PaperInput>> input_again(store::Store& store, const store::IssuedQuote& quote,
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
    const auto rules = reference.rule_sets.find(job.value().rule_set);
    const bool same =
        (rules != reference.rule_sets.end() && plan::frozen_plan(planned.value(), rules->second) == quote.plan_json) ||
        plan::plan_to_json(planned.value()) == quote.plan_json;  // frozen before rule sets were
    if (!same) {
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

}  // namespace wg::ui
