// The firm's own equipment from the desk into jobs.

#include "ui/window/firm_equipment.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QMessageBox>
#include <QTest>
#include <QTimer>

#include "core/equipment/codec.h"
#include "tests/tools/load_reference.h"
#include "ui/common/notice_bar.h"
#include "ui/desk/desk_page.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/field_box.h"
#include "ui/equipment/item_form.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace firm_equipment_test {
namespace {

constexpr int patience_ms = 20000;
const Instant later{1'800'000'600};

class FirmEquipmentTest : public testing::Test {
   protected:
    static void SetUpTestSuite() {
        program_ = std::make_shared<const plan::Reference>(plan::load_reference(&test::read_resource).value());
    }
    static void TearDownTestSuite() { program_.reset(); }

    /// The demonstration's collector under an id of the firm's, a little heavier.
    static std::string own_collector(double extra_kg) {
        CollectorModel model = *find_collector(program_->catalogue, chosen_choice(test::demo_job())->collector_model);
        model.id = "own-plate";
        model.name = "Own plate (invented)";
        model.mass_kg += extra_kg;
        return catalogue_to_json({{model}, {}, {}, {}});
    }
    static std::string job_with_it() {
        Job job = test::demo_job();
        for (Choice& choice : job.choices)
            choice.collector_model = "own-plate";
        return job_to_json(job);
    }
    std::unique_ptr<store::Store> new_store() { return store::Store::open(":memory:", Instant{1'800'000'000}).value(); }
    static QString notice_of(const MainWindow& window) {
        QString out;
        for (const NoticeBar* bar : window.findChildren<NoticeBar*>())
            out += bar->text();
        return out;
    }

    static std::shared_ptr<const plan::Reference> program_;
};
std::shared_ptr<const plan::Reference> FirmEquipmentTest::program_;

TEST_F(FirmEquipmentTest, AnItemSavedOnTheDeskPlansAJobWithoutAnewStart) {
    auto opened = new_store();
    MainWindow window(std::move(opened), program_);
    auto* desk = window.findChild<DeskPage*>();
    desk->show_equipment_tab();
    ASSERT_NE(desk->equipment(), nullptr);
    EquipmentPage& page = *desk->equipment();
    ASSERT_TRUE(page.import_text(QByteArray::fromStdString(own_collector(1.0)), "own.json", later).ok());
    ASSERT_TRUE(window.open_job_text(job_with_it(), "own-job.json"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.session()->settled(); }, patience_ms))
        << window.session()->plan_problem().toStdString();
    EXPECT_EQ(window.session()->plan()->collector.id, "own-plate");
    EXPECT_EQ(notice_of(window).contains("not here"), false) << notice_of(window).toStdString();
}

TEST_F(FirmEquipmentTest, AJobWhoseEquipmentIsNotHereSaysWhichAndWhatToDo) {
    MainWindow window(new_store(), program_);
    ASSERT_TRUE(window.open_job_text(job_with_it(), "own-job.json"));
    EXPECT_TRUE(notice_of(window).contains("collector 'own-plate'")) << notice_of(window).toStdString();
    EXPECT_TRUE(notice_of(window).contains("Equipment on the desk"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.session()->plan_problem().isEmpty(); }, patience_ms));
    EXPECT_TRUE(window.session()->plan_problem().contains("own-plate"));
}

TEST_F(FirmEquipmentTest, AWithdrawnItemStaysInJobsThatNameItAndInNoOthers) {
    const auto opened = new_store();
    store::EquipmentBook book(*opened);
    ASSERT_TRUE(book.save(own_collector(0.0), 0, later).ok());
    FirmEquipment equipment(*opened, program_);
    EXPECT_EQ(equipment.reference(), program_);
    EXPECT_EQ(equipment.refresh(), "");
    EXPECT_NE(find_collector(equipment.reference()->catalogue, "own-plate"), nullptr);
    const auto before = equipment.reference();
    EXPECT_EQ(equipment.refresh(), "");
    EXPECT_EQ(equipment.reference(), before) << "nothing changed, nothing is made anew";
    ASSERT_TRUE(book.withdraw("own-plate", 1, later).ok());
    EXPECT_EQ(equipment.refresh(), "");
    EXPECT_EQ(find_collector(equipment.reference()->catalogue, "own-plate"), nullptr);
    EXPECT_NE(find_collector(equipment.reference_with_withdrawn()->catalogue, "own-plate"), nullptr);
    QStringList withdrawn;
    const Job names_it = job_from_json(job_with_it(), "job").value();
    EXPECT_NE(find_collector(equipment.reference_for(names_it, withdrawn)->catalogue, "own-plate"), nullptr);
    EXPECT_EQ(withdrawn, QStringList{"own-plate"});
    withdrawn.clear();
    EXPECT_EQ(equipment.reference_for(test::demo_job(), withdrawn), equipment.reference());
    EXPECT_TRUE(withdrawn.isEmpty());
}

TEST_F(FirmEquipmentTest, AnItemThatCannotBeUsedIsToldAtTheStartAndHindersNothing) {
    auto opened = new_store();
    // Of an earlier program, say, that knew other blocks: no reader of today can know them.
    CylinderModel lost = program_->catalogue.cylinders.front();
    lost.id = "lost";
    lost.fits_blocks = {"nowhere"};
    ASSERT_TRUE(store::EquipmentBook(*opened).save(catalogue_to_json({{}, {}, {lost}, {}}), 0, later).ok());
    ASSERT_TRUE(store::EquipmentBook(*opened).save(own_collector(0.0), 0, later).ok());
    MainWindow window(std::move(opened), program_);
    EXPECT_TRUE(notice_of(window).contains("names the block 'nowhere'")) << notice_of(window).toStdString();
    ASSERT_TRUE(window.open_job_text(job_with_it(), "own-job.json"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.session()->settled(); }, patience_ms))
        << window.session()->plan_problem().toStdString();
}

TEST_F(FirmEquipmentTest, ClosingAsksBeforeEntriesAreLost) {
    MainWindow window(new_store(), program_);
    window.show();
    auto* desk = window.findChild<DeskPage*>();
    desk->show_equipment_tab();
    desk->equipment()->begin_new(store::ItemKind::cylinder);
    desk->equipment()->form()->box("name")->type("Half a cylinder");
    const auto answer = [](const QString& words) {
        QTimer::singleShot(0, qApp, [words] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            ASSERT_NE(box, nullptr);
            for (QAbstractButton* button : box->buttons()) {
                if (button->text() == words) button->click();
            }
        });
    };
    desk->show_tab(0);
    answer("Look at them");
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(desk->equipment()->isVisible());
    EXPECT_EQ(desk->equipment()->unsaved(), 1);
    answer("Close without them");
    EXPECT_TRUE(window.close());
}

}  // namespace
}  // namespace firm_equipment_test
}  // namespace wg::ui
