#include "core/store/numbered_paper.h"

#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {

Result<std::string> keep_numbered(
    Store& store, const NumberedPaper& paper, Instant now, const PrintNumbered& print,
    const std::function<std::optional<Problem>(const std::string& number, const std::string& bytes)>& keep) {
    NumberRanges numbers(store);
    const int year = std::stoi(iso8601(now).substr(0, 4));
    for (int i = 0; i < most_prints; ++i) {
        const Result<std::string> expected = numbers.next(paper.kind, year);
        if (!expected) return expected.problems();
        const Result<std::string> bytes = print(expected.value());
        if (!bytes) return bytes.problems();
        Transaction transaction(store.database());
        if (auto problem = transaction.begin()) return *problem;
        Result<std::string> given = numbers.give(paper.kind, year, paper.id, now);
        if (!given) return given.problems();
        if (given.value() != expected.value()) continue;  // another seat was quicker
        if (auto problem = keep(given.value(), bytes.value())) return *problem;
        if (auto problem = transaction.commit()) return *problem;
        return given;
    }
    return Problem{paper.what, "other seats took every number that it was printed with", "Try again"};
}

}  // namespace wg::store
