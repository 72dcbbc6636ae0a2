// The firm's weather years: each kept as the plain CSV text that gives it again bit for bit.

#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"
#include "core/weather/read.h"
#include "core/weather/write_plain.h"

namespace wg::store {
namespace {

constexpr std::size_t max_label_bytes = 200;
constexpr std::size_t id_digits = 16;
constexpr const char* columns =
    "id, sha256, label, source, format, invented, latitude_deg, longitude_deg, altitude_m, utc_offset_h, "
    "global_kwh_m2, air_mean_c, imported_at";

WeatherYearRow row_of(const QSqlQuery& found) {
    const auto text = [&found](int column) { return found.value(column).toString().toStdString(); };
    WeatherYearRow row;
    row.id = text(0);
    row.sha256 = text(1);
    row.label = text(2);
    row.source = text(3);
    row.format = text(4);
    row.invented = found.value(5).toInt() != 0;
    row.latitude_deg = found.value(6).toDouble();
    row.longitude_deg = found.value(7).toDouble();
    row.altitude_m = found.value(8).toDouble();
    row.utc_offset_h = found.value(9).toDouble();
    row.global_kwh_m2 = found.value(10).toDouble();
    row.air_mean_c = found.value(11).toDouble();
    row.imported_at = text(12);
    return row;
}

WeatherYearRow head_of(const weather::Year& year, const std::string& content, const std::string& label, Instant now) {
    WeatherYearRow row;
    row.sha256 = sha256_hex(content);
    row.id = "year:" + row.sha256.substr(0, id_digits);
    row.source = year.source;
    row.label = label.empty() ? for_message(year.source, max_label_bytes - 3) : label;
    row.format = year.format;
    row.invented = year.invented;
    row.latitude_deg = year.latitude_deg;
    row.longitude_deg = year.longitude_deg;
    row.altitude_m = year.altitude_m;
    row.utc_offset_h = year.utc_offset_h;
    for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
        row.global_kwh_m2 += 1e-3 * year.global_w_m2[i];
        row.air_mean_c += year.air_c[i] / static_cast<double>(year.air_c.size());
    }
    row.imported_at = iso8601(now);
    return row;
}

bool whole(const QByteArray& content, const std::string& sha256) {
    return sha256_hex({content.constData(), static_cast<std::size_t>(content.size())}) == sha256;
}

}  // namespace

Problem SqlStore::unknown_weather_year(const std::string& id) const {
    return {database_->name(), "there is no weather year with the id '" + for_message(id) + "'",
            "Look in the list of weather years, or import the file again"};
}

Result<std::optional<WeatherYearRow>> SqlStore::weather_row(const std::string& id) const {
    Result<QSqlQuery> found =
        database_->query(QStringLiteral("SELECT %1 FROM weather_year WHERE id = ?").arg(columns), {to_qt(id)});
    if (!found) return found.problems();
    if (!found.value().next()) return std::optional<WeatherYearRow>();
    return std::optional<WeatherYearRow>(row_of(found.value()));
}

Result<WeatherYearRow> SqlStore::add_weather_year(const weather::Year& year, const std::string& label, Instant now) {
    const std::string where = "weather year '" + for_message(label.empty() ? year.source : label) + "'";
    if (label.size() > max_label_bytes || !is_utf8(label)) {
        return Problem{where, "its name is longer than 200 bytes or not text", "Give it a shorter name"};
    }
    const std::string content = weather::write_plain(year);
    // What is stored can be read again, and is the same then, or it is not stored.
    const Result<weather::Year> again = weather::read_plain(content, where);
    if (!again) return again.problems();
    if (weather::write_plain(again.value()) != content) {
        return Problem{where, "does not come back from its text as it was", "Import the file again"};
    }
    const WeatherYearRow row = head_of(again.value(), content, label, now);
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<WeatherYearRow>> stored = weather_row(row.id);
    if (!stored) return stored.problems();
    if (stored.value()) {
        if (stored.value()->sha256 == row.sha256) return *stored.value();
        return Problem{where, "has the same short id as another one, '" + for_message(stored.value()->label) + "'",
                       "Change its source line by a word and import it again"};
    }
    const QByteArray bytes(content.data(), static_cast<qsizetype>(content.size()));
    const std::optional<Problem> problem = database_->run(
        QStringLiteral("INSERT INTO weather_year (%1, content) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
            .arg(columns),
        {to_qt(row.id), to_qt(row.sha256), to_qt(row.label), to_qt(row.source), to_qt(row.format), row.invented ? 1 : 0,
         row.latitude_deg, row.longitude_deg, row.altitude_m, row.utc_offset_h, row.global_kwh_m2, row.air_mean_c,
         to_qt(row.imported_at), bytes});
    if (problem) return *problem;
    if (auto failed = transaction.commit()) return *failed;
    return row;
}

Result<std::vector<WeatherYearRow>> SqlStore::weather_years() {
    Result<QSqlQuery> found =
        database_->query(QStringLiteral("SELECT %1 FROM weather_year ORDER BY label, id").arg(columns));
    if (!found) return found.problems();
    std::vector<WeatherYearRow> out;
    while (found.value().next())
        out.push_back(row_of(found.value()));
    return out;
}

Result<weather::Year> SqlStore::weather_year(const std::string& id) {
    Result<QSqlQuery> found =
        database_->query("SELECT label, sha256, content FROM weather_year WHERE id = ?", {to_qt(id)});
    if (!found) return found.problems();
    QSqlQuery& row = found.value();
    if (!row.next()) return unknown_weather_year(id);
    const std::string where = "weather year '" + for_message(row.value(0).toString().toStdString()) + "'";
    const QByteArray content = row.value(2).toByteArray();
    if (!whole(content, row.value(1).toString().toStdString())) {
        return Problem{where, "is damaged: its content no longer has the hash it was stored with",
                       "Remove it and import the file again, or go back to the last backup"};
    }
    return weather::read_plain({content.constData(), static_cast<std::size_t>(content.size())}, where);
}

Result<bool> SqlStore::remove_weather_year(const std::string& id) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<WeatherYearRow>> stored = weather_row(id);
    if (!stored) return stored.problems();
    if (!stored.value()) return unknown_weather_year(id);
    Result<QSqlQuery> used = database_->query(database_->words().jobs_with_year, {to_qt(id), to_qt(id)});
    if (!used) return used.problems();
    std::string jobs;
    int count = 0;
    while (used.value().next()) {
        const std::string number = used.value().value(0).toString().toStdString();
        const std::string name = number.empty() ? used.value().value(1).toString().toStdString() : number;
        if (count < 3) jobs += (count == 0 ? "" : ", ") + for_message(name, 40);
        ++count;
    }
    if (count > 0) {
        return Problem{"weather year '" + for_message(stored.value()->label) + "'",
                       "is used by " + std::to_string(count) + (count == 1 ? " job: " : " jobs: ") + jobs +
                           (count > 3 ? " and others" : ""),
                       "Choose other weather for these jobs first"};
    }
    if (auto problem = database_->run("DELETE FROM weather_year WHERE id = ?", {to_qt(id)})) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<std::vector<std::string>> SqlStore::damaged_weather_years() const {
    Result<QSqlQuery> found =
        database_->query("SELECT label, sha256, content FROM weather_year", {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (whole(row.value(2).toByteArray(), row.value(1).toString().toStdString())) continue;
        out.push_back(for_message(row.value(0).toString().toStdString()));
    }
    return out;
}

}  // namespace wg::store
