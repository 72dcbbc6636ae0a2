// Customers in lists, and what they have to do with jobs.

#include <QStringList>
#include <QVariant>
#include <algorithm>

#include "core/quantity/utf8.h"
#include "core/store/customers.h"
#include "core/store/database.h"
#include "core/store/fold.h"
#include "core/store/job_list.h"
#include "core/store/search.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

using customers::Address;
using customers::AddressUse;
using customers::Contact;
using customers::Customer;

constexpr int most_likely_jobs = 200;

Result<std::vector<CustomerRow>> customer_rows(const Database& database, const QString& rest,
                                               const QVariantList& values) {
    Result<QSqlQuery> found = database.query(
        "SELECT c.id, c.number, c.name, "
        "(SELECT a.town FROM customer_address a WHERE a.customer_id = c.id ORDER BY a.seq LIMIT 1), "
        "(SELECT p.phone FROM customer_contact p WHERE p.customer_id = c.id AND p.phone <> '' ORDER BY p.seq LIMIT 1), "
        "(SELECT m.email FROM customer_contact m WHERE m.customer_id = c.id AND m.email <> '' ORDER BY m.seq LIMIT 1), "
        "(SELECT count(*) FROM customer_job l JOIN job j ON j.id = l.job_id "
        "WHERE l.customer_id = c.id AND j.removed_at IS NULL) FROM customer c " +
            rest,
        values);
    if (!found) return found.problems();
    std::vector<CustomerRow> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({at(0), at(1), at(2), at(3), at(4), at(5), found.value().value(6).toInt()});
    }
    return out;
}

// Each word of the query has to begin one of the customer's. Folded words hold letters and digits alone: nothing that
// LIKE would take for its own.
QString customer_where(const std::string& words, QVariantList& values) {
    QString out;
    for (const QString& word : folded_words(to_qt(words))) {
        out += (out.isEmpty() ? "WHERE" : " AND") + QStringLiteral(" c.words LIKE ?");
        values << QVariant("% " + word + "%");
    }
    return out;
}

void add_missing(Customer& keep, const Customer& other) {
    for (const Address& one : other.addresses) {
        if (std::find(keep.addresses.begin(), keep.addresses.end(), one) == keep.addresses.end())
            keep.addresses.push_back(one);
    }
    for (const Contact& one : other.contacts) {
        if (std::find(keep.contacts.begin(), keep.contacts.end(), one) == keep.contacts.end())
            keep.contacts.push_back(one);
    }
    if (keep.tax_id.empty()) keep.tax_id = other.tax_id;
    const auto note = [&keep](const std::string& line) { keep.notes += (keep.notes.empty() ? "" : "\n") + line; };
    if (!other.notes.empty() && other.notes != keep.notes) note(other.notes);
    // What the kept one has otherwise is not lost.
    if (other.tax_id != keep.tax_id && !other.tax_id.empty()) note("Tax id: " + other.tax_id);
    if (other.name != keep.name) note("Also: " + other.name);
    keep.former_numbers.push_back(other.number);
    keep.former_numbers.insert(keep.former_numbers.end(), other.former_numbers.begin(), other.former_numbers.end());
}

}  // namespace

Result<std::vector<CustomerRow>> CustomerBook::page(const std::string& words, int limit, int offset) const {
    if (limit < 0 || offset < 0) return Problem{"list", "limit and offset must not be negative", "Start from 0"};
    QVariantList values;
    const QString where = customer_where(words, values);
    values << limit << offset;
    return customer_rows(database_, where + " ORDER BY c.name_key, c.id LIMIT ? OFFSET ?", values);
}

Result<int> CustomerBook::count(const std::string& words) const {
    QVariantList values;
    const QString where = customer_where(words, values);
    const Result<QVariant> found = database_.value("SELECT count(*) FROM customer c " + where, values);
    if (!found) return found.problems();
    return found.value().toInt();
}

Result<bool> CustomerBook::link(const std::string& job_id, const std::string& customer_id) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<QVariant> job = database_.value("SELECT 1 FROM job WHERE id = ?", {to_qt(job_id)});
    if (!job) return job.problems();
    if (!job.value().isValid())
        return Problem{"job " + for_message(job_id), "is not in the store", "Read the list again"};
    if (const Result<Customer> there = load(customer_id); !there) return there.problems();
    if (auto problem = database_.run("INSERT INTO customer_job (job_id, customer_id) VALUES (?, ?) "
                                     "ON CONFLICT (job_id) DO UPDATE SET customer_id = excluded.customer_id",
                                     {to_qt(job_id), to_qt(customer_id)}))
        return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<bool> CustomerBook::unlink(const std::string& job_id) {
    if (auto problem = database_.run("DELETE FROM customer_job WHERE job_id = ?", {to_qt(job_id)})) return *problem;
    return true;
}

Result<std::string> CustomerBook::customer_of(const std::string& job_id) const {
    const Result<QVariant> found =
        database_.value("SELECT customer_id FROM customer_job WHERE job_id = ?", {to_qt(job_id)});
    if (!found) return found.problems();
    return found.value().toString().toStdString();
}

