#include "core/store/order_book.h"

#include <QByteArray>
#include <QUuid>
#include <QVariant>
#include <algorithm>
#include <sstream>
#include <tuple>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/hashed_rows.h"
#include "core/store/quote_book.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

std::optional<Problem> refuse_bytes(const std::string& pdf) {
    if (pdf.rfind("%PDF-", 0) == 0 && pdf.size() <= max_paper_bytes) return std::nullopt;
    return Problem{"paper of an order", "is no PDF, or larger than 60 MiB", "Print it again"};
}

/// As they were made, though times are whole seconds: an order before its changes, lower numbers before higher ones.
/// Not by `seq` or by the database's way to sort words: both differ from machine to machine.
bool made_before(const OrderPaper& a, const OrderPaper& b) {
    const auto key = [](const OrderPaper& one) {
        return std::tuple<const std::string&, bool, std::size_t, const std::string&>(
            one.kept_at, one.kind == NumberKind::change_order, one.number.size(), one.number);
    };
    return key(a) < key(b);
}

std::string joined(const std::vector<std::string>& ids) {
    std::string out;
    for (const std::string& id : ids) {
        if (!out.empty()) out += ' ';
        out += id;
    }
    return out;
}

std::vector<std::string> parted(const std::string& ids) {
    std::vector<std::string> out;
    std::istringstream words(ids);
    for (std::string id; words >> id;)
        out.push_back(id);
    return out;
}

}  // namespace

std::optional<Problem> OrderBook::refuse(NumberKind kind, const std::string& quote_id) const {
    if (kind != NumberKind::order && kind != NumberKind::change_order)
        return Problem{"order", "no paper of this kind is kept", "Choose an order or a change order"};
    const Result<QVariant> number = database_.value("SELECT number FROM quote_issued WHERE id = ?", {to_qt(quote_id)});
    if (!number) return number.problems().front();
    if (!number.value().isValid()) return Problem{"order", "names a quote that is not here", "Read the list again"};
    if (kind == NumberKind::change_order) return std::nullopt;  // it asks for the client's acceptance itself
    const Result<QVariant> last = database_.value(
        "SELECT answer FROM quote_answer WHERE quote_id = ? ORDER BY seq DESC LIMIT 1", {to_qt(quote_id)});
    if (!last) return last.problems().front();
    if (last.value().toString() == QLatin1String(key_of(Answer::accepted))) return std::nullopt;
    return Problem{"quote " + for_message(number.value().toString().toStdString()), "is not accepted",
                   "Enter the client's acceptance first"};
}

std::optional<Problem> OrderBook::insert(OrderPaper& paper, const std::string& pdf) {
    const Result<QVariant> last = database_.value("SELECT max(seq) FROM order_paper");
    if (!last) return last.problems().front();
    paper.sha256 = sha256_hex(pdf);
    const QByteArray content(pdf.data(), static_cast<qsizetype>(pdf.size()));
    return database_.run(
        "INSERT INTO order_paper (seq, id, kind, quote_id, number, sha256, kept_at, kept_by, takes_place_of, content) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {QVariant::fromValue(last.value().toLongLong() + 1), to_qt(paper.id), QString::fromLatin1(key_of(paper.kind)),
         to_qt(paper.quote_id), to_qt(paper.number), to_qt(paper.sha256), to_qt(paper.kept_at), to_qt(paper.kept_by),
         to_qt(joined(paper.takes_place_of)), content});
}

std::optional<Problem> OrderBook::refuse_replaced(const std::string& quote_id,
                                                  const std::vector<std::string>& ids) const {
    if (ids.empty()) return std::nullopt;
    const Result<QVariant> job = database_.value("SELECT job_id FROM quote_issued WHERE id = ?", {to_qt(quote_id)});
    if (!job) return job.problems().front();
    const Result<std::vector<OrderPaper>> known = papers_of(job.value().toString().toStdString());
    if (!known) return known.problems().front();
    for (const std::string& id : ids) {
        if (std::none_of(known.value().begin(), known.value().end(), [&id](const OrderPaper& p) { return p.id == id; }))
            return Problem{"order", "is to take the place of a paper that is not among those of its job",
                           "Read the list again"};
    }
    return std::nullopt;
}

