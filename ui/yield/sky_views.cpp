#include "ui/yield/sky_views.h"

#include <cmath>

#include "core/site/occluders.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString unit() {
    return QStringLiteral("kWh/m²");
}

}  // namespace

// ------------------------------------------------------------------------------------------------ the sun's way

void SunPathPage::show_site(const Site& site, const plan::PlacementPlan* placed) {
    source_.show_plate(site, placed != nullptr ? &placed->placed : nullptr,
                       placed != nullptr ? placed->surface_id : std::string());
    source_.put_into(view());
    QString text = sun_path_words(picture()) + QLatin1Char(' ');
    text += placed != nullptr ? tr("Seen from %1 on %2.").arg(qs(placed->label), qs(placed->surface_label))
                              : tr("No collector is placed yet.");
    if (site.horizon.empty()) text += tr(" No horizon was surveyed: it counts as free.");
    set_words(text);
}

FigureTable SunPathPage::figures() const {
    FigureTable out;
    const SunPathPicture& picture = source_.picture();
    out.header = {
        QStringLiteral("date"),       QStringLiteral("hour_standard_time"),   QStringLiteral("bearing_deg"),
        QStringLiteral("height_deg"), QStringLiteral("surveyed_horizon_deg"), QStringLiteral("obstacles_deg")};
    if (picture.sun == nullptr) return out;
    const site::Horizon horizon(picture.horizon);
    for (int month = 1; month <= 12; ++month) {
        for (int hour = 0; hour < 24; ++hour) {
            const std::size_t i = sky::SunTable::index(sky::day_index(month, 21), hour * sky::sun_steps_per_day / 24);
            const auto height = static_cast<double>(picture.sun->elevation_deg[i]);
            if (height < 0.0) continue;
            const auto at = static_cast<double>(picture.sun->azimuth_deg[i]);
            const SkylineStep* front = skyline_at(picture, at);
            out.rows.push_back({QStringLiteral("%1-21").arg(month, 2, 10, QLatin1Char('0')), QString::number(hour),
                                QString::number(at, 'f', 2), QString::number(height, 'f', 2),
                                QString::number(horizon.empty() ? 0.0 : horizon.elevation_deg(at), 'f', 2),
                                QString::number(front != nullptr ? front->elevation_deg : 0.0, 'f', 2)});
        }
    }
    return out;
}

// -------------------------------------------------------------------------------------------- tilt and bearing

void OrientationPage::show_site(const Site& site, const std::shared_ptr<const plan::PreparedWeather>& weather,
                                const std::vector<plan::PlacementPlan>& placements) {
    if (weather == nullptr) {
        picture_ = OrientationPicture{};
        weather_.reset();
        set_words(tr("The map needs the weather year of the job, which is being read."));
        view().show_picture({}, {});
        return;
    }
    // The plan's own sky model, so that map and months speak of the same light.
    const sky::DiffuseModel model =
        placements.empty() ? sky::DiffuseModel::hay_davies : placements.front().diffuse_model;
    if (weather != weather_ || site.ground_albedo != albedo_ || picture_.map == nullptr ||
        picture_.map->model != model) {
        picture_.map =
            std::make_shared<const sky::OrientationMap>(sky::orientation_map(weather->sky, site.ground_albedo, model));
        weather_ = weather;
        albedo_ = site.ground_albedo;
    }
    picture_.latitude_deg = weather->year.latitude_deg;
    picture_.collectors.clear();
    for (const plan::PlacementPlan& placed : placements)
        picture_.collectors.push_back({placed.placed.tilt_deg, placed.placed.azimuth_deg, qs(placed.label)});
    view().show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            paint_orientation_map(painter, picture_, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF pointer, double text_units) {
            const OrientationFrame where = orientation_frame(picture_, area, text_units);
            if (!where.frame.plot.contains(pointer)) return QString();
            const QPointF value = where.frame.value_at(pointer);
            return words_at(picture_, value.y(), where.bearing_of(value.x()));
        });
    const sky::OrientationMap& map = *picture_.map;
    QString text = tr("Most light in a year: tilt %1°, bearing %2, about %3.")
                       .arg(std::lround(map.best_tilt_deg))
                       .arg(bearing(map.best_azimuth_deg), quantity(map.best_kwh_m2, unit()));
    for (const OrientationPicture::Mark& mark : picture_.collectors) {
        const double here = map.at(mark.tilt_deg, mark.azimuth_deg);
        text += tr(" %1: tilt %2°, bearing %3, about %4, %5 of the best.")
                    .arg(mark.label)
                    .arg(std::lround(mark.tilt_deg))
                    .arg(bearing(mark.azimuth_deg), quantity(here, unit()), percent(here / map.best_kwh_m2));
    }
    text += tr(" Light only, with a free horizon and no shade; heat from the air does not depend on the bearing. Sky "
               "model: %1. Weather: %2%3.")
                .arg(QString::fromUtf8(sky::name_of(map.model)), qs(weather->year.source),
                     weather->year.invented ? tr(" (invented)") : QString());
    set_words(text);
}

FigureTable OrientationPage::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("tilt_deg"), QStringLiteral("bearing_deg"), QStringLiteral("light_kwh_m2")};
    if (picture_.map == nullptr) return out;
    for (int tilt = 0; tilt < sky::OrientationMap::tilts; ++tilt) {
        for (int azimuth = 0; azimuth + 1 < sky::OrientationMap::azimuths; ++azimuth) {
            const double tilt_deg = tilt * sky::OrientationMap::step_deg;
            const double azimuth_deg = azimuth * sky::OrientationMap::step_deg;
            out.rows.push_back({QString::number(tilt_deg, 'f', 0), QString::number(azimuth_deg, 'f', 0),
                                QString::number(picture_.map->at(tilt_deg, azimuth_deg), 'f', 1)});
        }
    }
    return out;
}

}  // namespace wg::ui
