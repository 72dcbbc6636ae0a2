// A house surveyed from nothing to a chosen place through the real window, by mouse and by keys, and the same job typed
// as a file: both give one plan.

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QTimer>
#include <cstdio>

#include "core/job/codec.h"
#include "tests/tools/load_reference.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/drawing/site_canvas.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/place_search.h"
#include "ui/layout/places_panel.h"
#include "ui/visit/visit_stage.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace survey_test {
namespace {

constexpr int long_patience_ms = 120000;

/// Somebody at the window: finds things by their words, as a reader of the screen does.
class Person {
   public:
    enum class Means { mouse_and_keys, keys_alone };
    explicit Person(MainWindow& window, Means means = Means::mouse_and_keys) : window_(window), means_(means) {}

    /// A button by its words (an ampersand aside), clicked.
    void press(const char* words) {
        QPushButton* button =
            visible<QPushButton>([&](QPushButton* one) { return one->text().startsWith(QString::fromLatin1(words)); });
        ASSERT_NE(button, nullptr) << words;
        ASSERT_TRUE(button->isEnabled()) << words;
        if (means_ == Means::keys_alone) {
            ASSERT_NE(button->focusPolicy() & Qt::TabFocus, 0) << words << " cannot be reached by Tab";
            button->setFocus(Qt::TabFocusReason);
            QTest::keyClick(button, Qt::Key_Space);
        } else {
            QTest::mouseClick(button, Qt::LeftButton);
        }
        QCoreApplication::processEvents();
    }
    /// An entry of the menu on a button.
    void choose(const char* button_words, const char* entry) {
        bool chosen = false;
        QTimer::singleShot(100, &window_, [&] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            if (menu == nullptr) return;
            for (QAction* action : menu->actions()) {
                if (action->text() != QString::fromLatin1(entry)) continue;
                menu->setActiveAction(action);
                QTest::keyClick(menu, Qt::Key_Return);
                chosen = true;
                return;
            }
            menu->close();
        });
        press(button_words);
        ASSERT_TRUE(QTest::qWaitFor([&] { return chosen; }, 5000)) << entry;
    }
    /// A field by its name (see form_builder), filled by keys.
    void type(const char* name, const char* text) {
        const QString wanted = QString::fromUtf8(name);
        QLineEdit* edit = visible<QLineEdit>([&](QLineEdit* one) {
            return one->accessibleName() == wanted || one->accessibleName().startsWith(wanted + QLatin1Char(','));
        });
        ASSERT_NE(edit, nullptr) << name;
        ASSERT_TRUE(edit->isEnabled()) << name;
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(edit, QString::fromUtf8(text));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    void tick(const char* name) {
        QCheckBox* box = visible<QCheckBox>([&](QCheckBox* one) {
            return one->text() == QString::fromLatin1(name) || one->accessibleName() == QString::fromLatin1(name);
        });
        ASSERT_NE(box, nullptr) << name;
        box->setFocus();
        QTest::keyClick(box, Qt::Key_Space);
        ASSERT_TRUE(box->isChecked()) << name;
    }
    void tab(const char* words) {
        for (QTabBar* bar : window_.findChildren<QTabBar*>()) {
            if (!bar->isVisible()) continue;
            for (int i = 0; i < bar->count(); ++i) {
                if (!bar->tabText(i).startsWith(QString::fromLatin1(words))) continue;
                if (means_ == Means::keys_alone) {
                    ASSERT_NE(bar->focusPolicy() & Qt::TabFocus, 0);
                    bar->setFocus(Qt::TabFocusReason);
                    while (bar->currentIndex() != i)
                        QTest::keyClick(bar, bar->currentIndex() < i ? Qt::Key_Right : Qt::Key_Left);
                    return;
                }
                QTest::mouseClick(bar, Qt::LeftButton, Qt::NoModifier, bar->tabRect(i).center());
                return;
            }
        }
        FAIL() << "no tab " << words;
    }
    void stage(int number) {
        QTest::keyClick(&window_, static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
        QCoreApplication::processEvents();
    }
    SiteCanvas& sketch() { return *window_.findChild<VisitStage*>()->canvas(); }
    void click(double x_m, double y_m) {
        const QPoint at = sketch().view().map(x_m, y_m).toPoint();
        ASSERT_TRUE(sketch().rect().contains(at)) << x_m << ", " << y_m << " is out of view";
        QTest::mouseMove(&sketch(), at);
        QTest::mouseClick(&sketch(), Qt::LeftButton, Qt::NoModifier, at);
    }
    void keys(const char* text) {
        QTest::keyClicks(&sketch(), QString::fromLatin1(text));
        QTest::keyClick(&sketch(), Qt::Key_Return);
    }

   private:
    /// Waits a while for it, as a person would.
    template <class Widget, class Which>
    Widget* visible(Which which) {
        Widget* found = nullptr;
        static_cast<void>(QTest::qWaitFor(
            [&] {
                for (Widget* one : window_.findChildren<Widget*>())
                    if (found == nullptr && one->isVisible() && which(one)) found = one;
                return found != nullptr;
            },
            5000));
        return found;
    }
    MainWindow& window_;
    Means means_;
};

class Survey : public testing::Test {
   protected:
    static std::shared_ptr<const plan::Reference> reference() {
        static const auto value = std::make_shared<const plan::Reference>(test::reference());
        return value;
    }
    void SetUp() override {
        auto store = store::Store::open(":memory:", Instant{1'800'000'000});
        ASSERT_TRUE(store.ok()) << text_of(store.problems());
        window_ = std::make_unique<MainWindow>(std::move(store).value(), reference());
        window_->resize(1366, 768);
        window_->show();
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }
    [[nodiscard]] const Job& job() const { return window_->session()->job(); }
    [[nodiscard]] bool settled() {
        return QTest::qWaitFor([this] { return window_->session()->settled(); }, long_patience_ms);
    }

    /// L-shaped house of 12 x 6 m with a wing of 5 x 5 m, hipped all round at 9:12, its first corner at (0, 0).
    void draw_house(Person& person) {
        SiteCanvas& sketch = person.sketch();
        person.choose("Draw house", "With hip roof");
        const QPoint corner = sketch.view().map(0.0, 0.0).toPoint();
        QTest::mouseMove(&sketch, corner);
        QTest::mouseClick(&sketch, Qt::LeftButton, Qt::NoModifier, corner);
        QTest::keyClick(&sketch, Qt::Key_Right);
        for (const char* edge : {"12", "6", "7", "5 @ -90", "5"})
            person.keys(edge);
        QTest::keyClick(&sketch, Qt::Key_Return);
        ASSERT_EQ(job().site.buildings.size(), 1U);
        ASSERT_NEAR(job().site.buildings[0].edges[0].from.x_m, 0.0, 1e-9);
        ASSERT_NEAR(job().site.buildings[0].edges[0].from.y_m, 0.0, 1e-9);
        person.type("Pitch: degrees, or rise over run as 7:12 or 70 %", "9:12");
    }
    void survey(Person& person) {
        person.type("Name", "Ada Quill (invented)");
        person.type("Street", "Fen Lane 3");
        draw_house(person);
        person.press("Fit");
        person.choose("Add obstacle", "Chimney");
        person.click(8.0, 2.0);
        person.choose("Add obstacle", "Dormer");
        person.click(1.5, 6.0);
        person.sketch().zoom_by(0.6, QPointF(person.sketch().rect().center()));
        person.choose("Add obstacle", "Tree");
        person.click(13.0, -5.0);
        person.type("Height, foot to top", "9.5");
        person.press("Fit");
        person.press("Add spot");
        person.click(2.0, 1.5);
        person.tick("Electrical supply");
        person.tick("Cold water");
        person.tick("Drain");
        person.tick("Floor load measured or proven");
        // The south plane: a click beside everything else on it.
        person.click(5.0, 1.5);
        person.tick("Found and measured");
        person.type("First from left", "0.3");
        person.type("Centre to centre", "0.8");
    }
    void lay_out(Person& person) {
        person.stage(2);
        person.press("Propose a first choice");
        person.tab("Find");
        PlacesPanel* places = window_->findChild<LayoutStage*>()->places_panel();
        person.press("Search");
        ASSERT_TRUE(QTest::qWaitFor([&] { return places->search()->found().has_value(); }, long_patience_ms));
        auto* list = places->findChild<QListWidget*>();
        ASSERT_GE(list->count(), 1);
        list->setFocus();
        QTest::keyClick(list, Qt::Key_Home);
        list->setCurrentRow(0);
        person.press("Put the collector there");
        person.tab("Place");
        // Height first: on a hip the left edge lies further in the higher the collector is, and the search may have put
        // it anywhere.
        person.type("From the lower edge", "0.8");
        person.type("From the left edge", "1.5");
    }

    std::unique_ptr<MainWindow> window_;
};

std::string file_text(const std::string& in_tests) {
    std::ifstream file(std::string(WG_TESTS_DIR) + "/" + in_tests, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

void expect_same(const plan::Ranged& a, const plan::Ranged& b, const char* what) {
    const double close = 1e-9 * std::abs(a.mid);
    EXPECT_NEAR(a.low, b.low, close) << what;
    EXPECT_NEAR(a.mid, b.mid, close) << what;
    EXPECT_NEAR(a.high, b.high, close) << what;
}

TEST_F(Survey, an_l_shaped_hip_roof_house_by_hand_gives_the_plan_of_the_job_typed_as_a_file) {
    Person person(*window_);
    person.press("Start a job");
    ASSERT_NE(window_->session(), nullptr);
    QTest::qWait(300);
    survey(person);
    ASSERT_FALSE(HasFatalFailure());
    lay_out(person);
    ASSERT_FALSE(HasFatalFailure());
    ASSERT_TRUE(settled()) << window_->session()->plan_problem().toStdString();
    const Job by_hand = job();
    if (qEnvironmentVariableIsSet("WG_PRINT")) std::printf("%s\n", job_to_json(by_hand).c_str());
    const std::shared_ptr<const plan::Plan> drawn = window_->session()->plan();

    const auto text = file_text("ui/window/data/l_house.json");
    const Result<Job> typed = job_from_json(text, "l_house.json");
    ASSERT_TRUE(typed.ok()) << text_of(typed.problems());
    plan::Options options;
    options.choice_id = typed.value().choices.front().id;
    const Result<plan::Plan> planned = plan::plan(typed.value(), window_->session()->reference(), options);
    ASSERT_TRUE(planned.ok()) << text_of(planned.problems());
    const plan::Figures& a = drawn->figures;
    const plan::Figures& b = planned.value().figures;
    expect_same(a.heat_kwh, b.heat_kwh, "heat");
    expect_same(a.electricity_kwh, b.electricity_kwh, "electricity");
    expect_same(a.seasonal_factor, b.seasonal_factor, "seasonal factor");
    expect_same(a.running_cost_minor, b.running_cost_minor, "running cost");
    EXPECT_NEAR(a.run_m, b.run_m, 1e-9);
    EXPECT_NEAR(a.charge_kg, b.charge_kg, 1e-9);
    EXPECT_NEAR(a.worst_utilisation, b.worst_utilisation, 1e-9);
    EXPECT_EQ(a.worst_point, b.worst_point);
    EXPECT_EQ(a.price_gross.minor, b.price_gross.minor);
    ASSERT_EQ(drawn->findings.size(), planned.value().findings.size());
    for (std::size_t i = 0; i < drawn->findings.size(); ++i) {
        EXPECT_EQ(drawn->findings[i].code, planned.value().findings[i].code);
        EXPECT_EQ(drawn->findings[i].message, planned.value().findings[i].message);
    }
}

TEST_F(Survey, keys_alone_take_a_survey_to_a_planned_place) {
    Person person(*window_, Person::Means::keys_alone);
    person.press("Start a job");
    ASSERT_NE(window_->session(), nullptr);
    person.type("Name", "Ada Quill (invented)");
    SiteCanvas& sketch = person.sketch();
    // The house from the middle of the view on: lengths typed, directions by arrow keys.
    person.choose("Draw house", "With gable roof");
    ASSERT_TRUE(sketch.hasFocus()) << "drawing goes on where the hands are";
    QTest::keyClick(&sketch, Qt::Key_Return);
    QTest::keyClick(&sketch, Qt::Key_Right);
    for (const char* edge : {"10", "7", "10"})
        person.keys(edge);
    QTest::keyClick(&sketch, Qt::Key_Return);
    ASSERT_EQ(job().site.buildings.size(), 1U);
    person.type("Pitch: degrees, or rise over run as 7:12 or 70 %", "38");
    // A chimney where the view's middle is, then moved by arrow keys and widened by a handle.
    person.choose("Add obstacle", "Chimney");
    QTest::keyClick(&sketch, Qt::Key_Return);
    ASSERT_EQ(job().site.obstacles.size(), 1U);
    const Obstacle before = job().site.obstacles.front();
    sketch.setFocus(Qt::TabFocusReason);
    QTest::keyClick(&sketch, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(job().site.obstacles.front().base.x_m, before.base.x_m + 0.10, 1e-9);
    QTest::keyClick(&sketch, Qt::Key_PageDown);
    QTest::keyClick(&sketch, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(job().site.obstacles.front().width_m, before.width_m + 0.10, 1e-9);
    person.press("Add spot");
    QTest::keyClick(&sketch, Qt::Key_Return);
    person.tick("Electrical supply");
    // Tab goes through what is on the sketch.
    sketch.setFocus(Qt::TabFocusReason);
    const std::string roof = job().site.surfaces.front().id;
    auto* visit = window_->findChild<VisitStage*>();
    for (int i = 0; i < 40 && visit->selected() != roof; ++i)
        QTest::keyClick(&sketch, Qt::Key_Backtab, Qt::ShiftModifier);
    ASSERT_EQ(visit->selected(), roof);
    person.tick("Found and measured");
    person.press("Draw run");
    QTest::keyClick(&sketch, Qt::Key_Insert);
    QTest::keyClick(&sketch, Qt::Key_R);
    person.keys("0.5");
    QTest::keyClick(&sketch, Qt::Key_Return);
    ASSERT_NE(window_->session()->current_choice(), nullptr) << "the first choice is proposed to hold the run";
    EXPECT_EQ(window_->session()->current_choice()->route.size(), 2U);
    person.stage(2);
    person.tab("Find");
    PlacesPanel* places = window_->findChild<LayoutStage*>()->places_panel();
    person.press("Search");
    ASSERT_TRUE(QTest::qWaitFor([&] { return places->search()->found().has_value(); }, long_patience_ms));
    auto* list = places->findChild<QListWidget*>();
    ASSERT_GE(list->count(), 1);
    list->setFocus(Qt::TabFocusReason);
    QTest::keyClick(list, Qt::Key_Home);
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Home);
    person.press("Put the collector there");
    ASSERT_TRUE(settled()) << window_->session()->plan_problem().toStdString();
    EXPECT_TRUE(window_->session()->plan()->has_yield);
    EXPECT_TRUE(validate(job()).empty());
}

/// What a reader of the screen says for a control: its own name, its words, or the label that leads to it.
QString spoken(QWidget& control) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&control);
    return face != nullptr ? face->text(QAccessible::Name) : QString();
}

TEST_F(Survey, every_control_that_takes_the_focus_has_a_name_for_the_screen_reader) {
    Person person(*window_);
    person.press("Start a job");
    draw_house(person);
    ASSERT_FALSE(HasFatalFailure());
    for (int number = 1; number <= 6; ++number) {
        person.stage(number);
        if (number == 2) person.press("Propose a first choice");
        // Every page of every set of tabs, and every page of a stack behind it.
        for (QTabWidget* tabs : window_->findChildren<QTabWidget*>())
            for (int i = 0; i < tabs->count() && tabs->isVisible(); ++i) {
                tabs->setCurrentIndex(i);
                QCoreApplication::processEvents();
                for (QWidget* one : tabs->findChildren<QWidget*>()) {
                    if (!one->isVisible() || (one->focusPolicy() & Qt::TabFocus) == 0) continue;
                    if (qobject_cast<QAbstractScrollArea*>(one) != nullptr &&
                        qobject_cast<QAbstractItemView*>(one) == nullptr)
                        continue;
                    if (one->focusProxy() != nullptr || qobject_cast<QTabBar*>(one) != nullptr) continue;
                    EXPECT_FALSE(spoken(*one).isEmpty())
                        << "stage " << number << ", " << tabs->tabText(i).toStdString() << ": "
                        << one->metaObject()->className() << " in " << one->parentWidget()->metaObject()->className();
                }
            }
        for (QWidget* one : window_->findChildren<QWidget*>()) {
            if (!one->isVisible() || (one->focusPolicy() & Qt::TabFocus) == 0 || one->focusProxy() != nullptr) continue;
            if (qobject_cast<QTabBar*>(one) != nullptr) continue;
            if (qobject_cast<QAbstractScrollArea*>(one) != nullptr && qobject_cast<QAbstractItemView*>(one) == nullptr)
                continue;
            EXPECT_FALSE(spoken(*one).isEmpty()) << "stage " << number << ": " << one->metaObject()->className()
                                                 << " in " << one->parentWidget()->metaObject()->className();
        }
    }
}

}  // namespace
}  // namespace survey_test
}  // namespace wg::ui
