#include "ui/rules/rule_fields.h"

#include "ui/rules/rule_field_makers.h"

namespace wg::ui {
namespace {

RuleFieldGroup set_group() {
    return {
        RuleGroup::set,
        rule_tr("The set"),
        {},
        {},
        {of_kind("label", RuleKind::text, rule_tr("Name"), rule_tr("Stands on every paper and in lists")),
         of_kind(
             "source", RuleKind::text, rule_tr("Source of the set"),
             rule_tr("Where the set as a whole is from: standard, national annex, guide. On papers, beside the name")),
         lacking(of_kind("note", RuleKind::text, rule_tr("Note"), rule_tr("For those who look after the set")), {})}};
}

RuleFieldGroup tax_group() {
    return {RuleGroup::tax,
            rule_tr("Tax"),
            QStringLiteral("tax"),
            {},
            {of_words("tax_by", rule_tr("Reckoned on"),
                      rule_tr("On the sum of each rate's lines, as EN 16931-1 has it for invoices, or on each line by "
                              "itself. What the tax office asks for"),
                      {{QStringLiteral("total"), rule_tr("the sum of a rate")},
                       {QStringLiteral("line"), rule_tr("each line")}}),
             of_words("rounding", rule_tr("Halves are rounded"),
                      rule_tr("What becomes of half a cent: up as in trade, or to the even cent"),
                      {{QStringLiteral("half_up"), rule_tr("up")},
                       {QStringLiteral("half_even"), rule_tr("to the even one")}})}};
}

RuleFieldGroup rate_group() {
    RuleField rate = number_of("rate", rule_tr("Rate"), rule_tr("%"), 0, 100,
                               rule_tr("Of the net price, from the tax law; 0 for what is exempt"));
    rate.shown_by = 100.0;
    return {RuleGroup::rate,
            rule_tr("Tax rate"),
            QStringLiteral("tax"),
            QStringLiteral("rates"),
            {of_kind("label", RuleKind::text, rule_tr("Name"), rule_tr("On quotes")),
             of_kind("tax_class", RuleKind::text, rule_tr("Tax class"),
                     rule_tr("The word by which items and work of price lists name the rate, such as standard")),
             rate}};
}

RuleFieldGroup market_group() {
    return {
        RuleGroup::market,
        rule_tr("Restriction"),
        {},
        QStringLiteral("market"),
        {number_of("gwp_from", rule_tr("GWP from"), rule_tr("kg CO\u2082e/kg"), 0, 30000,
                   rule_tr("Global warming potential: a kilogram of the refrigerant heats like so many kilograms of "
                           "CO\u2082. From this on the caution is given. From the law that is named as source")),
         of_kind("since", RuleKind::day, rule_tr("Since"), rule_tr("The day from which the law holds, as 2027-06-21")),
         of_kind("text", RuleKind::text, rule_tr("Words of the caution"),
                 rule_tr("As they stand among the findings and on papers"))}};
}

RuleFieldGroup service_group() {
    RuleField every = number_of("every_months", rule_tr("At least every"), rule_tr("months"), 1, 240,
                                rule_tr("Longest time between two visits, counted from the start of the plant. From "
                                        "the maker, a standard or the law"));
    every.kind = RuleKind::whole;
    return {
        RuleGroup::service,
        rule_tr("Service"),
        {},
        QStringLiteral("service"),
        {of_kind("id", RuleKind::text, rule_tr("Id"), rule_tr("By which the dates of a job name it; stays as it is")),
         of_kind("text", RuleKind::text, rule_tr("What is done"), rule_tr("As it stands on the service sheet")), every,
         of_kind(
             "when", RuleKind::text, rule_tr("Holds for"),
             rule_tr(
                 "One word. always: every plant. anode: the cylinder has one. flammable: the refrigerant burns. "
                 "leak_duty: the charge reaches a leak limit. Or t_co2e>=5: the charge is 5 t CO\u2082e or more"))}};
}

RuleFieldGroup duties_group() {
    return {RuleGroup::duties,
            rule_tr("Leak checks"),
            QStringLiteral("charge_duties"),
            {},
            {lacking(of_kind("by_mass", RuleKind::names, rule_tr("Counted by mass"),
                             rule_tr("Refrigerants whose limits are in kilograms, such as R1234yf, apart by commas")),
                     {}),
             lacking(of_kind("not_fluorinated", RuleKind::names, rule_tr("Without duties"),
                             rule_tr("Refrigerants that are no fluorinated gas, such as R290, apart by commas")),
                     {})}};
}

RuleFieldGroup leak_group() {
    RuleField every = number_of("every_months", rule_tr("At least every"), rule_tr("months"), 1, 240,
                                rule_tr("Longest time between two leak checks from this charge on. Regulation (EU) "
                                        "2024/573, article 5, in its lands"));
    every.kind = RuleKind::whole;
    return {RuleGroup::leak,
            rule_tr("Leak limit"),
            QStringLiteral("charge_duties"),
            QStringLiteral("leak_checks"),
            {of_words("by", rule_tr("Counted in"),
                      rule_tr("Whether the limit is in tonnes of CO\u2082e or in kilograms of refrigerant"),
                      {{QStringLiteral("t_co2e"), rule_tr("t CO\u2082e")}, {QStringLiteral("kg"), rule_tr("kg")}}),
             number_of("from", rule_tr("Charge from"), {}, 0, 1e6,
                       rule_tr("Smallest charge with this duty, in the unit above; t CO\u2082e are the kilograms times "
                               "the GWP, by 1000")),
             every}};
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
