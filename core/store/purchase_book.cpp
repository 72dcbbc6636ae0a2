#include "core/store/purchase_book.h"

#include <QByteArray>
#include <QUuid>
#include <QVariant>
#include <map>
#include <set>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/hashed_rows.h"
#include "core/store/purchase_rows.h"
#include "core/store/quote_book.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t most_purchase_lines = 10'000;
constexpr std::size_t longest_purchase_text = 2000;

QVariant whole_value(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

QByteArray pdf_value(const std::string& pdf) {
    return {pdf.data(), static_cast<qsizetype>(pdf.size())};
}

std::optional<Problem> refuse_prints(const PurchasePrints& prints) {
    const auto no_pdf = [](const std::string& bytes) {
        return bytes.rfind("%PDF-", 0) != 0 || bytes.size() > max_paper_bytes;
    };
    std::set<std::string> suppliers;
    bool wrong = no_pdf(prints.whole);
    for (const auto& [supplier, pdf] : prints.to_suppliers)
        wrong = wrong || no_pdf(pdf) || !suppliers.insert(supplier).second;
    if (!wrong) return std::nullopt;
    return lost_purchase("has a paper that is no PDF, larger than 60 MiB, or there twice", "Print it again");
}

}  // namespace

Problem lost_purchase(const char* what, const char* remedy) {
    return {"purchase list", what, remedy};
}

std::optional<Problem> PurchaseBook::refuse(const std::string& job_id,
                                            const std::vector<PurchaseOrdered>& lines) const {
    const Result<QVariant> job = database_.value("SELECT 1 FROM job WHERE id = ?", {to_qt(job_id)});
    if (!job) return job.problems().front();
    if (!job.value().isValid()) return lost_purchase("is of a job that is not here", "Save the job first");
    if (lines.size() > most_purchase_lines) return lost_purchase("has more than 10,000 lines", "Make two of it");
    const auto beyond = [](std::int64_t thousandths) {
        return thousandths < 0 || thousandths > parts::most_stock_thousandths;
    };
    int position = 0;
    for (const PurchaseOrdered& line : lines) {
        if (line.position != ++position) return lost_purchase("has lines out of order", "Make the list again");
        if (beyond(line.thousandths) || beyond(line.needed.value_or(0)))
            return lost_purchase("has a quantity below 0 or beyond 1,000,000,000", "Check the quantities");
        for (const std::string* text : {&line.supplier, &line.item_id, &line.text, &line.unit})
            if (text->size() > longest_purchase_text || !is_utf8(*text))
                return lost_purchase("has a text that is too long or none", "Shorten the line's texts");
    }
    return std::nullopt;
}

std::optional<Problem> PurchaseBook::insert(const PurchasePaper& paper, const std::vector<PurchaseOrdered>& lines,
                                            const PurchasePrints& prints) const {
    if (auto problem =
            database_.run("INSERT INTO purchase_paper (seq, id, job_id, number, sha256, kept_at, kept_by, content) "
                          "VALUES ((SELECT coalesce(max(seq), 0) + 1 FROM purchase_paper), ?, ?, ?, ?, ?, ?, ?)",
                          {to_qt(paper.id), to_qt(paper.job_id), to_qt(paper.number), to_qt(paper.sha256),
                           to_qt(paper.kept_at), to_qt(paper.kept_by), pdf_value(prints.whole)}))
        return problem;
    for (const PurchaseOrdered& line : lines) {
        if (auto problem = database_.run(
                "INSERT INTO purchase_line (paper_id, position, supplier, item_id, text, unit, thousandths, needed, "
                "service) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                {to_qt(paper.id), line.position, to_qt(line.supplier), to_qt(line.item_id), to_qt(line.text),
                 to_qt(line.unit), whole_value(line.thousandths), line.needed ? whole_value(*line.needed) : QVariant(),
                 line.service ? 1 : 0}))
            return problem;
    }
    for (const auto& [supplier, pdf] : prints.to_suppliers) {
        if (auto problem = database_.run(
                "INSERT INTO purchase_supplier_paper (paper_id, supplier, sha256, content) VALUES (?, ?, ?, ?)",
                {to_qt(paper.id), to_qt(supplier), to_qt(sha256_hex(pdf)), pdf_value(pdf)}))
            return problem;
    }
    return std::nullopt;
}

