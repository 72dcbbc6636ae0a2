// Fields of a collector.

#include <QCoreApplication>

#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace {

QString collector_tr(const char* text) {
    return QCoreApplication::translate("ItemFields", text);
}

std::vector<ItemField> tested_fields() {
    const auto t = collector_tr;
    const QString unit = QStringLiteral("W/(m² K)");
    return {
        optional(number_field("iso9806.eta0_b", t("Zero-loss efficiency for beam light"), {}, 0.1, 1.1,
                              t("At 3 m/s; this or the one for hemispherical light"))),
        optional(number_field("iso9806.eta0_hem", t("Zero-loss efficiency for hemispherical light"), {}, 0.1, 1.1,
                              t("At 3 m/s; this or the one for beam light"))),
        optional(number_field("iso9806.kd", t("Modifier for diffuse light, Kd"), {}, 0.5, 1.1, t("Left out: 1"))),
        optional(number_field("iso9806.b0", t("Incidence, b0"), {}, 0.0, 0.5,
                              t("Left out: 0, slanting light counts in full"))),
        number_field("iso9806.a1", t("Loss at 3 m/s, a1"), unit, 1.0, 100.0),
        optional(number_field("iso9806.a2", t("Loss by temperature, a2"), QStringLiteral("W/(m² K²)"), 0.0, 0.2,
                              t("Left out: 0"))),
        number_field("iso9806.a3", t("Loss by wind, a3"), QStringLiteral("J/(m³ K)"), 0.0, 20.0),
        number_field("iso9806.a4", t("Loss to the sky, a4"), {}, 0.0, 1.0),
        optional(number_field("iso9806.a5", t("Effective capacity, a5"), QStringLiteral("J/(m² K)"), 0.0, 200e3,
                              t("Kept with the data; no figure depends on it"))),
        optional(number_field("iso9806.a6", t("Zero-loss efficiency by wind, a6"), QStringLiteral("s/m"), 0.0, 0.2,
                              t("Left out: 0"))),
        optional(number_field("iso9806.a7", t("Loss to the sky by wind, a7"), QStringLiteral("s/m"), 0.0, 0.2,
                              t("Left out: 0"))),
        optional(number_field("iso9806.a8", t("Loss by the fourth power, a8"), QStringLiteral("W/(m² K⁴)"), 0.0, 1e-6,
                              t("Left out: 0"))),
        optional(number_field("iso9806.tested_plate_to_fluid_w_m2k", t("Plate to the fluid of the test"), unit, 5.0,
                              2000.0, t("Left out: as plate to refrigerant"))),
    };
}

}  // namespace

std::vector<FieldGroup> collector_fields() {
    const auto t = collector_tr;
    const QString m = QStringLiteral("m");
    const QString deg = QStringLiteral("°");
    return {
        {t("Item"), DataForm::always, naming_fields(true)},
        {t("Size"),
         DataForm::always,
         {number_field("length_m", t("Long side"), m, 0.3, 6.0),
          number_field("width_m", t("Short side"), m, 0.2, 3.0, t("Not above the long side")),
          number_field("face_area_m2", t("Area of one face"), QStringLiteral("m²"), 0.1, 12.0,
                       t("Without frame: half to all of long x short side")),
          number_field("mass_kg", t("Mass, empty"), QStringLiteral("kg"), 0.5, 150.0),
          number_field("volume_l", t("Content of the channels"), QStringLiteral("l"), 0.01, 20.0),
          number_field("max_pressure_bar", t("Maximum allowable pressure PS"), QStringLiteral("bar gauge"), 1.0,
                       150.0)}},
        {t("Performance"),
         DataForm::always,
         {number_field("absorptance", t("Absorptance for light"), {}, 0.05, 1.0),
          number_field("emittance", t("Emittance for heat"), {}, 0.01, 1.0),
          number_field("plate_to_refrigerant_w_m2k", t("Plate to refrigerant"), QStringLiteral("W/(m² K)"), 5.0, 2000.0,
                       t("Per m² of one face")),
          number_field("rear_exposure", t("Wind on the rear face"), {}, 0.0, 1.0,
                       t("Share of the wind that reaches it")),
          number_field("frost_limit_kg_m2", t("Frost at which the pump rests"), QStringLiteral("kg/m²"), 0.0, 20.0,
                       t("Of each face")),
          optional(number_field("channel_drop_k", t("Pressure drop of one plate"), QStringLiteral("K"), 0.0, 10.0,
                                t("As fall of the evaporating temperature. Left out: series and parallel come out "
                                  "the same"))),
          optional(number_field("channel_drop_at_w", t("Heat at which it drops so"), QStringLiteral("W"), 100.0,
                                20000.0, t("Left out: 1500 W")))},
         true},
        {t("Coefficients of a test by ISO 9806:2017, per m² of gross area"), DataForm::tested, tested_fields()},
        {t("Hands and connections"),
         DataForm::always,
         {choice_field("level_side", t("Side that lies level"),
                       {{QStringLiteral("long_side"), t("Long side")},
                        {QStringLiteral("short_side"), t("Short side")},
                        {QStringLiteral("either"), t("Either")}}),
          plain_field("right_hand", FieldKind::flag, t("Made right-handed")),
          plain_field("left_hand", FieldKind::flag, t("Made left-handed"), t("At least one of the two hands")),
          plain_field("liquid_connection", FieldKind::point, t("Place of the small connection, m"),
                      t("Along and up from the lower left corner")),
          plain_field("suction_connection", FieldKind::point, t("Place of the large connection, m"),
                      t("Along and up from the lower left corner")),
          number_field("liquid_od_mm", t("Small tube, outside"), QStringLiteral("mm"), 3.0, 54.0),
          number_field("suction_od_mm", t("Large tube, outside"), QStringLiteral("mm"), 3.0, 54.0)}},
        {t("Tilt"),
         DataForm::always,
         {number_field("tilt_min_deg", t("Least tilt"), deg, 0.0, 90.0),
          number_field("tilt_max_deg", t("Most tilt"), deg, 0.0, 90.0),
          number_field("tilt_recommended_min_deg", t("Recommended from"), deg, 0.0, 90.0),
          number_field("tilt_recommended_max_deg", t("Recommended to"), deg, 0.0, 90.0)}},
        {t("Fixing"),
         DataForm::always,
         {plain_field("fixing_points", FieldKind::points, t("Fixing points, m"),
                      t("One a line: along and up from the lower left corner. At least two")),
          whole_field("screws_per_point", t("Screws at each point"), 1, 12),
          number_field("stand_off_m", t("Gap to the surface"), m, 0.0, 1.0),
          number_field("clearance_m", t("Free strip all round"), m, 0.0, 3.0),
          optional(number_field("profile_stiffness_nm2", t("Stiffness of a profile, E I"), QStringLiteral("N m²"), 0.0,
                                1e7, t("Left out: bending is not checked"))),
          optional(number_field("profile_moment_nm", t("Bending resistance of a profile"), QStringLiteral("N m"), 0.0,
                                1e6, t("Left out: strength of the profile is not checked"))),
          optional(number_field("profile_bolt_mm", t("Bolt between profile and hook"), QStringLiteral("mm"), 0.0, 24.0,
                                t("Left out: the bolt is not checked"))),
          optional(number_field("profile_bolt_n_mm2", t("Tensile strength of that bolt"), QStringLiteral("N/mm²"),
                                300.0, 1200.0, t("Left out: 700 N/mm²")))}},
    };
}

}  // namespace wg::ui
