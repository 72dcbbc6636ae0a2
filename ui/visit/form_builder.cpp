#include "ui/visit/form_builder.h"

#include <QHBoxLayout>
#include <QSignalBlocker>

namespace wg::ui {

FormColumn::FormColumn(QWidget* parent) : QWidget(parent) {
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(12, 12, 12, 12);
    column_->setSpacing(4);
}

void FormColumn::heading(const QString& text) {
    if (column_->count() > 0) column_->addSpacing(12);
    auto* label = new QLabel(text, this);
    label->setProperty("role", QStringLiteral("heading"));
    column_->addWidget(label);
}

void FormColumn::words(const QString& text) {
    auto* label = new QLabel(text, this);
    label->setProperty("role", QStringLiteral("muted"));
    label->setWordWrap(true);
    column_->addWidget(label);
}

void FormColumn::place(const QString& label, QWidget* field) {
    auto* name = new QLabel(label, this);
    name->setProperty("role", QStringLiteral("muted"));
    name->setBuddy(field);
    names_.insert(field, name);
    if (pair_left_ == 0) {
        column_->addWidget(name);
        column_->addWidget(field);
        return;
    }
    auto* half = new QVBoxLayout;
    half->setSpacing(4);
    half->addWidget(name);
    half->addWidget(field);
    half->addStretch(1);
    pair_->addLayout(half, 1);
    --pair_left_;
}

NumberField* FormColumn::number(const QString& label, const QString& unit, const NumberField::Range& range,
                                std::function<void(std::optional<double>)> then) {
    auto* field = new NumberField(label, unit, range, this);
    place(label, field);
    connect(field, &NumberField::committed, this, [then](std::optional<double> value) { then(value); });
    return field;
}

TextField* FormColumn::text(const QString& label, std::function<void(const QString&)> then) {
    auto* field = new TextField(label, this);
    place(label, field);
    connect(field, &TextField::committed, this, [then](const QString& value) { then(value); });
    return field;
}

NoteField* FormColumn::note(const QString& label, std::function<void(const QString&)> then) {
    auto* field = new NoteField(label, this);
    place(label, field);
    connect(field, &NoteField::committed, this, [then](const QString& value) { then(value); });
    return field;
}

QCheckBox* FormColumn::check(const QString& label, std::function<void(bool)> then) {
    auto* box = new QCheckBox(label, this);
    column_->addWidget(box);
    connect(box, &QCheckBox::toggled, this, [then](bool on) { then(on); });
    return box;
}

CalmCombo* FormColumn::choice(const QString& label, std::function<void(const QString&)> then) {
    auto* combo = new CalmCombo(this);
    combo->setAccessibleName(label);
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setMinimumContentsLength(8);
    place(label, combo);
    connect(combo, &QComboBox::activated, this, [combo, then](int index) { then(combo->itemData(index).toString()); });
    return combo;
}

void FormColumn::add(QWidget* widget) {
    column_->addWidget(widget);
}

void FormColumn::pair_next() {
    pair_ = new QHBoxLayout;
    pair_->setSpacing(8);
    column_->addLayout(pair_);
    pair_left_ = 2;
}

void FormColumn::show_row(QWidget* field, bool shown) {
    field->setVisible(shown);
    if (QLabel* name = names_.value(field)) name->setVisible(shown);
}

void FormColumn::finish() {
    column_->addStretch(1);
}

void show_checked(QCheckBox* box, bool on) {
    const QSignalBlocker quiet(box);
    box->setChecked(on);
}

}  // namespace wg::ui
