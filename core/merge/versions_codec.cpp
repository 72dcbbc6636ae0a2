#include "core/merge/versions_codec.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "core/job/json_text.h"
#include "core/merge/edit.h"
#include "core/merge/flat.h"
#include "core/merge/path.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"

namespace wg::merge {
namespace {

using nlohmann::json;

constexpr const char* format_name = "warmgable-versions";
constexpr std::uint64_t schema_now = 1;
constexpr std::size_t most_seats = 2000;
constexpr std::size_t most_edits = 200000;
constexpr std::size_t most_fields = 400000;
constexpr std::size_t most_values = 200;                           ///< of one field at a time
constexpr std::uint64_t highest_number = std::uint64_t{1} << 53U;  ///< what every JSON program can count to
constexpr std::int64_t latest_s = 253402300799;                    ///< end of the year 9999
constexpr const char* damaged =
    "The file is damaged; take an earlier copy, or put the copies together without versions";

struct EditAt {
    std::uint32_t seat = 0;
    std::uint64_t number = 0;
    Instant at;
};

class VersionsReader {
   public:
    explicit VersionsReader(std::string file_name) : file_name_(std::move(file_name)) {}

    Result<Versions> read(const json& tree) {
        if (!tree.is_object() || !tree.contains("format") || tree["format"] != format_name) {
            return problem("format", "these are no versions of a job", "Choose another file");
        }
        const json* schema = member(tree, "schema");
        if (schema == nullptr || !schema->is_number_unsigned() || schema->get<std::uint64_t>() == 0) {
            return problem("schema", "is missing or not a whole number from 1", damaged);
        }
        if (schema->get<std::uint64_t>() > schema_now) {
            return problem("schema", "is " + for_message(schema->dump()) + ", so a newer program wrote it",
                           "Open it with the newer program");
        }
        for (const auto& item : tree.items()) {
            constexpr std::string_view known[] = {"format", "schema", "job", "seats", "edits", "fields"};
            if (std::find(std::begin(known), std::end(known), item.key()) == std::end(known))
                return problem(for_message(item.key()), "is not known", damaged);
        }
        const json* job = member(tree, "job");
        if (job == nullptr || !job->is_string() || !is_uuid(job->get_ref<const std::string&>()))
            return problem("job", "is no UUID", damaged);
        out_.job_id = job->get<std::string>();
        if (!read_seats(member(tree, "seats")) || !read_edits(member(tree, "edits")) ||
            !read_fields(member(tree, "fields")))
            return std::move(*fault_);
        return std::move(out_);
    }

   private:
    static const json* member(const json& object, const char* key) {
        const auto found = object.find(key);
        return found == object.end() ? nullptr : &*found;
    }
    Problem problem(const std::string& where, std::string what, std::string remedy) const {
        return {file_name_.empty() ? where : file_name_ + ": " + where, std::move(what), std::move(remedy)};
    }
    bool fail(const std::string& where, std::string what) {
        fault_ = problem(where, std::move(what), damaged);
        return false;
    }
    static bool whole_number(const json& value, std::uint64_t low, std::uint64_t high) {
        return value.is_number_unsigned() && value.get<std::uint64_t>() >= low && value.get<std::uint64_t>() <= high;
    }

    bool read_seats(const json* list) {
        if (list == nullptr || !list->is_array() || list->size() > most_seats)
            return fail("seats", "is no list of at most " + std::to_string(most_seats));
        out_.seats.reserve(list->size());
        for (std::size_t i = 0; i < list->size(); ++i) {
            const json& one = (*list)[i];
            const std::string where = "seats[" + std::to_string(i) + "]";
            const bool form = one.is_array() && one.size() == 3 && one[0].is_string() && one[1].is_string() &&
                              whole_number(one[2], 1, highest_number);
            if (!form) return fail(where, "is not [id, name, newest edit]");
            SeenSeat seat{{one[0].get<std::string>(), one[1].get<std::string>()}, one[2].get<std::uint64_t>()};
            if (const std::vector<Problem> wrong = seat_problems(seat.seat); !wrong.empty())
                return fail(where, wrong.front().where + " " + wrong.front().what);
            if (!out_.seats.empty() && seat.seat.id <= out_.seats.back().seat.id)
                return fail(where, "does not follow the one before by its id");
            out_.seats.push_back(std::move(seat));
        }
        return true;
    }

    bool read_edits(const json* list) {
        if (list == nullptr || !list->is_array() || list->size() > most_edits)
            return fail("edits", "is no list of at most " + std::to_string(most_edits));
        edits_.reserve(list->size());
        for (std::size_t i = 0; i < list->size(); ++i) {
            const json& one = (*list)[i];
            const std::string where = "edits[" + std::to_string(i) + "]";
            if (!one.is_array() || one.size() != 3 || out_.seats.empty() ||
                !whole_number(one[0], 0, out_.seats.size() - 1) || !one[2].is_number_integer())
                return fail(where, "is not [place of the machine, number, seconds]");
            const auto seat = one[0].get<std::uint32_t>();
            if (!whole_number(one[1], 1, out_.seats[seat].seen))
                return fail(where, "has a number that its machine has not come to");
            const bool huge = one[2].is_number_unsigned() && !whole_number(one[2], 0, latest_s);
            if (huge || one[2].get<std::int64_t>() < -latest_s || one[2].get<std::int64_t>() > latest_s)
                return fail(where, "has a time beyond the year 9999");
            const EditAt edit{seat, one[1].get<std::uint64_t>(), {one[2].get<std::int64_t>()}};
            if (!edits_.empty() &&
                std::make_pair(edit.seat, edit.number) <= std::make_pair(edits_.back().seat, edits_.back().number))
                return fail(where, "does not follow the one before");
            edits_.push_back(edit);
        }
        return true;
    }

