#pragma once
// The fields of core/job/house.h, told once like those of core/job/fields.h, which includes this.

#include "core/job/field_rules.h"
#include "core/job/house.h"

namespace wg::job_fields {

inline const std::string* label_of(const Room& e) noexcept {
    return &e.label;
}
inline const std::string* label_of(const DeadLeg& e) noexcept {
    return &e.label;
}

inline constexpr std::size_t max_rooms = 200;
inline constexpr std::size_t max_fixture_kinds = 100;
inline constexpr std::size_t max_dead_legs = 200;

template <class Io>
void describe(Io& io, typename Io::template Ref<Hill> h) {
    io.word("kind", h.kind);
    io.number("height_m", h.height_m, {0.1, 3000.0});
    io.number("upwind_length_m", h.upwind_length_m, {0.1, 50000.0});
    io.number("downwind_length_m", h.downwind_length_m, {0.1, 50000.0});
    io.number("crest_distance_m", h.crest_distance_m, {-50000.0, 50000.0});
    io.extra(h.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Room> r) {
    io.text("label", r.label);
    io.uuid("id", r.id, Presence::needed);
    io.outline("outline", r.outline, Presence::needed);
    io.number("from_z_m", r.from_z_m, {-100.0, 1000.0});
    io.number("to_z_m", r.to_z_m, {r.from_z_m + 0.1, 1000.0});
    io.boolean("no_pipe", r.no_pipe);
    io.extra(r.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Electrics> e) {
    io.word("earthing", e.earthing);
    io.optional_number("voltage_v", e.voltage_v, {90.0, 500.0});
    io.optional_number("frequency_hz", e.frequency_hz, {45.0, 65.0});
    io.integer("phases", e.phases, 0, 3);
    io.optional_number("main_fuse_a", e.main_fuse_a, {1.0, 400.0});
    io.optional_number("used_a", e.used_a, {0.0, 400.0});
    io.boolean("lightning_protection", e.lightning_protection);
    io.optional_number("lightning_distance_m", e.lightning_distance_m, {0.0, 100.0});
    io.boolean("surge_protection", e.surge_protection);
    io.extra(e.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<CableRoute> c) {
    io.word("method", c.method);
    io.number("ambient_c", c.ambient_c, {10.0, 60.0});
    io.integer("circuits_together", c.circuits_together, 1, 20);
    io.extra(c.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<FixtureCount> f) {
    io.uuid("id", f.id, Presence::needed);
    io.word("kind", f.kind);
    io.integer("count", f.count, 1, 200);
    io.extra(f.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<DeadLeg> d) {
    io.text("label", d.label);
    io.uuid("id", d.id, Presence::needed);
    io.number("length_m", d.length_m, {0.0, 200.0});
    io.number("bore_mm", d.bore_mm, {4.0, 100.0});
    io.boolean("off_the_loop", d.off_the_loop);
    io.extra(d.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<WaterSupply> w) {
    io.optional_number("static_pressure_bar", w.static_pressure_bar, {0.0, 25.0});
    io.boolean("reducing_valve", w.reducing_valve);
    io.number("reduced_to_bar", w.reduced_to_bar, {0.5, 8.0});
    io.optional_number("hardness_mmol_l", w.hardness_mmol_l, {0.0, 20.0});
    io.number("entry_height_m", w.entry_height_m, {-20.0, 100.0});
    io.number("highest_tap_m", w.highest_tap_m, {-20.0, 200.0});
    io.number("farthest_pipe_m", w.farthest_pipe_m, {0.0, 300.0});
    io.list("fixtures", w.fixtures, max_fixture_kinds);
    io.list("dead_legs", w.dead_legs, max_dead_legs);
    io.extra(w.extra_json);
}

}  // namespace wg::job_fields
