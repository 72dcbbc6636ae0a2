// The day's work: parts and their state, entry in the units of the gauge, what goes with it, the log of a gauge, the
// chain in words.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMouseEvent>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/edits.h"
#include "ui/common/job_session.h"
#include "ui/fitting/chain_words.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/log_dialog.h"
#include "ui/fitting/number_pad.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/signature_pad.h"
#include "ui/fitting/whole_record_page.h"
#include "ui/fitting/work_page.h"

namespace wg::ui {
namespace day_test {
namespace {

const QString morning = QStringLiteral("2026-06-01T09:00:00+01:00");

std::unique_ptr<JobSession> open_day() {
    auto made =
        std::make_unique<JobSession>(sample::job(), std::make_shared<const plan::Reference>(),
                                     [](const Job& job, const plan::Reference&,
                                        const plan::Options&) -> Result<plan::Plan> { return sample::plan(job); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

QLineEdit& field(QWidget& form, const char* name) {
    return *form.findChild<QLineEdit*>(QString::fromLatin1(name));
}
void name_person(QWidget& form, const char* who) {
    form.findChild<QComboBox*>(QStringLiteral("who"))->setEditText(QString::fromLatin1(who));
}
QPushButton& button(QWidget& in, const QString& text) {
    for (QPushButton* one : in.findChildren<QPushButton*>())
        if (one->text() == text) return *one;
    ADD_FAILURE() << "no button " << text.toStdString();
    static QPushButton none;
    return none;
}

Reading entry(ReadingKind kind, double value, const char* subject = "") {
    static int number = 0;
    Reading r;
    r.id = "id" + std::to_string(++number);
    r.kind = kind;
    r.value = value;
    r.subject = subject;
    r.taken_at = morning.toStdString();
    return r;
}

TEST(DayForm, a_gauge_in_psi_and_fahrenheit_is_kept_in_bar_and_celsius) {
    ReadingForm form;
    form.choose_kind(ReadingKind::pressure_hold_start);
    name_person(form, "A. Reed");
    const auto switches = form.findChildren<UnitSwitch*>();
    ASSERT_EQ(switches.size(), 3);
    switches[0]->choose(QStringLiteral("psi"));
    switches[1]->choose(QStringLiteral("°F"));
    field(form, "value").setText(QStringLiteral("362,594"));
    field(form, "second").setText(QStringLiteral("64.4"));
    auto reading = form.reading(morning);
    ASSERT_TRUE(reading) << form.problem().toStdString();
    EXPECT_NEAR(reading->value, 25.0, 1e-4);
    EXPECT_NEAR(*reading->second_value, 18.0, 1e-9);
    // 362 bar cannot be meant, 362 psi can: the range is that of the record.
    switches[0]->choose(QStringLiteral("bar"));
    EXPECT_FALSE(form.reading(morning));
    EXPECT_TRUE(form.problem().contains(QStringLiteral("bar")));
}

TEST(DayForm, the_unit_chosen_stays_for_the_next_entry_and_the_next_day) {
    std::map<QString, QString> kept;
    const SettingSource source{[&](const QString& key) { return kept[key]; },
                               [&](const QString& key, const QString& value) { kept[key] = value; }};
    ReadingForm form;
    form.set_source(source);
    form.choose_kind(ReadingKind::vacuum_level);
    form.findChildren<UnitSwitch*>()[0]->choose(QStringLiteral("micron"));
    field(form, "value").setText(QStringLiteral("500"));
    name_person(form, "A. Reed");
    form.findChild<QComboBox*>(QStringLiteral("instrument"))->setEditText(QStringLiteral("vacuum gauge 3"));
    field(form, "calibrated").setText(QStringLiteral("2026-03-01"));
    const auto reading = form.reading(morning);
    ASSERT_TRUE(reading) << form.problem().toStdString();
    EXPECT_NEAR(reading->value, 66.66, 0.01);
    EXPECT_EQ(reading->calibrated_on, "2026-03-01");
    form.entered(*reading);

    ReadingForm tomorrow;
    tomorrow.set_source(source);
    tomorrow.choose_kind(ReadingKind::vacuum_after_rise);
    EXPECT_EQ(tomorrow.findChildren<UnitSwitch*>()[0]->unit(), QStringLiteral("micron"));
    EXPECT_EQ(tomorrow.findChild<QComboBox*>(QStringLiteral("instrument"))->currentText(),
              QStringLiteral("vacuum gauge 3"));
    EXPECT_EQ(field(tomorrow, "calibrated").text(), QStringLiteral("2026-03-01"));
    EXPECT_EQ(tomorrow.findChild<QComboBox*>(QStringLiteral("who"))->currentText(), QStringLiteral("A. Reed"));
    tomorrow.choose_kind(ReadingKind::supply_current);
    EXPECT_TRUE(tomorrow.findChild<QComboBox*>(QStringLiteral("instrument"))->currentText().isEmpty())
        << "a vacuum gauge reads no current";
}

TEST(DayForm, large_buttons_type_into_the_field_touched_last) {
    ReadingForm form;
    form.choose_kind(ReadingKind::pressure_hold_start);
    form.show();
    auto& pad = *form.findChild<NumberPad*>();
    form.start();
    for (const char* key : {"2", "4", ". ,", "9"})
        button(pad, QString::fromLatin1(key)).click();
    EXPECT_EQ(field(form, "value").text(), QStringLiteral("24.9"));
    button(pad, QStringLiteral("\u232b")).click();
    EXPECT_EQ(field(form, "value").text(), QStringLiteral("24."));
    pad.type_into(&field(form, "second"));
    for (const char* key : {"5"})
        button(pad, QString::fromLatin1(key)).click();
    button(pad, QStringLiteral("\u2212")).click();
    EXPECT_EQ(field(form, "second").text(), QStringLiteral("-5"));
    for (const QPushButton* one : pad.findChildren<QPushButton*>())
        EXPECT_GE(one->sizeHint().height(), 20) << one->text().toStdString();
}

TEST(DayForm, a_time_of_its_own_is_taken_when_it_is_not_to_come) {
    const QDateTime now = QDateTime::fromString(QStringLiteral("2026-06-01T12:00:00"), Qt::ISODate);
    EXPECT_EQ(time_of({}, now), now);
    EXPECT_EQ(time_of(QStringLiteral("9:40"), now)->time(), QTime(9, 40));
    EXPECT_EQ(time_of(QStringLiteral("2026-05-31 16:05"), now)->date(), QDate(2026, 5, 31));
    EXPECT_FALSE(time_of(QStringLiteral("12:01"), now));
    EXPECT_FALSE(time_of(QStringLiteral("noon"), now));
}

TEST(DayForm, a_signature_needs_strokes_and_a_name_and_is_kept_by_its_hash) {
    ReadingForm form;
    QByteArray bytes;
    form.set_keep([&](const QByteArray& png) -> Result<std::string> {
        bytes = png;
        return sha256_hex({png.constData(), static_cast<std::size_t>(png.size())});
    });
    form.choose({ReadingKind::signature, "client", QStringLiteral("Signature of the client"), true, {}}, {});
    name_person(form, "P. Client");
    EXPECT_FALSE(form.reading(morning)) << "nothing is drawn";
    QTest::mousePress(&form.signature(), Qt::LeftButton, {}, QPoint(20, 40));
    QMouseEvent move(QEvent::MouseMove, QPointF(80, 60), QPointF(80, 60), Qt::LeftButton, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&form.signature(), &move);
    QTest::mouseRelease(&form.signature(), Qt::LeftButton, {}, QPoint(80, 60));
    const auto reading = form.reading(morning);
    ASSERT_TRUE(reading) << form.problem().toStdString();
    EXPECT_TRUE(bytes.startsWith("\x89PNG"));
    EXPECT_EQ(reading->attachment_sha256.size(), 64U);
    EXPECT_EQ(reading->subject, "client");
    EXPECT_EQ(reading->taken_by, "P. Client");
}

TEST(WorkStages, every_kind_of_the_day_has_its_place_and_the_state_follows_the_entries) {
    const Job job = sample::job();
    const plan::Plan plan = sample::plan(job);
    const auto stages = work_stages(job, &plan);
    ASSERT_EQ(stages.size(), 9U);
    // Every hold point of the install sheet stands in the part that it closes.
    std::vector<std::pair<std::size_t, std::string>> holds;
    for (std::size_t part = 0; part < stages.size(); ++part)
        for (const Want& want : stages[part].wants)
            if (want.kind == ReadingKind::hold_point) holds.emplace_back(part, want.subject);
    const std::vector<std::pair<std::size_t, std::string>> placed = {{0, "Fixing points and seals"},
                                                                     {0, "Condenser and cylinder"},
                                                                     {1, "Water side full and tight"},
                                                                     {2, "Pressure hold passed"},
                                                                     {3, "Vacuum holds"},
                                                                     {5, "Electrical tests"},
                                                                     {8, "Hand over"}};
    EXPECT_EQ(holds, placed);
    const WorkStage& hold = stages[2];
    EXPECT_EQ(state_of(hold, {}, {}).mark, Mark::empty);
    std::vector<Reading> record = {entry(ReadingKind::pressure_hold_start, 25.0)};
    EXPECT_EQ(state_of(hold, record, {}).mark, Mark::begun);
    record.push_back(entry(ReadingKind::pressure_hold_end, 20.0));
    commissioning::Assessment failed;
    failed.verdict = commissioning::Verdict::failed;
    failed.reading_ids = {record[0].id, record[1].id};
    EXPECT_EQ(state_of(hold, record, {failed}).mark, Mark::stop);
    EXPECT_EQ(state_of(stages[3], record, {failed}).mark, Mark::empty) << "evacuation has none of it";
    commissioning::Assessment passed = failed;
    passed.verdict = commissioning::Verdict::passed;
    EXPECT_EQ(state_of(hold, record, {passed}).mark, Mark::begun) << "its hold point is still to be released";
    record.push_back(entry(ReadingKind::hold_point, 0.0, hold.wants.back().subject.c_str()));
    EXPECT_EQ(state_of(hold, record, {passed}).words, QStringLiteral("held"));
    record.push_back(entry(ReadingKind::hold_point, 1.0, hold.wants.back().subject.c_str()));
    EXPECT_EQ(state_of(hold, record, {passed}).mark, Mark::ready);
}

TEST(WorkStages, a_service_is_looked_at_on_its_own_and_asks_for_no_pressure_hold) {
    const Job job = sample::job();
    const plan::Plan plan = sample::plan(job);
    Reading fitting = entry(ReadingKind::supply_current, 4.0);
    Reading service = entry(ReadingKind::supply_current, 4.5);
    service.occasion = Occasion::service;
    const QDate day = QDateTime::fromString(morning, Qt::ISODate).toLocalTime().date();
    EXPECT_EQ(entries_of({fitting, service}, Occasion::fitting, day), std::vector<Reading>{fitting});
    EXPECT_EQ(entries_of({fitting, service}, Occasion::repair, day), std::vector<Reading>{fitting});
    EXPECT_EQ(entries_of({fitting, service}, Occasion::service, day), std::vector<Reading>{service});
    EXPECT_TRUE(entries_of({fitting, service}, Occasion::service, day.addYears(1)).empty());
    for (const Want& want : work_stages(job, &plan, true)[2].wants)
        EXPECT_FALSE(want.needed);
}

TEST(WorkPageTest, the_list_shows_what_is_entered_and_scanned_numbers_follow_one_another) {
    const auto session = open_day();
    FittingStage stage;
    stage.set_session(session.get());
    WorkPage& day = stage.day();
    stage.show();
    day.open_want(0, 0);
    EXPECT_TRUE(day.entering());
    name_person(day, "A. Reed");
    for (const char* number : {"C-1001", "B-2002", "Y-3003"}) {
        // A scanner types and presses Return.
        QLineEdit& note = field(day.form(), "note");
        note.setText(QString::fromLatin1(number));
        QTest::keyClick(&note, Qt::Key_Return);
    }
    ASSERT_EQ(session->job().record.size(), 3U);
    EXPECT_EQ(session->job().record[0].subject, "collector");
    EXPECT_EQ(session->job().record[1].subject, "block");
    EXPECT_EQ(session->job().record[2].subject, "cylinder");
    EXPECT_EQ(session->job().record[2].note, "Y-3003");
    EXPECT_FALSE(day.entering()) << "nothing more is to be typed here";
    EXPECT_TRUE(day.stage_list().item(0)->text().contains(QStringLiteral("3 of 5")))
        << day.stage_list().item(0)->text().toStdString();
    stage.set_session(nullptr);
}

TEST(WorkPageTest, a_hold_point_is_held_and_released_and_undo_leaves_it) {
    const auto session = open_day();
    FittingStage stage;
    stage.set_session(session.get());
    WorkPage& day = stage.day();
    day.open_want(2, 2);
    name_person(day, "A. Reed");
    EXPECT_FALSE(stage.add_reading(morning)) << "neither released nor held";
    day.form().findChild<QPushButton*>(QStringLiteral("no"))->click();
    ASSERT_TRUE(stage.add_reading(morning));
    EXPECT_EQ(session->job().record.back().subject, "Pressure hold passed");
    EXPECT_EQ(session->job().record.back().value, 0.0);
    EXPECT_TRUE(day.stage_list().item(2)->text().contains(QStringLiteral("held")));
    session->undo_stack().undo();
    EXPECT_EQ(session->job().record.size(), 1U);
    stage.set_session(nullptr);
}

TEST(ChainWordsTest, tells_whole_altered_and_made_for_another_plan) {
    const auto session = open_day();
    for (const double amp : {4.0, 5.0, 6.0})
        append_reading(*session, entry(ReadingKind::supply_current, amp));
    std::vector<Reading> record = session->job().record;
    EXPECT_EQ(chain_words(record).mark, Mark::ready);
    EXPECT_TRUE(chain_words(record).lines.front().contains(QStringLiteral("3 entries, whole")));
    EXPECT_TRUE(other_plan_words(record, plan_mark(session->job()), session->job().revision).isEmpty());
    EXPECT_TRUE(other_plan_words(record, "0000-0000", 15).contains(QStringLiteral("3 entries were made for")));
    record[1].value = 5.1;
    const ChainWords broken = chain_words(record);
    EXPECT_EQ(broken.mark, Mark::stop);
    EXPECT_TRUE(broken.lines.join(QStringLiteral("\n"))
                    .contains(QStringLiteral("Entry 2 (supply current) is not what was entered")))
        << broken.lines.join(QStringLiteral("\n")).toStdString();
    EXPECT_EQ(chain_words({}).mark, Mark::empty);
}

/// Ten minutes of pumping, then ten of rise.
const char* const log_text =
    "time,vacuum (Pa),temp (C)\n"
    "2026-06-01T10:00:00,90000,12\n"
    "2026-06-01T10:05:00,400,12\n"
    "2026-06-01T10:10:00,60,12.5\n"
    "2026-06-01T10:15:00,75,12.5\n"
    "2026-06-01T10:20:00,80,13\n";

TEST(GaugeLogEntries, from_the_moment_the_valve_was_shut) {
    const auto log = commissioning::gauge_log_from_csv(log_text, "log.csv");
    ASSERT_TRUE(log.ok()) << text_of(log.problems());
    EXPECT_TRUE(looks_like_evacuation(log.value()));
    EXPECT_EQ(likely_from(log.value(), true), 2U);
    LogChoice choice;
    choice.from = 2;
    choice.started = start_of(log.value(), QDate(2026, 6, 1));
    choice.who = QStringLiteral("A. Reed");
    choice.instrument = QStringLiteral("vacuum gauge 3");
    const auto entries = entries_of_log(log.value(), choice);
    ASSERT_EQ(entries.size(), 3U);
    EXPECT_EQ(entries[0].kind, ReadingKind::vacuum_level);
    EXPECT_EQ(entries[0].value, 60.0);
    EXPECT_EQ(entries[2].kind, ReadingKind::vacuum_after_rise);
    EXPECT_EQ(entries[2].value, 80.0);
    EXPECT_EQ(*entries[2].second_value, 13.0);
    EXPECT_EQ(QDateTime::fromString(QString::fromStdString(entries[0].taken_at), Qt::ISODate)
                  .secsTo(QDateTime::fromString(QString::fromStdString(entries[2].taken_at), Qt::ISODate)),
              600);
    choice.from = 4;
    EXPECT_TRUE(entries_of_log(log.value(), choice).empty()) << "one point says nothing of a rise";
}

TEST(GaugeLogEntries, the_dialog_asks_for_who_and_with_what) {
    const auto log = commissioning::gauge_log_from_csv(log_text, "log.csv");
    ASSERT_TRUE(log.ok());
    LogDialog dialog(log.value(), QStringLiteral("log.csv"), InstrumentBook(), Occasion::repair);
    EXPECT_TRUE(dialog.entries().empty());
    name_person(dialog, "A. Reed");
    EXPECT_TRUE(dialog.entries().empty());
    dialog.findChild<QComboBox*>(QStringLiteral("instrument"))->setEditText(QStringLiteral("vacuum gauge 3"));
    ASSERT_EQ(dialog.entries().size(), 3U) << "the lowest pressure is taken for the moment of valve-off";
    EXPECT_EQ(dialog.entries().front().occasion, Occasion::repair);
    dialog.choose_from(1);
    EXPECT_EQ(dialog.entries().size(), 4U);
}

}  // namespace
}  // namespace day_test
}  // namespace wg::ui
