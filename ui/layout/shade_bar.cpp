#include "ui/layout/shade_bar.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "ui/common/shade_words.h"
#include "ui/drawing/fields.h"
#include "ui/layout/shade_service.h"

namespace wg::ui {

ShadeBar::ShadeBar(ShadeService* shade, QWidget* parent) : QWidget(parent), shade_(shade) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    box_ = new QCheckBox(tr("Shade map"), this);
    box_->setToolTip(tr("Direct sun lost to shade, cell by cell; the bottom line and the pointer tell the figures"));
    row->addWidget(box_);
    period_ = new CalmCombo(this);
    period_->setAccessibleName(tr("Months of the shade map"));
    period_->hide();
    row->addWidget(period_);
    connect(box_, &QCheckBox::toggled, this, [this](bool on) {
        period_->setVisible(on);
        Q_EMIT toggled(on);
    });
    connect(period_, &QComboBox::activated, this, [this](int row_chosen) { shade_->set_lean(row_chosen == 1); });
    connect(shade_, &ShadeService::period_changed, this, &ShadeBar::refresh);
    refresh();
}

bool ShadeBar::shown() const {
    return box_->isChecked();
}

void ShadeBar::refresh() {
    const QSignalBlocker quiet(period_);
    period_->clear();
    period_->addItem(tr("Whole year"));
    const QString months = months_words(shade_->lean_months().months);
    period_->addItem(tr("Lean months: %1").arg(months));
    period_->setItemData(0, tr("January to December"), Qt::ToolTipRole);
    period_->setItemData(1,
                         shade_->lean_months().from_year
                             ? tr("%1: the six months in which the pump has least to spare over what is drawn, by the "
                                  "year of operation of the choice on screen")
                                   .arg(months)
                             : tr("%1: the cold half of the year; there is no year of operation of this choice to tell "
                                  "better")
                                   .arg(months),
                         Qt::ToolTipRole);
    period_->setCurrentIndex(shade_->lean() ? 1 : 0);
    period_->setToolTip(period_->currentData(Qt::ToolTipRole).toString());
}

}  // namespace wg::ui
