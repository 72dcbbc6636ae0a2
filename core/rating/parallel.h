#pragma once
// Independent pieces of work on the machine's cores. Each writes to its own place, so that the result does not depend
// on who did what. For the .cpp files of this room.

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <functional>
#include <future>
#include <thread>
#include <vector>

namespace wg::rating {

/// Calls `work(i)` for every i below `count`, in any order, on the calling thread and up to seven more. `go_on` is
/// asked before each piece that the calling thread takes; once it says no, no piece is begun. True: all were done.
inline bool for_each_index(std::size_t count, const std::function<void(std::size_t)>& work,
                           const std::function<bool()>& go_on = {}) {
    constexpr std::size_t most_threads = 8;
    const std::size_t cores = std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, most_threads);
    std::atomic<std::size_t> next{0};
    std::atomic<bool> stopped{false};
    const auto help = [&] {
        while (!stopped.load()) {
            const std::size_t i = next.fetch_add(1);
            if (i >= count) return;
            work(i);
        }
    };
    std::vector<std::future<void>> helpers;
    for (std::size_t thread = 1; thread < std::min(cores, count); ++thread)
        helpers.push_back(std::async(std::launch::async, help));
    while (true) {
        if (go_on && !go_on()) stopped.store(true);
        if (stopped.load()) break;
        const std::size_t i = next.fetch_add(1);
        if (i >= count) break;
        work(i);
    }
    for (std::future<void>& helper : helpers)
        helper.get();
    return !stopped.load();
}

}  // namespace wg::rating
