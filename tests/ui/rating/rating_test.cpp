#include <gtest/gtest.h>

#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

#include "core/equipment/codec.h"
#include "tests/tools/load_reference.h"
#include "ui/common/notice_bar.h"
#include "ui/drawing/rating_painters.h"
#include "ui/rating/fit_page.h"
#include "ui/rating/fit_results.h"
#include "ui/rating/rating_dialog.h"
#include "ui/rating/test_page.h"

namespace wg::ui {
namespace {

constexpr int patience_ms = 60000;  ///< a fit on a busy machine

const std::shared_ptr<const plan::Reference>& reference() {
    static const auto made = std::make_shared<const plan::Reference>(test::reference());
    return made;
}

RatingSet demonstration_set() {
    return {"marl-18", "rill-18", "copse-250", 2, 55.0, 6.0};
}

class RatingDialogTest : public testing::Test {
   protected:
    void SetUp() override {
        dialog_ = std::make_unique<RatingDialog>(reference(), demonstration_set());
        dialog_->show();
        ASSERT_TRUE(settle());
    }
    bool settle() {
        return QTest::qWaitFor([this] { return !dialog_->test_page().busy() && !fit().fit_run().running(); },
                               patience_ms);
    }
    FitPage& fit() { return dialog_->fit_page(); }
    DeclaredModel& model() { return fit().model(); }
    QString notice() { return dialog_->notice().text(); }
    bool enter(int row, int column, const QString& text) {
        return model().setData(model().index(row, column), text, Qt::EditRole);
    }
    QPushButton* button(const QString& words) {
        for (QPushButton* candidate : dialog_->findChildren<QPushButton*>())
            if (QString(candidate->text()).remove(QLatin1Char('&')).startsWith(words)) return candidate;
        return nullptr;
    }
    bool calibrate() {
        button(QStringLiteral("Calibrate"))->click();
        return fit().fit_run().running() && settle();
    }
    QString path(const char* name) { return folder_.filePath(QLatin1String(name)); }
    QString file_with(const QByteArray& text) {
        QFile file(path("given.json"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }

    QTemporaryDir folder_;
    std::unique_ptr<RatingDialog> dialog_;
};

TEST_F(RatingDialogTest, the_given_set_is_tested_in_three_airs_with_what_is_assumed) {
    const rating::Item item = dialog_->chooser().item();
    EXPECT_EQ(item.collector.id, "marl-18");
    EXPECT_EQ(item.block.id, "rill-18");
    EXPECT_EQ(item.cylinder.id, "copse-250");
    EXPECT_EQ(item.collectors, 2);
    ASSERT_NE(dialog_->test_page().table(), nullptr);
    const auto& cells = dialog_->test_page().table()->cells;
    ASSERT_EQ(cells.size(), 9U);
    EXPECT_TRUE(dialog_->test_page().words().contains(QStringLiteral("assumed")));
    const auto* figures = dialog_->test_page().findChild<QTableWidget*>();
    EXPECT_EQ(figures->item(1, 2)->text().toDouble(), std::round(cells[4].rating.cop_dhw * 100.0) / 100.0);
    ASSERT_EQ(dialog_->test_page().picture().courses.size(), 3U);
    EXPECT_FALSE(dialog_->test_page().picture().courses[2].points.empty());
    EXPECT_FALSE(dialog_->grab().isNull());
}

TEST_F(RatingDialogTest, a_changed_set_point_tests_anew_and_unknown_ids_give_a_set_all_the_same) {
    const double before = dialog_->test_page().table()->cells[4].rating.cop_dhw;
    dialog_->chooser().set_set_point(45.0);
    ASSERT_TRUE(settle());
    EXPECT_GT(dialog_->test_page().table()->cells[4].rating.cop_dhw, before);
    RatingDialog other(reference(), RatingSet{"gone", "gone", "gone", 1, 55.0, 6.0});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !other.test_page().busy(); }, patience_ms));
    EXPECT_FALSE(other.chooser().item().collector.id.empty());
    EXPECT_NE(other.test_page().table(), nullptr);
}

TEST_F(RatingDialogTest, nothing_is_calibrated_before_a_value_is_entered) {
    EXPECT_FALSE(button(QStringLiteral("Calibrate"))->isEnabled());
    EXPECT_FALSE(button(QStringLiteral("Save equipment"))->isEnabled());
    EXPECT_FALSE(button(QStringLiteral("Save values"))->isEnabled());
    EXPECT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("2,9"))) << "a decimal comma is read";
    EXPECT_TRUE(button(QStringLiteral("Calibrate"))->isEnabled());
    EXPECT_EQ(model().values().size(), 1U) << "lines without a figure count for nothing";
}

