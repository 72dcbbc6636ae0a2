// Fields of a cylinder and of a fixing method.

#include <QCoreApplication>

#include "core/job/words.h"
#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace {

QString other_tr(const char* text) {
    return QCoreApplication::translate("ItemFields", text);
}

std::vector<FieldChoice> covering_choices() {
    std::vector<FieldChoice> out;
    for (const Word<Covering>& word : wg::words<Covering>())
        out.push_back({QLatin1String(word.key), QString::fromUtf8(word.text)});
    return out;
}

std::vector<ItemField> ballast_fields() {
    const auto t = other_tr;
    return {optional(number_field("ballast_kg", t("Ballast at each point"), QStringLiteral("kg"), 0.0, 5000.0,
                                  t("Asked for where ballast holds"))),
            optional(number_field("friction", t("Friction on the covering"), {}, 0.05, 1.0, t("Left out: 0.4"))),
            optional(number_field("frame_depth_m", t("Depth between outer feet"), QStringLiteral("m"), 0.0, 6.0,
                                  t("Left out: of the collector's points"))),
            optional(number_field("frame_mass_kg", t("Frame of one collector"), QStringLiteral("kg"), 0.0, 500.0,
                                  t("Left out: no mass of the frame counts")))};
}

}  // namespace

std::vector<FieldGroup> cylinder_fields() {
    const auto t = other_tr;
    const QString m = QStringLiteral("m");
    return {
        {t("Item"), DataForm::always, naming_fields(true)},
        {t("Size"),
         DataForm::always,
         {number_field("volume_l", t("Volume"), QStringLiteral("l"), 20.0, 3000.0,
                       t("Has to fit into height and diameter")),
          number_field("height_m", t("Height"), m, 0.3, 5.0), number_field("diameter_m", t("Diameter"), m, 0.2, 3.0),
          number_field("mass_kg", t("Mass, empty"), QStringLiteral("kg"), 5.0, 1500.0)}},
        {t("Heat"),
         DataForm::always,
         {number_field("standing_loss_kwh_24h", t("Standing loss at 45 K"), QStringLiteral("kWh/24 h"), 0.1, 15.0,
                       t("By EN 12897")),
          number_field("immersion_w", t("Immersion heater"), QStringLiteral("W"), 0.0, 12000.0, t("0: none")),
          optional(number_field("sensor_height", t("Height of the pump's thermostat"), {}, 0.05, 0.95,
                                t("Share of the height. Left out: 0.4"))),
          optional(number_field("immersion_height", t("Height of the immersion heater"), {}, 0.02, 0.9,
                                t("Share of the height. Left out: 0.6")))}},
        {t("Water"),
         DataForm::always,
         {number_field("max_pressure_bar", t("Most pressure"), QStringLiteral("bar"), 1.0, 16.0),
          number_field("max_temperature_c", t("Most temperature"), QStringLiteral("°C"), 45.0, 95.0),
          optional(plain_field("anode", FieldKind::text, t("Anode"), t("Left out: none is needed"))),
          optional(number_field("anode_check_months", t("Check of the anode every"), t("months"), 1.0, 120.0,
                                t("Left out: 24 months"))),
          optional(plain_field("connections", FieldKind::text, t("Connections"), t("For the papers"))),
          plain_field("recirculation_port", FieldKind::flag, t("Port for recirculation")),
          optional(plain_field("fits_blocks", FieldKind::ids, t("Fits the blocks"),
                               t("Ids, apart by spaces. Left out: any block")))}},
    };
}

std::vector<FieldGroup> fixing_method_fields() {
    const auto t = other_tr;
    const QString m = QStringLiteral("m");
    const QString mm = QStringLiteral("mm");
    const QString n = QStringLiteral("N");
    ItemField coverings = plain_field("coverings", FieldKind::words, t("Coverings that it suits"), t("At least one"));
    coverings.choices = covering_choices();
    std::vector<ItemField> item = naming_fields(false);
    item.push_back(optional(choice_field("kind", t("Kind"),
                                         {{QStringLiteral("hook"), t("Hook")},
                                          {QStringLiteral("screw_through"), t("Screwed through")},
                                          {QStringLiteral("seam_clamp"), t("Seam clamp")},
                                          {QStringLiteral("anchor"), t("Anchor")},
                                          {QStringLiteral("ballast"), t("Ballast")}},
                                         t("Left out: hook"))));
    item.push_back(std::move(coverings));
    item.push_back(optional(plain_field("steps", FieldKind::text, t("What the fitter does"), t("For the papers"))));
    return {
        {t("Item"), DataForm::always, std::move(item)},
        {t("Screws into timber"),
         DataForm::always,
         {plain_field("needs_rafters", FieldKind::flag, t("Sits on rafters or studs")),
          number_field("screw_diameter_mm", t("Screw"), mm, 0.0, 12.0,
                       t("6 to 12 mm (EN 1995-1-1); 0: by the resistances below")),
          optional(
              number_field("screw_grip_mm", t("Thread in the timber"), mm, 0.0, 300.0, t("At least six diameters"))),
          whole_field("screws_per_point", t("Screws at each point"), 0, 12),
          optional(number_field("head_diameter_mm", t("Head of the screw"), mm, 0.0, 60.0,
                                t("Left out: drawing the head through is not checked"))),
          optional(number_field("head_strength_n_mm2", t("Head pull-through strength"), QStringLiteral("N/mm²"), 0.0,
                                100.0, t("Left out: drawing the head through is not checked")))}},
        {t("Resistances and distances"),
         DataForm::always,
         {optional(number_field("pull_out_n", t("Pull-out of a point"), n, 0.0, 1e6,
                                t("Design value; asked for without screws"))),
          optional(
              number_field("shear_n", t("Shear of a point"), n, 0.0, 1e6, t("Design value; asked for without screws"))),
          number_field("edge_distance_m", t("From the edges"), m, 0.0, 3.0),
          optional(number_field("spacing_min_m", t("Between points"), m, 0.0, 3.0, t("Left out: not checked"))),
          optional(
              number_field("joint_distance_m", t("From joints or seams"), m, 0.0, 1.0, t("Left out: not checked"))),
          optional(number_field("bolt_mm", t("Anchor bolt or double-ended screw"), mm, 0.0, 24.0,
                                t("Left out: the bolt is not checked"))),
          optional(number_field("bolt_n_mm2", t("Tensile strength of that bolt"), QStringLiteral("N/mm²"), 300.0,
                                1200.0, t("Left out: 500 N/mm²")))}},
        {t("Drilling"),
         DataForm::always,
         {optional(number_field("drill_mm", t("Hole"), mm, 0.0, 60.0, t("Left out: not on the drill schedule"))),
          optional(number_field("depth_mm", t("Depth of the hole"), mm, 0.0, 1000.0, t("Left out: not told"))),
          optional(
              number_field("torque_nm", t("Tightening"), QStringLiteral("N m"), 0.0, 500.0, t("Left out: not told")))}},
        {t("Ballast"), DataForm::always, ballast_fields()},
    };
}

}  // namespace wg::ui
