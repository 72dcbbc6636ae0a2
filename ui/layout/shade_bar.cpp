#include "ui/layout/shade_bar.h"

#include "ui/common/shade_words.h"
#include "ui/layout/shade_service.h"

namespace wg::ui {

ShadeBar::ShadeBar(ShadeService* shade, QWidget* parent) : CalmCombo(parent), shade_(shade) {
    setAccessibleName(tr("Shade map"));
    setSizeAdjustPolicy(QComboBox::AdjustToContents);
    addItem(tr("No shade map"));
    addItem(tr("Shade: whole year"));
    addItem(tr("Shade: lean months"));
    setItemData(none, tr("The surface without a map"), Qt::ToolTipRole);
    setItemData(whole_year, tr("Direct sun lost to shade from January to December, cell by cell"), Qt::ToolTipRole);
    connect(this, &QComboBox::activated, this, [this](int row) { choose(static_cast<Row>(row)); });
    connect(shade_, &ShadeService::period_changed, this, &ShadeBar::refresh);
    refresh();
}

void ShadeBar::choose(Row row) {
    setCurrentIndex(row);
    if (row != none) shade_->set_lean(row == lean_months);
    refresh();
    Q_EMIT toggled(row != none);
}

void ShadeBar::refresh() {
    const QString months = months_words(shade_->lean_months().months);
    setItemData(lean_months,
                shade_->lean_months().from_year
                    ? tr("%1: the six months in which the pump has least to spare over what is drawn, by the year of "
                         "operation of the choice on screen")
                          .arg(months)
                    : tr("%1: the cold half of the year; there is no year of operation of this choice to tell better")
                          .arg(months),
                Qt::ToolTipRole);
    setToolTip(currentData(Qt::ToolTipRole).toString());
}

}  // namespace wg::ui
