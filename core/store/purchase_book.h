#pragma once
// Purchase lists as they went out, with their numbers, and what of them was received. Only grows.

#include <string>
#include <vector>

#include "core/store/order_book.h"
#include "core/store/stock_book.h"

namespace wg::store {

struct PurchasePaper {
    std::string id;  ///< UUID
    std::string job_id;
    std::string number;
    std::string sha256;
    std::string kept_at;
    std::string kept_by;
    friend bool operator==(const PurchasePaper&, const PurchasePaper&) = default;
};

/// A line of a list as it was ordered.
struct PurchaseOrdered {
    int position = 0;      ///< on the list, from 1 on
    std::string supplier;  ///< empty: none told
    std::string item_id;   ///< empty: a line of the office's own, which no stock is kept of
    std::string text;
    std::string unit;
    std::int64_t thousandths = 0;  ///< to order
    bool received = false;         ///< when read back
    friend bool operator==(const PurchaseOrdered&, const PurchaseOrdered&) = default;
};

class PurchaseBook {
   public:
    /// The store must outlive it.
    explicit PurchaseBook(Store& store) : store_(store), database_(store.database()) {}

    /// Gives the next number of purchases, prints with it and keeps paper and lines: all or nothing. Refused: a job
    /// that is not here, bytes that are no PDF, lines whose positions are not 1, 2, 3 ...
    [[nodiscard]] Result<PurchasePaper> keep(const std::string& job_id, const std::vector<PurchaseOrdered>& lines,
                                             const PrintNumbered& print, Instant now);
    /// Of all jobs, newest first.
    [[nodiscard]] Result<std::vector<PurchasePaper>> papers(int limit) const;
    /// As it went out. Refused: unknown, or bytes that lost their hash.
    [[nodiscard]] Result<std::string> paper(const std::string& id) const;
    [[nodiscard]] Result<std::vector<PurchaseOrdered>> lines(const std::string& id) const;
    /// Books what the list has from this supplier as received, as far as it was not yet; how many lines. Refused: when
    /// there is none left that stock is kept of.
    [[nodiscard]] Result<int> receive(const std::string& id, const std::string& supplier, Instant now);

   private:
    [[nodiscard]] std::optional<Problem> refuse(const std::string& job_id,
                                                const std::vector<PurchaseOrdered>& lines) const;
    [[nodiscard]] std::optional<Problem> insert(PurchasePaper& paper, const std::vector<PurchaseOrdered>& lines,
                                                const std::string& pdf) const;

    Store& store_;
    const Database& database_;
};

/// Numbers of purchase lists whose paper no longer has its hash.
[[nodiscard]] Result<std::vector<std::string>> damaged_purchase_papers(const Database& database);

}  // namespace wg::store
