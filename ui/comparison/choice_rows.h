#pragma once
// What decides between choices, row by row, in words: no widgets here.

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "ui/common/figure_table.h"

namespace wg::ui {

/// One choice to be compared.
struct ComparedChoice {
    QString label;
    const plan::Plan* plan = nullptr;  ///< null: being planned, or see `problem`
    QString problem;                   ///< why there is no plan
    const Site* site = nullptr;        ///< may be null
    const Choice* choice = nullptr;    ///< may be null
};

struct ComparedCell {
    enum class State { known, working, none };
    State state = State::none;
    QString figure;        ///< "about 1 240 kWh"; "working" and an em dash where there is none
    QString range;         ///< "1 080 to 1 390 kWh", or other small print; may be empty
    QString change;        ///< signed, against the choice compared with; empty: none or the same
    bool differs = false;  ///< from the choice compared with
    bool best = false;     ///< of the row, where the row has a better and a worse
    /// All of it in one line.
    [[nodiscard]] QString words() const;
};

struct ComparedRow {
    QString what;
    bool differs = false;  ///< the choices are not all the same in this
    std::vector<ComparedCell> cells;
};

/// `basis`: the choice that differences count from.
[[nodiscard]] std::vector<ComparedRow> compare(const std::vector<ComparedChoice>& choices, std::size_t basis);

/// The point of the plan's worst utilisation; null where no point is known.
[[nodiscard]] const fixing::FixingPoint* worst_point(const plan::Plan& plan);

[[nodiscard]] FigureTable table_of(const std::vector<ComparedRow>& rows, const QStringList& labels);

}  // namespace wg::ui