    bool read_fields(const json* parents) {
        if (parents == nullptr || !parents->is_object()) return fail("fields", "is no object");
        for (const auto& parent : parents->items()) {
            if (!parent.value().is_object()) return fail("fields." + for_message(parent.key()), "is no object");
            for (const auto& field : parent.value().items()) {
                const std::string path = special_path(parent.key(), field.key());
                if (!is_path(path) || field.key().find('/') != std::string::npos)
                    return fail("fields." + for_message(path, 200), "is no path of a field");
                if (!read_values(path, field.value())) return false;
                if (out_.fields.size() > most_fields)
                    return fail("fields", "are more than " + std::to_string(most_fields));
            }
        }
        return true;
    }

    bool read_values(const std::string& path, const json& list) {
        const std::string where = "fields." + for_message(path, 200);
        if (!list.is_array() || list.empty() || list.size() > most_values)
            return fail(where, "has no list of 1 to " + std::to_string(most_values) + " values");
        std::vector<Value>& values = out_.fields[path];
        values.reserve(list.size());
        for (const json& one : list) {
            if (!one.is_array() || one.empty() || one.size() > 2 || edits_.empty() ||
                !whole_number(one[0], 0, edits_.size() - 1))
                return fail(where, "has a value that is not [edit] or [edit, value]");
            const EditAt& edit = edits_[one[0].get<std::size_t>()];
            Value value{edit.seat, edit.number, edit.at, std::nullopt};
            if (one.size() == 2) value.json = one[1].dump();
            if (value.json && !is_value(path, one[1])) return fail(where, "has a value of another form than its path");
            if (!values.empty() &&
                std::make_pair(value.seat, value.number) <= std::make_pair(values.back().seat, values.back().number))
                return fail(where, "has values that do not follow one another");
            values.push_back(std::move(value));
        }
        return true;
    }

    static bool is_value(const std::string& path, const json& value) {
        const std::string_view segment = last_segment(path);
        if (is_entry(path)) {
            const json* id = value.is_object() ? member(value, "id") : nullptr;
            return id != nullptr && *id == id_of(path);
        }
        if (is_element(path)) return value == true;
        if (segment == after_segment) {
            return value.is_string() &&
                   (value.get_ref<const std::string&>().empty() || is_uuid(value.get_ref<const std::string&>()));
        }
        if (segment == order_segment) {
            std::set<std::string> ids;
            return value.is_array() && std::all_of(value.begin(), value.end(), [&](const json& id) {
                       return id.is_string() && is_uuid(id.get_ref<const std::string&>()) &&
                              ids.insert(id.get<std::string>()).second;
                   });
        }
        return segment.front() != '*' || is_group_value(path, value.dump());
    }

    std::string file_name_;
    Versions out_;
    std::vector<EditAt> edits_;
    std::optional<Problem> fault_;
};

}  // namespace

std::string versions_to_json(const Versions& versions) {
    std::map<std::pair<std::uint32_t, std::uint64_t>, std::size_t> place;
    std::map<std::pair<std::uint32_t, std::uint64_t>, Instant> edits;
    for (const auto& [path, values] : versions.fields) {
        for (const Value& value : values)
            edits.emplace(std::make_pair(value.seat, value.number), value.at);
    }
    json edit_list = json::array();
    for (const auto& [dot, at] : edits) {
        place.emplace(dot, edit_list.size());
        edit_list.push_back(json::array({dot.first, dot.second, at.unix_s}));
    }
    json seats = json::array();
    for (const SeenSeat& seen : versions.seats)
        seats.push_back(json::array({seen.seat.id, seen.seat.name, seen.seen}));
    json fields = json::object();
    for (const auto& [path, values] : versions.fields) {
        json list = json::array();
        for (const Value& value : values) {
            json one = json::array({place[{value.seat, value.number}]});
            if (value.json) one.push_back(json::parse(*value.json));
            list.push_back(std::move(one));
        }
        fields[std::string(parent_of(path))][std::string(last_segment(path))] = std::move(list);
    }
    const json tree = {{"format", format_name}, {"schema", schema_now}, {"job", versions.job_id},
                       {"seats", seats},        {"edits", edit_list},   {"fields", fields}};
    return tree.dump();
}

Result<Versions> versions_from_json(std::string_view text, const std::string& file_name) {
    Result<json> parsed = parse_json(text, file_name);
    if (!parsed) return parsed.problems();
    Result<Versions> read = VersionsReader(file_name).read(parsed.value());
    if (!read) return read;
    const Result<Job> job = job_of(read.value());
    if (!job) return job.problems();
    if (job.value().id != read.value().job_id) {
        return Problem{file_name.empty() ? std::string("job") : file_name + ": job",
                       "is another one than the fields describe", damaged};
    }
    return read;
}

}  // namespace wg::merge
