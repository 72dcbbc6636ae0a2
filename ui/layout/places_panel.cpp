#include "ui/layout/places_panel.h"

#include <QCheckBox>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/plan/best_places.h"
#include "core/site/geometry.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/layout/place_search.h"
#include "ui/layout/place_words.h"
#include "ui/layout/weights_box.h"

namespace wg::ui {
namespace {

QString aim_text(siting::Aim aim) {
    switch (aim) {
        case siting::Aim::running_cost: return PlacesPanel::tr("Least running cost");
        case siting::Aim::pump_heat: return PlacesPanel::tr("Most heat from the pump");
        case siting::Aim::short_run: return PlacesPanel::tr("Shortest run");
        case siting::Aim::light_fixing: return PlacesPanel::tr("Least load on the fixings");
        case siting::Aim::out_of_sight: return PlacesPanel::tr("Least seen from the ground");
    }
    return {};
}

QLabel* muted(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setProperty("role", QStringLiteral("muted"));
    label->setWordWrap(true);
    return label;
}

}  // namespace

PlacesPanel::PlacesPanel(QWidget* parent) : QWidget(parent), search_(new PlaceSearch(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    build_wish(column);
    build_found(column);
    connect(search_, &PlaceSearch::progressed, progress_, &QProgressBar::setValue);
    connect(search_, &PlaceSearch::finished, this, &PlacesPanel::show_found);
    connect(search_, &PlaceSearch::planned, this, &PlacesPanel::show_words);
    refresh();
}

void PlacesPanel::build_wish(QVBoxLayout* column) {
    auto* title = heading_label(tr("Where does it go best?"), this);
    column->addWidget(title);
    QLabel* about = muted(this);
    about->setText(tr("Looks at every place on every surface that keeps the rules, for both hands."));
    column->addWidget(about);
    column->addWidget(new QLabel(tr("What counts most"), this));
    aim_ = new CalmCombo(this);
    aim_->setAccessibleName(tr("What counts most"));
    for (const siting::Aim aim : siting::all_aims)
        aim_->addItem(aim_text(aim), static_cast<int>(aim));
    column->addWidget(aim_);
    weights_ = new WeightsBox(this);
    column->addWidget(weights_);
    connect(aim_, &QComboBox::activated, this,
            [this] { weights_->fill(static_cast<siting::Aim>(aim_->currentData().toInt())); });
    connect(weights_, &WeightsBox::changed, this, [this] { go_->setEnabled(search_->running() || weights_->any()); });
    column->addWidget(new QLabel(tr("Place for"), this));
    which_ = new CalmCombo(this);
    which_->setAccessibleName(tr("Which collector to place"));
    column->addWidget(which_);
    connect(which_, &QComboBox::activated, this,
            [this](int index) { moving_ = which_->itemData(index).toString().toStdString(); });
    strip_ = new QCheckBox(tr("Keep the maker's free strip"), this);
    strip_->setChecked(true);
    column->addWidget(strip_);
    go_ = new QPushButton(this);
    go_->setProperty("role", QStringLiteral("primary"));
    column->addWidget(go_);
    connect(go_, &QPushButton::clicked, this, [this] {
        if (search_->running()) {
            search_->cancel();
        } else {
            start();
        }
    });
    progress_ = new QProgressBar(this);
    progress_->setRange(0, 100);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(6);
    progress_->setAccessibleName(tr("Share of the search that is done"));
    column->addWidget(progress_);
}

void PlacesPanel::build_found(QVBoxLayout* column) {
    words_ = muted(this);
    column->addWidget(words_);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Places found, best first"));
    list_->setTextElideMode(Qt::ElideRight);
    list_->setSpacing(2);
    // All of it is shown: the panel scrolls, not the list within it.
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(list_);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        put_->setEnabled(row >= 0 && !outdated());
        const auto& found = search_->found();
        if (!found || row < 0 || row >= static_cast<int>(found->places.outcome.places.size())) return;
        Q_EMIT surface_wanted(qs(found->places.outcome.places[static_cast<std::size_t>(row)].placement.surface_id));
        Q_EMIT proposals_changed();
    });
    connect(list_, &QListWidget::itemActivated, this, &PlacesPanel::put_selected);
    put_ = new QPushButton(tr("Put the collector there"), this);
    column->addWidget(put_);
    connect(put_, &QPushButton::clicked, this, &PlacesPanel::put_selected);
    method_ = muted(this);
    column->addWidget(method_);
}

