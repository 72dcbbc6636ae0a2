#include "ui/yield/light_page.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/yield/light_months.h"
#include "ui/yield/sky_views.h"

namespace wg::ui {

LightPage::LightPage(QWidget* parent) : YieldPage(parent) {
    views_ = new QButtonGroup(this);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(16, 8, 16, 0);
    row->setSpacing(8);
    int number = 0;
    for (const QString& words : {tr("Light by month"), tr("The sun's way"), tr("Tilt and bearing")}) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setCheckable(true);
        views_->addButton(button, number++);
        row->addWidget(button);
    }
    row->addStretch(1);
    collectors_ = new QComboBox(this);
    collectors_->setAccessibleName(tr("Collector"));
    collectors_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    row->addWidget(collectors_);
    months_ = new LightMonths(this);
    sun_path_ = new SunPathPage(this);
    orientation_ = new OrientationPage(this);
    stack_ = new QStackedWidget(this);
    for (YieldPage* page : std::initializer_list<YieldPage*>{months_, sun_path_, orientation_}) {
        stack_->addWidget(page);
        connect(page, &YieldPage::pointed_at, this, &YieldPage::pointed_at);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(stack_, 1);
    views_->button(0)->setChecked(true);
    connect(views_, &QButtonGroup::idClicked, this, [this](int view) { show_view(static_cast<View>(view)); });
    connect(collectors_, &QComboBox::currentIndexChanged, this, &LightPage::refresh);
}

void LightPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, const Site& site,
                         const std::shared_ptr<const plan::PreparedWeather>& weather) {
    plan_ = plan;
    site_ = site;
    weather_ = weather;
    QStringList names;
    if (plan != nullptr) {
        for (const plan::PlacementPlan& placed : plan->placements)
            names += tr("%1, %2").arg(qs(placed.label), qs(placed.surface_label));
    }
    const QSignalBlocker quiet(collectors_);
    const int shown = collectors_->currentIndex();
    collectors_->clear();
    collectors_->addItems(names);
    if (!names.isEmpty()) collectors_->setCurrentIndex(std::clamp(shown, 0, static_cast<int>(names.size()) - 1));
    collectors_->setVisible(names.size() > 1);
    refresh();
}

void LightPage::show_view(View view) {
    const int index = static_cast<int>(view);
    views_->button(index)->setChecked(true);
    stack_->setCurrentIndex(index);
    refresh();
}

void LightPage::refresh() {
    const auto index = static_cast<std::size_t>(std::max(0, collectors_->currentIndex()));
    const plan::PlacementPlan* placed =
        plan_ != nullptr && index < plan_->placements.size() ? &plan_->placements[index] : nullptr;
    // Only what is looked at is worked out.
    switch (static_cast<View>(stack_->currentIndex())) {
        case View::months: months_->show_placement(plan_, index); break;
        case View::sun_path: sun_path_->show_site(site_, placed); break;
        case View::orientation:
            orientation_->show_site(site_, weather_,
                                    plan_ != nullptr ? plan_->placements : std::vector<plan::PlacementPlan>{});
            break;
    }
}

const YieldPage& LightPage::current() const {
    return *static_cast<const YieldPage*>(stack_->currentWidget());
}

FigureTable LightPage::figures() const {
    return current().figures();
}

bool LightPage::save_picture(const QString& path) const {
    return current().save_picture(path);
}

QString LightPage::words() const {
    return current().words();
}

}  // namespace wg::ui
