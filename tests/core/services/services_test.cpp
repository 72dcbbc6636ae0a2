#include "tests/core/services/a_good_spot.h"

namespace wg::services {
namespace {

using test::expect;
using test::find;
using test::good;
using test::load;

TEST(Provide, AGoodSpotHasOnlyTheNotesOfBondingAndScalding) {
    const Outcome o = provide(good());
    ASSERT_EQ(o.findings.size(), 2U);
    EXPECT_EQ(o.findings[0].code, "supply.bonding");
    EXPECT_EQ(o.findings[1].code, "water.scald");
    EXPECT_TRUE(o.water.mixing_valve);
    EXPECT_TRUE(o.water.to_be_made.empty());
}

TEST(Water, ExpansionVesselOfAUsualCylinder) {
    const Water w = provide(good()).water;  // 250 l, 10 to 60 deg C, 3.0 to 5.4 bar: 4.20 l, 11.2 l, so 12 l
    EXPECT_NEAR(w.expansion_l, 4.20, 0.02);
    EXPECT_EQ(w.vessel_l, 12.0);
    EXPECT_EQ(w.safety_valve_bar, 6.0);
    EXPECT_EQ(w.vessel_precharge_bar, 3.0);
    Input weak = good();
    weak.cylinder.max_pressure_bar = 3.0;
    expect(weak, "water.pressure", Severity::stop);
}

TEST(Services, WhatIsMissingIsListedWithItsWay) {
    Input in = good();
    in.spot.drain = {false, 3.5};
    in.spot.cold = {false, 1.0};
    const Outcome o = provide(in);
    EXPECT_EQ(o.water.to_be_made, (std::vector<std::string>{"cold water, 1.0 m", "drain, 3.5 m"}));
    expect(in, "service.drain", Severity::note);
    EXPECT_NE(find(o, "service.drain")->message.find("3.5 m"), std::string::npos);
    in.spot.recirculation = {false, 0.0};  // none wanted
    EXPECT_EQ(find(provide(in), "service.recirculation"), nullptr);
    in.spot.recirculation = {true, 0.0};
    in.cylinder.recirculation_port = false;
    expect(in, "service.recirculation-port", Severity::caution);
}

TEST(Hygiene, SetPointsBelowSixtyAreNotedAndBelowFiftyFiveCautioned) {
    Input in = good();
    in.demand.set_point_c = 55.0;
    expect(in, "water.below-60", Severity::note);
    in.demand.set_point_c = 54.0;
    expect(in, "water.legionella", Severity::caution);
    in.demand.set_point_c = 60.0;
    in.demand.cycle = TappingCycle::s;  // 2.1 kWh a day: about 36 l at 60 deg C from 250 l
    expect(in, "water.standing", Severity::note);
}

TEST(Hygiene, ASingleWallInDrinkingWaterIsCautioned) {
    Input in = good();
    in.block.condenser_double_wall = false;
    expect(in, "water.single-wall-condenser", Severity::caution);
    in.block.condenser = CondenserKind::wrapped;
    EXPECT_EQ(find(provide(in), "water.single-wall-condenser"), nullptr);
}

TEST(Room, HeadroomAndFloorSpace) {
    Input in = good();
    in.spot.headroom_m = 2.0;  // exactly 0.30 m over 1.70 m
    EXPECT_EQ(find(provide(in), "spot.headroom-for-work"), nullptr);
    in.spot.headroom_m = 1.95;
    expect(in, "spot.headroom-for-work", Severity::caution);
    in.spot.headroom_m = 1.65;
    expect(in, "spot.headroom", Severity::stop);
    EXPECT_NE(find(provide(in), "spot.headroom")->remedy.find("0.05 m"), std::string::npos);
    in = good();
    in.spot.free_depth_m = 0.65;
    expect(in, "spot.floor-space-for-work", Severity::caution);
    in.spot.free_depth_m = 0.55;
    expect(in, "spot.floor-space", Severity::stop);
}

TEST(Room, FloorCarriesTheFilledMass) {
    Input in = good();
    const Outcome o = provide(in);
    EXPECT_NEAR(o.filled_mass_kg, 80.0 + 25.0 + 249.93, 0.01);  // 250 l at 10 deg C, 999.702 kg/m3
    in.spot.floor_load_kg = 350.0;
    expect(in, "spot.floor-load", Severity::stop);
    in.spot.floor_load_kg = 400.0;
    EXPECT_EQ(find(provide(in), "spot.floor-load-assumed"), nullptr);
    in.spot.floor_load_measured = false;
    expect(in, "spot.floor-load-assumed", Severity::caution);
}

TEST(Room, PropaneNeedsItsArea) {
    const auto r290 = load("R290");
    ASSERT_NE(r290, nullptr);
    Input in = good();
    in.refrigerant = r290.get();
    in.block.release_height_m = 1.8;
    in.total_charge_kg = 0.15;  // below m1: no rule
    EXPECT_EQ(find(provide(in), "room.charge"), nullptr);
    in.total_charge_kg = 0.2;  // needs 7.0 m2 at 1.8 m
    in.spot.floor_area_m2 = 6.9;
    expect(in, "room.charge", Severity::stop);
    EXPECT_NE(find(provide(in), "room.charge")->remedy.find("7.1 m2"), std::string::npos)
        << find(provide(in), "room.charge")->remedy;
    in.spot.floor_area_m2 = 7.1;
    EXPECT_EQ(find(provide(in), "room.charge"), nullptr);
    in.spot.floor_area_m2 = 4.0;
    in.spot.ventilated = true;
    expect(in, "room.charge-ventilated", Severity::caution);
    in.total_charge_kg = 5.0;
    expect(in, "room.charge-too-large", Severity::stop);
}

TEST(Room, AFlameNextToPropaneStops) {
    const auto r290 = load("R290"), r134a = load("R134a");
    ASSERT_TRUE(r290 != nullptr && r134a != nullptr);
    Input in = good();
    in.refrigerant = r290.get();
    in.total_charge_kg = 0.3;
    in.spot.floor_area_m2 = 1000.0;
    in.spot.ignition_source = true;
    expect(in, "room.ignition-source", Severity::stop);
    in.total_charge_kg = 0.1;
    expect(in, "room.ignition-source", Severity::caution);
    in.refrigerant = r134a.get();  // not flammable: no rule at all
    in.total_charge_kg = 10.0;
    for (const char* code : {"room.ignition-source", "room.charge", "room.charge-too-large"}) {
        EXPECT_EQ(find(provide(in), code), nullptr);
    }
}

}  // namespace
}  // namespace wg::services
