#include "core/aftercare/icalendar.h"

#include "core/quantity/utf8.h"

namespace wg::aftercare {
namespace {

constexpr std::size_t line_octets = 75;  // RFC 5545, 3.1: without the line break

/// Bytes that are no UTF-8 go; control characters too, but for tab and line feed.
std::string readable(const std::string& text) {
    std::string out;
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::size_t good = valid_utf8_prefix(rest);
        for (const char c : rest.substr(0, good)) {
            const auto byte = static_cast<unsigned char>(c);
            if (byte == 0x7F || (byte < 0x20 && c != '\n' && c != '\t')) continue;
            out += c;
        }
        rest.remove_prefix(good);
        if (!rest.empty()) rest.remove_prefix(1);
    }
    return out;
}

/// TEXT of RFC 5545, 3.3.11.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : readable(text)) {
        if (c == '\\' || c == ';' || c == ',') out += '\\';
        if (c == '\n') {
            out += "\\n";
        } else {
            out += c;
        }
    }
    return out;
}

bool continues_character(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

void add_line(std::string& out, const std::string& line) {
    std::size_t from = 0;
    std::size_t room = line_octets;
    while (line.size() - from > room) {
        std::size_t end = from + room;
        while (end > from && continues_character(line[end]))
            --end;
        out.append(line, from, end - from);
        out += "\r\n ";
        from = end;
        room = line_octets - 1;  // the blank counts
    }
    out.append(line, from, std::string::npos);
    out += "\r\n";
}

std::string digits(const std::string& iso) {
    std::string out;
    for (const char c : iso) {
        if (c != '-' && c != ':') out += c;
    }
    return out;
}

std::string joined(const std::vector<std::string>& parts, const char* between) {
    std::string out;
    for (const std::string& part : parts) {
        if (part.empty()) continue;
        if (!out.empty()) out += between;
        out += part;
    }
    return out;
}

}  // namespace

std::string uid_of(const std::string& job_id, const std::string& service_id) {
    return service_id + "-" + job_id + "@warmgable";
}

std::string icalendar(const std::vector<CalendarEntry>& entries, Instant now) {
    std::string out;
    const auto line = [&out](const std::string& text) { add_line(out, text); };
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Warmgable//Services//EN");
    line("CALSCALE:GREGORIAN");
    for (const CalendarEntry& entry : entries) {
        line("BEGIN:VEVENT");
        line("UID:" + escaped(entry.uid));
        line("DTSTAMP:" + digits(iso8601(now)));
        line("DTSTART;VALUE=DATE:" + digits(iso8601(entry.on)));
        line("DTEND;VALUE=DATE:" + digits(iso8601(days_after(entry.on, 1))));
        line("SUMMARY:" + escaped(entry.summary));
        if (!entry.description.empty()) line("DESCRIPTION:" + escaped(entry.description));
        if (!entry.location.empty()) line("LOCATION:" + escaped(entry.location));
        line("TRANSP:TRANSPARENT");  // a day on which something falls due is not a day taken
        if (entry.remind_days > 0) {
            line("BEGIN:VALARM");
            line("ACTION:DISPLAY");
            line("DESCRIPTION:" + escaped(entry.summary));
            // From the day's beginning, so that it rings at 9 in the morning.
            line("TRIGGER:-P" + std::to_string(entry.remind_days - 1) + "DT15H");
            line("END:VALARM");
        }
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    return out;
}

std::vector<CalendarEntry> calendar_of(const Job& job, const std::vector<ServiceDate>& dates, CivilDate today) {
    const std::string who = joined({job.number, job.client.name}, " ");
    const std::string where = joined({job.client.street, joined({job.client.postcode, job.client.town}, " ")}, ", ");
    std::vector<CalendarEntry> out;
    for (const ServiceDate& date : dates) {
        if (!date.due_on) continue;
        CalendarEntry entry;
        entry.uid = uid_of(job.id, date.service.id);
        entry.on = *date.due_on;
        entry.summary = joined({who, date.service.text}, ": ");
        entry.description = joined(
            {date.service.text, date.last_done_on ? "Last done on " + iso8601(*date.last_done_on) : "Not done yet",
             "Why: " + date.service.why, "Source: " + date.service.source,
             job.client.phone.empty() ? "" : "Telephone: " + job.client.phone},
            "\n");
        entry.location = where;
        out.push_back(std::move(entry));
    }
    const std::optional<Warranty> term = warranty(job, today);
    if (term && term->days_left >= 0) {
        CalendarEntry entry;
        entry.uid = uid_of(job.id, "warranty-end");
        entry.on = term->ends_on;
        entry.summary = joined({who, "warranty ends"}, ": ");
        entry.description = job.aftercare.warranty_words;
        entry.location = where;
        entry.remind_days = 60;  // time for a last look on the maker's account
        out.push_back(std::move(entry));
    }
    return out;
}

}  // namespace wg::aftercare
