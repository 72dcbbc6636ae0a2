#include "core/equipment/iso9806.h"

#include <algorithm>
#include <cmath>

#include "core/equipment/equipment.h"
#include "core/equipment/fields.h"

namespace wg {
namespace {

using fields::figure;

struct Limit {
    const char* field;
    double value, least, most;
    const char* unit;
};

std::vector<Limit> limits_of(const Iso9806& c) {
    return {{"eta0_b", c.zero_loss, 0.1, 1.1, ""},
            {"kd", c.diffuse, 0.5, 1.1, ""},
            {"b0", c.incidence_b0, 0.0, 0.5, ""},
            {"a1", c.a1, 1.0, 100.0, " W/(m2 K)"},
            {"a2", c.a2, 0.0, 0.2, " W/(m2 K2)"},
            {"a3", c.a3, 0.0, 20.0, " J/(m3 K)"},
            {"a4", c.a4, 0.0, 1.0, ""},
            {"a5", c.a5, 0.0, 200e3, " J/(m2 K)"},
            {"a6", c.a6, 0.0, 0.2, " s/m"},
            {"a7", c.a7, 0.0, 0.2, " s/m"},
            {"a8", c.a8, 0.0, 1e-6, " W/(m2 K4)"},
            {"tested_plate_to_fluid_w_m2k", c.plate_to_fluid_w_m2k, 5.0, 2000.0, " W/(m2 K)"}};
}

}  // namespace

double Iso9806::loss_w_m2(double wind_m_s, double over_air_k) const noexcept {
    const double x = std::clamp(over_air_k, coldest_over_air_k, hottest_over_air_k);
    const double wind = std::min(wind_m_s, strongest_wind_m_s) - reference_wind_m_s;
    const double inside = (a1 + a3 * wind) * x + a2 * x * x + a8 * x * x * x * x;
    return x == over_air_k ? inside : inside + loss_slope_w_m2k(wind_m_s, over_air_k) * (over_air_k - x);
}

double Iso9806::loss_slope_w_m2k(double wind_m_s, double over_air_k) const noexcept {
    const double x = std::clamp(over_air_k, coldest_over_air_k, hottest_over_air_k);
    const double wind = std::min(wind_m_s, strongest_wind_m_s) - reference_wind_m_s;
    return a1 + a3 * wind + 2.0 * a2 * x + 4.0 * a8 * x * x * x;
}

double Iso9806::incidence(double beam_w_m2, double cosine, double diffuse_w_m2) const noexcept {
    const double light = beam_w_m2 + diffuse_w_m2;
    if (!(light > 0.0)) return hemispherical();
    const double beam = cosine > 0.0 ? std::max(0.0, 1.0 - incidence_b0 * (1.0 / cosine - 1.0)) : 0.0;
    return (beam * beam_w_m2 + diffuse * diffuse_w_m2) / light;
}

std::vector<Iso9806Fault> faults_of(const Iso9806& c, double face_share, double slack) {
    std::vector<Iso9806Fault> faults;
    for (const Limit& limit : limits_of(c)) {
        if (limit.value >= limit.least / slack && limit.value <= limit.most * slack) continue;
        faults.push_back({limit.field,
                          "is " + figure(limit.value) + limit.unit + ", allowed is " + figure(limit.least) + " to " +
                              figure(limit.most) + limit.unit,
                          "Copy the coefficients of the 2017 edition, per m2 of gross area"});
    }
    if (!faults.empty()) return faults;
    // The loss's slope is least in still air at the cold end and greatest in strong wind at the hot one, since a2, a3
    // and a8 are not below zero.
    const double least = c.loss_slope_w_m2k(0.0, Iso9806::coldest_over_air_k);
    if (least < Iso9806::least_loss_w_m2k / slack)
        faults.push_back({"a1",
                          "leaves a loss of " + figure(least) + " W/(m2 K) in still air at 50 K below the air, under " +
                              figure(Iso9806::least_loss_w_m2k) + " W/(m2 K), with a2, a3 and a8 as they are",
                          "a1 of the 2017 edition is at 3 m/s: from coefficients of 2013 take c1 + 3 c3"});
    const double most = c.loss_slope_w_m2k(Iso9806::strongest_wind_m_s, Iso9806::hottest_over_air_k);
    const double allowed = slack * Iso9806::most_of_conductance * c.plate_to_fluid_w_m2k * face_share;
    if (most > allowed)
        faults.push_back({"tested_plate_to_fluid_w_m2k",
                          "allows a loss of " + figure(allowed) +
                              " W/(m2 K) of gross area, and the coefficients give " + figure(most) +
                              " in wind of 10 m/s at 100 K over the air",
                          "The loss contains this conductance and lies below it: check both, and their areas"});
    const double gust = Iso9806::strongest_wind_m_s - Iso9806::reference_wind_m_s;
    if (c.zero_loss * std::min(1.0, c.diffuse) <= c.a6 * gust)
        faults.push_back(
            {"a6", "takes away all light in wind of 10 m/s: " + figure(c.a6 * gust) + " of " + figure(c.zero_loss),
             "Copy a6 in s/m; at 3 m/s it changes nothing"});
    if (c.a4 < c.a7 * gust)
        faults.push_back(
            {"a7", "turns the loss to the sky round in wind of 10 m/s: " + figure(c.a7 * gust) + " of " + figure(c.a4),
             "Copy a7 in s/m; at 3 m/s it changes nothing"});
    return faults;
}

void move_absorptance(CollectorModel& model, double to) {
    if (model.iso9806) {
        model.iso9806->zero_loss *= to / model.absorptance;
        model.iso9806->a6 *= to / model.absorptance;
    }
    model.absorptance = to;
}

void move_emittance(CollectorModel& model, double to) {
    if (model.iso9806) {
        model.iso9806->a4 *= to / model.emittance;
        model.iso9806->a7 *= to / model.emittance;
    }
    model.emittance = to;
}

void move_rear_exposure(CollectorModel& model, double to) {
    if (model.iso9806) {
        // Wind reaches one face whole and the other in this share.
        const double more = model.iso9806->a3 * ((1.0 + to) / (1.0 + model.rear_exposure) - 1.0);
        model.iso9806->a3 += more;
        model.iso9806->a1 += more * Iso9806::reference_wind_m_s;
    }
    model.rear_exposure = to;
}

}  // namespace wg
