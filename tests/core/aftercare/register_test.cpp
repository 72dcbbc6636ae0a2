#include "core/aftercare/register.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/tools/sweep.h"

namespace wg::aftercare {
namespace register_test {
namespace {

using M = RefrigerantMove;

RefrigerantEntry entry(const std::string& id, const char* on, M move, double kg, const char* refrigerant = "R134a") {
    RefrigerantEntry made;
    made.id = id;
    made.on = on;
    made.move = move;
    made.kg = kg;
    made.refrigerant = refrigerant;
    return made;
}

Reading reading(const std::string& id, ReadingKind kind, const char* taken_at, double value) {
    Reading made;
    made.id = id;
    made.kind = kind;
    made.taken_at = taken_at;
    made.value = value;
    return made;
}

TEST(RegisterOfAJob, takes_weighed_in_taken_out_and_lost_under_the_readings_own_ids) {
    Job job;
    job.id = "job";
    job.record = {reading("1", ReadingKind::charge_added, "2027-06-01T12:00:00Z", 0.08),
                  reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 3.0),
                  reading("3", ReadingKind::refrigerant_recovered, "2028-06-01T12:00:00Z", 0.5),
                  reading("4", ReadingKind::refrigerant_lost, "2028-06-02T12:00:00Z", 0.2)};
    const auto entries = entries_of(job, "R290");
    ASSERT_EQ(entries.size(), 3U);
    EXPECT_EQ(entries[0].move, M::used);
    EXPECT_EQ(entries[1].move, M::recovered);
    EXPECT_EQ(entries[2].move, M::leaked);
    EXPECT_EQ(entries[1].on, "2028-06-01");
    EXPECT_EQ(entries[1].id, "3");
    EXPECT_EQ(entries[1].reading_id, "3");
    EXPECT_EQ(entries[1].job_id, "job");
    EXPECT_EQ(entries[1].refrigerant, "R290");
    job.invented = true;
    EXPECT_TRUE(entries_of(job, "R290").empty()) << "demonstration data stay out of the firm's register";
}

TEST(RegisterOfAJob, a_correction_comes_along_and_one_by_a_remark_takes_the_mass_away) {
    Job job;
    job.record = {reading("1", ReadingKind::charge_added, "2027-06-01T12:00:00Z", 0.8),
                  reading("2", ReadingKind::charge_added, "2027-06-01T12:05:00Z", 0.08),
                  reading("3", ReadingKind::remark, "2027-06-02T12:05:00Z", 0.0)};
    job.record[1].corrects_id = "1";
    const auto once = standing(entries_of({job}, "R290"));
    ASSERT_EQ(once.size(), 1U);
    EXPECT_DOUBLE_EQ(once[0].kg, 0.08);
    job.record[2].corrects_id = "2";
    const auto twice = standing(entries_of(job, "R290"));
    ASSERT_EQ(twice.size(), 1U);
    EXPECT_DOUBLE_EQ(twice[0].kg, 0.0);
    EXPECT_EQ(twice[0].move, M::used);
}

TEST(YearReport, by_hand) {
    // 10 kg received, 3 used, 1 recovered, 0.5 given back: 7.5 expected; 7.2 counted: 0.3 missing of 11 that passed.
    const auto reports =
        year_reports({entry("1", "2027-01-10", M::received, 10.0), entry("2", "2027-05-10", M::used, 3.0),
                      entry("3", "2027-06-10", M::recovered, 1.0), entry("4", "2027-07-10", M::returned, 0.5),
                      entry("5", "2027-07-11", M::leaked, 0.4), entry("6", "2027-12-31", M::counted, 5.0),
                      entry("7", "2027-12-31", M::counted, 2.2), entry("8", "2028-02-01", M::used, 1.0)});
    ASSERT_EQ(reports.size(), 2U);
    const YearReport& year = reports[1];
    EXPECT_EQ(year.year, 2027);
    EXPECT_DOUBLE_EQ(year.opening_kg, 0.0);
    EXPECT_DOUBLE_EQ(year.expected_kg, 7.5);
    ASSERT_TRUE(year.count);
    EXPECT_NEAR(year.count->kg, 7.2, 1e-12);
    EXPECT_NEAR(year.count->imbalance_kg(), -0.3, 1e-12);
    EXPECT_NEAR(year.count->imbalance_share(), -0.3 / 11.0, 1e-12);
    EXPECT_FALSE(year.explanations.empty());
    EXPECT_EQ(reports[0].year, 2028);
    EXPECT_NEAR(reports[0].opening_kg, 7.2, 1e-12) << "the next year begins with what was counted";
    EXPECT_EQ(reports[0].opening_from, (CivilDate{2027, 12, 31}));
    EXPECT_NEAR(reports[0].expected_kg, 6.2, 1e-12);
    EXPECT_FALSE(reports[0].count);
    EXPECT_TRUE(reports[0].explanations.empty());
}

TEST(YearReport, what_scales_and_hoses_make_is_not_worth_an_explanation) {
    const auto reports =
        year_reports({entry("1", "2027-01-10", M::received, 10.0), entry("2", "2027-12-31", M::counted, 9.81)});
    EXPECT_NEAR(reports[0].count->imbalance_share(), -0.019, 1e-12);
    EXPECT_TRUE(reports[0].explanations.empty());
    const auto more =
        year_reports({entry("1", "2027-01-10", M::received, 10.0), entry("2", "2027-12-31", M::counted, 10.21)});
    EXPECT_FALSE(more[0].explanations.empty());
}

TEST(YearReport, a_count_in_summer_is_held_against_the_moves_up_to_its_day) {
    const auto reports =
        year_reports({entry("1", "2027-01-10", M::received, 10.0), entry("3", "2027-07-01", M::counted, 9.0),
                      entry("2", "2027-07-01", M::used, 1.0), entry("4", "2027-08-01", M::used, 2.0),
                      entry("5", "2028-01-01", M::used, 1.0)});
    EXPECT_DOUBLE_EQ(reports[1].count->expected_kg, 9.0) << "moves of the day come before its count";
    EXPECT_DOUBLE_EQ(reports[1].count->imbalance_kg(), 0.0);
    EXPECT_DOUBLE_EQ(reports[1].expected_kg, 7.0);
    EXPECT_DOUBLE_EQ(reports[0].opening_kg, 7.0);
}

TEST(YearReport, refrigerants_are_kept_apart_and_bad_dates_left_out) {
    const auto reports = year_reports({entry("1", "2027-01-10", M::received, 10.0, "R290"),
                                       entry("2", "2027-01-10", M::received, 5.0, "R134a"),
                                       entry("3", "last week", M::used, 5.0, "R134a")});
    ASSERT_EQ(reports.size(), 2U);
    EXPECT_EQ(reports[0].refrigerant, "R134a");
    EXPECT_DOUBLE_EQ(reports[0].expected_kg, 5.0);
    EXPECT_DOUBLE_EQ(reports[1].expected_kg, 10.0);
}

TEST(YearReport, whatever_happens_the_books_close) {
    std::mt19937_64 random(20270621);
    const auto upto = [&random](int n) { return static_cast<int>(random() % static_cast<std::uint64_t>(n)); };
    for (int round = 0; round < wg::sweep::cases(400); ++round) {
        std::vector<RefrigerantEntry> entries;
        const bool counts = upto(2) == 0;
        const int many = 1 + upto(40);
        for (int i = 0; i < many; ++i) {
            const auto move = static_cast<M>(upto(counts ? 6 : 5));
            const CivilDate on = civil_from_days(days_from_civil({2025, 1, 1}) + upto(4 * 365));
            entries.push_back(entry(std::to_string(i), iso8601(on).c_str(), move, upto(5000) * 1e-3));
            if (upto(8) == 0 && i > 0) entries.back().corrects_id = std::to_string(upto(i));
        }
        std::vector<YearReport> reports = year_reports(entries);
        std::reverse(reports.begin(), reports.end());  // oldest first
        double stock_kg = 0.0;
        for (const YearReport& r : reports) {
            EXPECT_NEAR(r.expected_kg, r.opening_kg + stock_change_kg(r.moved), 1e-9);
            if (!counts) {
                EXPECT_NEAR(r.opening_kg, stock_kg, 1e-9);
                stock_kg = r.expected_kg;
            }
            if (r.count) {
                EXPECT_NEAR(r.count->imbalance_kg(), r.count->kg - r.count->expected_kg, 1e-12);
                EXPECT_GE(r.count->passed_kg + 1e-9, r.opening_kg);
            }
        }
        // The order in which entries stand does not matter, but for who corrects whom.
        if (std::none_of(entries.begin(), entries.end(), [](const auto& e) { return !e.corrects_id.empty(); })) {
            std::shuffle(entries.begin(), entries.end(), random);
            std::vector<YearReport> again = year_reports(entries);
            std::reverse(again.begin(), again.end());
            ASSERT_EQ(again.size(), reports.size());
            for (std::size_t i = 0; i < again.size(); ++i) {
                EXPECT_NEAR(again[i].expected_kg, reports[i].expected_kg, 1e-9);
                EXPECT_NEAR(again[i].opening_kg, reports[i].opening_kg, 1e-9);
            }
        }
    }
}

TEST(RegisterCsv, quotes_what_a_spreadsheet_would_split) {
    RefrigerantEntry odd = entry("1", "2027-01-10", M::received, 10.0);
    odd.note = "two bottles, \"old\" ones";
    const std::string text = register_csv({odd});
    EXPECT_NE(text.find(",\"two bottles, \"\"old\"\" ones\","), std::string::npos) << text;
    EXPECT_NE(text.find("2027-01-10,R134a,received,10.000,"), std::string::npos) << text;
    const std::string years = year_reports_csv(year_reports({odd}));
    EXPECT_EQ(std::count(years.begin(), years.end(), '\n'), 2);
    const std::string head = years.substr(0, years.find('\r'));
    const std::string first = years.substr(years.find('\n') + 1);
    EXPECT_EQ(std::count(head.begin(), head.end(), ','), std::count(first.begin(), first.end(), ','));
}

}  // namespace
}  // namespace register_test
}  // namespace wg::aftercare
