#pragma once
// What follows an acceptance: confirmations and change orders with their numbers, as they went out. Only grows.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/numbered_paper.h"

namespace wg::store {

struct OrderPaper {
    std::string id;  ///< UUID
    NumberKind kind = NumberKind::order;
    std::string quote_id;
    std::string number;
    std::string sha256;
    std::string kept_at;
    std::string kept_by;
    std::vector<std::string> takes_place_of{};  ///< ids of the papers that it names as replaced
    friend bool operator==(const OrderPaper&, const OrderPaper&) = default;
};

class OrderBook {
   public:
    /// The store must outlive it.
    explicit OrderBook(Store& store) : store_(store), database_(store.database()) {}

    /// Gives the next number of the kind, prints with it and keeps the paper: number and paper, or neither. Refused: a
    /// kind other than order and change order, a quote that is not here or whose last answer is no acceptance, bytes
    /// that are no PDF, `takes_place_of` with a paper that is not here or of another job.
    [[nodiscard]] Result<OrderPaper> keep(NumberKind kind, const std::string& quote_id, const PrintNumbered& print,
                                          Instant now, const std::vector<std::string>& takes_place_of = {});
    /// Of the job, by the time they were kept, an order before changes of the same second: on every machine alike.
    [[nodiscard]] Result<std::vector<OrderPaper>> papers_of(const std::string& job_id) const;
    /// As it went out. Refused: unknown, or bytes that lost their hash.
    [[nodiscard]] Result<std::string> paper(const std::string& id) const;

    /// Within a transaction, as it is: it was judged on the machine that it comes from. Refused: bytes that are no PDF
    /// or too many, one that is here with another content or for another quote. False: it is here already, or its
    /// number is another paper's (`taken_by_other`).
    [[nodiscard]] Result<bool> put(const OrderPaper& paper, const std::string& pdf, bool& taken_by_other);

   private:
    [[nodiscard]] std::optional<Problem> refuse(NumberKind kind, const std::string& quote_id) const;
    [[nodiscard]] std::optional<Problem> refuse_replaced(const std::string& quote_id,
                                                         const std::vector<std::string>& ids) const;
    [[nodiscard]] std::optional<Problem> insert(OrderPaper& paper, const std::string& pdf);

    Store& store_;
    const Database& database_;
};

[[nodiscard]] std::optional<NumberKind> order_kind_from_key(std::string_view key) noexcept;

/// The paper that says it takes the place of this one; null: none does. `papers` of one job.
[[nodiscard]] const OrderPaper* replaced_by(const std::vector<OrderPaper>& papers, const std::string& id);
/// Those whose place none takes, in their order.
[[nodiscard]] std::vector<OrderPaper> standing(const std::vector<OrderPaper>& papers);

/// Numbers of papers of orders that no longer have their hash.
[[nodiscard]] Result<std::vector<std::string>> damaged_order_papers(const Database& database);

}  // namespace wg::store
