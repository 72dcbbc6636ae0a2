#include "core/store/stock_book.h"

#include <QUuid>
#include <QVariant>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* move_columns =
    "id, item_id, unit, move, thousandths, job_id, purchase_id, purchase_line, note, entered_by, entered_at, "
    "corrects_id";
constexpr std::size_t longest_item_id = 2000;
constexpr std::size_t longest_stock_note = 2000;
constexpr std::size_t most_items_at_once = 1000;

QVariant text_or_nothing(const std::string& text) {
    return text.empty() ? QVariant() : QVariant(to_qt(text));
}

std::string stock_where(const parts::StockMove& move) {
    return "stock of " + for_message(move.item_id);
}

Result<std::vector<parts::StockMove>> moves_of(Result<QSqlQuery> found) {
    if (!found) return found.problems();
    std::vector<parts::StockMove> out;
    const QSqlQuery& row = found.value();
    const auto text = [&row](int column) { return row.value(column).toString().toStdString(); };
    while (found.value().next()) {
        const std::optional<parts::StockMoveKind> kind = parts::stock_move_of_key(text(3));
        if (!kind)
            return Problem{"book of stock", "has the unknown movement '" + for_message(text(3)) + "'",
                           "Open the store with the program that wrote it"};
        parts::StockMove move;
        move.id = text(0);
        move.item_id = text(1);
        move.unit = text(2);
        move.kind = *kind;
        move.thousandths = row.value(4).toLongLong();
        move.job_id = text(5);
        move.purchase_id = text(6);
        move.purchase_line = row.value(7).toInt();
        move.note = text(8);
        move.by = text(9);
        move.at = text(10);
        move.corrects_id = text(11);
        out.push_back(std::move(move));
    }
    return out;
}

}  // namespace

std::optional<Problem> StockBook::refuse(const parts::StockMove& move) const {
    const std::string where = stock_where(move);
    if (move.item_id.empty() || move.item_id.size() > longest_item_id || !is_utf8(move.item_id))
        return Problem{"stock", "names no item", "Choose an item of a price list"};
    if (move.unit != "pc" && move.unit != "m" && move.unit != "kg" && move.unit != "h")
        return Problem{where, "'" + for_message(move.unit) + "' is no unit", "Use pc, m, kg or h"};
    if (move.thousandths < 0 || move.thousandths > parts::most_stock_thousandths)
        return Problem{where, "the quantity is below 0 or beyond 1,000,000,000", "Check the figure"};
    if (move.note.size() > longest_stock_note || !is_utf8(move.note))
        return Problem{where, "the note is longer than 2,000 characters", "Write it shorter"};
    if (!move.job_id.empty()) {
        const Result<QVariant> job = database_.value("SELECT 1 FROM job WHERE id = ?", {to_qt(move.job_id)});
        if (!job) return job.problems().front();
        if (!job.value().isValid()) return Problem{where, "names a job that is not here", "Choose the job again"};
    }
    if (move.corrects_id.empty()) return std::nullopt;
    Result<QSqlQuery> corrected =
        database_.query("SELECT item_id, unit FROM stock_move WHERE id = ?", {to_qt(move.corrects_id)});
    if (!corrected) return corrected.problems().front();
    if (!corrected.value().next())
        return Problem{where, "the entry it corrects is not in the book", "Read the book again"};
    if (corrected.value().value(0).toString().toStdString() != move.item_id ||
        corrected.value().value(1).toString().toStdString() != move.unit)
        return Problem{where, "the entry it corrects is of another item or unit", "Correct the quantity alone"};
    const Result<QVariant> before =
        database_.value("SELECT 1 FROM stock_move WHERE corrects_id = ?", {to_qt(move.corrects_id)});
    if (!before) return before.problems().front();
    if (before.value().isValid())
        return Problem{where, "the entry was corrected already", "Read the book again and correct the correction"};
    return std::nullopt;
}

