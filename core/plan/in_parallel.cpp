#include "core/plan/in_parallel.h"

#include <algorithm>
#include <future>
#include <vector>

namespace wg::plan::detail {

bool Reporter::report() {
    if (stop_) return false;
    if (progress_ && !progress_(std::min(1.0, static_cast<double>(done_) / static_cast<double>(total_)))) stop_ = true;
    return !stop_;
}

void each(std::size_t count, int threads, Reporter& reporter, const std::function<void(std::size_t)>& work) {
    std::atomic<std::size_t> next = 0;
    const auto run = [&](bool reports) {
        for (std::size_t i = next++; i < count && !reporter.stopped(); i = next++) {
            if (reports && !reporter.report()) return;
            work(i);
            reporter.done_one();
        }
    };
    std::vector<std::future<void>> others;
    for (int i = 1; i < threads && static_cast<std::size_t>(i) < count; ++i)
        others.push_back(std::async(std::launch::async, run, false));
    run(true);
    for (std::future<void>& other : others)
        other.get();
}

}  // namespace wg::plan::detail
