// What came of purchase lists: read with their lines, booked in parts, taken back.

#include <QVariant>
#include <algorithm>
#include <map>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/purchase_book.h"
#include "core/store/purchase_rows.h"
#include "core/store/stock_rows.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

using LineKey = std::pair<std::string, int>;  // list, position

/// Booked entries of these lists with what corrected them, whatever the correction names itself.
Result<std::vector<parts::StockMove>> moves_of_lists(const Database& database, const QString& where,
                                                     const QVariantList& values) {
    return stock_moves(database,
                       QStringLiteral("WHERE item_id IN (SELECT l.item_id FROM purchase_line l "
                                      "JOIN purchase_paper p ON p.id = l.paper_id %1)")
                           .arg(where),
                       values);
}

}  // namespace

Result<std::vector<PurchaseRow>> purchase_lines(const Database& database, const QString& where,
                                                const QVariantList& values) {
    Result<QSqlQuery> found = database.query(
        QStringLiteral(
            "SELECT l.paper_id, l.position, l.supplier, l.item_id, l.text, l.unit, l.thousandths, l.needed, l.service, "
            "(SELECT c.closed FROM purchase_close c WHERE c.paper_id = l.paper_id AND c.position = l.position "
            "ORDER BY c.seq DESC LIMIT 1), p.number, p.job_id, j.number, j.state, j.removed_at, "
            "(SELECT max(q.seq) FROM purchase_paper q WHERE q.job_id = p.job_id) = p.seq "
            "FROM purchase_line l JOIN purchase_paper p ON p.id = l.paper_id JOIN job j ON j.id = p.job_id %1 "
            "ORDER BY p.seq, l.position")
            .arg(where),
        values);
    if (!found) return found.problems();
    std::vector<PurchaseRow> out;
    std::map<LineKey, std::size_t> place;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        const auto at = [&row](int column) { return row.value(column).toString().toStdString(); };
        PurchaseRow one;
        one.paper_id = at(0);
        parts::OrderedLine& line = one.listed.line;
        line.position = row.value(1).toInt();
        line.supplier = at(2);
        line.item_id = at(3);
        line.text = at(4);
        line.unit = at(5);
        line.thousandths = row.value(6).toLongLong();
        if (!row.isNull(7)) line.needed = row.value(7).toLongLong();
        line.service = row.value(8).toInt() == 1;
        line.closed = row.value(9).toInt() == 1;
        one.listed.purchase_number = at(10);
        one.listed.job_id = at(11);
        one.listed.job_number = at(12);
        const std::string state = at(13);
        const bool before_fitting =
            state == "visit" || state == "planning" || state == "offered" || state == "accepted";
        one.listed.job_waits = before_fitting && row.value(14).toString().isEmpty();
        one.listed.newest = row.value(15).toBool();
        place[{one.paper_id, line.position}] = out.size();
        out.push_back(std::move(one));
    }
    const auto moves = moves_of_lists(database, where, values);
    if (!moves) return moves.problems();
    for (const parts::StockMove& move : parts::moves_that_count(moves.value())) {
        if (move.kind != parts::StockMoveKind::received) continue;
        const auto line = place.find({move.purchase_id, move.purchase_line});
        if (line != place.end()) out[line->second].listed.line.received += move.thousandths;
    }
    return out;
}

std::optional<Problem> PurchaseBook::close(const std::string& id, const PurchaseOrdered& line, bool closed,
                                           Instant now) const {
    if (line.closed == closed) return std::nullopt;
    return database_.run(
        "INSERT INTO purchase_close (seq, paper_id, position, closed, entered_by, entered_at) "
        "VALUES ((SELECT coalesce(max(seq), 0) + 1 FROM purchase_close), ?, ?, ?, ?, ?)",
        {to_qt(id), line.position, closed ? 1 : 0, to_qt(store_.by()), to_qt(iso8601(now))});
}

