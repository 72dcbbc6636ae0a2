#include "app/store_command.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QSysInfo>
#include <memory>
#include <ostream>

#include "app/arguments.h"
#include "app/command_line.h"
#include "core/store/connection.h"
#include "core/store/export.h"
#include "core/store/restore.h"
#include "core/store/store.h"

namespace wg::app {
namespace {

Instant now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

int could_not(std::ostream& err, const std::vector<Problem>& problems) {
    err << text_of(problems) << '\n';
    return exit_failed;
}

// A store that is there already: a mistyped name makes no empty one.
Result<std::unique_ptr<store::Store>> open_present(const QString& place) {
    if (!store::is_address(place.toStdString()) && !QFileInfo::exists(place))
        return Problem{place.toStdString(), "there is no such store", "Name it with --store"};
    return store::Store::open_place(place.toStdString(), now(), seat_name());
}

int run_check(store::Store& store, std::ostream& out, std::ostream& err) {
    const Result<std::string> found = store.check();
    if (!found) return could_not(err, found.problems());
    if (found.value() != "ok") {
        out << "damaged: " << found.value() << '\n';
        return exit_stop;
    }
    const Result<int> jobs = store.count({});
    if (!jobs) return could_not(err, jobs.problems());
    out << "whole: " << jobs.value() << (jobs.value() == 1 ? " job" : " jobs") << ", database version "
        << store.schema_version() << '\n';
    return exit_done;
}

int run_export(store::Store& store, const QString& folder, std::ostream& out, std::ostream& err) {
    const Result<store::Exported> done = store::export_everything(store, folder.toStdString());
    if (!done) return could_not(err, done.problems());
    const store::Exported& counted = done.value();
    out << "Written to " << folder.toStdString() << ": " << counted.jobs << " jobs, " << counted.quotes << " quotes, "
        << counted.photographs << " photographs, " << counted.weather_years << " weather years, " << counted.equipment
        << " items of equipment, " << counted.price_lists << " price lists, " << counted.rule_sets << " rule sets\n";
    for (const std::string& line : counted.missing)
        err << "missing: " << line << '\n';
    return counted.missing.empty() ? exit_done : exit_stop;
}

int run_restore(const QString& backup, const QString& place, std::ostream& out, std::ostream& err) {
    if (store::is_address(place.toStdString())) {
        return bad_usage(err,
                         QStringLiteral("restore puts a file in a file's place; copy a backup to an empty database "
                                        "with 'store copy'"));
    }
    const Result<std::string> before = store::restore_backup(backup.toStdString(), place.toStdString(), now());
    if (!before) return bad_input(err, before.problems());
    out << place.toStdString() << " is the backup now\n";
    if (!before.value().empty()) out << "What it was before: " << before.value() << '\n';
    return exit_done;
}

int run_copy(store::Store& store, const QString& target, std::ostream& out, std::ostream& err) {
    const auto opened = store::Store::open_place(target.toStdString(), now(), seat_name());
    if (!opened) return bad_input(err, opened.problems());
    const Result<bool> copied = store.copy_to(*opened.value());
    if (!copied) return could_not(err, copied.problems());
    out << "Everything is in " << opened.value()->path() << ", row for row the same\n";
    return exit_done;
}

}  // namespace

QString usual_store_path() {
    QCoreApplication::setApplicationName(QStringLiteral("Warmgable"));
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return QDir(folder).filePath(QStringLiteral("desk.sqlite"));
}

std::string seat_name() {
    QString user = qEnvironmentVariable("USER");
    if (user.isEmpty()) user = qEnvironmentVariable("USERNAME");
    const QString machine = QSysInfo::machineHostName();
    return (user.isEmpty() ? machine : user + QStringLiteral(" on ") + machine).toStdString();
}

int run_store(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    args.value_option(QStringLiteral("store"));
    QStringList words;
    QString error;
    if (!args.parse(arguments, words, error)) return bad_usage(err, error);
    const QStringList with_target{QStringLiteral("backup"), QStringLiteral("restore"), QStringLiteral("export"),
                                  QStringLiteral("copy")};
    const QString what = words.value(0);
    if (what != QLatin1String("check") && !with_target.contains(what))
        return bad_usage(err,
                         QStringLiteral("store takes check, backup, restore, export or copy, found '%1'").arg(what));
    if (words.size() != (with_target.contains(what) ? 2 : 1))
        return bad_usage(err, QStringLiteral("store %1 needs %2")
                                  .arg(what, with_target.contains(what) ? QStringLiteral("one file or folder")
                                                                        : QStringLiteral("nothing more")));
    const QString place =
        args.parser.isSet(QStringLiteral("store")) ? args.parser.value(QStringLiteral("store")) : usual_store_path();
    if (what == QLatin1String("restore")) return run_restore(words[1], place, out, err);
    const auto opened = open_present(place);
    if (!opened) return bad_input(err, opened.problems());
    store::Store& store = *opened.value();
    if (what == QLatin1String("check")) return run_check(store, out, err);
    if (what == QLatin1String("export")) return run_export(store, words[1], out, err);
    if (what == QLatin1String("copy")) return run_copy(store, words[1], out, err);
    const Result<bool> done = store.backup(words[1].toStdString());
    if (!done) return could_not(err, done.problems());
    out << "Written and checked: " << words[1].toStdString() << '\n';
    return exit_done;
}

}  // namespace wg::app
