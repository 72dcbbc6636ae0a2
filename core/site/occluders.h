#pragma once
// What stands in the way of a ray: the site's obstacles and planes, made ready for many rays.

#include <cstddef>
#include <string>
#include <vector>

#include "core/site/geometry.h"

namespace wg::site {

/// One thing that throws shade. Built once; `passes` is called for millions of rays.
class Occluder {
   public:
    enum class Shape { box, prism, post, tree, plane };

    /// Obstacles without height or extent (touch_m), with numbers that are not finite or farther than `most_m` are left
    /// out, and so is the surface of that id (empty: none).
    static constexpr double most_m = 1e7;
    [[nodiscard]] static std::vector<Occluder> of(const Site& site, const std::string& without_surface_id);
    /// As seen by a plate of that front normal (any length) on the surface of that id: the surface is left out where
    /// rays from the plate's front lead away from it, that is when the plate lies parallel to it or it is level.
    [[nodiscard]] static std::vector<Occluder> seen_by(const Site& site, const std::string& own_surface_id,
                                                       Point3 plate_normal);

    /// Share of light that passes along the ray from `from` towards the unit vector `to_sun`: 1 free, 0 stopped.
    [[nodiscard]] double passes(Point3 from, Point3 to_sun, double crown_transmittance) const noexcept;
    /// False when no ray from within `radius_m` of `from` can meet it. May be true for rays that miss.
    [[nodiscard]] bool may_meet(Point3 from, double radius_m, Point3 to_sun) const noexcept;
    /// Of the crown in that month (1..12); 0 for everything that is not a tree.
    [[nodiscard]] double crown_transmittance(int month) const noexcept;

    /// Highest elevation that it hides from a point in an upright half-plane, `level_dir` being a level unit vector; 0
    /// when it hides nothing above the level. Of a tree: its crown.
    [[nodiscard]] double hidden_up_to_deg(Point3 from, Point3 level_dir) const noexcept;
    /// The same for a tree's trunk; 0 for everything else.
    [[nodiscard]] double trunk_hides_up_to_deg(Point3 from, Point3 level_dir) const noexcept;

    /// Ball round the whole thing.
    [[nodiscard]] Point3 bound_middle() const noexcept { return bound_middle_; }
    [[nodiscard]] double bound_radius_m() const noexcept { return bound_radius_m_; }

    [[nodiscard]] bool own_building() const noexcept { return shape_ == Shape::plane; }
    /// A plane of the site that is level within 10 deg and looks up: a terrace, the ground.
    [[nodiscard]] bool lies_level() const noexcept { return shape_ == Shape::plane && frame_.normal.z_m > 0.985; }
    [[nodiscard]] bool is_tree() const noexcept { return shape_ == Shape::tree; }
    [[nodiscard]] const std::string& id() const noexcept { return id_; }
    [[nodiscard]] const std::string& label() const noexcept { return label_; }

   private:
    friend class Shadow;  // takes the shape apart
    Occluder() = default;
    [[nodiscard]] static Occluder from_obstacle(const Obstacle& obstacle);
    [[nodiscard]] static Occluder from_surface(const Surface& surface, double sketch_up_azimuth_deg);
    [[nodiscard]] bool extends() const noexcept;

    Shape shape_ = Shape::box;
    std::string id_, label_;
    Point3 bound_middle_;  ///< of a ball round the whole thing
    double bound_radius_m_ = 0.0;
    double low_m_ = 0.0, high_m_ = 0.0;  ///< upright shapes: foot and top; tree: foot and lower edge of the crown
    Point2 middle_;                      ///< upright shapes
    double turn_cos_ = 1.0, turn_sin_ = 0.0;
    double half_width_m_ = 0.0, half_depth_m_ = 0.0;
    double radius_m_ = 0.0;  ///< post or trunk
    Point3 crown_middle_;
    double crown_radius_m_ = 0.0, crown_half_height_m_ = 0.0;
    double transmittance_leaf_ = 0.0, transmittance_bare_ = 0.0;
    int leaf_from_ = 1, leaf_to_ = 12;
    std::vector<Point2> outline_;  ///< prism: in the sketch; plane: in its own plane
    Frame frame_;                  ///< plane
};

/// Trunk radius as a share of the crown's: a tree of 6 m spread with a trunk of 0.36 m across. Assumed.
inline constexpr double trunk_share = 0.06;
inline constexpr const char* building_label = "the building itself";
inline constexpr const char* horizon_label = "the horizon";

/// Direction to the sun in the sketch from its true-north form.
[[nodiscard]] Point3 to_sketch(double east, double north, double up, double sketch_up_azimuth_deg) noexcept;

/// Surveyed horizon, straight lines between points, closed round the compass.
class Horizon {
   public:
    explicit Horizon(std::vector<HorizonPoint> points);
    [[nodiscard]] bool empty() const noexcept { return points_.empty(); }
    /// Elevation in degrees at a true bearing.
    [[nodiscard]] double elevation_deg(double azimuth_deg) const noexcept;
    /// Whether a direction (true north form, unit vector) is below it.
    [[nodiscard]] bool hides(double east, double north, double up) const noexcept;

   private:
    std::vector<HorizonPoint> points_;                ///< sorted by azimuth
    double surely_open_ = 0.0, surely_hidden_ = 0.0;  ///< `up` of directions over and under every point
};

}  // namespace wg::site