Result<int> PurchaseBook::receive(const std::string& id, const std::vector<Delivered>& delivered,
                                  const std::string& note, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::vector<PurchaseOrdered>> ordered = lines(id);
    if (!ordered) return ordered.problems();
    const StockBook stock(store_);
    int changed = 0;
    for (const Delivered& one : delivered) {
        const auto line = std::find_if(ordered.value().begin(), ordered.value().end(),
                                       [&](const PurchaseOrdered& each) { return each.position == one.position; });
        if (line == ordered.value().end()) return lost_purchase("has no such line", "Read the list again");
        const std::string where = "purchase list, " + for_message(line->text);
        if (!parts::is_stocked(*line)) {
            if (one.now == 0 && !one.rest_does_not_come) continue;
            return Problem{where, "is a line that no stock is kept of", "Leave it out"};
        }
        if (one.before != line->received)
            return Problem{where, "was booked by somebody else since you looked", "Look at what is left of it"};
        if (one.now == 0 && one.rest_does_not_come == line->closed) continue;
        ++changed;
        if (auto problem = close(id, *line, one.rest_does_not_come, now)) return *problem;
        if (one.now == 0) continue;
        parts::StockMove move;
        move.item_id = line->item_id;
        move.unit = line->unit;
        move.thousandths = one.now;
        move.purchase_id = id;
        move.purchase_line = line->position;
        move.note = note;
        const Result<parts::StockMove> entered = stock.put(std::move(move), now);
        if (!entered) return entered.problems();
    }
    if (changed == 0) return lost_purchase("has nothing entered to be booked", "Enter what came");
    if (auto problem = transaction.commit()) return *problem;
    return changed;
}

Result<std::vector<Booking>> PurchaseBook::bookings(const std::string& id) const {
    const auto moves = moves_of_lists(database_, QStringLiteral("WHERE l.paper_id = ?"), {to_qt(id)});
    if (!moves) return moves.problems();
    std::vector<Booking> out;
    for (parts::StockMove& move : parts::moves_that_count(moves.value())) {
        if (move.purchase_id != id) continue;
        const auto known = std::find_if(out.begin(), out.end(), [&](const Booking& one) {
            return one.at == move.at && one.by == move.by && one.note == move.note;
        });
        if (known == out.end())
            out.push_back({move.at, move.by, move.note, {move}});
        else
            known->moves.push_back(std::move(move));
    }
    std::reverse(out.begin(), out.end());
    return out;
}

std::optional<Problem> PurchaseBook::reopen(const Booking& booking, const parts::StockMove& move, Instant now) const {
    Result<QSqlQuery> last = database_.query(
        "SELECT closed, entered_at, entered_by FROM purchase_close WHERE paper_id = ? AND position = ? "
        "ORDER BY seq DESC LIMIT 1",
        {to_qt(move.purchase_id), move.purchase_line});
    if (!last) return last.problems().front();
    if (!last.value().next()) return std::nullopt;
    const auto at = [&row = last.value()](int column) { return row.value(column).toString().toStdString(); };
    PurchaseOrdered line;
    line.position = move.purchase_line;
    line.closed = last.value().value(0).toInt() == 1;
    if (at(1) != booking.at || at(2) != booking.by) return std::nullopt;  // somebody said so at another time
    return close(move.purchase_id, line, false, now);
}

Result<int> PurchaseBook::take_back(const Booking& booking, Instant now) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const StockBook stock(store_);
    int back = 0;
    for (const parts::StockMove& move : booking.moves) {
        if (move.thousandths == 0) continue;
        const Result<parts::StockMove> entered = stock.put(parts::struck_out(move), now);
        if (!entered) return entered.problems();
        // What was said of the rest with this delivery was said of a delivery that did not come so.
        if (auto problem = reopen(booking, move, now)) return *problem;
        ++back;
    }
    if (back == 0) return lost_purchase("has nothing of that booking that still counts", "Read the list again");
    if (auto problem = transaction.commit()) return *problem;
    return back;
}

Result<std::vector<parts::ItemStanding>> stock_standings(Store& store, const std::vector<std::string>& item_ids,
                                                         const std::string& for_job) {
    QString moves_where;
    QString lines_where;
    QVariantList values;
    if (!item_ids.empty()) {
        const Result<ItemsNamed> named = items_named(item_ids);
        if (!named) return named.problems();
        moves_where = QStringLiteral("WHERE item_id IN (%1)").arg(named.value().places);
        lines_where = QStringLiteral("WHERE l.item_id IN (%1)").arg(named.value().places);
        values = named.value().values;
    }
    const auto moves = stock_moves(store.database(), moves_where, values);
    if (!moves) return moves.problems();
    const auto rows = purchase_lines(store.database(), lines_where, values);
    if (!rows) return rows.problems();
    std::vector<parts::ListedLine> lines;
    lines.reserve(rows.value().size());
    for (const PurchaseRow& row : rows.value())
        lines.push_back(row.listed);
    return parts::item_standings(moves.value(), lines, for_job);
}

}  // namespace wg::store
