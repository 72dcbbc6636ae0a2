#pragma once
// A spot that has no finding but the notes every system has, to break one thing of.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "core/services/services.h"

namespace wg::services::test {

inline std::shared_ptr<const refrigerant::Properties> load(const std::string& name) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    auto result = refrigerant::Properties::from_json(text.str(), name);
    EXPECT_TRUE(result.ok()) << name;
    return result.ok() ? result.value() : nullptr;
}

/// A spot with everything there and room to spare, in a house that is told of in full.
inline Input good() {
    Input in;
    in.spot.id = "spot";
    in.spot.label = "Utility room";
    for (Service* s :
         {&in.spot.supply, &in.spot.earth, &in.spot.cold, &in.spot.hot, &in.spot.drain, &in.spot.recirculation}) {
        s->present = true;
    }
    in.spot.free_width_m = in.spot.free_depth_m = 0.9;
    in.spot.floor_load_measured = true;
    in.demand.cycle = TappingCycle::l;
    in.demand.set_point_c = 60.0;
    in.total_charge_kg = 1.2;
    in.spot.distribution_m = 8.0;
    in.electrics.earthing = EarthingSystem::tn_s;
    in.electrics.voltage_v = 230.0;
    in.electrics.frequency_hz = 50.0;
    in.electrics.phases = 1;
    in.electrics.main_fuse_a = 63.0;
    in.electrics.used_a = 30.0;
    in.electrics.surge_protection = true;
    in.water.static_pressure_bar = 3.0;
    in.water.hardness_mmol_l = 2.0;
    in.water.farthest_pipe_m = 8.0;
    in.water.fixtures = {{"f1", Fixture::basin, 1, {}},
                         {"f2", Fixture::shower, 1, {}},
                         {"f3", Fixture::kitchen_sink, 1, {}},
                         {"f4", Fixture::wc_cistern, 1, {}},
                         {"f5", Fixture::dishwasher, 1, {}}};
    in.water.dead_legs = {{"l1", "kitchen", 5.0, 13.0, false, {}}};
    return in;
}

inline const Finding* find(const Outcome& o, const std::string& code) {
    const auto at =
        std::find_if(o.findings.begin(), o.findings.end(), [&](const Finding& f) { return f.code == code; });
    return at == o.findings.end() ? nullptr : &*at;
}

inline void expect(const Input& in, const char* code, Severity severity) {
    const Outcome o = provide(in);
    ASSERT_NE(find(o, code), nullptr) << code;
    EXPECT_EQ(find(o, code)->severity, severity) << code;
    EXPECT_EQ(find(o, code)->place_id, "spot");
    EXPECT_FALSE(find(o, code)->rule.empty());
    EXPECT_FALSE(find(o, code)->source.empty());
}

}  // namespace wg::services::test
