#pragma once
// Purchase lists as they went out, with their numbers and a paper to each supplier, and what of them came. Only grows.

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/parts/stock_orders.h"
#include "core/store/numbered_paper.h"
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

using PurchaseOrdered = parts::OrderedLine;

/// The list as the firm has it, and by supplier what goes to each: none sees what the others are to send.
struct PurchasePrints {
    std::string whole;
    std::vector<std::pair<std::string, std::string>> to_suppliers;  ///< supplier, PDF
};
using PrintPurchase = std::function<Result<PurchasePrints>(const std::string& number)>;

struct PurchaseList {
    PurchasePaper paper;
    std::string job_number;
    std::vector<PurchaseOrdered> lines;
    std::vector<std::string> papers_to;  ///< suppliers that a paper is kept to
};

/// What came of a line. `before` is what was booked of it when somebody looked.
struct Delivered {
    int position = 0;
    std::int64_t before = 0;
    std::int64_t now = 0;
    bool rest_does_not_come = false;
};

/// Deliveries of one list that were booked at one time.
struct Booking {
    std::string at;
    std::string by;
    std::string note;
    std::vector<parts::StockMove> moves;  ///< as they count; of quantity 0: taken back
};

class PurchaseBook {
   public:
    /// The store must outlive it.
    explicit PurchaseBook(Store& store) : store_(store), database_(store.database()) {}

    /// Gives the next number of purchases, prints with it and keeps papers and lines: all or nothing. Refused: a job
    /// that is not here, bytes that are no PDF, lines whose positions are not 1, 2, 3 ..., a supplier's paper twice.
    [[nodiscard]] Result<PurchasePaper> keep(const std::string& job_id, const std::vector<PurchaseOrdered>& lines,
                                             const PrintPurchase& print, Instant now);
    /// Of all jobs, newest first, with what came of them.
    [[nodiscard]] Result<std::vector<PurchaseList>> lists(int limit) const;
    /// As it went out. Refused: unknown, or bytes that lost their hash.
    [[nodiscard]] Result<std::string> paper(const std::string& id) const;
    [[nodiscard]] Result<std::string> paper_to(const std::string& id, const std::string& supplier) const;
    [[nodiscard]] Result<std::vector<PurchaseOrdered>> lines(const std::string& id) const;
    /// Of all lists of a job, oldest first.
    [[nodiscard]] Result<std::vector<PurchaseOrdered>> lines_of_job(const std::string& job_id) const;
    /// By list and position: where what was received of an item was ordered.
    struct OrderedFrom {
        std::string number;
        std::string supplier;  ///< empty: none told
    };
    using OrderedFromByLine = std::map<std::pair<std::string, int>, OrderedFrom>;
    [[nodiscard]] Result<OrderedFromByLine> ordered_from(const std::string& item_id) const;

    /// Books a delivery: all of it or nothing; how many lines. Refused: nothing to book, a line that no stock is kept
    /// of, parts of a piece, and a line of which something was booked since somebody looked.
    [[nodiscard]] Result<int> receive(const std::string& id, const std::vector<Delivered>& delivered,
                                      const std::string& note, Instant now);
    /// Newest first.
    [[nodiscard]] Result<std::vector<Booking>> bookings(const std::string& id) const;
    /// A counter-entry for each movement of it that still counts; how many. Lines whose rest was told not to come with
    /// that booking are to come again. Refused: when none counts.
    [[nodiscard]] Result<int> take_back(const Booking& booking, Instant now);

   private:
    [[nodiscard]] std::optional<Problem> refuse(const std::string& job_id,
                                                const std::vector<PurchaseOrdered>& lines) const;
    [[nodiscard]] std::optional<Problem> insert(const PurchasePaper& paper, const std::vector<PurchaseOrdered>& lines,
                                                const PurchasePrints& prints) const;
    [[nodiscard]] std::optional<Problem> close(const std::string& id, const PurchaseOrdered& line, bool closed,
                                               Instant now) const;
    /// Takes back that the rest of the movement's line does not come, when it was said with this booking.
    [[nodiscard]] std::optional<Problem> reopen(const Booking& booking, const parts::StockMove& move,
                                                Instant now) const;

    Store& store_;
    const Database& database_;
};

/// What is there, on order and promised to jobs, of these items (1,000 at most) or of all (none named); what `for_job`
/// needs itself is not among what is reserved.
[[nodiscard]] Result<std::vector<parts::ItemStanding>> stock_standings(Store& store,
                                                                       const std::vector<std::string>& item_ids,
                                                                       const std::string& for_job);

/// Numbers of purchase lists whose paper no longer has its hash; the same of papers to suppliers.
[[nodiscard]] Result<std::vector<std::string>> damaged_purchase_papers(const Database& database);
[[nodiscard]] Result<std::vector<std::string>> damaged_supplier_papers(const Database& database);

}  // namespace wg::store
