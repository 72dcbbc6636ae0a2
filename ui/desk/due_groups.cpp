#include "ui/desk/due_groups.h"

#include <algorithm>

namespace wg::ui {
namespace {

std::optional<CivilDate> due_day(const store::ServiceDueRow& row) {
    const Result<CivilDate> date = date_from_iso8601(row.due_on);
    return date ? std::optional<CivilDate>(date.value()) : std::nullopt;
}

std::string small(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text;
}

bool lies_in(const store::ServiceDueRow& row, const std::string& area) {
    const std::string wanted = small(area);
    return small(row.postcode).rfind(wanted, 0) == 0 || small(row.town).rfind(wanted, 0) == 0;
}

}  // namespace

std::string area_of(const store::ServiceDueRow& row) {
    if (row.postcode.empty()) return row.town;
    const std::size_t gap = row.postcode.find(' ');
    if (gap != std::string::npos) return row.postcode.substr(0, gap);
    // Without a gap (most countries): the first two places stand for a district.
    constexpr std::size_t district = 2;
    return row.postcode.substr(0, district);
}

std::vector<DueWeek> due_weeks(const std::vector<store::ServiceDueRow>& rows, CivilDate today,
                               const std::string& area) {
    std::vector<DueWeek> weeks;
    for (const store::ServiceDueRow& row : rows) {
        const std::optional<CivilDate> day = due_day(row);
        if (!day || !lies_in(row, area)) continue;
        const aftercare::ServiceState state = aftercare::state_of(*day, today);
        std::optional<CivilDate> monday;
        if (state != aftercare::ServiceState::overdue) monday = aftercare::monday_of(*day);
        auto week = std::find_if(weeks.begin(), weeks.end(), [&](const DueWeek& w) { return w.monday == monday; });
        if (week == weeks.end()) week = weeks.insert(weeks.end(), DueWeek{monday, {}});
        auto visit = std::find_if(week->visits.begin(), week->visits.end(),
                                  [&](const DueVisit& v) { return v.house.job_id == row.job_id; });
        if (visit == week->visits.end()) {
            week->visits.push_back({row, *day, state, {row}});
            continue;
        }
        visit->services.push_back(row);
        if (aftercare::before(*day, visit->on)) {
            visit->on = *day;
            visit->state = state;
        }
    }
    std::stable_sort(weeks.begin(), weeks.end(), [](const DueWeek& a, const DueWeek& b) {
        if (!a.monday || !b.monday) return !a.monday && b.monday;
        return aftercare::before(*a.monday, *b.monday);
    });
    for (DueWeek& week : weeks) {
        std::stable_sort(week.visits.begin(), week.visits.end(), [](const DueVisit& a, const DueVisit& b) {
            const std::string of_a = area_of(a.house), of_b = area_of(b.house);
            if (of_a != of_b) return of_a < of_b;
            return aftercare::before(a.on, b.on);
        });
    }
    return weeks;
}

int due_this_week(const std::vector<store::ServiceDueRow>& rows, CivilDate today) {
    const CivilDate next_monday = aftercare::days_after(aftercare::monday_of(today), 7);
    return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](const store::ServiceDueRow& row) {
        const std::optional<CivilDate> day = due_day(row);
        return day && !aftercare::before(*day, today) && aftercare::before(*day, next_monday);
    }));
}

int overdue(const std::vector<store::ServiceDueRow>& rows, CivilDate today) {
    return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](const store::ServiceDueRow& row) {
        const std::optional<CivilDate> day = due_day(row);
        return day && aftercare::before(*day, today);
    }));
}

}  // namespace wg::ui
