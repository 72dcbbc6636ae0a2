// Versions of something of the firm's, and the head above it.

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "ui/common/calm_combo.h"
#include "ui/common/versions_head.h"
#include "ui/common/versions_view.h"

namespace wg::ui {
namespace versions_test {
namespace {

std::vector<KeptVersion> three() {
    return {{3, "2027-04-12T08:00:00Z", "Ada", QString(), true},
            {2, "2027-04-11T08:00:00Z", "", QStringLiteral("letter of April"), false},
            {1, "soon", "Ben", QString(), false}};
}

Result<std::vector<VersionChange>> between(std::int64_t before, std::int64_t after) {
    if (after == 3) return std::vector<VersionChange>{};
    return std::vector<VersionChange>{
        {QStringLiteral("from %1 to %2").arg(before).arg(after), QStringLiteral("a"), QStringLiteral("b")}};
}

TEST(Versions, TellWhoSavedWhatAndWhatEachChanged) {
    const VersionsDialog dialog(QStringLiteral("Versions"), three(), between);
    VersionsView& view = *dialog.view();
    ASSERT_EQ(view.versions()->rowCount(), 3);
    EXPECT_EQ(view.versions()->item(0, 0)->text(), "3, withdrawn");
    EXPECT_EQ(view.versions()->item(1, 2)->text(), "not told");
    EXPECT_EQ(view.versions()->item(2, 1)->text(), "soon") << "no day, and nothing is made up";
    EXPECT_TRUE(view.words().contains("Withdrawn with version 3")) << view.words().toStdString();
    EXPECT_EQ(view.changes()->rowCount(), 0);
    view.versions()->setCurrentCell(1, 0);
    EXPECT_EQ(view.words(), "Changed from version 1 to 2:");
    ASSERT_EQ(view.changes()->rowCount(), 1);
    EXPECT_EQ(view.changes()->item(0, 0)->text(), "from 1 to 2");
    view.versions()->setCurrentCell(2, 0);
    EXPECT_EQ(view.words(), "Version 1 is the first one kept.");
    EXPECT_EQ(view.changes()->rowCount(), 0);
}

TEST(Versions, SayWhyThereIsNothing) {
    const VersionsDialog none(QStringLiteral("Versions"), Problem{"book", "is away", "Look again"}, between);
    EXPECT_TRUE(none.view()->words().contains("book: is away")) << none.view()->words().toStdString();
    VersionsView view(QStringLiteral("Note"), Qt::Vertical);
    view.show_versions(three(), [](std::int64_t, std::int64_t) {
        return Result<std::vector<VersionChange>>(Problem{"version", "cannot be read", "Leave it"});
    });
    EXPECT_TRUE(view.words().contains("cannot be read"));
}

TEST(Versions, WhereHasTheMostRoomAndAllColumnsFit) {
    VersionsDialog dialog(QStringLiteral("Versions"), three(), between);
    dialog.resize(1120, 600);  // as on a small laptop; the screen of tests is smaller
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    for (const QTableWidget* table : {dialog.view()->versions(), dialog.view()->changes()}) {
        dialog.view()->versions()->setCurrentCell(1, 0);
        QTest::qWait(1);
        int all = 0;
        for (int column = 0; column < table->columnCount(); ++column)
            all += table->columnWidth(column);
        EXPECT_EQ(all, table->viewport()->width());
    }
    const QTableWidget& changes = *dialog.view()->changes();
    EXPECT_GT(changes.columnWidth(0), 240);
    EXPECT_GT(changes.columnWidth(1), 140);
}

TEST(VersionsHead, AnIdIsMadeFromTheNameAndIsFree) {
    EXPECT_EQ(free_id("Our prices 2027", "list", {}), "our-prices-2027");
    EXPECT_EQ(free_id("Our prices 2027", "list", {"our-prices-2027", "our-prices-2027-2"}), "our-prices-2027-3");
    EXPECT_EQ(free_id(QString::fromUtf8("M\u00fcller & S\u00f6hne"), "list", {}), "muller-sohne");
    EXPECT_EQ(free_id(QString::fromUtf8("\u4ef7\u683c"), "list", {"list"}), "list-2");
    EXPECT_LE(free_id(QString(500, 'x'), "list", {}).size(), 80);
}

TEST(VersionsHead, OffersWhatCanBeDone) {
    VersionsHead head({"Price list", "New", "Withdraw", "list", [] { return QString("Prices"); }});
    head.show_lines({{"own", "Ours", true, false}, {"old", "Old", true, true}, {"program", "Theirs", false, false}},
                    "own");
    EXPECT_EQ(head.choice()->currentText(), "Ours");
    EXPECT_EQ(head.choice()->itemText(1), "Old (withdrawn)");
    EXPECT_EQ(head.choice()->itemText(2), "Theirs (comes with the program)");
    const auto enabled = [&head](const char* words) {
        for (const QPushButton* one : head.findChildren<QPushButton*>())
            if (one->text() == QLatin1String(words)) return one->isEnabled();
        ADD_FAILURE() << words;
        return false;
    };
    head.allow(true, false, false);
    EXPECT_FALSE(enabled("Save as a version"));
    EXPECT_TRUE(enabled("Withdraw") && enabled("Versions"));
    head.allow(true, false, true);
    EXPECT_TRUE(enabled("Save as a version") && enabled("Discard changes"));
    EXPECT_FALSE(enabled("Withdraw")) << "changes first";
    head.allow(true, true, false);
    EXPECT_TRUE(enabled("Save as a version")) << "brings it back";
    head.allow(false, false, false);
    EXPECT_FALSE(enabled("Versions") || enabled("Withdraw") || enabled("Save as a version"));
    QSignalSpy chosen(&head, &VersionsHead::chosen);
    head.choice()->setCurrentIndex(2);
    Q_EMIT head.choice()->activated(2);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.front().front().toString(), "program");
}

}  // namespace
}  // namespace versions_test
}  // namespace wg::ui
