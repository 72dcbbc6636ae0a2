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
    /// range, parts of a piece, a job that is not here, none where it was fitted, a correction of what is not here, is
    /// of another item or unit, or was corrected already.
    [[nodiscard]] Result<parts::StockMove> enter(const parts::StockMove& move, Instant now);
    /// All or none.
    [[nodiscard]] Result<std::vector<parts::StockMove>> enter_all(const std::vector<parts::StockMove>& moves,
                                                                  Instant now);
    /// Of an item, newest first; `limit` 0: all.
    [[nodiscard]] Result<std::vector<parts::StockMove>> moves(const std::string& item_id, int limit) const;
    /// Of every item that ever moved, by item and unit.
    [[nodiscard]] Result<std::vector<parts::StockLevel>> levels() const;
    /// What left the stock for a job less what came back, by item and unit.
    [[nodiscard]] Result<parts::StockByItem> taken_for(const std::string& job_id) const;
    /// Takes what was planned for a job, all or none; how many lines. Refused: nothing, and a line of which something
    /// was taken since somebody looked (`before`).
    struct Taking {
        std::string item_id;
        std::string unit;
        std::int64_t before = 0;
        std::int64_t now = 0;
    };
    [[nodiscard]] Result<int> take_for_job(const std::string& job_id, const std::vector<Taking>& takings, Instant now);
    /// Of how many entries of `take_for_job` something is still out.
    [[nodiscard]] Result<int> taken_as_planned(const std::string& job_id) const;
    /// A counter-entry for each that was so taken and is still out; how many. Where the stock was counted since, or a
    /// part came back by hand, an entry of what is returned: a counter-entry stands before the count and would change
    /// nothing. Refused: when none is out.
    [[nodiscard]] Result<int> put_back_for_job(const std::string& job_id, Instant now);
    /// Of a job by its number as people write it; empty: none has it, or it was removed.
    [[nodiscard]] Result<std::string> job_of_number(const std::string& number) const;
    [[nodiscard]] Result<std::string> number_of_job(const std::string& job_id) const;

   private:
    friend class PurchaseBook;
    struct Fitted {
        parts::StockMove move;
        std::int64_t out = 0;  ///< of it, less what came back by other entries; above 0
        bool counted_since = false;
    };
    /// Entries of `take_for_job` of which something is still out.
    [[nodiscard]] Result<std::vector<Fitted>> fitted_for(const std::string& job_id) const;
    /// Within a transaction.
    [[nodiscard]] Result<parts::StockMove> put(parts::StockMove move, Instant now) const;
    [[nodiscard]] std::optional<Problem> refuse(const parts::StockMove& move) const;

    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
