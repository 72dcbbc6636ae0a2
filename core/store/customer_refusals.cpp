// Which saves of a customer are refused: a number that is another's, or a copy that somebody saved over.

#include "core/store/customer_refusals.h"

#include <QStringList>
#include <QVariant>
#include <algorithm>
#include <set>

#include "core/quantity/utf8.h"
#include "core/store/customers.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {

using customers::Customer;

std::string called(const Customer& customer) {
    return "customer " + for_message(customer.number.empty() ? customer.name : customer.number);
}

std::string joined_numbers(const Customer& customer) {
    std::string out;
    for (const std::string& number : customer.former_numbers) {
        if (!out.empty()) out += '\n';
        out += number;
    }
    return out;
}

std::vector<std::string> parted_numbers(const QString& text) {
    std::vector<std::string> out;
    for (const QString& one : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        out.push_back(one.toStdString());
    return out;
}

std::optional<Problem> CustomerBook::refuse_number(const Customer& customer) const {
    if (customer.number.find('\n') != std::string::npos)
        return Problem{called(customer), "the number goes over two lines", "Write it in one"};
    Result<QSqlQuery> found = database_.query(
        "SELECT name, number, former_numbers FROM customer WHERE id <> ? AND (number = ? OR former_numbers <> '')",
        {to_qt(customer.id), to_qt(customer.number)});
    if (!found) return found.problems().front();
    while (found.value().next()) {
        const std::vector<std::string> former = parted_numbers(found.value().value(2).toString());
        if (found.value().value(1).toString().toStdString() != customer.number &&
            std::find(former.begin(), former.end(), customer.number) == former.end())
            continue;
        return Problem{
            called(customer),
            "the number is or was that of '" + for_message(found.value().value(0).toString().toStdString()) + "'",
            "Give another number"};
    }
    const Result<QVariant> erased =
        database_.value("SELECT 1 FROM customer_erasure WHERE number = ?", {to_qt(customer.number)});
    if (!erased) return erased.problems().front();
    if (erased.value().isValid())
        return Problem{called(customer), "the number was that of a customer whose data were erased",
                       "Give another number"};
    return std::nullopt;
}

std::optional<Problem> CustomerBook::refuse_former(const Customer& customer,
                                                   const std::vector<std::string>& before) const {
    std::set<std::string> fresh(customer.former_numbers.begin(), customer.former_numbers.end());
    for (const std::string& one : before)
        fresh.erase(one);
    if (fresh.empty()) return std::nullopt;
    Result<QSqlQuery> found = database_.query(
        "SELECT number, former_numbers, name FROM customer WHERE id <> ? UNION ALL "
        "SELECT number, '', '' FROM customer_erasure",
        {to_qt(customer.id)});
    if (!found) return found.problems().front();
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString(); };
        std::vector<std::string> theirs = parted_numbers(at(1));
        theirs.push_back(at(0).toStdString());
        for (const std::string& one : theirs) {
            if (!fresh.contains(one)) continue;
            const std::string whose =
                at(2).isEmpty() ? "a customer whose data were erased" : "'" + for_message(at(2).toStdString()) + "'";
            return Problem{called(customer), "the former number '" + for_message(one) + "' is or was that of " + whose,
                           "Take it out, or bring the two together first"};
        }
    }
    return std::nullopt;
}

std::optional<Problem> CustomerBook::refuse(const Customer& customer) const {
    Result<QSqlQuery> found =
        database_.query("SELECT revision, number, changed_at, changed_by, former_numbers FROM customer WHERE id = ?",
                        {to_qt(customer.id)});
    if (!found) return found.problems().front();
    const QSqlQuery& row = found.value();
    if (!found.value().next()) {
        if (customer.revision != 0)
            return Problem{called(customer), "is no longer in the store", "Read the list again"};
        if (auto problem = refuse_number(customer)) return problem;
        return refuse_former(customer, {});
    }
    if (row.value(0).toLongLong() != customer.revision) {
        const std::string who = for_message(row.value(3).toString().toStdString());
        return Problem{called(customer),
                       "was saved " + (who.empty() ? std::string() : "by " + who + " ") + "at " +
                           row.value(2).toString().toStdString() + ", after it was read here",
                       "Read it again and bring your changes over"};
    }
    if (row.value(1).toString().toStdString() != customer.number)
        return Problem{called(customer), "a customer keeps its number", "Leave it as it was"};
    return refuse_former(customer, parted_numbers(row.value(4).toString()));
}

}  // namespace wg::store
