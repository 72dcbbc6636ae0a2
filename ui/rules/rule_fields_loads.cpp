// The fields of wind, snow, safety and timber: what fixings are reckoned with.

#include "ui/rules/rule_field_makers.h"

namespace wg::ui {

RuleFieldGroup wind_group() {
    return {
        RuleGroup::wind,
        rule_tr("Wind"),
        QStringLiteral("actions"),
        {},
        {number_of("basic_wind_m_s", rule_tr("Basic wind velocity"), rule_tr("m/s"), 10, 80,
                   rule_tr("Ten-minute mean at 10 m over open country, once in 50 years. From the wind map of the "
                           "national annex to EN 1991-1-4. For jobs whose site has none entered")),
         lacking(
             number_of("wind_altitude_per_m", rule_tr("Rise with altitude"), rule_tr("1/m"), 0, 0.005,
                       rule_tr("Share by which the wind rises with each metre above the sea, 0.001 is a tenth for 100 "
                               "m. Only where the national map is drawn for sea level and its annex says so; else 0")),
             rule_tr("0")),
         number_of(
             "air_density_kg_m3", rule_tr("Density of air"), rule_tr("kg/m\u00b3"), 0.8, 1.5,
             rule_tr("Wind pressure is half of it times the velocity squared. EN 1991-1-4, 4.5 recommends 1.25"))}};
}

RuleFieldGroup snow_group() {
    return {
        RuleGroup::snow,
        rule_tr("Snow"),
        QStringLiteral("actions"),
        {},
        {number_of("ground_snow_kn_m2", rule_tr("Snow on the ground"), rule_tr("kN/m\u00b2"), 0, 25,
                   rule_tr("Characteristic snow on flat ground, 1 kN/m\u00b2 is about 100 kg on each square metre. "
                           "From the snow map of the national annex to EN 1991-1-3. For jobs whose site has none "
                           "entered, where the rule below is one value")),
         lacking(of_words("snow_rule", rule_tr("Where ground snow comes from"),
                          rule_tr("One value for every site, or reckoned from the altitude of the site for one of the "
                                  "climatic regions of Europe in EN 1991-1-3, annex C"),
                          {{QStringLiteral("fixed"), rule_tr("one value")},
                           {QStringLiteral("alpine"), rule_tr("Alpine region")},
                           {QStringLiteral("central_east"), rule_tr("Central East")},
                           {QStringLiteral("central_west"), rule_tr("Central West")},
                           {QStringLiteral("iberian"), rule_tr("Iberian Peninsula")},
                           {QStringLiteral("mediterranean"), rule_tr("Mediterranean region")},
                           {QStringLiteral("uk_ireland"), rule_tr("UK and Ireland")}}),
                 rule_tr("one value")),
         lacking(
             number_of(
                 "snow_zone", rule_tr("Snow zone of the region"), {}, 0, 10,
                 rule_tr("The number Z that the snow map of EN 1991-1-3, annex C gives the place within its region: "
                         "the higher, the more snow. Only for rules by altitude; nothing hangs on it with one value")),
             rule_tr("2")),
         lacking(number_of("snow_exposure", rule_tr("Exposure to wind, C_e"), {}, 0.5, 1.5,
                           rule_tr("How far wind blows the snow off: below 1 on windswept sites, 1 normal, above 1 in "
                                   "the lee of woods or higher houses. EN 1991-1-3, table 5.1")),
                 rule_tr("1")),
         lacking(number_of("snow_thermal", rule_tr("Melting by heat from below, C_t"), {}, 0.3, 1.2,
                           rule_tr("1 for roofs that are insulated; less only for roofs that lose much heat, such as "
                                   "glass. EN 1991-1-3, 5.2")),
                 rule_tr("1")),
         lacking(number_of("snow_density_kn_m3", rule_tr("Weight of drifted snow"), rule_tr("kN/m\u00b3"), 1, 5,
                           rule_tr("Of the snow that collects behind obstacles and plates; 2 kN/m\u00b3 is about 200 "
                                   "kg a cubic metre. EN 1991-1-3, 6.2")),
                 rule_tr("2")),
         lacking(of_kind("snow_slides", RuleKind::flag, rule_tr("Snow slides to the plate"),
                         rule_tr("Whether snow from the roof above is taken to slide down and stem against the plates. "
                                 "EN 1991-1-3, 6.4")),
                 rule_tr("yes"))}};
}

RuleFieldGroup safety_group() {
    return {
        RuleGroup::safety,
        rule_tr("Safety, timber"),
        QStringLiteral("actions"),
        {},
        {number_of("gamma_permanent_unfavourable", rule_tr("Factor, weight that burdens"), {}, 1, 2,
                   rule_tr("By which plate, frame and ballast count heavier where their weight burdens the roof. EN "
                           "1990, table A1.2(B)")),
         number_of(
             "gamma_permanent_favourable", rule_tr("Factor, weight that holds"), {}, 0.5, 1,
             rule_tr("By which they count lighter where their weight holds against uplift. EN 1990, table A1.2(A)")),
         number_of("gamma_variable", rule_tr("Factor, wind and snow"), {}, 1, 2,
                   rule_tr("By which wind and snow count more than their maps say. EN 1990, table A1.2(B)")),
         number_of("psi_0_wind", rule_tr("Wind beside snow"), {}, 0, 1,
                   rule_tr("Share of the wind that acts while snow is the leading load. EN 1990, table A1.1")),
         number_of("psi_0_snow", rule_tr("Snow beside wind"), {}, 0, 1,
                   rule_tr("Share of the snow that lies while wind is the leading load. EN 1990, table A1.1; higher "
                           "above 1000 m")),
         number_of("k_mod", rule_tr("Strength of timber, k_mod"), {}, 0.3, 1.2,
                   rule_tr("Share of its strength that timber has for short loads, as wind, at its moisture. EN "
                           "1995-1-1, table 3.1: 0.9 for solid timber under a roof")),
         number_of("gamma_timber", rule_tr("Factor, timber joints"), {}, 1, 2,
                   rule_tr("By which screws in timber are reckoned weaker than tested. EN 1995-1-1, table 2.3")),
         lacking(number_of("gamma_bolt", rule_tr("Factor, steel bolts"), {}, 1, 2,
                           rule_tr("By which bolts and threads of steel are reckoned weaker. EN 1993-1-8, table 2.1")),
                 rule_tr("1.25")),
         number_of(
             "timber_density_kg_m3", rule_tr("Density of the rafters"), rule_tr("kg/m\u00b3"), 200, 800,
             rule_tr(
                 "What screws hold hangs on it. Characteristic density of the strength class in EN 338: 350 for C24")),
         lacking(number_of("deflection_span_share", rule_tr("Bending of profiles: span over"), {}, 50, 1000,
                           rule_tr("A profile may bend by its span divided by this: 200 lets 2 m bend 10 mm. The "
                                   "greater, the stricter; common practice")),
                 rule_tr("200")),
         of_kind("source", RuleKind::text, rule_tr("Source of the others"),
                 rule_tr("Of wind, snow, safety and timber, where a value names none"))}};
}

RuleFieldGroup net_group() {
    return {
        RuleGroup::net,
        rule_tr("Wind on the plate"),
        QStringLiteral("actions"),
        {},
        {lacking(
             of_words(
                 "net_pressure", rule_tr("How wind on a plate is reckoned"),
                 rule_tr(
                     "Wind goes over and under a plate that stands off its roof. A share of the roof's own pressure is "
                     "the simplest; both faces reckons above and below; net coefficients come from a guide or a test"),
                 {{QStringLiteral("surface_share"), rule_tr("share of the roof's pressure")},
                  {QStringLiteral("two_faces"), rule_tr("both faces")},
                  {QStringLiteral("coefficients"), rule_tr("net coefficients")}}),
             rule_tr("share of the roof's pressure")),
         number_of("standing_off_net_factor", rule_tr("Share of the roof's pressure"), {}, 0.1, 3,
                   rule_tr("1: the plate bears all the pressure that the bare roof would. Only for the rule of that "
                           "name. No European standard gives it: from a national guide, or assumed")),
         lacking(number_of("hidden_face_share", rule_tr("Share on the hidden face"), {}, 0, 1,
                           rule_tr("Share of the pressure above that acts on the face towards the roof. Only for the "
                                   "rule of both faces. From a national guide, or assumed")),
                 rule_tr("0.3")),
         lacking(number_of(
                     "net_uplift_middle", rule_tr("Net uplift, middle"), {}, -5, 0,
                     rule_tr("Net pressure coefficient away from the roof's edges, above and below together; uplift is "
                             "negative. Only for net coefficients; from the guide or test that is named as source")),
                 rule_tr("-1.3")),
         lacking(number_of("net_uplift_edge", rule_tr("Net uplift, edge"), {}, -5, 0,
                           rule_tr("The same near edges, ridge and corners; at least as much uplift as in the middle")),
                 rule_tr("-1.8")),
         lacking(number_of("net_pressure_all", rule_tr("Net pressure, pushing down"), {}, 0, 5,
                           rule_tr("Net coefficient of wind that presses the plate on to the roof, everywhere. Only "
                                   "for net coefficients")),
                 rule_tr("1")),
         lacking(
             of_kind("net_pressure_source", RuleKind::text, rule_tr("Source of the others"),
                     rule_tr("Of the wind on the plate, where a value names none; asked for with net coefficients")),
             {})}};
}

}  // namespace wg::ui
