// What the firm keeps about a client: finding and handing out.

#include "core/store/personal.h"

#include <QDir>
#include <QVariant>
#include <algorithm>
#include <set>

#include "core/customers/list_out.h"
#include "core/job/codec.h"
#include "core/quantity/utf8.h"
#include "core/store/customers.h"
#include "core/store/database.h"
#include "core/store/export.h"
#include "core/store/text.h"
#include "core/tables/csv_writer.h"

namespace wg::store {
namespace {

constexpr const char* years_key = "personal.years_kept";
constexpr int usual_years = 10;

std::optional<Problem> make_folders(const QDir& root) {
    if (root.exists() && !root.isEmpty())
        return Problem{root.path().toStdString(), "is not empty", "Name a folder that is new or empty"};
    for (const char* name : {"jobs", "history", "quotes", "papers", "photographs"}) {
        if (!root.mkpath(name)) return Problem{root.path().toStdString(), "cannot be made", "Name another folder"};
    }
    return std::nullopt;
}

}  // namespace

Result<int> PersonalData::years_kept() const {
    const Result<std::string> kept = store_.setting(years_key, std::to_string(usual_years));
    if (!kept) return kept.problems();
    bool whole = false;
    const int years = to_qt(kept.value()).toInt(&whole);
    if (!whole || years < 0 || years > 100)
        return Problem{"settings", "quotes are kept for '" + for_message(kept.value()) + "' years",
                       "Set a number of years from 0 to 100"};
    return years;
}

Result<bool> PersonalData::set_years_kept(int years) {
    if (years < 0 || years > 100)
        return Problem{"settings", "quotes would be kept for " + std::to_string(years) + " years",
                       "Set a number of years from 0 to 100"};
    return store_.set_setting(years_key, std::to_string(years));
}

Result<PersonalData::KeptQuotes> PersonalData::quotes_of(const std::string& job_id, Instant now) const {
    const Result<int> years = years_kept();
    if (!years) return years.problems();
    Result<QSqlQuery> found =
        database_.query("SELECT job_revision, issued_at, id FROM quote_issued WHERE job_id = ?", {to_qt(job_id)});
    if (!found) return found.problems();
    const std::string today = iso8601(now).substr(0, 10);
    KeptQuotes out;
    while (found.value().next()) {
        ++out.total;
        const std::string issued = found.value().value(1).toString().toStdString();
        const Result<CivilDate> day = date_from_iso8601(issued.substr(0, 10));
        // A day that cannot be read is no reason to lose a quote.
        CivilDate until = day ? day.value() : CivilDate{9000, 12, 31};
        until.year += years.value();
        until.day = std::min(until.day, days_in_month(until.year, until.month));
        const std::string last = iso8601(until);
        if (last <= today) {
            out.over.push_back(found.value().value(2).toString().toStdString());
            continue;
        }
        ++out.kept;
        out.until = std::max(out.until, last);
        out.revisions.push_back(found.value().value(0).toLongLong());
    }
    return out;
}

Result<std::vector<ClientJob>> PersonalData::find(const std::string& words, Instant now) const {
    const QStringList wanted = to_qt(words).toCaseFolded().split(' ', Qt::SkipEmptyParts);
    if (wanted.isEmpty()) return Problem{"search", "no word was given", "Give a name, a telephone number or an e-mail"};
    const Wording& says = database_.words();
    const QString sql = QStringLiteral(
                            "SELECT j.id, j.number, j.title, j.client, %1, %2, j.town, %3, %4, j.removed_at FROM job j "
                            "JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision ORDER BY j.save_seq")
                            .arg(QString::fromLatin1(says.client_street), QString::fromLatin1(says.client_postcode),
                                 QString::fromLatin1(says.client_phone), QString::fromLatin1(says.client_email));
    Result<QSqlQuery> found = database_.query(sql);
    if (!found) return found.problems();
    std::vector<ClientJob> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        QString text;
        for (int column = 3; column <= 8; ++column)
            text += row.value(column).toString().toCaseFolded() + ' ';
        const bool all =
            std::all_of(wanted.begin(), wanted.end(), [&text](const QString& w) { return text.contains(w); });
        if (!all) continue;
        const auto at = [&row](int column) { return row.value(column).toString().toStdString(); };
        out.push_back(
            {at(0), at(1), at(2), at(3), at(4), at(5), at(6), at(7), at(8), !row.value(9).toString().isEmpty(), 0, {}});
    }
    for (ClientJob& job : out) {
        const Result<KeptQuotes> quotes = quotes_of(job.job_id, now);
        if (!quotes) return quotes.problems();
        job.quotes = quotes.value().total;
        job.quotes_kept_until = quotes.value().until;
    }
    return out;
}

