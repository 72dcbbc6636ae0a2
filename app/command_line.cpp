#include "app/command_line.h"

#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <cmath>
#include <cstdio>
#include <ostream>
#include <vector>

#include "app/arguments.h"
#include "app/client_command.h"
#include "app/firm_reference.h"
#include "app/job_command.h"
#include "app/rate_command.h"
#include "app/resources.h"
#include "app/store_command.h"
#include "core/job/codec.h"
#include "core/plan/plan.h"
#include "core/plan/weather_ensemble.h"
#include "core/quantity/time.h"
#include "core/sun/position.h"
#include "core/weather/quality.h"
#include "core/weather/read.h"
#include "ui/documents/documents.h"

namespace wg::app {
namespace {

int run_sun(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    for (const char* name : {"lat", "lon", "time", "altitude"})
        args.value_option(QString::fromLatin1(name));
    QStringList files;
    QString error;
    if (!args.parse(arguments, files, error)) return bad_usage(err, error);
    if (!files.isEmpty()) return bad_usage(err, QStringLiteral("sun takes no file, found '%1'").arg(files.first()));
    for (const char* name : {"lat", "lon", "time"}) {
        if (!args.parser.isSet(QString::fromLatin1(name))) {
            return bad_usage(err, QStringLiteral("sun needs --%1").arg(QLatin1String(name)));
        }
    }
    const Result<double> latitude = number_option(args.parser, QStringLiteral("lat"), -90.0, 90.0);
    const Result<double> longitude = number_option(args.parser, QStringLiteral("lon"), -180.0, 180.0);
    const Result<Instant> when = instant_from_iso8601(args.parser.value(QStringLiteral("time")).toStdString());
    if (!latitude) return bad_input(err, latitude.problems());
    if (!longitude) return bad_input(err, longitude.problems());
    if (!when) {
        std::vector<Problem> problems = when.problems();
        problems.front().where = "--time";
        return bad_input(err, problems);
    }
    sun::Observer observer;
    observer.latitude_deg = latitude.value();
    observer.longitude_deg = longitude.value();
    if (args.parser.isSet(QStringLiteral("altitude"))) {
        const Result<double> altitude = number_option(args.parser, QStringLiteral("altitude"), -430.0, 9000.0);
        if (!altitude) return bad_input(err, altitude.problems());
        observer.altitude_m = altitude.value();
        // International standard atmosphere, ISO 2533.
        observer.pressure_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * observer.altitude_m, 5.25588);
    }
    const std::string stamp = iso8601(when.value());
    const CivilDate date = date_from_iso8601(stamp.substr(0, 10)).value();
    if (date.year < 1950 || date.year > 2050) {
        return bad_input(err, {{"--time", "the year " + std::to_string(date.year) + " lies outside 1950 to 2050",
                                "Earth's rotation is only tabled for these years"}});
    }
    const double decimal_year = date.year + (day_of_year(date) - 0.5) / 365.25;
    const sun::Position sun = sun::position(when.value(), 0.0, observer, sun::delta_t_s(decimal_year));
    char line[256];
    std::snprintf(line, sizeof line,
                  "time %s\nzenith %.4f deg\napparent zenith %.4f deg (with refraction)\nazimuth %.4f deg\n",
                  stamp.c_str(), sun.zenith_deg, sun.apparent_zenith_deg, sun.azimuth_deg);
    out << line << "method: NREL solar position algorithm, Reda and Andreas 2008\n";
    return exit_done;
}

int run_weather(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    QStringList files;
    QString error;
    if (!args.parse(arguments, files, error)) return bad_usage(err, error);
    if (files.size() != 1) return bad_usage(err, QStringLiteral("weather needs one file"));
    const std::string name = files.first().toStdString();
    const Result<std::string> text = file_text(name);
    if (!text) return bad_input(err, text.problems());
    const Result<weather::Year> year = weather::read_any(text.value(), name);
    if (!year) return bad_input(err, year.problems());
    out << weather::text(year.value(), weather::assess(year.value()));
    return exit_done;
}

int write_documents(const Job& job, const plan::Plan& plan, const QString& folder, const ui::PaperLook& look,
                    std::ostream& err) {
    if (!QDir().mkpath(folder)) {
        err << folder.toStdString() << ": the folder cannot be made. Choose another with --out\n";
        return exit_failed;
    }
    const QDir dir(folder);
    if (!write_file(dir.filePath(QStringLiteral("plan.json")), plan::plan_to_json(plan), err)) return exit_failed;
    if (!write_file(dir.filePath(QStringLiteral("parts.csv")), parts::to_csv(plan.parts.lines, plan.currency), err)) {
        return exit_failed;
    }
    ui::PaperInput input;
    input.job = job;
    input.plan = plan;
    input.look = look;
    input.firm.invented = plan.invented;
    if (plan.invented) {
        input.firm.name = QStringLiteral("Invented firm, for demonstration");
    }
    input.printed_on = QDate::currentDate();
    std::vector<ui::Paper> papers = {ui::Paper::quote,    ui::Paper::install_sheet, ui::Paper::survey_sheet,
                                     ui::Paper::workings, ui::Paper::service_sheet, ui::Paper::booklet};
    if (!job.record.empty()) papers.push_back(ui::Paper::record);
    for (const ui::Paper paper : papers) {
        const auto written = ui::write_pdf(paper, input, dir.filePath(ui::file_name_of(paper)));
        if (!written) {
            err << text_of(written.problems()) << '\n';
            return exit_failed;
        }
    }
    return exit_done;
}

// A file that is there is the job; else, with a store, the number of one of its jobs.
Result<Job> read_job(const std::string& name, store::Store* store) {
    if (store != nullptr && !QFileInfo::exists(QString::fromStdString(name))) return job_of_store(*store, name);
    const Result<std::string> text = file_text(name);
    if (!text) return text.problems();
    return job_from_json(text.value(), name);
}

int run_plan(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    for (const char* name : {"weather", "out", "choice", "paper", "language", "store"})
        args.value_option(QString::fromLatin1(name));
    for (const char* name : {"json", "large-print", "black-and-white"})
        args.flag(QString::fromLatin1(name));
    QStringList files;
    QString error;
    if (!args.parse(arguments, files, error)) return bad_usage(err, error);
    if (files.size() != 1) return bad_usage(err, QStringLiteral("plan needs one job file"));
    for (const auto& [option, words] :
         {std::pair{QStringLiteral("paper"), QStringList{QStringLiteral("a4"), QStringLiteral("letter")}},
          std::pair{QStringLiteral("language"),
                    QStringList{QStringLiteral("en"), QStringLiteral("es"), QStringLiteral("de")}}}) {
        if (args.parser.isSet(option) && !words.contains(args.parser.value(option)))
            return bad_usage(err, QStringLiteral("--%1 takes %2, found '%3'")
                                      .arg(option, words.join(QStringLiteral(" or ")), args.parser.value(option)));
    }
    QStringList look{args.parser.value(QStringLiteral("paper")), args.parser.value(QStringLiteral("language"))};
    for (const char* name : {"large-print", "black-and-white"})
        if (args.parser.isSet(QString::fromLatin1(name))) look += QString::fromLatin1(name);

    std::unique_ptr<store::Store> store;
    if (args.parser.isSet(QStringLiteral("store"))) {
        Result<std::unique_ptr<store::Store>> opened = open_store_of_firm(args.parser.value(QStringLiteral("store")));
        if (!opened) return bad_input(err, opened.problems());
        store = std::move(opened).value();
    }
    const std::string name = files.first().toStdString();
    const Result<Job> job = read_job(name, store.get());
    if (!job) return bad_input(err, job.problems());

    Result<plan::Reference> reference = built_in_reference();
    if (!reference) return bad_input(err, reference.problems());
    if (store != nullptr) {
        Result<WithFirm> with_firm = with_what_the_firm_has(*store, reference.value(), job.value());
        if (!with_firm) return bad_input(err, with_firm.problems());
        if (!with_firm.value().left_out.empty())
            err << "left out of the plan:\n" << text_of(with_firm.value().left_out) << '\n';
        reference = std::move(with_firm).value().reference;
    }
    if (args.parser.isSet(QStringLiteral("weather"))) {
        const std::string weather_name = args.parser.value(QStringLiteral("weather")).toStdString();
        const Result<std::string> weather_text = file_text(weather_name);
        if (!weather_text) return bad_input(err, weather_text.problems());
        Result<weather::Year> year = weather::read_any(weather_text.value(), weather_name);
        if (!year) return bad_input(err, year.problems());
        reference.value().weather = plan::prepared(std::move(year).value());
    }
    // Problems with the job's weather are left for the plan to tell, with everything else that it finds.
    if (const auto with_years = plan::with_weather_and_years(reference.value(), job.value().weather,
                                                             job.value().site.location.altitude_m)) {
        reference = *with_years.value();
    }
    plan::Options options;
    if (args.parser.isSet(QStringLiteral("choice"))) {
        const std::string wanted = args.parser.value(QStringLiteral("choice")).toStdString();
        for (const Choice& choice : job.value().choices) {
            if (choice.id == wanted || choice.label == wanted) options.choice_id = choice.id;
        }
        if (options.choice_id.empty()) {
            return bad_input(err, {{"--choice", "the job has no choice '" + wanted + "'", "Name one by label or id"}});
        }
    }
    const Result<plan::Plan> plan = plan::plan(job.value(), reference.value(), options);
    if (!plan) return bad_input(err, plan.problems());

    const bool to_folder = args.parser.isSet(QStringLiteral("out"));
    const QString folder = to_folder ? args.parser.value(QStringLiteral("out")) : QStringLiteral(".");
    const int written =
        write_documents(job.value(), plan.value(), folder, ui::look_from_key(look.join(QLatin1Char(' '))), err);
    if (written != exit_done) return written;
    out << (args.parser.isSet(QStringLiteral("json")) ? plan::plan_to_json(plan.value()) : plan::summary(plan.value()));
    if (!args.parser.isSet(QStringLiteral("json"))) {
        out << "\nWritten to " << QDir(folder).path().toStdString()
            << ": plan.json, quote.pdf, parts.csv, install-sheet.pdf, survey-sheet.pdf, workings.pdf,\n"
               "service-sheet.pdf, booklet.pdf"
            << (job.value().record.empty() ? "\n" : ", record.pdf\n");
    }
    return plan.value().stopped() ? exit_stop : exit_done;
}

}  // namespace

