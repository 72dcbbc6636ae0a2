#pragma once
// One edit being written into versions: which values it replaces, and what else it says by being made.

#include <set>
#include <string>
#include <string_view>

#include "core/merge/versions.h"

namespace wg::merge {

/// Problems of a seat's id or name.
[[nodiscard]] std::vector<Problem> seat_problems(const Seat& seat);

class Edit {
   public:
    /// `versions` as they are before; the edit gets the next number.
    Edit(Versions versions, const Seat& seat, Instant at);

    /// The field has this value from now on; none: removed or left out. Elements that hold it are there: whoever
    /// removed one of them without knowing of this edit gets it back, and the removal stays open.
    void replace(const std::string& path, std::optional<std::string> json);
    /// A value beside those that there are, replacing none.
    void put_beside(const std::string& path, std::optional<std::string> json);
    /// Says that the element is there without answering a removal that is open.
    void confirm(std::string_view element);

    [[nodiscard]] bool empty() const noexcept { return !made_; }
    [[nodiscard]] const Versions& versions() const noexcept { return versions_; }
    [[nodiscard]] Versions take() && { return std::move(versions_); }

   private:
    [[nodiscard]] Value value(std::optional<std::string> json) const;
    void confirm_holders(std::string_view path);

    Versions versions_;
    std::uint32_t seat_ = 0;
    std::uint64_t number_ = 0;
    Instant at_;
    bool made_ = false;
    std::set<std::string, std::less<>> answered_;  ///< elements that this edit has said something on
};

}  // namespace wg::merge
