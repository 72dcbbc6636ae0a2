// The firm's year in pictures, a table and words.

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QSpinBox>
#include <QTableWidget>

#include "tests/ui/desk/desks.h"
#include "ui/desk/figures_page.h"
#include "ui/drawing/picture_view.h"

namespace wg::ui {
namespace figures_page_test {

using desks::real_desk;

TEST(FiguresPage, tells_the_year_in_words_pictures_and_a_table) {
    const auto store = real_desk(6);
    store::IssuedQuote quote{"00000000-0000-4000-8000-000000000900",
                             "00000000-0000-4000-8000-000000000500",
                             1,
                             "Q-1",
                             "2027-03-10T08:00:00Z",
                             R"({"figures":{"heat_kwh":{"mid":3400.5}}})",
                             "",
                             812'345,
                             "EUR"};
    ASSERT_TRUE(store->issue_quote(quote).ok());
    FiguresPage page(*store);
    page.year()->setValue(2027);
    page.resize(1000, 600);
    EXPECT_FALSE(page.grab().isNull());
    EXPECT_TRUE(page.words().startsWith(QStringLiteral("2027: quotes issued 1, accepted 0; without an answer now 1")))
        << page.words().toStdString();
    EXPECT_EQ(page.figures().rows.at(2).at(4), QStringLiteral("3400.5"));
    EXPECT_EQ(page.states()->rowCount(), 7);
    EXPECT_EQ(page.states()->item(0, 1)->text(), QStringLiteral("2"));
}

TEST(FiguresPage, says_how_many_demonstrations_are_left_out_and_what_empty_pictures_will_show) {
    const auto store = real_desk(2);
    FiguresPage page(*store);
    page.year()->setValue(2031);
    page.reload();
    EXPECT_EQ(page.left_out_words(), QString());
    for (int i = 0; i < 2; ++i) {
        Job job = sample::job();
        job.id = "00000000-0000-4000-8000-00000000070" + std::to_string(i);
        job.number = "D-" + std::to_string(i);
        job.invented = true;
        job.revision = 0;
        ASSERT_TRUE(store->save(job, Instant{1'800'000'000}).ok());
        page.reload();
        EXPECT_EQ(page.left_out_words(), i == 0 ? QStringLiteral("1 demonstration job is left out")
                                                : QStringLiteral("2 demonstration jobs are left out"));
    }
    EXPECT_EQ(page.states()->item(0, 1)->text(), QStringLiteral("1"));
    QStringList reasons;
    for (const PictureView* view : page.findChildren<PictureView*>())
        reasons << view->reason();
    EXPECT_EQ(reasons.filter(QStringLiteral("2031")).size(), 3) << reasons.join(u'|').toStdString();
    EXPECT_EQ(reasons.filter(QStringLiteral("month by month")).size(), 3);
    page.with_invented()->setChecked(true);
    EXPECT_EQ(page.left_out_words(), QString());
    EXPECT_NE(page.states()->item(0, 1)->text(), QStringLiteral("1")) << "they count now";
}

}  // namespace figures_page_test
}  // namespace wg::ui
