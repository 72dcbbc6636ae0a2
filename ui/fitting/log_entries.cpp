#include "ui/fitting/log_entries.h"

#include <QCoreApplication>
#include <cmath>

namespace wg::ui {
namespace {

constexpr double surely_pumped_pa = 50000.0;
constexpr std::size_t most_hold_readings = 12;  ///< a straight line needs no more

std::optional<double> pressure_of(const commissioning::GaugePoint& point, bool evacuation) {
    return evacuation ? point.absolute_pa : point.gauge_bar;
}

std::vector<commissioning::GaugePoint> points_from(const commissioning::GaugeLog& log, bool evacuation,
                                                   std::size_t from) {
    std::vector<commissioning::GaugePoint> out;
    for (std::size_t i = from; i < log.points.size(); ++i)
        if (pressure_of(log.points[i], evacuation)) out.push_back(log.points[i]);
    return out;
}

}  // namespace

bool looks_like_evacuation(const commissioning::GaugeLog& log) {
    if (!log.has_absolute) return false;
    if (!log.has_gauge) return true;
    for (const commissioning::GaugePoint& point : log.points)
        if (point.absolute_pa && *point.absolute_pa < surely_pumped_pa) return true;
    return false;
}

std::size_t likely_from(const commissioning::GaugeLog& log, bool evacuation) {
    std::size_t best = 0;
    std::optional<double> of_best;
    for (std::size_t i = 0; i + 1 < log.points.size(); ++i) {
        const auto here = pressure_of(log.points[i], evacuation);
        if (!here || (of_best && (evacuation ? *here >= *of_best : *here <= *of_best))) continue;
        best = i;
        of_best = here;
    }
    return best;
}

QDateTime start_of(const commissioning::GaugeLog& log, const QDate& today) {
    if (!log.started_at.empty()) {
        const QDateTime at = QDateTime::fromString(QString::fromStdString(log.started_at), Qt::ISODate);
        if (at.isValid()) return at;
    }
    if (!log.started_s_of_day) return {};
    return QDateTime(today, QTime(0, 0).addSecs(static_cast<int>(std::floor(*log.started_s_of_day))));
}

std::vector<Reading> entries_of_log(const commissioning::GaugeLog& log, const LogChoice& choice) {
    const auto points =
        commissioning::thinned(points_from(log, choice.evacuation, choice.from),
                               choice.evacuation ? commissioning::most_log_readings : most_hold_readings);
    if (points.size() < 2) return {};
    std::vector<Reading> out;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool first = i == 0;
        const bool last = i + 1 == points.size();
        Reading r;
        r.kind = choice.evacuation ? (first ? ReadingKind::vacuum_level : ReadingKind::vacuum_after_rise)
                                   : (first ? ReadingKind::pressure_hold_start : ReadingKind::pressure_hold_end);
        const QDateTime at = choice.started.addMSecs(static_cast<qint64>(std::llround(points[i].seconds * 1000.0)));
        r.taken_at = at.toOffsetFromUtc(at.offsetFromUtc()).toString(Qt::ISODate).toStdString();
        r.value = *pressure_of(points[i], choice.evacuation);
        r.second_value = points[i].c;
        // By hand the temperature is known where it was read: a hold's at both ends, the coldest part's throughout.
        if (!r.second_value && (first || choice.evacuation)) r.second_value = choice.start_c;
        if (!r.second_value && last) r.second_value = choice.end_c;
        if (!choice.evacuation && (first || last)) r.indoors_c = choice.indoors_c;
        if (!choice.evacuation) r.plate = choice.plate;
        r.taken_by = choice.who.toStdString();
        r.instrument = choice.instrument.toStdString();
        r.calibrated_on = choice.calibrated_on.toStdString();
        r.occasion = choice.occasion;
        r.note = QCoreApplication::translate("LogEntries", "from the log %1").arg(choice.file_name).toStdString();
        out.push_back(std::move(r));
    }
    return out;
}

commissioning::Curve curve_of_log(const commissioning::GaugeLog& log, bool evacuation, std::size_t from) {
    const auto words = [](const char* text) { return QCoreApplication::translate("LogEntries", text).toStdString(); };
    commissioning::Curve curve;
    curve.x_label = words(evacuation ? "since valve-off" : "since the start of the hold");
    curve.x_unit = "min";
    curve.y_label = words(evacuation ? "absolute" : "gauge");
    curve.y_unit = evacuation ? "Pa" : "bar";
    const auto points = points_from(log, evacuation, from);
    for (const commissioning::GaugePoint& point : commissioning::thinned(points, 400))
        curve.read.push_back({(point.seconds - points.front().seconds) / 60.0, *pressure_of(point, evacuation)});
    return curve;
}

}  // namespace wg::ui
