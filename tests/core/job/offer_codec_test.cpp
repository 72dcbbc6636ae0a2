// The offer on file: round trip, ranges, references.
#include <gtest/gtest.h>

#include <cmath>

#include "core/job/codec.h"

namespace wg {
namespace offer_codec_test {

constexpr const char* choice_id = "00000000-0000-4000-8000-0000000000c1";

Job with_offer() {
    Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    job.choices.resize(1);
    job.choices[0].id = choice_id;
    job.choices[0].on_offer = true;
    LineChange change;
    change.id = "00000000-0000-4000-8000-000000000011";
    change.choice_id = choice_id;
    change.item = "tube-12.70";
    change.quantity = 12.5;
    change.unit_price_minor = -650;
    change.planned_quantity = 10.0;
    change.reason = "from stock";
    change.left_out = true;
    OfferLine line;
    line.id = "00000000-0000-4000-8000-000000000012";
    line.kind = OfferLineKind::subsidy;
    line.text = "Grant of the county";
    line.unit_price_minor = 50000;
    line.to_tick = line.ticked = true;
    line.supplier = "Harrow Supplies";
    line.note = "asked for";
    job.offer.changes = {change};
    job.offer.lines = {line};
    job.offer.instalments = {{"00000000-0000-4000-8000-000000000013", "on order", 40.0, {}}};
    job.offer.discount_percent = 2.5;
    job.offer.discount_reason = "winter";
    job.offer.valid_days = 60;
    job.offer.covering = "As agreed by telephone";
    job.offer.terms = "Ours";
    job.offer.access = "scaffold";
    job.offer.storeys = 2;
    job.offer.distance_km = 17.5;
    job.offer.trips = 3;
    return job;
}

TEST(OfferOnFile, comes_back_as_it_was) {
    const Job job = with_offer();
    EXPECT_TRUE(validate(job).empty()) << text_of(validate(job));
    const auto read = job_from_json(job_to_json(job), "j");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
}

TEST(OfferOnFile, a_job_without_one_writes_nothing_of_it) {
    Job job = with_offer();
    job.offer = {};
    job.choices[0].on_offer = false;
    const std::string text = job_to_json(job);
    EXPECT_EQ(text.find("offer"), std::string::npos) << "hashes of earlier files stay as they are";
}

TEST(OfferOnFile, the_mark_of_the_plan_is_that_of_what_is_built) {
    const Job job = with_offer();
    Job without = job;
    without.offer = {};
    without.choices[0].on_offer = false;
    EXPECT_EQ(plan_mark(job), plan_mark(without));
    EXPECT_NE(content_sha256(job), content_sha256(without));
}

TEST(OfferOnFile, what_cannot_be_is_told_with_its_place) {
    const auto problem = [](auto&& change) {
        Job job = with_offer();
        change(job);
        return text_of(validate(job));
    };
    const auto says = [](const std::string& text, const char* part) { return text.find(part) != std::string::npos; };
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.lines[0].choice_id = j.id; }), "offer.lines[0]"));
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.changes[0].quantity = std::nan(""); }), "quantity"));
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.changes[0].unit_price_minor = max_minor + 1; }), "unit_price_minor"));
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.instalments[0].percent = 101.0; }), "percent"));
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.instalments[0].id = j.offer.lines[0].id; }), "has too"));
    EXPECT_TRUE(says(problem([](Job& j) { j.offer.changes[0].item.clear(); }), "item"));
}

}  // namespace offer_codec_test
}  // namespace wg
