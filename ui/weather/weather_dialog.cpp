#include "ui/weather/weather_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtConcurrent>
#include <algorithm>
#include <cmath>

#include "core/weather/nearest.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/notice_bar.h"
#include "ui/weather/weather_pictures.h"

namespace wg::ui {
namespace {

constexpr int list_width = 480;

std::string key_of(const WeatherPlace& place) {
    return place.climate_id.empty() ? place.path.toStdString() : place.climate_id;
}

QString degrees_words(double degrees, const QString& positive, const QString& negative) {
    return QStringLiteral("%1° %2").arg(std::fabs(degrees), 0, 'f', 2).arg(degrees < 0.0 ? negative : positive);
}

QString clock_words(double utc_offset_h) {
    const int minutes = static_cast<int>(std::lround(std::fabs(utc_offset_h) * 60.0));
    QString text = QStringLiteral("UTC%1%2")
                       .arg(utc_offset_h < 0.0 ? QStringLiteral("\u2212") : QStringLiteral("+"))
                       .arg(minutes / 60);
    if (minutes % 60 != 0) text += QStringLiteral(":%1").arg(minutes % 60, 2, 10, QLatin1Char('0'));
    return text;
}

WeatherPlace with_nearness(WeatherPlace place, const weather::Near& near) {
    place.distance_km = near.distance_km;
    place.higher_m = near.higher_m;
    place.caution = qs(near.caution);
    return place;
}

weather::Spot spot_of(const Location& site) {
    return {site.latitude_deg, site.longitude_deg, site.altitude_m};
}

}  // namespace

WeatherDialog::WeatherDialog(WeatherDialogInput input, ReadFile read_file, QWidget* parent)
    : QDialog(parent), input_(std::move(input)), read_file_(std::move(read_file)) {
    setWindowTitle(tr("Weather year"));
    resize(1280, 700);
    auto* body = new QHBoxLayout;
    body->setSpacing(16);
    body->addWidget(make_left());
    body->addWidget(make_right(), 1);
    use_ = new QPushButton(tr("Plan the job with this year"), this);
    use_->setProperty("role", QStringLiteral("primary"));
    auto* close = new QPushButton(tr("Close"), this);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot->addStretch(1);
    foot->addWidget(use_);
    foot->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(12);
    notice_ = new NoticeBar(this);
    column->addWidget(notice_);
    column->addLayout(body, 1);
    column->addLayout(foot);
    connect(use_, &QPushButton::clicked, this, &WeatherDialog::choose);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(places_, &PlaceList::selection_changed, this, &WeatherDialog::show_selected);
    connect(&watcher_, &QFutureWatcher<Made>::finished, this, &WeatherDialog::take);
    list_places();
    show_selected();
}

WeatherDialog::~WeatherDialog() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

QWidget* WeatherDialog::make_left() {
    auto* left = new QWidget(this);
    left->setFixedWidth(list_width);
    auto* heading = heading_label(tr("Years to choose from"), left);
    places_ = new PlaceList(left);
    auto* file = new QPushButton(tr("Read a weather file\u2026"), left);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(heading);
    column->addWidget(places_, 1);
    column->addWidget(file);
    connect(file, &QPushButton::clicked, this, &WeatherDialog::ask_for_file);
    return left;
}

QWidget* WeatherDialog::make_right() {
    auto* right = new QWidget(this);
    title_ = new QLabel(right);
    title_->setProperty("role", QStringLiteral("title"));
    title_->setWordWrap(true);
    place_ = new QLabel(right);
    place_->setWordWrap(true);
    place_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    caution_ = new QLabel(right);
    caution_->setProperty("role", QStringLiteral("caution"));
    caution_->setWordWrap(true);
    pictures_ = new WeatherPictures(right);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(title_);
    column->addWidget(place_);
    column->addWidget(caution_);
    column->addWidget(pictures_, 1);
    return right;
}

bool WeatherDialog::is_kept(const std::string& id) const {
    return std::any_of(input_.kept.begin(), input_.kept.end(), [&id](const KeptYear& year) { return year.id == id; });
}

void WeatherDialog::list_places() {
    std::vector<WeatherPlace> candidates;
    std::vector<weather::Spot> spots;
    for (const auto& [id, climate] : input_.reference->climates) {
        WeatherPlace place;
        place.climate_id = id;
        place.label = qs(climate.label);
        if (!climate.country.empty()) place.label += QStringLiteral(", ") + qs(climate.country);
        if (climate.invented) place.label = tr("%1 (invented)").arg(place.label);
        place.in_use = id == input_.climate_id;
        candidates.push_back(place);
        spots.push_back({climate.latitude_deg, climate.longitude_deg, climate.altitude_m});
        if (place.in_use && input_.in_use != nullptr) files_[id] = input_.in_use;
    }
    for (const KeptYear& year : input_.kept) {
        WeatherPlace place;
        place.climate_id = year.id;
        place.label =
            year.invented ? tr("Library: %1 (invented)").arg(qs(year.label)) : tr("Library: %1").arg(qs(year.label));
        place.in_use = year.id == input_.climate_id;
        candidates.push_back(place);
        spots.push_back({year.latitude_deg, year.longitude_deg, year.altitude_m});
        if (place.in_use && input_.in_use != nullptr) files_[year.id] = input_.in_use;
    }
    std::vector<WeatherPlace> ordered;
    for (const weather::Near& near : weather::nearest(spot_of(input_.site), spots, spots.size()))
        ordered.push_back(with_nearness(candidates[near.index], near));
    places_->set_places(std::move(ordered));
}

bool WeatherDialog::add_file(const QString& path) {
    Result<std::shared_ptr<const plan::PreparedWeather>> read = read_file_(path);
    notice_->clear();
    if (!read.ok()) {
        notice_->add(Mark::stop, tr("This weather file cannot be used. %1").arg(qs(text_of(read.problems()))));
        return false;
    }
    const weather::Year& year = read.value()->year;
    WeatherPlace place;
    place.path = path;
    place.label = tr("File %1").arg(QFileInfo(path).fileName());
    const auto near =
        weather::nearest(spot_of(input_.site), {{year.latitude_deg, year.longitude_deg, year.altitude_m}}, 1);
    if (!near.empty()) place = with_nearness(place, near.front());
    files_[path.toStdString()] = read.value();
    looks_.erase(path.toStdString());  // the same file read anew may hold other figures
    places_->add_first(std::move(place));
    return true;
}

void WeatherDialog::ask_for_file() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Read a weather file"), QString(),
                                     tr("Weather years: EPW, TMY3, PVGIS, plain CSV (*.epw *.EPW *.csv *.CSV);;"
                                        "All files (*)"));
    if (!path.isEmpty()) add_file(path);
}

