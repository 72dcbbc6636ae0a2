#include "core/pipework/workings.h"

#include "core/pipework/tube.h"
#include "core/quantity/text.h"

namespace wg::pipework {
namespace {

std::string long_m(double v) {
    return fixed(v, 2) + " m";
}
std::string kilopascal(double pa) {
    return fixed(pa * 1e-3, 2) + " kPa";
}
std::string degrees_c(double c) {
    return fixed(c, 1) + " deg C";
}
std::string watts(double w) {
    return fixed(w, 0) + " W";
}

std::string at_words(const OperatingPoint& at) {
    return degrees_c(at.evaporating_c) + " evaporating, " + degrees_c(at.condensing_c) + " condensing, " +
           watts(at.evaporator_w);
}

Working length_working(const Run& run) {
    return {"run.length",
            "Length of the run, one way",
            "sum of legs",
            {{"legs", std::to_string(run.legs.size())},
             {"bends over 10 deg", std::to_string(run.bends)},
             {"passages", std::to_string(run.passages)},
             {"out of doors", long_m(run.lagging.outdoor_m)},
             {"indoors", long_m(run.lagging.indoor_m)}},
            long_m(run.length_m),
            "survey and layout",
            false};
}

Working charge_working(const Input& input, const Run& run) {
    return {"run.charge",
            "Refrigerant in the system",
            "charge + max(0, length - pre-charged) x extra per metre",
            {{"factory charge", fixed(input.block.charge_kg, 3) + " kg"},
             {"pre-charged up to", long_m(input.block.precharged_max_m)},
             {"length", long_m(run.length_m)},
             {"extra", fixed(input.block.extra_charge_g_m, 1) + " g/m"}},
            fixed(run.total_charge_kg, 3) + " kg",
            "equipment data of " + input.block.maker + ' ' + input.block.name,
            false};
}

Working lagging_working(const Input& input, const Run& run, const LineLagging& line, const char* key,
                        const char* title) {
    const Air& air = input.air;
    return {key,
            title,
            "face temperature at or above the dew point: t_a - q / (h pi D_e), q = (t_a - t) / (ln(D_e/D)/(2 pi k) + "
            "1/(h pi D_e))",
            {{"room air", fixed(air.room_c, 0) + " deg C, " + fixed(100.0 * air.room_humidity, 0) + " %"},
             {"its dew point", degrees_c(dew_point_c(air.room_c, air.room_humidity))},
             {"line at its coldest", degrees_c(line.tube_indoor_c)},
             {"indoors", fixed(line.indoor_mm, 0) + " mm on " + long_m(run.lagging.indoor_m)},
             {"outdoor air", fixed(air.outdoor_c, 0) + " deg C, " + fixed(100.0 * air.outdoor_humidity, 0) + " %"},
             {"line in the mean", degrees_c(line.tube_outdoor_c)},
             {"out of doors", fixed(line.outdoor_mm, 0) + " mm on " + long_m(run.lagging.outdoor_m)},
             {"conductivity", fixed(Lagging{}.conductivity_w_mk, 3) + " W/(m K)"},
             {"heat through it", fixed(line.ua_w_k, 2) + " W/K"},
             {"heat gained (less than 0: lost)",
              watts(line.gain_w) + ", " + watts(line.gain_low_w) + " to " + watts(line.gain_high_w)}},
            fixed(line.wall_mm, 0) + " mm",
            "ISO 12241:2008, form; humidity and outdoor air assumed; walls of 6, 9, 13, 19, 25, 32 mm",
            true};
}

Working suction_working(const Run& run) {
    const LineFlow& line = run.rating.suction;
    return {"run.suction-loss",
            "Pressure loss of the suction line",
            "f (L_e/D) G2/(2 rho); K = (loss + column where vapour rises) / (dp/dT)",
            {{"at", at_words(run.rating.at)},
             {"equivalent length", long_m(run.equivalent_m)},
             {"flow", fixed(run.rating.flow_kg_s * 1e3, 2) + " g/s"},
             {"vapour", fixed(run.rating.suction_density_kg_m3, 2) + " kg/m3"},
             {"speed", fixed(line.velocity_m_s, 2) + " m/s"},
             {"Reynolds", fixed(line.reynolds, 0)},
             {"column (less than 0: gives pressure)", kilopascal(line.head_pa)}},
            kilopascal(line.friction_pa) + " = " + fixed(line.drop_k, 2) + " K",
            "Churchill, Chemical Engineering 84(24), 1977; valid for any Reynolds number in round tube",
            true};
}

Working small_working(const Input& input, const Run& run) {
    const PointLines& p = run.rating;
    const bool two_phase = input.block.expansion == ExpansionPlace::block;
    Working out{two_phase ? "run.small-line" : "run.liquid-head",
                two_phase ? "Small line with liquid and vapour from the expansion device in the block"
                          : "Small line with liquid to the expansion device at the collector",
                two_phase ? "dp/dz = (A + 2 (B - A) x)(1 - x)^(1/3) + B x3, stepped from the collector at constant "
                            "enthalpy; column rho_h g h"
                          : "f (L_e/D) G2/(2 rho) + rho g h",
                {{"at", at_words(p.at)},
                 {"equivalent length", long_m(run.small_equivalent_m)},
                 {"lift", long_m(run.lift_m)},
                 {"flow", fixed(p.flow_kg_s * 1e3, 2) + " g/s"},
                 {"speed", fixed(p.small.velocity_m_s, 2) + (two_phase ? " m/s at the collector" : " m/s")},
                 {"friction", kilopascal(p.small.friction_pa)},
                 {"column (less than 0: gives pressure)", kilopascal(p.small.head_pa)}},
                {},
                {},
                true};
    if (two_phase) {
        out.inputs.push_back({"vapour behind the device", fixed(100.0 * p.quality, 0) + " % by mass"});
        out.inputs.push_back({"temperature there", degrees_c(p.small_inlet_c)});
        out.inputs.push_back({"left for the device", fixed(100.0 * p.device_share, 0) + " % of the difference"});
        out.result = kilopascal(p.small.friction_pa + p.small.head_pa) + " = " + fixed(p.small.drop_k, 2) + " K";
        out.source =
            "Mueller-Steinhagen and Heck 1986; horizontal and rising flow in round tube, a third of its own points lie "
            "outside +-30 %";
    } else {
        out.inputs.push_back({"liquid", degrees_c(p.liquid_c)});
        out.inputs.push_back({"over boiling at the block", kilopascal(p.over_boiling_pa)});
        out.result = kilopascal(p.left_over_boiling_pa) + " over boiling at the collector";
        out.source = "Churchill 1977 and hydrostatics; below 0 kPa gas boils out";
    }
    return out;
}

Working oil_working(const Input& input, const Run& run) {
    const OilReturn& oil = run.oil;
    std::string risers;
    for (const Riser& riser : oil.risers)
        risers += (risers.empty() ? "" : ", ") + long_m(riser.height_m);
    return {"run.oil",
            "Vapour speed at the least flow",
            "least flow / (rho A); riser 0.7225 (rho g D (rho_oil - rho))^0.5 / rho",
            {{"at", at_words(oil.at)},
             {"flow share", fixed(100.0 * input.block.least_flow_share, 0) + " %"},
             {"risers", risers.empty() ? "none" : risers},
             {"level legs", long_m(oil.level_m)},
             {"asked in risers", fixed(oil.riser_m_s, 2) + " m/s (practice " + fixed(riser_oil_m_s, 1) + " m/s)"},
             {"asked in level legs", fixed(level_oil_m_s, 1) + " m/s (practice)"},
             {"oil traps", std::to_string(oil.traps.size())}},
            fixed(oil.velocity_m_s, 2) + " m/s",
            "Jacobs, Scheideman, Kazem, Macken, ASHRAE Transactions 82, 1976 (risers); common practice, no published "
            "source (level legs)",
            true};
}

Working buying_working(const Run& run) {
    const auto coils = [](const LineToBuy& line) {
        std::string words = fixed(line.buy_m, 1) + " m";
        for (std::size_t i = 0; i < line.coils_m.size(); ++i)
            words += (i == 0 ? " from coils of " : " + ") + fixed(line.coils_m[i], 0);
        return line.coils_m.empty() ? words : words + " m";
    };
    return {"run.to-buy",
            "Tube to buy",
            "(legs + stubs + traps) x 1.05",
            {{"legs", long_m(run.length_m)},
             {"stubs", long_m(collector_stub_m) + " at the collector, " + long_m(block_stub_m) + " at the block"},
             {"oil traps in the suction line", std::to_string(run.oil.traps.size()) + " x " + long_m(trap_m)},
             {"small line cut", long_m(run.small_to_buy.cut_m)},
             {"suction line cut", long_m(run.suction_to_buy.cut_m)},
             {"lagging in lengths of 2 m", std::to_string(run.small_to_buy.lagging_lengths) + " small, " +
                                               std::to_string(run.suction_to_buy.lagging_lengths) + " suction"}},
            "small line " + coils(run.small_to_buy) + "; suction line " + coils(run.suction_to_buy),
            "common practice, no published source",
            true};
}

}  // namespace

std::vector<Working> workings_of(const Input& input, const Run& run) {
    std::vector<Working> out;
    out.push_back(length_working(run));
    out.push_back(charge_working(input, run));
    out.push_back(lagging_working(input, run, run.lagging.suction, "run.insulation", "Insulation of the suction line"));
    out.push_back(
        lagging_working(input, run, run.lagging.small, "run.small-insulation", "Insulation of the small line"));
    if (!run.legs.empty()) out.push_back(buying_working(run));
    if (run.oil.known) out.push_back(oil_working(input, run));
    if (!run.rating.known) return out;
    out.push_back(suction_working(run));
    out.push_back(small_working(input, run));
    return out;
}

Working losses_working(const Run& run, const std::string& names) {
    const LinesMean& m = run.mean;
    Working out{
        "run.losses",
        "Losses of the lines over the year",
        "means by hours; share of the factor, first order: 0.6 K / (condensing - evaporating), K of the suction line",
        {{"points", names}},
        "suction line " + fixed(m.suction_drop_k, 2) + " K, about " + fixed(100.0 * m.factor_share, 1) +
            " % of the seasonal factor",
        "Churchill 1977, Mueller-Steinhagen and Heck 1986; share by Carnot's factor and years of operation",
        true};
    for (const PointLines& p : run.points) {
        if (!p.known) continue;
        out.inputs.push_back({at_words(p.at), "suction " + kilopascal(p.suction.friction_pa) + " = " +
                                                  fixed(p.suction.drop_k, 2) + " K, small line " +
                                                  kilopascal(p.small.friction_pa) + ", column " +
                                                  kilopascal(p.small.head_pa)});
    }
    return out;
}

}  // namespace wg::pipework
