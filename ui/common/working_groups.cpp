#include "ui/common/working_groups.h"

#include <QObject>
#include <algorithm>
#include <array>
#include <set>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

using Subject = WorkingSubject;

QString title_of_subject(Subject subject) {
    switch (subject) {
        case Subject::wind_and_snow: return QObject::tr("Wind and snow");
        case Subject::fixing: return QObject::tr("Fixing points");
        case Subject::run: return QObject::tr("Run");
        case Subject::electrics: return QObject::tr("Electrics");
        case Subject::water: return QObject::tr("Water");
        case Subject::room: return QObject::tr("Room and charge");
        case Subject::yield: return QObject::tr("Yield");
        case Subject::money: return QObject::tr("Money");
        case Subject::readings: return QObject::tr("Readings");
        case Subject::other: return QObject::tr("Other");
    }
    return {};
}

/// The words of a key or code: "services.room-charge" has three.
std::set<std::string> words_in(const std::string& key) {
    std::set<std::string> words;
    std::string word;
    for (const char c : key + '.') {
        if (c != '.' && c != '-' && c != '_') {
            word += c;
        } else if (!word.empty()) {
            words.insert(std::exchange(word, {}));
        }
    }
    return words;
}

bool any_of_words(const std::set<std::string>& words, std::initializer_list<const char*> wanted) {
    return std::any_of(wanted.begin(), wanted.end(), [&words](const char* one) { return words.count(one) != 0; });
}

std::string first_word(const std::string& key) {
    return key.substr(0, key.find('.'));
}

/// How the price adds up. Sums of the quote only: nothing is priced here.
Working price_working(const quote::Quote& quote, const plan::Plan& plan) {
    Money labour;
    Money goods;
    for (const parts::Line& line : quote.lines)
        (line.labour ? labour : goods) += line.net;
    const auto text = [&quote](Money amount) { return money(amount, qs(quote.currency)).toStdString(); };
    Working working;
    working.key = "quote.price";
    working.title = "Price with tax";
    working.formula = quote.discount.minor != 0 ? "equipment and material + labour - discount + tax"
                                                : "equipment and material + labour + tax";
    working.inputs = {{"equipment and material", text(goods)}, {"labour", text(labour)}};
    if (quote.discount.minor != 0) working.inputs.emplace_back("discount", text(Money{} - quote.discount));
    working.inputs.emplace_back("net", text(quote.net));
    for (const quote::TaxSum& tax : quote.taxes) {
        working.inputs.emplace_back(
            tax.rate.label + ", " + percent(tax.rate.rate, 1).toStdString() + " of " + text(tax.net), text(tax.tax));
    }
    working.result = text(quote.gross);
    working.source = "Price list: " + plan.price_list_label + "; rule set: " + plan.rule_set_label;
    return working;
}

/// One point's figures as the plan has them, by the formula of the collector's worst point.
Working point_working(const fixing::FixingPoint& point, const Working* worst) {
    const auto newtons = [](double value) { return quantity(value, QStringLiteral("N")).toStdString(); };
    Working working;
    working.key = "fixing.point";
    working.title = QObject::tr("Point %1").arg(point.number).toStdString();
    if (worst != nullptr) {
        working.formula = worst->formula;
        working.source = worst->source;
        working.assumed = worst->assumed;
    }
    working.inputs = {{"combination", point.worst_combination},
                      {"pull, design", newtons(point.pull_n)},
                      {"holds against pull", newtons(point.resistance_pull_n)},
                      {"shear, design", newtons(point.shear_n)},
                      {"holds against shear", newtons(point.resistance_shear_n)},
                      {"pressure, design", newtons(point.push_n)}};
    working.result = percent(point.utilisation).toStdString() + " used";
    return working;
}

void put(WorkingGroup& group, NamedWorking one) {
    // What holds for several collectors alike stands once, with all their names.
    for (NamedWorking& there : group.workings) {
        if (there.working != one.working || one.point != 0) continue;
        if (!one.place.isEmpty() && !there.place.isEmpty() && there.placement_id != one.placement_id) {
            there.place += QStringLiteral(", ") + one.place;
            ++there.holds_for;
        }
        return;
    }
    group.workings.push_back(std::move(one));
}

/// Findings whose working goes by another name.
const char* other_name_of(const std::string& code) {
    struct Pair {
        const char* code;
        const char* key;
    };
    static constexpr Pair pairs[] = {
        {"spot.floor-load", "services.mass"},     {"spot.floor-load-assumed", "services.mass"},
        {"water.pressure", "services.expansion"}, {"run.too-long", "run.length"},
        {"run.too-short", "run.length"},          {"run.lift", "run.length"}};
    for (const Pair& one : pairs)
        if (code == one.code) return one.key;
    return "";
}

