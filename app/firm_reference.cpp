#include "app/firm_reference.h"

#include <QDateTime>
#include <QFileInfo>
#include <algorithm>

#include "app/store_command.h"
#include "core/plan/own_lists.h"
#include "core/plan/own_rules.h"
#include "core/plan/reference_overlay.h"
#include "core/store/connection.h"
#include "core/store/equipment_book.h"
#include "core/store/personal.h"
#include "core/store/price_book.h"
#include "core/store/rule_book.h"

namespace wg::app {
namespace {

bool job_names(const Job& job, const std::string& item_id) {
    return std::any_of(job.choices.begin(), job.choices.end(), [&item_id](const Choice& choice) {
        return choice.collector_model == item_id || choice.block_model == item_id || choice.cylinder_model == item_id ||
               choice.fixing_method == item_id;
    });
}

void add_problems(std::vector<Problem>& out, const std::vector<Problem>& more) {
    out.insert(out.end(), more.begin(), more.end());
}

}  // namespace

Result<std::unique_ptr<store::Store>> open_store_of_firm(const QString& place) {
    if (!store::is_address(place.toStdString()) && !QFileInfo::exists(place))
        return Problem{place.toStdString(), "there is no such store", "Name it with --store"};
    return store::Store::open_place(place.toStdString(), Instant{QDateTime::currentSecsSinceEpoch()}, seat_name());
}

Result<Job> job_of_store(store::Store& store, const std::string& number) {
    const auto ids = store::PersonalData(store).ids_of({number});
    if (!ids) return ids.problems();
    if (ids.value().size() != 1)
        return Problem{number, "is the number of " + std::to_string(ids.value().size()) + " jobs",
                       "Name the number of one job, or a job file"};
    return store.load(ids.value().front());
}

Result<WithFirm> with_what_the_firm_has(store::Store& store, const plan::Reference& program, const Job& job) {
    WithFirm out;
    const store::PriceBook prices(store);
    const auto versions = prices.lists();
    if (!versions) return versions.problems();
    std::vector<plan::OwnList> lists;
    for (const store::PriceListVersion& version : versions.value()) {
        const auto content = prices.content(version.list_id, version.version);
        if (content)
            lists.push_back({version.list_id, content.value(), version.withdrawn});
        else
            add_problems(out.left_out, content.problems());
    }
    plan::WithLists with_lists = plan::with_own_lists(program, lists);
    add_problems(out.left_out, with_lists.problems);

    const store::RuleBook rules(store);
    const auto sets = rules.sets();
    if (!sets) return sets.problems();
    std::vector<plan::OwnRules> own_rules;
    for (const store::RuleSetVersion& version : sets.value()) {
        if (version.withdrawn && version.id != job.rule_set) continue;
        const auto content = rules.content(version.id, version.version);
        if (content)
            own_rules.push_back({version.id, content.value()});
        else
            add_problems(out.left_out, content.problems());
    }
    plan::WithRules with_rules = plan::with_own_rules(with_lists.reference, own_rules);
    add_problems(out.left_out, with_rules.problems);

    const auto kept = store::EquipmentBook(store).current();
    if (!kept) return kept.problems();
    add_problems(out.left_out, kept.value().damaged);
    std::vector<plan::OwnItem> items;
    for (const store::EquipmentVersion& item : kept.value().items)
        if (!item.withdrawn || job_names(job, item.item_id)) items.push_back({item.item_id, item.content});
    plan::Overlay overlay = plan::with_own_items(with_rules.reference, items);
    add_problems(out.left_out, overlay.left_out);
    out.reference = std::move(overlay.reference);

    if (job.weather.starts_with("year:")) {
        Result<weather::Year> year = store.weather_year(job.weather);
        if (!year) return year.problems();
        out.reference.weather = plan::prepared(std::move(year).value());
    }
    return out;
}

}  // namespace wg::app
