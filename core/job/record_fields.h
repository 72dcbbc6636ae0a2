#pragma once
// The fields of core/job/record.h, told once like those of core/job/fields.h, which includes this. What older programs
// did not know is left out while unused: their entries keep their hash.

#include "core/job/field_rules.h"
#include "core/job/record.h"

namespace wg::job_fields {

template <class Io>
void describe(Io& io, typename Io::template Ref<Reading> r) {
    constexpr Range any_amount{-1e12, 1e12};
    io.uuid("id", r.id, Presence::needed);
    io.word("kind", r.kind, Presence::needed);
    io.instant("taken_at", r.taken_at, Presence::needed);
    io.text("taken_by", r.taken_by);
    io.text("instrument", r.instrument);
    io.number("value", r.value, any_amount);
    io.optional_number("second_value", r.second_value, any_amount);
    io.text("note", r.note);
    io.uuid("corrects_id", r.corrects_id, Presence::may_be_empty);
    io.word_unless("occasion", r.occasion, Occasion::fitting);
    io.text_if_any("subject", r.subject);
    io.date_if_any("calibrated_on", r.calibrated_on);
    io.optional_number("indoors_c", r.indoors_c, {-90.0, 120.0});
    io.word_unless("plate", r.plate, PlateState::not_told);
    io.sha256_if_any("attachment_sha256", r.attachment_sha256);
    io.integer_unless("plan_revision", r.plan_revision, 0, 1000000000, 0);
    io.text_if_any("plan_mark", r.plan_mark);
    io.sha256_if_any("previous_sha256", r.previous_sha256);
    io.sha256_if_any("sha256", r.sha256);
    io.extra(r.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<AcceptanceLimits> l) {
    io.optional_number("least_insulation_mohm", l.least_insulation_mohm, {0.01, 1000.0});
    io.optional_number("most_earth_ohm", l.most_earth_ohm, {0.01, 5000.0});
    io.optional_number("most_loop_ohm", l.most_loop_ohm, {0.01, 100.0});
    io.optional_number("residual_current_ma", l.residual_current_ma, {1.0, 1000.0});
    io.optional_number("most_trip_ms", l.most_trip_ms, {1.0, 1000.0});
    io.optional_number("most_tap_c", l.most_tap_c, {30.0, 70.0});
    io.optional_number("most_leak_g_year", l.most_leak_g_year, {0.1, 1000.0});
    io.optional_number("most_vacuum_pa", l.most_vacuum_pa, {1.0, 5000.0});
    io.optional_number("gauge_error_bar", l.gauge_error_bar, {0.0001, 2.0});
    io.optional_number("thermometer_error_k", l.thermometer_error_k, {0.01, 10.0});
    io.extra(l.extra_json);
}

template <class Io>
void describe(Io& io, typename Io::template Ref<AftercareTerms> a) {
    io.optional_number("warranty_months", a.warranty_months, {0.0, 600.0});
    io.text_if_any("warranty_words", a.warranty_words);
    io.true_if_set("service_contract", a.service_contract);
    io.text_if_any("contract_words", a.contract_words);
    io.extra(a.extra_json);
}

}  // namespace wg::job_fields
