// The register of refrigerant.

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QTableWidget>

#include "tests/ui/desk/desks.h"
#include "ui/desk/register_form.h"
#include "ui/desk/register_page.h"

namespace wg::ui {
namespace register_page_test {

using desks::FakeStore;

TEST(RegisterPage, adds_corrects_and_explains) {
    FakeStore store;
    RegisterPage page(store, {"R134a", "R290"});
    page.reload();
    const auto add = [&](RefrigerantMove move, const char* kg, const QDate& on) {
        page.form()->moves()->setCurrentIndex(page.form()->moves()->findData(static_cast<int>(move)));
        page.form()->mass()->setText(QString::fromLatin1(kg));
        page.form()->date()->setDate(on);
        return page.add_entry(Instant{1'800'000'000});
    };
    const int year = QDate::currentDate().year() - 1;
    EXPECT_FALSE(add(RefrigerantMove::received, "10", {year, 2, 1})) << "nobody named";
    page.form()->by()->setText(QStringLiteral("A. Reed"));
    EXPECT_FALSE(add(RefrigerantMove::received, "ten", {year, 2, 1}));
    EXPECT_FALSE(add(RefrigerantMove::received, "-1", {year, 2, 1}));
    EXPECT_FALSE(page.form()->problem().isEmpty());
    ASSERT_TRUE(add(RefrigerantMove::received, "10,0", {year, 2, 1}));
    ASSERT_TRUE(add(RefrigerantMove::counted, "7.5", {year, 12, 31}));
    ASSERT_EQ(store.refrigerant.size(), 2U);
    EXPECT_EQ(store.refrigerant[0].refrigerant, "R134a");
    EXPECT_DOUBLE_EQ(store.refrigerant[0].kg, 10.0);
    ASSERT_EQ(page.years()->rowCount(), 1);
    EXPECT_TRUE(page.year_words().contains(QStringLiteral("What may lie behind it")))
        << page.year_words().toStdString();
    page.correct(store.refrigerant[1].id);
    EXPECT_EQ(page.form()->mass()->text(), QStringLiteral("7.500"));
    page.form()->mass()->setText(QStringLiteral("9.9"));
    ASSERT_TRUE(page.add_entry(Instant{1'800'000'000}));
    ASSERT_EQ(store.refrigerant.size(), 3U);
    EXPECT_EQ(store.refrigerant[2].corrects_id, store.refrigerant[1].id);
    EXPECT_EQ(page.table()->rowCount(), 3) << "the old entry stays to be read";
    EXPECT_FALSE(page.year_words().contains(QStringLiteral("What may lie behind it")));
    store.refuse = true;
    EXPECT_FALSE(add(RefrigerantMove::used, "1", {year, 2, 1}));
    EXPECT_TRUE(page.form()->problem().contains(QStringLiteral("disk is full")));
}

}  // namespace register_page_test
}  // namespace wg::ui
