#pragma once
// Painting from back to front: a tree of planes that part the scene, built once, walked for each view. What a plane
// goes through is cut in two, so that the order is right from every side, also where things pass through each other.

#include <cstdint>
#include <vector>

#include "core/scene/scene.h"

namespace wg::scene {

/// Something painted in one go.
struct Fragment {
    enum class Shape { polygon, body, line };
    Shape shape = Shape::polygon;
    std::vector<Point3> corners;            ///< polygon: convex, counter-clockwise about the normal; line: both ends;
                                            ///< body: every point of its skin once
    std::vector<char> drawn;                ///< polygon: as in `Polygon`
    std::vector<std::vector<Point3>> skin;  ///< body
    Point3 middle;                          ///< a whole crown's ellipsoid; no half-axes: it is none
    double radius_m = 0.0, half_height_m = 0.0;
    Point3 normal;
    int thing = 0;
    int layer = 0;
    bool two_sided = false;
    bool whole = true;  ///< not cut
};

class Order {
   public:
    Order() = default;
    /// Deterministic: the same scene gives the same tree.
    explicit Order(const Scene& scene);

    [[nodiscard]] const std::vector<Fragment>& fragments() const noexcept { return fragments_; }
    /// All fragments, farthest first, as seen from far away in that direction. Of sheets in one plane those that show
    /// their back come before those that show their face, and lower layers before higher ones.
    [[nodiscard]] std::vector<std::uint32_t> back_to_front(Point3 to_eye) const;

   private:
    struct Node {
        Point3 normal;
        double off_m = 0.0;  ///< dot(normal, point) on the plane
        std::vector<std::uint32_t> in_plane;
        int before = -1, behind = -1;  ///< nodes; -1: nothing there
    };
    struct Build;
    void walk(int node, Point3 to_eye, std::vector<std::uint32_t>& out) const;

    std::vector<Fragment> fragments_;
    std::vector<Node> nodes_;
    int root_ = -1;
};

}  // namespace wg::scene
