#include "ui/yield/comfort_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

#include "ui/drawing/fields.h"

namespace wg::ui {

ComfortRow::ComfortRow(QWidget* parent) : QWidget(parent) {
    by_ = new QComboBox(this);
    by_->addItems({tr("litres short a year"), tr("hours short a year")});
    by_->setAccessibleName(tr("Comfort counted in"));
    limit_ = new NumberField(tr("Short a year at most"), QStringLiteral("l"), {0.0, 100000.0, 0, 5.0, false}, this);
    limit_->line_edit()->setFixedWidth(limit_->fontMetrics().horizontalAdvance(QStringLiteral("100000")) + 32);
    auto* label = new QLabel(tr("Comfortable with at &most"), this);
    label->setBuddy(limit_);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(label);
    row->addWidget(limit_);
    row->addWidget(by_);
    show_limit();
    connect(by_, &QComboBox::currentIndexChanged, this, [this] {
        show_limit();
        Q_EMIT changed();
    });
    connect(limit_, &NumberField::committed, this, [this](std::optional<double> value) {
        if (!value) return;
        (by_hours() ? most_short_h_ : most_short_l_) = *value;
        Q_EMIT changed();
    });
}

bool ComfortRow::by_hours() const {
    return by_->currentIndex() == 1;
}

void ComfortRow::show_limit() {
    limit_->set_unit(by_hours() ? QStringLiteral("h") : QStringLiteral("l"));
    limit_->set_range(0.0, by_hours() ? 8760.0 : 100000.0);
    limit_->set_value(by_hours() ? most_short_h_ : most_short_l_);
}

plan::ComfortTarget ComfortRow::target() const {
    plan::ComfortTarget target;
    target.most_short_l.reset();
    (by_hours() ? target.most_short_h : target.most_short_l) = by_hours() ? most_short_h_ : most_short_l_;
    return target;
}

}  // namespace wg::ui
