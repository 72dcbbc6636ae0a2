#pragma once
// A fixed run of writes that takes every way into the store, one after the other. What they leave follows from their
// number alone, so that a store which was cut short can be compared with one that was not.

#include <string>

#include "core/store/store.h"

namespace wg::store::test {

/// The n-th write (from 0): one call that changes something, whole or not at all.
[[nodiscard]] Result<bool> write_step(Store& store, int n);
inline constexpr int steps_of_all_kinds = 15;

/// Of everything in a file or on a server.
[[nodiscard]] std::string digest_at(const std::string& place);

/// Digests a whole store has after 0, 1, 2 ... steps, made in a file of its own as far as they are asked for.
class Replay {
   public:
    explicit Replay(std::string file);
    [[nodiscard]] std::string after(int steps);

   private:
    std::string file_;
    std::vector<std::string> digests_;
};

}  // namespace wg::store::test
