// Notices over the desk: on every tab nothing moves, and no button, field or tab lies under them.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QTableWidget>
#include <QTest>

#include "core/store/store.h"
#include "tests/tools/load_reference.h"
#include "ui/common/free_place.h"
#include "ui/common/notice_bar.h"
#include "ui/common/theme.h"
#include "ui/customers/customer_form.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"

namespace wg::ui {
namespace desk_notice_test {
namespace {

constexpr int tabs = 8;

TEST(DeskNotice, MovesNothingAndCoversNothingThatIsClickedOnAnyTab) {
    auto store = store::Store::open(":memory:", Instant{1'800'000'000}, "Ada on desk-2").value();
    DeskPage desk(*store, std::make_shared<const plan::Reference>(test::reference()));
    desk.set_program_rules({test::read_resource("rules/assumed.json").value()});
    for (const QSize size : {QSize(1366, 720), QSize(1000, 540)}) {  // a small laptop, and one at 120 dpi
        desk.resize(size);
        desk.show();
        for (int tab = 0; tab < tabs; ++tab) {
            desk.notice().clear();
            desk.show_tab(tab);
            QTest::qWait(30);
            const std::vector<QRect> before = controls_of(desk, &desk.notice());
            ASSERT_FALSE(before.empty()) << tab;
            desk.notice().add(Mark::stop,
                              QStringLiteral("The list was not saved: somebody else saved version 3 of it meanwhile. "
                                             "Look at what it changed, then save again."));
            QTest::qWait(10);
            EXPECT_EQ(controls_of(desk, &desk.notice()), before) << "tab " << tab << ", " << size.width();
            EXPECT_TRUE(desk.rect().contains(desk.notice().geometry())) << tab;
            for (const QRect& control : before)
                EXPECT_FALSE(desk.notice().geometry().intersects(control))
                    << "tab " << tab << ", " << size.width() << ": " << control.x() << ' ' << control.y();
        }
    }
}

TEST(DeskNotice, GoesWithItsCauseOrItsPage) {
    auto store = store::Store::open(":memory:", Instant{1'800'000'000}, "Ada on desk-2").value();
    DeskPage desk(*store, std::make_shared<const plan::Reference>(test::reference()));
    desk.resize(1366, 720);
    desk.show();
    constexpr int customers_tab = 4;
    desk.show_tab(customers_tab);
    ASSERT_NE(desk.customers(), nullptr);
    desk.notice().add(Mark::caution, QStringLiteral("No backup was made today."));
    Q_EMIT desk.customers()->problem(QStringLiteral("The customer was not saved. No name."));
    Q_EMIT desk.customers()->taken_back();
    EXPECT_EQ(desk.notice().text(), QStringLiteral("No backup was made today."));
    Q_EMIT desk.customers()->problem(QStringLiteral("The customer was not saved. No name."));
    desk.show_tab(0);
    EXPECT_EQ(desk.notice().text(), QStringLiteral("No backup was made today.")) << "the page's own went with it";
    // What the page says while it is left stays.
    desk.show_tab(customers_tab);
    QTest::qWait(10);  // a page made while its tab is shown appears with the next events
    desk.customers()->start_customer();
    desk.customers()->form()->contacts()->item(0, 3)->setText(QStringLiteral("no address"));
    desk.show_tab(0);
    EXPECT_TRUE(desk.notice().text().contains(QStringLiteral("was not saved"))) << desk.notice().text().toStdString();
    desk.notice().clear();
    Q_EMIT desk.customers()->said(QStringLiteral("K-103 saved"));
    desk.show_tab(customers_tab);
    EXPECT_EQ(desk.notice().text(), QString());
}

}  // namespace
}  // namespace desk_notice_test
}  // namespace wg::ui
