#include "core/plan/rule_set.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <set>
#include <sstream>

#include "core/plan/rule_sources.h"
#include "core/quantity/utf8.h"

namespace wg::plan {
namespace rule_set_test {

using nlohmann::json;

std::string shipped_text() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/rules/assumed.json");
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<Problem> problems_of(const json& document) {
    const Result<RuleSet> result = rule_set_from_json(document.dump(), "rules.json");
    return result ? std::vector<Problem>{} : result.problems();
}

bool names(const std::vector<Problem>& problems, const std::string& place) {
    return std::any_of(problems.begin(), problems.end(),
                       [&](const Problem& p) { return p.where.find(place) != std::string::npos; });
}

RuleSet shipped() {
    const Result<RuleSet> result = rule_set_from_json(shipped_text(), "assumed.json");
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
    return result.value();
}

TEST(RuleSet, neutral_default_says_that_it_is_assumed) {
    const RuleSet rules = shipped();
    EXPECT_EQ(rules.id, "assumed");
    EXPECT_TRUE(rules.assumed);
    EXPECT_NE(rules.source.find("assumed"), std::string::npos);
}

// EN 1990:2002 table A1.2(A), (B), table A1.1; EN 1995-1-1 tables 2.3, 3.1; EN 338 C24: recommended values, from
// memory.
TEST(RuleSet, neutral_default_holds_the_recommended_values_of_the_standards) {
    const fixing::ActionRules a = shipped().actions;
    EXPECT_DOUBLE_EQ(a.gamma_permanent_unfavourable, 1.35);
    EXPECT_DOUBLE_EQ(a.gamma_permanent_favourable, 0.9);
    EXPECT_DOUBLE_EQ(a.gamma_variable, 1.5);
    EXPECT_DOUBLE_EQ(a.psi_0_wind, 0.6);
    EXPECT_DOUBLE_EQ(a.psi_0_snow, 0.5);
    EXPECT_DOUBLE_EQ(a.air_density_kg_m3, 1.25);
    EXPECT_DOUBLE_EQ(a.gamma_timber, 1.3);
    EXPECT_DOUBLE_EQ(a.timber_density_kg_m3, 350.0);
}

// Article 5 of the same regulation: 12, 6 and 3 months from 5, 50, 500 t, or from 1, 10, 100 kg for gases of Annex II.
TEST(RuleSet, duties_by_charge_are_those_of_the_regulation) {
    const ChargeDuties d = shipped().duties;
    ASSERT_EQ(d.leak_checks.size(), 6U);
    EXPECT_FALSE(d.leak_checks[0].by_mass);
    EXPECT_DOUBLE_EQ(d.leak_checks[0].from, 5.0);
    EXPECT_EQ(d.leak_checks[0].every_months, 12);
    EXPECT_TRUE(d.leak_checks[5].by_mass);
    EXPECT_EQ(d.leak_checks[5].every_months, 3);
    EXPECT_EQ(d.by_mass, std::vector<std::string>{"R1234yf"});
}

TEST(RuleSet, examples_read_and_say_that_they_are_examples) {
    for (const char* id : {"example-mountain", "example-sea-level-map"}) {
        std::ifstream file(std::string(WG_RESOURCES_DIR) + "/rules/" + id + ".json");
        std::stringstream text;
        text << file.rdbuf();
        const Result<RuleSet> result = rule_set_from_json(text.str(), id);
        ASSERT_TRUE(result.ok()) << text_of(result.problems());
        EXPECT_EQ(result.value().id, id);
        EXPECT_TRUE(result.value().assumed);
        EXPECT_NE(result.value().label.find("Example"), std::string::npos);
        EXPECT_NE(result.value().actions.snow_rule, fixing::SnowRule::fixed);
    }
}

TEST(RuleSet, net_coefficients_ask_for_their_source_and_an_order) {
    json document = json::parse(shipped_text());
    document["actions"]["net_pressure"] = "coefficients";
    document["actions"].erase("net_pressure_source");
    EXPECT_TRUE(names(problems_of(document), "actions.net_pressure_source"));
    document = json::parse(shipped_text());
    document["actions"]["net_uplift_edge"] = -0.2;
    EXPECT_TRUE(names(problems_of(document), "actions.net_uplift_edge"));
    document = json::parse(shipped_text());
    document["actions"]["snow_rule"] = "lunar";
    EXPECT_TRUE(names(problems_of(document), "actions.snow_rule"));
}

// Regulation (EU) 2024/573, Annex IV: split systems under 3 kg from GWP 750 since 2025-01-01.
TEST(RuleSet, market_rules_hold_the_dates_of_the_regulation) {
    const RuleSet rules = shipped();
    ASSERT_GE(rules.market.size(), 2U);
    EXPECT_DOUBLE_EQ(rules.market[0].gwp_from, 750.0);
    EXPECT_EQ(rules.market[0].since, "2025-01-01");
    EXPECT_DOUBLE_EQ(rules.market[1].gwp_from, 150.0);
    EXPECT_EQ(rules.market[1].since, "2027-01-01");
    for (const MarketRule& rule : rules.market) {
        EXPECT_NE(rule.source.find("2024/573"), std::string::npos);
        EXPECT_NE((rule.text + ' ').find("erify"), std::string::npos)
            << "classification is left to the maker: " << rule.text;
    }
}

TEST(RuleSet, every_service_rule_has_text_interval_and_source) {
    std::set<std::string> ids;
    for (const ServiceRule& rule : shipped().service) {
        EXPECT_FALSE(rule.text.empty());
        EXPECT_FALSE(rule.source.empty());
        EXPECT_GE(rule.every_months, 1);
        ids.insert(rule.id);
    }
    for (const char* id : {"yearly-look", "anode", "leak-check", "safety-valve", "mixing-valve", "strainer"})
        EXPECT_EQ(ids.count(id), 1U) << id;
}

TEST(RuleSet, each_missing_field_is_named) {
    const json whole = json::parse(shipped_text());
    for (const auto& [field, value] : whole.items()) {
        if (field == "note" || field == "charge_duties") continue;
        json broken = whole;
        broken.erase(field);
        EXPECT_TRUE(names(problems_of(broken), field)) << field;
    }
    // Of later sets; a set without them takes the recommended values.
    const std::set<std::string> optional = {
        "wind_altitude_per_m", "snow_rule",           "snow_exposure", "snow_thermal",
        "snow_density_kn_m3",  "snow_slides",         "gamma_bolt",    "deflection_span_share",
        "net_pressure",        "net_pressure_source", "sources"};
    for (const char* group : {"actions", "tax"}) {
        for (const auto& [field, value] : whole[group].items()) {
            if (optional.count(field) != 0) continue;
            json broken = whole;
            broken[group].erase(field);
            EXPECT_TRUE(names(problems_of(broken), std::string(group) + '.' + field)) << field;
        }
    }
}

TEST(RuleSet, wrong_values_are_refused) {
    const json whole = json::parse(shipped_text());
    json document = whole;
    document["actions"]["gamma_variable"] = 0.15;
    EXPECT_TRUE(names(problems_of(document), "actions.gamma_variable"));
    document = whole;
    document["tax"]["rates"][0]["rate"] = 20;  // per cent in place of a share
    EXPECT_TRUE(names(problems_of(document), "standard"));
    document = whole;
    document["tax"]["rates"][1]["tax_class"] = "standard";
    EXPECT_TRUE(names(problems_of(document), "tax_class"));
    document = whole;
    document["tax"]["rates"] = json::array();
    EXPECT_TRUE(names(problems_of(document), "tax.rates"));
    document = whole;
    document["tax"]["rounding"] = "down";
    EXPECT_TRUE(names(problems_of(document), "tax.rounding"));
    document = whole;
    document["market"][0]["since"] = "2025-02-30";
    EXPECT_TRUE(names(problems_of(document), "since"));
    document = whole;
    document["service"][0]["every_months"] = 0;
    EXPECT_TRUE(names(problems_of(document), "every_months"));
    document = whole;
    document["colour"] = "red";
    EXPECT_FALSE(problems_of(document).empty());
}

TEST(RuleSet, service_conditions_are_a_closed_vocabulary) {
    const json whole = json::parse(shipped_text());
    for (const char* good : {"always", "anode", "flammable", "leak_duty", "t_co2e>=5", "t_co2e>=0.5", "t_co2e>=50"}) {
        json document = whole;
        document["service"][0]["when"] = good;
        EXPECT_TRUE(problems_of(document).empty()) << good;
    }
    for (const char* bad : {"sometimes", "t_co2e>=", "t_co2e>=5t", "t_co2e>=-1", "t_co2e>5", "t_co2e>=nan", ""}) {
        json document = whole;
        document["service"][0]["when"] = bad;
        EXPECT_TRUE(names(problems_of(document), "when")) << bad;
    }
}

TEST(RuleSet, each_value_may_name_its_own_source) {
    const json whole = json::parse(shipped_text());
    for (const std::string& value : values_with_source()) {
        json document = whole;
        document["actions"]["sources"][value] = "NA to EN 1991, table 1";
        EXPECT_TRUE(problems_of(document).empty()) << value;
        document["actions"]["sources"][value] = "";
        EXPECT_TRUE(names(problems_of(document), "actions.sources." + value)) << value;
        document["actions"]["sources"][value] = 7;
        EXPECT_TRUE(names(problems_of(document), "actions.sources." + value)) << value;
    }
    // What the shipped set gives is among them, but for the sources themselves.
    for (const auto& [field, value] : whole["actions"].items()) {
        if (field == "source" || field == "sources" || field == "net_pressure_source") continue;
        const auto& known = values_with_source();
        EXPECT_NE(std::find(known.begin(), known.end(), field), known.end()) << field;
    }
    json document = whole;
    document["actions"]["sources"]["colour"] = "a table";
    EXPECT_TRUE(names(problems_of(document), "actions.sources"));
    document["actions"]["sources"] = "a table";
    EXPECT_TRUE(names(problems_of(document), "actions.sources"));
}

// The shipped set owns that wind, snow, the net factor and the tax are assumed; nothing else in it is.
TEST(RuleSet, a_set_that_is_not_called_assumed_has_a_source_for_every_value) {
    json document = json::parse(shipped_text());
    document["assumed"] = false;
    const std::vector<Problem> problems = problems_of(document);
    const std::set<std::string> told = [&] {
        std::set<std::string> out;
        for (const Problem& problem : problems)
            out.insert(problem.where);
        return out;
    }();
    EXPECT_EQ(told, (std::set<std::string>{"rules.json: source", "rules.json: actions.sources.basic_wind_m_s",
                                           "rules.json: actions.sources.ground_snow_kn_m2",
                                           "rules.json: actions.sources.snow_rule",
                                           "rules.json: actions.sources.standing_off_net_factor",
                                           "rules.json: actions.sources.net_pressure", "rules.json: tax.source"}));
    document["source"] = "national annexes";
    document["tax"]["source"] = "tax act";
    document["actions"]["net_pressure_source"] = "guide";
    for (const char* value : {"basic_wind_m_s", "ground_snow_kn_m2", "snow_rule", "standing_off_net_factor"})
        document["actions"]["sources"][value] = "national annex";
    EXPECT_TRUE(problems_of(document).empty());
    document["service"][1]["source"] = "Assumed";
    EXPECT_TRUE(names(problems_of(document), "service[1].source")) << "whatever the capitals";
    document["assumed"] = true;
    EXPECT_TRUE(problems_of(document).empty());
}

TEST(RuleSet, damaged_files_are_read_or_refused_with_words) {
    const std::string whole = shipped_text();
    std::mt19937_64 random(20270621);
    int refused = 0;
    for (int i = 0; i < 400; ++i) {
        std::string text = whole;
        for (std::uint64_t n = 1 + random() % 4; n > 0; --n) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
                case 0: text[at] = static_cast<char>(random() % 256); break;
                case 1: text.erase(at, 1 + random() % 40); break;
                case 2: text.insert(at, text.substr(random() % text.size(), random() % 60)); break;
                default: text.resize(at + 1); break;
            }
        }
        const Result<RuleSet> read = rule_set_from_json(text, "damaged.json");
        if (read.ok()) continue;
        ++refused;
        for (const Problem& problem : read.problems()) {
            EXPECT_FALSE(problem.where.empty() || problem.what.empty() || problem.remedy.empty()) << problem.text();
            EXPECT_TRUE(is_utf8(problem.text()));
        }
    }
    EXPECT_GT(refused, 200);
}

}  // namespace rule_set_test
}  // namespace wg::plan
