#include "core/job/checker.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <unordered_map>
#include <unordered_set>

#include "core/job/codec.h"
#include "core/job/fields.h"
#include "core/job/json_text.h"
#include "core/job/words.h"
#include "core/quantity/utf8.h"

namespace wg::job_fields {
namespace {

// Io that holds a job in memory against the rules.
class Checker {
   public:
    template <class T>
    using Ref = const T&;

    Checker(ProblemList& problems, const Path& path) : problems_(problems), path_(path) {}

    void text(const char* key, const std::string& value, Presence presence = may_be_empty,
              std::size_t max_bytes = max_text_bytes) {
        const Path path = at(key);
        if (presence == needed && value.empty()) problems_.add(path, "is empty", "Enter it");
        check_text(problems_, path, value, max_bytes);
    }
    void uuid(const char* key, const std::string& value, Presence p) { check_uuid(problems_, at(key), value, p); }
    void sha256(const char* key, const std::string& value, Presence p) { check_sha256(problems_, at(key), value, p); }
    void instant(const char* key, const std::string& value, Presence p) { check_instant(problems_, at(key), value, p); }
    void date(const char* key, const std::string& value) { check_date(problems_, at(key), value); }
    void boolean(const char* key, bool) { known_.push_back(key); }
    void number(const char* key, double value, Range range, Presence = may_be_empty) {
        check_number(problems_, at(key), value, range);
    }
    void optional_number(const char* key, const std::optional<double>& value, Range range) {
        const Path path = at(key);
        if (value) check_number(problems_, path, *value, range);
    }
    template <class I>
    void integer(const char* key, I value, std::int64_t low, std::int64_t high) {
        check_integer(problems_, at(key), value, low, high);
    }
    void optional_integer(const char* key, const std::optional<std::int64_t>& value, std::int64_t low,
                          std::int64_t high) {
        const Path path = at(key);
        if (value) check_integer(problems_, path, *value, low, high);
    }
    template <class E>
    void word(const char* key, E value, Presence = may_be_empty) {
        const Path path = at(key);
        if (*key_of(value) == '\0') problems_.add(path, "is none of the known words", "Choose one of the list");
    }
    template <class E>
    void word_unless(const char* key, E value, E) {
        word(key, value);
    }
    void point(const char* key, const Point3& value, Presence = may_be_empty) {
        const double values[] = {value.x_m, value.y_m, value.z_m};
        check_coordinates(problems_, at(key), values, 3);
    }
    void point(const char* key, const Point2& value, Presence = may_be_empty) {
        const double values[] = {value.x_m, value.y_m};
        check_coordinates(problems_, at(key), values, 2);
    }
    void optional_point(const char* key, const std::optional<Point2>& value) {
        const Path path = at(key);
        if (!value) return;
        const double values[] = {value->x_m, value->y_m};
        check_coordinates(problems_, path, values, 2);
    }
    void text_if_any(const char* key, const std::string& value) { text(key, value); }
    void true_if_set(const char* key, bool value) { boolean(key, value); }
    void uuid_if_any(const char* key, const std::string& value) { uuid(key, value, may_be_empty); }
    void date_if_any(const char* key, const std::string& value) { date(key, value); }
    void sha256_if_any(const char* key, const std::string& value) { sha256(key, value, may_be_empty); }
    template <class I>
    void integer_unless(const char* key, I value, std::int64_t low, std::int64_t high, std::int64_t) {
        integer(key, value, low, high);
    }
    void number_unless(const char* key, double value, Range range, double) { number(key, value, range); }
    void outline(const char* key, const std::vector<Point2>& value, Presence p) {
        check_outline(problems_, at(key), value, p);
    }
    template <class T>
    void object(const char* key, const T& value) {
        const Path path = at(key);
        Checker child(problems_, path);
        describe(child, value);
    }
    template <class T>
    void list(const char* key, const std::vector<T>& values, std::size_t max_length = max_list) {
        const Path path = at(key);
        check_length(problems_, path, values.size(), max_length);
        for (std::size_t i = 0; i < values.size() && i < max_length && !problems_.full(); ++i) {
            const Path element{&path, nullptr, i, label_of(values[i])};
            Checker child(problems_, element);
            describe(child, values[i]);
        }
    }
    template <class E>
    void word_if_other(const char* key, E value) {
        word(key, value);
    }
    template <class T>
    void object_if_other(const char* key, const T& value) {
        object(key, value);
    }
    template <class T>
    void list_if_any(const char* key, const std::vector<T>& values, std::size_t max_length) {
        list(key, values, max_length);
    }
    void extra(const std::string& extra_json) {
        if (extra_json.empty()) return;
        const Result<nlohmann::json> read = parse_json(extra_json, "");
        if (!read || !read.value().is_object()) {
            problems_.add(path_, "carries fields of a newer program that are not a JSON object", "Read the job again");
            return;
        }
        for (const char* key : known_) {
            if (!read.value().contains(key)) continue;
            problems_.add(path_, std::string("carries '") + key + "' twice", "Read the job again");
        }
    }