TEST_F(RatingDialogTest, entries_are_refused_in_words_and_leave_the_value_alone) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("2.9")));
    const struct {
        int row, column;
        const char* text;
        const char* said;
    } cases[] = {{0, DeclaredModel::value, "high", "high"},      {0, DeclaredModel::value, "-3", "from 0.1"},
                 {0, DeclaredModel::value, "1e400", "from 0.1"}, {0, DeclaredModel::tolerance, "90", "Tolerance"},
                 {0, DeclaredModel::air, "warm", "Air"},         {0, DeclaredModel::air, "7 (9)", "wet bulb"},
                 {0, DeclaredModel::air, "7 (6", "Air"},         {0, DeclaredModel::cycle, "XXS", "XXS"},
                 {0, DeclaredModel::what, "magic", "magic"}};
    for (const auto& c : cases) {
        EXPECT_FALSE(enter(c.row, c.column, QLatin1String(c.text))) << c.text;
        EXPECT_TRUE(notice().contains(QLatin1String(c.said))) << notice().toStdString();
    }
    EXPECT_EQ(model().at(0).value, 2.9);
    EXPECT_EQ(model().at(0).air, rating::air_7);
    EXPECT_FALSE(enter(2, DeclaredModel::cycle, QStringLiteral("L"))) << "a heat-up time has no cycle";
    EXPECT_TRUE(enter(0, DeclaredModel::air, QStringLiteral("2")));
    EXPECT_EQ(model().at(0).air, rating::air_2) << "the wet bulb one kelvin below";
    EXPECT_TRUE(enter(0, DeclaredModel::what, QStringLiteral("Standby power")));
    EXPECT_TRUE(model().values().empty()) << "a figure of another unit is not carried over";
    EXPECT_TRUE(notice().isEmpty()) << "an entry that is taken clears the notice";
}

TEST_F(RatingDialogTest, the_table_is_filled_in_by_keyboard_alone) {
    auto* view = dialog_->findChild<QTableView*>(QString(), Qt::FindChildrenRecursively);
    for (QTableView* candidate : dialog_->findChildren<QTableView*>())
        if (candidate->model() == &model()) view = candidate;
    dialog_->findChild<QTabWidget*>()->setCurrentIndex(1);
    view->setFocus();
    view->setCurrentIndex(model().index(0, DeclaredModel::value));
    QTest::keyClick(view, Qt::Key_F2);
    auto* editor = view->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, QStringLiteral("3.1"));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_EQ(model().at(0).value, 3.1);
    const int rows = model().rowCount();
    QTest::keyClick(view, Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(model().rowCount(), rows - 1);
    button(QStringLiteral("Add a value"))->click();
    EXPECT_EQ(model().rowCount(), rows);
    EXPECT_EQ(view->currentIndex().row(), rows - 1);
}

TEST_F(RatingDialogTest, a_fit_shows_values_figures_and_verdict_and_its_set_is_read_again) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("2.85")));
    ASSERT_TRUE(enter(3, DeclaredModel::value, QStringLiteral("27")));
    ASSERT_TRUE(calibrate());
    ASSERT_TRUE(fit().fit_run().fit().has_value()) << notice().toStdString();
    const rating::Fit& found = *fit().fit_run().fit();
    EXPECT_TRUE(found.met);
    EXPECT_TRUE(fit().results().verdict().contains(QStringLiteral("All 2 values")));
    ASSERT_EQ(fit().results().rows().size(), 2U);
    EXPECT_NEAR(fit().results().rows()[0].after, found.residuals[0].share, 1e-12);
    EXPECT_EQ(fit().results().table()->rowCount(), 2);
    EXPECT_EQ(fit().results().figures()->rowCount(), static_cast<int>(found.parameters.size()));
    for (const auto view : {FitResults::View::picture, FitResults::View::table, FitResults::View::figures}) {
        fit().results().show_view(view);
        EXPECT_FALSE(dialog_->grab().isNull());
    }
    ASSERT_TRUE(fit().save_equipment(path("mine.json"))) << notice().toStdString();
    ASSERT_TRUE(dialog_->add_equipment(path("mine.json"))) << notice().toStdString();
    EXPECT_EQ(dialog_->chooser().item().block.id, "rill-18-calibrated");
    EXPECT_EQ(dialog_->chooser().item().block.overall_peak, found.item.block.overall_peak);
    ASSERT_TRUE(settle());
    EXPECT_FALSE(fit().save_equipment(path("other.json"))) << "what was found belongs to the set before";
    EXPECT_FALSE(dialog_->add_equipment(path("mine.json"))) << "the ids are taken now";
    EXPECT_TRUE(notice().contains(QStringLiteral("already")));
}

TEST_F(RatingDialogTest, what_no_machine_can_do_is_said) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("20")));
    ASSERT_TRUE(calibrate());
    EXPECT_TRUE(fit().results().verdict().contains(QStringLiteral("1 of 1")));
    EXPECT_TRUE(fit().results().warnings().contains(QStringLiteral("no machine can do it")))
        << fit().results().warnings().toStdString();
    EXPECT_FALSE(dialog_->grab().isNull());
}