Result<std::vector<std::string>> PersonalData::ids_of(const std::vector<std::string>& numbers) const {
    std::vector<std::string> out;
    out.reserve(numbers.size());
    for (const std::string& number : numbers) {
        const Result<QVariant> id = database_.value("SELECT id FROM job WHERE (number = ? AND number <> '') OR id = ?",
                                                    {to_qt(number), to_qt(number)});
        if (!id) return id.problems();
        if (!id.value().isValid())
            return Problem{"job " + for_message(number), "is not in the store", "Give the numbers that 'find' shows"};
        out.push_back(id.value().toString().toStdString());
    }
    return out;
}

Result<ExportedClient> PersonalData::export_to(const std::vector<std::string>& job_ids, const std::string& folder,
                                               const std::vector<std::string>& customer_ids) const {
    const QDir root(to_qt(folder));
    if (auto problem = make_folders(root)) return *problem;
    const auto path = [&root](const char* in, const std::string& name) {
        return QDir(root.filePath(in)).filePath(to_qt(name)).toStdString();
    };
    ExportedClient out;
    Result<std::set<std::string>> customers = customers_of(job_ids);
    if (!customers) return customers.problems();
    customers.value().insert(customer_ids.begin(), customer_ids.end());
    if (!customers.value().empty()) {
        std::vector<customers::Customer> them;
        for (const std::string& id : customers.value()) {
            const Result<customers::Customer> one = CustomerBook(store_).load(id);
            if (!one) return one.problems();
            them.push_back(one.value());
        }
        const std::string csv = tables::write_csv(customers::rows_of(them));
        if (auto problem = write_file(root.filePath("customers.csv").toStdString(), csv)) return *problem;
        out.customers = static_cast<int>(them.size());
    }
    std::set<std::string> seen;
    for (const std::string& id : job_ids) {
        const Result<Job> job = store_.load(id);
        if (!job) return job.problems();
        // The id in the name: numbers may be empty, or the same but for their case.
        const std::string name = plain_file_name(job.value().number, "job") + "-" + id.substr(0, 8);
        if (auto problem = write_file(path("jobs", name + ".json"), job_to_json(job.value()))) return *problem;
        ++out.jobs;
        const auto history = store_.history(id);
        if (!history) return history.problems();
        for (const auto& [revision, changed_at] : history.value()) {
            const Result<Job> earlier = store_.load_revision(id, revision);
            if (!earlier) return earlier.problems();
            const std::string file = name + "-" + std::to_string(revision) + ".json";
            if (auto problem = write_file(path("history", file), job_to_json(earlier.value()))) return *problem;
            ++out.revisions;
        }
        const Result<std::vector<IssuedQuote>> quotes = store_.quotes(id);
        if (!quotes) return quotes.problems();
        for (const IssuedQuote& quote : quotes.value()) {
            if (auto problem = write_file(path("quotes", quote_stem(quote) + ".json"), quote.plan_json))
                return *problem;
            ++out.quotes;
        }
        if (auto problem = export_papers(id, root.path().toStdString(), out)) return *problem;
        for (const Photograph& photograph : job.value().photographs) {
            if (!seen.insert(photograph.sha256).second) continue;
            const Result<std::string> bytes = store_.photograph(photograph.sha256);
            if (!bytes) {
                out.missing.push_back(for_message(photograph.file_name) + ": " + bytes.problems().front().what);
                continue;
            }
            const std::string file = photograph.sha256 + picture_ending(bytes.value());
            if (auto problem = write_file(path("photographs", file), bytes.value())) return *problem;
            ++out.photographs;
        }
    }
    return out;
}

Result<std::vector<ErasureRow>> PersonalData::erasures() const {
    Result<QSqlQuery> found =
        database_.query("SELECT job_id, number, erased_at, erased_by, reason, kept_until FROM erasure ORDER BY seq");
    if (!found) return found.problems();
    std::vector<ErasureRow> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({at(0), at(1), at(2), at(3), at(4), at(5)});
    }
    return out;
}

}  // namespace wg::store
