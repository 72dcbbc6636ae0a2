#include "core/aftercare/register.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/job/after_corrections.h"
#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::aftercare {
namespace {

std::optional<RefrigerantMove> move_of(ReadingKind kind) {
    switch (kind) {
        case ReadingKind::charge_added: return RefrigerantMove::used;
        case ReadingKind::refrigerant_recovered: return RefrigerantMove::recovered;
        case ReadingKind::refrigerant_lost: return RefrigerantMove::leaked;
        default: return std::nullopt;
    }
}

std::optional<CivilDate> date_of(const RefrigerantEntry& entry) {
    const Result<CivilDate> date = date_from_iso8601(entry.on);
    return date ? std::optional<CivilDate>(date.value()) : std::nullopt;
}

struct Dated {
    CivilDate on;
    const RefrigerantEntry* entry = nullptr;
};

/// Of one refrigerant by day; the counts of a day after its moves.
std::vector<Dated> in_order(const std::vector<RefrigerantEntry>& entries, const std::string& refrigerant) {
    std::vector<Dated> out;
    for (const RefrigerantEntry& entry : entries) {
        if (entry.refrigerant != refrigerant || !std::isfinite(entry.kg)) continue;
        if (const std::optional<CivilDate> on = date_of(entry)) out.push_back({*on, &entry});
    }
    std::stable_sort(out.begin(), out.end(), [](const Dated& a, const Dated& b) {
        if (!(a.on == b.on)) return before(a.on, b.on);
        return a.entry->move != RefrigerantMove::counted && b.entry->move == RefrigerantMove::counted;
    });
    return out;
}

bool adds_to_stock(RefrigerantMove move) {
    return move == RefrigerantMove::received || move == RefrigerantMove::recovered;
}

double signed_kg(const RefrigerantEntry& entry) {
    MoveSums one{};
    one[static_cast<std::size_t>(entry.move)] = entry.kg;
    return stock_change_kg(one);
}

void explain(YearReport& report) {
    if (!report.count) return;
    const Count& count = *report.count;
    const double off = count.imbalance_kg();
    if (std::abs(off) <= std::max(usual_imbalance_kg, usual_imbalance_share * count.passed_kg)) return;
    std::vector<std::string>& out = report.explanations;
    if (off < 0.0) {
        out.emplace_back("A charge that was weighed in and not entered in its job's record");
        if (report.opening_from == std::nullopt)
            out.emplace_back("The register began without a count of what was there");
        out.emplace_back("What stays in hoses, manifold and recovery unit at each charge, 20 to 50 g a time");
        out.emplace_back("A bottle that leaks: weigh it again after a week");
        out.emplace_back("A bottle given back and not entered");
    } else {
        out.emplace_back("Refrigerant recovered and not entered in its job's record");
        if (report.opening_from == std::nullopt)
            out.emplace_back("The register began without a count of what was there");
        out.emplace_back("A bottle received and not entered");
        out.emplace_back("A bottle weighed with a wrong tare, or with oil in it");
        out.emplace_back("A charge entered twice, or at its planned instead of its weighed mass");
    }
}

std::string cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + "\"";
}

std::string row(const std::vector<std::string>& cells) {
    std::string out;
    for (std::size_t i = 0; i < cells.size(); ++i)
        out += (i == 0 ? "" : ",") + cell(cells[i]);
    return out + "\r\n";
}

}  // namespace

double of(const MoveSums& sums, RefrigerantMove move) noexcept {
    return sums[static_cast<std::size_t>(move)];
}

double stock_change_kg(const MoveSums& sums) noexcept {
    return of(sums, RefrigerantMove::received) + of(sums, RefrigerantMove::recovered) -
           of(sums, RefrigerantMove::used) - of(sums, RefrigerantMove::returned);
}

std::vector<RefrigerantEntry> entries_of(const Job& job, const std::string& refrigerant) {
    std::vector<RefrigerantEntry> out;
    if (job.invented) return out;
    std::map<std::string, RefrigerantMove> known;  // by reading
    for (const Reading& reading : job.record) {
        const std::optional<RefrigerantMove> move = move_of(reading.kind);
        const auto corrected = reading.corrects_id.empty() ? known.end() : known.find(reading.corrects_id);
        if (!move && corrected == known.end()) continue;
        const std::optional<CivilDate> on = day_of(reading);
        if (!on) continue;
        RefrigerantEntry entry;
        entry.id = entry.reading_id = reading.id;
        entry.on = iso8601(*on);
        entry.refrigerant = refrigerant;
        entry.move = move ? *move : corrected->second;
        entry.kg = move ? std::max(0.0, reading.value) : 0.0;
        entry.note = reading.note;
        entry.by = reading.taken_by;
        entry.job_id = job.id;
        if (corrected != known.end()) entry.corrects_id = reading.corrects_id;
        known[reading.id] = entry.move;
        out.push_back(std::move(entry));
    }
    return out;
}

