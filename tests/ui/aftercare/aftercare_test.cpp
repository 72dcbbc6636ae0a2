#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTableWidget>
#include <QTest>

#include "tests/ui/documents/sample.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/aftercare/service_dates.h"
#include "ui/common/job_session.h"

namespace wg::ui {
namespace {

Reading reading(int id, ReadingKind kind, const char* taken_at, double value = 1.0) {
    Reading made;
    made.id = sample::uuid(id);
    made.kind = kind;
    made.taken_at = taken_at;
    made.value = value;
    return made;
}

const std::vector<plan::ServiceDue> services = {{"water", "Lift the safety valve", 12, "for every system", "practice"},
                                                {"anode", "Check the anode", 24, "it has one", "maker"}};

TEST(ServiceDates, count_from_the_first_reading_of_the_running_system) {
    const std::vector<Reading> record = {reading(1, ReadingKind::pressure_hold_start, "2027-05-30T12:00:00Z", 25.0),
                                         reading(2, ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0),
                                         reading(3, ReadingKind::supply_current, "2028-06-05T12:00:00Z", 5.0)};
    EXPECT_EQ(started_on(record), QDate(2027, 6, 1));
    const auto dates = service_dates(services, record, QDate(2027, 7, 1));
    ASSERT_EQ(dates.size(), 2U);
    EXPECT_EQ(dates[0].service.id, "water");
    EXPECT_EQ(dates[0].due, QDate(2028, 6, 1));
    EXPECT_FALSE(dates[0].overdue);
    EXPECT_EQ(dates[1].due, QDate(2029, 6, 1));
    EXPECT_TRUE(service_dates(services, record, QDate(2028, 6, 2))[0].overdue);
    EXPECT_FALSE(service_dates(services, record, QDate(2028, 6, 1))[0].overdue) << "due today is not overdue";
}

TEST(ServiceDates, have_no_day_before_the_system_was_started) {
    EXPECT_FALSE(started_on({}).isValid());
    const auto dates =
        service_dates(services, {reading(1, ReadingKind::remark, "2027-06-01T12:00:00Z")}, QDate(2040, 1, 1));
    for (const ServiceDate& date : dates) {
        EXPECT_FALSE(date.due.isValid());
        EXPECT_FALSE(date.overdue);
    }
}

TEST(ServiceDates, a_service_noted_as_done_moves_only_its_own_date) {
    std::vector<Reading> record = {reading(2, ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0)};
    Reading done = service_done(services[0], QStringLiteral("2028-05-20T12:00:00Z"), QStringLiteral("A. Reed"),
                                QStringLiteral("dry"));
    done.id = sample::uuid(9);
    record.push_back(done);
    const auto dates = service_dates(services, record, QDate(2028, 6, 1));
    EXPECT_EQ(dates[0].service.id, "water");
    EXPECT_TRUE(dates[0].was_done);
    EXPECT_EQ(dates[0].due, QDate(2029, 5, 20));
    EXPECT_EQ(dates[1].due, QDate(2029, 6, 1));
    EXPECT_FALSE(dates[1].was_done);
}

TEST(ServiceDates, a_corrected_note_no_longer_counts) {
    std::vector<Reading> record = {reading(2, ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0)};
    Reading done =
        service_done(services[0], QStringLiteral("2028-05-20T12:00:00Z"), QStringLiteral("A. Reed"), QString());
    done.id = sample::uuid(9);
    record.push_back(done);
    Reading correction = reading(10, ReadingKind::remark, "2028-05-21T12:00:00Z");
    correction.note = "Not done after all: nobody at home";
    correction.corrects_id = done.id;
    record.push_back(correction);
    EXPECT_EQ(service_dates(services, record, QDate(2028, 6, 1))[0].due, QDate(2028, 6, 1));
}

TEST(AftercareStageTest, noting_a_service_appends_to_the_record_and_needs_a_name) {
    JobSession session(sample::job(), std::make_shared<const plan::Reference>(),
                       [](const Job& job, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                           return sample::plan(job);
                       });
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.settled(); }, 5000));
    AftercareStage stage;
    stage.set_session(&session);
    const QString at = QStringLiteral("2028-05-20T12:00:00Z");
    EXPECT_FALSE(stage.note_service_done(at)) << "nothing selected";
    auto* table = stage.findChild<QTableWidget*>();
    ASSERT_NE(table, nullptr);
    ASSERT_EQ(table->rowCount(), 2);
    table->selectRow(0);
    EXPECT_FALSE(stage.note_service_done(at)) << "nobody named";
    EXPECT_TRUE(session.job().record.empty());
    stage.findChild<QLineEdit*>()->setText(QStringLiteral("A. Reed"));
    ASSERT_TRUE(stage.note_service_done(at));
    ASSERT_EQ(session.job().record.size(), 1U);
    EXPECT_EQ(session.job().record.front().kind, ReadingKind::remark);
    EXPECT_EQ(session.job().record.front().taken_by, "A. Reed");
    stage.set_session(nullptr);
}

TEST(AftercareStageTest, the_register_counts_what_was_weighed_in_once_corrected) {
    Job job = sample::job();
    Reading wrong = reading(80, ReadingKind::charge_added, "2027-06-01T12:00:00Z", 0.8);
    Reading right = reading(81, ReadingKind::charge_added, "2027-06-01T12:05:00Z", 0.08);
    right.corrects_id = wrong.id;
    job.record = {wrong, right};
    JobSession session(job, std::make_shared<const plan::Reference>(),
                       [](const Job& planned, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                           return sample::plan(planned);
                       });
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.settled(); }, 5000));
    AftercareStage stage;
    stage.set_session(&session);
    QString words = stage.register_words();
    words.remove(QChar(0x202F));
    EXPECT_TRUE(words.contains(QStringLiteral("Weighed in: 0.080kg"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("In the system: 1.280kg"))) << words.toStdString();
    stage.set_session(nullptr);
}

}  // namespace
}  // namespace wg::ui
