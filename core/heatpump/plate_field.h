#pragma once
// The plates of a set, which need not lie in one plane: each with its own light, temperature, frost and condensation,
// all on one refrigerant circuit. docs/handbook/plate-and-cycle.md has the equations.

#include <cstddef>
#include <span>
#include <vector>

#include "core/heatpump/plate.h"
#include "core/job/job.h"

namespace wg::heatpump {

/// Collectors in one plane under the same light.
struct Mounting {
    int count = 1;
    double tilt_deg = 35.0;
    double sky_view = 1.0;
    bool rear_free = false;
};

/// What is worked out as one plate: a whole group, or a single collector of it where the fall of pressure from one to
/// the next gives each its own evaporating temperature.
struct FieldPart {
    PlateBalance balance;
    Frost frost;
    double plate_c = 0.0;  ///< of the last point
    double taken_w = 0.0;  ///< by the refrigerant, at the last point
    PlateHeat heat;        ///< of the last point
    double step_k = 0.0;   ///< next step of its temperature while a point is searched
    /// Boiling over that at the field's outlet: this times the square of the evaporator heat.
    double drop_k_per_w2 = 0.0;
};

class PlateField {
   public:
    /// `groups` in the order in which the refrigerant passes them when joined in series.
    PlateField(const CollectorModel& model, std::span<const Mounting> groups, Joined joined);

    void set_weather(std::size_t group, const Surroundings& surroundings) noexcept;
    void set_light(std::size_t group, double front_w_m2, double rear_w_m2) noexcept;
    /// Tells the balances what ice lies; `step_s` bounds melting to it.
    void set_frost(double step_s) noexcept;

    /// Heat that the refrigerant takes up when it leaves the field boiling at `outlet_c` and takes up `evaporator_w` in
    /// all (which fixes the falls of pressure). A plate colder than its refrigerant takes up nothing and stands still.
    /// Falls with `outlet_c`, strictly while any plate takes up heat; `slope_w_k` is its slope. Parts keep what was
    /// found.
    double taken_w(double outlet_c, double evaporator_w, double& slope_w_k) noexcept;
    /// Plates so much warmer that together they take up just `evaporator_w`: refrigerant held back by the valve.
    void hold_back(double outlet_c, double evaporator_w) noexcept;
    /// Sum of the parts' heats of the last point.
    [[nodiscard]] PlateHeat heat() const noexcept;
    [[nodiscard]] double mean_plate_c() const noexcept;  ///< by area, of the last point
    [[nodiscard]] double still_c() const noexcept;       ///< the same with the pump off; 0 deg C at most under ice

    /// Ice after the last point has held for a time.
    void grow_frost(double seconds) noexcept;
    /// Takes ice off all faces in proportion to what lies there, at most what lies. Returns kg.
    double melt(double kg) noexcept;
    /// Pump off: ice holds a plate at 0 deg C while air and light bring more than it loses. Returns kg melted.
    double melt_at_rest(double step_s) noexcept;
    [[nodiscard]] double lying_kg() const noexcept;
    [[nodiscard]] bool frost_lies() const noexcept;
    [[nodiscard]] Frost worst_frost() const noexcept;  ///< thickest of each face

    [[nodiscard]] std::span<FieldPart> parts() noexcept { return parts_; }
    [[nodiscard]] std::span<const FieldPart> parts() const noexcept { return parts_; }
    /// One plate at the field's own outlet temperature: the balance has a closed form.
    [[nodiscard]] bool plain() const noexcept { return parts_.size() == 1 && parts_[0].drop_k_per_w2 == 0.0; }
    [[nodiscard]] double air_c() const noexcept { return parts_[0].balance.air_c(); }

   private:
    std::vector<FieldPart> parts_;
    std::vector<std::size_t> first_;  ///< part of each group, and the end
};

}  // namespace wg::heatpump
