// Logs of gauges as they may be exported, all invented: what is read, and what is refused at which line and column.

#include "core/commissioning/gauge_log.h"

#include <gtest/gtest.h>

#include <random>

#include "core/commissioning/vacuum_curve.h"
#include "core/quantity/text.h"
#include "tests/tools/sweep.h"

// The fuzzer knows one name; another test may include another entry.
#define LLVMFuzzerTestOneInput fuzz_gauge_log_one_input  // NOLINT
#include "../../fuzz/fuzz_gauge_log.cpp"  // NOLINT(bugprone-suspicious-include): one entry for fuzzer and test

namespace wg::commissioning {
namespace gauge_log_test {

GaugeLog read(const std::string& text) {
    const Result<GaugeLog> log = gauge_log_from_csv(text, "log.csv");
    EXPECT_TRUE(log.ok()) << (log.ok() ? "" : text_of(log.problems())) << "\n" << text.substr(0, 200);
    return log.ok() ? log.value() : GaugeLog{};
}

std::string refused(const std::string& text) {
    const Result<GaugeLog> log = gauge_log_from_csv(text, "log.csv");
    return log.ok() ? "read" : log.problems().front().text();
}

bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(GaugeLog, commas_stamps_and_micron) {
    const GaugeLog log = read(
        "Timestamp,Vacuum (micron),Ambient (F)\r\n"
        "2026-11-28T19:20:34+01:00,500,68\r\n"
        "2026-11-28T19:21:04+01:00,505.5,68\r\n"
        "2026-11-28T19:22:04.5+01:00,OL,68\r\n"
        "2026-11-28T18:23:04Z,520,69.8\r\n");
    ASSERT_EQ(log.points.size(), 3U);
    EXPECT_TRUE(log.has_absolute && log.has_temperature && !log.has_gauge);
    // 1 micron is a thousandth of 133.322387415 Pa.
    EXPECT_NEAR(*log.points[0].absolute_pa, 66.6612, 1e-4);
    EXPECT_NEAR(*log.points[0].c, 20.0, 1e-12);
    EXPECT_NEAR(*log.points[2].c, 21.0, 1e-12);
    EXPECT_EQ(log.points[1].seconds, 30.0);
    EXPECT_EQ(log.points[2].seconds, 150.0);
    EXPECT_EQ(log.started_at, "2026-11-28T19:20:34+01:00");
    ASSERT_EQ(log.notes.size(), 1U);
    EXPECT_EQ(log.notes[0], "1 line without a reading left aside");
}

TEST(GaugeLog, semicolons_decimal_commas_and_a_line_of_units) {
    const GaugeLog log = read(
        "Logger 4711;;;\n"
        "\n"
        "Datum;Uhrzeit;Druck;T1;Bemerkung\n"
        ";hh:mm:ss;mbar;\xC2\xB0"
        "C;\n"
        "28.11.2026;23:59:30;0,85;12,5;\n"
        "29.11.2026;00:00:30;1,05;12,4;Ventil zu\n");
    ASSERT_EQ(log.points.size(), 2U);
    EXPECT_NEAR(*log.points[0].absolute_pa, 85.0, 1e-9);
    EXPECT_NEAR(*log.points[1].c, 12.4, 1e-12);
    EXPECT_EQ(log.points[1].seconds, 60.0);
    EXPECT_EQ(log.started_at, "2026-11-28T23:59:30");
}

TEST(GaugeLog, tabs_any_order_and_seconds_from_the_start) {
    const GaugeLog log = read("plate_c\tp [bar]\tt [min]\n18.5\t25.00\t2\n18.6\t25.01\t2.5\n");
    ASSERT_EQ(log.points.size(), 2U);
    EXPECT_TRUE(log.has_gauge && !log.has_absolute);
    EXPECT_NEAR(*log.points[0].gauge_bar, 25.0, 1e-12);
    EXPECT_NEAR(*log.points[0].c, 18.5, 1e-12);
    EXPECT_NEAR(log.points[1].seconds, 30.0, 1e-9);
    EXPECT_TRUE(log.started_at.empty());
    EXPECT_FALSE(log.started_s_of_day.has_value());
}

TEST(GaugeLog, both_sides_of_a_manifold_and_what_is_left_aside) {
    const GaugeLog log = read(
        "Time,Low side (psig),High side (psig),Vacuum (mTorr),T1 (C),T2 (C)\n"
        "7:05:00 PM,100,210,,18,40\n7:06:00 PM,101,211,800,18,40\n");
    ASSERT_EQ(log.points.size(), 2U);
    EXPECT_NEAR(*log.points[0].gauge_bar, 6.894757293168, 1e-9) << "100 psi";
    EXPECT_FALSE(log.points[0].absolute_pa.has_value());
    EXPECT_NEAR(*log.points[1].absolute_pa, 0.8 * 101325.0 / 760.0, 1e-9);
    EXPECT_EQ(log.started_s_of_day, 19 * 3600.0 + 300.0);
    ASSERT_EQ(log.notes.size(), 2U);
    EXPECT_TRUE(says(log.notes[0], "High side"));
}

// The exact definitions: BIPM, SI brochure; psi by the pound and the inch of 1959.
TEST(GaugeLog, units_are_their_definitions) {
    struct Row {
        const char* name;
        double pa;
        bool gauge;
    };
    for (const Row& row : {Row{"P (Pa)", 1.0, false},
                           {"P (hPa)", 100.0, false},
                           {"P (kPa abs)", 1000.0, false},
                           {"P (kPa gauge)", 1000.0, true},
                           {"P (mbar)", 100.0, false},
                           {"P (mbar rel)", 100.0, true},
                           {"P (bar)", 1e5, true},
                           {"P (bar a)", 1e5, false},
                           {"P (bar abs)", 1e5, false},
                           {"P_psi", 6894.757293168361, true},
                           {"P, psia", 6894.757293168361, false},
                           {"vacuum micron", 0.133322387415, false},
                           {"P / Torr", 133.32236842105263, false},
                           {"P (mm Hg)", 133.322387415, false},
                           {"Pressure A (bar)", 1e5, true},
                           {"Gauge 1 (mbar)", 100.0, false},
                           {"gauge pressure (mbar)", 100.0, true}}) {
        std::string name = row.name;
        const GaugeLog log = read("time (s);" + name + "\n0;3\n1;3\n");
        ASSERT_EQ(log.points.size(), 2U) << name;
        EXPECT_EQ(log.has_gauge, row.gauge) << name;
        const double pa =
            row.gauge ? log.points[0].gauge_bar.value_or(0.0) * 1e5 : log.points[0].absolute_pa.value_or(0.0);
        EXPECT_NEAR(pa, 3.0 * row.pa, 1e-12 * 3.0 * row.pa) << name;
    }
}

TEST(GaugeLog, separators_at_the_end_of_lines_and_a_column_named_by_its_unit_alone) {
    EXPECT_EQ(read("time (s);P (Pa);;\n0;50;;\n1;51;\n2;52\n").points.size(), 3U);
    // A find of the fuzzer: the last column has a unit below, but no name.
    const GaugeLog log = read("time,\ns,psia\n0,10\n1,20\n");
    ASSERT_EQ(log.points.size(), 2U);
    EXPECT_NEAR(*log.points[1].absolute_pa, 137895.14586, 1e-4);
}

TEST(GaugeLog, a_clock_goes_past_midnight_once_and_never_back) {
    const GaugeLog log = read("time,P (Pa)\n23:58,50\n23:59,51\n00:01,52\n08:00,60\n");
    ASSERT_EQ(log.points.size(), 4U);
    EXPECT_EQ(log.points[2].seconds, 180.0);
    EXPECT_EQ(log.points[3].seconds, 8 * 3600.0 + 120.0);
    EXPECT_TRUE(says(refused("time,P (Pa)\n10:00,50\n09:58,51\n"), "log.csv:3:1: the time goes back by 120.0 s"));
    // More readings than the clock has steps: the first of each stands.
    EXPECT_EQ(read("time,P (Pa)\n10:00,50\n10:00,51\n10:01,52\n").points.size(), 2U);
    const GaugeLog elapsed = read("elapsed,P (Pa)\n00:00:00,50\n30:00:00,51\n");
    EXPECT_FALSE(elapsed.started_s_of_day.has_value()) << "no clock, but hours since the start";
    EXPECT_EQ(elapsed.points.back().seconds, 30 * 3600.0);
}

TEST(GaugeLog, what_cannot_be_is_refused_at_its_place_in_words) {
    EXPECT_TRUE(says(refused(""), "no line names a time and a pressure"));
    EXPECT_TRUE(says(refused("1,2\n3,4\n"), "no line names a time and a pressure"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n"), "fewer than two readings"));
    EXPECT_TRUE(says(refused("time (s),pressure\n0,1\n1,2\n"), "the pressure has no unit"));
    EXPECT_TRUE(says(refused("time (s),P (kPa)\n0,1\n1,2\n"), "kPa does not say"));
    EXPECT_TRUE(says(refused("P (Pa),T (C)\n0,1\n1,2\n"), "no column is a time"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n1,nan\n"), "log.csv:3:3: 'nan' is not a number"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n1,inf\n"), "log.csv:3:3: 'inf' is not a number"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n1,1e999\n"), "is not a number"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n1,-5\n"), "cannot be: -5.0 Pa absolute"));
    EXPECT_TRUE(says(refused("time (s),P (bar)\n0,25\n1,2500\n"), "cannot be"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n1\n"), "log.csv:3:1: the line has 1 columns"));
    EXPECT_TRUE(says(refused("time (s),P (mbar)\n0,1\n1,2,5\n"), "part columns by semicolons"));
    EXPECT_TRUE(says(refused("time (s);P (mbar)\n0;1,5\n1;2.5\n"), "lines above by a comma"));
    EXPECT_TRUE(says(refused("time (s);P (mbar)\n0;1.234,5\n1;2\n"), "two ways"));
    EXPECT_TRUE(says(refused("time (s),P (micron)\n0,\"1,234\"\n1,900\n"), "two ways"));
    EXPECT_TRUE(says(refused("time,P (Pa)\n03/04/2026 10:00,1\n03/04/2026 10:01,2\n"), "may be two days"));
    EXPECT_TRUE(says(refused("time,P (Pa)\n10:00,1\n2026-11-28 10:01,2\n"), "another way"));
    EXPECT_TRUE(says(refused("time,P (Pa)\n12,1\n13,2\n"), "name the unit of a number"));
    EXPECT_TRUE(says(refused("time,P (Pa)\n25:61,1\n13:00,2\n"), "is not a time"));
    EXPECT_TRUE(says(refused("time,P (Pa)\n2026-02-30 10:00,1\n2026-03-01 10:00,2\n"), "is not a time"));
    EXPECT_TRUE(says(refused("time (h),P (Pa)\n0,1\n2000,2\n"), "cannot be"));
    EXPECT_TRUE(says(refused(std::string("t\0i", 3)), "bytes that no text has"));
    EXPECT_TRUE(says(refused("time (s),P (Pa)\n0,1\n" + std::string(5000, '7') + "\n"), "longer than 4096"));
    EXPECT_TRUE(says(refused(std::string((8u << 20) + 1, ' ')), "larger than 8 MB"));
    std::string many = "time (s),P (Pa)\n";
    for (int i = 0; i < 100; ++i)
        many += "x,y\n";
    const Result<GaugeLog> log = gauge_log_from_csv(many, "log.csv");
    ASSERT_FALSE(log.ok());
    EXPECT_EQ(log.problems().size(), 20U);
    EXPECT_TRUE(says(log.problems().back().what, "too many problems"));
}

TEST(GaugeLog, too_many_lines_are_refused) {
    std::string text = "time (s),P (Pa)\n";
    for (int i = 0; i < 200000; ++i)
        text += std::to_string(i) + ",50\n";
    EXPECT_TRUE(says(refused(text), "more than 200,000 lines"));
}

/// Hours of pumping from air, then a rise to the vapour pressure of water: 5 s a line, 2 % of noise.
std::string pumped_and_wet(unsigned seed) {
    std::mt19937 random(seed);
    std::string text = "time (s);P (Pa)\n";
    const double vapour = water_vapour_pa(18.0);
    for (int s = 0; s <= 5400; s += 5) {
        const double pa = s < 3600 ? 60.0 + 1e5 * std::exp(-s / 180.0)
                                   : 60.0 + (vapour - 60.0) * (1.0 - std::exp(-(s - 3600) / 420.0));
        const double noise = 1.0 + 0.02 * (static_cast<double>(random() % 2001) / 1000.0 - 1.0);
        text += std::to_string(s) + ";" + fixed(pa * noise, 2) + "\n";
    }
    return text;
}

TEST(GaugeLog, thinned_it_keeps_the_curve_and_its_verdict) {
    for (unsigned seed = 0; seed < 5; ++seed) {
        const GaugeLog log = read(pumped_and_wet(seed));
        ASSERT_EQ(log.points.size(), 1081U);
        const std::vector<GaugePoint> few = thinned(log.points);
        ASSERT_EQ(few.size(), most_log_readings);
        EXPECT_EQ(few.front().seconds, 0.0);
        EXPECT_EQ(few.back().seconds, 5400.0);
        // Between those kept a straight line (of logarithms) is near every reading left out.
        double worst = 0.0;
        std::size_t k = 0;
        for (const GaugePoint& p : log.points) {
            while (few[k + 1].seconds < p.seconds)
                ++k;
            const double part = (p.seconds - few[k].seconds) / (few[k + 1].seconds - few[k].seconds);
            const double line = (1 - part) * std::log(*few[k].absolute_pa) + part * std::log(*few[k + 1].absolute_pa);
            worst = std::max(worst, std::fabs(line - std::log(*p.absolute_pa)));
        }
        EXPECT_LT(worst, 0.12);
        VacuumTest whole, thin;
        for (const auto& [from, into] : {std::pair{&log.points, &whole}, std::pair{&few, &thin}}) {
            into->coldest_c = 18.0;
            for (const GaugePoint& p : *from)
                if (p.seconds >= 3600.0) into->rise.push_back({(p.seconds - 3600.0) / 60.0, *p.absolute_pa});
        }
        EXPECT_EQ(judge(whole).verdict, VacuumVerdict::moisture);
        EXPECT_EQ(judge(thin).verdict, VacuumVerdict::moisture);
        EXPECT_NEAR(judge(thin).levels_at_pa, judge(whole).levels_at_pa, 0.03 * judge(whole).levels_at_pa);
    }
}

TEST(GaugeLog, thinning_leaves_short_logs_alone_and_keeps_a_step) {
    std::vector<GaugePoint> points;
    for (int i = 0; i < 1000; ++i)
        points.push_back({10.0 * i, std::nullopt, i < 637 ? 25.0 : 24.0, 20.0});
    EXPECT_EQ(thinned({points.begin(), points.begin() + 60}).size(), 60U);
    EXPECT_EQ(thinned(points, 0).size(), 2U);
    const std::vector<GaugePoint> few = thinned(points, 20);
    ASSERT_EQ(few.size(), 20U);
    const auto holds = [&](double s) {
        return std::any_of(few.begin(), few.end(), [&](const GaugePoint& p) { return p.seconds == s; });
    };
    EXPECT_TRUE(holds(6360.0) && holds(6370.0)) << "both sides of the step";
}

// Bytes changed at random and lines cut, doubled and swapped: read or refused in words, never anything else.
TEST(GaugeLog, damaged_logs_are_read_or_refused) {
    std::mt19937 random(20261128);
    const std::vector<std::string> logs = {
        "Timestamp,Vacuum (micron),Ambient (F)\n2026-11-28T19:20:34+01:00,500,68\n2026-11-28T19:21:04+01:00,505.5,68\n",
        "Datum;Uhrzeit;Druck;T1\n;;mbar;\xC2\xB0"
        "C\n28.11.2026;23:59:30;0,85;12,5\n29.11.2026;00:00:30;1,05;12,4\n",
        "t [min]\tp [bar]\n0\t25\n1\t25.01\n2\t25.02\n", "time,P (psia)\n7:05:00 PM,0.1\n7:06:00 PM,0.2\n"};
    const std::string odd = ",;\t\"\n\r.-+:TZ0129eEnaf(/)\0\x80\xFF";
    int taken = 0;
    const int cases = sweep::cases(20000);
    for (int i = 0; i < cases; ++i) {
        std::string text = logs[random() % logs.size()];
        for (unsigned n = random() % 4; n > 0 && !text.empty(); --n) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
                case 0: text[at] = odd[random() % odd.size()]; break;
                case 1: text.erase(at, random() % 6); break;
                case 2: text.insert(at, text.substr(random() % text.size(), random() % 20)); break;
                default: text.insert(at, 1, odd[random() % odd.size()]); break;
            }
        }
        fuzz_gauge_log_one_input(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
        taken += gauge_log_from_csv(text, "x").ok() ? 1 : 0;
    }
    EXPECT_GT(taken, cases / 5) << "the sweep reaches the rows";
    EXPECT_LT(taken, cases * 4 / 5);
}

}  // namespace gauge_log_test
}  // namespace wg::commissioning
