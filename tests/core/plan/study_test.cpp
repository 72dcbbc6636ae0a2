#include "core/plan/study.h"

#include <gtest/gtest.h>

#include <cstring>
#include <set>

#include "core/plan/plan.h"
#include "core/plan/study_sample.h"
#include "core/plan/weather_ensemble.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace study_test {

class StudyOfADemo : public ::testing::Test {
   protected:
    static void SetUpTestSuite() {
        const Job job = test::demo_job();
        with_ = with_weather_and_years(test::reference(), job.weather, job.site.location.altitude_m).value();
        study_ = new Study(study(job, *with_, options()).value());
    }
    static void TearDownTestSuite() {
        delete study_;
        with_.reset();
    }
    static StudyOptions options() {
        StudyOptions o;
        o.members = 60;
        o.weather_years = 12;
        return o;
    }
    static const Factor& factor(const std::string& key) {
        for (const Factor& f : study_->factors)
            if (f.key == key) return f;
        throw std::runtime_error("no factor " + key);
    }
    static const Bar& bar(Measure measure, const std::string& key) {
        for (const Bar& b : study_->of(measure).bars)
            if (study_->factors[b.factor].key == key) return b;
        throw std::runtime_error("no bar " + key);
    }
    static std::shared_ptr<const Reference> with_;
    static Study* study_;
};
std::shared_ptr<const Reference> StudyOfADemo::with_;
Study* StudyOfADemo::study_ = nullptr;

bool same_bits(double a, double b) {
    return std::memcmp(&a, &b, sizeof a) == 0;
}

void expect_same(const Study& a, const Study& b) {
    for (std::size_t m = 0; m < measure_count; ++m) {
        const Spread &x = a.spreads[m], &y = b.spreads[m];
        EXPECT_TRUE(same_bits(x.nominal, y.nominal));
        ASSERT_EQ(x.p10.has_value(), y.p10.has_value());
        if (x.p10) EXPECT_TRUE(same_bits(*x.p10, *y.p10));
        if (x.p90) EXPECT_TRUE(same_bits(*x.p90, *y.p90));
        ASSERT_EQ(x.bars.size(), y.bars.size());
        for (std::size_t i = 0; i < x.bars.size(); ++i) {
            EXPECT_EQ(x.bars[i].factor, y.bars[i].factor);
            EXPECT_TRUE(same_bits(x.bars[i].at_low, y.bars[i].at_low));
            EXPECT_TRUE(same_bits(x.bars[i].share, y.bars[i].share));
        }
    }
}

TEST_F(StudyOfADemo, IsTheSameToTheBitWhateverTheThreads) {
    for (const int threads : {1, 5}) {
        StudyOptions o = options();
        o.threads = threads;
        expect_same(study(test::demo_job(), *with_, o).value(), *study_);
    }
}

TEST_F(StudyOfADemo, AnotherSeedDrawsOtherMembersButMeansTheSame) {
    StudyOptions o = options();
    o.seed = 2;
    const Study other = study(test::demo_job(), *with_, o).value();
    const Spread &a = study_->of(Measure::electricity_kwh), &b = other.of(Measure::electricity_kwh);
    EXPECT_NE(*a.p50, *b.p50);
    EXPECT_NEAR(*a.p50, *b.p50, 0.05 * *a.p50);
    EXPECT_EQ(a.nominal, b.nominal);
}

TEST_F(StudyOfADemo, NominalIsThePlansOwnYearButForTheSteps) {
    const Plan planned = plan(test::demo_job(), *with_).value();
    EXPECT_NEAR(study_->of(Measure::electricity_kwh).nominal, planned.figures.electricity_kwh.mid,
                0.02 * planned.figures.electricity_kwh.mid);
    EXPECT_NEAR(study_->of(Measure::seasonal_factor).nominal, planned.figures.seasonal_factor.mid, 0.05);
    EXPECT_NEAR(study_->of(Measure::heat_kwh).nominal, planned.figures.heat_kwh.mid,
                0.01 * planned.figures.heat_kwh.mid);
}

TEST_F(StudyOfADemo, PercentilesAreInOrderRoundTheNominal) {
    for (const Measure m : {Measure::heat_kwh, Measure::electricity_kwh, Measure::seasonal_factor,
                            Measure::running_cost, Measure::saving, Measure::shortfall_kwh}) {
        const Spread& s = study_->of(m);
        ASSERT_TRUE(s.p10 && s.p50 && s.p90);
        EXPECT_LE(*s.p10, *s.p50);
        EXPECT_LE(*s.p50, *s.p90);
    }
    for (const Measure m : {Measure::heat_kwh, Measure::electricity_kwh, Measure::seasonal_factor}) {
        EXPECT_LT(*study_->of(m).p10, study_->of(m).nominal);
        EXPECT_GT(*study_->of(m).p90, study_->of(m).nominal);
    }
}

TEST_F(StudyOfADemo, BarsPointTheWayThatPhysicsSays) {
    const auto more_takes_more = [&](const char* key) {
        const Bar& b = bar(Measure::electricity_kwh, key);
        EXPECT_GT(b.at_high, b.at_low) << key;
    };
    const auto more_takes_less = [&](const char* key) {
        const Bar& b = bar(Measure::electricity_kwh, key);
        EXPECT_LT(b.at_high, b.at_low) << key;
    };
    for (const char* key : {"draw", "set_point", "standing_loss", "weather"})
        more_takes_more(key);
    for (const char* key : {"plate", "compressor", "condenser", "light", "absorptance", "cold", "wind", "room"})
        more_takes_less(key);
    // A price moves the cost and nothing else.
    EXPECT_EQ(bar(Measure::electricity_kwh, "electricity_price").span(), 0.0);
    EXPECT_GT(bar(Measure::running_cost, "electricity_price").span(), 0.0);
}

