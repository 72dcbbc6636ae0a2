#pragma once
// How a plate can lie at all: on which surface, turned how, on a frame or not, held by which method.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::siting {

/// A surface with one way for the plate to lie on it. Places within it differ by position and hand only.
struct Seat {
    std::string surface_id;
    std::string surface_label;
    double turn_deg = 0.0;
    std::optional<double> frame_tilt_deg;  ///< level surfaces: the plate stands on a frame
    std::optional<double> frame_azimuth_deg;
    std::string fixing_method;  ///< id
    double tilt_deg = 0.0;      ///< of the plate
    double azimuth_deg = 0.0;
};

/// Every way that the collector's data allow: surfaces within its tilt range as they are; surfaces flatter than that on
/// a frame of the least recommended tilt, facing the equator; long or short side level as the maker says. The fixing
/// method is `preferred` where it suits the covering, else the first of the catalogue that does; surfaces that no
/// method suits are left out. A choice has one method: it must suit `also_on`, what its other collectors lie on.
[[nodiscard]] std::vector<Seat> seats_of(const Site& site, const CollectorModel& collector, const Catalogue& catalogue,
                                         const std::string& preferred_method,
                                         const std::vector<Covering>& also_on = {});

/// A placement in this seat, without id and label.
[[nodiscard]] Placement placement_in(const Seat& seat, Point2 middle, Hand hand);

}  // namespace wg::siting
