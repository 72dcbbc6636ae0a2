// Notices over the desk: on every tab nothing moves, and no button, field or tab lies under them.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QTest>

#include "core/store/store.h"
#include "tests/tools/load_reference.h"
#include "ui/common/free_place.h"
#include "ui/common/notice_bar.h"
#include "ui/common/theme.h"
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

}  // namespace
}  // namespace desk_notice_test
}  // namespace wg::ui
