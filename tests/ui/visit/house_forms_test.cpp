// What the survey knows of the house beside its shape, entered through the real widgets.

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

#include "core/job/codec.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/common/house_edits.h"
#include "ui/drawing/fields.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/missing.h"
#include "ui/visit/outline_tool.h"
#include "ui/visit/room_editor.h"
#include "ui/visit/rows_table.h"
#include "ui/visit/spot_editor.h"
#include "ui/visit/surface_editor.h"
#include "ui/visit/visit_form.h"
#include "ui/visit/visit_stage.h"
#include "ui/visit/water_form.h"

namespace wg::ui {
namespace house_forms_test {

std::shared_ptr<const plan::Reference> reference_with_rules() {
    auto made = std::make_shared<plan::Reference>(*sample::reference());
    plan::RuleSet neutral;
    neutral.id = "neutral";
    neutral.label = "Neutral default";
    neutral.source = "assumed";
    neutral.assumed = true;
    plan::RuleSet national = neutral;
    national.id = "national";
    national.label = "A country's own";
    national.source = "National annex of 2021";
    national.assumed = false;
    made->rule_sets = {{"neutral", neutral}, {"national", national}};
    return made;
}

struct House : testing::Test {
    JobSession session{sample::job(), reference_with_rules(), sample::quick_to_read_plan};
    VisitStage stage;
    void SetUp() override {
        stage.resize(1040, 640);
        stage.set_session(&session);
        stage.show();
    }
    const Site& site() { return session.job().site; }
    template <class T = NumberField>
    T* field(const char* key) {
        return qobject_cast<T*>(stage.form()->field(QString::fromLatin1(key)));
    }
    void type(const char* key, const char* text) {
        auto* number = field(key);
        ASSERT_NE(number, nullptr) << key;
        number->line_edit()->setText(QString::fromLatin1(text));
        QTest::keyClick(number->line_edit(), Qt::Key_Return);
    }
    void choose(const char* key, const char* data) {
        auto* combo = field<QComboBox>(key);
        ASSERT_NE(combo, nullptr) << key;
        const int at = combo->findData(QString::fromLatin1(data));
        ASSERT_GE(at, 0) << data;
        combo->setCurrentIndex(at);
        Q_EMIT combo->activated(at);
    }
    void unfold(const char* key) { field<QPushButton>(key)->setChecked(true); }
};

TEST_F(House, the_rule_set_is_chosen_by_its_label_and_says_whether_it_is_assumed) {
    auto* note = field<QLabel>("rule_set_note");
    choose("rule_set", "neutral");
    EXPECT_EQ(session.job().rule_set, "neutral");
    EXPECT_TRUE(note->text().contains(QStringLiteral("Assumed")));
    choose("rule_set", "national");
    EXPECT_EQ(session.job().rule_set, "national");
    EXPECT_FALSE(note->text().contains(QStringLiteral("Assumed")));
    EXPECT_TRUE(note->text().contains(QStringLiteral("National annex of 2021")));
    session.undo_stack().undo();
    EXPECT_EQ(field<QComboBox>("rule_set")->currentData().toString(), QStringLiteral("neutral"));
    set_rule_set(session, "of-another-machine");
    EXPECT_EQ(field<QComboBox>("rule_set")->currentIndex(), -1) << "no other set is shown in its place";
    EXPECT_TRUE(note->text().contains(QStringLiteral("of-another-machine")));
}

TEST_F(House, the_hills_figures_are_asked_for_only_where_there_is_one) {
    EXPECT_TRUE(field("hill_height")->isHidden());
    choose("hill", "hill");
    EXPECT_FALSE(field("hill_height")->isHidden());
    EXPECT_FALSE(field("hill_downwind")->isHidden());
    choose("hill", "cliff");
    EXPECT_TRUE(field("hill_downwind")->isHidden()) << "a cliff has no lee slope";
    type("hill_height", "35");
    type("hill_crest", "-40");
    EXPECT_EQ(site().hill.height_m, 35.0);
    EXPECT_EQ(site().hill.crest_distance_m, -40.0);
    type("hill_upwind", "0");
    EXPECT_FALSE(field("hill_upwind")->problem().isEmpty());
    EXPECT_EQ(site().hill.upwind_length_m, 200.0);
    const int steps = session.undo_stack().count();
    for (int i = 0; i < steps; ++i)
        session.undo_stack().undo();
    EXPECT_EQ(site().hill, Hill{});
    EXPECT_TRUE(field("hill_height")->isHidden());
}

TEST_F(House, a_supply_that_nobody_told_stays_not_known_and_can_be_untold) {
    unfold("electrics");
    EXPECT_EQ(field("main_fuse")->line_edit()->placeholderText(), QStringLiteral("not known"));
    EXPECT_EQ(field<QComboBox>("phases")->currentText(), QStringLiteral("not known"));
    EXPECT_EQ(field<QComboBox>("earthing")->currentText(), QStringLiteral("not known"));
    type("main_fuse", "63");
    choose("phases", "3");
    choose("earthing", "tt");
    EXPECT_EQ(site().electrics.main_fuse_a, 63.0);
    EXPECT_EQ(site().electrics.phases, 3);
    EXPECT_EQ(site().electrics.earthing, EarthingSystem::tt);
    EXPECT_EQ(session.undo_stack().count(), 3);
    type("main_fuse", "");
    EXPECT_FALSE(site().electrics.main_fuse_a.has_value());
    type("voltage", "60");
    EXPECT_FALSE(field("voltage")->problem().isEmpty()) << "90 to 500 V";
    EXPECT_FALSE(site().electrics.voltage_v.has_value());
    EXPECT_TRUE(field("lightning_distance")->isHidden());
    field<QCheckBox>("lightning")->click();
    EXPECT_TRUE(site().electrics.lightning_protection);
    EXPECT_FALSE(field("lightning_distance")->isHidden());
}

TEST_F(House, water_and_its_fixtures_are_entered_as_a_table_each_an_undo_step) {
    unfold("water");
    type("static_pressure", "5,5");
    EXPECT_EQ(site().water.static_pressure_bar, 5.5);
    RowsTable* fixtures = stage.form()->water()->fixtures();
    QTest::mouseClick(fixtures->add_button(), Qt::LeftButton);
    QTest::mouseClick(fixtures->add_button(), Qt::LeftButton);
    ASSERT_EQ(site().water.fixtures.size(), 2U);
    EXPECT_NE(site().water.fixtures[0].kind, site().water.fixtures[1].kind) << "the next kind, not the same again";
    const std::string id = site().water.fixtures[1].id;
    fixtures->table()->item(1, 1)->setText(QStringLiteral("3"));
    EXPECT_EQ(site().water.fixtures[1].count, 3);
    auto* kind = qobject_cast<QComboBox*>(fixtures->table()->cellWidget(1, 0));
    ASSERT_NE(kind, nullptr);
    EXPECT_FALSE(kind->accessibleName().isEmpty());
    const int shower = kind->findData(QStringLiteral("shower"));
    kind->setCurrentIndex(shower);
    Q_EMIT kind->activated(shower);
    EXPECT_EQ(site().water.fixtures[1].kind, Fixture::shower);
    EXPECT_EQ(site().water.fixtures[1].id, id) << "the same row, changed";
    EXPECT_EQ(session.undo_stack().count(), 5);
    fixtures->table()->item(1, 1)->setText(QStringLiteral("0"));
    EXPECT_EQ(site().water.fixtures[1].count, 3);
    EXPECT_FALSE(fixtures->problem().isEmpty());
    EXPECT_EQ(fixtures->table()->item(1, 1)->text(), QStringLiteral("3"));
    fixtures->table()->setCurrentCell(0, 1);
    ASSERT_EQ(fixtures->table()->currentRow(), 0);
    ASSERT_TRUE(fixtures->remove_button()->isEnabled());
    QTest::keyClick(fixtures->remove_button(), Qt::Key_Space);
    EXPECT_EQ(fixtures->problem(), QString());
    ASSERT_EQ(site().water.fixtures.size(), 1U);
    EXPECT_EQ(site().water.fixtures[0].id, id);
    EXPECT_EQ(fixtures->table()->rowCount(), 1);
    EXPECT_EQ(qobject_cast<QComboBox*>(fixtures->table()->cellWidget(0, 0))->currentData().toString(),
              QStringLiteral("shower"));
    EXPECT_TRUE(validate(session.job()).empty());
}

TEST_F(House, dead_legs_keep_label_length_bore_and_where_they_leave) {
    unfold("water");
    RowsTable* legs = stage.form()->water()->dead_legs();
    QTest::mouseClick(legs->add_button(), Qt::LeftButton);
    legs->table()->item(0, 0)->setText(QStringLiteral("Kitchen"));
    legs->table()->item(0, 1)->setText(QStringLiteral("7.5"));
    legs->table()->item(0, 2)->setText(QStringLiteral("10"));
    legs->table()->item(0, 3)->setCheckState(Qt::Checked);
    ASSERT_EQ(site().water.dead_legs.size(), 1U);
    const DeadLeg& leg = site().water.dead_legs.front();
    EXPECT_EQ(leg.label, "Kitchen");
    EXPECT_EQ(leg.length_m, 7.5);
    EXPECT_EQ(leg.bore_mm, 10.0);
    EXPECT_TRUE(leg.off_the_loop);
    legs->table()->item(0, 2)->setText(QStringLiteral("wide"));
    EXPECT_FALSE(legs->problem().isEmpty());
    EXPECT_EQ(site().water.dead_legs.front().bore_mm, 10.0);
    EXPECT_EQ(legs->table()->item(0, 2)->text(), QStringLiteral("10"));
}

TEST_F(House, a_room_is_drawn_by_keys_numbered_by_its_floor_and_ceiling_and_removed) {
    stage.draw_room();
    QTest::keyClick(stage.canvas(), Qt::Key_Return);
    QTest::keyClick(stage.canvas(), Qt::Key_Right);
    const auto length = [&](const char* keys) {
        QTest::keyClicks(stage.canvas(), QString::fromLatin1(keys));
        QTest::keyClick(stage.canvas(), Qt::Key_Return);
    };
    length("4");
    length("3");
    length("4");
    QTest::keyClick(stage.canvas(), Qt::Key_Return);
    ASSERT_EQ(site().rooms.size(), 1U);
    const std::string id = site().rooms.front().id;
    EXPECT_EQ(stage.selected(), id);
    EXPECT_TRUE(site().rooms.front().no_pipe);
    EXPECT_EQ(session.undo_stack().count(), 1);
    auto* floor = qobject_cast<NumberField*>(stage.room_editor()->field(QStringLiteral("from_z")));
    auto* ceiling = qobject_cast<NumberField*>(stage.room_editor()->field(QStringLiteral("to_z")));
    const auto enter = [](NumberField* into, const char* text) {
        into->line_edit()->setText(QString::fromLatin1(text));
        QTest::keyClick(into->line_edit(), Qt::Key_Return);
    };
    enter(ceiling, "5.2");
    enter(floor, "2.7");
    EXPECT_EQ(site().rooms.front().from_z_m, 2.7);
    EXPECT_EQ(site().rooms.front().to_z_m, 5.2);
    enter(ceiling, "2.5");
    EXPECT_FALSE(ceiling->problem().isEmpty()) << "a ceiling under the floor";
    EXPECT_EQ(site().rooms.front().to_z_m, 5.2);
    auto* list = field<QListWidget>("room_list");
    ASSERT_EQ(list->count(), 1);
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("no pipe")));
    EXPECT_TRUE(validate(session.job()).empty());
    remove_element(session, id);
    EXPECT_TRUE(site().rooms.empty());
    EXPECT_EQ(list->count(), 0);
    session.undo_stack().undo();
    EXPECT_EQ(site().rooms.size(), 1U);
}

