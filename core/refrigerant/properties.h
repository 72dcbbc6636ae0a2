#pragma once
// Saturation and superheated-vapour properties from tables that tests/reference/make_refrigerants.py writes with a
// pinned CoolProp. Enthalpy reference: 200 kJ/kg for saturated liquid at 0 deg C (IIR).

#include <memory>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg::refrigerant {

struct Saturation {
    double pressure_pa = 0.0;
    double liquid_density_kg_m3 = 0.0;
    double vapour_density_kg_m3 = 0.0;
    double liquid_enthalpy_j_kg = 0.0;
    double vapour_enthalpy_j_kg = 0.0;
};

struct Vapour {
    double density_kg_m3 = 0.0;
    double enthalpy_j_kg = 0.0;
    double entropy_j_kgk = 0.0;
};

/// Immutable; safe to share between threads. Temperatures in deg C.
class Properties {
   public:
    /// Reads resources/refrigerants/<name>.json.
    [[nodiscard]] static Result<std::shared_ptr<const Properties>> from_json(std::string_view text,
                                                                             const std::string& file_name);
    ~Properties();
    Properties(const Properties&) = delete;
    Properties& operator=(const Properties&) = delete;

    [[nodiscard]] const std::string& name() const noexcept;
    [[nodiscard]] const std::string& source() const noexcept;  ///< equation of state and CoolProp version
    [[nodiscard]] double min_c() const noexcept;               ///< saturation range, -40..80
    [[nodiscard]] double max_c() const noexcept;
    [[nodiscard]] double critical_c() const noexcept;
    [[nodiscard]] double critical_pressure_pa() const noexcept;
    [[nodiscard]] double vapour_max_c() const noexcept;  ///< hottest vapour of the table, 140
    [[nodiscard]] double gwp100() const noexcept;
    [[nodiscard]] const std::string& safety_class() const noexcept;  ///< ISO 817: A1, A2L, A3
    [[nodiscard]] double lower_flammability_kg_m3() const noexcept;  ///< 0: not flammable

    /// Within the table; outside it is a programmer's mistake (assert) in these fast forms. Callers check first.
    [[nodiscard]] bool in_saturation_range(double temperature_c) const noexcept;
    [[nodiscard]] Saturation saturation(double temperature_c) const noexcept;
    [[nodiscard]] double saturation_pressure_pa(double temperature_c) const noexcept;
    /// Saturation pressure from min_c up to the critical point: past the table, ln p is taken linear in 1/T between
    /// the table's end and the critical point (within 0.5 % of the equation of state; for pressure ratings only).
    [[nodiscard]] double pressure_up_to_critical_pa(double temperature_c) const noexcept;
    [[nodiscard]] double liquid_enthalpy_j_kg(double temperature_c) const noexcept;
    /// Vapour `superheat_k` above saturation at `saturation_c`; table to 140 deg C.
    [[nodiscard]] bool in_vapour_range(double saturation_c, double superheat_k) const noexcept;
    [[nodiscard]] Vapour vapour(double saturation_c, double superheat_k) const noexcept;
    /// Enthalpy and temperature after isentropic compression to the saturation pressure at `condensing_c`. Entropy
    /// below that of saturated vapour follows the lever rule in the two-phase region, at `condensing_c`. Past the
    /// table's hottest vapour `in_range` is false and the values continue in a straight line.
    struct Outlet {
        bool in_range = false;
        double enthalpy_j_kg = 0.0;
        double temperature_c = 0.0;
    };
    [[nodiscard]] Outlet isentropic_outlet(double entropy_j_kgk, double condensing_c) const noexcept;
    /// Temperature of vapour at the saturation pressure of `condensing_c` with the given enthalpy. Below saturated
    /// vapour: `condensing_c`. Past the table: as above.
    [[nodiscard]] Outlet vapour_at_enthalpy(double enthalpy_j_kg, double condensing_c) const noexcept;

   private:
    struct Tables;
    explicit Properties(std::unique_ptr<const Tables> tables);
    std::unique_ptr<const Tables> tables_;
};

}  // namespace wg::refrigerant
