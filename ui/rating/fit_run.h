#pragma once
// A fit in the background, with progress and stop.

#include <QFutureWatcher>
#include <QObject>
#include <atomic>
#include <memory>
#include <optional>

#include "core/plan/reference.h"
#include "core/rating/fit.h"

namespace wg::ui {

class FitRun : public QObject {
    Q_OBJECT
   public:
    explicit FitRun(QObject* parent = nullptr);
    ~FitRun() override;

    /// `reference` keeps the item's refrigerant table alive.
    void start(const rating::Item& item, const rating::Chamber& chamber, std::vector<rating::Declared> declared,
               std::shared_ptr<const plan::Reference> reference);
    /// The fit ends soon, with the best so far.
    void stop();
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] const std::optional<rating::Fit>& fit() const { return fit_; }
    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }
    void forget();

   Q_SIGNALS:
    void progressed(int evaluations, double worst_miss);
    void finished();

   private:
    struct Answer {
        std::optional<rating::Fit> fit;
        std::vector<Problem> problems;
    };
    void take();

    QFutureWatcher<std::shared_ptr<Answer>> watcher_;
    bool running_ = false;  ///< until the answer is taken over
    std::shared_ptr<std::atomic<bool>> stop_;
    std::shared_ptr<const plan::Reference> reference_;  ///< of fit_, too
    std::optional<rating::Fit> fit_;
    std::vector<Problem> problems_;
};

}  // namespace wg::ui
