#include "core/pipework/run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

namespace wg::pipework {
namespace {

constexpr double liquid_c = 40.0;  // the rows' liquid: 3 K below 43 deg C
constexpr double handbook = 0.01;  // rows are rounded to about three figures

std::shared_ptr<const refrigerant::Properties> load(const std::string& name) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    auto result = refrigerant::Properties::from_json(text.str(), name);
    EXPECT_TRUE(result.ok()) << name;
    return result.ok() ? result.value() : nullptr;
}

/// Collector 2 m above the block, 8 m along: 10 m with one bend.
Input sample(const refrigerant::Properties* properties = nullptr) {
    Input in;
    in.collector_connection = {8.0, 0.0, 4.0};
    in.route = {{"a", RoutePointKind::roof_passage, {8.0, 0.0, 2.0}, ""}};
    in.block_connection = {0.0, 0.0, 2.0};
    in.block.maker = "Invented";
    in.block.name = "B";
    in.refrigerant = properties;
    in.block.expansion = ExpansionPlace::collector;  // the small line carries liquid
    return in;
}

const Finding* find(const Outcome& o, const std::string& code) {
    const auto at =
        std::find_if(o.findings.begin(), o.findings.end(), [&](const Finding& f) { return f.code == code; });
    return at == o.findings.end() ? nullptr : &*at;
}

TEST(Run, CountsLegsBendsPassagesAndLift) {
    Input in = sample();
    in.route.push_back({"b", RoutePointKind::wall_passage, {4.0, 0.0, 2.0}, ""});           // straight on
    in.route.push_back({"c", RoutePointKind::free, {2.0, 2.0 * std::tan(0.17), 2.0}, ""});  // 9.7 deg
    const pipework::Run r = run_of(in).run;
    EXPECT_EQ(r.legs.size(), 4U);
    EXPECT_EQ(r.passages, 2);
    EXPECT_EQ(r.legs[0].ends_at, RoutePointKind::roof_passage);
    EXPECT_EQ(r.bends, 2);  // at the roof, and 19.5 deg at c; not the straight one and not 9.7 deg
    EXPECT_DOUBLE_EQ(r.lift_m, 2.0);
}

TEST(Run, LengthsCoilsAndCharge) {
    Input in = sample();
    in.block.charge_kg = 1.2;
    in.block.precharged_max_m = 7.5;
    in.block.extra_charge_g_m = 20.0;
    const Outcome o = run_of(in);
    EXPECT_DOUBLE_EQ(o.run.length_m, 10.0);
    EXPECT_NEAR(o.run.coil_liquid_m, (10.0 + 0.15 + 0.30) * 1.05, 1e-12);  // stubs at collector and block
    EXPECT_DOUBLE_EQ(o.run.extra_charge_kg, 0.05);
    EXPECT_DOUBLE_EQ(o.run.total_charge_kg, 1.25);
    EXPECT_NEAR(o.run.equivalent_m, 10.0 + 20.0 * 0.00792, 1e-12);  // one bend of 20 bores of 9.52 x 0.8
    const Finding* extra = find(o, "run.extra-charge");
    ASSERT_NE(extra, nullptr);
    EXPECT_EQ(extra->severity, Severity::note);
    EXPECT_NE(extra->message.find("50 g"), std::string::npos);
}

TEST(Run, ChargeAsCarbonDioxide) {
    // Regulation (EU) 2024/573, R134a with a GWP of 1430: 1.2 kg are 1.716 t.
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    EXPECT_NEAR(run_of(sample(r134a.get())).run.total_charge_t_co2e, 1.716, 1e-9);
}

/// Input whose mass flow is the given one.
Input with_flow(const refrigerant::Properties& p, double kg_s, double suction_od_mm, Refrigerant kind) {
    Input in = sample(&p);
    in.block.refrigerant = kind;
    in.block.suction_od_mm = in.collector.suction_od_mm = suction_od_mm;
    in.block.superheat_k = 0.0;  // the rows are for saturated vapour
    in.rating.evaporator_w = kg_s * (p.saturation(0.0).vapour_enthalpy_j_kg - p.liquid_enthalpy_j_kg(liquid_c));
    in.coldest = in.rating;
    return in;
}

TEST(Run, SuctionLossesAgreeWithHandCalculatedRows) {
    // Hand calculation with Churchill 1977, 1.5 um roughness, tube bores as above; saturated vapour at 0 deg C.
    const auto r134a = load("R134a"), r290 = load("R290");
    ASSERT_TRUE(r134a != nullptr && r290 != nullptr);
    pipework::Run r = run_of(with_flow(*r134a, 0.010, 12.70, Refrigerant::r134a)).run;
    EXPECT_NEAR(r.suction_velocity_m_s / 7.16, 1.0, handbook);
    EXPECT_NEAR(r.suction_loss_pa / r.equivalent_m / 614.0, 1.0, handbook);
    EXPECT_NEAR(r.suction_drop_k / r.equivalent_m * 10.0 / 0.58, 1.0, handbook);
    r = run_of(with_flow(*r134a, 0.010, 15.88, Refrigerant::r134a)).run;
    EXPECT_NEAR(r.suction_velocity_m_s / 4.58, 1.0, handbook);
    EXPECT_NEAR(r.suction_loss_pa / r.equivalent_m / 208.0, 1.0, handbook);
    r = run_of(with_flow(*r290, 0.005, 12.70, Refrigerant::r290)).run;
    EXPECT_NEAR(r.suction_velocity_m_s / 4.99, 1.0, handbook);
    EXPECT_NEAR(r.suction_loss_pa / r.equivalent_m / 228.0, 1.0, handbook);
}

TEST(Run, LiquidHeadAtFortyDegrees) {
    // rho g h with liquid densities of the published equations of state: R134a 11.25, R290 4.58 kPa/m.
    const auto r134a = load("R134a"), r290 = load("R290");
    ASSERT_TRUE(r134a != nullptr && r290 != nullptr);
    EXPECT_NEAR(run_of(sample(r134a.get())).run.liquid_head_pa / 2.0, 11250.0, 0.005 * 11250.0);
    EXPECT_NEAR(run_of(sample(r290.get())).run.liquid_head_pa / 2.0, 4580.0, 0.005 * 4580.0);
    Input below = sample(r134a.get());
    std::swap(below.collector_connection.z_m, below.block_connection.z_m);
    EXPECT_LT(run_of(below).run.liquid_head_pa, 0.0);
}

TEST(Run, LiftingR134aEightMetresFlashes) {
    // 8 m of R134a: 90 kPa or 3.3 K, more than 3 K of subcooling.
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    Input in = sample(r134a.get());
    in.block.subcooling_k = 3.0;
    in.collector_connection.z_m = in.block_connection.z_m + 8.0;
    const Outcome high = run_of(in);
    ASSERT_NE(find(high, "run.flash-gas"), nullptr);
    constexpr double slope_pa_k = 27300.0;  // of R134a at 40 deg C
    EXPECT_NEAR(high.run.liquid_head_pa / slope_pa_k, 3.3, 0.05);
    in.block.expansion = ExpansionPlace::block;  // no liquid in the run: it cannot flash there
    EXPECT_EQ(find(run_of(in), "run.flash-gas"), nullptr);
    in.block.expansion = ExpansionPlace::collector;
    in.collector_connection.z_m = in.block_connection.z_m + 6.0;
    EXPECT_EQ(find(run_of(in), "run.flash-gas"), nullptr);
}

TEST(Rules, AreBrokenJustBeyondTheirLimitsAndNotAtThem) {
    Input in = sample();
    in.block.precharged_min_m = 10.0;
    in.block.precharged_max_m = 10.0;
    in.block.run_max_m = 10.0;
    in.block.lift_max_m = 2.0;
    Outcome o = run_of(in);
    for (const char* code : {"run.too-short", "run.too-long", "run.lift", "run.extra-charge"})
        EXPECT_EQ(find(o, code), nullptr) << code;
    in.block.precharged_min_m = 10.4;
    o = run_of(in);
    ASSERT_NE(find(o, "run.too-short"), nullptr);
    EXPECT_EQ(find(o, "run.too-short")->severity, Severity::caution);
    EXPECT_NE(find(o, "run.too-short")->remedy.find("0.40 m"), std::string::npos);
    in.block.run_max_m = 9.5;
    in.block.lift_max_m = 1.9;
    o = run_of(in);
    ASSERT_NE(find(o, "run.too-long"), nullptr);
    EXPECT_EQ(find(o, "run.too-long")->severity, Severity::stop);
    EXPECT_EQ(find(o, "run.too-long")->rule, "Equipment data of Invented B: run up to 9.50 m");
    ASSERT_NE(find(o, "run.lift"), nullptr);
    EXPECT_EQ(find(o, "run.lift")->severity, Severity::stop);
    std::swap(in.collector_connection.z_m, in.block_connection.z_m);  // collector below counts as well
    in.route.clear();
    EXPECT_NE(find(run_of(in), "run.lift"), nullptr);
}

TEST(Rules, ConnectionsOfOtherSizeNeedAReducer) {
    Input in = sample();
    in.collector.suction_od_mm = 12.70;
    const Outcome o = run_of(in);
    ASSERT_NE(find(o, "run.suction-size"), nullptr);
    EXPECT_EQ(find(o, "run.suction-size")->severity, Severity::caution);
    EXPECT_EQ(find(o, "run.liquid-size"), nullptr);
    in.collector.suction_od_mm = 9.53;  // the same 3/8 inch
    EXPECT_EQ(find(run_of(in), "run.suction-size"), nullptr);
}

TEST(Rules, SlowVapourThatRisesLeavesOilBehind) {
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    // 12.70 tube: oil needs 0.00265 kg/s (Jacobs 1976). The collector lies below, so vapour rises to the block.
    Input in = with_flow(*r134a, 0.0025, 12.70, Refrigerant::r134a);
    std::swap(in.collector_connection.z_m, in.block_connection.z_m);
    in.route.clear();
    EXPECT_NE(find(run_of(in), "run.oil-return"), nullptr);
    in.coldest.evaporator_w *= 1.12;
    EXPECT_EQ(find(run_of(in), "run.oil-return"), nullptr);
    in.coldest.evaporator_w /= 2.0;
    std::swap(in.collector_connection.z_m, in.block_connection.z_m);  // falls all the way: speed does not matter
    EXPECT_EQ(find(run_of(in), "run.oil-return"), nullptr);
}

TEST(Rules, LevelLegsAskForTheirSpeedAtTheLeastFlow) {
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    Input in = with_flow(*r134a, 0.010, 12.70, Refrigerant::r134a);  // 7.2 m/s: 36 % of it are 2.6, 33 % 2.4
    in.block.least_flow_share = 0.36;
    EXPECT_EQ(find(run_of(in), "run.oil-level"), nullptr);
    in.block.least_flow_share = 0.33;
    ASSERT_NE(find(run_of(in), "run.oil-level"), nullptr);
    EXPECT_NE(find(run_of(in), "run.oil-level")->message.find("8.00 m"), std::string::npos);
    in.coldest.evaporator_w = 0.0;
    EXPECT_EQ(find(run_of(in), "run.oil-level"), nullptr);
    ASSERT_NE(find(run_of(in), "run.oil-unknown"), nullptr);
    EXPECT_NE(find(run_of(in), "run.oil-unknown")->remedy.find("evaporating_min_c"), std::string::npos);
}

TEST(Rules, TrapsThatTheBlockAsksForAreCountedAndPlaced) {
    Input in = sample();
    in.block.oil_trap_every_m = 3.0;
    EXPECT_EQ(find(run_of(in), "run.oil-traps"), nullptr) << "vapour falls to the block";
    in.collector_connection = {8.0, 0.0, -5.0};
    const Outcome o = run_of(in);
    ASSERT_NE(find(o, "run.oil-traps"), nullptr);
    EXPECT_EQ(o.run.oil.traps.size(), 3u);
    EXPECT_NE(find(o, "run.oil-traps")->message.find("3 oil traps"), std::string::npos);
    EXPECT_NE(find(o, "run.oil-traps")->message.find("-2.00 m"), std::string::npos)
        << find(o, "run.oil-traps")->message;
    EXPECT_NEAR(o.run.coil_suction_m - o.run.coil_liquid_m, 3 * 0.40 * 1.05, 1e-12);
}

TEST(Rules, LegsTooShortForTheirBendsAreNamed) {
    Input in = sample();
    EXPECT_EQ(find(run_of(in), "run.bend-room"), nullptr);
    in.route.push_back({"b", RoutePointKind::free, {4.0, 0.0, 2.0}, ""});
    in.route.push_back({"c", RoutePointKind::free, {4.0, 0.05, 2.0}, ""});  // two right angles of 9.52: 67 mm
    ASSERT_NE(find(run_of(in), "run.bend-room"), nullptr);
    EXPECT_NE(find(run_of(in), "run.bend-room")->message.find("leg 3 (0.05 m)"), std::string::npos)
        << find(run_of(in), "run.bend-room")->message;
    EXPECT_NE(find(run_of(in), "run.bend-room")->message.find("0.07 m"), std::string::npos);
    in.route.back().position.y_m = 0.08;
    in.route.push_back({"d", RoutePointKind::free, {0.0, 0.08, 2.0}, ""});
    EXPECT_EQ(find(run_of(in), "run.bend-room"), nullptr);
}

TEST(Rules, SmallLineThatEatsThePressureOfTheDeviceIsSaid) {
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    Input in = with_flow(*r134a, 0.010, 12.70, Refrigerant::r134a);
    in.block.expansion = ExpansionPlace::block;
    EXPECT_EQ(find(run_of(in), "run.small-line-loss"), nullptr);
    in.collector_connection.x_m = 55.0;
    ASSERT_NE(find(run_of(in), "run.small-line-loss"), nullptr) << run_of(in).run.rating.device_share;
    in.block.liquid_od_mm = in.collector.liquid_od_mm = 9.52;
    EXPECT_EQ(find(run_of(in), "run.small-line-loss"), nullptr);
}

TEST(Run, EveryFigureHasItsWorking) {
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    for (const ExpansionPlace place : {ExpansionPlace::block, ExpansionPlace::collector}) {
        Input in = with_flow(*r134a, 0.008, 12.70, Refrigerant::r134a);
        in.block.expansion = place;
        const Outcome o = run_of(in);
        for (const char* key :
             {"run.length", "run.charge", "run.insulation", "run.small-insulation", "run.to-buy", "run.oil",
              "run.suction-loss", place == ExpansionPlace::block ? "run.small-line" : "run.liquid-head"}) {
            const auto at =
                std::find_if(o.workings.begin(), o.workings.end(), [&](const Working& w) { return w.key == key; });
            ASSERT_NE(at, o.workings.end()) << key;
            EXPECT_FALSE(at->result.empty() || at->formula.empty() || at->source.empty() || at->inputs.empty()) << key;
            for (const auto& [name, value] : at->inputs)
                EXPECT_EQ(value.find("unknown"), std::string::npos) << key << ' ' << name;
        }
    }
}

TEST(Rules, WithoutPropertiesLossesAreUnknownAndSaidSo) {
    const Outcome o = run_of(sample());
    ASSERT_NE(find(o, "run.losses-unknown"), nullptr);
    EXPECT_EQ(o.run.suction_loss_pa, 0.0);
    EXPECT_DOUBLE_EQ(o.run.length_m, 10.0);
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    Input in = sample(r134a.get());
    in.rating.evaporating_c = -90.0;
    EXPECT_NE(find(run_of(in), "run.losses-unknown"), nullptr);
}

TEST(Run, ALongerRunNeverNeedsLessChargeNorLosesLess) {
    const auto r134a = load("R134a");
    ASSERT_NE(r134a, nullptr);
    pipework::Run before;
    for (double length = 0.5; length < 40.0; length += 0.5) {
        Input in = sample(r134a.get());
        in.collector_connection = {length, 0.0, 2.0};
        in.route.clear();
        const pipework::Run r = run_of(in).run;
        EXPECT_GE(r.total_charge_kg, before.total_charge_kg);
        EXPECT_GT(r.suction_loss_pa, before.suction_loss_pa);
        EXPECT_GT(r.line_ua_w_k, before.line_ua_w_k);
        before = r;
    }
}

TEST(Run, EndsInOnePlaceAreAnEmptyRun) {
    Input in = sample();
    in.route.clear();
    in.collector_connection = in.block_connection;
    const pipework::Run r = run_of(in).run;
    EXPECT_TRUE(r.legs.empty());
    EXPECT_EQ(r.length_m, 0.0);
    EXPECT_EQ(r.bends, 0);
    in.route = {{"a", RoutePointKind::free, in.block_connection, ""},
                {"b", RoutePointKind::free, in.block_connection, ""}};
    EXPECT_EQ(run_of(in).run.bends, 0);  // corners on top of each other have no direction
}

}  // namespace
}  // namespace wg::pipework
