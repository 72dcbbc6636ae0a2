#pragma once
// Jobs that were really planned, each once, for tests that issue many papers of them.

#include <gtest/gtest.h>

#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"
#include "ui/common/edits.h"

namespace wg::ui::paper_year_test {

struct Variant {
    Job job;
    plan::Plan plan;
    std::vector<std::shared_ptr<const plan::Plan>> beside;
    std::optional<economy::Tariffs> tariffs;
};

inline std::vector<Variant> planned_variants(const plan::Reference& reference) {
    Job whole = test::demo_job();
    whole.revision = 0;
    whole.photographs.clear();
    whole.site.underlays.clear();
    whole.record.clear();
    for (Choice& choice : whole.choices)
        choice.on_offer = false;
    Job priced = whole;
    OfferLine option;
    option.id = new_id();
    option.text = "Second tap in the garden";
    option.unit_price_minor = 19'900;
    option.to_tick = true;
    OfferLine grant;
    grant.id = new_id();
    grant.kind = OfferLineKind::subsidy;
    grant.text = "Town's grant for warm water";
    grant.unit_price_minor = 75'000;
    priced.offer.lines = {option, grant};
    priced.offer.instalments = {{new_id(), "on order", 40.0, {}}, {new_id(), "after the start", 60.0, {}}};
    priced.offer.discount_percent = 3.0;
    priced.offer.discount_reason = "spring";
    priced.offer.terms = "Payment within ten days.\nGoods stay ours until paid.";
    for (Choice& choice : priced.choices)
        choice.on_offer = true;
    Job smaller = whole;
    smaller.demand.draw_source = DrawSource::household;
    smaller.demand.household.persons = 2;
    if (smaller.choices.front().placements.size() > 1) smaller.choices.front().placements.resize(1);
    std::vector<Variant> out;
    for (const Job& job : {whole, priced, smaller}) {
        plan::Options options;
        options.keep_hours = false;
        auto planned = plan::plan(job, reference, options);
        EXPECT_TRUE(planned.ok()) << (planned.ok() ? "" : text_of(planned.problems()));
        if (!planned.ok()) return {};
        Variant variant{job, planned.value(), {}, {}};
        EXPECT_TRUE(variant.plan.quote.has_value());
        for (const Choice& choice : job.choices) {
            if (!choice.on_offer || choice.id == variant.plan.choice_id) continue;
            options.choice_id = choice.id;
            auto other = plan::plan(job, reference, options);
            EXPECT_TRUE(other.ok());
            if (other.ok()) variant.beside.push_back(std::make_shared<const plan::Plan>(std::move(other).value()));
        }
        if (const auto list = reference.price_lists.find(job.price_list); list != reference.price_lists.end())
            variant.tariffs = list->second.tariffs;
        out.push_back(std::move(variant));
    }
    return out;
}

}  // namespace wg::ui::paper_year_test
