#include "core/aftercare/icalendar.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "core/quantity/utf8.h"

namespace wg::aftercare {
namespace icalendar_test {
namespace {

const Instant now = instant_from_iso8601("2027-06-21T12:30:00Z").value();

/// What calendar programs stumble over: commas, semicolons, backslashes, line feeds, long texts in two-, three- and
/// four-byte characters, and a day at the end of a year.
std::vector<CalendarEntry> hard_entries() {
    std::string longest;
    for (int i = 0; i < 40; ++i)
        longest += "\u00e4\u20ac\U0001F6BF x";
    return {
        {"yearly-look-1@warmgable", {2027, 12, 31}, "Look, and listen; C:\\plate", "first\nsecond\n\nfourth", "", 14},
        {"anode-1@warmgable", {2028, 2, 29}, "Anode: " + longest, longest + longest, "7 Quarry Lane, Upper Sallow", 0},
        {"leak-check-2@warmgable", {2027, 1, 1}, std::string(200, 'a'), "", "\\n is no line feed; nor is \\;", 1},
        {"x@warmgable", {2100, 3, 1}, "tab\there", "ends with a backslash\\", "\u201cquoted\u201d \"and\" plain", 60},
    };
}

std::string file(const char* name) {
    std::ifstream in(std::string(WG_TESTS_DIR) + "/reference/" + name, std::ios::binary);
    EXPECT_TRUE(in) << name;
    return {std::istreambuf_iterator<char>(in), {}};
}

TEST(ICalendar, is_the_text_that_the_reference_parser_has_read) {
    const std::string text = icalendar(hard_entries(), now);
    if (std::getenv("WG_WRITE_CALENDAR") != nullptr)
        std::ofstream(std::string(WG_TESTS_DIR) + "/reference/calendar.ics", std::ios::binary) << text;
    EXPECT_EQ(text, file("calendar.ics"));
}

// icalendar_values.py and the package it names: an outside reader gets back what was put in.
TEST(ICalendar, a_reference_parser_reads_what_was_put_in) {
    const auto read = nlohmann::json::parse(file("icalendar_values.json"));
    EXPECT_EQ(read["version"], "2.0");
    EXPECT_EQ(read["has_method"], false);
    EXPECT_LE(read["longest_line"].get<int>(), 75);
    EXPECT_EQ(read["bare_line_breaks"], 0);
    const auto entries = hard_entries();
    ASSERT_EQ(read["events"].size(), entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto& event = read["events"][i];
        EXPECT_EQ(event["uid"], entries[i].uid);
        EXPECT_EQ(event["stamp"], "2027-06-21T12:30:00Z");
        EXPECT_EQ(event["from"], iso8601(entries[i].on));
        EXPECT_EQ(event["until"], iso8601(days_after(entries[i].on, 1))) << "the end is left out of an all-day event";
        EXPECT_EQ(event["summary"], entries[i].summary);
        EXPECT_EQ(event["description"], entries[i].description);
        EXPECT_EQ(event["location"], entries[i].location);
        EXPECT_TRUE(event["errors"].empty());
        ASSERT_EQ(event["alarm_s"].size(), entries[i].remind_days > 0 ? 1U : 0U);
        if (entries[i].remind_days > 0) {
            EXPECT_EQ(event["alarm_s"][0].get<int>(), -86400 * entries[i].remind_days + 9 * 3600);
        }
    }
}

TEST(ICalendar, folds_between_characters_and_never_over_75_octets) {
    for (int length = 0; length < 260; ++length) {
        CalendarEntry entry{"u", {2027, 1, 1}, std::string(static_cast<std::size_t>(length), 'a') + "\U0001F6BF\u20ac",
                            "",  "",           0};
        const std::string text = icalendar({entry}, now);
        std::size_t from = 0;
        for (std::size_t end = text.find("\r\n"); end != std::string::npos; end = text.find("\r\n", from)) {
            EXPECT_LE(end - from, 75U) << length;
            EXPECT_TRUE(is_utf8(std::string_view(text).substr(from, end - from))) << length;
            from = end + 2;
        }
        EXPECT_EQ(from, text.size()) << "ends with a line break";
    }
}

TEST(ICalendar, bytes_that_are_no_text_are_left_out) {
    const std::string text = icalendar({{"u",
                                         {2027, 1, 1},
                                         "a\xFF"
                                         "b\x01\rc\xC3",
                                         "",
                                         "",
                                         0}},
                                       now);
    EXPECT_NE(text.find("SUMMARY:abc\r\n"), std::string::npos) << text;
}

TEST(CalendarOfAJob, keeps_its_ids_from_one_export_to_the_next) {
    Job job;
    job.id = "7d0f";
    job.number = "2027-0042";
    job.client.name = "Lindqvist";
    job.client.street = "7 Quarry Lane";
    job.client.town = "Upper Sallow";
    Reading start;
    start.id = "1";
    start.kind = ReadingKind::supply_current;
    start.taken_at = "2027-06-01T12:00:00Z";
    job.record = {start};
    job.aftercare.warranty_months = 24.0;
    const std::vector<plan::ServiceDue> services = {{"anode", "Check the anode", 24, "it has one", "maker"}};
    const CivilDate today{2027, 7, 1};
    const auto first = calendar_of(job, service_dates(services, job.record, today), today);
    ASSERT_EQ(first.size(), 2U);
    EXPECT_EQ(first[0].uid, uid_of(job.id, "anode"));
    EXPECT_EQ(first[0].summary, "2027-0042 Lindqvist: Check the anode");
    EXPECT_EQ(first[0].location, "7 Quarry Lane, Upper Sallow");
    EXPECT_EQ(first[1].on, (CivilDate{2029, 5, 31}));
    job.record.push_back(service_done("anode", "2029-05-02T12:00:00Z", "A", ""));
    const CivilDate later{2029, 7, 1};
    const auto second = calendar_of(job, service_dates(services, job.record, later), later);
    ASSERT_EQ(second.size(), 1U) << "the warranty is over";
    EXPECT_EQ(second[0].uid, first[0].uid);
    EXPECT_EQ(second[0].on, (CivilDate{2031, 5, 2}));
}

}  // namespace
}  // namespace icalendar_test
}  // namespace wg::aftercare
