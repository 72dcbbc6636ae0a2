#include "core/fixing/hold.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/screws.h"
#include "core/quantity/constants.h"

namespace wg::fixing {

const char* text_of(HeldBy part) noexcept {
    switch (part) {
        case HeldBy::unknown: break;
        case HeldBy::screws: return "screws in the timber";
        case HeldBy::head: return "screw heads";
        case HeldBy::bolt: return "bolt of the fixing";
        case HeldBy::profile_bolt: return "bolt at the profile";
        case HeldBy::bracket: return "bracket";
        case HeldBy::ballast_slides: return "ballast, sliding";
        case HeldBy::ballast_tips: return "ballast, tipping over";
        case HeldBy::ballast_lifts: return "ballast, lifting";
    }
    return "not known";
}

double head_pull_through_n(double head_mm, double strength_n_mm2, double density_kg_m3) {
    if (!(head_mm > 0.0) || !(strength_n_mm2 > 0.0) || !(density_kg_m3 > 0.0)) return 0.0;
    return strength_n_mm2 * head_mm * head_mm * std::pow(density_kg_m3 / 350.0, 0.8);
}

double stress_area_mm2(double bolt_mm) {
    // Size, pitch of the coarse thread (ISO 261).
    constexpr double threads[][2] = {{4, 0.7},  {5, 0.8},  {6, 1.0},  {8, 1.25}, {10, 1.5}, {12, 1.75},
                                     {14, 2.0}, {16, 2.0}, {18, 2.5}, {20, 2.5}, {22, 2.5}, {24, 3.0}};
    for (const auto& thread : threads) {
        if (std::abs(thread[0] - bolt_mm) < 1e-6) return 0.25 * pi * std::pow(bolt_mm - 0.9382 * thread[1], 2);
    }
    return 0.0;
}

BoltHold bolt_hold(double bolt_mm, double strength_n_mm2, double gamma) {
    const double force = strength_n_mm2 * stress_area_mm2(bolt_mm) / gamma;
    return {0.9 * force, 0.5 * force};
}

const PartHold* Resistance::part(HeldBy which) const noexcept {
    for (std::size_t i = 0; i < count; ++i) {
        if (parts[i].part == which) return &parts[i];
    }
    return nullptr;
}

Resistance resistance_of(const FixingMethod& method, const CollectorModel& collector, const ActionRules& rules) {
    Resistance r;
    const auto add = [&r](HeldBy part, Together together, double pull_n, double shear_n) {
        r.parts[r.count++] = {part, together, pull_n, shear_n};
    };
    r.by_screws = method.screw_diameter_mm > 0.0;
    r.by_maker = method.pull_out_n > 0.0 && method.shear_n > 0.0;
    if (r.by_screws) {
        r.one_screw_pull_k_n =
            screw_withdrawal_n(method.screw_diameter_mm, method.screw_grip_mm, rules.timber_density_kg_m3);
        r.one_screw_shear_k_n =
            screw_shear_n(method.screw_diameter_mm, method.screw_grip_mm, rules.timber_density_kg_m3);
        const double design = rules.k_mod / rules.gamma_timber * screws_together(method.screws_per_point);
        add(HeldBy::screws, Together::squares, design * r.one_screw_pull_k_n, design * r.one_screw_shear_k_n);
        r.one_head_k_n =
            head_pull_through_n(method.head_diameter_mm, method.head_strength_n_mm2, rules.timber_density_kg_m3);
        if (r.one_head_k_n > 0.0) add(HeldBy::head, Together::pull_only, design * r.one_head_k_n, 0.0);
    }
    if (r.by_maker) add(HeldBy::bracket, Together::sum, method.pull_out_n, method.shear_n);
    const bool held = r.count > 0;
    const auto add_bolt = [&](HeldBy part, double size_mm, double strength) {
        const BoltHold b = bolt_hold(size_mm, strength, rules.gamma_bolt);
        if (b.tension_n > 0.0) add(part, Together::bolt, b.tension_n, b.shear_n);
    };
    add_bolt(HeldBy::bolt, method.bolt_mm, method.bolt_n_mm2);
    add_bolt(HeldBy::profile_bolt, collector.profile_bolt_mm, collector.profile_bolt_n_mm2);
    if (!held) return r;
    r.pull_n = r.shear_n = 1e300;
    for (std::size_t i = 0; i < r.count; ++i) {
        r.pull_n = std::min(r.pull_n, r.parts[i].pull_n);
        if (r.parts[i].together != Together::pull_only) r.shear_n = std::min(r.shear_n, r.parts[i].shear_n);
    }
    return r;
}

Use use_of(const PartHold& part, double pull_n, double shear_n) {
    const double pull = part.pull_n > 0.0 ? pull_n / part.pull_n : 0.0;
    const double shear = part.shear_n > 0.0 ? shear_n / part.shear_n : 0.0;
    switch (part.together) {
        case Together::squares: return {std::hypot(pull, shear), part.part};
        case Together::sum: return {pull + shear, part.part};
        case Together::bolt: return {std::max(pull, shear + pull / 1.4), part.part};
        case Together::pull_only: return {pull, part.part};
    }
    return {};
}

Use use_of(const Resistance& r, double pull_n, double shear_n) {
    Use worst;
    for (std::size_t i = 0; i < r.count; ++i) {
        const Use u = use_of(r.parts[i], pull_n, shear_n);
        if (worst.by == HeldBy::unknown || u.share > worst.share) worst = u;
    }
    return worst;
}

}  // namespace wg::fixing
