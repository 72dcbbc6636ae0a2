// The firm's price lists beside the program's.

#include "core/plan/own_lists.h"

#include <gtest/gtest.h>

#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace own_lists_test {
namespace {

std::string invented_list_as(const std::string& id) {
    std::string out = test::read_resource("prices/invented.json").value();
    const std::string old = "\"id\": \"invented-eur\"";
    out.replace(out.find(old), old.size(), "\"id\": \"" + id + "\"");
    return out;
}

TEST(OwnLists, StandBesideThoseOfTheProgram) {
    const Reference program = test::reference();
    const WithLists with = with_own_lists(program, {{"firm-2027", invented_list_as("firm-2027")}});
    EXPECT_TRUE(with.problems.empty());
    EXPECT_EQ(with.reference.price_lists.size(), program.price_lists.size() + 1);
    EXPECT_EQ(with.reference.price_lists.at("firm-2027").items.size(),
              program.price_lists.at("invented-eur").items.size());
}

TEST(OwnLists, OneThatCannotBeTakenLeavesTheOthers) {
    const Reference program = test::reference();
    const WithLists with = with_own_lists(program, {{"invented-eur", invented_list_as("invented-eur")},
                                                    {"broken", "{\"schema\": 1"},
                                                    {"firm-a", invented_list_as("firm-b")},
                                                    {"firm-2027", invented_list_as("firm-2027")}});
    EXPECT_EQ(with.problems.size(), 3U);
    EXPECT_EQ(with.reference.price_lists.count("firm-2027"), 1U);
    EXPECT_EQ(with.reference.price_lists.count("firm-b"), 0U);
    EXPECT_EQ(with.reference.price_lists.at("invented-eur").label, program.price_lists.at("invented-eur").label);
}

TEST(OwnLists, ANewJobTakesTheFirmsListThatHoldsOnTheDay) {
    Reference reference = test::reference();
    EXPECT_EQ(list_for_new_jobs(reference, "2027-06-01"), "invented-eur");
    parts::PriceList list = reference.price_lists.at("invented-eur");
    list.invented = false;
    const auto add = [&](const char* id, const char* from, const char* to) {
        list.id = id;
        list.valid_from = from;
        list.valid_to = to;
        reference.price_lists[id] = list;
    };
    add("z-2026", "2026-01-01", "2026-12-31");
    EXPECT_EQ(list_for_new_jobs(reference, "2027-06-01"), "z-2026") << "out of date, but the firm's";
    add("b-2027", "2027-01-01", "2027-12-31");
    add("a-2027", "2027-05-01", "2027-12-31");
    EXPECT_EQ(list_for_new_jobs(reference, "2026-06-01"), "z-2026");
    EXPECT_EQ(list_for_new_jobs(reference, "2027-02-01"), "b-2027");
    EXPECT_EQ(list_for_new_jobs(reference, "2027-06-01"), "a-2027");
    reference.withdrawn_lists = {"a-2027"};
    EXPECT_EQ(list_for_new_jobs(reference, "2027-06-01"), "b-2027");
}

TEST(OwnLists, TheFirmsListGoesBeforeTheProgramsEvenBeforeItsPricesAreChecked) {
    const WithLists with = with_own_lists(test::reference(), {{"z-copy", invented_list_as("z-copy")}});
    ASSERT_TRUE(with.reference.price_lists.at("z-copy").invented);
    EXPECT_EQ(list_for_new_jobs(with.reference, "2027-06-01"), "z-copy");
}

}  // namespace
}  // namespace own_lists_test
}  // namespace wg::plan