void WeatherDialog::show_selected() {
    const WeatherPlace* place = places_->selected();
    use_->setEnabled(place != nullptr && !place->in_use);
    if (place == nullptr) {
        pictures_->show_year(nullptr);
        return;
    }
    use_->setText(place->in_use ? tr("The job is planned with this year") : tr("Plan the job with this year"));
    title_->setText(place->label);
    caution_->setText(place->caution.isEmpty() ? QString() : tr("Caution: %1").arg(place->caution));
    caution_->setVisible(!place->caution.isEmpty());
    wanted_ = key_of(*place);
    const auto known = looks_.find(wanted_);
    if (known == looks_.end()) {
        place_->setText(tr("Working out the year."));
        pictures_->show_year(nullptr);
        if (watcher_.isRunning()) return;  // the next follows when that one is done
        if (files_.find(wanted_) == files_.end() && input_.read_kept != nullptr && is_kept(wanted_)) {
            const auto read = input_.read_kept(wanted_);
            if (!read.ok()) {
                notice_->clear();
                notice_->add(Mark::stop, qs(text_of(read.problems())));
                return;
            }
            files_[wanted_] = read.value();
        }
        const auto ready = files_.find(wanted_);
        auto weather = ready != files_.end() ? ready->second : nullptr;
        watcher_.setFuture(QtConcurrent::run([key = wanted_, weather, reference = input_.reference] {
            Made made;
            made.key = key;
            std::shared_ptr<const plan::PreparedWeather> year = weather;
            if (year == nullptr) {
                const auto prepared = plan::weather_for(*reference, key);
                if (!prepared.ok()) {
                    made.problem = qs(text_of(prepared.problems()));
                    return made;
                }
                year = prepared.value();
            }
            made.look = look_at(year);
            return made;
        }));
        return;
    }
    const weather::Year& year = known->second->weather->year;
    QStringList parts{tr("%1 %2").arg(degrees_words(year.latitude_deg, tr("N"), tr("S")),
                                      degrees_words(year.longitude_deg, tr("E"), tr("W"))),
                      tr("%1 above the sea").arg(quantity(year.altitude_m, QStringLiteral("m"))),
                      clock_words(year.utc_offset_h)};
    QString text = parts.join(QStringLiteral(", ")) + QStringLiteral(". ");
    const QString height = height_words(place->higher_m);
    text +=
        place->distance_km < 0.1 ? tr("At the site") : tr("%1 from the site").arg(distance_words(place->distance_km));
    text += (height.isEmpty() ? QString() : QStringLiteral(", ") + height) + QStringLiteral(". ");
    text +=
        tr("Source: %1 (%2)%3.").arg(qs(year.source), qs(year.format), year.invented ? tr(", invented") : QString());
    place_->setText(text);
    pictures_->show_year(known->second);
}

void WeatherDialog::take() {
    Made made = watcher_.result();
    if (made.look != nullptr) {
        looks_[made.key] = made.look;
    } else {
        notice_->clear();
        notice_->add(Mark::stop, made.problem);
    }
    // A year that cannot be made is not asked for again until it is selected again.
    if (made.look != nullptr || made.key != wanted_) show_selected();
}

QString WeatherDialog::place_words() const {
    return place_->text();
}

void WeatherDialog::choose() {
    const WeatherPlace* place = places_->selected();
    if (place == nullptr || place->in_use) return;
    chosen_climate_ = place->climate_id;
    chosen_file_ = place->path;
    accept();
}

}  // namespace wg::ui
