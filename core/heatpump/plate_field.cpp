#include "core/heatpump/plate_field.h"

#include <algorithm>
#include <cmath>

namespace wg::heatpump {

namespace {

constexpr double no_frost_kg_m2 = 1e-9;
constexpr double part_tolerance_w = 1e-6;
constexpr double coldest_c = -150.0, hottest_c = 400.0;  // wider than any boiling temperature met in a search

/// Heat the plate gives to refrigerant boiling at `boiling_c`; `slope` by that temperature. Plate heat less what passes
/// to the refrigerant falls strictly with plate temperature, at least by the conductance between the two.
double give(FieldPart& part, double boiling_c, double& slope_w_k) noexcept {
    const double ua = part.balance.plate().refrigerant_w_k;
    double low = coldest_c;
    double high = hottest_c;
    double t = std::clamp(part.plate_c, low, high);
    for (int i = 0; i < 100; ++i) {
        part.heat = part.balance.heat(t);
        const double miss = part.heat.total_w() - ua * (t - boiling_c);
        if (std::abs(miss) < part_tolerance_w) break;
        (miss > 0.0 ? low : high) = t;
        if (high - low < 1e-12) break;
        double next = t + miss / (ua - part.heat.slope_w_k);
        if (!(next > low && next < high)) next = 0.5 * (low + high);
        t = next;
    }
    part.plate_c = t;
    part.taken_w = part.heat.total_w();
    slope_w_k = part.heat.slope_w_k * ua / (ua - part.heat.slope_w_k);
    if (part.taken_w >= 0.0) return part.taken_w;
    part.plate_c = part.balance.temperature_at(0.0, t);
    part.heat = part.balance.heat(part.plate_c);
    part.taken_w = 0.0;
    slope_w_k = 0.0;
    return 0.0;
}

}  // namespace

PlateField::PlateField(const CollectorModel& model, std::span<const Mounting> groups, Joined joined) {
    int plates = 0;
    for (const Mounting& group : groups)
        plates += group.count;
    const double of_one = model.channel_drop_k / (model.channel_drop_at_w * model.channel_drop_at_w);
    const bool falls = joined == Joined::series && of_one > 0.0 && plates > 1;
    int passed = 0;
    for (const Mounting& group : groups) {
        first_.push_back(parts_.size());
        const int parts = falls ? group.count : 1;
        for (int i = 0; i < parts; ++i) {
            FieldPart part{
                PlateBalance(plate_of(model, falls ? 1 : group.count, group.tilt_deg, group.sky_view, group.rear_free),
                             Surroundings{}),
                {},
                0.0,
                0.0,
                {},
                0.0,
                0.0};
            // Boiling in a plate: half of its own fall and all of those behind it lie between it and the outlet.
            part.drop_k_per_w2 = falls ? of_one * (plates - passed - 0.5) : 0.5 * of_one / (plates * plates);
            part.plate_c = part.balance.air_c();
            parts_.push_back(part);
            ++passed;
        }
    }
    first_.push_back(parts_.size());
}

void PlateField::set_weather(std::size_t group, const Surroundings& surroundings) noexcept {
    for (std::size_t i = first_[group]; i < first_[group + 1]; ++i)
        parts_[i].balance.set_weather(surroundings);
}

void PlateField::set_light(std::size_t group, double front_w_m2, double rear_w_m2) noexcept {
    for (std::size_t i = first_[group]; i < first_[group + 1]; ++i)
        parts_[i].balance.set_light(front_w_m2, rear_w_m2);
}

void PlateField::set_frost(double step_s) noexcept {
    for (FieldPart& part : parts_)
        part.balance.set_frost(part.frost, step_s);
}

double PlateField::taken_w(double outlet_c, double evaporator_w, double& slope_w_k) noexcept {
    double sum = 0.0;
    slope_w_k = 0.0;
    for (FieldPart& part : parts_) {
        double slope = 0.0;
        sum += give(part, outlet_c + part.drop_k_per_w2 * evaporator_w * evaporator_w, slope);
        slope_w_k += slope;
    }
    return sum;
}

void PlateField::hold_back(double outlet_c, double evaporator_w) noexcept {
    double low = 0.0;
    double high = 300.0;
    double raise = 0.0;
    for (int i = 0; i < 100; ++i) {
        double slope = 0.0;
        const double excess = taken_w(outlet_c + raise, evaporator_w, slope) - evaporator_w;
        if (std::abs(excess) < part_tolerance_w) return;
        (excess > 0.0 ? low : high) = raise;
        if (high - low < 1e-12) return;
        double next = slope < 0.0 ? raise - excess / slope : high;
        if (!(next > low && next < high)) next = 0.5 * (low + high);
        raise = next;
    }
}

PlateHeat PlateField::heat() const noexcept {
    PlateHeat sum = parts_[0].heat;
    for (std::size_t i = 1; i < parts_.size(); ++i) {
        const PlateHeat& h = parts_[i].heat;
        sum.light_w += h.light_w;
        sum.air_w += h.air_w;
        sum.long_wave_w += h.long_wave_w;
        sum.latent_w += h.latent_w;
        sum.melt_w += h.melt_w;
        sum.slope_w_k += h.slope_w_k;
        sum.long_wave_slope += h.long_wave_slope;
        sum.latent_slope += h.latent_slope;
        sum.frost_front_kg_s += h.frost_front_kg_s;
        sum.frost_rear_kg_s += h.frost_rear_kg_s;
        sum.melt_front_w += h.melt_front_w;
        sum.melt_rear_w += h.melt_rear_w;
    }
    return sum;
}

double PlateField::mean_plate_c() const noexcept {
    if (parts_.size() == 1) return parts_[0].plate_c;
    double sum = 0.0;
    double area_m2 = 0.0;
    for (const FieldPart& part : parts_) {
        sum += part.balance.plate().area_m2 * part.plate_c;
        area_m2 += part.balance.plate().area_m2;
    }
    return sum / area_m2;
}

double PlateField::still_c() const noexcept {
    double sum = 0.0;
    double area_m2 = 0.0;
    for (const FieldPart& part : parts_) {
        double still = part.balance.temperature_at(0.0, part.balance.air_c());
        if (part.frost.lies()) still = std::min(still, 0.0);
        if (parts_.size() == 1) return still;
        sum += part.balance.plate().area_m2 * still;
        area_m2 += part.balance.plate().area_m2;
    }
    return sum / area_m2;
}

void PlateField::grow_frost(double seconds) noexcept {
    for (FieldPart& part : parts_) {
        const double area_m2 = part.balance.plate().area_m2;
        const auto lying = [&](double kg_m2, double forming_kg_s, double melting_w) {
            const double now = kg_m2 + (forming_kg_s - melting_w / fusion_j_kg) * seconds / area_m2;
            return now > no_frost_kg_m2 ? now : 0.0;
        };
        part.frost.front_kg_m2 = lying(part.frost.front_kg_m2, part.heat.frost_front_kg_s, part.heat.melt_front_w);
        part.frost.rear_kg_m2 = lying(part.frost.rear_kg_m2, part.heat.frost_rear_kg_s, part.heat.melt_rear_w);
    }
}

double PlateField::lying_kg() const noexcept {
    double sum = 0.0;
    for (const FieldPart& part : parts_)
        sum += (part.frost.front_kg_m2 + part.frost.rear_kg_m2) * part.balance.plate().area_m2;
    return sum;
}

double PlateField::melt(double kg) noexcept {
    const double lying = lying_kg();
    const double left = kg >= lying ? 0.0 : 1.0 - kg / lying;
    for (FieldPart& part : parts_) {
        part.frost.front_kg_m2 *= left;
        part.frost.rear_kg_m2 *= left;
        if (part.frost.front_kg_m2 + part.frost.rear_kg_m2 < no_frost_kg_m2) part.frost = {};
    }
    return lying * (1.0 - left);
}

double PlateField::melt_at_rest(double step_s) noexcept {
    double melted = 0.0;
    for (FieldPart& part : parts_) {
        if (!part.frost.lies()) continue;
        part.balance.set_frost(part.frost, step_s);
        const double heat_w = part.balance.heat(0.0).total_w();
        if (heat_w <= 0.0) continue;
        const double lying = (part.frost.front_kg_m2 + part.frost.rear_kg_m2) * part.balance.plate().area_m2;
        const double kg = heat_w * step_s / fusion_j_kg;
        const double left = kg >= lying ? 0.0 : 1.0 - kg / lying;
        melted += lying * (1.0 - left);
        part.frost.front_kg_m2 *= left;
        part.frost.rear_kg_m2 *= left;
        if (part.frost.front_kg_m2 + part.frost.rear_kg_m2 < no_frost_kg_m2) part.frost = {};
    }
    return melted;
}

bool PlateField::frost_lies() const noexcept {
    return std::any_of(parts_.begin(), parts_.end(), [](const FieldPart& part) { return part.frost.lies(); });
}

Frost PlateField::worst_frost() const noexcept {
    Frost worst;
    for (const FieldPart& part : parts_) {
        worst.front_kg_m2 = std::max(worst.front_kg_m2, part.frost.front_kg_m2);
        worst.rear_kg_m2 = std::max(worst.rear_kg_m2, part.frost.rear_kg_m2);
    }
    return worst;
}

}  // namespace wg::heatpump
