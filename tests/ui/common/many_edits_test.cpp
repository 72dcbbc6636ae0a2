// Thousands of random edits through the verbs, undone to the first and redone to the last.

#include <gtest/gtest.h>

#include <random>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "core/quantity/sha256.h"
#include "core/roof/linked.h"
#include "tests/ui/common/sample.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/photo_edits.h"

namespace wg::ui {
namespace many_edits_test {
namespace {

class Hand {
   public:
    Hand(JobSession& session, std::uint64_t seed) : session_(session), random_(seed) {}

    void edit() {
        using Edit = void (Hand::*)();
        static constexpr Edit all[] = {&Hand::words, &Hand::place,    &Hand::surface, &Hand::zone,   &Hand::obstacle,
                                       &Hand::spot,  &Hand::building, &Hand::corner,  &Hand::choice, &Hand::collector,
                                       &Hand::move,  &Hand::run,      &Hand::photo,   &Hand::remove, &Hand::reading};
        (this->*all[below(std::size(all))])();
        if (below(3) == 0) session_.end_merge();
    }

   private:
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(random_() % n); }
    double between(double a, double b) { return std::uniform_real_distribution<double>(a, b)(random_); }
    const Site& site() { return session_.job().site; }
    template <class T>
    const T* any(const std::vector<T>& list) {
        return list.empty() ? nullptr : &list[below(list.size())];
    }

