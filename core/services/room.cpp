#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

std::string metres(double v) {
    return fixed(v, 2) + " m";
}
std::string kilograms(double v) {
    return fixed(v, 0) + " kg";
}

void space(const Input& input, const SpotFindings& findings) {
    const CylinderSpot& s = input.spot;
    const CylinderModel& c = input.cylinder;
    const std::string data = "Equipment data of " + c.maker + ' ' + c.name;
    if (s.headroom_m < c.height_m) {
        findings.add(
            Severity::stop, Stage::layout, "spot.headroom",
            "The cylinder is " + metres(c.height_m) + " high, the spot has " + metres(s.headroom_m) + " of headroom",
            "Choose a spot with " + metres(c.height_m - s.headroom_m) + " more headroom or a lower cylinder",
            data + ": height " + metres(c.height_m), "equipment data");
    } else if (s.headroom_m < c.height_m + height_for_work_m) {
        findings.add(Severity::caution, Stage::layout, "spot.headroom-for-work",
                     "Only " + metres(s.headroom_m - c.height_m) + " are left over the cylinder",
                     "Check that anode and connections can be reached, or take a lower cylinder",
                     metres(height_for_work_m) + " over the cylinder", "common practice, no published source");
    }
    const double least_m = std::min(s.free_width_m, s.free_depth_m);
    if (least_m < c.diameter_m) {
        findings.add(Severity::stop, Stage::layout, "spot.floor-space",
                     "The cylinder is " + metres(c.diameter_m) + " across, the spot has " + metres(s.free_width_m) +
                         " x " + metres(s.free_depth_m),
                     "Choose a spot with " + metres(c.diameter_m - least_m) + " more room or a slimmer cylinder",
                     data + ": diameter " + metres(c.diameter_m), "equipment data");
    } else if (least_m < c.diameter_m + room_for_work_m) {
        findings.add(Severity::caution, Stage::layout, "spot.floor-space-for-work",
                     "Only " + metres(least_m - c.diameter_m) + " are left beside the cylinder",
                     "Check that it can be brought in and its connections reached",
                     metres(room_for_work_m) + " beside the cylinder", "common practice, no published source");
    }
}

void floor_load(const Input& input, const SpotFindings& findings, Outcome& out) {
    const CylinderSpot& s = input.spot;
    out.filled_mass_kg = input.cylinder.mass_kg + input.block.mass_kg +
                         input.cylinder.volume_l * 1e-3 * water_density_kg_m3(input.demand.cold_mean_c);
    const std::string found = s.floor_load_measured ? "as found" : "as assumed";
    if (out.filled_mass_kg > s.floor_load_kg) {
        findings.add(
            Severity::stop, Stage::visit, "spot.floor-load",
            "Filled, cylinder and block weigh " + kilograms(out.filled_mass_kg) + "; the floor may carry " +
                kilograms(s.floor_load_kg) + " there (" + found + ')',
            "Choose another spot, spread the load over joists, or have a structural engineer look at the floor",
            "Filled mass within the floor's load", "survey");
    } else if (!s.floor_load_measured && out.filled_mass_kg > 0.8 * s.floor_load_kg) {
        findings.add(Severity::caution, Stage::visit, "spot.floor-load-assumed",
                     "Filled, cylinder and block weigh " + kilograms(out.filled_mass_kg) + "; the " +
                         kilograms(s.floor_load_kg) + " of the floor are only assumed",
                     "Find out what the floor carries", "Filled mass within the floor's load", "survey");
    }
    out.workings.push_back({"services.mass",
                            "Filled mass on the floor",
                            "m = m_cylinder + m_block + rho V",
                            {{"cylinder", fixed(input.cylinder.mass_kg, 0) + " kg"},
                             {"block", fixed(input.block.mass_kg, 0) + " kg"},
                             {"water", fixed(input.cylinder.volume_l, 0) + " l"}},
                            kilograms(out.filled_mass_kg),
                            "equipment data",
                            false});
}

}  // namespace

void provide_room(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    space(input, findings);
    floor_load(input, findings, out);
}

Outcome provide(const Input& input) {
    Outcome out;
    provide_electrical(input, out);
    provide_supply_checks(input, out);
    provide_earthing(input, out);
    provide_water(input, out);
    provide_hot_pipes(input, out);
    provide_hygiene(input, out);
    provide_room(input, out);
    provide_flammable(input, out);
    return out;
}

}  // namespace wg::services