void PlacesPanel::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    moving_.clear();
    search_->cancel();
    search_->forget();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &PlacesPanel::refresh);
        connect(session_, &JobSession::choice_changed, this, [this] {
            moving_.clear();
            search_->forget();
            show_found();
        });
    }
    show_found();
}

void PlacesPanel::set_moving(const std::string& placement_id) {
    if (placement_id.empty() || placement_id == moving_) return;
    moving_ = placement_id;
    refresh();
}

std::size_t PlacesPanel::moving_index() const {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return 0;
    const int row = which_->currentIndex();
    return row >= 0 ? static_cast<std::size_t>(row) : choice->placements.size();
}

bool PlacesPanel::outdated() const {
    const auto& found = search_->found();
    if (!found || session_ == nullptr) return false;
    const Job &then = found->job, &now = session_->job();
    return !(then.site == now.site) || !(then.choices == now.choices) || !(then.demand == now.demand) ||
           then.weather != now.weather || then.rule_set != now.rule_set;
}

void PlacesPanel::refresh() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    setEnabled(choice != nullptr);
    {
        const QSignalBlocker quiet(which_);
        which_->clear();
        if (choice != nullptr) {
            for (const Placement& one : choice->placements)
                which_->addItem(tr("%1 (it moves)").arg(qs(one.label)), qs(one.id));
            which_->addItem(choice->placements.empty() ? tr("A first collector") : tr("One more collector"), QString());
            which_->show_data(qs(moving_));
            if (which_->currentIndex() < 0 || moving_.empty()) which_->setCurrentIndex(0);
        }
    }
    const bool running = search_->running();
    go_->setText(running ? tr("Stop the search") : tr("Search"));
    progress_->setVisible(running);
    const auto& found = search_->found();
    list_->setVisible(found.has_value() && !found->places.outcome.places.empty());
    put_->setVisible(list_->isVisibleTo(this));
    put_->setEnabled(list_->currentRow() >= 0 && !outdated());
    method_->setVisible(found.has_value());
    int height = 2 * list_->frameWidth() + 4;
    for (int row = 0; row < list_->count(); ++row)
        height += list_->sizeHintForRow(row) + 2 * list_->spacing();
    list_->setFixedHeight(height);
    QString words;
    if (!search_->problems().empty()) {
        const Problem& first = search_->problems().front();
        words = tr("%1: %2. %3.").arg(qs(first.where), qs(first.what), qs(first.remedy));
    } else if (found && found->places.outcome.places.empty()) {
        words = tr("No place on the site keeps all rules.");
    } else if (found && outdated()) {
        words = tr("Found before the last change. Search again for places that fit it.");
    } else if (found) {
        words = search_->planning() ? tr("Estimates for comparing; each place is being planned.")
                                    : tr("Ranked by the search; figures of each place as the plan has them.");
        if (!found->job.site.street_azimuth_deg) {
            words += QLatin1Char('\n') + tr("The street is not marked on the Visit stage: seen is counted all round.");
        }
    }
    if (found && found->places.outcome.present) {
        words +=
            QLatin1Char('\n') +
            tr("Where it is now: %1").arg(measures_words(found->places.outcome.present->measures, found->job.site));
    }
    words_->setText(words);
    words_->setVisible(!words.isEmpty());
}

void PlacesPanel::start() {
    if (session_ == nullptr || session_->current_choice() == nullptr || !weights_->any()) return;
    plan::PlaceWish wish;
    wish.choice_id = session_->current_choice()->id;
    wish.moving = moving_index();
    wish.aim = static_cast<siting::Aim>(aim_->currentData().toInt());
    if (weights_->changed_by_hand()) wish.weights = weights_->weights();
    wish.keep_free_strip = strip_->isChecked();
    progress_->setValue(0);
    search_->start(*session_, wish);
    show_found();
}