/// The working that says most of a subject, when no other fits better.
std::array<const char*, 2> chief_of(Subject subject) {
    switch (subject) {
        case Subject::wind_and_snow: return {"fixing.wind", "fixing.pressure"};
        case Subject::fixing: return {"fixing.worst", ""};
        case Subject::run: return {"run.charge", "run.length"};
        case Subject::electrics: return {"services.cable", ""};
        // What has to do with water or a room rests on many figures: none of them speaks for all.
        case Subject::water:
        case Subject::room: break;
        case Subject::yield: return {"yield.factor", "yield.heat"};
        case Subject::money: return {"quote.price", "economy.running-cost"};
        case Subject::readings:
        case Subject::other: break;
    }
    return {"", ""};
}

/// The subject of a finding's code; none for those that stand on no figure.
std::optional<Subject> subject_of_code(const std::string& code) {
    const std::string room = first_word(code);
    const std::set<std::string> words = words_in(code);
    if (room == "site" && any_of_words(words, {"wind", "snow", "hill"})) return Subject::wind_and_snow;
    if (room == "fixing" || room == "run" || room == "services" || room == "supply") return subject_of(code);
    if (room == "service") return any_of_words(words, {"supply", "earth"}) ? Subject::electrics : Subject::water;
    if (room == "electrical" || room == "lightning" || room == "electrics" || room == "cable")
        return Subject::electrics;
    if (room == "water" || room == "loop" || room == "hygiene") return Subject::water;
    if (room == "room" || room == "spot" || room == "charge" || room == "pressure" || room == "standstill")
        return Subject::room;
    if (room == "pump" || room == "plate" || room == "heater" || room == "comfort" || room == "yield" ||
        room == "block")
        return Subject::yield;
    if (room == "economy" || room == "quote" || room == "parts") return Subject::money;
    return std::nullopt;
}

}  // namespace

WorkingSubject subject_of(const std::string& key) {
    const std::string room = first_word(key);
    const std::set<std::string> words = words_in(key);
    if (room == "fixing") {
        return any_of_words(words, {"wind", "snow", "pressure", "hill", "orography", "altitude", "drift", "exposure",
                                    "zone", "zones", "net", "free"})
                   ? Subject::wind_and_snow
                   : Subject::fixing;
    }
    if (room == "wind" || room == "snow" || room == "site") return Subject::wind_and_snow;
    if (room == "run" || room == "pipework") return Subject::run;
    if (room == "yield" || room == "season" || room == "plate" || room == "plan") return Subject::yield;
    if (room == "economy" || room == "quote" || room == "parts") return Subject::money;
    if (room == "supply" || room == "electrical" || room == "electrics" || room == "lightning")
        return Subject::electrics;
    if (room == "water") return Subject::water;
    if (room == "room" || room == "spot" || room == "charge" || room == "pressure") return Subject::room;
    if (room == "commissioning") return Subject::readings;
    if (room != "services") return Subject::other;
    if (any_of_words(words,
                     {"cable",  "breaker", "residual",   "supply",   "current",    "voltage", "electric",  "electrical",
                      "inrush", "fault",   "earth",      "earthing", "loop",       "surge",   "lightning", "fuse",
                      "phase",  "phases",  "protection", "short",    "separation", "bonding"}))
        return Subject::electrics;
    if (any_of_words(words, {"mass", "room", "charge", "floor", "leak", "air"})) return Subject::room;
    return Subject::water;
}

std::vector<WorkingGroup> grouped_workings(const plan::Plan& plan) {
    std::vector<WorkingGroup> groups;
    const auto group_of = [&groups](Subject subject, const QString& more) -> WorkingGroup& {
        const QString title =
            more.isEmpty() ? title_of_subject(subject) : title_of_subject(subject) + QLatin1String(": ") + more;
        for (WorkingGroup& one : groups)
            if (one.title == title) return one;
        return groups.emplace_back(WorkingGroup{subject, title, {}});
    };
    const bool several = plan.placements.size() > 1;
    std::vector<Working> rest = plan.workings;
    for (const plan::PlacementPlan& placement : plan.placements) {
        const QString label = qs(placement.label.empty() ? placement.surface_label : placement.label);
        const Working* worst = nullptr;
        for (const Working& working : placement.fixing.workings) {
            // The plan's own list holds it too: taken out there, so that what is left is about the whole plan.
            if (const auto same = std::find(rest.begin(), rest.end(), working); same != rest.end()) rest.erase(same);
            const Subject subject = subject_of(working.key);
            const bool own = subject == Subject::fixing;
            // The collector's name stands in the group's title or beside the working here, not in its own title.
            Working shown = working;
            const std::string named = ": " + placement.label;
            if (shown.title.size() > named.size() && shown.title.ends_with(named))
                shown.title.resize(shown.title.size() - named.size());
            put(group_of(subject, own ? label : QString()),
                {std::move(shown), placement.placement_id, several || own ? label : QString()});
            if (working.key == "fixing.worst") worst = &working;
        }
        for (const fixing::FixingPoint& point : placement.fixing.points) {
            put(group_of(Subject::fixing, label),
                {point_working(point, worst), placement.placement_id, label, 1, point.number});
        }
    }
    for (const Working& working : plan.services.workings)
        if (std::find(rest.begin(), rest.end(), working) == rest.end()) rest.push_back(working);
    for (const commissioning::Assessment& one : plan.assessments)
        if (!one.working.key.empty() && std::find(rest.begin(), rest.end(), one.working) == rest.end())
            rest.push_back(one.working);
    if (plan.quote) rest.push_back(price_working(*plan.quote, plan));
    for (const Working& working : rest)
        put(group_of(subject_of(working.key), {}), {working, {}, {}});
    for (WorkingGroup& group : groups)
        for (NamedWorking& one : group.workings)
            if (several && one.holds_for == static_cast<int>(plan.placements.size()))
                one.place = QObject::tr("all collectors");
    std::stable_sort(groups.begin(), groups.end(),
                     [](const WorkingGroup& a, const WorkingGroup& b) { return a.subject < b.subject; });
    return groups;
}

