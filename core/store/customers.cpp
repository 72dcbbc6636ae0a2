#include "core/store/customers.h"

#include <QStringList>
#include <QUuid>
#include <QVariant>
#include <algorithm>
#include <map>

#include "core/quantity/utf8.h"
#include "core/store/customer_refusals.h"
#include "core/store/database.h"
#include "core/store/fold.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

using customers::Address;
using customers::AddressUse;
using customers::Contact;
using customers::Customer;

constexpr const char* number_prefix = "C-";

QVariant as_whole(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

// Everything that can be searched for; each word after a blank, so that its beginning can be asked for.
QString words_of_customer(const Customer& customer) {
    QStringList texts{to_qt(customer.number), to_qt(customer.name), to_qt(customer.tax_id), to_qt(customer.notes)};
    for (const std::string& former : customer.former_numbers)
        texts << to_qt(former);
    for (const Address& one : customer.addresses)
        texts << to_qt(one.street) << to_qt(one.postcode) << to_qt(one.town);
    for (const Contact& one : customer.contacts) {
        texts << to_qt(one.name) << to_qt(one.role) << to_qt(one.phone) << to_qt(one.email);
        // A telephone number without its blanks, too.
        texts << to_qt(customers::digits_of(one.phone));
    }
    QString out(QLatin1Char(' '));
    for (const QString& word : folded_words(texts.join(QLatin1Char('\n'))))
        out += word + QLatin1Char(' ');
    return out;
}

// All with their addresses and contacts; `only`: one id, or all when empty.
Result<std::vector<Customer>> read_customers(const Database& database, const std::string& only) {
    const QString where = only.empty() ? QString() : QStringLiteral(" WHERE %1 = ?");
    const QVariantList values = only.empty() ? QVariantList() : QVariantList{to_qt(only)};
    const auto whose = [&where](const char* column) { return where.isEmpty() ? where : where.arg(column); };
    std::vector<Customer> out;
    std::map<std::string, std::size_t> place;
    Result<QSqlQuery> found = database.query(
        "SELECT id, number, name, tax_id, notes, former_numbers, revision, changed_at, changed_by FROM customer" +
            whose("id") + " ORDER BY name_key, id",
        values);
    if (!found) return found.problems();
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        const auto at = [&row](int column) { return row.value(column).toString().toStdString(); };
        Customer one;
        one.id = at(0);
        one.number = at(1);
        one.name = at(2);
        one.tax_id = at(3);
        one.notes = at(4);
        one.former_numbers = parted_numbers(row.value(5).toString());
        one.revision = row.value(6).toLongLong();
        one.changed_at = at(7);
        one.changed_by = at(8);
        place[one.id] = out.size();
        out.push_back(std::move(one));
    }
    Result<QSqlQuery> addresses =
        database.query("SELECT customer_id, use, street, postcode, town FROM customer_address" + whose("customer_id") +
                           " ORDER BY customer_id, seq",
                       values);
    if (!addresses) return addresses.problems();
    while (addresses.value().next()) {
        const auto at = [&row = addresses.value()](int column) { return row.value(column).toString().toStdString(); };
        const auto whom = place.find(at(0));
        if (whom == place.end()) continue;
        out[whom->second].addresses.push_back(
            {at(1) == "site" ? AddressUse::site : AddressUse::bill, at(2), at(3), at(4)});
    }
    Result<QSqlQuery> contacts = database.query("SELECT customer_id, name, role, phone, email FROM customer_contact" +
                                                    whose("customer_id") + " ORDER BY customer_id, seq",
                                                values);
    if (!contacts) return contacts.problems();
    while (contacts.value().next()) {
        const auto at = [&row = contacts.value()](int column) { return row.value(column).toString().toStdString(); };
        const auto whom = place.find(at(0));
        if (whom != place.end()) out[whom->second].contacts.push_back({at(1), at(2), at(3), at(4)});
    }
    return out;
}

}  // namespace

std::string CustomerBook::name_key(const std::string& name) {
    return folded_words(to_qt(name)).join(QLatin1Char(' ')).toStdString();
}

Result<Customer> CustomerBook::load(const std::string& id) const {
    Result<std::vector<Customer>> found = read_customers(database_, id);
    if (!found) return found.problems();
    if (id.empty() || found.value().empty())
        return Problem{database_.name(), "there is no customer with the id '" + for_message(id) + "'",
                       "Read the list again"};
    return std::move(found.value().front());
}

Result<std::vector<Customer>> CustomerBook::all() const {
    return read_customers(database_, {});
}

Result<std::string> CustomerBook::next_number() const {
    Result<QSqlQuery> found = database_.query(
        "SELECT number, former_numbers FROM customer UNION ALL SELECT number, '' FROM customer_erasure");
    if (!found) return found.problems();
    int last = 0;
    while (found.value().next()) {
        QStringList numbers = found.value().value(1).toString().split(QLatin1Char('\n'));
        numbers << found.value().value(0).toString();
        for (const QString& number : numbers) {
            bool whole = false;
            const int value = number.startsWith(QLatin1String(number_prefix)) ? number.mid(2).toInt(&whole) : 0;
            if (whole) last = std::max(last, value);
        }
    }
    return (QLatin1String(number_prefix) + QStringLiteral("%1").arg(last + 1, 4, 10, QLatin1Char('0'))).toStdString();
}

