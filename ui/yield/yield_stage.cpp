#include "ui/yield/yield_stage.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTabBar>
#include <QTabWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <tuple>

#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/common/whole_file.h"
#include "ui/comparison/choice_plans.h"
#include "ui/comparison/comparison.h"
#include "ui/yield/comfort_page.h"
#include "ui/yield/cost_page.h"
#include "ui/yield/day_page.h"
#include "ui/yield/light_page.h"
#include "ui/yield/range_page.h"
#include "ui/yield/sizing_page.h"
#include "ui/yield/year_page.h"

namespace wg::ui {
namespace {

constexpr int refresh_delay_ms = 100;

}  // namespace

YieldStage::YieldStage(QWidget* parent) : StageWidget(parent) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &YieldStage::refresh);
    notice_ = new NoticeBar(this);
    empty_ = new EmptyPane(QString(), QString(), QString(), this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    year_ = new YearPage(tabs_);
    day_ = new DayPage(tabs_);
    comfort_ = new ComfortPage(tabs_);
    light_ = new LightPage(tabs_);
    comparison_ = new Comparison(tabs_);
    cost_ = new CostPage(tabs_);
    range_ = new RangePage(tabs_);
    sizing_ = new SizingPage(tabs_);
    tabs_->addTab(year_, tr("Year"));
    tabs_->addTab(day_, tr("Day"));
    tabs_->addTab(comfort_, tr("Comfort"));
    tabs_->addTab(light_, tr("Sun and light"));
    tabs_->addTab(comparison_, tr("Comparison"));
    tabs_->addTab(cost_, tr("Cost"));
    tabs_->addTab(range_, tr("Range"));
    tabs_->addTab(sizing_, tr("Sizing"));
    build_corner();
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(tabs_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_->lie_over({12, 12, 12, 12});
    column->addWidget(stack_, 1);
    for (YieldPage* page : std::initializer_list<YieldPage*>{year_, day_, comfort_, light_, cost_, range_, sizing_}) {
        connect(page, &YieldPage::pointed_at, this, &YieldStage::status_text);
    }
    connect(tabs_, &QTabWidget::currentChanged, this, [this] {
        const bool has_pictures = qobject_cast<YieldPage*>(tabs_->currentWidget()) != nullptr;
        picture_->setEnabled(has_pictures);
        picture_action_->setEnabled(has_pictures);
    });
    connect(tabs_, &QTabWidget::currentChanged, this, &YieldStage::compare_costs);
    connect(cost_, &CostPage::others_asked, this, &YieldStage::compare_costs);
    connect(comparison_, &Comparison::said, this, &YieldStage::status_text);
    connect(comfort_, &ComfortPage::day_asked, this, [this](int day) {
        day_->show_day(day);
        tabs_->setCurrentWidget(day_);
    });
    connect(empty_, &EmptyPane::step_asked, this, [this] {
        if (session_ != nullptr && session_->job().choices.empty()) add_choice(*session_);
    });
}

void YieldStage::build_corner() {
    auto* corner = new QWidget(tabs_);
    buttons_ = new QWidget(corner);
    more_ = new QToolButton(corner);
    more_->setText(tr("Save"));
    more_->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(more_);
    more_->setMenu(menu);
    more_->hide();
    auto* beside = new QHBoxLayout(buttons_);
    beside->setContentsMargins(0, 0, 0, 0);
    beside->setSpacing(8);
    const auto add = [&](const QString& words, const auto& then) {
        auto* button = new QPushButton(words, buttons_);
        beside->addWidget(button);
        connect(button, &QPushButton::clicked, this, then);
        return std::pair(button, menu->addAction(words, this, then));
    };
    add(tr("Weather year\u2026"), [this] { Q_EMIT weather_asked(); });
    std::tie(picture_, picture_action_) = add(tr("Save picture"), [this] { ask_and_save(true); });
    add(tr("Save figures CSV"), [this] { ask_and_save(false); });
    auto* row = new QHBoxLayout(corner);
    row->setContentsMargins(8, 0, 8, 0);
    row->setSpacing(0);
    row->addWidget(buttons_);
    row->addWidget(more_);
    tabs_->setCornerWidget(corner, Qt::TopRightCorner);
}

/// Buttons give way to a menu before any tab is cut.
void YieldStage::fit_corner() {
    const int margins = 16;
    const bool room = tabs_->tabBar()->sizeHint().width() + buttons_->sizeHint().width() + margins <= width();
    if (room == !buttons_->isHidden()) return;
    buttons_->setVisible(room);
    more_->setVisible(!room);
    // The tab widget asks its corner for its size only when it is laid out itself.
    QResizeEvent again(tabs_->size(), tabs_->size());
    QCoreApplication::sendEvent(tabs_, &again);
}

void YieldStage::resizeEvent(QResizeEvent* event) {
    StageWidget::resizeEvent(event);
    fit_corner();
}

void YieldStage::set_session(JobSession* session) {
    if (session_ != nullptr) {
        disconnect(session_, nullptr, this, nullptr);
        disconnect(&ChoicePlans::of(*session_), nullptr, cost_, nullptr);
    }
    session_ = session;
    notice_->clear();
    comparison_->set_session(session);
    range_->set_session(session);
    sizing_->set_session(session);
    if (session != nullptr) {
        connect(session, &JobSession::plan_changed, this, &YieldStage::refresh_soon);
        connect(session, &JobSession::job_changed, this, &YieldStage::refresh_soon);
        connect(session, &JobSession::planning_changed, this, &YieldStage::refresh_soon);
        connect(session, &JobSession::choice_changed, this, &YieldStage::refresh_soon);
        connect(&ChoicePlans::of(*session), &ChoicePlans::changed, cost_, [this] {
            if (isVisible()) compare_costs();
        });
    }
    refresh();
}

void YieldStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    fit_corner();
    refresh();
}

