#pragma once
// The firm's book of stock: movements of items, which are corrected and never changed.

#include <string>
#include <vector>

#include "core/parts/stock.h"
#include "core/store/store.h"

namespace wg::store {

class StockBook {
   public:
    /// The store must outlive it.
    explicit StockBook(Store& store) : store_(store), database_(store.database()) {}

    /// Adds a movement; id, who and when are the book's. Refused: no item, a unit that is none, a quantity out of
    /// range, a job that is not here, a correction of what is not here, is of another item or unit, or was corrected
    /// already.
    [[nodiscard]] Result<parts::StockMove> enter(const parts::StockMove& move, Instant now);
    /// All or none.
    [[nodiscard]] Result<std::vector<parts::StockMove>> enter_all(const std::vector<parts::StockMove>& moves,
                                                                  Instant now);
    /// Of an item, newest first; `limit` 0: all.
    [[nodiscard]] Result<std::vector<parts::StockMove>> moves(const std::string& item_id, int limit) const;
    /// Of every item that ever moved, by item and unit.
    [[nodiscard]] Result<std::vector<parts::StockLevel>> levels() const;
    /// Of these items; 1,000 at most.
    [[nodiscard]] Result<std::vector<parts::StockLevel>> levels_of(const std::vector<std::string>& item_ids) const;
    /// Of a job by its number as people write it; empty: none has it, or it was removed.
    [[nodiscard]] Result<std::string> job_of_number(const std::string& number) const;
    [[nodiscard]] Result<std::string> number_of_job(const std::string& job_id) const;

   private:
    friend class PurchaseBook;
    /// Within a transaction.
    [[nodiscard]] Result<parts::StockMove> put(parts::StockMove move, Instant now) const;
    [[nodiscard]] std::optional<Problem> refuse(const parts::StockMove& move) const;

    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