std::optional<Problem> CustomerBook::put_parts(const Customer& customer) const {
    const QString id = to_qt(customer.id);
    for (const char* sql :
         {"DELETE FROM customer_address WHERE customer_id = ?", "DELETE FROM customer_contact WHERE customer_id = ?"}) {
        if (auto problem = database_.run(sql, {id})) return problem;
    }
    int seq = 0;
    for (const Address& one : customer.addresses) {
        if (auto problem = database_.run("INSERT INTO customer_address (customer_id, seq, use, street, postcode, town) "
                                         "VALUES (?, ?, ?, ?, ?, ?)",
                                         {id, seq++, one.use == AddressUse::site ? "site" : "bill", to_qt(one.street),
                                          to_qt(one.postcode), to_qt(one.town)}))
            return problem;
    }
    seq = 0;
    for (const Contact& one : customer.contacts) {
        if (auto problem = database_.run(
                "INSERT INTO customer_contact (customer_id, seq, name, role, phone, email) VALUES (?, ?, ?, ?, ?, ?)",
                {id, seq++, to_qt(one.name), to_qt(one.role), to_qt(one.phone), to_qt(one.email)}))
            return problem;
    }
    return std::nullopt;
}

Result<Customer> CustomerBook::put(Customer customer, Instant now) {
    std::erase_if(customer.addresses, [](const Address& one) { return one.empty(); });
    std::erase_if(customer.contacts, [](const Contact& one) { return one.empty(); });
    if (std::vector<Problem> problems = customers::problems_of(customer); !problems.empty()) return problems;
    if (customer.id.empty()) customer.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    if (customer.number.empty()) {
        const Result<std::string> number = next_number();
        if (!number) return number.problems();
        customer.number = number.value();
    }
    if (auto problem = refuse(customer)) return *problem;
    ++customer.revision;
    customer.changed_at = iso8601(now);
    customer.changed_by = store_.by();
    if (auto problem = database_.run(
            "INSERT INTO customer (id, number, name, tax_id, notes, former_numbers, revision, changed_at, changed_by, "
            "name_key, words) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
            "ON CONFLICT (id) DO UPDATE SET name = excluded.name, tax_id = excluded.tax_id, notes = excluded.notes, "
            "former_numbers = excluded.former_numbers, revision = excluded.revision, changed_at = excluded.changed_at, "
            "changed_by = excluded.changed_by, name_key = excluded.name_key, words = excluded.words",
            {to_qt(customer.id), to_qt(customer.number), to_qt(customer.name), to_qt(customer.tax_id),
             to_qt(customer.notes), to_qt(joined_numbers(customer)), as_whole(customer.revision),
             to_qt(customer.changed_at), to_qt(customer.changed_by), to_qt(name_key(customer.name)),
             words_of_customer(customer)}))
        return *problem;
    if (auto problem = put_parts(customer)) return *problem;
    return customer;
}

Result<Customer> CustomerBook::save(const Customer& customer, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<Customer> kept = put(customer, now);
    if (!kept) return kept;
    if (auto problem = transaction.commit()) return *problem;
    return kept;
}

std::optional<Problem> drop_customer(const Database& database, const std::string& id) {
    for (const char* sql :
         {"DELETE FROM customer_address WHERE customer_id = ?", "DELETE FROM customer_contact WHERE customer_id = ?",
          "DELETE FROM customer_job WHERE customer_id = ?", "DELETE FROM customer WHERE id = ?"}) {
        if (auto problem = database.run(sql, {to_qt(id)})) return problem;
    }
    return std::nullopt;
}

Result<bool> CustomerBook::remove(const std::string& id) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<Customer> there = load(id);
    if (!there) return there.problems();
    const Result<QVariant> jobs =
        database_.value("SELECT count(*) FROM customer_job WHERE customer_id = ?", {to_qt(id)});
    if (!jobs) return jobs.problems();
    if (jobs.value().toInt() > 0)
        return Problem{called(there.value()), "has jobs",
                       "Part them from the customer first, or erase the client's data"};
    if (auto problem = drop_customer(database_, id)) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<CustomersImported> CustomerBook::import(const std::vector<customers::ImportedRow>& rows, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    CustomersImported out;
    std::vector<Problem> problems;
    // Those with numbers first: one that is given must not take what a later line brings.
    for (const bool numbered : {true, false}) {
        for (const customers::ImportedRow& row : rows) {
            if (row.outcome == customers::Outcome::same || row.customer.number.empty() == numbered) continue;
            const Result<Customer> kept = put(row.customer, now);
            if (!kept) {
                for (Problem problem : kept.problems()) {
                    problem.where = "line " + std::to_string(row.line) + ", " + problem.where;
                    problems.push_back(std::move(problem));
                }
                return problems;
            }
            ++(row.outcome == customers::Outcome::is_new ? out.added : out.changed);
        }
    }
    if (auto problem = transaction.commit()) return *problem;
    return out;
}

}  // namespace wg::store
