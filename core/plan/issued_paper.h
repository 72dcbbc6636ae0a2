#pragma once
// What the paper of an issued quote was made from, kept within the snapshot that is frozen with the quote
// (docs/plan-format.md, "paper"): whatever becomes of job, prices, equipment, firm and program afterwards, the same
// paper can be made again.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/economy/economy.h"
#include "core/plan/plan.h"

namespace wg::plan {

/// The firm's block and words as they were.
struct IssuedFirm {
    std::string name;
    std::string street;
    std::string town;
    std::string phone;
    std::string email;
    std::string letter;  ///< words of the cover letter; empty: the program's
    std::string logo;    ///< bytes of its file; empty: none
    bool invented = false;
    // From schema 2 on; empty in what was frozen before.
    std::string vat_id{};
    std::string register_entry{};
    std::string bank{};
    std::string iban{};  ///< capitals without blanks
    std::string bic{};
    friend bool operator==(const IssuedFirm&, const IssuedFirm&) = default;
};

struct IssuedPaper {
    Job job;                                  ///< kept: as far as a quote and its letter show it
    Plan plan;                                ///< as far as a quote and its letter tell it
    std::vector<Plan> beside;                 ///< of the other choices on offer, the same
    std::optional<economy::Tariffs> tariffs;  ///< yearly rise and years alone
    IssuedFirm firm;
    std::string look;            ///< form, size, colours and language of the print, e.g. "a4 de"
    std::string printed_on;      ///< ISO 8601 date
    std::string takes_place_of;  ///< number of the quote it took the place of; empty: none
};

inline constexpr int issued_paper_schema = 2;

/// The plan's own text (plan_to_json) with what the paper was made from beside it. The same input, the same text.
[[nodiscard]] std::string snapshot_with_paper(const std::string& plan_json, const IssuedPaper& paper);

/// Nothing: an older program froze the plan alone. `where` names the quote in problems. Refused: text that is no plan,
/// a paper of a newer schema, members that are missing or not what they should be, a job that is not valid.
[[nodiscard]] Result<std::optional<IssuedPaper>> issued_paper(std::string_view snapshot, const std::string& where);

}  // namespace wg::plan
