#pragma once
// Parts that stand at clients, with their serial numbers, over all jobs: what a maker who calls an item back asks for.

#include <optional>
#include <string>
#include <vector>

#include "core/job/fitted.h"
#include "core/store/store.h"

namespace wg::store {

/// A part with the job that it belongs to.
struct FittedRow {
    std::string job_id;
    std::string job_number;
    std::string client;
    FittedPart part;
    friend bool operator==(const FittedRow&, const FittedRow&) = default;
};

/// An item that stands somewhere.
struct FittedItem {
    std::string item_id;  ///< of the catalogue
    int jobs = 0;         ///< in which it stands; those where it was replaced or that were removed are left out
    friend bool operator==(const FittedItem&, const FittedItem&) = default;
};

class FittedBook {
   public:
    /// The store must outlive it.
    explicit FittedBook(Store& store) : database_(store.database()) {}

    /// By number of the job; replaced ones too. Jobs that were removed are left out.
    [[nodiscard]] Result<std::vector<FittedRow>> of_item(const std::string& item_id) const;
    /// Of the customer's jobs, the newest job first.
    [[nodiscard]] Result<std::vector<FittedRow>> of_customer(const std::string& customer_id) const;
    /// All that stand somewhere, by id.
    [[nodiscard]] Result<std::vector<FittedItem>> items() const;

   private:
    const Database& database_;
};

/// Replaces the job's rows when they differ. A part that was replaced keeps the item it was known as: the plan tells
/// only what stands there now.
[[nodiscard]] std::optional<Problem> write_fitted_parts(const Database& database, const Job& job);

/// Of all jobs, removed ones too, and into the search; a job that cannot be read is passed over, which `check` tells.
[[nodiscard]] std::optional<Problem> fill_fitted_parts(const Database& database);

}  // namespace wg::store