std::vector<RefrigerantEntry> standing(const std::vector<RefrigerantEntry>& entries) {
    return after_corrections(entries);
}

std::vector<YearReport> year_reports(const std::vector<RefrigerantEntry>& entries) {
    const std::vector<RefrigerantEntry> now = standing(entries);
    std::set<std::string> names;
    for (const RefrigerantEntry& entry : now)
        names.insert(entry.refrigerant);
    std::vector<YearReport> out;
    for (const std::string& name : names) {
        double carried_kg = 0.0;  // to the next year: the last count and the moves since
        double passed_kg = 0.0;   // this year's opening and what came in
        std::optional<CivilDate> counted_on;
        YearReport* report = nullptr;
        for (const Dated& at : in_order(now, name)) {
            if (report == nullptr || report->year != at.on.year) {
                out.emplace_back();
                report = &out.back();
                report->year = at.on.year;
                report->refrigerant = name;
                report->opening_kg = report->expected_kg = passed_kg = carried_kg;
                report->opening_from = counted_on;
            }
            ++report->entries;
            if (at.entry->move != RefrigerantMove::counted) {
                report->moved[static_cast<std::size_t>(at.entry->move)] += at.entry->kg;
                report->expected_kg += signed_kg(*at.entry);
                carried_kg += signed_kg(*at.entry);
                if (adds_to_stock(at.entry->move)) passed_kg += at.entry->kg;
                continue;
            }
            if (!report->count || !(report->count->on == at.on))
                report->count = Count{at.on, 0.0, report->expected_kg, passed_kg};
            carried_kg = report->count->kg += at.entry->kg;
            counted_on = at.on;
        }
    }
    for (YearReport& report : out)
        explain(report);
    std::stable_sort(out.begin(), out.end(), [](const YearReport& a, const YearReport& b) { return a.year > b.year; });
    return out;
}

std::string register_csv(const std::vector<RefrigerantEntry>& entries) {
    std::string out = row({"on", "refrigerant", "move", "kg", "bottle", "by", "note", "job", "entry", "corrects"});
    std::vector<RefrigerantEntry> sorted = entries;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const RefrigerantEntry& a, const RefrigerantEntry& b) { return a.on < b.on; });
    for (const RefrigerantEntry& e : sorted)
        out += row({e.on, e.refrigerant, key_of(e.move), fixed(e.kg, 3), e.bottle, e.by, e.note, e.job_id, e.id,
                    e.corrects_id});
    return out;
}

std::string year_reports_csv(const std::vector<YearReport>& reports) {
    std::string out = row({"year", "refrigerant", "opening kg", "received kg", "recovered kg", "used kg", "returned kg",
                           "leaked from systems kg", "expected kg at the year's end", "counted on", "counted kg",
                           "expected kg that day", "imbalance kg", "imbalance %"});
    for (const YearReport& r : reports) {
        const auto kg = [&](RefrigerantMove move) { return fixed(of(r.moved, move), 3); };
        std::vector<std::string> cells = {std::to_string(r.year),         r.refrigerant,
                                          fixed(r.opening_kg, 3),         kg(RefrigerantMove::received),
                                          kg(RefrigerantMove::recovered), kg(RefrigerantMove::used),
                                          kg(RefrigerantMove::returned),  kg(RefrigerantMove::leaked),
                                          fixed(r.expected_kg, 3)};
        if (r.count) {
            cells.insert(cells.end(),
                         {iso8601(r.count->on), fixed(r.count->kg, 3), fixed(r.count->expected_kg, 3),
                          fixed(r.count->imbalance_kg(), 3), fixed(100.0 * r.count->imbalance_share(), 1)});
        } else {
            cells.insert(cells.end(), 5, "");
        }
        out += row(cells);
    }
    return out;
}

}  // namespace wg::aftercare
