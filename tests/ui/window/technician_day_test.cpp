// A technician's whole day through the real window: the sheet printed, every part of the work entered, a hold that
// fails and is repaired, signatures, the record read back from the store, and one byte altered there.

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDateTime>
#include <QFile>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPushButton>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "core/quantity/sha256.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/common/edits.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/services_page.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/print_check.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/print_row.h"
#include "ui/fitting/signature_pad.h"
#include "ui/fitting/whole_record_page.h"
#include "ui/fitting/work_page.h"
#include "ui/window/job_files.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace technician_day_test {
namespace {

constexpr int patience_ms = 60000;  ///< a whole year of operation on a busy machine
constexpr int fitting_stage = 4;
constexpr int aftercare_stage = 5;

std::optional<std::string> resource_text(const std::string& path) {
    QFile file(QStringLiteral(WG_RESOURCES_DIR "/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll().toStdString();
}

class TechnicianDay : public testing::Test {
   protected:
    void SetUp() override {
        Result<plan::Reference> reference = plan::load_reference(&resource_text);
        ASSERT_TRUE(reference.ok()) << text_of(reference.problems());
        reference_ = std::make_shared<const plan::Reference>(std::move(reference).value());
        path_ = folder_.filePath(QStringLiteral("desk.sqlite"));
    }
    void open_window() {
        auto store = store::Store::open(path_.toStdString(), Instant{1'790'000'000});
        ASSERT_TRUE(store.ok()) << text_of(store.problems());
        store_ = store.value().get();
        window_ = std::make_unique<MainWindow>(std::move(store).value(), reference_);
        window_->show();
    }
    [[nodiscard]] bool settle() {
        return QTest::qWaitFor([this] { return window_->session()->settled(); }, patience_ms);
    }
    void press(const QKeySequence& keys) {
        for (QAction* action : window_->findChildren<QAction*>())
            if (action->shortcut() == keys) return action->trigger();
        ADD_FAILURE() << "nothing on " << keys.toString().toStdString();
    }
    void go_desk() {
        press(QKeySequence(QStringLiteral("Ctrl+D")));
        ASSERT_EQ(window_->session(), nullptr);
    }
    [[nodiscard]] DeskPage& desk() { return *window_->findChild<DeskPage*>(); }
    void go_fitting() {
        window_->show_stage(fitting_stage);
        stage_ = window_->findChild<FittingStage*>();
        ASSERT_NE(stage_, nullptr);
        stage_->tabs().setCurrentWidget(&stage_->day());
    }
    [[nodiscard]] WorkPage& day() { return stage_->day(); }
    [[nodiscard]] QLineEdit& field(const char* name) {
        return *day().form().findChild<QLineEdit*>(QString::fromLatin1(name));
    }
    void name_person(const char* who) {
        day().form().findChild<QComboBox*>(QStringLiteral("who"))->setEditText(QString::fromLatin1(who));
    }
    /// Opens the entry of that kind where the work wants it.
    void open(ReadingKind kind, const std::string& subject = {}) {
        const auto& stages = day().stages();
        for (std::size_t s = 0; s < stages.size(); ++s)
            for (std::size_t w = 0; w < stages[s].wants.size(); ++w)
                if (stages[s].wants[w].kind == kind && (subject.empty() || stages[s].wants[w].subject == subject))
                    return day().open_want(static_cast<int>(s), static_cast<int>(w));
        ADD_FAILURE() << "nothing wants kind " << static_cast<int>(kind) << ' ' << subject;
    }
    void press_enter(const char* at) {
        field("at").setText(QString::fromLatin1(at));
        const std::size_t before = window_->session()->job().record.size();
        day().form().findChild<QPushButton*>(QStringLiteral("enter"))->click();
        ASSERT_EQ(window_->session()->job().record.size(), before + 1) << day().form().problem().toStdString();
    }
    void read(ReadingKind kind, const char* value, const char* at, const char* second = "") {
        open(kind);
        field("value").setText(QString::fromLatin1(value));
        field("second").setText(QString::fromLatin1(second));
        if (kind == ReadingKind::pressure_hold_start || kind == ReadingKind::pressure_hold_end)
            field("indoors").setText(QStringLiteral("20"));
        day().form().findChild<QComboBox*>(QStringLiteral("instrument"))->setEditText(QStringLiteral("gauge 7"));
        name_person("A. Reed");
        press_enter(at);
    }
    void answer(ReadingKind kind, bool yes, const char* at, const std::string& subject = {}) {
        open(kind, subject);
        name_person("A. Reed");
        day().form().findChild<QPushButton*>(yes ? QStringLiteral("yes") : QStringLiteral("no"))->click();
        press_enter(at);
    }
    void sign(const char* role, const char* who, const char* at) {
        open(ReadingKind::signature, role);
        name_person(who);
        SignaturePad& pad = day().form().signature();
        QTest::mousePress(&pad, Qt::LeftButton, {}, QPoint(20, 40));
        for (const QPointF& to : {QPointF(60, 20), QPointF(90, 70), QPointF(140, 40)}) {
            QMouseEvent move(QEvent::MouseMove, to, to, Qt::LeftButton, Qt::LeftButton, {});
            QCoreApplication::sendEvent(&pad, &move);
        }
        QTest::mouseRelease(&pad, Qt::LeftButton, {}, QPoint(140, 40));
        press_enter(at);
    }
    [[nodiscard]] const commissioning::Assessment* assessment(const char* subject) {
        for (const auto& one : window_->session()->plan()->assessments)
            if (one.subject == subject) return &one;
        return nullptr;
    }
    /// What a hand with a database tool does; `hashed`: it also knows of the text's hash.
    void alter(const std::string& job_id, const QByteArray& from, const QByteArray& to, bool hashed) {
        {
            QSqlDatabase raw = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("hand"));
            raw.setDatabaseName(path_);
            ASSERT_TRUE(raw.open());
            QSqlQuery query(raw);
            ASSERT_TRUE(query.exec(QStringLiteral("DROP TRIGGER job_revision_no_update"))) << "altered once already";
            query.prepare(
                QStringLiteral("SELECT revision, content FROM job_revision WHERE job_id = ? "
                               "ORDER BY revision DESC LIMIT 1"));
            query.addBindValue(QString::fromStdString(job_id));
            ASSERT_TRUE(query.exec() && query.next());
            const qint64 revision = query.value(0).toLongLong();
            QByteArray content = query.value(1).toString().toUtf8();
            ASSERT_EQ(content.count(from), 1) << "the place to alter is not the only one";
            content.replace(from, to);
            query.prepare(
                QStringLiteral("UPDATE job_revision SET content = ?, text_sha256 = CASE WHEN ? THEN ? ELSE "
                               "text_sha256 END WHERE job_id = ? AND revision = ?"));
            query.addBindValue(QString::fromUtf8(content));
            query.addBindValue(hashed);
            query.addBindValue(QString::fromStdString(sha256_hex(content.toStdString())));
            query.addBindValue(QString::fromStdString(job_id));
            query.addBindValue(revision);
            ASSERT_TRUE(query.exec()) << query.lastError().text().toStdString();
        }
        QSqlDatabase::removeDatabase(QStringLiteral("hand"));
    }

    QTemporaryDir folder_;
    QString path_;
    std::shared_ptr<const plan::Reference> reference_;
    store::Store* store_ = nullptr;
    std::unique_ptr<MainWindow> window_;
    FittingStage* stage_ = nullptr;
};

TEST_F(TechnicianDay, from_the_printed_sheet_to_a_record_that_shows_one_altered_byte) {
    using K = ReadingKind;
    open_window();
    ASSERT_TRUE(window_->open_job_text(*resource_text("demo/job.json"), "demo/job.json"));
    // It lies on the desk from now on, and is opened from there.
    go_desk();
    QTest::keyClick(desk().table(), Qt::Key_Return);
    ASSERT_NE(window_->session(), nullptr);
    ASSERT_TRUE(settle()) << window_->session()->plan_problem().toStdString();
    go_fitting();
    const QString sheet = folder_.filePath(QStringLiteral("install-sheet.pdf"));
    ASSERT_TRUE(stage_->findChild<PaperPane*>()->save_to(sheet));
    QFile printed(sheet);
    ASSERT_TRUE(printed.open(QIODevice::ReadOnly));
    EXPECT_TRUE(printed.read(5).startsWith("%PDF"));
    // The print in hand is held against the plan.
    stage_->print_row().field().setText(print_code(stage_->findChild<PaperPane*>()->input()->plan));
    EXPECT_TRUE(stage_->print_row().answer().contains(QStringLiteral("is the present plan")))
        << stage_->print_row().answer().toStdString();

    // Place and water.
    const std::vector<Want> first_wants = day().stages().front().wants;  // a copy: the parts are made anew at an entry
    for (std::size_t at = 0; at < first_wants.size(); ++at) {
        if (first_wants[at].kind != K::serial_number) continue;
        day().open_want(0, static_cast<int>(at));
        name_person("A. Reed");
        field("note").setText(QStringLiteral("SN-%1").arg(at));
        press_enter("2026-06-01 08:10");
    }
    answer(K::hold_point, true, "2026-06-01 08:40", "Fixing points and seals");
    answer(K::hold_point, true, "2026-06-01 08:45", "Condenser and cylinder");
    answer(K::water_vented, true, "2026-06-01 08:50");
    read(K::cold_pressure, "3.4", "2026-06-01 08:52");
    answer(K::safety_valve_lift, true, "2026-06-01 08:54");
    answer(K::hold_point, true, "2026-06-01 08:56", "Water side full and tight");
    // A hold that loses a tenth at both temperatures unchanged, and is held.
    read(K::pressure_hold_start, "28,0", "2026-06-01 09:00", "18");
    read(K::pressure_hold_end, "25.2", "2026-06-01 10:00", "18");
    ASSERT_TRUE(settle());
    const auto* hold = assessment("Pressure hold");
    ASSERT_NE(hold, nullptr);
    EXPECT_EQ(hold->verdict, commissioning::Verdict::failed) << hold->words;
    EXPECT_FALSE(hold->next.empty()) << "a fail says what to do now";
    day().refresh();
    EXPECT_EQ(state_of(day().stages()[2], entries_of(window_->session()->job().record, Occasion::fitting, {}),
                       window_->session()->plan()->assessments)
                  .mark,
              Mark::stop);
    answer(K::hold_point, false, "2026-06-01 10:05", "Pressure hold passed");
    // Repaired, held again over a day, released.
    day().set_occasion(Occasion::repair);
    day().open_kind(K::remark);
    name_person("A. Reed");
    field("note").setText(QStringLiteral("Flare at the block made anew"));
    press_enter("2026-06-01 10:40");
    EXPECT_EQ(window_->session()->job().record.back().occasion, Occasion::repair);
    read(K::pressure_hold_start, "28.0", "2026-06-01 11:00", "18");
    read(K::pressure_hold_end, "28.0", "2026-06-02 11:00", "18");
    ASSERT_TRUE(settle());
    hold = assessment("Pressure hold");
    ASSERT_NE(hold, nullptr);
    EXPECT_EQ(hold->verdict, commissioning::Verdict::passed) << hold->words << ' ' << hold->next;
    answer(K::hold_point, true, "2026-06-02 11:05", "Pressure hold passed");
    // Evacuation, electrical, start, first heating.
    read(K::vacuum_level, "50", "2026-06-02 12:00", "15");
    read(K::vacuum_after_rise, "52", "2026-06-02 12:10", "15");
    read(K::vacuum_after_rise, "53", "2026-06-02 12:20", "15");
    read(K::vacuum_after_rise, "53.5", "2026-06-02 12:30", "15");
    ASSERT_TRUE(settle());
    const auto* vacuum = assessment("Evacuation");
    ASSERT_NE(vacuum, nullptr);
    EXPECT_EQ(vacuum->verdict, commissioning::Verdict::passed) << vacuum->words;
    ASSERT_TRUE(vacuum->curve.has_value());
    EXPECT_EQ(vacuum->curve->read.size(), 4U);
    answer(K::hold_point, true, "2026-06-02 12:31", "Vacuum holds");
    if (window_->session()->plan()->expected.extra_charge_kg > 0.0)
        read(K::charge_added, QByteArray::number(window_->session()->plan()->expected.extra_charge_kg).constData(),
             "2026-06-02 12:45");
    read(K::protective_conductor, "0.2", "2026-06-02 13:00");
    read(K::insulation_resistance, "200", "2026-06-02 13:02");
    read(K::earth_resistance, "12", "2026-06-02 13:04");
    read(K::residual_current_trip, "24", "2026-06-02 13:06");
    read(K::supply_voltage, "231", "2026-06-02 13:08");
    answer(K::hold_point, true, "2026-06-02 13:10", "Electrical tests");
    read(K::heating_start, "14", "2026-06-02 13:20", "19");
    read(K::outdoor_temperature, "19", "2026-06-02 13:50");
    read(K::suction_temperature, "9", "2026-06-02 13:51");
    read(K::discharge_temperature, "68", "2026-06-02 13:52");
    read(K::supply_current, "2.6", "2026-06-02 13:53");
    read(K::heating_end, "55", "2026-06-02 18:40", "18");
    read(K::water_temperature, "55", "2026-06-02 18:41");
    read(K::tap_temperature, "44", "2026-06-02 18:42");
    read(K::set_point, "55", "2026-06-02 18:42");
    sign("installer", "A. Reed", "2026-06-02 18:50");
    sign("client", "I. Fennimore", "2026-06-02 18:52");
    answer(K::hold_point, true, "2026-06-02 18:55", "Hand over");
    EXPECT_EQ(window_->session()->undo_stack().count(), 0) << "the record is no step to undo";

    // Nothing that the work needs is left, and no part stands at a stop.
    ASSERT_TRUE(settle());
    day().set_occasion(Occasion::fitting);
    for (const WorkStage& part : day().stages()) {
        const std::vector<Reading> standing = entries_of(window_->session()->job().record, Occasion::fitting, {});
        for (const Want& want : part.wants)
            if (want.needed)
                EXPECT_NE(entry_for(want, standing), nullptr)
                    << part.title.toStdString() << ": " << want.name.toStdString();
        const WorkState state = state_of(part, standing, window_->session()->plan()->assessments);
        EXPECT_NE(state.mark, Mark::stop) << part.title.toStdString() << ": " << state.words.toStdString();
    }
    // The record on paper: of the job with the last signature.
    ASSERT_TRUE(settle());
    const QString record_pdf = folder_.filePath(QStringLiteral("record.pdf"));
    ASSERT_TRUE(stage_->save_record(record_pdf));
    QFile recorded(record_pdf);
    ASSERT_TRUE(recorded.open(QIODevice::ReadOnly));
    EXPECT_TRUE(recorded.read(5).startsWith("%PDF"));
    EXPECT_EQ(stage_->findChild<PaperPane*>()->input()->job.record, window_->session()->job().record);

    // Saved on the way to the desk, exported, read back: the chain is whole.
    const std::string job_id = window_->session()->job().id;
    const std::vector<Reading> entered = window_->session()->job().record;
    const QString file = folder_.filePath(job_file_name(window_->session()->job()));
    const auto written = write_job_file(file, window_->session()->job());
    ASSERT_TRUE(written.ok()) << text_of(written.problems());
    const auto text = read_job_file(file);
    ASSERT_TRUE(text.ok());
    const Result<Job> exported = job_from_json(text.value(), "export.json");
    ASSERT_TRUE(exported.ok()) << text_of(exported.problems());
    EXPECT_EQ(exported.value().record, entered);
    stage_->tabs().setCurrentWidget(&stage_->record_page());
    stage_->record_page().refresh();
    EXPECT_TRUE(stage_->record_page().state_text().contains(QStringLiteral("%1 entries, whole").arg(entered.size())))
        << stage_->record_page().state_text().toStdString();
    press(QKeySequence(QKeySequence::Save));
    const Result<Job> stored = store_->load(job_id);
    ASSERT_TRUE(stored.ok());
    EXPECT_EQ(stored.value().record, entered);
    EXPECT_TRUE(check_chain(stored.value().record).whole());
    EXPECT_EQ(check_chain(stored.value().record).chained, entered.size());
    int signatures = 0;
    for (const Reading& one : stored.value().record) {
        if (one.kind != K::signature) continue;
        ++signatures;
        EXPECT_TRUE(store_->photograph(one.attachment_sha256).ok()) << "the drawing is in the store by its hash";
    }
    EXPECT_EQ(signatures, 2);
    EXPECT_EQ(store_->check().value(), "ok");

    // What was started has a service due a year on.
    window_->show_stage(aftercare_stage);
    ASSERT_TRUE(QTest::qWaitFor(
        [this] {
            for (const QTableWidget* table : window_->findChild<AftercareStage*>()->findChildren<QTableWidget*>())
                for (int row = 0; row < table->rowCount(); ++row)
                    for (int column = 0; column < table->columnCount(); ++column)
                        if (table->item(row, column) != nullptr &&
                            table->item(row, column)->text().contains(QStringLiteral("2027")))
                            return true;
            return false;
        },
        5000));

    // The desk lists it, in a week of that year, with the house it is at.
    const std::string number = window_->session()->job().number;
    go_desk();
    ServicesPage& services = *desk().services();
    ASSERT_TRUE(QTest::qWaitFor([&] { return services.next_of(job_id) != nullptr; }, 5000));
    EXPECT_EQ(services.next_of(job_id)->due_on.substr(0, 4), "2027") << services.next_of(job_id)->due_on;
    const auto due = store_->services_due("9999-12-31");
    ASSERT_TRUE(due.ok());
    const auto ours = std::count_if(due.value().begin(), due.value().end(),
                                    [&](const store::ServiceDueRow& row) { return row.job_id == job_id; });
    EXPECT_GE(ours, 1);
    services.choose(ServicesPage::everything);
    std::size_t listed = 0;
    for (const DueWeek& week : services.weeks())
        for (const DueVisit& visit : week.visits)
            if (visit.house.job_id == job_id) listed += visit.services.size();
    EXPECT_EQ(listed, static_cast<std::size_t>(ours));
    bool shown = false;
    for (int row = 0; row < services.table()->rowCount(); ++row)
        for (int column = 0; column < services.table()->columnCount(); ++column)
            if (const auto* item = services.table()->item(row, column))
                shown = shown || item->text().contains(QString::fromStdString(number));
    EXPECT_TRUE(shown) << "the job's number stands in the list";
    // Opened again, the record is what was entered and its chain whole.
    ASSERT_TRUE(window_->open_job(job_id));
    ASSERT_TRUE(settle());
    EXPECT_EQ(window_->session()->job().record, entered);
    go_fitting();
    stage_->record_page().refresh();
    EXPECT_TRUE(stage_->record_page().state_text().contains(QStringLiteral("%1 entries, whole").arg(entered.size())))
        << stage_->record_page().state_text().toStdString();

    // One digit of a reading altered, with the hash of the text beside it made anew: only the chain tells.
    window_.reset();
    alter(job_id, "\"value\": 200", "\"value\": 900", true);
    open_window();
    ASSERT_TRUE(window_->open_job(job_id));
    ASSERT_TRUE(settle());
    go_fitting();
    EXPECT_FALSE(check_chain(window_->session()->job().record).whole());
    EXPECT_TRUE(stage_->record_page().state_text().contains(QStringLiteral("is not what was entered")))
        << stage_->record_page().state_text().toStdString();
    window_.reset();
}

TEST_F(TechnicianDay, a_byte_altered_without_its_hash_is_found_by_the_store) {
    open_window();
    ASSERT_TRUE(window_->open_job_text(*resource_text("demo/job.json"), "demo/job.json"));
    go_fitting();
    read(ReadingKind::insulation_resistance, "237", "2026-06-02 13:02");
    const std::string job_id = window_->session()->job().id;
    press(QKeySequence(QKeySequence::Save));
    ASSERT_EQ(store_->load(job_id).value().record.size(), 1U);
    window_.reset();
    alter(job_id, "\"value\": 237", "\"value\": 937", false);
    auto store = store::Store::open(path_.toStdString(), Instant{1'790'000'100});
    ASSERT_TRUE(store.ok()) << text_of(store.problems());
    EXPECT_NE(store.value()->check().value().find("no longer has its hash"), std::string::npos)
        << store.value()->check().value();
    EXPECT_FALSE(store.value()->load(job_id).ok()) << "what lost its hash is not shown as if it were whole";
}

}  // namespace
}  // namespace technician_day_test
}  // namespace wg::ui
