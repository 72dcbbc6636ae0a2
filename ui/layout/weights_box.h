#pragma once
// The weights that places are judged by, behind a fold-out: filled by what counts most, changed by hand where wanted.

#include <QWidget>
#include <vector>

#include "core/siting/objective.h"

class QLabel;
class QToolButton;

namespace wg::ui {

class NumberField;

class WeightsBox : public QWidget {
    Q_OBJECT
   public:
    explicit WeightsBox(QWidget* parent = nullptr);
    /// The aim's own weights; what was changed by hand goes.
    void fill(siting::Aim aim);
    [[nodiscard]] const siting::Objective& weights() const { return weights_; }
    [[nodiscard]] bool changed_by_hand() const { return weights_ != siting::objective_for(aim_); }
    /// Without any weight all places are equal, and there is nothing to search for.
    [[nodiscard]] bool any() const { return weights_ != siting::Objective{}; }

   Q_SIGNALS:
    void changed();

   private:
    void show_state();

    struct Line {
        double siting::Objective::*weight;
        NumberField* field;
    };
    siting::Aim aim_ = siting::Aim::running_cost;
    siting::Objective weights_;
    QToolButton* fold_ = nullptr;
    QWidget* inside_ = nullptr;
    QLabel* state_ = nullptr;
    std::vector<Line> lines_;
};

}  // namespace wg::ui