TEST_F(StudyOfADemo, BarsAreSortedAndSharesLieBetweenNothingAndAll) {
    for (const Spread& s : study_->spreads) {
        double sum = 0.0;
        for (std::size_t i = 0; i < s.bars.size(); ++i) {
            if (i > 0) EXPECT_GE(s.bars[i - 1].span(), s.bars[i].span());
            EXPECT_GE(s.bars[i].share, 0.0);
            EXPECT_LE(s.bars[i].share, 1.0);
            EXPECT_GE(s.bars[i].share_error, 0.0);
            sum += s.bars[i].share;
        }
        // Independent draws and a nearly linear year: the shares make about the whole, with what chance adds. Water
        // short is a matter of thresholds, its ranks are full of ties: there they need not.
        const bool linear = &s != &study_->of(Measure::shortfall_kwh) && &s != &study_->of(Measure::payback_y);
        if (linear) EXPECT_NEAR(sum, 1.0, 0.5);
    }
}

TEST_F(StudyOfADemo, EveryFactorSaysItsWidthAndItsGround) {
    std::set<std::string> keys;
    for (const Factor& f : study_->factors) {
        EXPECT_TRUE(keys.insert(f.key).second) << f.key;
        EXPECT_FALSE(f.title.empty() || f.distribution.empty() || f.ground.empty()) << f.key;
        EXPECT_LT(f.low, f.high) << f.key;
        EXPECT_LE(f.low, f.nominal) << f.key;
        EXPECT_GE(f.high, f.nominal) << f.key;
    }
    EXPECT_NEAR(factor("draw").low, 1.0 / 1.25, 1e-12);
    EXPECT_NEAR(factor("draw").high, 1.25, 1e-12);
}

TEST_F(StudyOfADemo, ValuesBeyondWhatAYearTakesAreKeptAndSaidSo) {
    Job job = test::demo_job();
    job.demand.set_point_c = 64.0;
    const Study hot = study(job, *with_, options()).value();
    ASSERT_FALSE(hot.remarks.empty());
    EXPECT_NE(hot.remarks.front().find("set-point"), std::string::npos);
}

TEST_F(StudyOfADemo, StopsWhenTold) {
    int calls = 0;
    double last = -1.0;
    const auto stopped = study(test::demo_job(), *with_, options(), [&](double share) {
        EXPECT_GE(share, last);
        last = share;
        return ++calls < 5;
    });
    ASSERT_TRUE(stopped.ok());
    EXPECT_TRUE(stopped.value().cancelled);
    EXPECT_EQ(calls, 5);
}

TEST_F(StudyOfADemo, RefusesWhatItCannotDo) {
    StudyOptions o = options();
    o.members = 3;
    o.threads = 0;
    const auto refused = study(test::demo_job(), *with_, o);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.problems().size(), 2U);
    Job bare = test::demo_job();
    for (Choice& choice : bare.choices)
        choice.placements.clear();
    EXPECT_FALSE(study(bare, *with_, options()).ok());
}

TEST(StudySample, LatinColumnsHaveOneDrawInEachCell) {
    const std::vector<double> column = detail::latin_column(7, "plate", 50);
    std::set<int> cells;
    for (const double p : column) {
        EXPECT_GT(p, 0.0);
        EXPECT_LT(p, 1.0);
        cells.insert(static_cast<int>(p * 50.0));
    }
    EXPECT_EQ(cells.size(), 50U);
    EXPECT_EQ(column, detail::latin_column(7, "plate", 50));
    EXPECT_NE(column, detail::latin_column(8, "plate", 50));
    EXPECT_NE(column, detail::latin_column(7, "draw", 50));
}

TEST(StudySample, RanksShareTiesAndCorrelationHasItsKnownValues) {
    EXPECT_EQ(detail::ranks({3.0, 1.0, 3.0, 2.0}), (std::vector<double>{3.5, 1.0, 3.5, 2.0}));
    const std::vector<double> up = {1, 2, 3, 4, 5}, down = {5, 4, 3, 2, 1}, flat = {3, 3, 3, 3, 3};
    EXPECT_NEAR(detail::rank_correlation(up, up), 1.0, 1e-12);
    EXPECT_NEAR(detail::rank_correlation(up, down), -1.0, 1e-12);
    EXPECT_EQ(detail::rank_correlation(up, flat), 0.0);
    // 1 - 6 sum d^2/(n (n^2 - 1)), Spearman 1904: d = 1, 1, 0, 0, 0.
    EXPECT_NEAR(detail::rank_correlation(up, {2, 1, 3, 4, 5}), 1.0 - 6.0 * 2.0 / (5.0 * 24.0), 1e-12);
}

TEST(StudySample, ErrorOfASquareIsWhatSamplesScatterBy) {
    // Two hundred columns against one other: no factor has a share, the squares scatter about by their error.
    const std::size_t n = 100;
    const std::vector<double> target = detail::ranks(detail::latin_column(1, "target", n));
    double sum = 0.0, squares = 0.0;
    const int columns = 400;
    for (int i = 0; i < columns; ++i) {
        const double r = detail::rank_correlation(target, detail::ranks(detail::latin_column(1, std::to_string(i), n)));
        sum += r * r;
        squares += r * r * r * r;
    }
    const double mean = sum / columns;
    const double deviation = std::sqrt(squares / columns - mean * mean);
    EXPECT_NEAR(deviation, detail::squared_correlation_error(0.0, n), 0.25 * deviation);
}

}  // namespace study_test
}  // namespace wg::plan
