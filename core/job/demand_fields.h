#pragma once
// The fields of core/job/demand.h, told once like those of core/job/fields.h, which includes this.

#include "core/job/demand.h"
#include "core/job/field_rules.h"

namespace wg::job_fields {

inline constexpr std::size_t max_windows = 24;
inline constexpr std::size_t max_holidays = 50;

/// Of a year without 29 February; 31 for a month that there is not.
constexpr int days_of_month(int month) noexcept {
    if (month == 2) return 28;
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Household> h) {
    io.integer("persons", h.persons, 1, 20);
    io.number("litres_40_per_person", h.litres_40_per_person, {5.0, 200.0});
    io.word("rhythm", h.rhythm);
    io.number("weekend_factor", h.weekend_factor, {0.2, 3.0});
    io.boolean("away_on_weekdays", h.away_on_weekdays);
    io.integer("seed_number", h.seed_number, 0, 999999);
    io.extra(h.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<HolidayPeriod> p) {
    io.integer("from_month", p.from_month, 1, 12);
    io.integer("from_day", p.from_day, 1, days_of_month(p.from_month));
    io.integer("to_month", p.to_month, 1, 12);
    io.integer("to_day", p.to_day, 1, days_of_month(p.to_month));
    io.extra(p.extra_json);
}

inline constexpr Range clock{0.0, 24.0};

template <class Io>
void describe(Io& io, typename Io::template Ref<ClockWindow> w) {
    io.number("from_h", w.from_h, clock);
    io.number("to_h", w.to_h, clock);
    io.boolean("weekdays", w.weekdays);
    io.boolean("weekends", w.weekends);
    io.extra(w.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<SurplusSignal> s) {
    io.number("peak_kw", s.peak_kw, {0.0, 100.0});
    io.number("tilt_deg", s.tilt_deg, {0.0, 90.0});
    io.number("azimuth_deg", s.azimuth_deg, bearing);
    io.number("base_load_w", s.base_load_w, {0.0, 20000.0});
    io.number("threshold_w", s.threshold_w, {1.0, 20000.0});
    io.number("raise_k", s.raise_k, {0.0, 20.0});
    io.extra(s.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Control> c) {
    io.list("run_windows", c.run_windows, max_windows);
    io.boolean("low_tariff_only", c.low_tariff_only);
    io.number("always_below_c", c.always_below_c, {10.0, 60.0});
    io.list("set_back_windows", c.set_back_windows, max_windows);
    io.number("set_back_k", c.set_back_k, {0.0, 20.0});
    io.object("surplus", c.surplus);
    io.word("holiday_rule", c.holiday_rule);
    io.boolean("hygiene_before_return", c.hygiene_before_return);
    io.word("back_up", c.back_up);
    io.extra(c.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Tariff> t) {
    io.list("low_windows", t.low_windows, max_windows);
    io.number("low_minor_kwh", t.low_minor_kwh, {0.0, 10000.0});
    io.number("feed_in_minor_kwh", t.feed_in_minor_kwh, {0.0, 10000.0});
    io.extra(t.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Recirculation> r) {
    io.boolean("present", r.present);
    io.number("loss_w", r.loss_w, {0.0, 2000.0});
    io.list("windows", r.windows, max_windows);
    io.extra(r.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Hygiene> h) {
    io.word("rule", h.rule);
    io.number("target_c", h.target_c, {50.0, 75.0});
    io.number("hold_min", h.hold_min, {1.0, 240.0});
    io.integer("weekday", h.weekday, 0, 6);
    io.number("at_h", h.at_h, {0.0, 23.99});
    io.word("source", h.source);
    io.extra(h.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Demand> d) {
    io.word("cycle", d.cycle);
    io.number("scale", d.scale, {0.2, 3.0});
    io.number("set_point_c", d.set_point_c, {40.0, 65.0});
    io.number("hysteresis_k", d.hysteresis_k, {2.0, 15.0});
    io.number("wanted_c", d.wanted_c, {35.0, 50.0});
    io.number("cold_mean_c", d.cold_mean_c, {0.0, 35.0});
    io.number("cold_swing_k", d.cold_swing_k, {0.0, 20.0});
    io.word("present_fuel", d.present_fuel);
    io.number("present_efficiency", d.present_efficiency, {0.01, 10.0});
    // Written only when they ask for something: a job that asks for nothing keeps its text and its hash.
    io.word_if_other("draw_source", d.draw_source);
    io.object_if_other("household", d.household);
    io.list_if_any("holidays", d.holidays, max_holidays);
    io.object_if_other("control", d.control);
    io.object_if_other("tariff", d.tariff);
    io.object_if_other("recirculation", d.recirculation);
    io.object_if_other("hygiene", d.hygiene);
    io.extra(d.extra_json);
}

}  // namespace wg::job_fields
