#include "core/aftercare/service.h"

#include <algorithm>
#include <cmath>

#include "core/commissioning/commissioning.h"

namespace wg::aftercare {
namespace {

bool of_running_system(ReadingKind kind) {
    switch (kind) {
        case ReadingKind::charge_added:
        case ReadingKind::suction_temperature:
        case ReadingKind::discharge_temperature:
        case ReadingKind::suction_pressure:
        case ReadingKind::discharge_pressure:
        case ReadingKind::superheat:
        case ReadingKind::supply_current:
        case ReadingKind::heating_start:
        case ReadingKind::heating_end:
        case ReadingKind::water_temperature: return true;
        default: return false;
    }
}

/// How records older than ReadingKind::service_done say it; no translation changes it.
std::string mark_of_old(const std::string& service_id) {
    return "Service done [" + service_id + "]";
}

bool says_done(const Reading& reading, const std::string& service_id) {
    if (reading.kind == ReadingKind::service_done) return reading.subject == service_id;
    return reading.kind == ReadingKind::remark && reading.note.rfind(mark_of_old(service_id), 0) == 0;
}

/// Id of the service that an entry says was done; empty: none.
std::string service_in(const Reading& reading) {
    if (reading.kind == ReadingKind::service_done) return reading.subject;
    const std::string head = "Service done [";
    if (reading.kind != ReadingKind::remark || reading.note.rfind(head, 0) != 0) return {};
    const std::size_t end = reading.note.find(']');
    return end == std::string::npos ? std::string() : reading.note.substr(head.size(), end - head.size());
}

template <class T>
void add_once(std::vector<T>& list, const T& value) {
    if (std::find(list.begin(), list.end(), value) == list.end()) list.push_back(value);
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text;
}

}  // namespace

const char* text_of(ServiceState state) noexcept {
    switch (state) {
        case ServiceState::not_started: return "not started";
        case ServiceState::later: return "later";
        case ServiceState::soon: return "soon";
        case ServiceState::due: return "due";
        case ServiceState::overdue: return "overdue";
    }
    return "not started";
}

ServiceState state_of(CivilDate due_on, CivilDate today) noexcept {
    const int left = days_between(today, due_on);
    if (left < 0) return ServiceState::overdue;
    if (left <= due_days) return ServiceState::due;
    return left <= soon_days ? ServiceState::soon : ServiceState::later;
}

std::optional<CivilDate> started_on(const std::vector<Reading>& record) {
    std::optional<CivilDate> first;  // later ones are taken at services
    for (const Reading& reading : commissioning::standing(record)) {
        const std::optional<CivilDate> day = day_of(reading);
        if (of_running_system(reading.kind) && day && (!first || before(*day, *first))) first = day;
    }
    return first;
}

std::vector<CivilDate> days_done(const std::string& service_id, const std::vector<Reading>& record) {
    std::vector<CivilDate> days;
    for (const Reading& reading : commissioning::standing(record)) {
        if (!says_done(reading, service_id)) continue;
        if (const std::optional<CivilDate> day = day_of(reading)) days.push_back(*day);
    }
    std::sort(days.begin(), days.end(), before);
    return days;
}

std::vector<ServiceDate> service_dates(const std::vector<plan::ServiceDue>& services,
                                       const std::vector<Reading>& record, CivilDate today) {
    const std::optional<CivilDate> start = started_on(record);
    std::vector<ServiceDate> dates;
    for (const plan::ServiceDue& service : services) {
        ServiceDate date;
        date.service = service;
        date.counted_from = start;
        const std::vector<CivilDate> done = days_done(service.id, record);
        if (!done.empty()) {
            date.last_done_on = done.back();
            // A service of the day before the start, or of a system taken over, counts for what it is.
            if (!start || !before(done.back(), *start)) date.counted_from = done.back();
        }
        if (date.counted_from && service.every_months > 0) {
            date.due_on = months_after(*date.counted_from, service.every_months);
            date.days_left = days_between(today, *date.due_on);
            date.state = state_of(*date.due_on, today);
        }
        dates.push_back(std::move(date));
    }
    std::stable_sort(dates.begin(), dates.end(), [](const ServiceDate& a, const ServiceDate& b) {
        if (a.due_on.has_value() != b.due_on.has_value()) return a.due_on.has_value();
        return a.due_on && before(*a.due_on, *b.due_on);
    });
    return dates;
}

Reading service_done(const std::string& service_id, const std::string& taken_at, const std::string& by,
                     const std::string& note) {
    Reading reading;
    reading.kind = ReadingKind::service_done;
    reading.occasion = Occasion::service;
    reading.taken_at = taken_at;
    reading.taken_by = by;
    reading.subject = service_id;
    reading.note = note;
    return reading;
}

std::vector<Visit> visits(const std::vector<Reading>& record) {
    std::vector<Visit> out;
    for (const Reading& reading : commissioning::standing(record)) {
        const std::string service = service_in(reading);
        if (reading.occasion != Occasion::service && service.empty()) continue;
        const std::optional<CivilDate> day = day_of(reading);
        if (!day) continue;
        auto visit = std::find_if(out.begin(), out.end(), [&](const Visit& v) { return v.on == *day; });
        if (visit == out.end()) {
            out.emplace_back();
            visit = out.end() - 1;
            visit->on = *day;
        }
        if (!reading.taken_by.empty()) add_once(visit->by, reading.taken_by);
        if (!service.empty()) add_once(visit->services, service);
        if (service.empty() || !reading.note.empty()) visit->readings.push_back(reading);
    }
    std::stable_sort(out.begin(), out.end(), [](const Visit& a, const Visit& b) { return before(a.on, b.on); });
    return out;
}

std::optional<CivilDate> handed_over_on(const std::vector<Reading>& record) {
    std::optional<CivilDate> first;
    for (const Reading& reading : commissioning::standing(record)) {
        if (reading.kind != ReadingKind::signature) continue;
        const std::string role = lower(reading.subject);
        if (role.find("client") == std::string::npos && role.find("hand") == std::string::npos) continue;
        const std::optional<CivilDate> day = day_of(reading);
        if (day && (!first || before(*day, *first))) first = day;
    }
    return first;
}

std::optional<Warranty> warranty(const Job& job, CivilDate today) {
    if (!job.aftercare.warranty_months) return std::nullopt;
    const std::optional<CivilDate> handed_over = handed_over_on(job.record);
    const std::optional<CivilDate> from = handed_over ? handed_over : started_on(job.record);
    if (!from) return std::nullopt;
    Warranty out;
    out.from = *from;
    out.from_hand_over = handed_over.has_value();
    out.ends_on = days_after(months_after(*from, static_cast<int>(std::lround(*job.aftercare.warranty_months))), -1);
    out.days_left = days_between(today, out.ends_on);
    return out;
}

}  // namespace wg::aftercare