Result<std::vector<CustomerRow>> CustomerBook::likely_of(const Client& client) const {
    const std::string key = name_key(client.name);
    if (key.empty()) return std::vector<CustomerRow>();
    const Result<std::vector<CustomerRow>> named =
        customer_rows(database_, "WHERE c.name_key = ? ORDER BY c.number LIMIT 50", {to_qt(key)});
    if (!named) return named.problems();
    std::vector<CustomerRow> out;
    for (const CustomerRow& row : named.value()) {
        const Result<Customer> one = load(row.id);
        if (!one) return one.problems();
        if (customers::shares_a_trait(one.value(), client.postcode, client.phone, client.email)) out.push_back(row);
    }
    return out;
}

Result<std::vector<JobRow>> CustomerBook::likely_jobs(const std::string& customer_id) const {
    const Result<Customer> customer = load(customer_id);
    if (!customer) return customer.problems();
    const std::string key = name_key(customer.value().name);
    if (key.empty()) return std::vector<JobRow>();
    JobFilter filter;
    filter.words = key;
    const Result<std::vector<JobRow>> named = JobList(store_).page(filter, most_likely_jobs, 0);
    if (!named) return named.problems();
    std::vector<JobRow> out;
    for (const JobRow& row : named.value()) {
        if (name_key(row.client) != key) continue;
        const Result<std::string> linked = customer_of(row.id);
        if (!linked) return linked.problems();
        if (!linked.value().empty()) continue;
        const Result<Job> job = store_.load(row.id);
        if (!job) continue;  // one that cannot be read is told of by `check`
        const Client& client = job.value().client;
        if (customers::shares_a_trait(customer.value(), client.postcode, client.phone, client.email))
            out.push_back(row);
    }
    return out;
}

Result<Customer> CustomerBook::bring_together(const std::string& keep, const std::string& other, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<Customer> kept = load(keep);
    if (!kept) return kept.problems();
    const Result<Customer> joined = load(other);
    if (!joined) return joined.problems();
    if (keep == other) return Problem{"customers", "the same one was chosen twice", "Choose another one"};
    add_missing(kept.value(), joined.value());
    if (auto problem =
            database_.run("UPDATE customer_job SET customer_id = ? WHERE customer_id = ?", {to_qt(keep), to_qt(other)}))
        return *problem;
    if (auto problem = drop_customer(database_, other)) return *problem;
    Result<Customer> out = put(std::move(kept).value(), now);
    if (!out) return out;
    if (auto problem = transaction.commit()) return *problem;
    return out;
}

std::optional<Problem> CustomerBook::add_quotes(const std::string& customer_id, CustomerAtOneLook& out) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT j.number, q.number, q.issued_at, q.gross_minor, q.currency, "
        "(SELECT a.answer FROM quote_answer a WHERE a.quote_id = q.id ORDER BY a.seq DESC LIMIT 1) "
        "FROM customer_job l JOIN job j ON j.id = l.job_id JOIN quote_issued q ON q.job_id = j.id "
        "WHERE l.customer_id = ? AND j.removed_at IS NULL ORDER BY q.issued_at DESC, q.number DESC",
        {to_qt(customer_id)});
    if (!found) return found.problems().front();
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        const auto at = [&row](int column) { return row.value(column).toString().toStdString(); };
        out.quotes.push_back({at(0), at(1), at(2), row.value(3).toLongLong(), at(4), at(5)});
    }
    return std::nullopt;
}

Result<CustomerAtOneLook> CustomerBook::at_one_look(const std::string& customer_id) const {
    if (const Result<Customer> there = load(customer_id); !there) return there.problems();
    CustomerAtOneLook out;
    Result<QSqlQuery> found =
        database_.query(QString::fromLatin1(list_columns) +
                            "FROM customer_job l JOIN job j ON j.id = l.job_id "
                            "WHERE l.customer_id = ? AND j.removed_at IS NULL ORDER BY j.save_seq DESC",
                        {to_qt(customer_id)});
    if (!found) return found.problems();
    Result<std::vector<JobRow>> jobs = rows_of_list(database_, found.value());
    if (!jobs) return jobs.problems();
    out.jobs = std::move(jobs).value();
    if (auto problem = add_quotes(customer_id, out)) return *problem;
    Result<std::vector<FittedRow>> fitted = FittedBook(store_).of_customer(customer_id);
    if (!fitted) return fitted.problems();
    out.fitted = std::move(fitted).value();
    std::erase_if(out.fitted, [](const FittedRow& row) { return row.part.serial.empty(); });
    return out;
}

Customer CustomerBook::of_client(const Client& client) {
    Customer out;
    out.name = client.name;
    const Address address{AddressUse::bill, client.street, client.postcode, client.town};
    if (!address.empty()) out.addresses.push_back(address);
    const Contact contact{{}, {}, client.phone, client.email};
    if (!contact.empty()) out.contacts.push_back(contact);
    return out;
}

Client CustomerBook::client_of(const Customer& customer) {
    Client out;
    out.name = customer.name;
    const auto site = std::find_if(customer.addresses.begin(), customer.addresses.end(),
                                   [](const Address& one) { return one.use == AddressUse::site; });
    const auto where = site != customer.addresses.end() ? site : customer.addresses.begin();
    if (where != customer.addresses.end()) {
        out.street = where->street;
        out.postcode = where->postcode;
        out.town = where->town;
    }
    for (const Contact& one : customer.contacts) {
        if (out.phone.empty()) out.phone = one.phone;
        if (out.email.empty()) out.email = one.email;
    }
    return out;
}

}  // namespace wg::store