QString usage() {
    return QStringLiteral(
        "Warmgable plans domestic hot-water systems with a bare evaporator plate and a small heat pump.\n"
        "\n"
        "  warmgable                              opens the desk\n"
        "  warmgable --demo                       opens the demonstration job (invented data)\n"
        "  warmgable JOB.json                     takes a job file onto the desk and opens it\n"
        "  warmgable plan JOB.json [--weather FILE] [--choice LABEL] [--out DIR] [--json] [--store PLACE]\n"
        "                 [--paper a4|letter] [--large-print] [--black-and-white] [--language en|es|de]\n"
        "                                         plans the job; writes plan.json, quote.pdf, parts.csv,\n"
        "                                         install-sheet.pdf, survey-sheet.pdf, workings.pdf,\n"
        "                                         service-sheet.pdf and booklet.pdf to DIR (default: here), with\n"
        "                                         record.pdf when the job has entries,\n"
        "                                         and prints a summary, or plan.json with --json;\n"
        "                                         --store: with the firm's own prices and equipment, and JOB.json\n"
        "                                         may be the number of a job there\n"
        "  warmgable sun --lat DEG --lon DEG --time ISO8601 [--altitude M]\n"
        "                                         prints the sun's zenith and azimuth (clockwise from north)\n"
        "  warmgable weather FILE                 prints what a weather file holds and how good it is\n"
        "                                         (EPW, TMY3 CSV, PVGIS TMY CSV, plain CSV)\n"
        "  warmgable rate --collector ID --count N --block ID --cylinder ID [--cycle S|M|L|XL|XXL] [--air 2|7|14]\n"
        "                 [--set-point C] [--equipment FILE] [--fit FILE [--out FILE]] [--json]\n"
        "                                         computes the rating test of EN 16147 on a set of the catalogue\n"
        "                                         (default: cycles M, L, XL at 7 and 14 deg C air); --fit calibrates "
        "it\n"
        "                                         to the declared values in FILE, --out writes the calibrated set as "
        "an\n"
        "                                         equipment file, --equipment adds the items of such a file\n"
        "  warmgable store check|backup FILE|restore FILE|export DIR|copy PLACE [--store PLACE]\n"
        "                                         check: everything against its hash; backup: a whole copy, also of a\n"
        "                                         server; restore: puts a backup in the store's place and keeps what\n"
        "                                         was there; export: jobs, quotes, photographs and weather years as\n"
        "                                         files; copy: everything into a new file or an empty database\n"
        "  warmgable job pack NUMBER FILE|take FILE [--store PLACE]\n"
        "                                         pack: one job with its photographs and quotes as a file to send; "
        "take:\n"
        "                                         such a file into the store, put together with what is there\n"
        "  warmgable client find WORDS|export DIR NUMBER...|erase NUMBER... --reason TEXT|over [--store PLACE]\n"
        "                                         what the firm keeps about a client: find lists their jobs, export\n"
        "                                         writes them as files, erase takes out everything but the numbers "
        "and\n"
        "                                         the quotes that have to stay, over erases those whose time is over\n"
        "  warmgable --help | --version\n"
        "\n"
        "  --store PLACE                          keeps the jobs there instead of the usual place: a file, or a "
        "server\n"
        "                                         as postgresql://USER@HOST/DATABASE (password: ~/.pgpass)\n"
        "\n"
        "Exit: 0 done, 1 the plan has a stop (rate: a test does not finish or a declared value is not met;\n"
        "store: something is damaged or missing, job: something stays open), 2 bad "
        "usage,\n"
        "3 bad input, 4 could not write.\n"
        "\n"
        "Planning aid only. Local codes and licensed practice decide.\n");
}