    void words() {
        switch (below(5)) {
            case 0: set_notes(session_, "note " + std::to_string(random_() % 1000), QStringLiteral("notes")); break;
            case 1: set_title(session_, "title \xC3\xA9 " + std::to_string(random_() % 50)); break;
            case 2: {
                Client client = session_.job().client;
                client.town = "town " + std::to_string(random_() % 50);
                set_client(session_, client);
                break;
            }
            case 3: {
                Survey survey = session_.job().survey;
                survey.scaffold_needed = !survey.scaffold_needed;
                set_survey(session_, survey);
                break;
            }
            default: set_state(session_, static_cast<JobState>(below(7))); break;
        }
    }
    void place() {
        switch (below(6)) {
            case 0: set_terrain(session_, static_cast<Terrain>(below(5))); break;
            case 1:
                set_basic_wind(session_, below(2) == 0 ? std::nullopt : std::optional<double>(between(15, 40)));
                break;
            case 2: set_sketch_up_azimuth(session_, between(0.0, 360.0)); break;
            case 3: set_declination(session_, between(-20.0, 20.0)); break;
            case 4: {
                std::vector<HorizonPoint> horizon;
                for (std::size_t i = below(5); i > 0; --i)
                    horizon.push_back({70.0 * static_cast<double>(i) + between(0.0, 60.0), between(0.0, 40.0)});
                set_horizon(session_, horizon);
                break;
            }
            default: set_street_azimuth(session_, between(0.0, 359.0)); break;
        }
    }
    void surface() {
        if (site().surfaces.size() < 12 && below(2) == 0) {
            Surface s = sample::roof();
            s.id.clear();
            s.label.clear();
            s.origin = {between(-20, 20), between(-20, 20), 3.0};
            add_surface(session_, s);
            return;
        }
        if (const Surface* one = any(site().surfaces)) {
            Surface changed = *one;
            changed.covering = static_cast<Covering>(below(10));
            changed.rafters.spacing_m = between(0.4, 0.9);
            set_surface(session_, changed);
        }
    }
    void zone() {
        const Surface* on = any(site().surfaces);
        if (on == nullptr) return;
        const KeepOut* now = any(on->keep_outs);
        if (now == nullptr) {
            KeepOut zone;
            const double x = between(0.5, 3.0);
            zone.outline = {{x, 1}, {x + 1, 1}, {x + 1, 2}, {x, 2}};
            add_keep_out(session_, on->id, zone);
            return;
        }
        KeepOut changed = *now;
        changed.clearance_m = std::round(between(0.0, 500.0)) / 1000.0;
        set_keep_out(session_, changed, QStringLiteral("zone"));
    }
    void obstacle() {
        const Obstacle* now = any(site().obstacles);
        if (now == nullptr || (site().obstacles.size() < 10 && below(3) == 0)) {
            Obstacle o;
            o.kind = below(2) == 0 ? ObstacleKind::box : ObstacleKind::tree;
            o.base = {between(-20, 20), between(-20, 20), 0.0};
            o.height_m = 6.0;
            add_obstacle(session_, o);
            return;
        }
        move_obstacle(session_, now->id, between(-20, 20), between(-20, 20));
    }
    void spot() {
        const CylinderSpot* now = any(site().spots);
        if (now == nullptr || site().spots.size() < 2) {
            add_spot(session_, {});
            return;
        }
        move_spot(session_, now->id, between(-5, 5), between(-5, 5));
    }
    void building() {
        if (site().buildings.size() < 2) {
            const double x = between(-30, 30);
            const double y = between(-30, 30);
            add_building(session_, {{x, y}, {x + 10, y}, {x + 10, y + 7}, {x, y + 7}},
                         static_cast<BuildingShape>(below(5)));
            return;
        }
        const Building* now = any(site().buildings);
        if (below(3) == 0) {
            move_building(session_, now->id, between(-1, 1), between(-1, 1));
            return;
        }
        Building changed = *now;
        changed.pitch_deg = std::round(between(15, 50));
        changed.overhang_m = std::round(between(0, 10)) / 10.0;
        set_building(session_, changed);
    }
    void corner() {
        const Building* now = any(site().buildings);
        if (now == nullptr) return;
        const std::size_t at = below(now->edges.size());
        const Point2 from = now->edges[at].from;
        const auto changed =
            below(3) == 0 ? roof::with_corner(*now, at, {from.x_m + 1.0, from.y_m + 0.2}, new_id)
                          : roof::with_corner_at(*now, at, {from.x_m + between(-1, 1), from.y_m + between(-1, 1)});
        if (changed) set_building(session_, changed.value(), QStringLiteral("corner"));
    }
    void choice() {
        const std::vector<Choice>& all = session_.job().choices;
        const Choice* now = any(all);
        if (now == nullptr) {
            add_choice(session_);
        } else if (all.size() < 4 && below(2) == 0) {
            duplicate_choice(session_, now->id);
        } else if (below(2) == 0) {
            rename_choice(session_, now->id, "choice " + std::to_string(random_() % 100));
        } else {
            mark_chosen(session_, now->id);
        }
    }
    void collector() {
        const Choice* now = session_.current_choice();
        const Surface* on = any(site().surfaces);
        if (now == nullptr || on == nullptr) return;
        if (now->placements.size() < 3) {
            add_collector(session_, on->id);
        } else {
            move_placement_to_surface(session_, any(now->placements)->id, on->id);
        }
    }
    void move() {
        const Choice* now = session_.current_choice();
        if (now == nullptr || now->placements.empty()) return;
        const std::string id = any(now->placements)->id;
        switch (below(4)) {
            case 0: turn_placement(session_, id, std::round(between(-90, 90))); break;
            case 1: set_hand(session_, id, below(2) == 0 ? wg::Hand::left : wg::Hand::right); break;
            default:
                for (std::size_t i = below(6); i > 0; --i)
                    move_placement(session_, id, between(0, 8), between(0, 5));
                break;
        }
    }
    void run() {
        const Choice* now = session_.current_choice();
        if (now == nullptr) return;
        const RoutePoint* point = any(now->route);
        if (point == nullptr || now->route.size() < 6) {
            add_route_point(session_, below(8), {between(-5, 5), between(-5, 5), between(0, 6)});
        } else {
            set_route_point_kind(session_, point->id, static_cast<RoutePointKind>(below(4)));
        }
    }
    void photo() {
        const Photograph* now = any(session_.job().photographs);
        if (now == nullptr || session_.job().photographs.size() < 3) {
            Photograph added;
            added.sha256 = std::string(64, "0123456789abcdef"[below(16)]);
            added.file_name = "roof.jpg";
            add_photograph(session_, added);
        } else if (now->marks.size() < 3) {
            PhotoMark mark;
            mark.at = {between(0, 1), between(0, 1)};
            add_mark(session_, now->id, mark);
        } else if (site().underlays.empty()) {
            add_underlay(session_, now->id, {0.0, 0.0}, 30.0, 4000, 3000);
        } else {
            remove_photograph_and_underlays(session_, now->id);
        }
    }
    void remove() {
        switch (below(6)) {
            case 0:
                if (const Surface* one = any(site().surfaces); one != nullptr && site().surfaces.size() > 3)
                    remove_element(session_, one->id);
                break;
            case 1:
                if (const Obstacle* one = any(site().obstacles)) remove_element(session_, one->id);
                break;
            case 2:
                if (const Building* one = any(site().buildings)) remove_element(session_, one->id);
                break;
            case 3:
                if (const Choice* one = any(session_.job().choices)) remove_choice(session_, one->id);
                break;
            case 4:
                // Free planes stay; without an end the job would only be large, not edited.
                if (const Building* one = any(site().buildings); one != nullptr && site().surfaces.size() < 30)
                    release_building(session_, one->id);
                break;
            default:
                if (const Choice* now = session_.current_choice(); now != nullptr && !now->placements.empty())
                    remove_collector(session_, any(now->placements)->id);
                break;
        }
    }
    void reading() {
        if (session_.job().record.size() > 20) return;
        Reading reading;
        reading.value = std::round(between(0, 100));
        reading.taken_at = "2027-05-01T10:00:00+02:00";
        append_reading(session_, reading);
    }