void YieldStage::hideEvent(QHideEvent* event) {
    StageWidget::hideEvent(event);
    compare_costs();  // nothing is planned for a page that nobody sees
}

void YieldStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void YieldStage::refresh() {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    const bool figures = plan != nullptr && (plan->has_yield || session_->yield_carried());
    if (!figures) {
        if (session_ == nullptr) {
            empty_->set_words(tr("No job open"), tr("Open a job from the desk."), QString());
        } else if (session_->job().choices.empty()) {
            empty_->set_words(
                tr("No yield yet"),
                tr("A year of operation is worked out for a choice: collector, heat pump and cylinder on this site."),
                tr("Propose a choice"));
        } else if (session_->planning()) {
            empty_->set_words(tr("Working out a year of operation"), tr("Usually less than a second."), QString());
        } else if (plan == nullptr) {
            empty_->set_words(tr("There is no plan"), session_->plan_problem(), QString());
        } else {
            empty_->set_words(tr("No yield for this choice"),
                              tr("A stop keeps the year from being worked out: see the findings."), QString());
        }
        stack_->setCurrentWidget(empty_);
        return;
    }
    year_->set_plan(plan, session_->yield_carried());
    const bool carried = session_->yield_carried();
    day_->set_plan(plan, carried);
    comfort_->set_plan(plan, carried);
    // The quick pass knows no light: the page keeps the last complete plan until the next is there.
    if (!session_->yield_carried()) light_->set_plan(plan, session_->job().site, session_->reference().weather);
    std::optional<CostBasis> basis;
    const auto& lists = session_->reference().price_lists;
    if (const auto list = lists.find(session_->job().price_list); list != lists.end()) {
        basis = CostBasis{session_->job().demand, list->second.tariffs};
    }
    cost_->set_plan(plan, basis, carried);
    compare_costs();
    range_->refresh();
    sizing_->refresh();
    stack_->setCurrentWidget(tabs_);
}

void YieldStage::compare_costs() {
    const bool wanted = session_ != nullptr && isVisible() && tabs_->currentWidget() == cost_ &&
                        cost_->shown() != CostPage::View::spent;
    if (session_ == nullptr) return;
    ChoicePlans& plans = ChoicePlans::of(*session_);
    std::vector<std::string> ids;
    if (wanted) {
        for (const Choice& choice : session_->job().choices)
            ids.push_back(choice.id);
    }
    plans.want(cost_, ids);
    if (!wanted) return;
    std::vector<CostChoice> others;
    bool waiting = false;
    const auto shown = session_->plan();
    for (const Choice& choice : session_->job().choices) {
        if (shown != nullptr && choice.id == shown->choice_id) continue;
        const ChoicePlan* made = plans.plan_of(choice.id);
        if (made == nullptr) {
            waiting = true;
        } else if (made->plan != nullptr && made->plan->has_yield) {
            others.push_back({qs(choice.label), made->plan});
        }
    }
    cost_->set_others(std::move(others), waiting);
}

FigureTable YieldStage::figures_shown() const {
    if (const auto* page = qobject_cast<const YieldPage*>(tabs_->currentWidget())) return page->figures();
    return comparison_->figures();
}

bool YieldStage::save_figures(const QString& path) {
    const Result<bool> written = write_whole(path, figures_shown().to_csv());
    if (!written) {
        notice_->add(Mark::stop, qs(text_of(written.problems())));
        return false;
    }
    Q_EMIT status_text(tr("Figures saved as %1").arg(path));
    return true;
}

bool YieldStage::save_picture(const QString& path) {
    const auto* page = qobject_cast<const YieldPage*>(tabs_->currentWidget());
    if (page == nullptr || !page->has_picture()) {
        notice_->add(Mark::caution, tr("There is no picture to save on this tab."));
        return false;
    }
    if (!page->save_picture(path)) {
        notice_->add(Mark::stop, tr("%1 cannot be written. Choose a folder you may write to.").arg(path));
        return false;
    }
    Q_EMIT status_text(tr("Picture saved as %1").arg(path));
    return true;
}

void YieldStage::ask_and_save(bool picture) {
    if (session_ == nullptr) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString name = QStringLiteral("%1 %2.%3")
                             .arg(qs(session_->job().number), tabs_->tabText(tabs_->currentIndex()).toLower(),
                                  picture ? QStringLiteral("png") : QStringLiteral("csv"));
    const QString kinds = picture ? tr("PNG for letters and slides (*.png);;PDF for print (*.pdf)") : tr("CSV (*.csv)");
    QString kind;
    QString path = QFileDialog::getSaveFileName(this, picture ? tr("Save picture") : tr("Save figures"),
                                                folder + QLatin1Char('/') + name, kinds, &kind);
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) {
        path += !picture ? QStringLiteral(".csv")
                         : (kind.contains(QStringLiteral("*.pdf")) ? QStringLiteral(".pdf") : QStringLiteral(".png"));
    }
    if (picture) {
        save_picture(path);
    } else {
        save_figures(path);
    }
}

}  // namespace wg::ui
