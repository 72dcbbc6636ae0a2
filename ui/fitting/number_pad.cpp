#include "ui/fitting/number_pad.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace wg::ui {
namespace {

const QString erase_word = QStringLiteral("\u232b");
const QString minus_word = QStringLiteral("\u2212");

}  // namespace

NumberPad::NumberPad(QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(8);
    const auto key = [&](const QString& text, const QString& name, int row, int column, int columns = 1) {
        auto* button = new QPushButton(text, this);
        button->setProperty("touch", QStringLiteral("large"));
        button->setMinimumWidth(56);
        // The field keeps the focus, so that keyboard and buttons can be mixed.
        button->setFocusPolicy(Qt::NoFocus);
        button->setAccessibleName(name);
        button->setAutoRepeat(text == erase_word);
        grid->addWidget(button, row, column, 1, columns);
        return button;
    };
    for (int digit = 1; digit <= 9; ++digit) {
        const QString text = QString::number(digit);
        connect(key(text, text, (digit - 1) / 3, (digit - 1) % 3), &QPushButton::clicked, this,
                [this, text] { press(text); });
    }
    const QString zero = QStringLiteral("0");
    const QString point = QStringLiteral(".");
    connect(key(zero, zero, 3, 1), &QPushButton::clicked, this, [this, zero] { press(zero); });
    connect(key(QStringLiteral(". ,"), tr("Decimal sign"), 3, 2), &QPushButton::clicked, this,
            [this, point] { press(point); });
    connect(key(minus_word, tr("Minus"), 3, 0), &QPushButton::clicked, this, [this] { press(minus_word); });
    connect(key(erase_word, tr("Take back one digit"), 4, 0), &QPushButton::clicked, this,
            [this] { press(erase_word); });
    connect(key(tr("Next field"), tr("Next field"), 4, 1, 2), &QPushButton::clicked, this, &NumberPad::next_asked);
}

void NumberPad::type_into(QLineEdit* field) {
    field_ = field;
}

void NumberPad::press(const QString& what) {
    if (field_ == nullptr) return;
    if (what == erase_word) return field_->backspace();
    if (what == minus_word) {
        // The sign belongs before the figure, whenever it is thought of.
        const QString text = field_->text();
        const bool negative = text.startsWith(QLatin1Char('-')) || text.startsWith(minus_word);
        return field_->setText(negative ? text.mid(1) : QLatin1Char('-') + text);
    }
    field_->insert(what);
}

UnitSwitch::UnitSwitch(QWidget* parent) : QWidget(parent) {
    row_ = new QHBoxLayout(this);
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(4);
}

void UnitSwitch::set_quantity(SiteQuantity quantity, const QString& only, const QString& chosen) {
    quantity_ = quantity;
    while (QLayoutItem* item = row_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const std::vector<SiteUnit>& units = site_units(quantity);
    if (units.empty()) {
        unit_ = only;
        auto* label = new QLabel(only, this);
        label->setMinimumWidth(36);
        row_->addWidget(label);
        return;
    }
    unit_ = QString::fromUtf8(site_unit(quantity, chosen.toStdString()).name);
    for (const SiteUnit& one : units) {
        const QString name = QString::fromUtf8(one.name);
        auto* button = new QPushButton(name, this);
        button->setCheckable(true);
        button->setChecked(name == unit_);
        button->setProperty("touch", QStringLiteral("unit"));
        button->setAccessibleName(tr("Unit %1").arg(name));
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &QPushButton::clicked, this, [this, name] { choose(name); });
        row_->addWidget(button);
    }
}

void UnitSwitch::choose(const QString& unit) {
    const bool other = unit != unit_;
    unit_ = unit;
    for (QPushButton* button : findChildren<QPushButton*>())
        button->setChecked(button->text() == unit_);
    if (other) Q_EMIT changed();
}

double UnitSwitch::kept(double shown) const {
    return quantity_ == SiteQuantity::none ? shown : site_unit(quantity_, unit_.toStdString()).kept(shown);
}

double UnitSwitch::shown(double kept) const {
    return quantity_ == SiteQuantity::none ? kept : site_unit(quantity_, unit_.toStdString()).shown(kept);
}

int UnitSwitch::decimals(int of_the_record) const {
    return is_of_record() ? of_the_record : site_unit(quantity_, unit_.toStdString()).decimals;
}

bool UnitSwitch::is_of_record() const {
    return quantity_ == SiteQuantity::none || unit_ == QString::fromUtf8(site_units(quantity_).front().name);
}

}  // namespace wg::ui
