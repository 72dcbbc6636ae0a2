#pragma once
// What of a job's plan goes out of stock: planned, taken before, there, and taken now.

#include <QDialog>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/store/stock_book.h"

class QLabel;

namespace wg::ui {

class AmountTable;

/// Fitted or in service; a closed job may be either.
[[nodiscard]] bool is_fitted(JobState state) noexcept;

struct TakeLine {
    std::string item_id;
    std::string text;
    std::string unit;
    std::int64_t planned = 0;
    std::int64_t taken = 0;                  ///< for the job, less what came back
    std::optional<std::int64_t> in_stock{};  ///< none: no stock is kept of it yet
    std::int64_t on_order = 0;
};
/// What is proposed: the rest of the plan where stock is kept, nothing where none is.
[[nodiscard]] std::int64_t proposed(const TakeLine& line) noexcept;

class TakeDialog : public QDialog {
    Q_OBJECT
   public:
    enum Answer { not_now = QDialog::Rejected, take = QDialog::Accepted, put_back };
    TakeDialog(const QString& job_number, std::vector<TakeLine> lines, bool any_taken_as_planned,
               QWidget* parent = nullptr);
    [[nodiscard]] std::vector<store::StockBook::Taking> takings() const;
    /// Of which items less than nothing would be left, in words; empty: of none.
    [[nodiscard]] QString less_than_nothing() const;
    [[nodiscard]] AmountTable* table() const { return table_; }
    [[nodiscard]] QString said() const;
    /// Whether it is to stand all the same; asked on the screen unless set.
    void set_asks(std::function<bool(const QString&)> asks) { asks_ = std::move(asks); }

   public Q_SLOTS:
    void accept() override;

   private:
    void say(const QString& words);

    std::vector<TakeLine> lines_;
    std::function<bool(const QString&)> asks_;
    AmountTable* table_ = nullptr;
    QLabel* said_ = nullptr;
};

}  // namespace wg::ui
