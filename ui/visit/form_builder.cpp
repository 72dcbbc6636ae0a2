#include "ui/visit/form_builder.h"

#include <QHBoxLayout>
#include <QMouseEvent>
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

QLabel* FormColumn::name_of(const QString& label, QWidget* field) {
    auto* name = new QLabel(label, this);
    name->setProperty("role", QStringLiteral("muted"));
    name->setWordWrap(true);  // the form is narrow, and fonts may be large
    name->setBuddy(field);
    names_.insert(field, name);
    return name;
}

void FormColumn::place(const QString& label, QWidget* field) {
    QLabel* name = name_of(label, field);
    if (pair_left_ == 0) {
        column_->addWidget(name);
        column_->addWidget(field);
        return;
    }
    // In a grid the fields stay in line when one name takes two lines and the other one.
    const int column = 2 - pair_left_;
    pair_->addWidget(name, 0, column, Qt::AlignBottom);
    pair_->addWidget(field, 1, column, Qt::AlignTop);
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
    auto* box = new QCheckBox(this);
    box->setAccessibleName(label);
    QLabel* words = name_of(label, box);
    words->setProperty("role", QVariant());
    words->installEventFilter(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(box, 0, Qt::AlignTop);
    row->addWidget(words, 1, Qt::AlignVCenter);
    column_->addLayout(row);
    connect(box, &QCheckBox::toggled, this, [then](bool on) { then(on); });
    return box;
}

/// A click on the words is one on their box.
bool FormColumn::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseButtonRelease) {
        const auto* words = qobject_cast<QLabel*>(watched);
        auto* box = words == nullptr ? nullptr : qobject_cast<QCheckBox*>(words->buddy());
        if (box != nullptr && box->isEnabled() && words->rect().contains(static_cast<QMouseEvent*>(event)->pos()))
            box->toggle();
    }
    return QWidget::eventFilter(watched, event);
}

CalmCombo* FormColumn::choice(const QString& label, std::function<void(const QString&)> then) {
    auto* combo = new CalmCombo(this);
    combo->setAccessibleName(label);
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setMinimumContentsLength(8);
    place(label, combo);
    connect(combo, &QComboBox::textActivated, combo, &QWidget::setToolTip);
    connect(combo, &QComboBox::activated, this, [combo, then](int index) { then(combo->itemData(index).toString()); });
    return combo;
}

void FormColumn::add(QWidget* widget) {
    column_->addWidget(widget);
}

void FormColumn::pair_next() {
    pair_ = new QGridLayout;
    pair_->setHorizontalSpacing(8);
    pair_->setVerticalSpacing(4);
    pair_->setColumnStretch(0, 1);
    pair_->setColumnStretch(1, 1);
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
