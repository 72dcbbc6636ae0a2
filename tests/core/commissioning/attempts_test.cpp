#include "core/commissioning/attempts.h"

#include <gtest/gtest.h>

namespace wg::commissioning {
namespace attempts_test {

Reading entry(const std::string& id, ReadingKind kind, double value, std::optional<double> second = std::nullopt,
              const std::string& at = "2027-04-12T10:00:00+02:00") {
    Reading r;
    r.id = id;
    r.kind = kind;
    r.value = value;
    r.second_value = second;
    r.taken_at = at;
    return r;
}

Expected as_planned() {
    Expected out;
    out.test_pressure_bar = 25.0;
    out.max_pressure_bar = 38.0;
    out.volume_outdoors = 1.0;
    return out;
}

std::vector<Reading> two_holds() {
    return {entry("s1", ReadingKind::pressure_hold_start, 25.0, 15.0, "2027-04-12T09:00:00+02:00"),
            entry("e1", ReadingKind::pressure_hold_end, 23.0, 15.0, "2027-04-12T11:00:00+02:00"),
            entry("x", ReadingKind::remark, 0.0),
            entry("s2", ReadingKind::pressure_hold_start, 25.0, 15.0, "2027-04-12T12:00:00+02:00"),
            entry("e2", ReadingKind::pressure_hold_end, 25.0, 15.0, "2027-04-13T12:00:00+02:00")};
}

TEST(Attempts, a_failed_hold_stays_beside_the_one_that_passed_later) {
    const std::vector<Reading> record = two_holds();
    const std::vector<Attempt> all = attempts(record, as_planned());
    int failed = 0;
    for (const Attempt& one : all) {
        EXPECT_EQ(one.subject, "Pressure hold");
        if (one.verdict == Verdict::failed) {
            ++failed;
            EXPECT_EQ(one.reading_ids, (std::vector<std::string>{"s1", "e1"}));
            EXPECT_EQ(one.last_entry, 1U);
        }
    }
    EXPECT_EQ(failed, 1);
    ASSERT_FALSE(all.empty());
    // The newest attempt is what `assess` says of the whole record.
    const std::vector<Assessment> now = assess(record, as_planned());
    ASSERT_EQ(now.size(), 1U);
    EXPECT_EQ(all.back().verdict, now.front().verdict);
    EXPECT_EQ(all.back().words, now.front().words);
    EXPECT_EQ(all.back().reading_ids, now.front().reading_ids);
}

TEST(Attempts, a_verdict_that_turned_over_on_the_same_start_hides_nothing) {
    std::vector<Reading> record = two_holds();
    record.resize(2);
    record.push_back(entry("e1b", ReadingKind::pressure_hold_end, 25.0, 15.0, "2027-04-13T09:00:00+02:00"));
    const std::vector<Attempt> all = attempts(record, as_planned());
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].verdict, Verdict::failed);
    EXPECT_NE(all[1].verdict, Verdict::failed);
}

TEST(Attempts, a_corrected_reading_stands_as_it_was_judged_before) {
    std::vector<Reading> record = {entry("a", ReadingKind::insulation_resistance, 0.2)};
    Reading right = entry("b", ReadingKind::insulation_resistance, 200.0);
    right.corrects_id = "a";
    record.push_back(right);
    const std::vector<Attempt> all = attempts(record, as_planned());
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].verdict, Verdict::failed);
    EXPECT_EQ(all[1].verdict, Verdict::passed);
    EXPECT_TRUE(attempts({}, as_planned()).empty());
}

}  // namespace attempts_test
}  // namespace wg::commissioning
