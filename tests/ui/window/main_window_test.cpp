#include "ui/window/main_window.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "core/store/customers.h"
#include "core/weather/write_plain.h"
#include "ui/common/edits.h"
#include "ui/common/notice_bar.h"
#include "ui/customers/customer_of_job.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"
#include "ui/rating/rating_dialog.h"
#include "ui/weather/weather_dialog.h"
#include "ui/window/job_page.h"

namespace wg::ui {
namespace {

constexpr int patience_ms = 20000;  ///< a whole year of operation on a busy machine

std::optional<std::string> resource(const std::string& path) {
    QFile file(QStringLiteral(WG_RESOURCES_DIR "/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll().toStdString();
}

class MainWindowTest : public testing::Test {
   protected:
    static void SetUpTestSuite() {
        Result<plan::Reference> reference = plan::load_reference(&resource);
        ASSERT_TRUE(reference.ok()) << text_of(reference.problems());
        reference_ = std::make_shared<const plan::Reference>(std::move(reference).value());
    }
    static void TearDownTestSuite() { reference_.reset(); }
    void SetUp() override {
        ASSERT_NE(reference_, nullptr);
        Result<std::unique_ptr<store::Store>> store = store::Store::open(":memory:", Instant{1'800'000'000});
        ASSERT_TRUE(store.ok()) << text_of(store.problems());
        store_ = store.value().get();
        window_ = std::make_unique<MainWindow>(std::move(store).value(), reference_);
        window_->show();
    }
    [[nodiscard]] bool open_demo() { return window_->open_job_text(*resource("demo/job.json"), "demo/job.json"); }
    [[nodiscard]] bool settle() {
        return QTest::qWaitFor([this] { return window_->session()->settled(); }, patience_ms);
    }
    [[nodiscard]] QAction* action(const QKeySequence& keys) const {
        for (QAction* candidate : window_->findChildren<QAction*>()) {
            if (candidate->shortcut() == keys) return candidate;
        }
        return nullptr;
    }

    static std::shared_ptr<const plan::Reference> reference_;  ///< never changes, so one serves all
    store::Store* store_ = nullptr;
    std::unique_ptr<MainWindow> window_;
};

std::shared_ptr<const plan::Reference> MainWindowTest::reference_;

TEST_F(MainWindowTest, the_demonstration_job_opens_plans_and_shows_on_every_stage) {
    ASSERT_TRUE(open_demo());
    ASSERT_TRUE(settle()) << window_->session()->plan_problem().toStdString();
    EXPECT_TRUE(window_->session()->plan()->has_yield);
    EXPECT_GT(window_->session()->plan()->figures.heat_kwh.mid, 0.0);
    for (int stage = 0; stage < stage_count; ++stage) {
        window_->show_stage(stage);
        QCoreApplication::processEvents();
        EXPECT_FALSE(window_->grab().isNull());
    }
    EXPECT_EQ(window_->session()->undo_stack().count(), 0) << "looking at a stage must not edit the job";
    EXPECT_EQ(store_->count("").value(), 1);
}

TEST_F(MainWindowTest, the_same_file_opened_again_neither_asks_nor_saves_anew) {
    ASSERT_TRUE(open_demo());
    const std::int64_t revision = window_->session()->job().revision;
    ASSERT_TRUE(open_demo());
    EXPECT_EQ(window_->session()->job().revision, revision);
    EXPECT_EQ(store_->count("").value(), 1);
}

TEST_F(MainWindowTest, edits_are_undone_from_the_menu_and_saved_on_the_way_to_the_desk) {
    ASSERT_TRUE(open_demo());
    const Job before = window_->session()->job();
    set_notes(*window_->session(), "Bring the long ladder");
    QAction* undo = action(QKeySequence(QStringLiteral("Ctrl+Z")));
    ASSERT_NE(undo, nullptr);
    EXPECT_TRUE(undo->text().contains(QStringLiteral("notes"))) << undo->text().toStdString();
    undo->trigger();
    EXPECT_EQ(window_->session()->job(), before);
    action(QKeySequence(QStringLiteral("Ctrl+Shift+Z")))->trigger();
    action(QKeySequence(QStringLiteral("Ctrl+D")))->trigger();
    EXPECT_EQ(window_->session(), nullptr);
    EXPECT_FALSE(undo->isEnabled());
    const Result<Job> stored = store_->load(before.id);
    ASSERT_TRUE(stored.ok());
    EXPECT_EQ(stored.value().notes, "Bring the long ladder");
    auto* desk = window_->findChild<DeskPage*>();
    ASSERT_NE(desk, nullptr);
    EXPECT_TRUE(desk->isVisible());
    EXPECT_EQ(desk->table()->model()->rowCount(), 1);
}

TEST_F(MainWindowTest, the_visit_leads_to_the_customer_who_is_made_of_the_client) {
    ASSERT_TRUE(open_demo());
    const std::string id = window_->session()->job().id;
    window_->show_stage(0);
    QPushButton* button = nullptr;
    for (QPushButton* one : window_->findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Show the customer")) button = one;
    ASSERT_NE(button, nullptr);
    set_notes(*window_->session(), "typed just before");
    // Left as it is: the job stays open.
    const auto answer = [](bool link) {
        QTimer::singleShot(50, [link] {
            auto* dialog = qobject_cast<CustomerOfJobDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            if (link)
                dialog->link_button()->click();
            else
                dialog->reject();
        });
    };
    answer(false);
    button->click();
    QTest::qWait(200);
    ASSERT_NE(window_->session(), nullptr);
    EXPECT_EQ(store::CustomerBook(*store_).count("").value(), 0);
    answer(true);
    button->click();
    ASSERT_TRUE(QTest::qWaitFor([this] { return window_->session() == nullptr; }, patience_ms));
    const store::CustomerBook book(*store_);
    const std::string customer = book.customer_of(id).value();
    ASSERT_FALSE(customer.empty());
    auto* desk = window_->findChild<DeskPage*>();
    ASSERT_NE(desk->customers(), nullptr);
    // A page that is made while its tab is shown appears with the next events.
    EXPECT_TRUE(QTest::qWaitFor([desk] { return desk->customers()->isVisible(); }, patience_ms));
    EXPECT_EQ(desk->customers()->shown_id(), customer);
    EXPECT_EQ(store_->load(id).value().notes, "typed just before");
}

TEST_F(MainWindowTest, a_job_started_afresh_opens_and_can_be_saved) {
    action(QKeySequence::New)->trigger();
    ASSERT_NE(window_->session(), nullptr);
    EXPECT_FALSE(window_->session()->job().number.empty());
    EXPECT_EQ(window_->session()->job().revision, 1);
    for (int stage = 0; stage < stage_count; ++stage) {
        window_->show_stage(stage);
        QCoreApplication::processEvents();
    }
    set_notes(*window_->session(), "first call");
    action(QKeySequence::Save)->trigger();
    EXPECT_EQ(window_->session()->job().revision, 2);
}

TEST_F(MainWindowTest, another_climate_is_planned_with_and_undone) {
    ASSERT_TRUE(open_demo());
    ASSERT_TRUE(settle());
    const std::string before = window_->session()->job().weather;
    // The heat asked for is met in either climate; what it costs is not the same.
    const double electricity = window_->session()->plan()->figures.electricity_kwh.mid;
    std::string chosen;
    QTimer::singleShot(0, window_.get(), [&chosen] {
        auto* dialog = qobject_cast<WeatherDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        const std::vector<WeatherPlace>& places = dialog->places().places();
        const int other = places.front().in_use ? 1 : 0;
        dialog->places().select(other);
        chosen = places[static_cast<std::size_t>(other)].climate_id;
        for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
            if (button->text().contains(QStringLiteral("Plan the job"))) return button->click();
        }
        dialog->reject();
    });
    action(QKeySequence(QStringLiteral("Ctrl+Shift+W")))->trigger();
    ASSERT_FALSE(chosen.empty());
    EXPECT_EQ(window_->session()->job().weather, chosen);
    ASSERT_TRUE(settle());
    EXPECT_NE(window_->session()->plan()->figures.electricity_kwh.mid, electricity);
    action(QKeySequence(QStringLiteral("Ctrl+Z")))->trigger();
    EXPECT_EQ(window_->session()->job().weather, before);
}

TEST_F(MainWindowTest, a_weather_file_goes_into_the_library_and_the_job_is_planned_with_it) {
    ASSERT_TRUE(open_demo());
    ASSERT_TRUE(settle());
    const std::string before = window_->session()->job().weather;
    // A colder year of the same place, as the plain CSV of docs/weather-format.md.
    weather::Year year = window_->session()->reference().weather->year;
    for (double& air : year.air_c)
        air -= 5.0;
    for (double& dew : year.dew_point_c)
        dew -= 6.0;
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("colder.csv"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(weather::write_plain(year)));
    file.close();
    const double electricity = window_->session()->plan()->figures.electricity_kwh.mid;

    ASSERT_TRUE(window_->plan_with_file(path));
    ASSERT_TRUE(QFile::remove(path));
    const std::string kept = window_->session()->job().weather;
    EXPECT_EQ(kept.rfind("year:", 0), 0U);
    ASSERT_TRUE(settle());
    EXPECT_GT(window_->session()->plan()->figures.electricity_kwh.mid, electricity);
    EXPECT_TRUE(window_->session()->plan()->weather_spread.has_value());
    action(QKeySequence(QStringLiteral("Ctrl+Z")))->trigger();
    EXPECT_EQ(window_->session()->job().weather, before);
    ASSERT_TRUE(settle());
    EXPECT_NEAR(window_->session()->plan()->figures.electricity_kwh.mid, electricity, 1e-9);
}

TEST_F(MainWindowTest, job_actions_wait_for_a_job) {
    QAction* save = action(QKeySequence::Save);
    ASSERT_NE(save, nullptr);
    EXPECT_FALSE(save->isEnabled());
    ASSERT_TRUE(open_demo());
    EXPECT_TRUE(save->isEnabled());
}

TEST_F(MainWindowTest, fits_a_small_laptop_screen_on_every_stage) {
    ASSERT_TRUE(open_demo());
    ASSERT_TRUE(settle());
    for (int stage = 0; stage < stage_count; ++stage) {
        window_->show_stage(stage);
        QCoreApplication::processEvents();
        window_->resize(1366, 740);
        QCoreApplication::processEvents();
        EXPECT_LE(window_->width(), 1366) << stage_title(stage).toStdString();
        EXPECT_LE(window_->height(), 740) << stage_title(stage).toStdString();
    }
}

TEST_F(MainWindowTest, no_word_on_any_control_ends_with_an_exclamation_mark) {
    ASSERT_TRUE(open_demo());
    for (int stage = 0; stage < stage_count; ++stage)
        window_->show_stage(stage);
    const QChar mark = u'!';
    for (const QAbstractButton* button : window_->findChildren<QAbstractButton*>()) {
        EXPECT_FALSE(button->text().contains(mark)) << button->text().toStdString();
        EXPECT_FALSE(button->toolTip().contains(mark)) << button->toolTip().toStdString();
    }
    for (const QLabel* label : window_->findChildren<QLabel*>()) {
        EXPECT_FALSE(label->text().contains(mark)) << label->text().toStdString();
    }
}

TEST_F(MainWindowTest, the_rating_test_opens_without_a_job_and_with_the_set_on_screen) {
    QAction* rating = action(QKeySequence(QStringLiteral("Ctrl+R")));
    ASSERT_NE(rating, nullptr);
    rating::Item seen;
    const auto look = [this, &seen] {
        QTimer::singleShot(0, window_.get(), [&seen] {
            auto* dialog = qobject_cast<RatingDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            seen = dialog->chooser().item();
            dialog->reject();
        });
    };
    look();
    rating->trigger();
    EXPECT_FALSE(seen.collector.id.empty());
    ASSERT_TRUE(open_demo());
    const Choice* choice = window_->session()->current_choice();
    ASSERT_NE(choice, nullptr);
    look();
    rating->trigger();
    EXPECT_EQ(seen.collector.id, choice->collector_model);
    EXPECT_EQ(seen.block.id, choice->block_model);
    EXPECT_EQ(seen.cylinder.id, choice->cylinder_model);
    EXPECT_EQ(seen.collectors, static_cast<int>(choice->placements.size()));
    EXPECT_EQ(seen.set_point_c, window_->session()->job().demand.set_point_c);
    EXPECT_EQ(window_->session()->undo_stack().count(), 0) << "the test changes no job";
}

TEST_F(MainWindowTest, edits_that_a_crash_left_unsaved_come_back_as_one_step) {
    ASSERT_TRUE(open_demo());
    Job edited = window_->session()->job();
    const std::string notes = edited.notes;
    Q_EMIT window_->findChild<JobPage*>()->desk_asked();
    edited.notes = "typed before the battery gave out";
    ASSERT_TRUE(store_->keep_unsaved(edited, Instant{1'800'000'100}).ok());
    ASSERT_TRUE(window_->open_job(edited.id));
    EXPECT_EQ(window_->session()->job().notes, "typed before the battery gave out");
    EXPECT_FALSE(window_->findChild<JobPage*>()->notice().text().isEmpty());
    EXPECT_EQ(window_->session()->undo_stack().count(), 1);
    window_->session()->undo_stack().undo();
    EXPECT_EQ(window_->session()->job().notes, notes);
    window_->session()->undo_stack().redo();
    Q_EMIT window_->findChild<JobPage*>()->desk_asked();
    EXPECT_EQ(store_->load(edited.id).value().notes, "typed before the battery gave out");
    EXPECT_FALSE(store_->unsaved(edited.id).value().has_value());
}

}  // namespace
}  // namespace wg::ui