Result<PurchasePaper> PurchaseBook::keep(const std::string& job_id, const std::vector<PurchaseOrdered>& lines,
                                         const PrintPurchase& print, Instant now) {
    if (auto problem = refuse(job_id, lines)) return *problem;
    PurchasePaper out;
    out.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    out.job_id = job_id;
    out.kept_at = iso8601(now);
    out.kept_by = store_.by();
    PurchasePrints prints;
    const auto given = keep_numbered(
        store_, {NumberKind::purchase, out.id, "purchase list"}, now,
        [&](const std::string& number) -> Result<std::string> {
            Result<PurchasePrints> made = print(number);
            if (!made) return made.problems();
            prints = std::move(made).value();
            if (auto problem = refuse_prints(prints)) return *problem;
            return prints.whole;
        },
        [&](const std::string& number, const std::string& whole) {
            out.number = number;
            out.sha256 = sha256_hex(whole);
            return insert(out, lines, prints);
        });
    if (!given) return given.problems();
    return out;
}

Result<std::vector<PurchaseList>> PurchaseBook::lists(int limit) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT p.id, p.job_id, p.number, p.sha256, p.kept_at, p.kept_by, j.number FROM purchase_paper p "
        "JOIN job j ON j.id = p.job_id ORDER BY p.seq DESC LIMIT ?",
        {limit});
    if (!found) return found.problems();
    std::vector<PurchaseList> out;
    std::map<std::string, std::size_t> place;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        place[at(0)] = out.size();
        out.push_back({{at(0), at(1), at(2), at(3), at(4), at(5)}, at(6), {}, {}});
    }
    const QString newest = QStringLiteral("IN (SELECT id FROM purchase_paper ORDER BY seq DESC LIMIT ?)");
    auto lines = purchase_lines(database_, QStringLiteral("WHERE l.paper_id ") + newest, {limit});
    if (!lines) return lines.problems();
    for (PurchaseRow& row : lines.value())
        if (const auto of = place.find(row.paper_id); of != place.end())
            out[of->second].lines.push_back(std::move(row.listed.line));
    Result<QSqlQuery> papers = database_.query(
        QStringLiteral("SELECT paper_id, supplier FROM purchase_supplier_paper WHERE paper_id %1").arg(newest),
        {limit});
    if (!papers) return papers.problems();
    while (papers.value().next())
        if (const auto of = place.find(papers.value().value(0).toString().toStdString()); of != place.end())
            out[of->second].papers_to.push_back(papers.value().value(1).toString().toStdString());
    return out;
}

Result<std::string> PurchaseBook::paper(const std::string& id) const {
    return hashed_content(database_, "SELECT sha256, content FROM purchase_paper WHERE id = ?", {to_qt(id)},
                          "purchase list", lost_purchase("is not here", "Read the list again"));
}

Result<std::string> PurchaseBook::paper_to(const std::string& id, const std::string& supplier) const {
    return hashed_content(
        database_, "SELECT sha256, content FROM purchase_supplier_paper WHERE paper_id = ? AND supplier = ?",
        {to_qt(id), to_qt(supplier)}, "paper to a supplier",
        lost_purchase("has no paper to this supplier: an older program kept it, or nothing was to be ordered there",
                      "Open the whole list"));
}

namespace {

Result<std::vector<PurchaseOrdered>> bare_lines(Result<std::vector<PurchaseRow>> rows) {
    if (!rows) return rows.problems();
    std::vector<PurchaseOrdered> out;
    out.reserve(rows.value().size());
    for (PurchaseRow& row : rows.value())
        out.push_back(std::move(row.listed.line));
    return out;
}

}  // namespace

Result<std::vector<PurchaseOrdered>> PurchaseBook::lines(const std::string& id) const {
    return bare_lines(purchase_lines(database_, QStringLiteral("WHERE l.paper_id = ?"), {to_qt(id)}));
}

Result<std::vector<PurchaseOrdered>> PurchaseBook::lines_of_job(const std::string& job_id) const {
    return bare_lines(purchase_lines(database_, QStringLiteral("WHERE p.job_id = ?"), {to_qt(job_id)}));
}

Result<PurchaseBook::OrderedFromByLine> PurchaseBook::ordered_from(const std::string& item_id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT l.paper_id, l.position, p.number, l.supplier FROM purchase_line l "
        "JOIN purchase_paper p ON p.id = l.paper_id WHERE l.item_id = ?",
        {to_qt(item_id)});
    if (!found) return found.problems();
    OrderedFromByLine out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out[{at(0), found.value().value(1).toInt()}] = {at(2), at(3)};
    }
    return out;
}

Result<std::vector<std::string>> damaged_purchase_papers(const Database& database) {
    return rows_without_hash(database, "SELECT sha256, content, number FROM purchase_paper");
}

Result<std::vector<std::string>> damaged_supplier_papers(const Database& database) {
    return rows_without_hash(database,
                             "SELECT s.sha256, s.content, p.number FROM purchase_supplier_paper s "
                             "JOIN purchase_paper p ON p.id = s.paper_id");
}

}  // namespace wg::store
