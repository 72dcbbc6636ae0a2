#pragma once
// The fields of core/job/offer.h, told once like those of core/job/fields.h, which includes this.

#include "core/job/field_rules.h"
#include "core/job/offer.h"

namespace wg::job_fields {

inline const std::string* label_of(const LineChange& e) noexcept {
    return &e.item;
}
inline const std::string* label_of(const OfferLine& e) noexcept {
    return &e.text;
}
inline const std::string* label_of(const Instalment& e) noexcept {
    return &e.text;
}

inline constexpr std::size_t max_offer_lines = 1000;
inline constexpr std::size_t max_instalments = 24;
inline constexpr Range quantity_of_line{0.0, 1e6};
inline constexpr Range percent{0.0, 100.0};

template <class Io>
void describe(Io& io, typename Io::template Ref<LineChange> c) {
    io.text("item", c.item, needed);
    io.uuid("id", c.id, needed);
    io.uuid_if_any("choice_id", c.choice_id);
    io.true_if_set("left_out", c.left_out);
    io.optional_number("quantity", c.quantity, quantity_of_line);
    io.optional_integer("unit_price_minor", c.unit_price_minor, -max_minor, max_minor);
    io.text_if_any("text", c.text);
    io.text("reason", c.reason);
    io.optional_number("planned_quantity", c.planned_quantity, quantity_of_line);
    io.extra(c.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<OfferLine> l) {
    io.text("text", l.text);
    io.uuid("id", l.id, needed);
    io.uuid_if_any("choice_id", l.choice_id);
    io.word("kind", l.kind);
    io.text("unit", l.unit);
    io.number("quantity", l.quantity, quantity_of_line);
    io.integer("unit_price_minor", l.unit_price_minor, -max_minor, max_minor);
    io.text("tax_class", l.tax_class);
    io.text_if_any("supplier", l.supplier);
    io.true_if_set("to_tick", l.to_tick);
    io.true_if_set("ticked", l.ticked);
    io.text_if_any("note", l.note);
    io.extra(l.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Instalment> i) {
    io.text("text", i.text);
    io.uuid("id", i.id, needed);
    io.number("percent", i.percent, percent);
    io.extra(i.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<Offer> o) {
    io.list_if_any("changes", o.changes, max_offer_lines);
    io.list_if_any("lines", o.lines, max_offer_lines);
    io.number_unless("discount_percent", o.discount_percent, percent, 0.0);
    io.text_if_any("discount_reason", o.discount_reason);
    io.list_if_any("instalments", o.instalments, max_instalments);
    io.integer_unless("valid_days", o.valid_days, 0, 3650, 0);
    io.text_if_any("covering", o.covering);
    io.text_if_any("terms", o.terms);
    io.text_if_any("access", o.access);
    io.integer_unless("storeys", o.storeys, 0, 50, 0);
    io.optional_number("distance_km", o.distance_km, {0.0, 2000.0});
    io.integer_unless("trips", o.trips, 0, 100, 0);
    io.extra(o.extra_json);
}

}  // namespace wg::job_fields
