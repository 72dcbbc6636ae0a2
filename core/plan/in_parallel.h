#pragma once
// The same work for many numbered items on a few threads, with progress and stop. Inside core/plan.

#include <atomic>
#include <cstddef>
#include <functional>

#include "core/plan/study.h"

namespace wg::plan::detail {

/// Counts items done over several lists, tells the caller, and hears when to stop.
class Reporter {
   public:
    Reporter(const Progress& progress, std::size_t total) : progress_(progress), total_(total) {}
    /// From the calling thread only. False: stop.
    bool report();
    void done_one() noexcept { ++done_; }
    [[nodiscard]] bool stopped() const noexcept { return stop_; }

   private:
    const Progress& progress_;
    std::size_t total_;
    std::atomic<std::size_t> done_ = 0;
    std::atomic<bool> stop_ = false;
};

/// `work(i)` for each i below `count`, each once, in no order: it may write only what belongs to item i. One of the
/// `threads` is the caller's. Returns early when told to stop.
void each(std::size_t count, int threads, Reporter& reporter, const std::function<void(std::size_t)>& work);

}  // namespace wg::plan::detail
