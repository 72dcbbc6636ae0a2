#include "ui/rules/rule_fields.h"

#include <QCoreApplication>

namespace wg::ui {
namespace {

QString rule_tr(const char* text) {
    return QCoreApplication::translate("RuleFields", text);
}

RuleField number_of(const char* key, const QString& label, const QString& unit, double least, double most,
                    const QString& line) {
    RuleField out;
    out.key = QString::fromLatin1(key);
    out.label = label;
    out.unit = unit;
    out.least = least;
    out.most = most;
    out.line = line;
    return out;
}

RuleField of_kind(const char* key, RuleKind kind, const QString& label, const QString& line) {
    RuleField out;
    out.key = QString::fromLatin1(key);
    out.kind = kind;
    out.label = label;
    out.line = line;
    return out;
}

RuleField of_words(const char* key, const QString& label, const QString& line, std::vector<RuleChoice> choices) {
    RuleField out = of_kind(key, RuleKind::word, label, line);
    out.choices = std::move(choices);
    return out;
}

RuleField lacking(RuleField field, const QString& then) {
    field.may_lack = true;
    field.when_lacking = then;
    return field;
}

RuleFieldGroup set_group() {
    return {
        RuleGroup::set,
        rule_tr("The set"),
        {},
        {},
        {of_kind("label", RuleKind::text, rule_tr("Name"), rule_tr("On every paper and in lists")),
         of_kind("source", RuleKind::text, rule_tr("Source of the set"), rule_tr("On papers, beside the name")),
         lacking(of_kind("note", RuleKind::text, rule_tr("Note"), rule_tr("For those who look after the set")), {})}};
}

RuleFieldGroup wind_group() {
    return {RuleGroup::wind,
            rule_tr("Wind"),
            QStringLiteral("actions"),
            {},
            {number_of("basic_wind_m_s", rule_tr("Basic wind velocity"), rule_tr("m/s"), 10, 80,
                       rule_tr("Of a site that has none of its own")),
             lacking(number_of("wind_altitude_per_m", rule_tr("Rise with altitude"), rule_tr("1/m"), 0, 0.005,
                               rule_tr("For each metre of altitude, of maps drawn for sea level")),
                     rule_tr("0")),
             number_of("air_density_kg_m3", rule_tr("Density of air"), rule_tr("kg/m\u00b3"), 0.8, 1.5,
                       rule_tr("For the velocity pressure"))}};
}

RuleFieldGroup snow_group() {
    return {
        RuleGroup::snow,
        rule_tr("Snow"),
        QStringLiteral("actions"),
        {},
        {number_of("ground_snow_kn_m2", rule_tr("Snow on the ground"), rule_tr("kN/m\u00b2"), 0, 25,
                   rule_tr("Of a site that has none of its own, when the rule is one value")),
         lacking(of_words("snow_rule", rule_tr("Rule"), rule_tr("One value, or by altitude as in EN 1991-1-3 annex C"),
                          {{QStringLiteral("fixed"), rule_tr("one value")},
                           {QStringLiteral("alpine"), rule_tr("Alpine region")},
                           {QStringLiteral("central_east"), rule_tr("Central East")},
                           {QStringLiteral("central_west"), rule_tr("Central West")},
                           {QStringLiteral("iberian"), rule_tr("Iberian Peninsula")},
                           {QStringLiteral("mediterranean"), rule_tr("Mediterranean region")},
                           {QStringLiteral("uk_ireland"), rule_tr("UK and Ireland")}}),
                 rule_tr("one value")),
         lacking(
             number_of("snow_zone", rule_tr("Zone number"), {}, 0, 10, rule_tr("Z of annex C, for rules by altitude")),
             rule_tr("2")),
         lacking(number_of("snow_exposure", rule_tr("Exposure coefficient"), {}, 0.5, 1.5, rule_tr("C_e")),
                 rule_tr("1")),
         lacking(number_of("snow_thermal", rule_tr("Thermal coefficient"), {}, 0.3, 1.2, rule_tr("C_t")), rule_tr("1")),
         lacking(number_of("snow_density_kn_m3", rule_tr("Weight of drifted snow"), rule_tr("kN/m\u00b3"), 1, 5,
                           rule_tr("Behind obstacles")),
                 rule_tr("2")),
         lacking(of_kind("snow_slides", RuleKind::flag, rule_tr("Snow slides to the plate"),
                         rule_tr("On a roof with snow above the collector")),
                 rule_tr("yes"))}};
}

RuleFieldGroup safety_group() {
    return {RuleGroup::safety,
            rule_tr("Safety, timber"),
            QStringLiteral("actions"),
            {},
            {number_of("gamma_permanent_unfavourable", rule_tr("Factor, weight that burdens"), {}, 1, 2,
                       rule_tr("Partial factor of permanent loads, unfavourable")),
             number_of("gamma_permanent_favourable", rule_tr("Factor, weight that holds"), {}, 0.5, 1,
                       rule_tr("Partial factor of permanent loads against uplift")),
             number_of("gamma_variable", rule_tr("Factor, wind and snow"), {}, 1, 2,
                       rule_tr("Partial factor of variable loads")),
             number_of("psi_0_wind", rule_tr("Wind beside snow"), {}, 0, 1, rule_tr("Combination factor of wind")),
             number_of("psi_0_snow", rule_tr("Snow beside wind"), {}, 0, 1, rule_tr("Combination factor of snow")),
             number_of("k_mod", rule_tr("k_mod of timber"), {}, 0.3, 1.2,
                       rule_tr("For the shortest load, at the moisture")),
             number_of("gamma_timber", rule_tr("Factor, timber joints"), {}, 1, 2,
                       rule_tr("Partial factor of the material")),
             lacking(number_of("gamma_bolt", rule_tr("Factor, steel bolts"), {}, 1, 2,
                               rule_tr("Partial factor of the material")),
                     rule_tr("1.25")),
             number_of("timber_density_kg_m3", rule_tr("Density of the rafters"), rule_tr("kg/m\u00b3"), 200, 800,
                       rule_tr("Characteristic, of the strength class")),
             lacking(number_of("deflection_span_share", rule_tr("Bending, span over"), {}, 50, 1000,
                               rule_tr("Profiles may bend by their span over this")),
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
        {lacking(of_words("net_pressure", rule_tr("Rule"), rule_tr("Which force the wind puts on a plate off its roof"),
                          {{QStringLiteral("surface_share"), rule_tr("share of the roof's pressure")},
                           {QStringLiteral("two_faces"), rule_tr("both faces")},
                           {QStringLiteral("coefficients"), rule_tr("net coefficients")}}),
                 rule_tr("share of the roof's pressure")),
         number_of("standing_off_net_factor", rule_tr("Share of the roof's pressure"), {}, 0.1, 3,
                   rule_tr("As a net force, for that rule")),
         lacking(
             number_of("hidden_face_share", rule_tr("Share on the hidden face"), {}, 0, 1, rule_tr("For both faces")),
             rule_tr("0.3")),
         lacking(number_of("net_uplift_middle", rule_tr("Net uplift, middle"), {}, -5, 0,
                           rule_tr("For net coefficients; uplift is negative")),
                 rule_tr("-1.3")),
         lacking(number_of("net_uplift_edge", rule_tr("Net uplift, edge"), {}, -5, 0,
                           rule_tr("At least as much uplift as in the middle")),
                 rule_tr("-1.8")),
         lacking(number_of("net_pressure_all", rule_tr("Net pressure"), {}, 0, 5, rule_tr("For net coefficients")),
                 rule_tr("1")),
         lacking(
             of_kind("net_pressure_source", RuleKind::text, rule_tr("Source of the others"),
                     rule_tr("Of the wind on the plate, where a value names none; asked for with net coefficients")),
             {})}};
}

RuleFieldGroup tax_group() {
    return {RuleGroup::tax,
            rule_tr("Tax"),
            QStringLiteral("tax"),
            {},
            {of_words("tax_by", rule_tr("Reckoned on"), rule_tr("The sum of each rate's lines, or line by line"),
                      {{QStringLiteral("total"), rule_tr("the sum of a rate")},
                       {QStringLiteral("line"), rule_tr("each line")}}),
             of_words("rounding", rule_tr("Halves are rounded"), rule_tr("To the cent"),
                      {{QStringLiteral("half_up"), rule_tr("up")},
                       {QStringLiteral("half_even"), rule_tr("to the even one")}})}};
}

RuleFieldGroup rate_group() {
    RuleField rate = number_of("rate", rule_tr("Rate"), rule_tr("%"), 0, 100, rule_tr("0 for what is exempt"));
    rate.shown_by = 100.0;
    return {RuleGroup::rate,
            rule_tr("Tax rate"),
            QStringLiteral("tax"),
            QStringLiteral("rates"),
            {of_kind("label", RuleKind::text, rule_tr("Name"), rule_tr("On quotes")),
             of_kind("tax_class", RuleKind::text, rule_tr("Tax class"),
                     rule_tr("By which items of price lists name the rate")),
             rate}};
}

RuleFieldGroup market_group() {
    return {RuleGroup::market,
            rule_tr("Restriction"),
            {},
            QStringLiteral("market"),
            {number_of("gwp_from", rule_tr("GWP from"), rule_tr("kg CO\u2082e/kg"), 0, 30000,
                       rule_tr("Of the refrigerant; a caution from this on")),
             of_kind("since", RuleKind::day, rule_tr("Since"), rule_tr("Day, as 2027-06-21")),
             of_kind("text", RuleKind::text, rule_tr("Words of the caution"), rule_tr("As they stand in findings"))}};
}

RuleFieldGroup service_group() {
    RuleField every =
        number_of("every_months", rule_tr("At least every"), rule_tr("months"), 1, 240, rule_tr("From start on"));
    every.kind = RuleKind::whole;
    return {
        RuleGroup::service,
        rule_tr("Service"),
        {},
        QStringLiteral("service"),
        {of_kind("id", RuleKind::text, rule_tr("Id"), rule_tr("By which the dates of a job name it; stays as it is")),
         of_kind("text", RuleKind::text, rule_tr("What is done"), rule_tr("On the service sheet")), every,
         of_kind("when", RuleKind::text, rule_tr("Holds for"),
                 rule_tr("always, anode, flammable, leak_duty, or t_co2e>= and tonnes of CO\u2082e"))}};
}

RuleFieldGroup duties_group() {
    return {RuleGroup::duties,
            rule_tr("Leak checks"),
            QStringLiteral("charge_duties"),
            {},
            {lacking(of_kind("by_mass", RuleKind::names, rule_tr("Counted by mass"),
                             rule_tr("Refrigerants whose limits are in kg, apart by commas")),
                     {}),
             lacking(of_kind("not_fluorinated", RuleKind::names, rule_tr("Without duties"),
                             rule_tr("Refrigerants that are no fluorinated gas, apart by commas")),
                     {})}};
}

RuleFieldGroup leak_group() {
    RuleField every =
        number_of("every_months", rule_tr("At least every"), rule_tr("months"), 1, 240, rule_tr("From this charge on"));
    every.kind = RuleKind::whole;
    return {RuleGroup::leak,
            rule_tr("Leak limit"),
            QStringLiteral("charge_duties"),
            QStringLiteral("leak_checks"),
            {of_words("by", rule_tr("Counted in"), rule_tr("Tonnes of CO\u2082e, or kilograms"),
                      {{QStringLiteral("t_co2e"), rule_tr("t CO\u2082e")}, {QStringLiteral("kg"), rule_tr("kg")}}),
             number_of("from", rule_tr("Charge from"), {}, 0, 1e6, rule_tr("In the unit that is counted")), every}};
}

}  // namespace

const std::vector<RuleFieldGroup>& rule_groups() {
    static const std::vector<RuleFieldGroup> groups = {set_group(),     wind_group(),   snow_group(), safety_group(),
                                                       net_group(),     tax_group(),    rate_group(), market_group(),
                                                       service_group(), duties_group(), leak_group()};
    return groups;
}

const RuleField* find_rule_field(RuleGroup group, const QString& key) {
    for (const RuleFieldGroup& one : rule_groups()) {
        if (one.group != group) continue;
        for (const RuleField& field : one.fields)
            if (field.key == key) return &field;
    }
    return nullptr;
}

}  // namespace wg::ui
