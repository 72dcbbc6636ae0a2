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

}  // namespace
}  // namespace own_lists_test
}  // namespace wg::plan
