#pragma once
// A job as it was after a step: whole at first, packed small once many steps lie on it.

#include <QByteArray>
#include <memory>

#include "core/job/job.h"

namespace wg::ui {

class JobSnapshot {
   public:
    explicit JobSnapshot(Job job) : job_(std::make_shared<const Job>(std::move(job))) {}
    /// Exactly the job it was made of.
    [[nodiscard]] Job job() const;
    /// Whole, without unpacking; null when packed.
    [[nodiscard]] const Job* whole() const { return job_.get(); }
    /// Keeps the job as compressed text, when it comes back from that as it is (one that no file may hold would not).
    void pack();
    [[nodiscard]] bool packed() const { return job_ == nullptr; }

   private:
    std::shared_ptr<const Job> job_;
    QByteArray text_;
    bool tried_ = false;
};

}  // namespace wg::ui