Result<parts::StockMove> StockBook::put(parts::StockMove move, Instant now) const {
    if (auto problem = refuse(move)) return *problem;
    move.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    move.by = store_.by();
    move.at = iso8601(now);
    const QVariant line = move.purchase_id.empty() ? QVariant() : QVariant(move.purchase_line);
    if (auto problem = database_.run(
            QStringLiteral(
                "INSERT INTO stock_move (seq, %1) VALUES ((SELECT coalesce(max(seq), 0) + 1 FROM stock_move), "
                "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .arg(QString::fromLatin1(move_columns)),
            {to_qt(move.id), to_qt(move.item_id), to_qt(move.unit), QString::fromLatin1(parts::key_of(move.kind)),
             QVariant::fromValue(static_cast<qlonglong>(move.thousandths)), text_or_nothing(move.job_id),
             text_or_nothing(move.purchase_id), line, to_qt(move.note), to_qt(move.by), to_qt(move.at),
             text_or_nothing(move.corrects_id)}))
        return *problem;
    return move;
}

Result<parts::StockMove> StockBook::enter(const parts::StockMove& move, Instant now) {
    const auto entered = enter_all({move}, now);
    if (!entered) return entered.problems();
    return entered.value().front();
}

Result<std::vector<parts::StockMove>> StockBook::enter_all(const std::vector<parts::StockMove>& moves, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    std::vector<parts::StockMove> out;
    out.reserve(moves.size());
    for (const parts::StockMove& move : moves) {
        parts::StockMove bare = move;  // what was received from a purchase list is booked with the list
        bare.purchase_id.clear();
        bare.purchase_line = 0;
        Result<parts::StockMove> entered = put(std::move(bare), now);
        if (!entered) return entered.problems();
        out.push_back(std::move(entered).value());
    }
    if (auto problem = transaction.commit()) return *problem;
    return out;
}

Result<std::vector<parts::StockMove>> StockBook::moves(const std::string& item_id, int limit) const {
    const QString sql = QStringLiteral("SELECT %1 FROM stock_move WHERE item_id = ? ORDER BY seq DESC")
                            .arg(QString::fromLatin1(move_columns));
    if (limit <= 0) return moves_of(database_.query(sql, {to_qt(item_id)}));
    return moves_of(database_.query(sql + QStringLiteral(" LIMIT ?"), {to_qt(item_id), limit}));
}

Result<std::vector<parts::StockLevel>> StockBook::levels() const {
    const auto all = moves_of(
        database_.query(QStringLiteral("SELECT %1 FROM stock_move ORDER BY seq").arg(QString::fromLatin1(move_columns)),
                        {}, Fetch::row_by_row));
    if (!all) return all.problems();
    return parts::stock_levels(all.value());
}

Result<std::vector<parts::StockLevel>> StockBook::levels_of(const std::vector<std::string>& item_ids) const {
    if (item_ids.empty()) return std::vector<parts::StockLevel>{};
    if (item_ids.size() > most_items_at_once)
        return Problem{"stock", "is asked for more than 1,000 items at once", "Ask for all of it"};
    QStringList places;
    QVariantList values;
    for (const std::string& id : item_ids) {
        places += QStringLiteral("?");
        values << to_qt(id);
    }
    const auto some =
        moves_of(database_.query(QStringLiteral("SELECT %1 FROM stock_move WHERE item_id IN (%2) ORDER BY seq")
                                     .arg(QString::fromLatin1(move_columns), places.join(QLatin1Char(','))),
                                 values));
    if (!some) return some.problems();
    return parts::stock_levels(some.value());
}

Result<std::string> StockBook::job_of_number(const std::string& number) const {
    const Result<QVariant> found = database_.value(
        "SELECT id FROM job WHERE number = ? AND removed_at IS NULL ORDER BY save_seq DESC LIMIT 1", {to_qt(number)});
    if (!found) return found.problems();
    return found.value().toString().toStdString();
}

Result<std::string> StockBook::number_of_job(const std::string& job_id) const {
    const Result<QVariant> found = database_.value("SELECT number FROM job WHERE id = ?", {to_qt(job_id)});
    if (!found) return found.problems();
    return found.value().toString().toStdString();
}

}  // namespace wg::store