TEST_F(House, a_room_is_picked_by_its_edge_moved_and_drawn_hatched) {
    Room room;
    room.outline = {{10, 10}, {14, 10}, {14, 13}, {10, 13}};
    const std::string id = add_room(session, room);
    EXPECT_EQ(element_at(site(), {12.0, 10.02}, 0.1), id);
    EXPECT_NE(element_at(site(), {12.0, 11.5}, 0.1), id) << "its middle belongs to what lies above it";
    move_room(session, id, 11.0, 10.0);
    EXPECT_EQ(site().rooms.front().outline[2], (Point2{15.0, 13.0}));
    // Hatched: more ink inside than the same room where pipes may go.
    const auto ink = [&] {
        QImage image(300, 300, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        SiteDrawing drawing;
        Job job = session.job();
        job.site.surfaces.clear();
        job.site.obstacles.clear();
        job.site.spots.clear();
        drawing.job = &job;
        drawing.labels = false;
        drawing.grid = false;
        drawing.area = QRectF(0, 0, 300, 300);
        paint_site(painter, drawing, fit_site(job.site, drawing.area, 40), theme_of(ThemeKind::light));
        painter.end();
        int dark = 0;
        for (int y = 80; y < 220; ++y)
            for (int x = 100; x < 200; ++x)
                dark += qGray(image.pixel(x, y)) < 200 ? 1 : 0;
        return dark;
    };
    const int hatched = ink();
    Room free = site().rooms.front();
    free.no_pipe = false;
    set_room(session, free);
    EXPECT_GT(hatched, ink() + 200);
}

TEST_F(House, the_spot_knows_its_cable_and_the_surface_its_snow_and_spare_load) {
    stage.show_place(QString::fromStdString(site().spots.front().id));
    auto* spot = stage.findChild<SpotEditor*>();
    auto* way = qobject_cast<NumberField*>(spot->field(QStringLiteral("distribution")));
    way->line_edit()->setText(QStringLiteral("14.5"));
    QTest::keyClick(way->line_edit(), Qt::Key_Return);
    EXPECT_EQ(site().spots.front().distribution_m, 14.5);
    way->line_edit()->clear();
    QTest::keyClick(way->line_edit(), Qt::Key_Return);
    EXPECT_EQ(site().spots.front().distribution_m, 0.0);
    auto* together = qobject_cast<NumberField*>(spot->field(QStringLiteral("cable_together")));
    together->line_edit()->setText(QStringLiteral("4"));
    QTest::keyClick(together->line_edit(), Qt::Key_Return);
    EXPECT_EQ(site().spots.front().cable.circuits_together, 4);

    auto* surface = stage.findChild<SurfaceEditor*>();
    stage.show_place(QString::fromStdString(sample::roof().id));
    auto* spare = qobject_cast<NumberField*>(surface->field(QStringLiteral("spare_load")));
    EXPECT_TRUE(spare->isHidden()) << "a pitched roof takes no ballast";
    qobject_cast<QCheckBox*>(surface->field(QStringLiteral("snow_held")))->click();
    EXPECT_TRUE(site().surfaces.front().snow_held);
    stage.show_place(QString::fromStdString(sample::terrace().id));
    EXPECT_FALSE(spare->isHidden());
    spare->line_edit()->setText(QStringLiteral("0.8"));
    QTest::keyClick(spare->line_edit(), Qt::Key_Return);
    EXPECT_EQ(site().surfaces.back().spare_load_kn_m2, 0.8);
    spare->line_edit()->clear();
    QTest::keyClick(spare->line_edit(), Qt::Key_Return);
    EXPECT_FALSE(site().surfaces.back().spare_load_kn_m2.has_value());
}

TEST_F(House, what_is_missing_leads_into_a_folded_part_and_opens_it) {
    const auto list = still_to_measure(session.job());
    const auto pressure = std::find_if(
        list.begin(), list.end(), [](const Missing& one) { return one.field == QStringLiteral("static_pressure"); });
    ASSERT_NE(pressure, list.end());
    EXPECT_FALSE(field("static_pressure")->isVisible());
    EXPECT_TRUE(stage.form()->go_to(pressure->field));
    EXPECT_TRUE(field("static_pressure")->isVisible());
    WaterSupply water = site().water;
    water.static_pressure_bar = 4.0;
    set_water(session, water);
    for (const Missing& one : still_to_measure(session.job()))
        EXPECT_NE(one.field, QStringLiteral("static_pressure"));
}

TEST_F(House, every_control_has_a_name_and_fits_the_sheet_with_all_parts_open) {
    Site full = site();
    full.hill.kind = HillKind::hill;
    set_hill(session, full.hill);
    full.electrics.lightning_protection = true;
    set_electrics(session, full.electrics);
    WaterSupply water;
    water.fixtures.resize(2);
    water.fixtures[0].id = new_id();
    water.fixtures[1].id = new_id();
    water.dead_legs.resize(1);
    water.dead_legs[0].id = new_id();
    water.dead_legs[0].label = "Bath under the roof";
    set_water(session, water);
    for (const char* key : {"electrics", "water", "rooms"})
        unfold(key);
    QTest::qWait(20);
    VisitForm* form = stage.form();
    EXPECT_LE(form->width(), form->parentWidget()->width()) << "wider than the area that shows it";
    for (QWidget* inside : form->findChildren<QWidget*>()) {
        if (!inside->isVisible()) continue;
        const int right = inside->mapTo(form, QPoint(inside->width(), 0)).x();
        // A table scrolls its own cells.
        bool in_table = false;
        for (QWidget* up = inside->parentWidget(); up != nullptr; up = up->parentWidget())
            in_table = in_table || qobject_cast<QTableWidget*>(up) != nullptr;
        if (!in_table) EXPECT_LE(right, form->width()) << inside->metaObject()->className();
        const bool control =
            qobject_cast<QComboBox*>(inside) != nullptr || qobject_cast<QLineEdit*>(inside) != nullptr ||
            qobject_cast<QCheckBox*>(inside) != nullptr || qobject_cast<QTableWidget*>(inside) != nullptr;
        if (control && !in_table) EXPECT_FALSE(inside->accessibleName().isEmpty()) << inside->metaObject()->className();
    }
    // Pulling the table's columns together must leave each title whole.
    for (RowsTable* rows : {form->water()->fixtures(), form->water()->dead_legs()}) {
        int wide = 0;
        for (int c = 0; c < rows->table()->columnCount(); ++c)
            wide += rows->table()->columnWidth(c);
        EXPECT_LE(wide, rows->table()->viewport()->width() + 1);
    }
}

}  // namespace house_forms_test
}  // namespace wg::ui