const NamedWorking& at(const std::vector<WorkingGroup>& groups, const WorkingAt& where) {
    return groups[where.group].workings[where.row];
}

namespace {

template <class Wanted>
std::vector<WorkingAt> all_that(const std::vector<WorkingGroup>& groups, Wanted wanted) {
    std::vector<WorkingAt> found;
    for (std::size_t g = 0; g < groups.size(); ++g)
        for (std::size_t r = 0; r < groups[g].workings.size(); ++r)
            if (wanted(groups[g], groups[g].workings[r])) found.push_back({g, r});
    return found;
}

}  // namespace

std::optional<WorkingAt> find_working(const std::vector<WorkingGroup>& groups, const plan::Plan& plan,
                                      const std::string& key, const std::string& placement_id) {
    const auto found = all_that(groups, [&](const WorkingGroup&, const NamedWorking& one) {
        return one.working.key == key && (placement_id.empty() || one.placement_id == placement_id);
    });
    if (found.empty()) return std::nullopt;
    const auto use = [&](const WorkingAt& where) {
        for (const plan::PlacementPlan& one : plan.placements)
            if (one.placement_id == at(groups, where).placement_id) return one.fixing.worst_utilisation;
        return 0.0;
    };
    if (key != "fixing.worst") return found.front();
    return *std::max_element(found.begin(), found.end(),
                             [&](const WorkingAt& a, const WorkingAt& b) { return use(a) < use(b); });
}

std::optional<WorkingAt> working_of_point(const std::vector<WorkingGroup>& groups, const std::string& placement_id,
                                          int point) {
    const auto found = all_that(groups, [&](const WorkingGroup&, const NamedWorking& one) {
        return one.placement_id == placement_id && one.point == point && point != 0;
    });
    if (found.empty()) return std::nullopt;
    return found.front();
}

std::optional<WorkingAt> working_of(const std::vector<WorkingGroup>& groups, const Finding& finding) {
    const auto subject = subject_of_code(finding.code);
    // Of another collector than the finding's own it would mislead.
    const auto here = [&finding](const NamedWorking& one) {
        return one.placement_id.empty() || finding.place_id.empty() || one.placement_id == finding.place_id;
    };
    const std::string other_name = other_name_of(finding.code);
    if (const auto same = all_that(groups,
                                   [&](const WorkingGroup&, const NamedWorking& one) {
                                       return (one.working.key == finding.code || one.working.key == other_name) &&
                                              here(one);
                                   });
        !same.empty())
        return same.front();
    if (!subject) return std::nullopt;
    auto all = all_that(groups, [&](const WorkingGroup& group, const NamedWorking& one) {
        return group.subject == *subject && one.point == 0 && here(one);
    });
    // Wind and snow of one surface hold for all collectors on it.
    if (all.empty())
        all = all_that(groups, [&](const WorkingGroup& group, const NamedWorking& one) {
            return group.subject == *subject && one.point == 0;
        });
    if (all.empty()) return std::nullopt;
    std::set<std::string> asked = words_in(finding.code);
    asked.erase(first_word(finding.code));
    const auto common = [&](const WorkingAt& where) {
        std::set<std::string> own = words_in(at(groups, where).working.key);
        own.erase(first_word(at(groups, where).working.key));
        return std::count_if(own.begin(), own.end(), [&asked](const std::string& w) { return asked.count(w) != 0; });
    };
    const auto best =
        std::max_element(all.begin(), all.end(), [&](const auto& a, const auto& b) { return common(a) < common(b); });
    if (common(*best) > 0) return *best;
    for (const char* chief : chief_of(*subject))
        for (const WorkingAt& one : all)
            if (at(groups, one).working.key == chief) return one;
    return std::nullopt;
}

}  // namespace wg::ui
