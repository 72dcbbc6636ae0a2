#include "core/job/field_rules.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/quantity/outline.h"
#include "core/quantity/sha256.h"
#include "core/quantity/time.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"

namespace wg::job_fields {
namespace {

std::string number_text(double value) {
    char out[40];
    std::snprintf(out, sizeof out, "%.10g", value);
    return out;
}

std::string quoted(const std::string& value) {
    return "'" + for_message(value) + "'";
}

}  // namespace

std::string Path::text() const {
    std::string out = parent != nullptr ? parent->text() : "";
    if (key != nullptr) {
        if (!out.empty()) out += '.';
        out += key;
    } else if (parent != nullptr) {
        out += '[' + std::to_string(index) + ']';
        if (label != nullptr && !label->empty()) out += " \"" + for_message(*label, 40) + '"';
    }
    return out;
}

void ProblemList::add(const Path& path, std::string what, std::string remedy) {
    if (full()) return;
    std::string where = path.text();
    if (!file_name_.empty()) where = where.empty() ? file_name_ : file_name_ + ": " + where;
    problems_.push_back({std::move(where), std::move(what), std::move(remedy)});
}

void check_number(ProblemList& problems, const Path& path, double value, Range range) {
    if (!std::isfinite(value)) {
        problems.add(path, "is not a finite number", "Enter a number");
    } else if (value < range.low || value > range.high) {
        problems.add(path, "is " + number_text(value),
                     "It has to lie between " + number_text(range.low) + " and " + number_text(range.high));
    }
}

void check_integer(ProblemList& problems, const Path& path, std::int64_t value, std::int64_t low, std::int64_t high) {
    if (value >= low && value <= high) return;
    problems.add(path, "is " + std::to_string(value),
                 "It has to be a whole number between " + std::to_string(low) + " and " + std::to_string(high));
}

void check_text(ProblemList& problems, const Path& path, const std::string& value, std::size_t max_bytes) {
    if (value.size() > max_bytes) {
        problems.add(path, "is " + std::to_string(value.size()) + " bytes long",
                     "Shorten it to at most " + std::to_string(max_bytes) + " bytes");
    } else if (!is_utf8(value)) {
        problems.add(path, "is not UTF-8 text", "Enter it again");
    } else if (value.find('\0') != std::string::npos) {
        problems.add(path, "holds a zero character", "Enter it again");
    }
}

void check_uuid(ProblemList& problems, const Path& path, const std::string& value, Presence presence) {
    if (value.empty() && presence == Presence::may_be_empty) return;
    if (is_uuid(value)) return;
    problems.add(path, value.empty() ? "is empty" : "is " + quoted(value),
                 "It has to be a UUID: 8-4-4-4-12 lower-case hex digits");
}

void check_sha256(ProblemList& problems, const Path& path, const std::string& value, Presence presence) {
    if (value.empty() && presence == Presence::may_be_empty) return;
    if (is_sha256_hex(value)) return;
    problems.add(path, value.empty() ? "is empty" : "is " + quoted(value),
                 "It has to be a SHA-256 hash: 64 lower-case hex digits");
}

void check_instant(ProblemList& problems, const Path& path, const std::string& value, Presence presence) {
    if (value.empty() && presence == Presence::may_be_empty) return;
    if (value.size() <= 40 && instant_from_iso8601(value).ok()) return;
    problems.add(path, value.empty() ? "is empty" : quoted(value) + " is not a date and time with an offset",
                 "Write it as 2027-06-21T12:30:00Z or 2027-06-21T12:30:00+02:00");
}

void check_date(ProblemList& problems, const Path& path, const std::string& value) {
    if (value.empty() || date_from_iso8601(value).ok()) return;
    problems.add(path, quoted(value) + " is not a date", "Write it as 2027-06-21");
}

void check_coordinates(ProblemList& problems, const Path& path, const double* values, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
        const bool usable = std::isfinite(values[i]) && std::fabs(values[i]) <= max_coordinate_m;
        if (usable) continue;
        const char axis[] = {'x', 'y', 'z'};
        problems.add(path, std::string(1, axis[std::min<std::size_t>(i, 2)]) + " is " + number_text(values[i]),
                     "Coordinates are metres and have to lie within 10 km of the sketch's origin");
        return;
    }
}

void check_outline(ProblemList& problems, const Path& path, const std::vector<Point2>& outline, Presence presence) {
    if (outline.empty() && presence == Presence::may_be_empty) return;
    if (outline.size() > max_corners) return check_length(problems, path, outline.size(), max_corners);
    bool usable = true;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const std::size_t before = problems.problems().size();
        const double values[] = {outline[i].x_m, outline[i].y_m};
        check_coordinates(problems, {&path, nullptr, i, nullptr}, values, 2);
        if (problems.full()) return;
        usable = usable && problems.problems().size() == before;
    }
    if (!usable) return;
    const std::optional<OutlineFault> fault = outline_fault(outline);
    if (!fault) return;
    if (fault->kind == OutlineFault::Kind::too_few_corners) {
        problems.add(path, "has " + std::to_string(outline.size()) + (outline.size() == 1 ? " corner" : " corners"),
                     "An outline needs at least three");
    } else {
        problems.add(path, fault->text(), "Move or remove a corner so that the outline runs once round");
    }
}

void check_length(ProblemList& problems, const Path& path, std::size_t length, std::size_t max_length) {
    if (length <= max_length) return;
    problems.add(path, "has " + std::to_string(length) + " entries",
                 "At most " + std::to_string(max_length) + " are allowed");
}

}  // namespace wg::job_fields
