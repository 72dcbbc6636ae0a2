// The tools above a paper in the real window on a small notebook's screen: one row, whatever is set, and one button
// that says what is set and shares it between the stages.

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <set>

#include "ui/common/theme.h"
#include "ui/documents/look_button.h"
#include "ui/documents/page_view.h"
#include "ui/documents/paper_pane.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/print_row.h"
#include "ui/fitting/work_page.h"
#include "ui/offer/offer_stage.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace paper_tools_test {
namespace {

constexpr QSize notebook(1366, 768);
constexpr int patience_ms = 60000;  ///< a whole year of operation on a busy machine
constexpr int offer = 3;
constexpr int fitting = 4;

std::optional<std::string> resource_text(const std::string& path) {
    QFile file(QStringLiteral(WG_RESOURCES_DIR "/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll().toStdString();
}

/// Middles of the buttons that stand above the page.
std::set<int> rows_of_tools(const PaperPane& pane) {
    std::set<int> middles;
    for (const QAbstractButton* button : pane.findChildren<QAbstractButton*>())
        if (button->isVisible() && button->parentWidget() == &pane) middles.insert(button->geometry().center().y());
    return middles;
}

/// Buttons of different kinds may be a pixel or two higher.
int rows(const std::set<int>& middles) {
    int count = 0;
    int last = -1000;
    for (const int y : middles) {
        if (y - last > 8) ++count;
        last = y;
    }
    return count;
}

TEST(PaperTools, stand_in_one_row_on_a_notebook_and_say_what_is_set) {
    apply_theme(*qApp, ThemeKind::light);
    Result<plan::Reference> reference = plan::load_reference(&resource_text);
    ASSERT_TRUE(reference.ok()) << text_of(reference.problems());
    auto store = store::Store::open(":memory:", Instant{1'800'000'000});
    ASSERT_TRUE(store.ok()) << text_of(store.problems());
    MainWindow window(std::move(store).value(), std::make_shared<const plan::Reference>(std::move(reference).value()));
    window.resize(notebook);
    window.show();
    ASSERT_TRUE(window.open_job_text(*resource_text("demo/job.json"), "demo/job.json"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.session()->settled(); }, patience_ms));
    window.show_stage(offer);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    EXPECT_EQ(rows(rows_of_tools(*window.findChild<OfferStage*>()->findChild<PaperPane*>())), 1);
    auto* offered = window.findChild<OfferStage*>()->findChild<PaperPane*>();
    ASSERT_NE(offered->list_button(), nullptr);
    QAction* letter = nullptr;
    for (QAction* entry : offered->list_button()->menu()->actions())
        if (entry->text() == QStringLiteral("Cover letter")) letter = entry;
    ASSERT_NE(letter, nullptr);
    letter->trigger();
    EXPECT_EQ(offered->shown(), Paper::cover_letter);
    EXPECT_EQ(offered->list_button()->text(), QStringLiteral("Cover letter"));
    EXPECT_EQ(rows(rows_of_tools(*offered)), 1);
    offered->list_button()->menu()->actions().front()->trigger();
    EXPECT_EQ(offered->shown(), Paper::quote);
    window.show_stage(fitting);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    ASSERT_EQ(window.size(), notebook);
    auto* stage = window.findChild<FittingStage*>();
    auto* pane = stage->findChild<PaperPane*>();
    ASSERT_TRUE(pane->isVisible());
    LookButton& look = pane->look_button();
    EXPECT_EQ(look.text(), QStringLiteral("Paper: A4, English"));
    EXPECT_GE(rows_of_tools(*pane).size(), 1U);
    EXPECT_EQ(rows(rows_of_tools(*pane)), 1);
    // The widest: all that can be set.
    for (const char* words : {"Letter", "Large print", "Black and white", "Deutsch"}) {
        QAction* entry = look.entry(QString::fromUtf8(words));
        ASSERT_NE(entry, nullptr) << words;
        entry->trigger();
    }
    EXPECT_EQ(look.text(), QStringLiteral("Paper: Letter, large, b/w, Deutsch"));
    EXPECT_TRUE(look.toolTip().contains(QStringLiteral("black and white")));
    const PaperLook all{PageForm::letter, true, true, Language::german};
    EXPECT_EQ(pane->look(), all);
    ASSERT_NE(pane->input(), nullptr);
    EXPECT_EQ(pane->input()->look, all);
    QCoreApplication::processEvents();
    EXPECT_EQ(rows(rows_of_tools(*pane)), 1);
    // The other stages follow.
    EXPECT_EQ(window.findChild<OfferStage*>()->findChild<PaperPane*>()->look(), all);
    look.entry(QStringLiteral("A4"))->trigger();
    EXPECT_EQ(pane->look().form, PageForm::a4);
    EXPECT_FALSE(look.entry(QStringLiteral("Letter"))->isChecked()) << "one size at a time";
    // The code of a print takes no height from the paper until there is an answer.
    const int page_height = pane->view().height();
    EXPECT_FALSE(stage->print_row().answer_line()->isVisible());
    stage->print_row().field().setText(QStringLiteral("AAAA-BBBB"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return stage->print_row().answer_line()->isVisible(); }, 1000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return pane->view().height() < page_height; }, 1000));
    stage->print_row().field().clear();
    EXPECT_TRUE(QTest::qWaitFor([&] { return pane->view().height() == page_height; }, 1000));
    qApp->setStyleSheet(QString());
}

}  // namespace
}  // namespace paper_tools_test
}  // namespace wg::ui
