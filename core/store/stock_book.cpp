#include "core/store/stock_book.h"

#include <QUuid>
#include <QVariant>
#include <algorithm>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/stock_rows.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* move_columns =
    "id, item_id, unit, move, thousandths, job_id, purchase_id, purchase_line, note, entered_by, entered_at, "
    "corrects_id";
constexpr std::size_t longest_item_id = 2000;
constexpr std::size_t longest_stock_note = 2000;
constexpr std::size_t most_items_at_once = 1000;
// A correction may have turned an entry of the job into one of another: whole chains are read.
constexpr const char* chains_of_job = "WHERE item_id IN (SELECT item_id FROM stock_move WHERE job_id = ?)";

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
    if (parts::counted_whole(move.unit) && move.thousandths % 1000 != 0)
        return Problem{where, "is counted in pieces, and a part of one is none", "Enter whole pieces"};
    if (move.kind == parts::StockMoveKind::fitted && move.job_id.empty())
        return Problem{where, "names no job that it was taken for", "Choose the job"};
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

Result<std::vector<parts::StockMove>> stock_moves(const Database& database, const QString& where,
                                                  const QVariantList& values) {
    return moves_of(database.query(
        QStringLiteral("SELECT %1 FROM stock_move %2 ORDER BY seq").arg(QString::fromLatin1(move_columns), where),
        values, Fetch::row_by_row));
}

Result<ItemsNamed> items_named(const std::vector<std::string>& item_ids) {
    if (item_ids.size() > most_items_at_once)
        return Problem{"stock", "is asked for more than 1,000 items at once", "Ask for all of it"};
    ItemsNamed out;
    QStringList places;
    for (const std::string& id : item_ids) {
        places += QStringLiteral("?");
        out.values << to_qt(id);
    }
    out.places = places.join(QLatin1Char(','));
    return out;
}

Result<std::vector<parts::StockLevel>> StockBook::levels() const {
    const auto all = stock_moves(database_, QString(), {});
    if (!all) return all.problems();
    return parts::stock_levels(all.value());
}

Result<parts::StockByItem> StockBook::taken_for(const std::string& job_id) const {
    const auto moves = stock_moves(database_, chains_of_job, {to_qt(job_id)});
    if (!moves) return moves.problems();
    return parts::taken_by_job(moves.value())[job_id];
}

Result<int> StockBook::take_for_job(const std::string& job_id, const std::vector<Taking>& takings, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<parts::StockByItem> taken = taken_for(job_id);
    if (!taken) return taken.problems();
    int lines = 0;
    for (const Taking& one : takings) {
        if (one.now == 0) continue;
        if (taken.value()[{one.item_id, one.unit}] != one.before)
            return Problem{"stock of " + for_message(one.item_id), "was taken for the job since you looked",
                           "Look at what is left to take"};
        parts::StockMove move;
        move.item_id = one.item_id;
        move.unit = one.unit;
        move.kind = parts::StockMoveKind::fitted;
        move.thousandths = one.now;
        move.job_id = job_id;
        const Result<parts::StockMove> entered = put(std::move(move), now);
        if (!entered) return entered.problems();
        ++lines;
    }
    if (lines == 0) return Problem{"stock", "nothing was entered to be taken", "Enter what goes on the van"};
    if (auto problem = transaction.commit()) return *problem;
    return lines;
}

Result<std::vector<StockBook::Fitted>> StockBook::fitted_for(const std::string& job_id) const {
    const auto moves = stock_moves(database_, chains_of_job, {to_qt(job_id)});
    if (!moves) return moves.problems();
    const std::vector<parts::StockMove> counting = parts::moves_that_count(moves.value());
    parts::StockByItem returned;
    for (const parts::StockMove& move : counting)
        if (move.job_id == job_id && move.kind == parts::StockMoveKind::returned)
            returned[{move.item_id, move.unit}] += move.thousandths;
    std::vector<Fitted> out;
    for (const parts::StockMove& move : counting) {
        if (move.kind == parts::StockMoveKind::counted) {
            for (Fitted& one : out)
                one.counted_since =
                    one.counted_since || (one.move.item_id == move.item_id && one.move.unit == move.unit);
            continue;
        }
        if (move.job_id != job_id || move.kind != parts::StockMoveKind::fitted) continue;
        std::int64_t& back = returned[{move.item_id, move.unit}];  // what went out first came back first
        const std::int64_t of_this = std::min(back, move.thousandths);
        back -= of_this;
        if (move.thousandths > of_this) out.push_back({move, move.thousandths - of_this, false});
    }
    return out;
}

Result<int> StockBook::taken_as_planned(const std::string& job_id) const {
    const auto fitted = fitted_for(job_id);
    if (!fitted) return fitted.problems();
    return static_cast<int>(fitted.value().size());
}

Result<int> StockBook::put_back_for_job(const std::string& job_id, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const auto fitted = fitted_for(job_id);
    if (!fitted) return fitted.problems();
    for (const Fitted& one : fitted.value()) {
        parts::StockMove back = parts::struck_out(one.move);
        if (one.counted_since || one.out < one.move.thousandths) {
            back.kind = parts::StockMoveKind::returned;
            back.thousandths = one.out;
            back.corrects_id.clear();
        }
        const Result<parts::StockMove> entered = put(std::move(back), now);
        if (!entered) return entered.problems();
    }
    if (fitted.value().empty())
        return Problem{"stock", "nothing of the job is left to be put back", "Look at its movements"};
    if (auto problem = transaction.commit()) return *problem;
    return static_cast<int>(fitted.value().size());
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