void PlacesPanel::show_found() {
    const QSignalBlocker quiet(list_);
    list_->clear();
    const auto& found = search_->found();
    if (found && session_ != nullptr) {
        for (std::size_t i = 0; i < found->places.outcome.places.size(); ++i)
            list_->addItem(new QListWidgetItem);
        const siting::Objective& o = found->places.objective;
        QString about;
        for (const std::string& remark : found->places.outcome.remarks)
            about += qs(remark) + QLatin1String(".\n");
        const QString whose = found->wish.weights ? tr("weights changed by hand") : tr("weights chosen by us");
        method_->setText(about +
                         tr("Points: %1 a kWh of electricity, %2 a kWh of heat missing, %3 a metre of run, %4 for full "
                            "use of a fixing point, %5 for being seen from everywhere (%6). Method of the search: %7.")
                             .arg(o.per_electricity_kwh)
                             .arg(o.per_missing_heat_kwh)
                             .arg(o.per_run_m)
                             .arg(o.per_utilisation)
                             .arg(o.per_seen)
                             .arg(whose, qs(found->places.method)));
    }
    show_words();
    Q_EMIT proposals_changed();
}

void PlacesPanel::show_words() {
    const auto& found = search_->found();
    if (found && session_ != nullptr) {
        const Choice* choice = find_choice(found->job, found->wish.choice_id);
        FoundPlace one;
        one.site = &found->job.site;
        one.model =
            choice != nullptr ? find_collector(session_->reference().catalogue, choice->collector_model) : nullptr;
        one.present = search_->present_plan();
        for (int row = 0; row < list_->count(); ++row) {
            const auto index = static_cast<std::size_t>(row);
            one.number = row + 1;
            one.place = &found->places.outcome.places[index];
            one.plan = search_->plan_of(index);
            one.planning = search_->planning();
            list_->item(row)->setText(place_words(one));
            list_->item(row)->setToolTip(place_details(one));
        }
    }
    refresh();
}

std::vector<ProposedPlace> PlacesPanel::proposals() const {
    std::vector<ProposedPlace> out;
    const auto& found = search_->found();
    if (!found || session_ == nullptr || outdated()) return out;
    const Choice* choice = find_choice(found->job, found->wish.choice_id);
    const CollectorModel* model =
        choice != nullptr ? find_collector(session_->reference().catalogue, choice->collector_model) : nullptr;
    if (model == nullptr) return out;
    for (const siting::Place& place : found->places.outcome.places) {
        const Surface* on = find_surface(found->job.site, place.placement.surface_id);
        if (on == nullptr) continue;
        ProposedPlace one;
        one.surface_id = on->id;
        one.outline = site::place(*on, found->job.site.sketch_up_azimuth_deg, place.placement, *model).outline;
        one.number = static_cast<int>(out.size()) + 1;
        one.marked = list_->currentRow() == static_cast<int>(out.size());
        out.push_back(std::move(one));
    }
    return out;
}

void PlacesPanel::put_selected() {
    const auto& found = search_->found();
    const int row = list_->currentRow();
    if (session_ == nullptr || !found || outdated() || row < 0) return;
    const auto index = static_cast<std::size_t>(row);
    if (index >= found->places.outcome.places.size()) return;
    const siting::Place& place = found->places.outcome.places[index];
    const Choice* choice = session_->current_choice();
    if (choice == nullptr || choice->id != found->wish.choice_id) return;
    const std::string id =
        found->wish.moving < choice->placements.size() ? choice->placements[found->wish.moving].id : std::string();
    const std::string put =
        put_collector(*session_, id, place.placement, found->places.seats[place.seat].fixing_method);
    if (put.empty()) return;
    Q_EMIT proposals_changed();
    Q_EMIT surface_wanted(qs(place.placement.surface_id));
    Q_EMIT placement_put(qs(put));
}

}  // namespace wg::ui
