#include "ui/layout/weights_box.h"

#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/drawing/fields.h"

namespace wg::ui {

WeightsBox::WeightsBox(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    fold_ = new QToolButton(this);
    fold_->setText(tr("Weights"));
    fold_->setCheckable(true);
    fold_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    fold_->setToolTip(tr("What each measure counts when places are compared"));
    column->addWidget(fold_, 0, Qt::AlignLeft);
    inside_ = new QWidget(this);
    auto* lines = new QVBoxLayout(inside_);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(4);
    const struct {
        double siting::Objective::*weight;
        QString name, unit;
        double step;
    } weights[] = {
        {&siting::Objective::per_electricity_kwh, tr("Electricity used"), tr("points a kWh"), 0.1},
        {&siting::Objective::per_missing_heat_kwh, tr("Heat that the pump does not give"), tr("points a kWh"), 0.1},
        {&siting::Objective::per_run_m, tr("Run"), tr("points a metre"), 1.0},
        {&siting::Objective::per_utilisation, tr("Fixing point used in full"), tr("points"), 5.0},
        {&siting::Objective::per_seen, tr("Seen from everywhere"), tr("points"), 5.0},
    };
    for (const auto& one : weights) {
        lines->addWidget(new QLabel(one.name, inside_));
        auto* field = new NumberField(one.name, one.unit, {0.0, siting::most_weight, 2, one.step}, inside_);
        lines->addWidget(field);
        lines_.push_back({one.weight, field});
        connect(field, &NumberField::committed, this, [this, weight = one.weight](std::optional<double> value) {
            if (value) weights_.*weight = *value;
            show_state();
            Q_EMIT changed();
        });
    }
    state_ = new QLabel(inside_);
    state_->setProperty("role", QStringLiteral("muted"));
    state_->setWordWrap(true);
    lines->addWidget(state_);
    column->addWidget(inside_);
    connect(fold_, &QToolButton::toggled, this, [this](bool open) {
        inside_->setVisible(open);
        fold_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    });
    fold_->setArrowType(Qt::RightArrow);
    inside_->hide();
    fill(aim_);
}

void WeightsBox::fill(siting::Aim aim) {
    aim_ = aim;
    weights_ = siting::objective_for(aim);
    for (const Line& line : lines_) {
        line.field->set_value(std::nullopt);  // an entry that was refused goes too
        line.field->set_value(weights_.*line.weight);
    }
    show_state();
    Q_EMIT changed();
}

void WeightsBox::show_state() {
    fold_->setText(changed_by_hand() ? tr("Weights, changed by hand") : tr("Weights"));
    state_->setText(
        !any() ? tr("Without any weight all places count the same.")
        : changed_by_hand()
            ? tr("The place with the fewest points is best. 'What counts most' brings its own weights back.")
            : tr("The place with the fewest points is best. One point is one kWh of electricity a year where "
                 "running cost counts most. Weights chosen by us."));
}

}  // namespace wg::ui
