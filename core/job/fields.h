#pragma once
// The fields of a job, told once. Reader, writer and checker (Io) walk the same description, so a field cannot be
// written and not read. Ref<T> is T& for the reader and const T& for the others.
//
// Labels come before ids: a problem with the id then already shows the label.

#include "core/job/demand_fields.h"
#include "core/job/field_rules.h"
#include "core/job/house_fields.h"
#include "core/job/job.h"
#include "core/job/offer_fields.h"
#include "core/job/record_fields.h"

namespace wg::job_fields {

template <class T>
const std::string* label_of(const T&) noexcept {
    return nullptr;
}
inline const std::string* label_of(const KeepOut& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const Building& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const Surface& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const Obstacle& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const CylinderSpot& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const Placement& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const Choice& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const ExtraItem& e) noexcept {
    return &e.price_item;
}
inline const std::string* label_of(const Photograph& e) noexcept {
    return &e.file_name;
}

inline constexpr std::size_t max_buildings = 100;
inline constexpr std::size_t max_underlays = 20;
inline constexpr std::size_t max_marks = 200;

template <class Io>
void describe(Io& io, typename Io::template Ref<Client> c) {
    io.text("name", c.name);
    io.text("street", c.street);
    io.text("town", c.town);
    io.text("postcode", c.postcode);
    io.text("phone", c.phone);
    io.text("email", c.email);
    io.extra(c.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Survey> s) {
    io.text("surveyor", s.surveyor);
    io.date("visited_on", s.visited_on);
    io.text("access", s.access);
    io.boolean("scaffold_needed", s.scaffold_needed);
    io.text("roof_condition", s.roof_condition);
    io.text("wishes", s.wishes);
    io.text_if_any("present_heater", s.present_heater);
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Location> l) {
    io.text("place_name", l.place_name);
    io.number("latitude_deg", l.latitude_deg, {-90.0, 90.0}, needed);
    io.number("longitude_deg", l.longitude_deg, {-180.0, 180.0}, needed);
    io.number("altitude_m", l.altitude_m, {-430.0, 5500.0});
    io.number("utc_offset_h", l.utc_offset_h, {-12.0, 14.0});
    io.extra(l.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<RafterGrid> r) {
    io.boolean("present", r.present);
    // Without rafters the measures only have to be numbers: a form may keep whatever was typed before.
    io.number("first_m", r.first_m, {});
    io.number("spacing_m", r.spacing_m, r.present ? Range{0.2, 2.0} : Range{});
    io.number("width_m", r.width_m, r.present ? Range{0.01, 1.0} : Range{});
    io.number("depth_m", r.depth_m, r.present ? Range{0.01, 2.0} : Range{});
    io.extra(r.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<KeepOut> k) {
    io.text("label", k.label);
    io.uuid("id", k.id, needed);
    io.word("kind", k.kind);
    io.outline("outline", k.outline, needed);
    io.number("clearance_m", k.clearance_m, {0.0, 100.0});
    io.extra(k.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Surface> s) {
    io.text("label", s.label);
    io.uuid("id", s.id, needed);
    io.word("kind", s.kind);
    io.word("roof_form", s.roof_form);
    io.number("tilt_deg", s.tilt_deg, {0.0, 90.0}, needed);
    io.number("azimuth_deg", s.azimuth_deg, bearing, needed);
    io.point("origin", s.origin);
    io.outline("outline", s.outline, needed);
    io.word("covering", s.covering);
    io.object("rafters", s.rafters);
    io.list("keep_outs", s.keep_outs);
    io.number("ridge_height_m", s.ridge_height_m, {0.0, 1000.0});
    io.true_if_set("snow_held", s.snow_held);
    io.optional_number("spare_load_kn_m2", s.spare_load_kn_m2, {0.0, 100.0});
    io.uuid_if_any("footprint_edge_id", s.footprint_edge_id);
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Obstacle> o) {
    io.text("label", o.label);
    io.uuid("id", o.id, needed);
    io.word("kind", o.kind);
    io.word_if_other("use", o.use);
    const bool box = o.kind == ObstacleKind::box;
    const bool round = o.kind == ObstacleKind::post || o.kind == ObstacleKind::tree;
    io.point("base", o.base);
    io.number("width_m", o.width_m, box ? extent : size);
    io.number("depth_m", o.depth_m, box ? extent : size);
    io.number("height_m", o.height_m, extent);
    io.number("turn_deg", o.turn_deg, turn);
    io.number("radius_m", o.radius_m, round ? extent : size);
    io.number("crown_base_m", o.crown_base_m, o.kind == ObstacleKind::tree ? Range{0.0, o.height_m} : size);
    io.outline("outline", o.outline, o.kind == ObstacleKind::prism ? needed : may_be_empty);
    io.integer("leaf_from_month", o.leaf_from_month, 1, 12);
    io.integer("leaf_to_month", o.leaf_to_month, 1, 12);
    io.number("transmittance_leaf", o.transmittance_leaf, share);
    io.number("transmittance_bare", o.transmittance_bare, share);
    io.uuid_if_any("footprint_edge_id", o.footprint_edge_id);
    io.extra(o.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<FootprintEdge> e) {
    io.uuid("id", e.id, needed);
    io.point("from", e.from, needed);
    io.boolean("gable", e.gable);
    io.extra(e.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Building> b) {
    io.text("label", b.label);
    io.uuid("id", b.id, needed);
    io.list("edges", b.edges, max_corners);
    io.word("shape", b.shape);
    io.number("pitch_deg", b.pitch_deg, {1.0, 75.0});
    io.number("eaves_m", b.eaves_m, {1.0, 60.0});
    io.number("overhang_m", b.overhang_m, {0.0, 2.0});
    io.number("verge_m", b.verge_m, {0.0, 2.0});
    io.uuid("low_edge_id", b.low_edge_id, may_be_empty);
    io.number("parapet_m", b.parapet_m, {0.0, 3.0});
    io.number("parapet_width_m", b.parapet_width_m, {0.05, 1.0});
    io.word("covering", b.covering);
    io.word("wall_covering", b.wall_covering);
    io.extra(b.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<UnderlayPicture> u) {
    io.uuid("id", u.id, needed);
    io.uuid("photograph_id", u.photograph_id, needed);
    io.number("metres_per_pixel", u.metres_per_pixel, {1e-5, 100.0});
    io.number("turn_deg", u.turn_deg, turn);
    io.point("origin", u.origin);
    io.number("opacity", u.opacity, {0.05, 1.0});
    io.boolean("shown", u.shown);
    io.boolean("scaled", u.scaled);
    io.boolean("turned", u.turned);
    io.extra(u.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<HorizonPoint> h) {
    io.number("azimuth_deg", h.azimuth_deg, bearing, needed);
    io.number("elevation_deg", h.elevation_deg, {0.0, 80.0}, needed);
    io.extra(h.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Service> s) {
    io.boolean("present", s.present);
    io.number("distance_m", s.distance_m, size);
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<CylinderSpot> s) {
    io.text("label", s.label);
    io.uuid("id", s.id, needed);
    io.point("position", s.position);
    io.number("headroom_m", s.headroom_m, {0.0, 100.0});
    io.number("free_width_m", s.free_width_m, {0.0, 1000.0});
    io.number("free_depth_m", s.free_depth_m, {0.0, 1000.0});
    io.number("floor_area_m2", s.floor_area_m2, {0.0, 100000.0});
    io.number("floor_load_kg", s.floor_load_kg, {0.0, 1000000.0});
    io.boolean("floor_load_measured", s.floor_load_measured);
    io.number("room_temperature_c", s.room_temperature_c, {-50.0, 60.0});
    io.boolean("ventilated", s.ventilated);
    io.boolean("ignition_source", s.ignition_source);
    io.object_if_other("cable", s.cable);
    io.number_unless("distribution_m", s.distribution_m, {0.0, 500.0}, 0.0);
    io.object("supply", s.supply);
    io.object("earth", s.earth);
    io.object("cold", s.cold);
    io.object("hot", s.hot);
    io.object("drain", s.drain);
    io.object("recirculation", s.recirculation);
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Site> s) {
    io.object("location", s.location);
    io.number("sketch_up_azimuth_deg", s.sketch_up_azimuth_deg, bearing);
    io.word("terrain", s.terrain);
    io.optional_number("basic_wind_m_s", s.basic_wind_m_s, {0.0, 100.0});
    io.optional_number("ground_snow_kn_m2", s.ground_snow_kn_m2, {0.0, 50.0});
    io.number("ground_albedo", s.ground_albedo, share);
    // Left out while there is nothing to tell, as in the demand below.
    io.list_if_any("buildings", s.buildings, max_buildings);
    io.list_if_any("underlays", s.underlays, max_underlays);
    io.list("surfaces", s.surfaces);
    io.list("obstacles", s.obstacles);
    io.list("horizon", s.horizon);
    io.number_unless("declination_deg", s.declination_deg, {-180.0, 180.0}, 0.0);
    io.optional_number("street_azimuth_deg", s.street_azimuth_deg, bearing);
    io.list("spots", s.spots);
    io.object_if_other("hill", s.hill);
    io.list_if_any("rooms", s.rooms, max_rooms);
    io.object_if_other("electrics", s.electrics);
    io.object_if_other("water", s.water);
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Placement> p) {
    io.text("label", p.label);
    io.uuid("id", p.id, needed);
    io.uuid("surface_id", p.surface_id, needed);
    io.number("x_m", p.x_m, {}, needed);
    io.number("y_m", p.y_m, {}, needed);
    io.number("turn_deg", p.turn_deg, turn);
    io.word("hand", p.hand);
    io.optional_number("frame_tilt_deg", p.frame_tilt_deg, {0.0, 90.0});
    io.optional_number("frame_azimuth_deg", p.frame_azimuth_deg, bearing);
    io.extra(p.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<RoutePoint> r) {
    io.uuid("id", r.id, needed);
    io.word("kind", r.kind);
    io.point("position", r.position, needed);
    io.extra(r.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<ExtraItem> e) {
    io.text("price_item", e.price_item, needed);
    io.uuid("id", e.id, needed);
    io.number("quantity", e.quantity, {0.0, 1000000.0});
    io.extra(e.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Choice> c) {
    io.text("label", c.label);
    io.uuid("id", c.id, needed);
    io.text("collector_model", c.collector_model);
    io.text("block_model", c.block_model);
    io.text("cylinder_model", c.cylinder_model);
    io.uuid("spot_id", c.spot_id, may_be_empty);
    io.text("fixing_method", c.fixing_method);
    io.list("placements", c.placements);
    io.word_unless("joined", c.joined, Joined::parallel);
    io.list("route", c.route);
    io.list("extras", c.extras);
    io.true_if_set("on_offer", c.on_offer);
    io.extra(c.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<PhotoMark> m) {
    io.uuid("id", m.id, needed);
    io.word("kind", m.kind);
    io.point("at", m.at);
    io.point("tail", m.tail);
    io.text("text", m.text);
    io.extra(m.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Photograph> p) {
    io.text("file_name", p.file_name);
    io.uuid("id", p.id, needed);
    io.sha256("sha256", p.sha256, needed);
    io.text("caption", p.caption);
    io.optional_point("taken_from", p.taken_from);
    io.optional_number("looking_azimuth_deg", p.looking_azimuth_deg, bearing);
    io.list_if_any("marks", p.marks, max_marks);
    io.extra(p.extra_json);
}

inline constexpr std::int64_t max_revision = 1000000000;
inline constexpr std::size_t max_number_bytes = 64;

template <class Io>
void describe(Io& io, typename Io::template Ref<Job> j) {
    io.uuid("id", j.id, needed);
    io.text("number", j.number, may_be_empty, max_number_bytes);
    io.text("title", j.title);
    io.boolean("invented", j.invented);
    io.word("state", j.state);
    io.integer("revision", j.revision, 0, max_revision);
    io.instant("created_at", j.created_at, may_be_empty);
    io.instant("changed_at", j.changed_at, may_be_empty);
    io.sha256("base_sha256", j.base_sha256, may_be_empty);
    io.integer("base_revision", j.base_revision, 0, max_revision);
    io.object("client", j.client);
    io.object("survey", j.survey);
    io.object("site", j.site);
    io.object("demand", j.demand);
    io.text("weather", j.weather);
    io.text("rule_set", j.rule_set);
    io.text("price_list", j.price_list);
    io.list("choices", j.choices);
    io.uuid("chosen_choice_id", j.chosen_choice_id, may_be_empty);
    io.object_if_other("offer", j.offer);
    io.list("record", j.record);
    io.object_if_other("limits", j.limits);
    io.object_if_other("aftercare", j.aftercare);
    io.list("photographs", j.photographs);
    io.text("notes", j.notes);
    io.extra(j.extra_json);
}

}  // namespace wg::job_fields
