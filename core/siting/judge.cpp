#include "core/siting/judge.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/vec.h"
#include "core/siting/seat_light.h"

namespace wg::siting {
namespace {

using site::dot;
using site::operator+;
using site::operator-;
using site::operator*;

constexpr double one = 1073741824.0;  // 2^30

double along(const std::vector<double>& x, const std::vector<double>& y, double at) noexcept {
    // Straight lines, the first and last drawn on: a shaded plate may have a little less light than the darkest point.
    std::size_t i = 1;
    while (i + 1 < x.size() && at > x[i])
        ++i;
    return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
}

/// The choice without the collector that is being placed.
Choice others_of(const Input& input) {
    Choice choice = input.choice;
    if (input.moving < choice.placements.size())
        choice.placements.erase(choice.placements.begin() + static_cast<std::ptrdiff_t>(input.moving));
    return choice;
}

}  // namespace

double YieldCurve::electricity(double light, double run_m) const noexcept {
    return along(light_kwh_m2, electricity_kwh, light) + electricity_per_run_m * (run_m - at_run_m);
}

double YieldCurve::pump_heat(double light, double run_m) const noexcept {
    return along(light_kwh_m2, pump_heat_kwh, light) + pump_heat_per_run_m * (run_m - at_run_m);
}

CellSums::CellSums(const std::vector<float>& values, int columns, int rows)
    : stride_(static_cast<std::size_t>(columns) + 1), rows_(rows), columns_(columns) {
    sum_.assign(stride_ * (static_cast<std::size_t>(rows) + 1), 0);
    count_.assign(sum_.size(), 0);
    for (int r = 0; r < rows; ++r) {
        std::int64_t row_sum = 0;
        std::int32_t row_count = 0;
        for (int c = 0; c < columns; ++c) {
            const float v =
                values[static_cast<std::size_t>(r) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(c)];
            if (v >= 0.0F) {
                row_sum += std::llround(static_cast<double>(v) * one);
                ++row_count;
            }
            sum_[at(r + 1, c + 1)] = sum_[at(r, c + 1)] + row_sum;
            count_[at(r + 1, c + 1)] = count_[at(r, c + 1)] + row_count;
        }
    }
}

double CellSums::mean(int row, int column, int rows, int columns) const noexcept {
    const int r1 = std::min(row + rows, rows_), c1 = std::min(column + columns, columns_);
    if (row >= r1 || column >= c1) return 1.0;
    const std::int64_t sum = sum_[at(r1, c1)] - sum_[at(row, c1)] - sum_[at(r1, column)] + sum_[at(row, column)];
    const std::int32_t count =
        count_[at(r1, c1)] - count_[at(row, c1)] - count_[at(r1, column)] + count_[at(row, column)];
    return count > 0 ? static_cast<double>(sum) / (one * count) : 1.0;
}

std::vector<Point3> viewpoints_of(const Site& site) {
    std::vector<Point3> corners;
    for (const Surface& surface : site.surfaces) {
        const site::Frame frame = site::frame_of(surface, site.sketch_up_azimuth_deg);
        for (const Point2 p : surface.outline)
            corners.push_back(site::to_space(frame, p));
    }
    if (corners.empty()) return {};
    double low_x = corners[0].x_m, high_x = low_x, low_y = corners[0].y_m, high_y = low_y;
    for (const Point3& c : corners) {
        low_x = std::min(low_x, c.x_m);
        high_x = std::max(high_x, c.x_m);
        low_y = std::min(low_y, c.y_m);
        high_y = std::max(high_y, c.y_m);
    }
    const double radius = 0.5 * std::hypot(high_x - low_x, high_y - low_y) + ring_off_m;
    const Point3 centre{0.5 * (low_x + high_x), 0.5 * (low_y + high_y), eye_height_m};
    std::vector<Point3> eyes;
    if (site.street_azimuth_deg) {
        const double bearing = radians(*site.street_azimuth_deg);
        const Point3 out = site::to_sketch(std::sin(bearing), std::cos(bearing), 0.0, site.sketch_up_azimuth_deg);
        const Point3 along{-out.y_m, out.x_m, 0.0};
        for (int i = 0; i < viewpoints; ++i) {
            const double aside = radians(street_side_deg * (2.0 * i / (viewpoints - 1) - 1.0));
            eyes.push_back(centre + (out + along * std::tan(aside)) * radius);
        }
        return eyes;
    }
    for (int i = 0; i < viewpoints; ++i) {
        const double angle = radians(360.0 * i / viewpoints);
        eyes.push_back({centre.x_m + radius * std::cos(angle), centre.y_m + radius * std::sin(angle), eye_height_m});
    }
    return eyes;
}

double estimated_run_m(Point3 connection, Point3 level, const std::vector<RoutePoint>& route, Point3 block_connection) {
    const auto passage =
        std::find_if(route.begin(), route.end(), [](const RoutePoint& p) { return p.kind != RoutePointKind::free; });
    Point3 at = passage == route.end() ? block_connection : passage->position;
    const Point3 way = at - connection;
    const double sideways = dot(way, level);
    double length = std::fabs(sideways) + site::norm(way - level * sideways);
    if (passage == route.end()) return length;
    for (auto next = passage + 1; next != route.end(); ++next) {
        length += site::norm(next->position - at);
        at = next->position;
    }
    return length + site::norm(block_connection - at);
}

SeatGround::SeatGround(const Input& input, std::size_t seat)
    : input_(input), seat_number_(seat), seat_(input.seats[seat]) {
    surface_ = find_surface(*input.site, seat_.surface_id);
    if (surface_ == nullptr) return;
    Placement probe = placement_in(seat_, {0.0, 0.0}, Hand::right);
    round_ = fixing::neighbourhood_of(*input.site, others_of(input), input.collector, probe);
    outline_ = site::place(*surface_, input.site->sketch_up_azimuth_deg, probe, input.collector).outline;
    const site::Bounds plate = site::bounds_of(outline_), all = site::bounds_of(surface_->outline);
    corner_to_middle_ = {-plate.min_x_m, -plate.min_y_m};
    for (Point2& p : outline_)
        p = p + corner_to_middle_;
    origin_ = {all.min_x_m, all.min_y_m};
    const double cell = input.cell_m;
    const auto steps = [cell](double room) { return room < -1e-9 ? 0 : static_cast<int>(room / cell + 1e-9) + 1; };
    columns_ = steps(all.width_m() - plate.width_m());
    rows_ = steps(all.height_m() - plate.height_m());
    const auto under = [cell](double size) {
        return std::max(1, static_cast<int>(std::ceil(size / cell - 0.5 - 1e-9)));
    };
    plate_columns_ = under(plate.width_m());
    plate_rows_ = under(plate.height_m());
    if (rows_ == 0 || columns_ == 0) return;

    const SeatLight light = light_of(*input.site, *surface_, seat_, *input.year, cell);
    beam_ = CellSums(light.beam_share, light.columns, light.rows);
    sky_ = CellSums(light.sky_view, light.columns, light.rows);
    occluders_ = site::Occluder::of(*input.site, seat_.surface_id);
    eyes_ = viewpoints_of(*input.site);
    fixing_.site.location = input.site->location;
    fixing_.site.sketch_up_azimuth_deg = input.site->sketch_up_azimuth_deg;
    fixing_.site.terrain = input.site->terrain;
    fixing_.site.basic_wind_m_s = input.site->basic_wind_m_s;
    fixing_.site.ground_snow_kn_m2 = input.site->ground_snow_kn_m2;
    fixing_.site.hill = input.site->hill;
    if (const Building* building = building_of_edge(*input.site, surface_->footprint_edge_id))
        fixing_.site.buildings = {*building};
    fixing_.surface = *surface_;
    for (const auto& other : round_.others)
        fixing_.others.push_back(other.outline);
    fixing_.collector = input.collector;
    if (const FixingMethod* method = find_fixing_method(*input.catalogue, seat_.fixing_method))
        fixing_.method = *method;
    fixing_.rules = input.rules;
    fixing_.refrigerant_kg = input.refrigerant_kg;
}

Point2 SeatGround::middle(int row, int column) const noexcept {
    return {origin_.x_m + column * input_.cell_m + corner_to_middle_.x_m,
            origin_.y_m + row * input_.cell_m + corner_to_middle_.y_m};
}

Placement SeatGround::placement(const GridPlace& at) const {
    return placement_in(seat_, middle(at.row, at.column), at.hand);
}

std::optional<GridPlace> SeatGround::nearest(const Placement& placement) const {
    const Point2 first = middle(0, 0);
    const long column = std::lround((placement.x_m - first.x_m) / input_.cell_m);
    const long row = std::lround((placement.y_m - first.y_m) / input_.cell_m);
    if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return std::nullopt;
    return GridPlace{static_cast<int>(row), static_cast<int>(column), placement.hand};
}

bool SeatGround::allowed(int row, int column) const {
    std::vector<Point2> outline = outline_;
    for (Point2& p : outline) {
        p.x_m += origin_.x_m + column * input_.cell_m;
        p.y_m += origin_.y_m + row * input_.cell_m;
    }
    return fixing::keeps_hard_rules(round_, outline) &&
           (!input_.keep_free_strip || fixing::keeps_free_strip(round_, outline, input_.collector.clearance_m));
}

std::optional<Measures> SeatGround::cheap(const GridPlace& at) const {
    const site::PlacedCollector placed =
        site::place(*surface_, input_.site->sketch_up_azimuth_deg, placement(at), input_.collector);
    const Point3 level = site::frame_of(*surface_, input_.site->sketch_up_azimuth_deg).right;
    Measures m;
    m.run_m = estimated_run_m(placed.connection_in_space, level, input_.choice.route, input_.block_connection);
    const double lift_m = std::fabs(placed.connection_in_space.z_m - input_.block_connection.z_m);
    if (m.run_m > input_.block.run_max_m || lift_m > input_.block.lift_max_m) return std::nullopt;
    const OpenLight& open = input_.open_light[seat_number_];
    m.beam_share = beam_.mean(at.row, at.column, plate_rows_, plate_columns_);
    const double sky_view = sky_.mean(at.row, at.column, plate_rows_, plate_columns_);
    m.light_kwh_m2 = open.beam * m.beam_share + open.sky * sky_view + open.ground;
    const YieldCurve& curve = input_.yields[seat_number_];
    m.electricity_kwh = curve.electricity(m.light_kwh_m2, m.run_m);
    m.pump_heat_kwh = curve.pump_heat(m.light_kwh_m2, m.run_m);
    return m;
}

double SeatGround::seen(const site::PlacedCollector& placed) const {
    if (eyes_.empty()) return 0.0;
    const Point3 middle = (placed.corners[0] + placed.corners[2]) * 0.5;
    const Point3 square = site::cross(placed.corners[1] - placed.corners[0], placed.corners[3] - placed.corners[0]);
    double sum = 0.0;
    for (const Point3& eye : eyes_) {
        const Point3 way = eye - middle;
        const Point3 to_eye = way * (1.0 / site::norm(way));
        if (!(dot(to_eye, square) > 0.0)) continue;
        double open = 1.0;
        for (const site::Occluder& o : occluders_) {
            if (open > 0.0 && o.may_meet(middle, 0.0, to_eye)) open *= o.passes(middle, to_eye, 0.5);
        }
        sum += open;
    }
    return sum / static_cast<double>(eyes_.size());
}

bool SeatGround::complete(const GridPlace& at, Measures& measures) const {
    fixing::Input fixing = fixing_;
    fixing.placement = placement(at);
    fixing.placed = site::place(*surface_, input_.site->sketch_up_azimuth_deg, fixing.placement, input_.collector);
    const fixing::Hold hold = fixing::hold_of(fixing);
    if (hold.stopped) return false;
    measures.utilisation = hold.worst_utilisation;
    measures.seen = seen(fixing.placed);
    return true;
}

std::optional<Place> judge(const Input& input, const SeatGround& ground, std::size_t seat, const GridPlace& at) {
    if (at.row < 0 || at.column < 0 || at.row >= ground.rows() || at.column >= ground.columns()) return std::nullopt;
    if ((at.hand == Hand::right ? !input.collector.right_hand : !input.collector.left_hand) ||
        !ground.allowed(at.row, at.column)) {
        return std::nullopt;
    }
    std::optional<Measures> measures = ground.cheap(at);
    if (!measures || !ground.complete(at, *measures)) return std::nullopt;
    return Place{seat, ground.placement(at), *measures, input.objective.score(*measures)};
}

}  // namespace wg::siting
