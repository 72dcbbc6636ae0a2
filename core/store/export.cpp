#include "core/store/export.h"

#include <QDir>
#include <QSaveFile>
#include <set>

#include "core/job/codec.h"
#include "core/quantity/utf8.h"
#include "core/store/equipment_book.h"
#include "core/store/price_book.h"
#include "core/store/rule_book.h"
#include "core/store/text.h"
#include "core/weather/write_plain.h"

namespace wg::store {
namespace {

// Each once.
QString file_stem(const std::string& wanted, const std::string& id, std::set<QString>& taken) {
    QString stem = to_qt(plain_file_name(wanted, id));
    if (taken.count(stem.toCaseFolded()) > 0) stem += '-' + to_qt(id).replace(':', '-');
    taken.insert(stem.toCaseFolded());
    return stem;
}

std::optional<Problem> write_to(const QString& path, const std::string& content) {
    return write_file(path.toStdString(), content);
}

struct Folders {
    QDir jobs;
    QDir quotes;
    QDir photographs;
    QDir weather;
    QDir equipment;
    QDir prices;
    QDir rules;
};

Result<Folders> make_folders(const std::string& folder) {
    const QDir root(to_qt(folder));
    const Problem refused{folder, "is not empty", "Name a folder that is new or empty"};
    if (root.exists() && !root.isEmpty()) return refused;
    Folders out;
    for (const auto& [name, dir] :
         {std::pair{"jobs", &out.jobs}, std::pair{"quotes", &out.quotes}, std::pair{"photographs", &out.photographs},
          std::pair{"weather", &out.weather}, std::pair{"equipment", &out.equipment}, std::pair{"prices", &out.prices},
          std::pair{"rules", &out.rules}}) {
        if (!root.mkpath(name)) return Problem{folder, "cannot be made", "Name another folder"};
        *dir = QDir(root.filePath(name));
    }
    return out;
}

std::optional<Problem> export_photographs(Store& store, const Job& job, const Folders& to, std::set<std::string>& seen,
                                          Exported& out) {
    for (const Photograph& photograph : job.photographs) {
        if (!seen.insert(photograph.sha256).second) continue;
        const Result<std::string> bytes = store.photograph(photograph.sha256);
        if (!bytes) {
            out.missing.push_back(for_message(photograph.file_name) + " of job " + for_message(job.number) + ": " +
                                  bytes.problems().front().what);
            continue;
        }
        if (auto problem = write_to(to.photographs.filePath(to_qt(photograph.sha256) + picture_ending(bytes.value())),
                                    bytes.value())) {
            return problem;
        }
        ++out.photographs;
    }
    return std::nullopt;
}

std::optional<Problem> export_equipment(Store& store, const Folders& to, Exported& out) {
    const Result<EquipmentKept> kept = EquipmentBook(store).current();
    if (!kept) return kept.problems().front();
    for (const Problem& damaged : kept.value().damaged)
        out.missing.push_back(damaged.where + ": " + damaged.what);
    std::set<QString> names;
    for (const EquipmentVersion& item : kept.value().items) {
        if (item.withdrawn) continue;
        const QString name = file_stem(item.item_id, item.sha256, names) + ".json";
        if (auto problem = write_to(to.equipment.filePath(name), item.content)) return problem;
        ++out.equipment;
    }
    return std::nullopt;
}

std::optional<Problem> export_prices(Store& store, const Folders& to, Exported& out) {
    const PriceBook book(store);
    const Result<std::vector<PriceListVersion>> lists = book.lists();
    if (!lists) return lists.problems().front();
    std::set<QString> names;
    for (const PriceListVersion& list : lists.value()) {
        if (list.withdrawn) continue;
        const Result<std::string> content = book.content(list.list_id, list.version);
        if (!content) {
            out.missing.push_back(content.problems().front().where + ": " + content.problems().front().what);
            continue;
        }
        const QString name = file_stem(list.list_id, list.sha256, names) + ".json";
        if (auto problem = write_to(to.prices.filePath(name), content.value())) return problem;
        ++out.price_lists;
    }
    return std::nullopt;
}

std::optional<Problem> export_rules(Store& store, const Folders& to, Exported& out) {
    const RuleBook book(store);
    const Result<std::vector<RuleSetVersion>> sets = book.sets();
    if (!sets) return sets.problems().front();
    std::set<QString> names;
    for (const RuleSetVersion& set : sets.value()) {
        if (set.withdrawn) continue;
        const Result<std::string> content = book.content(set.id, set.version);
        if (!content) {
            out.missing.push_back(content.problems().front().where + ": " + content.problems().front().what);
            continue;
        }
        const QString name = file_stem(set.id, set.sha256, names) + ".json";
        if (auto problem = write_to(to.rules.filePath(name), content.value())) return problem;
        ++out.rule_sets;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Problem> write_file(const std::string& path, const std::string& content) {
    QSaveFile file(to_qt(path));
    if (file.open(QIODevice::WriteOnly) &&
        file.write(content.data(), static_cast<qint64>(content.size())) == static_cast<qint64>(content.size()) &&
        file.commit()) {
        return std::nullopt;
    }
    return Problem{path, file.errorString().toStdString(), "Check the disk and its free space"};
}

std::string plain_file_name(const std::string& wanted, const std::string& id) {
    QString stem;
    for (const QChar c : to_qt(wanted))
        stem += (c.isLetterOrNumber() || c == '-' || c == '_') ? c : QChar('-');
    stem.truncate(80);
    return stem.isEmpty() ? id : stem.toStdString();
}

const char* picture_ending(const std::string& bytes) {
    if (bytes.rfind("\x89PNG", 0) == 0) return ".png";
    return bytes.rfind("RIFF", 0) == 0 ? ".webp" : ".jpg";
}

Result<Exported> export_everything(Store& store, const std::string& folder) {
    const Result<Folders> made = make_folders(folder);
    if (!made) return made.problems();
    const Folders& to = made.value();
    Exported out;
    std::set<QString> names;
    std::set<QString> quote_names;
    std::set<QString> year_names;
    std::set<std::string> seen;
    constexpr int at_once = 200;
    for (int offset = 0;; offset += at_once) {
        const Result<std::vector<JobRow>> rows = store.list({}, at_once, offset);
        if (!rows) return rows.problems();
        for (const JobRow& row : rows.value()) {
            const Result<Job> job = store.load(row.id);
            if (!job) return job.problems();
            const QString stem = file_stem(row.number, row.id, names);
            if (auto problem = write_to(to.jobs.filePath(stem + ".json"), job_to_json(job.value()))) return *problem;
            ++out.jobs;
            const Result<std::vector<IssuedQuote>> quotes = store.quotes(row.id);
            if (!quotes) return quotes.problems();
            for (const IssuedQuote& quote : quotes.value()) {
                const QString name = file_stem(quote.number, quote.id, quote_names) + ".json";
                if (auto problem = write_to(to.quotes.filePath(name), quote.plan_json)) return *problem;
                ++out.quotes;
            }
            if (auto problem = export_photographs(store, job.value(), to, seen, out)) return *problem;
        }
        if (rows.value().size() < static_cast<std::size_t>(at_once)) break;
    }
    const Result<std::vector<WeatherYearRow>> years = store.weather_years();
    if (!years) return years.problems();
    for (const WeatherYearRow& row : years.value()) {
        const Result<weather::Year> year = store.weather_year(row.id);
        if (!year) return year.problems();
        const QString name = file_stem(row.label, row.id, year_names) + ".csv";
        if (auto problem = write_to(to.weather.filePath(name), weather::write_plain(year.value()))) return *problem;
        ++out.weather_years;
    }
    if (auto problem = export_equipment(store, to, out)) return *problem;
    if (auto problem = export_prices(store, to, out)) return *problem;
    if (auto problem = export_rules(store, to, out)) return *problem;
    return out;
}

}  // namespace wg::store
