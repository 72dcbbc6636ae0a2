#pragma once
// Random small sites for the tests of core/scene.

#include <cmath>
#include <random>
#include <string>

#include "core/job/job.h"

namespace wg::scene {

class Dice {
   public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    double in(double low, double high) { return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1p-53); }
    int upto(int count) { return static_cast<int>(engine_() % static_cast<unsigned>(count)); }

   private:
    std::mt19937_64 engine_;
};

/// Roofs, walls and obstacles of all kinds that may pass through each other.
inline Site random_site(Dice& dice, int surfaces, int obstacles) {
    Site site;
    site.sketch_up_azimuth_deg = dice.in(0, 360);
    for (int i = 0; i < surfaces; ++i) {
        Surface s;
        s.id = s.label = "surface " + std::to_string(i);
        s.tilt_deg = i % 3 == 0 ? 90.0 : (i % 3 == 1 ? dice.in(5, 60) : 0.0);
        s.azimuth_deg = dice.in(0, 360);
        s.origin = {dice.in(-12, 12), dice.in(-12, 12), dice.in(0.2, 4)};
        const double w = dice.in(2, 8), h = dice.in(2, 5);
        s.outline = {{0, 0}, {w, 0}, {w, h}, {0, h}};
        if (i % 4 == 3) s.outline = {{0, 0}, {w, 0}, {w, h}, {0.6 * w, h}, {0.6 * w, 0.4 * h}, {0, 0.4 * h}};
        site.surfaces.push_back(s);
    }
    for (int i = 0; i < obstacles; ++i) {
        Obstacle o;
        o.id = o.label = "obstacle " + std::to_string(i);
        o.kind = static_cast<ObstacleKind>(i % 4);
        o.base = {dice.in(-15, 15), dice.in(-15, 15), dice.in(0, 2)};
        o.width_m = dice.in(0.4, 4);
        o.depth_m = dice.in(0.4, 4);
        o.height_m = dice.in(1, 8);
        o.turn_deg = dice.in(0, 360);
        o.radius_m = o.kind == ObstacleKind::tree ? dice.in(1, 3) : dice.in(0.1, 0.5);
        o.crown_base_m = dice.in(0.2, 0.5) * o.height_m;
        const double x = o.base.x_m, y = o.base.y_m;
        o.outline = {{x, y}, {x + 3, y}, {x + 3, y + 2}, {x + 1.2, y + 2}, {x + 1.2, y + 4}, {x, y + 4}};
        site.obstacles.push_back(o);
    }
    return site;
}

/// Unit vector at an elevation and a direction of the sketch.
inline Point3 direction(double elevation_deg, double turn_deg) {
    const double up = elevation_deg * M_PI / 180.0, turn = turn_deg * M_PI / 180.0;
    return {std::cos(up) * std::cos(turn), std::cos(up) * std::sin(turn), std::sin(up)};
}

}  // namespace wg::scene
