#pragma once
// How long the window's event loop leaves its events lying: another thread sends one every millisecond and each tells
// how late it came. The longest delay is the longest stall that a hand on the mouse feels. On a machine that others use
// too, the processor time that the window's thread spent between two beats tells what the stall would be without them.
// The loop must be a real one (QEventLoop): QTest::qWait sleeps between looks.

#include <QCoreApplication>
#include <QObject>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <ctime>
#include <thread>
#include <vector>

namespace wg::test {

class LoopLag {
   public:
    using Clock = std::chrono::steady_clock;

    LoopLag()
        : sender_([this] {
              while (!stop_) {
                  // One under way at a time: a stall counts once, with its full length.
                  if (!waiting_.exchange(true)) {
                      const Clock::time_point sent = Clock::now();
                      QMetaObject::invokeMethod(
                          &target_,
                          [this, sent] {
                              delays_ms_.push_back(
                                  std::chrono::duration<double, std::milli>(Clock::now() - sent).count());
                              const double cpu_ms = thread_cpu_ms();
                              if (delays_ms_.size() > 1) busy_ms_.push_back(cpu_ms - cpu_before_ms_);
                              cpu_before_ms_ = cpu_ms;
                              waiting_ = false;
                          },
                          Qt::QueuedConnection);
                  }
                  std::this_thread::sleep_for(std::chrono::milliseconds(1));
              }
          }) {}
    ~LoopLag() { stop(); }
    LoopLag(const LoopLag&) = delete;
    LoopLag& operator=(const LoopLag&) = delete;

    void stop() {
        stop_ = true;
        if (sender_.joinable()) sender_.join();
        QCoreApplication::removePostedEvents(&target_);
    }
    [[nodiscard]] std::size_t beats() const { return delays_ms_.size(); }
    /// Delay that the share of all beats stays under; 1: the longest.
    [[nodiscard]] double delay_ms(double share) const { return quantile(delays_ms_, share); }
    /// The same of the processor time between two beats.
    [[nodiscard]] double busy_ms(double share) const { return quantile(busy_ms_, share); }

   private:
    [[nodiscard]] static double thread_cpu_ms() {
        timespec now{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
        return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
    }
    [[nodiscard]] static double quantile(std::vector<double> sorted, double share) {
        if (sorted.empty()) return 0.0;
        std::sort(sorted.begin(), sorted.end());
        return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
    }

    QObject target_;
    std::vector<double> delays_ms_, busy_ms_;  ///< of the window's thread alone
    double cpu_before_ms_ = 0.0;
    std::atomic<bool> waiting_ = false;
    std::atomic<bool> stop_ = false;
    std::thread sender_;  ///< last: it uses the others
};

}  // namespace wg::test