    JobSession& session_;
    std::mt19937_64 random_;
};

/// Planning is not the matter here, and would take most of the time.
Result<plan::Plan> no_plan(const Job&, const plan::Reference&, const plan::Options& options) {
    plan::Plan plan;
    plan.choice_id = options.choice_id;
    return plan;
}

TEST(ManyEdits, undone_to_the_first_and_redone_to_the_last_give_the_same_file_to_the_byte) {
    const int edits = qEnvironmentVariableIsSet("WG_LONG") ? 10000 : 1000;
    JobSession session(sample::job(), sample::reference(), &no_plan);
    // Undo leaves the record alone, so all but the record comes back.
    const auto text = [](Job job) {
        job.record.clear();
        return job_to_json(job);
    };
    const std::string first = text(session.job());
    Hand hand(session, 20261128);
    // Texts of ten thousand jobs would fill the memory: their hashes say as much.
    const auto sum = [&text](const Job& job) { return sha256_hex(text(job)); };
    std::vector<std::string> after = {sha256_hex(first)};
    for (int i = 0; i < edits; ++i) {
        hand.edit();
        ASSERT_TRUE(validate(session.job()).empty()) << "edit " << i << ": " << text_of(validate(session.job()));
        const auto steps = static_cast<std::size_t>(session.undo_stack().count());
        after.resize(steps + 1);
        after[steps] = sum(session.job());
        if (i == edits / 2) session.mark_saved(session.job());
    }
    const int steps = session.undo_stack().count();
    EXPECT_GT(steps, edits / 2) << "most edits change something";
    for (int step = steps; step > 0; --step) {
        ASSERT_EQ(sum(session.job()), after[static_cast<std::size_t>(step)]) << step;
        session.undo_stack().undo();
    }
    EXPECT_FALSE(session.undo_stack().canUndo());
    EXPECT_EQ(text(session.job()), first);
    for (int step = 1; step <= steps; ++step) {
        session.undo_stack().redo();
        ASSERT_EQ(sum(session.job()), after[static_cast<std::size_t>(step)]) << step;
    }
    EXPECT_FALSE(session.undo_stack().canRedo());
    // Half-way back and on from there: what lay ahead is gone, what lies behind is as it was.
    session.undo_stack().setIndex(steps / 2);
    hand.edit();
    session.undo_stack().setIndex(0);
    EXPECT_EQ(text(session.job()), first);
    EXPECT_EQ(session.job().record.size(), 21U);
    EXPECT_TRUE(check_chain(session.job().record).whole());
}

}  // namespace
}  // namespace many_edits_test
}  // namespace wg::ui
