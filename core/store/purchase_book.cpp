#include "core/store/purchase_book.h"

#include <QByteArray>
#include <QUuid>
#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/quote_book.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t most_purchase_lines = 10'000;
constexpr std::size_t longest_purchase_text = 2000;

std::string purchase_bytes(const QVariant& content) {
    const QByteArray bytes = content.toByteArray();
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

Problem lost_purchase(const char* what, const char* remedy) {
    return {"purchase list", what, remedy};
}

}  // namespace

std::optional<Problem> PurchaseBook::refuse(const std::string& job_id,
                                            const std::vector<PurchaseOrdered>& lines) const {
    const Result<QVariant> job = database_.value("SELECT 1 FROM job WHERE id = ?", {to_qt(job_id)});
    if (!job) return job.problems().front();
    if (!job.value().isValid()) return lost_purchase("is of a job that is not here", "Save the job first");
    if (lines.size() > most_purchase_lines) return lost_purchase("has more than 10,000 lines", "Make two of it");
    int position = 0;
    for (const PurchaseOrdered& line : lines) {
        if (line.position != ++position) return lost_purchase("has lines out of order", "Make the list again");
        if (line.thousandths < 0 || line.thousandths > parts::most_stock_thousandths)
            return lost_purchase("has a quantity below 0 or beyond 1,000,000,000", "Check the quantities");
        for (const std::string* text : {&line.supplier, &line.item_id, &line.text, &line.unit})
            if (text->size() > longest_purchase_text || !is_utf8(*text))
                return lost_purchase("has a text that is too long or none", "Shorten the line's texts");
    }
    return std::nullopt;
}

std::optional<Problem> PurchaseBook::insert(PurchasePaper& paper, const std::vector<PurchaseOrdered>& lines,
                                            const std::string& pdf) const {
    paper.sha256 = sha256_hex(pdf);
    if (auto problem = database_.run(
            "INSERT INTO purchase_paper (seq, id, job_id, number, sha256, kept_at, kept_by, content) "
            "VALUES ((SELECT coalesce(max(seq), 0) + 1 FROM purchase_paper), ?, ?, ?, ?, ?, ?, ?)",
            {to_qt(paper.id), to_qt(paper.job_id), to_qt(paper.number), to_qt(paper.sha256), to_qt(paper.kept_at),
             to_qt(paper.kept_by), QByteArray(pdf.data(), static_cast<qsizetype>(pdf.size()))}))
        return problem;
    for (const PurchaseOrdered& line : lines) {
        if (auto problem = database_.run(
                "INSERT INTO purchase_line (paper_id, position, supplier, item_id, text, unit, thousandths) "
                "VALUES (?, ?, ?, ?, ?, ?, ?)",
                {to_qt(paper.id), line.position, to_qt(line.supplier), to_qt(line.item_id), to_qt(line.text),
                 to_qt(line.unit), QVariant::fromValue(static_cast<qlonglong>(line.thousandths))}))
            return problem;
    }
    return std::nullopt;
}

Result<PurchasePaper> PurchaseBook::keep(const std::string& job_id, const std::vector<PurchaseOrdered>& lines,
                                         const PrintNumbered& print, Instant now) {
    if (auto problem = refuse(job_id, lines)) return *problem;
    NumberRanges numbers(store_);
    const int year = std::stoi(iso8601(now).substr(0, 4));
    PurchasePaper out;
    out.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    out.job_id = job_id;
    out.kept_at = iso8601(now);
    out.kept_by = store_.by();
    for (int i = 0; i < most_prints; ++i) {
        const Result<std::string> expected = numbers.next(NumberKind::purchase, year);
        if (!expected) return expected.problems();
        const Result<std::string> pdf = print(expected.value());
        if (!pdf) return pdf.problems();
        if (pdf.value().rfind("%PDF-", 0) != 0 || pdf.value().size() > max_paper_bytes)
            return lost_purchase("is no PDF, or larger than 60 MiB", "Print it again");
        Transaction transaction(database_);
        if (auto problem = transaction.begin()) return *problem;
        const Result<std::string> given = numbers.give(NumberKind::purchase, year, out.id, now);
        if (!given) return given.problems();
        if (given.value() != expected.value()) continue;  // another seat was quicker
        out.number = given.value();
        if (auto problem = insert(out, lines, pdf.value())) return *problem;
        if (auto problem = transaction.commit()) return *problem;
        return out;
    }
    return lost_purchase("other seats took every number that it was printed with", "Try again");
}

Result<std::vector<PurchasePaper>> PurchaseBook::papers(int limit) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT id, job_id, number, sha256, kept_at, kept_by FROM purchase_paper ORDER BY seq DESC LIMIT ?", {limit});
    if (!found) return found.problems();
    std::vector<PurchasePaper> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({at(0), at(1), at(2), at(3), at(4), at(5)});
    }
    return out;
}

Result<std::string> PurchaseBook::paper(const std::string& id) const {
    Result<QSqlQuery> found = database_.query("SELECT sha256, content FROM purchase_paper WHERE id = ?", {to_qt(id)});
    if (!found) return found.problems();
    if (!found.value().next()) return lost_purchase("is not here", "Read the list again");
    std::string bytes = purchase_bytes(found.value().value(1));
    if (sha256_hex(bytes) != found.value().value(0).toString().toStdString())
        return lost_purchase("is damaged: its bytes no longer have their hash", "Go back to the last backup");
    return bytes;
}

Result<std::vector<PurchaseOrdered>> PurchaseBook::lines(const std::string& id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT l.position, l.supplier, l.item_id, l.text, l.unit, l.thousandths, m.id FROM purchase_line l "
        "LEFT JOIN stock_move m ON m.purchase_id = l.paper_id AND m.purchase_line = l.position "
        "WHERE l.paper_id = ? ORDER BY l.position",
        {to_qt(id)});
    if (!found) return found.problems();
    std::vector<PurchaseOrdered> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        const auto at = [&row](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({row.value(0).toInt(), at(1), at(2), at(3), at(4), row.value(5).toLongLong(), !row.isNull(6)});
    }
    return out;
}

Result<int> PurchaseBook::receive(const std::string& id, const std::string& supplier, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::vector<PurchaseOrdered>> ordered = lines(id);
    if (!ordered) return ordered.problems();
    const StockBook stock(store_);
    int booked = 0;
    for (const PurchaseOrdered& line : ordered.value()) {
        if (line.supplier != supplier || line.received || line.item_id.empty() || line.thousandths == 0) continue;
        parts::StockMove move;
        move.item_id = line.item_id;
        move.unit = line.unit;
        move.thousandths = line.thousandths;
        move.purchase_id = id;
        move.purchase_line = line.position;
        const Result<parts::StockMove> entered = stock.put(std::move(move), now);
        if (!entered) return entered.problems();
        ++booked;
    }
    if (booked == 0) return lost_purchase("has nothing of this supplier that is not received yet", "Look at its lines");
    if (auto problem = transaction.commit()) return *problem;
    return booked;
}

Result<std::vector<std::string>> damaged_purchase_papers(const Database& database) {
    Result<QSqlQuery> found =
        database.query("SELECT number, sha256, content FROM purchase_paper", {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (sha256_hex(purchase_bytes(row.value(2))) != row.value(1).toString().toStdString())
            out.push_back(row.value(0).toString().toStdString());
    }
    return out;
}

}  // namespace wg::store
