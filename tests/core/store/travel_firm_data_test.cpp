// The firm's prices and equipment go with the jobs that are planned with them.

#include <gtest/gtest.h>

#include "core/store/equipment_book.h"
#include "core/store/price_book.h"
#include "core/store/rule_book.h"
#include "core/store/travel.h"
#include "tests/core/store/filled_store.h"
#include "tests/core/store/sent.h"
#include "tests/core/store/some_prices.h"
#include "tests/core/store/some_rules.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace travel_firm_data_test {
namespace {

constexpr const char* program = "Warmgable 0.1";

TEST_P(EachStore, TheFirmsPriceListGoesWithTheJobThatIsPricedWithIt) {
    const auto office = open();
    const auto tablet = Store::open(":memory:", at(0), "Cy on tablet").value();
    Job job = sample_job();
    job.price_list = "firm-2027";
    job = office->save(job, at(1)).value();
    EXPECT_EQ(send(*office, *tablet, job.id, 2).firm_data, 0) << "comes with the program";
    PriceBook prices(*office);
    const std::string first = price_list_text("firm-2027", "caf\xC3\xA9 1");
    const std::string second = price_list_text("firm-2027", "2");
    ASSERT_TRUE(prices.save("firm-2027", first, 0, "", at(3)).ok());
    ASSERT_TRUE(prices.save("other", price_list_text("other", "o"), 0, "", at(3)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 4).firm_data, 1);
    EXPECT_EQ(send(*office, *tablet, job.id, 6).firm_data, 0) << "is there";
    PriceBook there(*tablet);
    ASSERT_EQ(there.lists().value().size(), 1U) << "only the one that the job names";
    EXPECT_EQ(there.content("firm-2027", 1).value(), first);
    ASSERT_TRUE(prices.save("firm-2027", second, 1, "", at(8)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 9).firm_data, 1) << "newer";
    EXPECT_EQ(there.content("firm-2027", 2).value(), second);
    EXPECT_EQ(send(*tablet, *office, job.id, 11).firm_data, 0) << "the same comes back";
    ASSERT_TRUE(there.save("firm-2027", price_list_text("firm-2027", "tablet's"), 2, "", at(12)).ok());
    EXPECT_EQ(send(*tablet, *office, job.id, 14).firm_data, 0) << "what was saved here is not overtaken";
    EXPECT_EQ(prices.lists().value().front().version, 2);
    ASSERT_TRUE(prices.save("firm-2027", price_list_text("firm-2027", "3"), 2, "", at(15)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 16).firm_data, 0) << "nor there";
}

TEST_P(EachStore, TheFirmsEquipmentGoesWithTheJobThatUsesIt) {
    const auto office = open();
    const auto tablet = Store::open(":memory:", at(0), "Cy on tablet").value();
    EquipmentBook book(*office);
    ASSERT_TRUE(book.save(invented_cylinder("own-cylinder", "First"), 0, at(1)).ok());
    ASSERT_TRUE(book.save(invented_cylinder("own-other", "Other"), 0, at(1)).ok());
    Job job = sample_job();
    ASSERT_FALSE(job.choices.empty());
    job.choices[0].cylinder_model = "own-cylinder";
    job = office->save(job, at(2)).value();
    EXPECT_EQ(send(*office, *tablet, job.id, 3).firm_data, 1) << "the one that is used";
    EquipmentBook there(*tablet);
    ASSERT_EQ(there.current().value().items.size(), 1U);
    EXPECT_TRUE(there.current().value().items[0].came);
    EXPECT_EQ(there.current().value().items[0].content, invented_cylinder("own-cylinder", "First"));
    ASSERT_TRUE(book.save(invented_cylinder("own-cylinder", "Second"), 1, at(5)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 6).firm_data, 1) << "newer";
    EXPECT_EQ(send(*tablet, *office, job.id, 8).firm_data, 0);
    ASSERT_TRUE(there.save(invented_cylinder("own-cylinder", "Tablet's"), 2, at(9)).ok());
    ASSERT_TRUE(book.save(invented_cylinder("own-cylinder", "Third"), 2, at(10)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 11).firm_data, 0) << "what was saved there is not overtaken";
    auto parcel = Travel(*office).parcel_of(job.id, program, at(12)).value().parcel;
    parcel.firm_data = {{"equipment", "own-x", "2030-01-01T00:00:00Z", "{\"schema\": 1}"}};
    const auto taken = Travel(*tablet).take(parcel, at(13));
    ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    EXPECT_EQ(taken.value().left_out.size(), 1U);
    EXPECT_EQ(office->check().value(), "ok");
}

TEST_P(EachStore, WhatComesAsAPriceListAndIsNoneIsLeftOut) {
    const auto office = open();
    const Job job = office->save(sample_job(), at(1)).value();
    auto parcel = Travel(*office).parcel_of(job.id, program, at(3)).value().parcel;
    parcel.firm_data = {{"price_list", "firm", "2030-01-01T00:00:00Z", "{\"schema\": 2}"},
                        {"price_list", "firm", "2030-01-01T00:00:00Z", price_list_text("other", "of another id")}};
    const auto taken = Travel(*office).take(parcel, at(4));
    ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    EXPECT_EQ(taken.value().left_out.size(), 2U);
    EXPECT_TRUE(PriceBook(*office).lists().value().empty());
}

TEST_P(EachStore, TheFirmsRuleSetGoesWithTheJobThatIsReckonedWithIt) {
    const auto office = open();
    const auto tablet = Store::open(":memory:", at(0), "Cy on tablet").value();
    Job job = sample_job();
    job.rule_set = "firm-rules";
    job = office->save(job, at(1)).value();
    EXPECT_EQ(send(*office, *tablet, job.id, 2).firm_data, 0) << "comes with the program";
    RuleBook rules(*office);
    const std::string first = rule_set_text("firm-rules", "caf\xC3\xA9 1");
    ASSERT_TRUE(rules.save("firm-rules", first, 0, "", at(3)).ok());
    ASSERT_TRUE(rules.save("other", rule_set_text("other", "o"), 0, "", at(3)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 4).firm_data, 1);
    EXPECT_EQ(send(*office, *tablet, job.id, 6).firm_data, 0) << "is there";
    RuleBook there(*tablet);
    ASSERT_EQ(there.sets().value().size(), 1U) << "only the one that the job names";
    EXPECT_TRUE(there.sets().value()[0].came);
    EXPECT_EQ(there.content("firm-rules", 1).value(), first);
    ASSERT_TRUE(rules.save("firm-rules", rule_set_text("firm-rules", "2"), 1, "", at(8)).ok());
    ASSERT_TRUE(rules.withdraw("firm-rules", 2, "", at(8)).ok());
    EXPECT_EQ(send(*office, *tablet, job.id, 9).firm_data, 1) << "a withdrawn one stays with its jobs";
    EXPECT_FALSE(there.sets().value()[0].withdrawn);
    EXPECT_EQ(send(*tablet, *office, job.id, 11).firm_data, 0) << "the same comes back";
    ASSERT_TRUE(there.save("firm-rules", rule_set_text("firm-rules", "tablet's"), 2, "", at(12)).ok());
    EXPECT_EQ(send(*tablet, *office, job.id, 14).firm_data, 0) << "what was saved here is not overtaken";
    EXPECT_EQ(rules.sets().value().front().version, 3);
    auto parcel = Travel(*office).parcel_of(job.id, program, at(16)).value().parcel;
    parcel.firm_data = {{"rule_set", "x", "2030-01-01T00:00:00Z", "{\"schema\": 1}"},
                        {"rule_set", "x", "2030-01-01T00:00:00Z", rule_set_text("y", "of another id")}};
    const auto taken = Travel(*tablet).take(parcel, at(17));
    ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    EXPECT_EQ(taken.value().left_out.size(), 2U);
    EXPECT_EQ(there.sets().value().size(), 1U);
    EXPECT_EQ(office->check().value(), "ok");
}

}  // namespace
}  // namespace travel_firm_data_test
}  // namespace wg::store::test
