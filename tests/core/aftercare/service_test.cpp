#include "core/aftercare/service.h"

#include <gtest/gtest.h>

namespace wg::aftercare {
namespace service_test {
namespace {

Reading reading(const std::string& id, ReadingKind kind, const char* taken_at, double value = 1.0) {
    Reading made;
    made.id = id;
    made.kind = kind;
    made.taken_at = taken_at;
    made.value = value;
    return made;
}

const std::vector<plan::ServiceDue> services = {{"water", "Lift the safety valve", 12, "for every system", "practice"},
                                                {"anode", "Check the anode", 24, "it has one", "maker"}};

TEST(Calendar, months_keep_the_day_or_take_the_months_last) {
    EXPECT_EQ(months_after({2027, 1, 31}, 1), (CivilDate{2027, 2, 28}));
    EXPECT_EQ(months_after({2027, 11, 30}, 3), (CivilDate{2028, 2, 29}));
    EXPECT_EQ(months_after({2028, 2, 29}, 12), (CivilDate{2029, 2, 28}));
    EXPECT_EQ(months_after({2027, 3, 15}, -15), (CivilDate{2025, 12, 15}));
    EXPECT_EQ(months_after({2027, 12, 1}, 0), (CivilDate{2027, 12, 1}));
}

TEST(Calendar, months_there_and_back_move_no_day_up_to_the_28th) {
    for (int months = -400; months <= 400; ++months)
        for (const int day : {1, 15, 28})
            EXPECT_EQ(months_after(months_after({2027, 7, day}, months), -months), (CivilDate{2027, 7, day})) << months;
}

TEST(Calendar, weeks_are_those_of_iso_8601) {
    // ISO 8601:2004, 3.2.2 and its well-known edges, as Python's date.isocalendar() has them.
    EXPECT_EQ(iso_week({2027, 1, 1}), 53);
    EXPECT_EQ(iso_week({2026, 12, 31}), 53);
    EXPECT_EQ(iso_week({2024, 12, 30}), 1);
    EXPECT_EQ(iso_week({2027, 1, 4}), 1);
    EXPECT_EQ(iso_week({2026, 11, 28}), 48);
    EXPECT_EQ(monday_of({2026, 11, 28}), (CivilDate{2026, 11, 23}));
    EXPECT_EQ(monday_of({1969, 12, 31}), (CivilDate{1969, 12, 29}));
}

TEST(ServiceDates, count_from_the_first_reading_of_the_running_system) {
    const std::vector<Reading> record = {reading("1", ReadingKind::pressure_hold_start, "2027-05-30T12:00:00Z", 25.0),
                                         reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0),
                                         reading("3", ReadingKind::supply_current, "2028-06-05T12:00:00Z", 5.0)};
    EXPECT_EQ(started_on(record), (CivilDate{2027, 6, 1}));
    const auto dates = service_dates(services, record, {2027, 7, 1});
    ASSERT_EQ(dates.size(), 2U);
    EXPECT_EQ(dates[0].service.id, "water");
    EXPECT_EQ(dates[0].due_on, (CivilDate{2028, 6, 1}));
    EXPECT_EQ(dates[0].state, ServiceState::later);
    EXPECT_EQ(dates[0].days_left, 336);
    EXPECT_EQ(dates[1].due_on, (CivilDate{2029, 6, 1}));
}

TEST(ServiceDates, tell_overdue_due_soon_and_later_by_the_day) {
    const CivilDate due{2028, 6, 1};
    EXPECT_EQ(state_of(due, {2028, 6, 2}), ServiceState::overdue);
    EXPECT_EQ(state_of(due, {2028, 6, 1}), ServiceState::due) << "due today is not overdue";
    EXPECT_EQ(state_of(due, {2028, 5, 4}), ServiceState::due);
    EXPECT_EQ(state_of(due, {2028, 5, 3}), ServiceState::soon);
    EXPECT_EQ(state_of(due, {2028, 3, 2}), ServiceState::soon);
    EXPECT_EQ(state_of(due, {2028, 3, 1}), ServiceState::later);
}

TEST(ServiceDates, have_no_day_before_the_system_was_started) {
    EXPECT_FALSE(started_on({}));
    const auto dates =
        service_dates(services, {reading("1", ReadingKind::remark, "2027-06-01T12:00:00Z")}, {2040, 1, 1});
    for (const ServiceDate& date : dates) {
        EXPECT_FALSE(date.due_on);
        EXPECT_EQ(date.state, ServiceState::not_started);
    }
}

TEST(ServiceDates, a_service_done_moves_only_its_own_date) {
    std::vector<Reading> record = {reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0)};
    record.push_back(service_done("water", "2028-05-20T12:00:00Z", "A. Reed", "dry"));
    record.back().id = "9";
    const auto dates = service_dates(services, record, {2028, 6, 1});
    EXPECT_EQ(dates[0].service.id, "water");
    EXPECT_EQ(dates[0].last_done_on, (CivilDate{2028, 5, 20}));
    EXPECT_EQ(dates[0].due_on, (CivilDate{2029, 5, 20}));
    EXPECT_EQ(dates[1].due_on, (CivilDate{2029, 6, 1}));
    EXPECT_FALSE(dates[1].last_done_on);
}

TEST(ServiceDates, remarks_of_older_records_still_count_by_their_mark) {
    std::vector<Reading> record = {reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0),
                                   reading("3", ReadingKind::remark, "2028-05-20T12:00:00Z"),
                                   reading("4", ReadingKind::remark, "2029-05-20T12:00:00Z")};
    record[1].note = "Service done [water]: Lift the safety valve. dry";
    record[2].note = "asked whether Service done [water] is enough";
    EXPECT_EQ(days_done("water", record), (std::vector<CivilDate>{{2028, 5, 20}}));
    EXPECT_EQ(service_dates(services, record, {2028, 6, 1})[0].due_on, (CivilDate{2029, 5, 20}));
    EXPECT_TRUE(days_done("anode", record).empty());
}