TEST_F(RatingDialogTest, a_fit_under_way_is_stopped_by_its_button) {
    // Values that pull against each other keep the search busy.
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("5.2")));
    ASSERT_TRUE(enter(1, DeclaredModel::value, QStringLiteral("2.1")));
    ASSERT_TRUE(enter(2, DeclaredModel::value, QStringLiteral("14")));
    ASSERT_TRUE(enter(3, DeclaredModel::value, QStringLiteral("12")));
    button(QStringLiteral("Calibrate"))->click();
    ASSERT_TRUE(fit().fit_run().running());
    QPushButton* stop = button(QStringLiteral("Stop"));
    ASSERT_NE(stop, nullptr);
    EXPECT_TRUE(stop->isEnabled());
    stop->click();
    ASSERT_TRUE(settle());
    ASSERT_TRUE(fit().fit_run().fit().has_value());
    EXPECT_TRUE(fit().fit_run().fit()->stopped);
    EXPECT_TRUE(fit().results().warnings().contains(QStringLiteral("stopped")));
    EXPECT_NE(button(QStringLiteral("Calibrate")), nullptr);
}

TEST_F(RatingDialogTest, closing_while_a_fit_runs_waits_for_it) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("5.2")));
    ASSERT_TRUE(enter(2, DeclaredModel::value, QStringLiteral("14")));
    button(QStringLiteral("Calibrate"))->click();
    dialog_.reset();
    SUCCEED();
}

TEST_F(RatingDialogTest, values_are_saved_and_loaded_and_bad_files_leave_the_table_alone) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("2.85")));
    ASSERT_TRUE(enter(1, DeclaredModel::air, QStringLiteral("14 (12.5)")));
    ASSERT_TRUE(enter(1, DeclaredModel::value, QStringLiteral("3.2")));
    dialog_->chooser().set_set_point(53.0);
    ASSERT_TRUE(fit().save_sheet(path("sheet.json")));
    model().set_usual();
    dialog_->chooser().set_set_point(55.0);
    ASSERT_TRUE(fit().load_sheet(path("sheet.json"))) << notice().toStdString();
    ASSERT_EQ(model().values().size(), 2U);
    EXPECT_EQ(model().at(1).air, (rating::Air{14.0, 12.5}));
    EXPECT_EQ(dialog_->chooser().item().set_point_c, 53.0);
    for (const char* hostile : {"", "[]", "{\"schema\":1}", "{\"schema\":1,\"values\":[{\"quantity\":\"cop\"}]}"}) {
        EXPECT_FALSE(fit().load_sheet(file_with(hostile))) << hostile;
        EXPECT_TRUE(notice().contains(QStringLiteral("given.json"))) << notice().toStdString();
        EXPECT_EQ(model().values().size(), 2U);
    }
    EXPECT_FALSE(fit().load_sheet(folder_.path()));
    EXPECT_FALSE(fit().load_sheet(path("missing.json")));
    EXPECT_FALSE(fit().save_sheet(path("no/such/folder.json")));
    EXPECT_TRUE(notice().contains(QStringLiteral("not saved")));
}

TEST_F(RatingDialogTest, values_that_stand_twice_are_told_before_a_fit) {
    ASSERT_TRUE(enter(0, DeclaredModel::value, QStringLiteral("2.85")));
    const int row = model().add_like(0);
    ASSERT_TRUE(enter(row, DeclaredModel::value, QStringLiteral("2.9")));
    EXPECT_TRUE(model().trouble().contains(QStringLiteral("twice")));
    EXPECT_FALSE(button(QStringLiteral("Calibrate"))->isEnabled());
}

TEST(RatingPainters, odd_figures_are_painted_in_every_theme) {
    std::vector<OffByRow> rows = {{QStringLiteral("COP_DHW L, air 7 °C"), 0.05, 0.01, 0.05},
                                  {QStringLiteral("Heat-up time, air 7 °C"), -3.0, 2.0, 0.05},
                                  {QStringLiteral("Standby"), std::nan(""), std::nan(""), 0.5}};
    HeatUpPicture picture;
    picture.courses = {{QStringLiteral("2 (1) °C"), {}},
                       {QStringLiteral("7 (6) °C"), {{0.0, 10.0, 10.0, 0.0, 0.0}, {4.0, 55.0, 55.0, 1800.0, 500.0}}}};
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight})
        for (const QSizeF size : {QSizeF(640.0, 360.0), QSizeF(80.0, 60.0)}) {
            QImage image(size.toSize(), QImage::Format_RGB32);
            image.fill(theme_of(kind).panel);
            const QImage blank = image;
            QPainter painter(&image);
            paint_off_by(painter, rows, QRectF(QPointF(), size), theme_of(kind), 13.0);
            paint_off_by(painter, {}, QRectF(QPointF(), size), theme_of(kind), 13.0);
            for (const std::size_t chosen : {0U, 1U, 9U}) {
                picture.chosen = chosen;
                paint_heat_up(painter, picture, QRectF(QPointF(), size), theme_of(kind), 13.0);
            }
            paint_heat_up(painter, {}, QRectF(QPointF(), size), theme_of(kind), 13.0);
            painter.end();
            EXPECT_NE(image, blank);
        }
}

}  // namespace
}  // namespace wg::ui
