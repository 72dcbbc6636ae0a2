// What the client of some jobs is among the customers, to be handed out or erased with them.

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QTemporaryDir>
#include <QVariant>
#include <algorithm>

#include "core/exchange/archive.h"
#include "core/quantity/utf8.h"
#include "core/store/customers.h"
#include "core/store/database.h"
#include "core/store/personal.h"
#include "core/store/text.h"

namespace wg::store {

Result<std::set<std::string>> PersonalData::customers_of(const std::vector<std::string>& job_ids) const {
    std::set<std::string> out;
    for (const std::string& id : job_ids) {
        const Result<std::string> one = CustomerBook(store_).customer_of(id);
        if (!one) return one.problems();
        if (!one.value().empty()) out.insert(one.value());
    }
    return out;
}

Result<NamedForClient> PersonalData::named(const std::vector<std::string>& numbers) const {
    NamedForClient out;
    for (const std::string& number : numbers) {
        const Result<QVariant> customer =
            database_.value("SELECT id FROM customer WHERE number = ? OR id = ?", {to_qt(number), to_qt(number)});
        if (!customer) return customer.problems();
        if (!customer.value().isValid()) {
            const Result<std::vector<std::string>> job = ids_of({number});
            if (!job) return job.problems();
            out.job_ids.push_back(job.value().front());
            continue;
        }
        const Result<QVariant> job_too =
            database_.value("SELECT 1 FROM job WHERE number = ? AND number <> ''", {to_qt(number)});
        if (!job_too) return job_too.problems();
        if (job_too.value().isValid())
            return Problem{"number " + for_message(number), "is that of a job and of a customer",
                           "Give the id that 'find' shows"};
        out.customer_ids.push_back(customer.value().toString().toStdString());
        Result<QSqlQuery> jobs =
            database_.query("SELECT job_id FROM customer_job WHERE customer_id = ?", {customer.value()});
        if (!jobs) return jobs.problems();
        while (jobs.value().next())
            out.job_ids.push_back(jobs.value().value(0).toString().toStdString());
    }
    return out;
}

Result<std::string> PersonalData::export_as_file(const NamedForClient& named) const {
    const QTemporaryDir folder;
    if (!folder.isValid())
        return Problem{"handing out", folder.errorString().toStdString(),
                       "Make room in the folder for temporary files"};
    const auto done = export_to(named.job_ids, folder.path().toStdString(), named.customer_ids);
    if (!done) return done.problems();
    std::vector<exchange::Entry> entries;
    const QDir root(folder.path());
    for (QDirIterator at(folder.path(), QDir::Files, QDirIterator::Subdirectories); at.hasNext();) {
        QFile file(at.next());
        if (!file.open(QIODevice::ReadOnly))
            return Problem{"handing out", file.errorString().toStdString(), "Try again"};
        entries.push_back({root.relativeFilePath(file.fileName()).toStdString(), file.readAll().toStdString()});
    }
    std::string missing;
    for (const std::string& line : done.value().missing)
        missing.append(line).append(1, '\n');
    if (!missing.empty()) entries.push_back({"missing.txt", missing});
    std::sort(entries.begin(), entries.end(),
              [](const exchange::Entry& a, const exchange::Entry& b) { return a.name < b.name; });
    return exchange::archive_of(entries);
}

std::optional<Problem> PersonalData::erase_customers(const std::set<std::string>& ids, const std::string& reason,
                                                     Instant now, Erased& out) const {
    for (const std::string& id : ids) {
        const Result<customers::Customer> customer = CustomerBook(store_).load(id);
        if (!customer) return customer.problems().front();
        const Result<QVariant> jobs =
            database_.value("SELECT count(*) FROM customer_job WHERE customer_id = ?", {to_qt(id)});
        if (!jobs) return jobs.problems().front();
        if (jobs.value().toInt() > 0)
            return Problem{"customer " + for_message(customer.value().number), "has jobs that are not to be erased",
                           "Erase them, too, or part them from the customer first"};
        std::vector<std::string> numbers = customer.value().former_numbers;
        numbers.push_back(customer.value().number);
        if (auto problem = drop_customer(database_, id)) return problem;
        for (const std::string& number : numbers) {
            const Result<QVariant> last = database_.value("SELECT max(seq) FROM customer_erasure");
            if (!last) return last.problems().front();
            if (auto problem = database_.run(
                    "INSERT INTO customer_erasure (seq, number, erased_at, erased_by, reason) VALUES (?, ?, ?, ?, ?)",
                    {QVariant::fromValue(last.value().toLongLong() + 1), to_qt(number), to_qt(iso8601(now)),
                     to_qt(store_.by()), to_qt(reason)}))
                return problem;
        }
        ++out.customers;
    }
    return std::nullopt;
}

}  // namespace wg::store