Result<OrderPaper> OrderBook::keep(NumberKind kind, const std::string& quote_id, const PrintNumbered& print,
                                   Instant now, const std::vector<std::string>& takes_place_of) {
    if (auto problem = refuse(kind, quote_id)) return *problem;
    if (auto problem = refuse_replaced(quote_id, takes_place_of)) return *problem;
    OrderPaper out;
    out.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    out.kind = kind;
    out.quote_id = quote_id;
    out.kept_at = iso8601(now);
    out.kept_by = store_.by();
    out.takes_place_of = takes_place_of;
    const auto given = keep_numbered(store_, {kind, out.id, "paper of an order"}, now, print,
                                     [&](const std::string& number, const std::string& pdf) -> std::optional<Problem> {
                                         if (auto problem = refuse_bytes(pdf)) return problem;
                                         // What could be said yes to before it was printed may not be any more.
                                         if (auto problem = refuse(kind, quote_id)) return problem;
                                         out.number = number;
                                         return insert(out, pdf);
                                     });
    if (!given) return given.problems();
    return out;
}

std::optional<NumberKind> order_kind_from_key(std::string_view key) noexcept {
    for (const NumberKind kind : {NumberKind::order, NumberKind::change_order})
        if (key == key_of(kind)) return kind;
    return std::nullopt;
}

Result<bool> OrderBook::put(const OrderPaper& paper, const std::string& pdf, bool& taken_by_other) {
    taken_by_other = false;
    if (auto problem = refuse_bytes(pdf)) return *problem;
    Result<QSqlQuery> known = database_.query(
        "SELECT id, sha256, quote_id, kind, number FROM order_paper WHERE id = ? OR (kind = ? AND number = ?)",
        {to_qt(paper.id), QString::fromLatin1(key_of(paper.kind)), to_qt(paper.number)});
    if (!known) return known.problems();
    bool here = false;
    while (known.value().next()) {
        const auto at = [&row = known.value()](int column) { return row.value(column).toString().toStdString(); };
        if (at(0) != paper.id) {
            taken_by_other = true;
            continue;
        }
        here = true;
        if (at(1) != sha256_hex(pdf) || at(2) != paper.quote_id || at(3) != key_of(paper.kind) || at(4) != paper.number)
            return Problem{"paper of order " + for_message(paper.number),
                           "is here with another content, and what went out never changes",
                           "Ask who sent the file which of both the client has"};
    }
    if (here || taken_by_other) {
        taken_by_other = taken_by_other && !here;
        return false;
    }
    OrderPaper kept = paper;
    if (auto problem = insert(kept, pdf)) return *problem;
    return true;
}

Result<std::vector<OrderPaper>> OrderBook::papers_of(const std::string& job_id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT o.id, o.kind, o.quote_id, o.number, o.sha256, o.kept_at, o.kept_by, o.takes_place_of FROM order_paper "
        "o "
        "JOIN quote_issued q ON q.id = o.quote_id WHERE q.job_id = ?",
        {to_qt(job_id)});
    if (!found) return found.problems();
    std::vector<OrderPaper> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        const NumberKind kind =
            at(1) == key_of(NumberKind::change_order) ? NumberKind::change_order : NumberKind::order;
        out.push_back({at(0), kind, at(2), at(3), at(4), at(5), at(6), parted(at(7))});
    }
    std::sort(out.begin(), out.end(), made_before);
    return out;
}

const OrderPaper* replaced_by(const std::vector<OrderPaper>& papers, const std::string& id) {
    for (const OrderPaper& one : papers) {
        const std::vector<std::string>& named = one.takes_place_of;
        if (std::find(named.begin(), named.end(), id) != named.end()) return &one;
    }
    return nullptr;
}

std::vector<OrderPaper> standing(const std::vector<OrderPaper>& papers) {
    std::vector<OrderPaper> out;
    std::copy_if(papers.begin(), papers.end(), std::back_inserter(out),
                 [&papers](const OrderPaper& one) { return replaced_by(papers, one.id) == nullptr; });
    return out;
}

Result<std::string> OrderBook::paper(const std::string& id) const {
    return hashed_content(database_, "SELECT sha256, content FROM order_paper WHERE id = ?", {to_qt(id)},
                          "paper of an order", {"paper of an order", "is not here", "Read the list again"});
}

Result<std::vector<std::string>> damaged_order_papers(const Database& database) {
    return rows_without_hash(database, "SELECT sha256, content, number FROM order_paper");
}

}  // namespace wg::store
