#include "core/plan/issued_paper.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/job/codec.h"
#include "core/job/json_text.h"
#include "core/plan/issued_plan.h"
#include "core/quantity/base64.h"
#include "core/quantity/iban.h"
#include "core/quantity/time.h"
#include "core/quote/frozen_reader.h"

namespace wg::plan {
namespace {

using Json = nlohmann::json;
using quote::FrozenReader;

constexpr std::size_t most_beside = 10;
constexpr std::size_t max_logo_text = std::size_t{2} << 20U;
constexpr int most_years = 200;
constexpr std::int64_t schema_with_bank = 2;

Site site_on_paper(const Job& job, const std::vector<Choice>& choices) {
    Site out;
    out.sketch_up_azimuth_deg = job.site.sketch_up_azimuth_deg;
    for (const Surface& surface : job.site.surfaces) {
        const bool used = std::any_of(choices.begin(), choices.end(), [&surface](const Choice& choice) {
            return std::any_of(choice.placements.begin(), choice.placements.end(),
                               [&surface](const Placement& one) { return one.surface_id == surface.id; });
        });
        if (!used) continue;
        out.surfaces.push_back(surface);
        out.surfaces.back().footprint_edge_id.clear();
    }
    for (const Obstacle& obstacle : job.site.obstacles) {  // those that stand on a surface are drawn
        out.obstacles.push_back(obstacle);
        out.obstacles.back().footprint_edge_id.clear();
    }
    for (const CylinderSpot& spot : job.site.spots) {
        CylinderSpot named;
        named.id = spot.id;
        named.label = spot.label;
        out.spots.push_back(named);
    }
    return out;
}

/// What the quote says and draws of the job, and no more: the snapshot stays where the law keeps the quote, also after
/// the client's other data were erased.
Job as_on_paper(const IssuedPaper& paper) {
    const Job& job = paper.job;
    Job out;
    out.id = job.id;
    out.number = job.number;
    out.title = job.title;
    out.invented = job.invented;
    out.state = job.state;
    out.revision = job.revision;
    out.created_at = job.created_at;
    out.changed_at = job.changed_at;
    out.client.name = job.client.name;
    out.client.street = job.client.street;
    out.client.postcode = job.client.postcode;
    out.client.town = job.client.town;
    const auto on_paper = [&paper](const std::string& choice_id) {
        return choice_id == paper.plan.choice_id ||
               std::any_of(paper.beside.begin(), paper.beside.end(),
                           [&choice_id](const Plan& other) { return other.choice_id == choice_id; });
    };
    for (const Choice& choice : job.choices) {
        if (!on_paper(choice.id)) continue;
        out.choices.push_back(choice);
        out.choices.back().route.clear();
        out.choices.back().extras.clear();
    }
    out.chosen_choice_id = paper.plan.choice_id;
    out.site = site_on_paper(job, out.choices);
    out.demand.draw_source = job.demand.draw_source;
    out.demand.cycle = job.demand.cycle;
    out.demand.scale = job.demand.scale;
    out.demand.household.persons = job.demand.household.persons;
    out.demand.household.litres_40_per_person = job.demand.household.litres_40_per_person;
    out.demand.set_point_c = job.demand.set_point_c;
    out.demand.cold_mean_c = job.demand.cold_mean_c;
    out.demand.present_fuel = job.demand.present_fuel;
    out.demand.present_efficiency = job.demand.present_efficiency;
    out.weather = job.weather;
    out.rule_set = job.rule_set;
    out.price_list = job.price_list;
    out.offer.discount_percent = job.offer.discount_percent;
    out.offer.discount_reason = job.offer.discount_reason;
    out.offer.instalments = job.offer.instalments;
    out.offer.valid_days = job.offer.valid_days;
    out.offer.covering = job.offer.covering;
    out.offer.terms = job.offer.terms;
    return out;
}

Json firm_json(const IssuedFirm& firm) {
    return {{"name", firm.name},
            {"street", firm.street},
            {"town", firm.town},
            {"phone", firm.phone},
            {"email", firm.email},
            {"letter", firm.letter},
            {"logo", firm.logo.empty() ? std::string() : to_base64(firm.logo)},
            {"invented", firm.invented},
            {"vat_id", firm.vat_id},
            {"register_entry", firm.register_entry},
            {"bank", firm.bank},
            {"iban", firm.iban},
            {"bic", firm.bic}};
}

IssuedFirm firm_of(FrozenReader& read, const Json& object, std::int64_t schema) {
    IssuedFirm firm;
    firm.name = read.text(object, "name");
    firm.street = read.text(object, "street");
    firm.town = read.text(object, "town");
    firm.phone = read.text(object, "phone");
    firm.email = read.text(object, "email");
    firm.letter = read.text(object, "letter");
    firm.invented = read.flag(object, "invented");
    if (schema >= schema_with_bank) {
        firm.vat_id = read.text(object, "vat_id");
        firm.register_entry = read.text(object, "register_entry");
        firm.bank = read.text(object, "bank");
        firm.iban = read.text(object, "iban");
        firm.bic = read.text(object, "bic");
        if (!firm.iban.empty() && !is_iban(firm.iban)) read.refuse("iban");
        if (!firm.bic.empty() && !is_bic(firm.bic)) read.refuse("bic");
    }
    const std::string logo = read.text(object, "logo");
    const auto bytes = logo.size() > max_logo_text ? std::nullopt : from_base64(logo);
    if (bytes) {
        firm.logo = *bytes;
    } else {
        read.refuse("logo");
    }
    return firm;
}

}  // namespace

std::string snapshot_with_paper(const std::string& plan_json, const IssuedPaper& paper) {
    using Ordered = nlohmann::ordered_json;
    Json out = {{"schema", issued_paper_schema},
                {"firm", firm_json(paper.firm)},
                {"job", Json::parse(job_to_json(as_on_paper(paper)))},
                {"look", paper.look},
                {"plan", issued_plan_json(paper.plan)},
                {"printed_on", paper.printed_on},
                {"takes_place_of", paper.takes_place_of}};
    Json beside = Json::array();
    for (const Plan& other : paper.beside)
        beside.push_back(issued_plan_json(other));
    out["beside"] = beside;
    if (paper.tariffs) out["tariffs"] = {{"years", paper.tariffs->years}, {"yearly_rise", paper.tariffs->yearly_rise}};
    Ordered whole = Ordered::parse(plan_json);
    whole["paper"] = Ordered::parse(out.dump(-1, ' ', false, Json::error_handler_t::replace));
    return whole.dump(2, ' ', false, Ordered::error_handler_t::replace) + '\n';
}

Result<std::optional<IssuedPaper>> issued_paper(std::string_view snapshot, const std::string& where) {
    const auto refuse = [&where](const std::string& what) {
        return Problem{where, what, "Open the paper that was kept"};
    };
    const Result<Json> parsed = parse_json(snapshot, where);
    if (!parsed.ok()) return parsed.problems();
    const Json& whole = parsed.value();
    if (!whole.is_object() || whole.value("format", Json()) != "warmgable-plan")
        return refuse("the plan kept with it cannot be read");
    if (!whole.contains("paper")) return std::optional<IssuedPaper>();
    const Json& object = whole["paper"];
    if (!object.is_object()) return refuse("what its paper was made from cannot be read");
    FrozenReader read;
    const std::int64_t schema = read.whole(object, "schema", 1, 1'000'000);
    if (schema > issued_paper_schema) return refuse("what its paper was made from was frozen by a newer program");
    IssuedPaper out;
    out.firm = firm_of(read, read.object(object, "firm"), schema);
    out.look = read.text(object, "look");
    out.printed_on = read.text(object, "printed_on");
    out.takes_place_of = read.text(object, "takes_place_of");
    if (!date_from_iso8601(out.printed_on)) read.refuse("printed_on");
    if (object.contains("tariffs")) {
        economy::Tariffs tariffs;
        const Json& kept = read.object(object, "tariffs");
        tariffs.years = static_cast<int>(read.whole(kept, "years", 0, most_years));
        tariffs.yearly_rise = read.figure(kept, "yearly_rise");
        if (tariffs.yearly_rise <= -1.0 || tariffs.yearly_rise > 1.0) read.refuse("yearly_rise");
        out.tariffs = tariffs;
    }
    const Json& job = read.object(object, "job");
    const Json& beside = read.list(object, "beside");
    if (beside.size() > most_beside) read.refuse("beside");
    const Json& plan = read.object(object, "plan");
    if (read.good()) {
        Result<Job> kept = job_from_json(job.dump(), where + ": job");
        if (!kept.ok()) return kept.problems();
        out.job = std::move(kept).value();
        read_issued_plan(read, plan, out.plan);
        for (const Json& other : beside) {
            Plan next;
            read_issued_plan(read, other, next);
            out.beside.push_back(std::move(next));
        }
    }
    if (!read.good())
        return refuse("what its paper was made from lacks \"" + read.wrong() + "\", or it is not what it should be");
    if (out.plan.job_id != out.job.id) return refuse("what its paper was made from is of two jobs");
    if (find_choice(out.job, out.plan.choice_id) == nullptr)
        return refuse("what its paper was made from lacks the choice that it is for");
    return std::optional<IssuedPaper>(std::move(out));
}

}  // namespace wg::plan
