#pragma once
// One channel for what can go wrong with data that comes from outside: a value, or a list of problems
// that say where, what is wrong, and what to do. Programmer mistakes use assertions instead.

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace wg {

/// One thing wrong with something read or entered.
struct Problem {
    std::string where;   ///< file, line and column, or a field path such as `site.surfaces[2] "South roof".outline`
    std::string what;    ///< what is wrong, with the figure that was found
    std::string remedy;  ///< what to do about it

    /// "where: what. remedy" on one line, for stderr and message boxes.
    [[nodiscard]] std::string text() const;
    friend bool operator==(const Problem&, const Problem&) = default;
};

/// Several problems as lines of text.
[[nodiscard]] std::string text_of(const std::vector<Problem>& problems);

/// Either a value or at least one problem. Never both, never neither.
template <class T>
class [[nodiscard]] Result {
   public:
    Result(T value) : state_(std::move(value)) {}
    Result(Problem problem) : state_(std::vector<Problem>{std::move(problem)}) {}
    Result(std::vector<Problem> problems) : state_(std::move(problems)) { assert(!std::get<1>(state_).empty()); }

    [[nodiscard]] bool ok() const noexcept { return state_.index() == 0; }
    explicit operator bool() const noexcept { return ok(); }

    [[nodiscard]] const T& value() const& {
        assert(ok());
        return std::get<0>(state_);
    }
    [[nodiscard]] T& value() & {
        assert(ok());
        return std::get<0>(state_);
    }
    /// By value, so that a loop over `f().value()` does not walk through a result that is gone already.
    [[nodiscard]] T value() && {
        assert(ok());
        return std::get<0>(std::move(state_));
    }
    [[nodiscard]] const std::vector<Problem>& problems() const& {
        assert(!ok());
        return std::get<1>(state_);
    }
    [[nodiscard]] std::vector<Problem> problems() && {
        assert(!ok());
        return std::get<1>(std::move(state_));
    }

   private:
    std::variant<T, std::vector<Problem>> state_;
};

}  // namespace wg
