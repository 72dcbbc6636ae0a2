#pragma once
// A made-up record of an installation on the job of sample.h: a hold that failed first, a typing error that was
// corrected, a start, signatures, and a service a year later. Invented; the verdicts are those of core/commissioning.

#include <QImage>
#include <string>

#include "core/commissioning/commissioning.h"
#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "tests/ui/documents/sample.h"

namespace wg::ui::sample {

struct RecordMaker {
    std::vector<Reading> record;
    std::string mark;
    int next = 500;

    Reading& add(const char* at, ReadingKind kind, double value = 0.0) {
        Reading entry;
        entry.id = uuid(next++);
        entry.kind = kind;
        entry.taken_at = at;
        entry.taken_by = "L. Abernathy (invented)";
        entry.value = value;
        entry.plan_revision = 3;
        entry.plan_mark = mark;
        record.push_back(entry);
        return record.back();
    }
    Reading& with(Reading& entry, const char* instrument, const char* calibrated = "") {
        entry.instrument = instrument;
        entry.calibrated_on = calibrated;
        return entry;
    }
    Reading& second(Reading& entry, double value) {
        entry.second_value = value;
        return entry;
    }
    Reading& about(Reading& entry, const char* subject, const char* note = "") {
        entry.subject = subject;
        entry.note = note;
        return entry;
    }
};

inline void add_tests(RecordMaker& m) {
    using K = ReadingKind;
    m.about(m.add("2027-04-12T08:10:00+02:00", K::serial_number), "collector", "ML21-2703-0417");
    m.about(m.add("2027-04-12T08:12:00+02:00", K::serial_number), "heat pump", "T14-000812");
    m.about(m.add("2027-04-12T08:14:00+02:00", K::serial_number), "cylinder", "F250-2027-1180");
    m.with(m.add("2027-04-12T08:40:00+02:00", K::cold_pressure, 3.4), "Water gauge W2", "2026-11-03");
    m.add("2027-04-12T08:55:00+02:00", K::water_vented, 1.0);
    m.add("2027-04-12T08:57:00+02:00", K::safety_valve_lift, 1.0);
    m.second(m.with(m.add("2027-04-12T09:05:00+02:00", K::pressure_hold_start, 25.0), "Gauge set G4", "2027-01-18"),
             14.2);
    m.record.back().indoors_c = 18.0;
    m.record.back().plate = PlateState::in_shade;
    m.record.back().subject = "nitrogen";
    m.second(m.with(m.add("2027-04-12T10:05:00+02:00", K::pressure_hold_end, 23.1), "Gauge set G4", "2027-01-18"),
             14.6);
    m.record.back().indoors_c = 18.0;
    m.add("2027-04-12T10:20:00+02:00", K::remark).note =
        "Flare at the block was finger-tight: made anew with the torque wrench";
    m.second(m.with(m.add("2027-04-12T10:40:00+02:00", K::pressure_hold_start, 25.0), "Gauge set G4", "2027-01-18"),
             15.1);
    m.record.back().indoors_c = 18.2;
    m.second(m.with(m.add("2027-04-13T07:40:00+02:00", K::pressure_hold_end, 24.62), "Gauge set G4", "2027-01-18"),
             9.0);
    m.record.back().indoors_c = 17.8;
    m.about(m.add("2027-04-13T07:45:00+02:00", K::hold_point, 1.0), "Pressure hold passed");
    m.second(m.with(m.add("2027-04-13T09:00:00+02:00", K::vacuum_level, 42.0), "Vacuum gauge V1"), 12.0);
    m.second(m.add("2027-04-13T09:05:00+02:00", K::vacuum_after_rise, 58.0), 12.0);
    m.second(m.add("2027-04-13T09:12:00+02:00", K::vacuum_after_rise, 66.0), 12.0);
    m.second(m.add("2027-04-13T09:20:00+02:00", K::vacuum_after_rise, 70.0), 12.0);
    m.with(m.add("2027-04-13T09:50:00+02:00", K::charge_added, 0.081), "Scale S1", "2026-09-30");
}

inline void add_start(RecordMaker& m) {
    using K = ReadingKind;
    Reading& typed =
        m.with(m.add("2027-04-13T10:20:00+02:00", K::insulation_resistance, 0.2), "Tester E7", "2027-02-01");
    const std::string wrong = typed.id;
    Reading& right =
        m.with(m.add("2027-04-13T10:22:00+02:00", K::insulation_resistance, 200.0), "Tester E7", "2027-02-01");
    right.corrects_id = wrong;
    right.note = "Typing error: 200, not 0.2";
    m.with(m.add("2027-04-13T10:25:00+02:00", K::protective_conductor, 0.24), "Tester E7", "2027-02-01");
    m.with(m.add("2027-04-13T10:28:00+02:00", K::earth_resistance, 21.0), "Tester E7", "2027-02-01");
    m.with(m.add("2027-04-13T10:30:00+02:00", K::residual_current_trip, 24.0), "Tester E7", "2027-02-01");
    m.with(m.add("2027-04-13T10:31:00+02:00", K::supply_voltage, 231.0), "Tester E7", "2027-02-01");
    m.second(m.add("2027-04-13T10:45:00+02:00", K::heating_start, 11.0), 13.5);
    m.add("2027-04-13T11:20:00+02:00", K::suction_temperature, 4.2);
    m.add("2027-04-13T11:20:00+02:00", K::discharge_temperature, 71.5);
    m.add("2027-04-13T11:21:00+02:00", K::supply_current, 2.9);
    m.add("2027-04-13T11:22:00+02:00", K::irradiance, 520.0);
    m.add("2027-04-13T11:22:00+02:00", K::wind_speed, 1.8);
    m.add("2027-04-13T11:23:00+02:00", K::outdoor_temperature, 13.9);
    m.second(m.add("2027-04-13T17:10:00+02:00", K::heating_end, 55.2), 14.1);
    m.add("2027-04-13T17:12:00+02:00", K::water_temperature, 55.1);
    m.add("2027-04-13T17:20:00+02:00", K::tap_temperature, 46.5);
    m.second(m.add("2027-04-13T17:22:00+02:00", K::hygiene_setting, 60.0), 7.0);
    m.add("2027-04-13T17:25:00+02:00", K::electricity_meter, 4.3);
    m.about(m.add("2027-04-13T17:40:00+02:00", K::photograph), "", "Roof hooks before the tiles were closed");
    m.record.back().attachment_sha256 = std::string(64, 'a');
    m.about(m.add("2027-04-13T17:41:00+02:00", K::photograph), "", "Label of the charge on the block");
    m.record.back().attachment_sha256 = std::string(64, 'b');
    m.about(m.add("2027-04-13T17:50:00+02:00", K::signature), "Fitter");
    m.record.back().attachment_sha256 = std::string(64, 'c');
    m.about(m.add("2027-04-13T17:55:00+02:00", K::signature), "Client").taken_by = "Marta Lindqvist";
}

inline void add_service(RecordMaker& m) {
    using K = ReadingKind;
    for (Reading* entry : {&m.about(m.add("2028-04-20T09:30:00+02:00", K::service_done), "water", "Valve closes dry")})
        entry->occasion = Occasion::service;
    m.add("2028-04-20T09:40:00+02:00", K::suction_temperature, 5.0).occasion = Occasion::service;
}

/// The same job and plan with the record, its verdicts, a curve and bands of the start.
inline PaperInput recorded_input() {
    PaperInput in = input();
    in.plan.run.extra_charge_kg = in.plan.expected.extra_charge_kg = 0.08;
    in.plan.block.refrigerant = Refrigerant::r134a;
    RecordMaker maker;
    maker.mark = plan_mark(in.job);
    add_tests(maker);
    add_start(maker);
    add_service(maker);
    for (const Reading& entry : maker.record)
        in.job.record.push_back(chained(entry, in.job.record));
    in.plan.plan_mark = maker.mark;
    in.plan.assessments = commissioning::assess(in.job.record, in.plan.expected);
    for (commissioning::Assessment& one : in.plan.assessments) {
        if (one.subject == "Evacuation") {
            commissioning::Curve curve;
            curve.x_label = "since valve-off";
            curve.x_unit = "min";
            curve.y_label = "pressure, absolute";
            curve.y_unit = "Pa";
            curve.read = {{0.0, 42.0}, {5.0, 58.0}, {12.0, 66.0}, {20.0, 70.0}};
            for (int i = 0; i <= 40; ++i) {
                const double t = 0.5 * i;
                curve.fitted.push_back({t, 72.0 - 30.0 * std::exp(-t / 6.5)});
            }
            curve.fitted_label = "moisture that dries out";
            curve.limit = 270.0;
            curve.limit_label = "limit after 20 min";
            one.curve = curve;
        } else if (one.subject == "Running pump") {
            one.bands = {{"suction temperature", "deg C", 1, -1.0, 3.5, 7.0, 4.2},
                         {"discharge temperature", "deg C", 1, 58.0, 64.0, 70.0, 71.5},
                         {"supply current", "A", 1, 2.2, 2.7, 3.3, std::nullopt}};
            one.causes = {"the plate is wet and the light was read too high", "charge 5 to 10 % low"};
        }
    }
    return in;
}

/// Stands for the store: a drawn signature and photographs in plain colours.
inline QImage picture_of(const std::string& sha256) {
    if (sha256.empty()) return {};
    QImage image(sha256[0] == 'c' ? QSize(400, 120) : QSize(900, 600), QImage::Format_RGB32);
    image.fill(sha256[0] == 'a' ? QColor(0x9a4f1c) : QColor(0x2f5d8a));
    return image;
}

}  // namespace wg::ui::sample
