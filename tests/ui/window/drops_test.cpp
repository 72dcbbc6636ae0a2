// Files let fall on the window, and the firm's rule sets on their way into plans.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QDropEvent>
#include <QFile>
#include <QLineEdit>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QUrl>

#include "core/equipment/codec.h"
#include "core/exchange/parcel.h"
#include "core/store/equipment_book.h"
#include "core/store/price_book.h"
#include "core/store/rule_book.h"
#include "core/store/travel.h"
#include "core/weather/write_plain.h"
#include "tests/tools/load_reference.h"
#include "ui/common/notice_bar.h"
#include "ui/desk/desk_page.h"
#include "ui/rules/rule_page.h"
#include "ui/window/file_drops.h"
#include "ui/window/file_kind.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace drops_test {
namespace {

constexpr Instant at_noon{1'800'000'000};

std::string resource(const char* path) {
    return test::read_resource(path).value();
}

std::string with_id(std::string text, const std::string& from, const std::string& to) {
    const std::string theirs = "\"id\": \"" + from + '"';
    return text.replace(text.find(theirs), theirs.size(), "\"id\": \"" + to + '"');
}

class DropsTest : public testing::Test {
   protected:
    static void SetUpTestSuite() { reference_ = std::make_shared<const plan::Reference>(test::reference()); }
    static void TearDownTestSuite() { reference_.reset(); }
    void SetUp() override {
        auto opened = store::Store::open(":memory:", at_noon, "Ada on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = opened.value().get();
        window_ = std::make_unique<MainWindow>(std::move(opened).value(), reference_);
        window_->set_program_rules({resource("rules/assumed.json")});
        window_->show();
        desk_ = window_->findChild<DeskPage*>();
        ASSERT_NE(desk_, nullptr);
    }
    QString file(const char* name, const std::string& bytes) {
        QFile out(folder_.filePath(QString::fromLatin1(name)));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes.data(), static_cast<qint64>(bytes.size()));
        return out.fileName();
    }
    /// Closes dialogs that ask for somebody to read them, and keeps their titles.
    void close_dialogs() {
        auto* timer = new QTimer(window_.get());
        QObject::connect(timer, &QTimer::timeout, window_.get(), [this] {
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
                titles_ << dialog->windowTitle();
                dialog->reject();
            }
        });
        timer->start(20);
    }

    static std::shared_ptr<const plan::Reference> reference_;
    QTemporaryDir folder_;
    store::Store* store_ = nullptr;
    std::unique_ptr<MainWindow> window_;
    DeskPage* desk_ = nullptr;
    QStringList titles_;
};

std::shared_ptr<const plan::Reference> DropsTest::reference_;

TEST(FileKindOf, files_are_told_by_what_they_hold) {
    EXPECT_EQ(kind_of_file(resource("demo/job.json")), FileKind::job);
    EXPECT_EQ(kind_of_file(resource("rules/assumed.json")), FileKind::rules);
    EXPECT_EQ(kind_of_file(resource("prices/invented.json")), FileKind::prices);
    EXPECT_EQ(kind_of_file(resource("equipment/invented.json")), FileKind::equipment);
    EXPECT_EQ(kind_of_file(weather::write_plain(test::reference().weather->year)), FileKind::weather);
    EXPECT_EQ(kind_of_file("LOCATION,Somewhere,-,-"), FileKind::weather);
    EXPECT_EQ(kind_of_file(std::string("PK\x03\x04rest", 8)), FileKind::exchange);
    for (const char* other : {"", "{", "{}", "{\"schema\": 1}", "[1]", "%PDF-1.7", "a;b;c\n1;2;3\n", "\xFF\xD8\xFF"})
        EXPECT_EQ(kind_of_file(other), FileKind::unknown) << other;
    EXPECT_EQ(kind_of_file(std::string(100000, '{')), FileKind::unknown);
    EXPECT_EQ(kind_of_file(std::string("\0LOCATION,", 10)), FileKind::unknown);
}

TEST_F(DropsTest, several_files_are_taken_one_after_the_other_each_in_its_place) {
    close_dialogs();
    const std::string rules = with_id(resource("rules/assumed.json"), "assumed", "firm-rules");
    const std::string prices = with_id(resource("prices/invented.json"), "invented-eur", "firm-prices");
    auto own = reference_->catalogue.cylinders.front();
    own.id = "own-cylinder";
    const std::string equipment = catalogue_to_json({{}, {}, {own}, {}});
    window_->take_files({file("a.txt", rules), file("b.bin", prices), file("c", equipment),
                         file("weather.json", weather::write_plain(reference_->weather->year)),
                         file("nothing.json", "{\"schema\": 1}"), folder_.filePath(QStringLiteral("no such file"))});
    EXPECT_EQ(store::RuleBook(*store_).content("firm-rules", 1).value(), rules);
    EXPECT_EQ(store::PriceBook(*store_).lists().value().size(), 1U);
    EXPECT_EQ(store::EquipmentBook(*store_).current().value().items.size(), 1U);
    EXPECT_EQ(store_->weather_years().value().size(), 1U);
    EXPECT_EQ(titles_.size(), 2) << titles_.join(QLatin1Char(';')).toStdString();
    const QString told = desk_->notice().text();
    EXPECT_EQ(told.count(QStringLiteral("not taken")), 2) << told.toStdString();
    for (const char* words :
         {"a.txt: rule set read", "b.bin: price list read", "c: equipment read", "weather.json: weather year kept"})
        EXPECT_TRUE(told.contains(QString::fromLatin1(words))) << words << " in " << told.toStdString();
    window_->take_files({file("job", resource("demo/job.json"))});
    ASSERT_NE(window_->session(), nullptr) << "a job file opens the job";
    window_->take_files({file("w2", weather::write_plain(reference_->weather->year))});
    EXPECT_EQ(window_->session()->job().weather.substr(0, 5), "year:") << "planned with it";
    window_->take_files({file("rules", with_id(rules, "firm-rules", "other-rules"))});
    EXPECT_EQ(window_->session(), nullptr) << "the job is saved and the desk shows the list";
    EXPECT_EQ(desk_->rules()->shown(), QStringLiteral("other-rules"));
}

TEST_F(DropsTest, what_falls_on_a_field_is_a_file_and_no_text) {
    const QString path = file("rules.json", with_id(resource("rules/assumed.json"), "assumed", "firm-rules"));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    EXPECT_EQ(FileDrops::files_in(&data), QStringList{path});
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(desk_->search(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(desk_->search(), &drop);
    EXPECT_TRUE(desk_->search()->text().isEmpty());
    EXPECT_TRUE(QTest::qWaitFor([this] { return store::RuleBook(*store_).sets().value().size() == 1; }, 5000));
    QMimeData text;
    text.setUrls({QUrl(QStringLiteral("https://example.invalid/x"))});
    EXPECT_TRUE(FileDrops::files_in(&text).isEmpty());
    EXPECT_TRUE(FileDrops::files_in(nullptr).isEmpty());
}

TEST_F(DropsTest, a_job_from_another_machine_is_taken_in_with_the_rules_it_is_planned_with) {
    close_dialogs();
    auto other = store::Store::open(":memory:", at_noon, "Ben on tablet").value();
    Job job = test::demo_job();
    job.rule_set = "their-rules";
    job = other->save(job, at_noon).value();
    const std::string rules = with_id(resource("rules/assumed.json"), "assumed", "their-rules");
    ASSERT_TRUE(store::RuleBook(*other).save("their-rules", rules, 0, "", at_noon).ok());
    const auto sent = store::Travel(*other).parcel_of(job.id, "Warmgable test", at_noon);
    ASSERT_TRUE(sent.ok()) << text_of(sent.problems());
    window_->take_files({file("sent", exchange::pack(sent.value().parcel).value())});
    ASSERT_NE(window_->session(), nullptr);
    EXPECT_EQ(window_->session()->reference().rule_sets.count("their-rules"), 1U);
    EXPECT_EQ(store::RuleBook(*store_).content("their-rules", 1).value(), rules);
}

TEST_F(DropsTest, new_jobs_take_the_set_the_firm_chose_and_a_withdrawn_one_stays_with_its_jobs) {
    store::RuleBook book(*store_);
    ASSERT_TRUE(book.save("a-firm", with_id(resource("rules/assumed.json"), "assumed", "a-firm"), 0, "", at_noon).ok());
    Q_EMIT desk_->firms_own_changed();
    Q_EMIT desk_->new_asked();
    ASSERT_NE(window_->session(), nullptr);
    EXPECT_EQ(window_->session()->job().rule_set, "assumed") << "none was chosen; not the first by id";
    ASSERT_TRUE(book.choose_for_new_jobs("a-firm").ok());
    Q_EMIT desk_->new_asked();
    const std::string id = window_->session()->job().id;
    EXPECT_EQ(window_->session()->job().rule_set, "a-firm");
    ASSERT_TRUE(book.withdraw("a-firm", 1, "", at_noon).ok());
    Q_EMIT desk_->firms_own_changed();
    Q_EMIT desk_->new_asked();
    EXPECT_EQ(window_->session()->job().rule_set, "assumed");
    EXPECT_EQ(window_->session()->reference().rule_sets.count("a-firm"), 0U) << "not to be chosen";
    ASSERT_TRUE(window_->open_job(id));
    EXPECT_EQ(window_->session()->reference().rule_sets.count("a-firm"), 1U) << "its own job goes on with it";
}

}  // namespace
}  // namespace drops_test
}  // namespace wg::ui
