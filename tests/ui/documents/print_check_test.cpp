#include <gtest/gtest.h>

#include "ui/documents/print_check.h"

namespace wg::ui {
namespace print_check_test {

plan::Plan plan_of(const char* id, std::int64_t revision, const char* mark) {
    plan::Plan plan;
    plan.job_id = id;
    plan.job_revision = revision;
    plan.plan_mark = mark;
    return plan;
}

TEST(PrintCheck, the_code_of_a_print_is_read_back) {
    const QString code = print_code(plan_of("job-7", 12, "3FA9-07B2"));
    EXPECT_EQ(code, QStringLiteral("warmgable:1:job-7:12:3FA9-07B2"));
    const auto read = read_print_code(QLatin1Char(' ') + code + QLatin1Char('\n'));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->job_id, QStringLiteral("job-7"));
    EXPECT_EQ(read->revision, 12);
    EXPECT_EQ(read->mark, QStringLiteral("3FA9-07B2"));
    EXPECT_TRUE(print_code(plan_of("job-7", 12, "")).isEmpty()) << "a plan without mark has no code";
}

TEST(PrintCheck, a_mark_is_taken_as_people_type_it) {
    for (const char16_t* typed : {u"3FA9-07B2", u" 3fa9-07b2 ", u"3fa907b2", u"3FA9 07B2"}) {
        const auto read = read_print_code(QString::fromUtf16(typed));
        ASSERT_TRUE(read.has_value());
        EXPECT_EQ(read->mark, QStringLiteral("3FA9-07B2"));
        EXPECT_TRUE(read->job_id.isEmpty());
    }
}

TEST(PrintCheck, present_outdated_and_another_jobs_print_are_told_apart) {
    const auto check = [](const char16_t* text) {
        return check_print(QString::fromUtf16(text), "job-7", 14, "AAAA-BBBB");
    };
    EXPECT_EQ(check(u"warmgable:1:job-7:14:AAAA-BBBB").state, PrintState::present);
    EXPECT_EQ(check(u"aaaabbbb").state, PrintState::present);
    const PrintCheck saved_since = check(u"warmgable:1:job-7:12:AAAA-BBBB");
    EXPECT_EQ(saved_since.state, PrintState::present) << "saving alone changes no plan";
    EXPECT_TRUE(saved_since.words.contains(QStringLiteral("revision 12")));
    const PrintCheck old = check(u"warmgable:1:job-7:12:3FA9-07B2");
    EXPECT_EQ(old.state, PrintState::outdated);
    for (const char16_t* said : {u"revision 12", u"3FA9-07B2", u"revision 14", u"AAAA-BBBB", u"Do not build"})
        EXPECT_TRUE(old.words.contains(QString::fromUtf16(said))) << old.words.toStdString();
    EXPECT_EQ(check(u"warmgable:1:job-8:14:AAAA-BBBB").state, PrintState::other_job);
    EXPECT_EQ(check(u"3FA9-07B2").state, PrintState::outdated) << "a mark alone does not name its job";
}

TEST(PrintCheck, whatever_else_is_scanned_is_never_taken_for_a_print) {
    for (const char16_t* text : {u"", u"hello", u"https://example.org/1:2:3", u"warmgable:2:job-7:14:AAAA-BBBB",
                                 u"warmgable:1::14:AAAA-BBBB", u"warmgable:1:job-7:x:AAAA-BBBB",
                                 u"warmgable:1:job-7:-1:AAAA-BBBB", u"warmgable:1:job-7:14:AAAA-BBB", u"GGGG-0000"}) {
        const PrintCheck checked = check_print(QString::fromUtf16(text), "job-7", 14, "AAAA-BBBB");
        EXPECT_EQ(checked.state, PrintState::unreadable) << QString::fromUtf16(text).toStdString();
        EXPECT_FALSE(checked.words.isEmpty());
    }
    EXPECT_NE(check_print(QStringLiteral("AAAA-BBBB"), "job-7", 14, "").state, PrintState::present);
}

}  // namespace print_check_test
}  // namespace wg::ui
