#pragma once
// Lines of which an amount is entered each, and may be ticked: what came, what goes on the van.

#include <QString>
#include <QStringList>
#include <QTableWidget>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wg::ui {

/// "12.5 m"; no more decimals than it has.
[[nodiscard]] QString stock_quantity(std::int64_t thousandths, const std::string& unit);

class AmountTable : public QTableWidget {
    Q_OBJECT
   public:
    /// `header`: of the columns to read, then that of the amount, then that of the tick; empty: no tick.
    AmountTable(const QStringList& header, const QString& amount, const QString& tick, QWidget* parent = nullptr);

    struct Line {
        QStringList cells;  ///< to read
        std::string unit;
        std::optional<std::int64_t> thousandths;  ///< to begin with; none: nothing is entered there
        bool ticked = false;
    };
    void set_lines(const std::vector<Line>& lines);
    [[nodiscard]] int amount_column() const { return read_columns_; }
    /// What stands in the line; nothing where none is entered or what was entered cannot be.
    [[nodiscard]] std::optional<std::int64_t> amount(int row) const;
    [[nodiscard]] bool ticked(int row) const;
    /// Why the first line that cannot be is none; empty: all can.
    [[nodiscard]] QString problem() const;
    void set_amount_text(int row, const QString& text);
    void set_ticked(int row, bool on);
    /// Of every line at once.
    void set_all(const std::vector<std::optional<std::int64_t>>& amounts);

   private:
    void look_at(int row);
    [[nodiscard]] QString problem_of(int row) const;

    int read_columns_ = 0;
    bool has_tick_ = false;
    std::vector<Line> lines_;
};

}  // namespace wg::ui