   private:
    Path at(const char* key) {
        known_.push_back(key);
        return {&path_, key, 0, nullptr};
    }

    ProblemList& problems_;
    const Path& path_;
    std::vector<const char*> known_;
};

// Ids seen so far, with the place of each; empty ids are the field rules' business.
class Ids {
   public:
    explicit Ids(ProblemList& problems) : problems_(problems) {}

    void add(const std::string& id, const Path& path) {
        if (id.empty()) return;
        const auto [at, fresh] = seen_.emplace(id, path.text());
        if (fresh) return;
        problems_.add({&path, "id", 0, nullptr}, "is " + for_message(id) + ", which " + at->second + " has too",
                      "Give every element an id of its own");
    }

    template <class T>
    void add_list(const std::vector<T>& list, const Path& parent, const char* key) {
        const Path path{&parent, key, 0, nullptr};
        for (std::size_t i = 0; i < list.size(); ++i)
            add(list[i].id, {&path, nullptr, i, label_of(list[i])});
    }

   private:
    ProblemList& problems_;
    std::unordered_map<std::string, std::string> seen_;
};

void check_unique_ids(ProblemList& problems, const Job& job) {
    Ids ids(problems);
    const Path root;
    ids.add(job.id, {nullptr, "the job", 0, nullptr});
    const Path site{&root, "site", 0, nullptr};
    ids.add_list(job.site.buildings, site, "buildings");
    ids.add_list(job.site.underlays, site, "underlays");
    const Path buildings{&site, "buildings", 0, nullptr};
    for (std::size_t i = 0; i < job.site.buildings.size(); ++i) {
        const Path building{&buildings, nullptr, i, &job.site.buildings[i].label};
        ids.add_list(job.site.buildings[i].edges, building, "edges");
    }
    ids.add_list(job.site.surfaces, site, "surfaces");
    ids.add_list(job.site.obstacles, site, "obstacles");
    ids.add_list(job.site.spots, site, "spots");
    ids.add_list(job.site.rooms, site, "rooms");
    const Path water{&site, "water", 0, nullptr};
    ids.add_list(job.site.water.fixtures, water, "fixtures");
    ids.add_list(job.site.water.dead_legs, water, "dead_legs");
    const Path surfaces{&site, "surfaces", 0, nullptr};
    for (std::size_t i = 0; i < job.site.surfaces.size(); ++i) {
        const Path surface{&surfaces, nullptr, i, &job.site.surfaces[i].label};
        ids.add_list(job.site.surfaces[i].keep_outs, surface, "keep_outs");
    }
    ids.add_list(job.choices, root, "choices");
    const Path choices{&root, "choices", 0, nullptr};
    for (std::size_t i = 0; i < job.choices.size(); ++i) {
        const Path choice{&choices, nullptr, i, &job.choices[i].label};
        ids.add_list(job.choices[i].placements, choice, "placements");
        ids.add_list(job.choices[i].route, choice, "route");
        ids.add_list(job.choices[i].extras, choice, "extras");
    }
    const Path offer{&root, "offer", 0, nullptr};
    ids.add_list(job.offer.changes, offer, "changes");
    ids.add_list(job.offer.lines, offer, "lines");
    ids.add_list(job.offer.instalments, offer, "instalments");
    ids.add_list(job.record, root, "record");
    ids.add_list(job.photographs, root, "photographs");
    const Path photographs{&root, "photographs", 0, nullptr};
    for (std::size_t i = 0; i < job.photographs.size(); ++i) {
        const Path photograph{&photographs, nullptr, i, &job.photographs[i].file_name};
        ids.add_list(job.photographs[i].marks, photograph, "marks");
    }
}

template <class T>
std::unordered_set<std::string> ids_of(const std::vector<T>& list) {
    std::unordered_set<std::string> out;
    for (const T& element : list)
        out.insert(element.id);
    return out;
}

void check_known(ProblemList& problems, const Path& path, const std::string& id,
                 const std::unordered_set<std::string>& known, const char* what) {
    if (id.empty() || known.count(id) != 0) return;
    problems.add(path, std::string("names ") + what + " " + for_message(id) + ", which the job does not have",
                 "Choose one that exists, or leave it out");
}

void check_choices(ProblemList& problems, const Job& job) {
    const auto surfaces = ids_of(job.site.surfaces);
    const auto spots = ids_of(job.site.spots);
    const Path choices{nullptr, "choices", 0, nullptr};
    for (std::size_t i = 0; i < job.choices.size(); ++i) {
        const Choice& c = job.choices[i];
        const Path choice{&choices, nullptr, i, &c.label};
        check_known(problems, {&choice, "spot_id", 0, nullptr}, c.spot_id, spots, "the cylinder spot");
        const Path placements{&choice, "placements", 0, nullptr};
        for (std::size_t k = 0; k < c.placements.size(); ++k) {
            const Path placement{&placements, nullptr, k, &c.placements[k].label};
            check_known(problems, {&placement, "surface_id", 0, nullptr}, c.placements[k].surface_id, surfaces,
                        "the surface");
        }
    }
    check_known(problems, {nullptr, "chosen_choice_id", 0, nullptr}, job.chosen_choice_id, ids_of(job.choices),
                "the choice");
}

void check_offer(ProblemList& problems, const Job& job) {
    const auto choices = ids_of(job.choices);
    const Path offer{nullptr, "offer", 0, nullptr};
    const auto named = [&](const auto& list, const char* key) {
        const Path path{&offer, key, 0, nullptr};
        for (std::size_t i = 0; i < list.size(); ++i) {
            const Path element{&path, nullptr, i, label_of(list[i])};
            check_known(problems, {&element, "choice_id", 0, nullptr}, list[i].choice_id, choices, "the choice");
        }
    };
    named(job.offer.changes, "changes");
    named(job.offer.lines, "lines");
}

void check_buildings(ProblemList& problems, const Job& job) {
    const Path site{nullptr, "site", 0, nullptr};
    std::unordered_set<std::string> all_edges;
    const Path buildings{&site, "buildings", 0, nullptr};
    for (std::size_t i = 0; i < job.site.buildings.size(); ++i) {
        const Building& b = job.site.buildings[i];
        const Path building{&buildings, nullptr, i, &b.label};
        std::vector<Point2> footprint;
        for (const FootprintEdge& edge : b.edges)
            footprint.push_back(edge.from);
        check_outline(problems, {&building, "edges", 0, nullptr}, footprint, needed);
        const auto own = ids_of(b.edges);
        check_known(problems, {&building, "low_edge_id", 0, nullptr}, b.low_edge_id, own, "the edge");
        all_edges.insert(own.begin(), own.end());
    }
    const auto linked = [&](const auto& list, const char* key) {
        const Path path{&site, key, 0, nullptr};
        for (std::size_t i = 0; i < list.size(); ++i) {
            const Path element{&path, nullptr, i, &list[i].label};
            check_known(problems, {&element, "footprint_edge_id", 0, nullptr}, list[i].footprint_edge_id, all_edges,
                        "the footprint edge");
        }
    };
    linked(job.site.surfaces, "surfaces");
    linked(job.site.obstacles, "obstacles");
    const auto photographs = ids_of(job.photographs);
    const Path underlays{&site, "underlays", 0, nullptr};
    for (std::size_t i = 0; i < job.site.underlays.size(); ++i) {
        const Path underlay{&underlays, nullptr, i, nullptr};
        check_known(problems, {&underlay, "photograph_id", 0, nullptr}, job.site.underlays[i].photograph_id,
                    photographs, "the photograph");
    }
}

void check_corrections(ProblemList& problems, const std::vector<Reading>& record) {
    std::unordered_map<std::string, std::size_t> place;
    for (std::size_t i = 0; i < record.size(); ++i)
        place.emplace(record[i].id, i);
    enum class Mark : unsigned char { unseen, on_the_way, done };
    std::vector<Mark> marks(record.size(), Mark::unseen);
    const Path list{nullptr, "record", 0, nullptr};
    for (std::size_t i = 0; i < record.size(); ++i) {
        std::vector<std::size_t> way;
        std::size_t at = i;
        while (marks[at] == Mark::unseen) {
            marks[at] = Mark::on_the_way;
            way.push_back(at);
            if (record[at].corrects_id.empty()) break;
            const Path entry{&list, nullptr, at, nullptr};
            const Path field{&entry, "corrects_id", 0, nullptr};
            const auto named = place.find(record[at].corrects_id);
            if (named == place.end()) {
                problems.add(
                    field,
                    "names the entry " + for_message(record[at].corrects_id) + ", which the record does not have",
                    "Name the entry that is corrected, or leave it out");
                break;
            }
            at = named->second;
            if (marks[at] == Mark::on_the_way) {
                problems.add(field, "leads back to the entry itself", "Name the entry that is corrected");
            }
        }
        for (const std::size_t seen : way)
            marks[seen] = Mark::done;
    }
}

}  // namespace

void check_references(ProblemList& problems, const Job& job) {
    check_unique_ids(problems, job);
    check_buildings(problems, job);
    check_choices(problems, job);
    check_offer(problems, job);
    check_corrections(problems, job.record);
}

void check_job(ProblemList& problems, const Job& job) {
    const Path root;
    Checker checker(problems, root);
    describe(checker, job);
    check_references(problems, job);
}

}  // namespace wg::job_fields

namespace wg {

std::vector<Problem> validate(const Job& job) {
    job_fields::ProblemList problems("");
    job_fields::check_job(problems, job);
    return std::move(problems.problems());
}

}  // namespace wg
