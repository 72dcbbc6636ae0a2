// Fields of a heat-pump block.

#include <QCoreApplication>

#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace {

QString block_tr(const char* text) {
    return QCoreApplication::translate("ItemFields", text);
}

FieldChoice same(const char* key) {
    return {QLatin1String(key), QLatin1String(key)};
}

std::vector<ItemField> curve_fields() {
    const auto t = block_tr;
    return {number_field("displacement_cm3", t("Displacement"), QStringLiteral("cm³"), 1.0, 200.0),
            number_field("speed_rpm", t("Speed"), QStringLiteral("1/min"), 500.0, 8000.0),
            number_field("volumetric_at_unity", t("Volumetric efficiency at ratio 1"), {}, 0.5, 1.0),
            number_field("volumetric_slope", t("Its fall per unit of ratio"), {}, 0.0, 0.2),
            number_field("overall_peak", t("Best overall efficiency"), {}, 0.2, 0.85, t("Isentropic, by electricity")),
            number_field("overall_peak_at", t("Pressure ratio of the best"), {}, 1.5, 8.0),
            number_field("overall_curvature", t("Fall away from the best"), {}, 0.0, 1.0,
                         t("c in 1 - c ln²(ratio / best ratio)"))};
}

std::vector<ItemField> coefficient_fields() {
    const auto t = block_tr;
    const QString c = QStringLiteral("°C");
    const QString ten =
        t("Ten numbers in the order of EN 12900: 1, s, d, s², s d, d², s³, s² d, s d², d³. A line of a "
          "data sheet can be pasted; with 20 numbers the second ten are the power");
    return {
        optional(plain_field("compressor.capacity_w", FieldKind::ten, t("Refrigerating capacity, W"), ten)),
        optional(plain_field("compressor.mass_flow_kg_h", FieldKind::ten, t("Mass flow, kg/h"),
                             t("Instead of the capacity"))),
        plain_field("compressor.power_w", FieldKind::ten, t("Electric power, W")),
        optional(number_field("compressor.suction_superheat_k", t("Rated superheat"), QStringLiteral("K"), 0.0, 40.0,
                              t("This or the temperature of the suction gas"))),
        optional(number_field("compressor.suction_gas_c", t("Rated suction gas"), c, -20.0, 50.0,
                              t("This or the superheat"))),
        optional(number_field("compressor.subcooling_k", t("Rated subcooling"), QStringLiteral("K"), 0.0, 25.0,
                              t("With a capacity; not asked for with a mass flow"))),
        number_field("compressor.evaporating_min_c", t("Stated from, evaporating"), c, -45.0, 30.0),
        number_field("compressor.evaporating_max_c", t("Stated to, evaporating"), c, -30.0, 45.0),
        number_field("compressor.condensing_min_c", t("Stated from, condensing"), c, -10.0, 70.0),
        number_field("compressor.condensing_max_c", t("Stated to, condensing"), c, 10.0, 95.0),
        optional(plain_field("compressor.range", FieldKind::points, t("Corners of the stated range, °C"),
                             t("One a line, in order round it: evaporating, condensing. Left out: the whole "
                               "rectangle"))),
    };
}

}  // namespace

