#pragma once
// Edits as people make them, at random: each leaves a valid job valid.

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "core/job/record_chain.h"
#include "tests/core/job/sample_job.h"

namespace wg::merge::test {

class RandomEdits {
   public:
    explicit RandomEdits(std::uint64_t seed) : random_(seed), theme_(seed % 8) {}

    std::size_t below(std::size_t n) { return n == 0 ? 0 : random_() % n; }
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_() % 1000) / 1000.0;
    }
    std::string new_id() { return wg::test::id(0x10000 + next_++); }

    /// One edit; what it did, for messages.
    std::string apply(Job& job) {
        using Way = std::string (RandomEdits::*)(Job&);
        using Ways = std::vector<Way>;
        // All there is, and a few at a time, so that machines meet on the same elements.
        static const Ways all = {
            &RandomEdits::client,         &RandomEdits::tilt,          &RandomEdits::move_surface,
            &RandomEdits::add_surface,    &RandomEdits::drop_surface,  &RandomEdits::rafters,
            &RandomEdits::add_obstacle,   &RandomEdits::drop_obstacle, &RandomEdits::shape,
            &RandomEdits::keep_out,       &RandomEdits::place,         &RandomEdits::add_placement,
            &RandomEdits::drop_placement, &RandomEdits::reorder,       &RandomEdits::route,
            &RandomEdits::add_choice,     &RandomEdits::drop_choice,   &RandomEdits::choose_choice,
            &RandomEdits::spot,           &RandomEdits::drop_spot,     &RandomEdits::reading,
            &RandomEdits::demand,         &RandomEdits::water,         &RandomEdits::room,
            &RandomEdits::building,       &RandomEdits::photograph,    &RandomEdits::extras,
        };
        static const Ways themes[] = {
            {&RandomEdits::tilt, &RandomEdits::rafters, &RandomEdits::keep_out, &RandomEdits::drop_surface,
             &RandomEdits::place, &RandomEdits::add_placement},
            {&RandomEdits::building, &RandomEdits::tilt, &RandomEdits::tilt},
            {&RandomEdits::reorder, &RandomEdits::add_placement, &RandomEdits::drop_placement, &RandomEdits::place},
            {&RandomEdits::add_choice, &RandomEdits::drop_choice, &RandomEdits::choose_choice, &RandomEdits::spot,
             &RandomEdits::drop_spot, &RandomEdits::reading},
            {&RandomEdits::shape, &RandomEdits::drop_obstacle, &RandomEdits::room, &RandomEdits::water,
             &RandomEdits::demand, &RandomEdits::photograph},
        };
        const Ways& ways = theme_ < std::size(themes) ? themes[theme_] : all;
        return (this->*ways[below(ways.size())])(job);
    }

   private:
    template <class T>
    T* any(std::vector<T>& list) {
        return list.empty() ? nullptr : &list[below(list.size())];
    }
    template <class T>
    void put_in(std::vector<T>& list, T element) {
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(below(list.size() + 1)), std::move(element));
    }
    template <class T>
    void take_out(std::vector<T>& list) {
        if (!list.empty()) list.erase(list.begin() + static_cast<std::ptrdiff_t>(below(list.size())));
    }

    std::string client(Job& job) {
        (below(2) == 0 ? job.client.phone : job.notes) = std::to_string(random_() % 100000);
        return "client";
    }
    std::string tilt(Job& job) {
        if (Surface* surface = any(job.site.surfaces)) surface->tilt_deg = between(0.0, 90.0);
        return "tilt";
    }
    std::string move_surface(Job& job) {
        if (Surface* surface = any(job.site.surfaces)) surface->origin.x_m += between(-1.0, 1.0);
        return "move surface";
    }
    std::string add_surface(Job& job) {
        Surface surface;
        surface.id = new_id();
        surface.label = "Surface " + surface.id.substr(30);
        surface.outline = wg::test::rectangle(0.0, 0.0, between(1.0, 9.0), between(1.0, 5.0));
        put_in(job.site.surfaces, std::move(surface));
        return "add surface";
    }
    std::string drop_surface(Job& job) {
        Surface* surface = any(job.site.surfaces);
        if (surface == nullptr) return "no surface";
        const std::string gone = surface->id;
        for (Choice& choice : job.choices)
            std::erase_if(choice.placements, [&](const Placement& p) { return p.surface_id == gone; });
        std::erase_if(job.site.surfaces, [&](const Surface& s) { return s.id == gone; });
        return "drop surface";
    }
    std::string rafters(Job& job) {
        Surface* surface = any(job.site.surfaces);
        if (surface == nullptr) return "no surface";
        surface->rafters.present = below(2) == 0;
        surface->rafters.spacing_m = surface->rafters.present ? between(0.3, 1.5) : between(0.0, 9.0);
        return "rafters";
    }
    std::string add_obstacle(Job& job) {
        Obstacle obstacle;
        obstacle.id = new_id();
        obstacle.label = "Obstacle " + obstacle.id.substr(30);
        put_in(job.site.obstacles, std::move(obstacle));
        return "add obstacle";
    }
    std::string drop_obstacle(Job& job) {
        take_out(job.site.obstacles);
        return "drop obstacle";
    }
    std::string shape(Job& job) {
        Obstacle* obstacle = any(job.site.obstacles);
        if (obstacle == nullptr) return "no obstacle";
        obstacle->kind = static_cast<ObstacleKind>(below(4));
        obstacle->height_m = between(1.0, 12.0);
        obstacle->crown_base_m = obstacle->height_m * between(0.0, 1.0);
        if (obstacle->outline.empty()) obstacle->outline = wg::test::rectangle(0.0, 0.0, 2.0, 3.0);
        return "shape";
    }
    std::string keep_out(Job& job) {
        Surface* surface = any(job.site.surfaces);
        if (surface == nullptr) return "no surface";
        if (below(3) == 0) {
            take_out(surface->keep_outs);
        } else if (KeepOut* old = any(surface->keep_outs); old != nullptr && below(2) == 0) {
            old->clearance_m = between(0.0, 1.0);
        } else {
            KeepOut fresh;
            fresh.id = new_id();
            fresh.outline = wg::test::rectangle(0.0, 0.0, between(0.1, 1.0), 0.5);
            put_in(surface->keep_outs, std::move(fresh));
        }
        return "keep-out";
    }
    std::string place(Job& job) {
        Choice* choice = any(job.choices);
        Placement* placement = choice == nullptr ? nullptr : any(choice->placements);
        if (placement == nullptr || job.site.surfaces.empty()) return "nothing to place";
        placement->x_m = between(0.0, 5.0);
        if (below(2) == 0) placement->surface_id = any(job.site.surfaces)->id;
        return "place";
    }
    std::string add_placement(Job& job) {
        Choice* choice = any(job.choices);
        if (choice == nullptr || job.site.surfaces.empty()) return "nothing to place on";
        Placement placement;
        placement.id = new_id();
        placement.label = placement.id.substr(32);
        placement.surface_id = any(job.site.surfaces)->id;
        put_in(choice->placements, std::move(placement));
        return "add placement";
    }
    std::string drop_placement(Job& job) {
        if (Choice* choice = any(job.choices)) take_out(choice->placements);
        return "drop placement";
    }
    std::string reorder(Job& job) {
        std::shuffle(job.site.surfaces.begin(), job.site.surfaces.end(), random_);
        Choice* choice = any(job.choices);
        if (choice == nullptr) return "reorder surfaces";
        choice->joined = Joined::series;
        std::shuffle(choice->placements.begin(), choice->placements.end(), random_);
        std::shuffle(choice->route.begin(), choice->route.end(), random_);
        return "reorder";
    }
    std::string route(Job& job) {
        Choice* choice = any(job.choices);
        if (choice == nullptr) return "no choice";
        if (RoutePoint* point = any(choice->route); point != nullptr && below(2) == 0) {
            point->position.z_m += between(-1.0, 1.0);
        } else if (below(3) == 0) {
            take_out(choice->route);
        } else {
            put_in(choice->route, {new_id(), RoutePointKind::free, {between(0, 9), between(0, 9), between(0, 9)}, ""});
        }
        return "route";
    }
    std::string add_choice(Job& job) {
        Choice choice;
        choice.id = new_id();
        choice.label = "Choice " + choice.id.substr(30);
        if (CylinderSpot* at = any(job.site.spots)) choice.spot_id = at->id;
        put_in(job.choices, std::move(choice));
        return "add choice";
    }
    std::string drop_choice(Job& job) {
        take_out(job.choices);
        if (find_choice(job, job.chosen_choice_id) == nullptr) {
            job.chosen_choice_id = job.choices.empty() ? std::string() : job.choices.front().id;
        }
        return "drop choice";
    }
    std::string choose_choice(Job& job) {
        if (Choice* choice = any(job.choices)) job.chosen_choice_id = choice->id;
        return "choose";
    }
    std::string spot(Job& job) {
        CylinderSpot* at = any(job.site.spots);
        if (at == nullptr || below(4) == 0) {
            CylinderSpot fresh;
            fresh.id = new_id();
            put_in(job.site.spots, std::move(fresh));
            return "add spot";
        }
        at->cable.circuits_together = static_cast<int>(1 + below(20));
        if (Choice* choice = any(job.choices)) choice->spot_id = at->id;
        return "spot";
    }
    std::string drop_spot(Job& job) {
        CylinderSpot* at = any(job.site.spots);
        if (at == nullptr) return "no spot";
        const std::string gone = at->id;
        for (Choice& choice : job.choices) {
            if (choice.spot_id == gone) choice.spot_id.clear();
        }
        std::erase_if(job.site.spots, [&](const CylinderSpot& s) { return s.id == gone; });
        return "drop spot";
    }
    std::string reading(Job& job) {
        Reading entry;
        entry.id = new_id();
        entry.kind = ReadingKind::vacuum_level;
        entry.taken_at = "2027-05-0" + std::to_string(1 + below(9)) + "T10:00:00+02:00";
        entry.value = between(10.0, 100.0);
        if (Reading* old = any(job.record); old != nullptr && below(3) == 0) entry.corrects_id = old->id;
        job.record.push_back(chained(std::move(entry), job.record));
        return "reading";
    }
    std::string demand(Job& job) {
        if (below(2) == 0) job.demand.control.set_back_k = between(0.0, 20.0);
        if (below(2) == 0) job.demand.control.run_windows = {{between(0.0, 12.0), 20.0, true, true, ""}};
        if (below(2) == 0) job.demand.holidays = {{2, static_cast<int>(1 + below(28)), 3, 1, ""}};
        if (below(4) == 0) job.demand.control = {};
        return "demand";
    }
    std::string water(Job& job) {
        switch (below(4)) {
            case 0: job.site.water.hardness_mmol_l = between(0.0, 20.0); break;
            case 1: job.site.water.hardness_mmol_l.reset(); break;
            case 2: job.site.water = {}; break;
            default: put_in(job.site.water.dead_legs, {new_id(), "Tap", between(1.0, 9.0), 13.0, false, ""});
        }
        return "water";
    }
    std::string room(Job& job) {
        Room* old = any(job.site.rooms);
        if (old == nullptr || below(4) == 0) {
            put_in(job.site.rooms, {new_id(), "Room", wg::test::rectangle(0, 0, 3, 2), 0.0, 2.4, true, ""});
        } else if (below(3) == 0) {
            take_out(job.site.rooms);
        } else {
            old->from_z_m = between(-3.0, 9.0);
            old->to_z_m = old->from_z_m + between(0.2, 3.0);
        }
        return "room";
    }
    std::string building(Job& job) {
        Building* old = any(job.site.buildings);
        if (old == nullptr || below(4) == 0) {
            Building fresh;
            fresh.id = new_id();
            for (const Point2 corner : wg::test::rectangle(0, 0, 10, 8))
                fresh.edges.push_back({new_id(), corner, false, ""});
            Surface face;
            face.id = new_id();
            face.outline = wg::test::rectangle(0, 0, 10, 4);
            face.footprint_edge_id = fresh.edges.front().id;
            put_in(job.site.surfaces, std::move(face));
            put_in(job.site.buildings, std::move(fresh));
        } else if (below(2) == 0) {
            const std::vector<FootprintEdge> gone = old->edges;
            const bool with_faces = below(4) != 0;
            for (const FootprintEdge& edge : gone) {
                const auto made_from = [&](const Surface& s) { return s.footprint_edge_id == edge.id; };
                const auto face = std::find_if(job.site.surfaces.begin(), job.site.surfaces.end(), made_from);
                if (!with_faces || face == job.site.surfaces.end()) continue;
                for (Choice& choice : job.choices)
                    std::erase_if(choice.placements, [&](const Placement& p) { return p.surface_id == face->id; });
                job.site.surfaces.erase(face);
            }
            for (Surface& surface : job.site.surfaces) {
                for (const FootprintEdge& edge : gone) {
                    if (surface.footprint_edge_id == edge.id) surface.footprint_edge_id.clear();
                }
            }
            const std::string id = old->id;
            std::erase_if(job.site.buildings, [&](const Building& b) { return b.id == id; });
        } else if (below(2) == 0) {
            // Corner 2 stays right and above of the others: the outline never crosses itself.
            old->edges.at(2).from = {between(9.0, 14.0), between(8.0, 14.0)};
            old->low_edge_id = any(old->edges)->id;
        } else {
            old->pitch_deg = between(1.0, 75.0);
        }
        return "building";
    }
    std::string photograph(Job& job) {
        if (below(3) != 0 || job.photographs.empty()) {
            Photograph fresh;
            fresh.id = new_id();
            fresh.sha256 = std::string(64, 'b');
            put_in(job.photographs, std::move(fresh));
            UnderlayPicture picture;
            picture.id = new_id();
            picture.photograph_id = any(job.photographs)->id;
            if (job.site.underlays.size() < 10) put_in(job.site.underlays, std::move(picture));
            return "photograph";
        }
        const std::string gone = any(job.photographs)->id;
        std::erase_if(job.site.underlays, [&](const UnderlayPicture& u) { return u.photograph_id == gone; });
        std::erase_if(job.photographs, [&](const Photograph& p) { return p.id == gone; });
        return "drop photograph";
    }
    std::string extras(Job& job) {
        Choice* choice = any(job.choices);
        if (choice == nullptr) return "no choice";
        if (below(3) == 0) {
            take_out(choice->extras);
        } else {
            put_in(choice->extras, {new_id(), "drain-hose", between(1.0, 9.0), ""});
        }
        return "extras";
    }

    std::mt19937_64 random_;
    std::size_t theme_ = 0;  ///< beyond the themes: all ways
    unsigned next_ = 0;
};

}  // namespace wg::merge::test
