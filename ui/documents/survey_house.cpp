#include "ui/documents/survey_house.h"

#include <algorithm>

#include "core/job/words.h"
#include "ui/common/format.h"

namespace wg::ui::paper {
namespace {

constexpr double hand_row_mm = 7.0;

/// Nothing told leaves a line to write on.
QString told(const std::optional<double>& value, const QString& unit, int decimals) {
    return value ? quantity(*value, unit, decimals) : QString();
}

QString yes_or(bool on, const QString& otherwise) {
    return on ? QStringLiteral("yes") : otherwise;
}

void blank_rows(Table& table, int count) {
    for (int i = 0; i < count; ++i)
        table.rows.push_back({QStringList{QString()}});
}

void fixtures_table(Flow& flow, const WaterSupply& water) {
    flow.subheading(QStringLiteral("Draw-off points: how many of each"));
    Table table;
    table.grid = true;
    table.whole = true;
    table.least_row_mm = 6.0;
    // Three pairs beside each other, as read off a walk through the house.
    for (int i = 0; i < 3; ++i) {
        table.columns.push_back({QString(), 46.0});
        table.columns.push_back({QString(), 14.0, true});
    }
    QStringList cells;
    for (const Word<Fixture>& word : words<Fixture>()) {
        int count = 0;
        for (const FixtureCount& one : water.fixtures)
            if (one.kind == word.value) count += one.count;
        cells << QString::fromUtf8(word.text) << (count > 0 ? QString::number(count) : QString());
        if (cells.size() == 6) {
            table.rows.push_back({cells});
            cells.clear();
        }
    }
    if (!cells.isEmpty()) table.rows.push_back({cells});
    flow.table(table);
}

void dead_legs_table(Flow& flow, const WaterSupply& water) {
    flow.subheading(QStringLiteral("Hot pipes that cool between draws"));
    Table table;
    table.grid = true;
    table.whole = true;
    table.least_row_mm = hand_row_mm;
    table.columns = {{QStringLiteral("To"), 0.0},
                     {QStringLiteral("Length, m"), 26.0, true},
                     {QStringLiteral("Clear bore, mm"), 30.0, true},
                     {QStringLiteral("Leaves"), 46.0}};
    for (const DeadLeg& leg : water.dead_legs) {
        table.rows.push_back(
            {QStringList{qs(leg.label), number(leg.length_m, 1), number(leg.bore_mm),
                         leg.off_the_loop ? QStringLiteral("the loop") : QStringLiteral("the cylinder")}});
    }
    blank_rows(table, 2);
    flow.table(table);
}

}  // namespace

QString hill_words(const Hill& hill) {
    const QString kind = QString::fromUtf8(text_of(hill.kind));
    if (hill.kind == HillKind::none) return kind;
    const QString m = QStringLiteral("m");
    const QString where = hill.crest_distance_m < 0.0 ? QStringLiteral("before") : QStringLiteral("beyond");
    QString words = QStringLiteral("%1, %2 high, foot to crest %3, house %4 %5 the crest")
                        .arg(kind, quantity(hill.height_m, m), quantity(hill.upwind_length_m, m),
                             quantity(std::abs(hill.crest_distance_m), m), where);
    if (hill.kind == HillKind::hill) words += QStringLiteral(", lee side %1").arg(quantity(hill.downwind_length_m, m));
    return words;
}

void loads_table(Flow& flow, const Site& site) {
    if (site.surfaces.empty()) return;
    flow.subheading(QStringLiteral("Snow and load"));
    Table table;
    table.least_row_mm = hand_row_mm;
    table.columns = {{QStringLiteral("Surface"), 0.0},
                     {QStringLiteral("Snow guard or parapet holds the snow"), 64.0},
                     {QStringLiteral("Spare load of the flat roof"), 46.0, true}};
    for (const Surface& s : site.surfaces) {
        if (s.kind == SurfaceKind::wall || s.kind == SurfaceKind::ground) continue;
        const bool level = s.tilt_deg <= 5.0;
        QString spare = told(s.spare_load_kn_m2, QStringLiteral("kN/m²"), 2);
        if (spare.isEmpty()) spare = level ? QStringLiteral("not known: ________ kN/m²") : QStringLiteral("not flat");
        table.rows.push_back({QStringList{qs(s.label), yes_or(s.snow_held, QStringLiteral("none noted")), spare}});
    }
    if (!table.rows.empty()) flow.table(table);
}

void electrics_block(Flow& flow, const Electrics& e) {
    flow.heading(QStringLiteral("Electrical supply"));
    const QString earthing = e.earthing == EarthingSystem::unknown ? QString() : QString::fromUtf8(text_of(e.earthing));
    QString lightning = QStringLiteral("none noted");
    if (e.lightning_protection) {
        lightning = QStringLiteral("yes, nearest conductor ") +
                    (e.lightning_distance_m ? length_m(*e.lightning_distance_m) : QStringLiteral("________ m off"));
    }
    flow.pairs({{QStringLiteral("Earthing system"), earthing},
                {QStringLiteral("Phases"), e.phases > 0 ? QString::number(e.phases) : QString()},
                {QStringLiteral("Voltage, one phase"), told(e.voltage_v, QStringLiteral("V"), 0)},
                {QStringLiteral("Frequency"), told(e.frequency_hz, QStringLiteral("Hz"), 0)},
                {QStringLiteral("Main fuse, each phase"), told(e.main_fuse_a, QStringLiteral("A"), 0)},
                {QStringLiteral("In use at once"), told(e.used_a, QStringLiteral("A"), 1)},
                {QStringLiteral("Surge protection"), yes_or(e.surge_protection, QStringLiteral("none noted"))},
                {QStringLiteral("Lightning protection"), lightning}});
}

void water_block(Flow& flow, const WaterSupply& w) {
    flow.heading(QStringLiteral("Water supply"));
    flow.pairs(
        {{QStringLiteral("Pressure at rest"), told(w.static_pressure_bar, QStringLiteral("bar gauge"), 1)},
         {QStringLiteral("Total hardness"), told(w.hardness_mmol_l, QStringLiteral("mmol/l"), 2)},
         {QStringLiteral("Reducing valve"),
          w.reducing_valve
              ? QStringLiteral("there, set to ") + quantity(w.reduced_to_bar, QStringLiteral("bar"), 1)
              : QStringLiteral("none noted; %1 planned").arg(quantity(w.reduced_to_bar, QStringLiteral("bar"), 1))},
         {QStringLiteral("Entry over ground"), length_m(w.entry_height_m)},
         {QStringLiteral("Highest tap over ground"), length_m(w.highest_tap_m)},
         {QStringLiteral("Hot pipe, farthest tap"), quantity(w.farthest_pipe_m, QStringLiteral("m"), 1)}});
    fixtures_table(flow, w);
    dead_legs_table(flow, w);
}

void rooms_table(Flow& flow, const Site& site) {
    flow.heading(QStringLiteral("Rooms where no pipe goes"));
    Table table;
    table.least_row_mm = hand_row_mm;
    table.grid = true;
    table.whole = site.rooms.size() < 20;
    table.columns = {{QStringLiteral("Room"), 0.0},
                     {QStringLiteral("Floor over ground"), 34.0, true},
                     {QStringLiteral("Ceiling over ground"), 36.0, true},
                     {QStringLiteral("Pipe"), 40.0}};
    for (const Room& room : site.rooms) {
        table.rows.push_back(
            {QStringList{qs(room.label), length_m(room.from_z_m), length_m(room.to_z_m),
                         room.no_pipe ? QStringLiteral("none through it") : QStringLiteral("may go through")}});
    }
    blank_rows(table, 2);
    flow.table(table);
}

std::vector<Flow::Notice> survey_warnings() {
    return {
        {Sign::height, QStringLiteral("Height"),
         QStringLiteral("Measure from ladder or ground only as far as it stands safely; never step on a roof alone "
                        "or in wet, wind or frost.")},
        {Sign::electricity, QStringLiteral("Electricity"),
         QStringLiteral("Read plates and fuses from outside. Opening the board is an electrician's work.")},
        {Sign::heat, QStringLiteral("Hot water"),
         QStringLiteral("Water over 60 °C scalds in seconds: run cold water first when a tap is measured.")},
        {Sign::flame, QStringLiteral("Refrigerant"),
         QStringLiteral("Note flames, sparks and pits near the cylinder's place. Leave an old set's circuit shut.")}};
}

}  // namespace wg::ui::paper