std::vector<FieldGroup> block_fields() {
    const auto t = block_tr;
    const QString c = QStringLiteral("°C");
    const QString k = QStringLiteral("K");
    const QString m = QStringLiteral("m");
    const QString mm = QStringLiteral("mm");
    const QString a = QStringLiteral("A");
    const QString bar = QStringLiteral("bar gauge");
    std::vector<ItemField> item = naming_fields(true);
    item.push_back(
        choice_field("refrigerant", t("Refrigerant"), {same("R134a"), same("R290"), same("R1234yf"), same("R513A")}));
    return {
        {t("Item"), DataForm::always, std::move(item)},
        {t("Compressor by displacement and efficiencies"), DataForm::curves, curve_fields(), true},
        {t("Compressor by ten coefficients, dew-point temperatures in °C"), DataForm::coefficients,
         coefficient_fields()},
        {t("Circuit and envelope"),
         DataForm::always,
         {number_field("superheat_k", t("Superheat"), k, 0.0, 25.0),
          number_field("subcooling_k", t("Subcooling"), k, 0.0, 25.0),
          number_field("shell_loss", t("Loss of the shell"), {}, 0.0, 0.4, t("Share of the electric power")),
          number_field("evaporating_min_c", t("Evaporating from"), c, -40.0, 10.0),
          number_field("evaporating_max_c", t("Evaporating to"), c, -10.0, 40.0),
          number_field("condensing_max_c", t("Condensing to"), c, 40.0, 90.0),
          number_field("discharge_max_c", t("Discharge gas to"), c, 60.0, 150.0),
          number_field("pressure_ratio_max", t("Pressure ratio to"), {}, 2.0, 20.0),
          number_field("least_lift_k", t("Least lift"), k, 1.0, 30.0, t("Condensing over evaporating")),
          optional(choice_field(
              "expansion", t("Expansion device"),
              {{QStringLiteral("block"), t("In the block")}, {QStringLiteral("collector"), t("At the collector")}},
              t("Left out: in the block"))),
          optional(number_field("least_flow_share", t("Flow at the lowest speed"), {}, 0.1, 1.0,
                                t("Share of that at full speed. Left out: one speed"))),
          choice_field("defrost", t("Defrost"),
                       {{QStringLiteral("none"), t("None")}, {QStringLiteral("reverse"), t("Reversed cycle")}}),
          number_field("min_run_s", t("Least run"), QStringLiteral("s"), 0.0, 7200.0),
          number_field("min_rest_s", t("Least rest"), QStringLiteral("s"), 0.0, 7200.0),
          number_field("standby_w", t("Standby"), QStringLiteral("W"), 0.0, 100.0)}},
        {t("Condenser"),
         DataForm::always,
         {choice_field("condenser", t("Kind"),
                       {{QStringLiteral("immersed"), t("Immersed")}, {QStringLiteral("wrapped"), t("Wrapped")}}),
          plain_field("condenser_double_wall", FieldKind::flag, t("Double wall")),
          number_field("condenser_w_k", t("Heat transfer"), QStringLiteral("W/K"), 10.0, 3000.0),
          number_field("condenser_zone", t("Heated share of the height"), {}, 0.1, 1.0, t("From the bottom")),
          optional(number_field("condenser_glide_k", t("Glide, top to bottom"), k, 0.0, 15.0, t("Left out: 0")))}},
        {t("Charge and lines"),
         DataForm::always,
         {number_field("mass_kg", t("Mass"), QStringLiteral("kg"), 2.0, 200.0),
          number_field("charge_kg", t("Factory charge"), QStringLiteral("kg"), 0.02, 20.0),
          number_field("precharged_min_m", t("Serves runs from"), m, 0.0, 100.0),
          number_field("precharged_max_m", t("Serves runs to"), m, 0.0, 100.0),
          number_field("extra_charge_g_m", t("Extra for each metre beyond"), QStringLiteral("g/m"), 0.0, 200.0),
          number_field("run_max_m", t("Longest run"), m, 1.0, 100.0),
          number_field("lift_max_m", t("Most height between"), m, 0.0, 60.0, t("Collector over or under the block")),
          optional(number_field("oil_trap_every_m", t("Oil trap after each"), m, 0.0, 60.0, t("Left out: none asked"))),
          number_field("liquid_od_mm", t("Small tube, outside"), mm, 3.0, 54.0),
          number_field("suction_od_mm", t("Large tube, outside"), mm, 3.0, 54.0),
          number_field("collector_area_min_m2", t("Collectors from"), QStringLiteral("m²"), 0.1, 40.0,
                       t("One face each")),
          number_field("collector_area_max_m2", t("Collectors to"), QStringLiteral("m²"), 0.1, 40.0)}},
        {t("Pressures"),
         DataForm::always,
         {number_field("max_pressure_high_bar", t("PS of the high side"), bar, 1.0, 150.0),
          number_field("max_pressure_low_bar", t("PS of the low side"), bar, 1.0, 150.0),
          number_field("line_max_pressure_bar", t("PS of the lines"), bar, 1.0, 200.0),
          number_field("test_pressure_bar", t("Tightness test, dry nitrogen"), bar, 1.0, 150.0,
                       t("Not above PS of the lines"))}},
        {t("Electricity and room"),
         DataForm::always,
         {number_field("supply_v", t("Voltage"), QStringLiteral("V"), 100.0, 440.0),
          whole_field("supply_phases", t("Phases"), 1, 3),
          number_field("supply_hz", t("Frequency"), QStringLiteral("Hz"), 45.0, 65.0),
          number_field("max_current_a", t("Most current"), a, 0.2, 100.0),
          number_field("start_current_a", t("Starting current"), a, 0.2, 400.0),
          optional(number_field("power_factor", t("Power factor"), {}, 0.3, 1.0, t("Left out: 0.9"))),
          number_field("breaker_a", t("Breaker"), a, 1.0, 125.0),
          choice_field("breaker_curve", t("Curve of the breaker"), {same("B"), same("C"), same("D")}),
          number_field("residual_current_ma", t("Residual current"), QStringLiteral("mA"), 0.0, 500.0,
                       t("0: none asked for")),
          number_field("release_height_m", t("Lowest height of a leak"), m, 0.0, 5.0, t("Indoors")),
          optional(plain_field("ventilated_enclosure", FieldKind::flag, t("Ventilated enclosure"),
                               t("A leak inside is led outdoors")))}},
    };
}

}  // namespace wg::ui
