#include "ui/visit/water_form.h"

#include <QTableWidget>

#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"
#include "ui/visit/rows_table.h"

namespace wg::ui {

WaterForm::WaterForm(QWidget* parent)
    : SiteForm([](JobSession& session, const Site& site) { set_water(session, site.water); }, parent) {
    build_supply();
    build_fixtures();
    build_dead_legs();
}

void WaterForm::build_supply() {
    pair_next();
    bound_number(
        QStringLiteral("static_pressure"), tr("Pressure at rest"), tr("bar"), {0.0, 25.0, 1, 0.5, true},
        tr("Gauge pressure where the supply enters, every tap shut, read in the morning or at night when it is "
           "highest"),
        [](auto& site) -> auto& { return site.water.static_pressure_bar; });
    bound_number(
        QStringLiteral("hardness"), tr("Total hardness"), tr("mmol/l"), {0.0, 20.0, 2, 0.1, true},
        tr("Of the water company or a test strip. 1 mmol/l is 5.6 German, 10 French degrees or 100 mg/l of CaCO\u2083"),
        [](auto& site) -> auto& { return site.water.hardness_mmol_l; });
    bound_check(
        QStringLiteral("reducing_valve"), tr("Pressure reducing valve is there"),
        tr("Behind the meter, for the whole house"), [](auto& site) -> auto& { return site.water.reducing_valve; });
    bound_number(
        QStringLiteral("reduced_to"), tr("Its setting, or the one planned"), tr("bar"), {0.5, 8.0, 1, 0.5, false},
        tr("Pressure behind the reducing valve, gauge"), [](auto& site) -> auto& { return site.water.reduced_to_bar; });
    pair_next();
    bound_number(
        QStringLiteral("entry_height"), tr("Entry over ground"), tr("m"), {-20.0, 100.0, 2, 0.1, false},
        tr("Height of the supply's entry over the ground of the sketch; in a cellar negative"),
        [](auto& site) -> auto& { return site.water.entry_height_m; });
    bound_number(
        QStringLiteral("highest_tap"), tr("Highest tap over ground"), tr("m"), {-20.0, 200.0, 2, 0.1, false},
        tr("Height of the highest draw-off point over the ground of the sketch"),
        [](auto& site) -> auto& { return site.water.highest_tap_m; });
    bound_number(
        QStringLiteral("farthest_pipe"), tr("Hot pipe to the farthest tap"), tr("m"), {0.0, 300.0, 1, 0.5, false},
        tr("Length of pipe from the cylinder, all bends followed"),
        [](auto& site) -> auto& { return site.water.farthest_pipe_m; });
}

void WaterForm::build_fixtures() {
    heading(tr("Draw-off points"));
    RowsColumn kind{RowsColumn::Kind::word, tr("Kind"), 0, 0.0, 0.0, {}};
    for (const Word<Fixture>& word : wg::words<Fixture>())
        kind.words.emplace_back(QString::fromLatin1(word.key), QString::fromUtf8(word.text));
    fixtures_ =
        new RowsTable(tr("Draw-off points"), {kind, {RowsColumn::Kind::number, tr("Number"), 0, 1.0, 200.0, {}}},
                      tr("Add a kind"), this);
    add(fixtures_);
    fields_.insert(QStringLiteral("fixtures"), fixtures_->table());
    shows_.push_back([this](const Job& job) {
        std::vector<QVariantList> rows;
        for (const FixtureCount& one : job.site.water.fixtures)
            rows.push_back({QString::fromLatin1(key_of(one.kind)), static_cast<double>(one.count)});
        fixtures_->set_rows(rows);
    });
    fixtures_->on_change = [this](int row, int column, const QVariant& value) {
        return change([&](Site& site) {
            FixtureCount& one = site.water.fixtures[static_cast<std::size_t>(row)];
            if (column == 1) one.count = static_cast<int>(std::lround(value.toDouble()));
            if (column == 0) one.kind = from_key<Fixture>(value.toString().toStdString()).value_or(one.kind);
        });
    };
    fixtures_->on_add = [this] {
        return change([&](Site& site) {
            FixtureCount one;
            one.id = new_id();
            // The first kind that is not in the list yet.
            for (const Word<Fixture>& word : wg::words<Fixture>()) {
                one.kind = word.value;
                const bool listed = std::any_of(site.water.fixtures.begin(), site.water.fixtures.end(),
                                                [&](const FixtureCount& other) { return other.kind == word.value; });
                if (!listed) break;
            }
            site.water.fixtures.push_back(one);
        });
    };
    fixtures_->on_remove = [this](int row) {
        return change([&](Site& site) { site.water.fixtures.erase(site.water.fixtures.begin() + row); });
    };
}

void WaterForm::build_dead_legs() {
    heading(tr("Hot pipes that cool between draws"));
    words(tr("Each pipe to a tap: from the cylinder, or from the loop where there is one."));
    dead_legs_ = new RowsTable(tr("Hot pipes that cool between draws"),
                               {{RowsColumn::Kind::text, tr("To"), 0, 0.0, 0.0, {}},
                                {RowsColumn::Kind::number, tr("Long, m"), 1, 0.0, 200.0, {}},
                                {RowsColumn::Kind::number, tr("Bore, mm"), 0, 4.0, 100.0, {}},
                                {RowsColumn::Kind::check, tr("Off loop"), 0, 0.0, 0.0, {}}},
                               tr("Add a pipe"), this);
    dead_legs_->setToolTip(tr("Bore: clear inside diameter. Off loop: it leaves the recirculation loop"));
    add(dead_legs_);
    fields_.insert(QStringLiteral("dead_legs"), dead_legs_->table());
    shows_.push_back([this](const Job& job) {
        std::vector<QVariantList> rows;
        for (const DeadLeg& one : job.site.water.dead_legs)
            rows.push_back({qs(one.label), one.length_m, one.bore_mm, one.off_the_loop});
        dead_legs_->set_rows(rows);
    });
    dead_legs_->on_change = [this](int row, int column, const QVariant& value) {
        return change([&](Site& site) {
            DeadLeg& one = site.water.dead_legs[static_cast<std::size_t>(row)];
            if (column == 0) one.label = value.toString().toStdString();
            if (column == 1) one.length_m = value.toDouble();
            if (column == 2) one.bore_mm = value.toDouble();
            if (column == 3) one.off_the_loop = value.toBool();
        });
    };
    dead_legs_->on_add = [this] {
        return change([&](Site& site) {
            DeadLeg one;
            one.id = new_id();
            one.label = free_label(site.water.dead_legs, "Tap");
            site.water.dead_legs.push_back(one);
        });
    };
    dead_legs_->on_remove = [this](int row) {
        return change([&](Site& site) { site.water.dead_legs.erase(site.water.dead_legs.begin() + row); });
    };
}

}  // namespace wg::ui