TEST(ServiceDates, a_corrected_entry_no_longer_counts) {
    std::vector<Reading> record = {reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0)};
    record.push_back(service_done("water", "2028-05-20T12:00:00Z", "A. Reed", ""));
    record.back().id = "9";
    record.push_back(reading("10", ReadingKind::remark, "2028-05-21T12:00:00Z"));
    record.back().note = "Not done after all: nobody at home";
    record.back().corrects_id = "9";
    EXPECT_EQ(service_dates(services, record, {2028, 6, 1})[0].due_on, (CivilDate{2028, 6, 1}));
}

TEST(ServiceDates, the_day_is_that_of_the_clock_where_it_was_done) {
    const std::vector<Reading> record = {
        reading("2", ReadingKind::supply_current, "2027-06-01T23:30:00+02:00", 5.0)};  // 21:30 in Greenwich
    EXPECT_EQ(started_on(record), (CivilDate{2027, 6, 1}));
    EXPECT_EQ(started_on({reading("2", ReadingKind::supply_current, "2027-06-01T00:30:00+02:00", 5.0)}),
              (CivilDate{2027, 6, 1}));
    EXPECT_FALSE(started_on({reading("2", ReadingKind::supply_current, "yesterday", 5.0)}));
}

TEST(ServiceDates, a_system_taken_over_counts_from_its_first_service_here) {
    const std::vector<Reading> record = {service_done("water", "2028-05-20T12:00:00Z", "A. Reed", "")};
    const auto dates = service_dates(services, record, {2028, 6, 1});
    EXPECT_EQ(dates[0].due_on, (CivilDate{2029, 5, 20}));
    EXPECT_FALSE(dates[1].due_on);
}

TEST(Visits, gather_what_was_entered_on_a_day) {
    std::vector<Reading> record = {reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0),
                                   service_done("anode", "2029-05-20T12:00:00Z", "B", ""),
                                   service_done("water", "2028-05-20T12:00:00Z", "A", "dripped, seat cleaned"),
                                   reading("4", ReadingKind::supply_current, "2028-05-20T13:00:00Z", 5.2)};
    record[3].occasion = Occasion::service;
    record[3].taken_by = "A";
    const std::vector<Visit> found = visits(record);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].on, (CivilDate{2028, 5, 20}));
    EXPECT_EQ(found[0].services, std::vector<std::string>{"water"});
    EXPECT_EQ(found[0].by, std::vector<std::string>{"A"});
    EXPECT_EQ(found[0].readings.size(), 2U) << "the note of the service and the current";
    EXPECT_EQ(found[1].services, std::vector<std::string>{"anode"});
    EXPECT_TRUE(found[1].readings.empty());
}

TEST(Warranty, runs_from_the_clients_signature_and_else_from_the_start) {
    Job job;
    job.record = {reading("2", ReadingKind::supply_current, "2027-06-01T12:00:00Z", 5.0)};
    EXPECT_FALSE(warranty(job, {2027, 7, 1})) << "no terms";
    job.aftercare.warranty_months = 24.0;
    const auto from_start = warranty(job, {2027, 7, 1});
    ASSERT_TRUE(from_start);
    EXPECT_FALSE(from_start->from_hand_over);
    EXPECT_EQ(from_start->ends_on, (CivilDate{2029, 5, 31}));
    job.record.push_back(reading("3", ReadingKind::signature, "2027-06-03T12:00:00Z"));
    job.record.back().subject = "electrician";
    EXPECT_FALSE(warranty(job, {2027, 7, 1})->from_hand_over);
    job.record.push_back(reading("4", ReadingKind::signature, "2027-06-10T12:00:00Z"));
    job.record.back().subject = "Client";
    const auto signed_for = warranty(job, {2029, 6, 9});
    EXPECT_TRUE(signed_for->from_hand_over);
    EXPECT_EQ(signed_for->ends_on, (CivilDate{2029, 6, 9}));
    EXPECT_EQ(signed_for->days_left, 0) << "the last day is inside";
    EXPECT_EQ(warranty(job, {2029, 6, 10})->days_left, -1);
    job.record.clear();
    EXPECT_FALSE(warranty(job, {2027, 7, 1})) << "nothing to count from";
}

}  // namespace
}  // namespace service_test
}  // namespace wg::aftercare