bool is_command(const QStringList& arguments) {
    if (arguments.isEmpty()) return false;
    const QString& first = arguments.first();
    return first == QLatin1String("plan") || first == QLatin1String("sun") || first == QLatin1String("weather") ||
           first == QLatin1String("rate") || first == QLatin1String("store") || first == QLatin1String("client") ||
           first == QLatin1String("job") || first == QLatin1String("--help") || first == QLatin1String("-h") ||
           first == QLatin1String("--version");
}

int run_command(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const QString& command = arguments.first();
    const QStringList rest = arguments.mid(1);
    if (command == QLatin1String("--version")) {
        out << "warmgable " << WG_VERSION << '\n';
        return exit_done;
    }
    if (command == QLatin1String("--help") || command == QLatin1String("-h") ||
        rest.contains(QLatin1String("--help"))) {
        out << usage().toStdString();
        return exit_done;
    }
    if (command == QLatin1String("sun")) return run_sun(rest, out, err);
    if (command == QLatin1String("weather")) return run_weather(rest, out, err);
    if (command == QLatin1String("rate")) return run_rate(rest, out, err);
    if (command == QLatin1String("store")) return run_store(rest, out, err);
    if (command == QLatin1String("client")) return run_client(rest, out, err);
    if (command == QLatin1String("job")) return run_job(rest, out, err);
    return run_plan(rest, out, err);
}

}  // namespace wg::app
