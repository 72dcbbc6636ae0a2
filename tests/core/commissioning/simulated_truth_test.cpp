// Verdicts on simulated installations whose truth is known. Rates and how they are simulated stand in
// docs/handbook/commissioning.md; 500 a verdict, 10,000 with WG_SWEEP=20 (tests/long.sh).

#include <gtest/gtest.h>

#include <cstdio>

#include "simulated_hold.h"
#include "simulated_vacuum.h"
#include "tests/tools/sweep.h"

namespace wg::commissioning {
namespace simulated_truth_test {

using simulated::Tally;

std::uint64_t first_seed() {
    const char* seed = std::getenv("WG_SEED");  // other seeds by hand: rates must not be those of one seed
    return seed == nullptr ? 20261128 : std::strtoull(seed, nullptr, 10);
}

void print(const char* name, const Tally& t) {
    std::printf("    %-44s %6d: passed %5.1f %%, failed %5.1f %%, cannot tell %5.1f %%\n", name, t.all,
                100.0 * t.share(t.passed), 100.0 * t.share(t.failed), 100.0 * t.share(t.cannot_tell));
}

void count(Tally& tally, HoldVerdict verdict) {
    ++tally.all;
    tally.passed += verdict == HoldVerdict::tight ? 1 : 0;
    tally.failed += verdict == HoldVerdict::leak ? 1 : 0;
    tally.cannot_tell += verdict != HoldVerdict::tight && verdict != HoldVerdict::leak ? 1 : 0;
}

TEST(SimulatedTruth, holds) {
    const simulated::Nitrogen gas;
    Tally sound, sound_long, beyond, over_limit, near, no_probe;
    int gained = 0, rate_known = 0, rate_near = 0;
    const int cases = sweep::cases(500);
    for (int i = 0; i < cases; ++i) {
        const simulated::Hold truth = simulated::hold(first_seed() * 1000003 + static_cast<std::uint64_t>(i), gas);
        const HoldResult r = judge(truth.told);
        const bool read = r.verdict != HoldVerdict::no_temperature;
        gained += r.verdict == HoldVerdict::gained ? 1 : 0;
        if (!read) {
            count(no_probe, r.verdict);
        } else if (truth.leak_g_year == 0.0) {
            count(sound, r.verdict);
            if (truth.told.hours >= 24.0) count(sound_long, r.verdict);
        } else {
            if (truth.leak_g_year >= r.detectable_g_year) count(beyond, r.verdict);
            if (truth.leak_g_year >= truth.told.leak_limit_g_year) count(over_limit, r.verdict);
            if (truth.leak_g_year < r.detectable_g_year) count(near, r.verdict);
        }
        if (r.verdict == HoldVerdict::leak && truth.leak_g_year > 5.0 * r.detectable_g_year) {
            ++rate_known;
            rate_near += std::fabs(r.leak_g_year / truth.leak_g_year - 1.0) < 0.35 ? 1 : 0;
        }
    }
    print("hold: a probe missing or in the sun", no_probe);
    print("hold: no leak", sound);
    print("hold: no leak, a day or longer", sound_long);
    print("hold: leak beyond what the hold can tell", beyond);
    print("hold: leak beyond the limit", over_limit);
    print("hold: leak below what the hold can tell", near);
    std::printf("    gained %d; rates of clear leaks within 35 %%: %d of %d\n", gained, rate_near, rate_known);
    EXPECT_TRUE(sound.under(sound.failed, 0.02)) << sound.failed << " false alarms of " << sound.all;
    EXPECT_TRUE(beyond.under(beyond.passed, 0.05)) << beyond.passed << " misses of " << beyond.all;
    EXPECT_TRUE(over_limit.under(over_limit.passed, 0.05)) << over_limit.passed << " misses of " << over_limit.all;
    EXPECT_LT(gained, 0.02 * cases + 3);
    EXPECT_GT(rate_near, 0.9 * rate_known);
    EXPECT_GT(sound_long.passed, 0.4 * sound_long.all) << "a verdict that never passes tells nothing";
}

/// Of the sizes named in the handbook, or sound beyond doubt; anything between is not counted.
enum class Size { sound, between, leak, moisture, outgassing, both };
Size size_of(const simulated::Rise& truth) {
    const bool leak = truth.leak_pa_min >= 6.0, wet = truth.water_g >= 0.1;
    switch (truth.truth) {
        case simulated::VacuumTruth::sound: return Size::sound;
        case simulated::VacuumTruth::leak: return leak ? Size::leak : Size::between;
        case simulated::VacuumTruth::moisture: return wet ? Size::moisture : Size::between;
        case simulated::VacuumTruth::outgassing: return truth.outgassing_pa >= 400.0 ? Size::outgassing : Size::between;
        case simulated::VacuumTruth::leak_and_moisture: return leak || wet ? Size::both : Size::between;
    }
    return Size::between;
}

TEST(SimulatedTruth, rises) {
    Tally sound, leak, moisture, outgassing, both, faulty;
    int leak_named = 0, moisture_named = 0, slope_known = 0, slope_near = 0;
    const int cases = sweep::cases(500);
    for (int i = 0; i < cases; ++i) {
        const simulated::Rise truth = simulated::rise(first_seed() * 1000033 + static_cast<std::uint64_t>(i));
        const VacuumResult r = judge(truth.told);
        const Size size = size_of(truth);
        const auto into = [&](Tally& tally) {
            ++tally.all;
            const bool passed = r.verdict == VacuumVerdict::dry_and_tight;
            const bool failed = r.verdict == VacuumVerdict::leak || r.verdict == VacuumVerdict::moisture ||
                                r.verdict == VacuumVerdict::outgassing;
            tally.passed += passed ? 1 : 0;
            tally.failed += failed ? 1 : 0;
            tally.cannot_tell += passed || failed ? 0 : 1;
        };
        switch (size) {
            case Size::sound: into(sound); break;
            case Size::leak: into(leak); break;
            case Size::moisture: into(moisture); break;
            case Size::outgassing: into(outgassing); break;
            case Size::both: into(both); break;
            case Size::between: break;
        }
        if (size != Size::sound && size != Size::between) into(faulty);
        leak_named += size == Size::leak && r.verdict == VacuumVerdict::leak ? 1 : 0;
        moisture_named += size == Size::moisture && r.verdict == VacuumVerdict::moisture ? 1 : 0;
        if (size == Size::leak && r.verdict == VacuumVerdict::leak) {
            ++slope_known;
            slope_near += std::fabs(r.slope_pa_min / truth.leak_pa_min - 1.0) < 0.35 ? 1 : 0;
        }
    }
    print("rise: sound", sound);
    print("rise: leak of 6 Pa a minute or more", leak);
    print("rise: 0.1 g of water or more", moisture);
    print("rise: 400 Pa of gas from oil or more", outgassing);
    print("rise: leak and water", both);
    std::printf("    failed leaks called a leak %d of %d, slope within 35 %% %d; failed moisture called so %d of %d\n",
                leak_named, leak.failed, slope_near, moisture_named, moisture.failed);
    EXPECT_TRUE(sound.under(sound.failed, 0.02)) << sound.failed << " false alarms of " << sound.all;
    EXPECT_TRUE(faulty.under(faulty.passed, 0.05)) << faulty.passed << " misses of " << faulty.all;
    for (const Tally* each : {&leak, &moisture, &outgassing, &both})
        EXPECT_TRUE(each->under(each->passed, 0.05)) << each->passed << " misses of " << each->all;
    EXPECT_GT(sound.passed, 0.5 * sound.all);
    EXPECT_GT(leak_named, 0.9 * leak.failed);
    EXPECT_GT(moisture_named, 0.8 * moisture.failed);
    EXPECT_GT(slope_near, 0.8 * slope_known);
}

}  // namespace simulated_truth_test
}  // namespace wg::commissioning
