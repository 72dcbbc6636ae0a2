// Three machines edit at random and exchange at random: whatever the order, however often, the same comes out, and
// nothing that only one of them changed is lost. What has to come out is told by a second reckoning: a log of all
// edits, each with the whole set of edits that its machine knew then.

#include <gtest/gtest.h>

#include <array>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <set>
#include <sstream>

#include "tests/core/merge/merge_tools.h"
#include "tests/core/merge/random_edits.h"
#include "tests/tools/sweep.h"

namespace wg::merge {
namespace {

using nlohmann::json;
using test::Machine;
using test::RandomEdits;

Job demo_job() {
    std::ifstream file(WG_RESOURCES_DIR "/demo/job.json");
    std::stringstream text;
    text << file.rdbuf();
    return job_from_json(text.str(), "job.json").value();
}

/// Members told one by one, by the ids on the way; an element's id tells that it is there.
using Told = std::map<std::string, std::string>;

void tell(Told& told, const std::string& at, const json& value) {
    if (value.is_object()) {
        for (const auto& item : value.items()) {
            if (!at.empty() || (item.key() != "revision" && item.key() != "changed_at"))
                tell(told, at + '.' + item.key(), item.value());
        }
    } else if (value.is_array() && !value.empty() && value[0].is_object() && value[0].contains("id") &&
               at.find(".edges") == std::string::npos) {
        for (const json& element : value)
            tell(told, at + '.' + element["id"].get<std::string>(), element);
    } else if (!value.is_array() || !value.empty()) {
        told[at] = value.dump();
    }
}

Told told_by(const Job& job) {
    Told told;
    tell(told, "", json::parse(job_to_json(job)));
    return told;
}

/// The log: which edit wrote which member how, and which edits it knew of.
class Log {
   public:
    using Known = std::set<int>;

    void write(const Job& before, const Job& after, Known& known) {
        const Told old = told_by(before);
        const Told now = told_by(after);
        const int edit = next_++;
        for (const auto& [key, value] : now) {
            const auto was = old.find(key);
            if (was == old.end() || was->second != value) note(key, value, edit, known);
        }
        for (const auto& [key, value] : old) {
            if (now.count(key) == 0) note(key, "", edit, known);
        }
        known.insert(edit);
    }

    /// Members that one line of edits changed last, with what they have to be; "" : not there.
    Told single() const {
        Told out;
        for (const auto& [key, writes] : writes_) {
            std::set<std::string> last;
            for (const Write& write : writes) {
                const bool followed = std::any_of(writes.begin(), writes.end(), [&](const Write& later) {
                    return later.knew.count(write.edit) != 0;
                });
                if (!followed) last.insert(write.value);
            }
            if (last.size() == 1) out[key] = *last.begin();
        }
        return out;
    }
    bool written(const std::string& key) const { return writes_.count(key) != 0; }

   private:
    struct Write {
        int edit = 0;
        std::string value;
        Known knew;
    };
    void note(const std::string& key, const std::string& value, int edit, const Known& known) {
        writes_[key].push_back({edit, value, known});
    }

