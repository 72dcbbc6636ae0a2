// Verdicts on the running pump and the first heating over the record as entered, against the model itself.
#include "core/commissioning/conditions.h"
#include "tests/core/commissioning/verdicts.h"
#include "tests/core/heatpump/fixture.h"

namespace wg::commissioning {
namespace verdicts_test {

class PumpAsEntered : public ::testing::Test {
   protected:
    void SetUp() override {
        input.collector.volume_l = 1.0;
        input.refrigerant = fluid.get();
        input.groups[0].front_w_m2.assign(8760, 0.0);
        for (std::size_t h = 0; h < 8760; ++h)
            if (h % 24 >= 8 && h % 24 < 16)
                input.groups[0].front_w_m2[h] = 200.0 + 50.0 * static_cast<double>(h / 24 % 11);
        model.pump = &pump;
        model.input = &input;
        model.plate = heatpump::plate_of(input.collector, 1, 35.0, 1.0, false);
    }
    /// What the model itself says, read twelve minutes after one another.
    [[nodiscard]] std::vector<Reading> run_as_modelled() const {
        StartConditions c;
        c.surroundings = surroundings_of(16.0, 2.0);
        c.surroundings.front_w_m2 = 400.0;
        c.light_known = true;
        c.water_c = 25.0;
        c.plate = model.plate;
        c.line = model.line;
        const StartResult r = judge(pump, c, {});
        return {entry(K::outdoor_temperature, 16.0, "2027-06-10T12:00:00Z"),
                entry(K::water_temperature, 25.0, "2027-06-10T12:05:00Z"),
                entry(K::irradiance, 400.0, "2027-06-10T12:06:00Z"),
                entry(K::wind_speed, 2.0, "2027-06-10T12:07:00Z"),
                entry(K::suction_temperature, r.bands[0].mid, "2027-06-10T12:12:00Z"),
                entry(K::suction_pressure, r.bands[1].mid, "2027-06-10T12:13:00Z"),
                entry(K::discharge_temperature, r.bands[2].mid, "2027-06-10T12:14:00Z"),
                entry(K::discharge_pressure, r.bands[3].mid, "2027-06-10T12:15:00Z")};
    }
    std::shared_ptr<const refrigerant::Properties> fluid = heatpump_test::properties("R134a");
    heatpump::HeatPump pump = heatpump_test::pump(BlockModel{}, *fluid);
    season::Input input;
    Model model;
};

TEST_F(PumpAsEntered, readings_as_modelled_pass_with_bands_and_name_what_is_missing) {
    const Assessment a = judged(run_as_modelled(), "Running pump", of_plan(), &model);
    EXPECT_EQ(a.verdict, Verdict::passed) << a.words;
    ASSERT_EQ(a.bands.size(), start_quantities);
    EXPECT_TRUE(a.bands[0].read);
    EXPECT_TRUE(says(a.words, "not read: supply current")) << a.words;
    EXPECT_TRUE(says(a.words, "superheat by gas and pressure 5.0 K")) << a.words;
    EXPECT_EQ(a.reading_ids.size(), 8U);
}

TEST_F(PumpAsEntered, low_suction_with_hot_gas_fails_with_causes) {
    auto record = run_as_modelled();
    record[4].value += 6.0;
    record[5].value -= 0.9;
    record[6].value += 17.0;
    const Assessment a = judged(record, "Running pump", of_plan(), &model);
    EXPECT_EQ(a.verdict, Verdict::failed) << a.words;
    ASSERT_FALSE(a.causes.empty());
    EXPECT_TRUE(says(a.words, "suction pressure")) << a.words;
    EXPECT_FALSE(a.next.empty());
}

TEST_F(PumpAsEntered, superheat_of_an_instrument_is_held_against_the_blocks) {
    auto record = run_as_modelled();
    record.push_back(entry(K::superheat, 5.0, "2027-06-10T12:16:00Z"));
    EXPECT_EQ(judged(record, "Running pump", of_plan(), &model).verdict, Verdict::passed);
    record.back().value = 18.0;
    const Assessment a = judged(record, "Running pump", of_plan(), &model);
    EXPECT_EQ(a.verdict, Verdict::failed) << a.words;
    EXPECT_FALSE(a.causes.empty());
}

TEST_F(PumpAsEntered, readings_of_another_hour_do_not_belong) {
    auto record = run_as_modelled();
    record[0].taken_at = "2027-06-10T07:00:00Z";
    const Assessment a = judged(record, "Running pump", of_plan(), &model);
    EXPECT_EQ(a.verdict, Verdict::cannot_tell);
    EXPECT_TRUE(says(a.words, "outdoor air is missing")) << a.words;
}

TEST_F(PumpAsEntered, without_a_light_reading_the_brightest_of_that_hour_bounds_the_bands) {
    auto record = run_as_modelled();
    const Assessment known = judged(record, "Running pump", of_plan(), &model);
    record.erase(record.begin() + 2);
    const Assessment open = judged(record, "Running pump", of_plan(), &model);
    EXPECT_GT(open.bands[1].high - open.bands[1].low, known.bands[1].high - known.bands[1].low);
    EXPECT_DOUBLE_EQ(brightest_w_m2(model, "2027-06-10T12:00:00Z").value(), 700.0) << "200 + 50 x 10";
    EXPECT_DOUBLE_EQ(brightest_w_m2(model, "2027-06-10T02:00:00Z").value(), 0.0);
}

TEST_F(PumpAsEntered, time_of_the_first_heating_lies_inside_or_outside_its_band) {
    const auto heating = [&](double hours) {
        const int minutes = static_cast<int>(60.0 * hours);
        char at[32];
        std::snprintf(at, sizeof at, "2027-06-%02dT%02d:%02d:00Z", 10 + (480 + minutes) / 1440,
                      (480 + minutes) / 60 % 24, minutes % 60);
        return std::vector<Reading>{entry(K::heating_start, 12.0, "2027-06-10T08:00:00Z", 16.0),
                                    entry(K::irradiance, 400.0, "2027-06-10T08:10:00Z"),
                                    entry(K::heating_end, 55.0, at, 18.0)};
    };
    const Assessment any = judged(heating(6.0), "First heating", of_plan(), &model);
    ASSERT_EQ(any.bands.size(), 1U) << any.words;
    const Band band = any.bands[0];
    EXPECT_GT(band.low, 0.5);
    EXPECT_LT(band.low, band.mid);
    EXPECT_LT(band.mid, band.high);
    // Heat to warm 43 K of water by hand: m c dT / (COP x work) cannot be quicker than twice the middle's power allows.
    EXPECT_EQ(judged(heating(band.mid), "First heating", of_plan(), &model).verdict, Verdict::passed);
    EXPECT_EQ(judged(heating(band.high + 0.5), "First heating", of_plan(), &model).verdict, Verdict::failed);
    EXPECT_EQ(judged(heating(0.4 * band.low), "First heating", of_plan(), &model).verdict, Verdict::cannot_tell);
    EXPECT_EQ(judged({heating(6.0)[0]}, "First heating", of_plan(), &model).verdict, Verdict::cannot_tell) << "running";
}

}  // namespace verdicts_test
}  // namespace wg::commissioning
