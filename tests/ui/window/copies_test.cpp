// A job goes from one desk to another as a file, both edit it, and it comes home.

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "core/store/travel.h"
#include "ui/common/edits.h"
#include "ui/common/notice_bar.h"
#include "ui/window/copies_dialog.h"
#include "ui/window/history_dialog.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace copies_test {
namespace {

std::optional<std::string> resource_of(const std::string& path) {
    QFile file(QStringLiteral(WG_RESOURCES_DIR "/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll().toStdString();
}

/// A desk with its window.
struct Desk {
    store::Store* store = nullptr;
    std::unique_ptr<MainWindow> window;

    Desk(const QString& file, const std::string& by, const std::shared_ptr<const plan::Reference>& reference) {
        auto opened = store::Store::open(file.toStdString(), Instant{1'800'000'000}, by);
        store = opened.value().get();
        window = std::make_unique<MainWindow>(std::move(opened).value(), reference);
        window->show();
    }
    [[nodiscard]] JobSession& session() const { return *window->session(); }
    [[nodiscard]] CopiesDialog* dialog() const {
        for (auto* one : window->findChildren<CopiesDialog*>()) {
            if (one->isVisible()) return one;
        }
        return nullptr;
    }
    void press(const QString& words) const {
        for (auto* button : window->findChildren<QPushButton*>()) {
            if (button->isVisible() && button->text() == words) {
                button->click();
                QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
                return;
            }
        }
        ADD_FAILURE() << "no button says " << words.toStdString();
    }
};

class Copies : public testing::Test {
   protected:
    static void SetUpTestSuite() {
        reference_ = std::make_shared<const plan::Reference>(plan::load_reference(&resource_of).value());
    }
    static void TearDownTestSuite() { reference_.reset(); }
    [[nodiscard]] Desk desk(const char* name) const {
        return {folder_.filePath(QString::fromLatin1(name) + QStringLiteral(".sqlite")), name, reference_};
    }
    [[nodiscard]] QString file(const char* name) const { return folder_.filePath(QString::fromLatin1(name)); }

    QTemporaryDir folder_;
    static std::shared_ptr<const plan::Reference> reference_;
};

std::shared_ptr<const plan::Reference> Copies::reference_;

TEST_F(Copies, a_job_comes_home_with_the_edits_of_both_desks_and_the_difference_is_decided) {
    Desk office = desk("Office");
    Desk tablet = desk("Tablet");
    ASSERT_TRUE(office.window->open_job_text(*resource_of("demo/job.json"), "demo/job.json"));
    ASSERT_TRUE(office.window->export_job_to(file("out.warmgable")));
    ASSERT_TRUE(tablet.window->open_job_file(file("out.warmgable")));
    EXPECT_EQ(tablet.dialog(), nullptr) << "a job that is new here just opens";
    EXPECT_EQ(tablet.session().job().client.name, office.session().job().client.name);

    set_notes(tablet.session(), QStringLiteral("From the roof").toStdString());
    tablet.session().edit(QStringLiteral("phone"), [](Job& job) { job.client.phone = "0555 0177"; });
    ASSERT_TRUE(tablet.window->export_job_to(file("back.warmgable")));
    set_notes(office.session(), "From the desk");

    ASSERT_TRUE(office.window->open_job_file(file("back.warmgable")));
    EXPECT_EQ(office.session().job().client.phone, "0555 0177");
    CopiesDialog* dialog = office.dialog();
    ASSERT_NE(dialog, nullptr);
    ASSERT_NE(dialog->taken_table(), nullptr);
    EXPECT_EQ(dialog->taken_table()->item(0, 2)->text(), QStringLiteral("\"0555 0177\""));
    QComboBox* sides = dialog->sides(0);
    const int roof = sides->findText(QStringLiteral("From the roof"), Qt::MatchContains);
    ASSERT_GE(roof, 0);
    EXPECT_TRUE(dialog->decided().empty()) << "nothing is decided for anybody";
    // The one that does not stand now.
    int wanted = -1;
    for (int i = 1; i < sides->count(); ++i) {
        if (!sides->itemText(i).contains(QString::fromStdString(office.session().job().notes))) wanted = i;
    }
    ASSERT_GT(wanted, 0);
    const bool wants_roof = sides->itemText(wanted).contains(QStringLiteral("From the roof"));
    sides->setCurrentIndex(wanted);
    office.press(QStringLiteral("Take the choices over"));
    EXPECT_EQ(office.session().job().notes, wants_roof ? "From the roof" : "From the desk");
    EXPECT_TRUE(store::Travel(*office.store).open_fields(office.session().job().id).value().empty());

    // The same file again brings nothing.
    const std::int64_t revision = office.session().job().revision;
    ASSERT_TRUE(office.window->open_job_file(file("back.warmgable")));
    EXPECT_EQ(office.session().job().revision, revision);
}

TEST_F(Copies, what_is_left_for_later_is_told_each_time_the_job_is_opened) {
    Desk office = desk("Office");
    Desk tablet = desk("Tablet");
    ASSERT_TRUE(office.window->open_job_text(*resource_of("demo/job.json"), "demo/job.json"));
    const std::string id = office.session().job().id;
    ASSERT_TRUE(office.window->export_job_to(file("out.warmgable")));
    ASSERT_TRUE(tablet.window->open_job_file(file("out.warmgable")));
    set_notes(tablet.session(), "From the roof");
    ASSERT_TRUE(tablet.window->export_job_to(file("back.warmgable")));
    set_notes(office.session(), "From the desk");
    ASSERT_TRUE(office.window->open_job_file(file("back.warmgable")));
    office.press(QStringLiteral("Decide later"));
    auto* page = office.window->findChild<JobPage*>();
    EXPECT_TRUE(page->notice().text().contains(QStringLiteral("Copies of this job differ")));
    ASSERT_TRUE(office.window->open_job(id));
    EXPECT_TRUE(page->notice().text().contains(QStringLiteral("Copies of this job differ")));
    office.press(QStringLiteral("Look at both"));
    EXPECT_NE(office.dialog(), nullptr);
}

TEST_F(Copies, a_save_that_came_second_is_put_together_with_the_first) {
    Desk here = desk("Office");
    ASSERT_TRUE(here.window->open_job_text(*resource_of("demo/job.json"), "demo/job.json"));
    const std::string id = here.session().job().id;
    // Another window on the same file saves in between.
    {
        const auto other = store::Store::open(file("Office.sqlite").toStdString(), Instant{1'800'000'100}, "Ada");
        Job theirs = other.value()->load(id).value();
        theirs.notes = "Theirs";
        theirs.client.phone = "0555 0144";
        ASSERT_TRUE(other.value()->save(theirs, Instant{1'800'000'200}).ok());
    }
    set_notes(here.session(), "Mine");
    here.session().edit(QStringLiteral("title"), [](Job& job) { job.title = "My title"; });
    auto* page = here.window->findChild<JobPage*>();
    ASSERT_TRUE(QTest::qWaitFor([page] { return page->notice().text().contains(QStringLiteral("Not saved")); }, 5000));
    here.press(QStringLiteral("Put both together"));
    CopiesDialog* dialog = here.dialog();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->decided().size(), 1U);
    QComboBox* sides = dialog->sides(0);
    sides->setCurrentIndex(sides->findText(QStringLiteral("Mine"), Qt::MatchContains));
    here.press(QStringLiteral("Save both together"));
    const Job saved = here.store->load(id).value();
    EXPECT_EQ(saved.notes, "Mine");
    EXPECT_EQ(saved.title, "My title");
    EXPECT_EQ(saved.client.phone, "0555 0144");
    EXPECT_EQ(here.session().job(), saved);
    EXPECT_FALSE(here.session().dirty());
}

TEST_F(Copies, an_earlier_revision_is_looked_at_and_brought_back_as_an_edit) {
    Desk office = desk("Office");
    ASSERT_TRUE(office.window->open_job_text(*resource_of("demo/job.json"), "demo/job.json"));
    const Job first = office.session().job();
    set_notes(office.session(), "Second thoughts");
    ASSERT_TRUE(office.window->export_job_to(file("saved.warmgable")));
    Reading reading;
    reading.kind = ReadingKind::vacuum_level;
    reading.taken_at = "2027-05-01T10:00:00+02:00";
    reading.value = 30.0;
    const std::string entry = append_reading(office.session(), reading);
    for (QAction* action : office.window->findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence(QStringLiteral("Ctrl+H"))) action->trigger();
    }
    auto* dialog = office.window->findChild<HistoryDialog*>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_EQ(dialog->revisions()->rowCount(), 3);
    dialog->revisions()->selectRow(1);
    ASSERT_EQ(dialog->changes()->rowCount(), 1);
    EXPECT_EQ(dialog->changes()->item(0, 0)->text(), QStringLiteral("Notes"));
    dialog->revisions()->selectRow(2);
    EXPECT_EQ(dialog->changes()->rowCount(), 0);
    dialog->back_button()->click();
    EXPECT_EQ(office.session().job().notes, first.notes);
    ASSERT_FALSE(office.session().job().record.empty());
    EXPECT_EQ(office.session().job().record.back().id, entry) << "the record only grows";
    ASSERT_TRUE(office.window->export_job_to(file("saved.warmgable"))) << "and it can be saved";
    office.session().undo_stack().undo();
    EXPECT_EQ(office.session().job().notes, "Second thoughts");
}

TEST_F(Copies, a_hostile_file_is_refused_in_words_and_changes_nothing) {
    Desk office = desk("Office");
    QFile bad(file("bad.warmgable"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write(QByteArray("PK\x03\x04") + QByteArray(500, 'x'));
    bad.close();
    bool told = false;
    QTimer::singleShot(0, [&told] {
        if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
            told = dialog->windowTitle() == QStringLiteral("This file cannot be taken in");
            dialog->close();
        }
    });
    EXPECT_FALSE(office.window->open_job_file(file("bad.warmgable")));
    EXPECT_TRUE(told);
    EXPECT_EQ(office.store->count("").value(), 0);
    EXPECT_EQ(office.window->session(), nullptr);
}

}  // namespace
}  // namespace copies_test
}  // namespace wg::ui