    std::map<std::string, std::vector<Write>> writes_;
    int next_ = 0;
};

/// Prefixes of the places that are open: what stands there was not decided by one side.
std::vector<std::string> open_places(const Merged& merged) {
    std::vector<std::string> out;
    for (const Open& open : merged.open) {
        std::string at = ".";
        for (const char c : open.path) {
            if (c == '/') {
                at += '.';
            } else if (c != '=') {
                at += c;
            }
        }
        // A group is told by what holds it.
        if (const std::size_t star = at.find("*"); star != std::string::npos) at.resize(star);
        out.push_back(std::move(at));
    }
    return out;
}

struct Case {
    std::vector<Machine> machines;
    std::array<Log::Known, 3> known;
    Log log;
    std::string story;
};

Case played(std::uint64_t seed, const Job& start) {
    Case out;
    for (const char* name : {"Surveyor", "Office", "Technician"})
        out.machines.emplace_back(name, start);
    RandomEdits edits(seed);
    const std::size_t steps = 4 + edits.below(14);
    for (std::size_t step = 0; step < steps; ++step) {
        const std::size_t at = edits.below(3);
        if (edits.below(4) == 0) {
            const std::size_t from = (at + 1 + edits.below(2)) % 3;
            out.machines[at].take(out.machines[from]);
            out.known[at].insert(out.known[from].begin(), out.known[from].end());
            out.story += out.machines[at].seat.name + " takes " + out.machines[from].seat.name + "; ";
            continue;
        }
        const Job before = out.machines[at].job;
        out.machines[at].edit([&](Job& job) {
            const std::string what = edits.apply(job);
            out.story += out.machines[at].seat.name + ": " + what + "; ";
        });
        out.log.write(before, out.machines[at].job, out.known[at]);
    }
    return out;
}

void expect_nothing_lost(const Case& played, const Merged& merged, const Job& start) {
    const Told now = told_by(merged.job);
    const std::vector<std::string> open = open_places(merged);
    const auto is_open = [&](const std::string& key) {
        return std::any_of(open.begin(), open.end(), [&](const std::string& at) { return key.rfind(at, 0) == 0; });
    };
    for (const auto& [key, value] : played.log.single()) {
        if (is_open(key)) continue;
        const auto found = now.find(key);
        const std::string is = found == now.end() ? std::string() : found->second;
        if (is == value) continue;
        // Two elements may be written on both sides; the one that holds it can be gone for a reason of its own.
        const std::size_t element = key.rfind("00000000-");
        const bool holder_gone = element != std::string::npos && now.count(key.substr(0, element + 36) + ".id") == 0;
        EXPECT_TRUE(holder_gone) << key << " is " << is << ", written last: " << value;
    }
    // What nobody wrote is as it was.
    for (const auto& [key, value] : told_by(start)) {
        if (played.log.written(key) || is_open(key)) continue;
        const auto found = now.find(key);
        EXPECT_TRUE(found != now.end() && found->second == value) << key;
    }
}

void run(std::uint64_t seed, const Job& start) {
    const Case played = wg::merge::played(seed, start);
    if (testing::Test::HasFatalFailure()) return;
    SCOPED_TRACE("seed " + std::to_string(seed) + ": " + played.story);
    const auto& m = played.machines;

    // Every order and both groupings.
    std::vector<Machine> results;
    const int orders[3][3] = {{0, 1, 2}, {2, 1, 0}, {1, 2, 0}};
    Merged merged;
    for (const auto& order : orders) {
        const auto at = [&](int i) -> const Machine& { return m[static_cast<std::size_t>(order[i])]; };
        Machine left = at(0);
        left.take(at(1));
        merged = left.take(at(2));
        results.push_back(std::move(left));
        Machine pair = at(1);
        pair.take(at(2));
        Machine right = at(0);
        merged = right.take(pair);
        // Again, and from what it came from: nothing new.
        const Merged again = right.take(at(2));
        EXPECT_TRUE(again.taken.empty());
        results.push_back(std::move(right));
    }
    for (std::size_t i = 1; i < results.size(); ++i)
        test::expect_same(results[0], results[i]);
    EXPECT_TRUE(validate(merged.job).empty());
    expect_nothing_lost(played, merged, start);
    // What is written and read again is the same, and joins the same.
    const std::string text = versions_to_json(merged.versions);
    const Result<Versions> read = versions_from_json(text, "versions.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), merged.versions);
    // Deciding everything that can be decided closes the list on every machine.
    Machine desk = results[0];
    desk.seat = test::seat("Desk");
    for (int rounds = 0; rounds < 100; ++rounds) {
        const std::vector<Open> open = open_fields(desk.versions);
        if (open.empty()) break;
        desk.decide(open.front().path, 0);
        if (testing::Test::HasFatalFailure()) return;
    }
    EXPECT_TRUE(open_fields(desk.versions).empty()) << test::all_open(open_fields(desk.versions));
    Machine other = m[1];
    other.take(desk);
    test::expect_same(other, desk);
}

TEST(Convergence, any_order_any_grouping_any_repeat) {
    const Job house = wg::test::sample_job();
    const Job demo = demo_job();
    const int rounds = sweep::cases(200);
    for (int i = 0; i < rounds && !testing::Test::HasFailure(); ++i)
        run(20270100 + static_cast<std::uint64_t>(i), i % 4 == 0 ? demo : house);
}

}  // namespace
}  // namespace wg::merge
