#pragma once
// What one fixing point holds, part by part, and what a ballasted frame holds. Inside core/fixing.

#include <array>
#include <cstddef>

#include "core/equipment/equipment.h"
#include "core/fixing/fixing.h"
#include "core/fixing/rules.h"

namespace wg::fixing {

/// How pull and shear of a part go together.
enum class Together {
    squares,    ///< (F_p/R_p)^2 + (F_v/R_v)^2, EN 1995-1-1 8.3.3
    sum,        ///< F_p/R_p + F_v/R_v, never less than any other rule
    bolt,       ///< F_v/R_v + F_p/(1.4 R_p), and F_p/R_p alone, EN 1993-1-8 table 3.4
    pull_only,  ///< F_p/R_p
};
struct PartHold {
    HeldBy part = HeldBy::unknown;
    Together together = Together::sum;
    double pull_n = 0.0, shear_n = 0.0;  ///< design resistances
};

/// Design resistances of one point.
struct Resistance {
    std::array<PartHold, 5> parts;
    std::size_t count = 0;
    bool by_screws = false;  ///< there are screws in timber
    bool by_maker = false;   ///< the method's data give resistances
    double pull_n = 0.0;     ///< the least of its parts; 0: not known
    double shear_n = 0.0;
    double one_screw_pull_k_n = 0.0;  ///< characteristic
    double one_screw_shear_k_n = 0.0;
    double one_head_k_n = 0.0;
    /// Holds to the building by itself: bolts alone do not, ballast is worked out for the whole frame.
    [[nodiscard]] bool known() const noexcept { return pull_n > 0.0 && shear_n > 0.0; }
    [[nodiscard]] const PartHold* part(HeldBy which) const noexcept;
};
[[nodiscard]] Resistance resistance_of(const FixingMethod& method, const CollectorModel& collector,
                                       const ActionRules& rules);

struct Use {
    double share = 0.0;
    HeldBy by = HeldBy::unknown;  ///< the part that is used most
};
[[nodiscard]] Use use_of(const PartHold& part, double pull_n, double shear_n);
/// The greatest among its parts.
[[nodiscard]] Use use_of(const Resistance& resistance, double pull_n, double shear_n);

/// EN 1995-1-1:2004+A1 8.7.2 (8.40b): characteristic resistance of one head drawn through timber, N.
[[nodiscard]] double head_pull_through_n(double head_mm, double strength_n_mm2, double density_kg_m3);

/// ISO 898-1: stress area of a bolt with coarse thread, mm2; 0 for sizes without one.
[[nodiscard]] double stress_area_mm2(double bolt_mm);
/// EN 1993-1-8 table 3.4: 0.9 f_ub A_s / gamma_M2 and 0.5 f_ub A_s / gamma_M2 (thread in the shear plane; the lesser of
/// its factors), N.
struct BoltHold {
    double tension_n = 0.0, shear_n = 0.0;
};
[[nodiscard]] BoltHold bolt_hold(double bolt_mm, double strength_n_mm2, double gamma);

}  // namespace wg::fixing
