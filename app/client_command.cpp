#include "app/client_command.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>
#include <ostream>

#include "app/arguments.h"
#include "app/command_line.h"
#include "app/store_command.h"
#include "core/store/connection.h"
#include "core/store/customers.h"
#include "core/store/personal.h"
#include "ui/common/opened_papers.h"

namespace wg::app {
namespace {

Instant this_moment() {
    return {QDateTime::currentSecsSinceEpoch()};
}

int failed(std::ostream& err, const std::vector<Problem>& problems) {
    err << text_of(problems) << '\n';
    return exit_failed;
}

std::vector<std::string> to_std(const QStringList& words) {
    std::vector<std::string> out;
    out.reserve(static_cast<std::size_t>(words.size()));
    for (const QString& word : words)
        out.push_back(word.toStdString());
    return out;
}

int find_jobs(const store::PersonalData& data, const store::CustomerBook& book, const QStringList& words,
              std::ostream& out, std::ostream& err) {
    const auto found = data.find(words.join(QLatin1Char(' ')).toStdString(), this_moment());
    if (!found) return bad_input(err, found.problems());
    for (const store::ClientJob& job : found.value()) {
        out << (job.number.empty() ? job.job_id : job.number) << (job.removed ? " (removed)" : "") << ": " << job.client
            << ", " << job.street << ", " << job.postcode << ' ' << job.town << ", " << job.phone << ", " << job.email
            << "; " << job.quotes << (job.quotes == 1 ? " quote" : " quotes");
        if (!job.quotes_kept_until.empty()) out << ", kept until " << job.quotes_kept_until;
        out << '\n';
    }
    const auto customers = book.page(words.join(QLatin1Char(' ')).toStdString(), 1000, 0);
    if (!customers) return bad_input(err, customers.problems());
    for (const store::CustomerRow& one : customers.value())
        out << "customer " << one.number << ": " << one.name << ", " << one.town << ", " << one.phone << ", "
            << one.email << "; " << one.jobs << (one.jobs == 1 ? " job" : " jobs") << "; id " << one.id << '\n';
    if (found.value().empty() && customers.value().empty()) out << "No job has a client of these words\n";
    return exit_done;
}

int hand_out(const store::PersonalData& data, const QString& folder, const QStringList& numbers, std::ostream& out,
             std::ostream& err) {
    const auto named = data.named(to_std(numbers));
    if (!named) return bad_input(err, named.problems());
    const auto done = data.export_to(named.value().job_ids, folder.toStdString(), named.value().customer_ids);
    if (!done) return failed(err, done.problems());
    const store::ExportedClient& counted = done.value();
    out << "Written to " << folder.toStdString() << ": " << counted.jobs << " jobs, " << counted.revisions
        << " of their revisions, " << counted.quotes << " quotes, " << counted.papers
        << " of their papers and signatures, " << counted.photographs << " photographs";
    if (counted.customers > 0)
        out << ", " << counted.customers << (counted.customers == 1 ? " customer" : " customers");
    out << '\n';
    for (const std::string& line : counted.missing)
        err << "missing: " << line << '\n';
    return counted.missing.empty() ? exit_done : exit_stop;
}

int say_erased(const Result<store::Erased>& done, std::ostream& out, std::ostream& err) {
    QCoreApplication::setApplicationName(QStringLiteral("Warmgable"));  // the window's, whose copies these are
    ui::remove_opened_papers();
    if (!done) return failed(err, done.problems());
    const store::Erased& counted = done.value();
    out << "Erased: " << counted.jobs << " jobs, " << counted.revisions << " revisions, " << counted.photographs
        << " photographs, " << counted.quotes << " quotes";
    if (counted.customers > 0)
        out << ", " << counted.customers << (counted.customers == 1 ? " customer" : " customers");
    if (counted.quotes_kept > 0) out << "; " << counted.quotes_kept << " quotes stay until their time is over";
    out << "\nBackups made before, files that were exported and copies on other machines still hold the data.\n";
    return exit_done;
}

}  // namespace

int run_client(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    args.value_option(QStringLiteral("store"));
    args.value_option(QStringLiteral("reason"));
    QStringList words;
    QString error;
    if (!args.parse(arguments, words, error)) return bad_usage(err, error);
    const QString what = words.isEmpty() ? QString() : words.takeFirst();
    const int wants = what == QLatin1String("find") || what == QLatin1String("erase") ? 1
                      : what == QLatin1String("export")                               ? 2
                      : what == QLatin1String("over")                                 ? 0
                                                                                      : -1;
    if (wants < 0)
        return bad_usage(err, QStringLiteral("client takes find, export, erase or over, found '%1'").arg(what));
    if (words.size() < wants || (wants == 0 && !words.isEmpty()))
        return bad_usage(err, QStringLiteral("client %1 needs other words").arg(what));
    const QString place =
        args.parser.isSet(QStringLiteral("store")) ? args.parser.value(QStringLiteral("store")) : usual_store_path();
    if (!store::is_address(place.toStdString()) && !QFileInfo::exists(place))
        return bad_input(err, {Problem{place.toStdString(), "there is no such store", "Name it with --store"}});
    const auto opened = store::Store::open_place(place.toStdString(), this_moment(), seat_name());
    if (!opened) return bad_input(err, opened.problems());
    store::PersonalData data(*opened.value());
    if (what == QLatin1String("find")) return find_jobs(data, store::CustomerBook(*opened.value()), words, out, err);
    if (what == QLatin1String("export")) return hand_out(data, words.takeFirst(), words, out, err);
    if (what == QLatin1String("over")) return say_erased(data.erase_what_is_over(this_moment()), out, err);
    const auto named = data.named(to_std(words));
    if (!named) return bad_input(err, named.problems());
    return say_erased(data.erase(named.value().job_ids, args.parser.value(QStringLiteral("reason")).toStdString(),
                                 this_moment(), named.value().customer_ids),
                      out, err);
}

}  // namespace wg::app
