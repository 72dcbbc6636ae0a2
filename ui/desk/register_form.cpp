#include "ui/desk/register_form.h"

#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRandomGenerator>
#include <QVBoxLayout>

#include "core/quantity/uuid.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr double most_entry_kg = 1e5;

}  // namespace

RegisterForm::RegisterForm(const std::vector<std::string>& refrigerants, QWidget* parent) : QFrame(parent) {
    setProperty("role", QStringLiteral("panel"));
    setMinimumWidth(300);
    auto* title = new QLabel(tr("New entry"), this);
    title->setProperty("role", QStringLiteral("title"));
    on_ = new QDateEdit(QDate::currentDate(), this);
    on_->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    on_->setCalendarPopup(true);
    on_->setMaximumDate(QDate::currentDate());
    refrigerant_ = new CalmCombo(this);
    refrigerant_->setEditable(true);
    move_ = new CalmCombo(this);
    for (const Word<RefrigerantMove>& word : wg::words<RefrigerantMove>())
        move_->addItem(QString::fromUtf8(word.text), static_cast<int>(word.value));
    for (QComboBox* box : {refrigerant_, move_})
        box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    on_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    kg_ = new QLineEdit(this);
    kg_->setAlignment(Qt::AlignRight);
    bottle_ = new QLineEdit(this);
    by_ = new QLineEdit(this);
    note_ = new QLineEdit(this);
    note_->setPlaceholderText(tr("delivery note, job, reason"));
    correcting_ = new QLabel(this);
    correcting_->setWordWrap(true);
    correcting_->hide();
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* add = new QPushButton(tr("Add to the register"), this);
    add->setProperty("role", QStringLiteral("primary"));
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(12);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Day"), on_);
    form->addRow(tr("&Refrigerant"), refrigerant_);
    form->addRow(tr("&Move"), move_);
    form->addRow(tr("Mass, &kg"), kg_);
    form->addRow(tr("B&ottle"), bottle_);
    form->addRow(tr("&By"), by_);
    form->addRow(tr("&Note"), note_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    column->addWidget(title);
    column->addLayout(form);
    column->addWidget(correcting_);
    column->addWidget(problem_);
    column->addWidget(add);
    column->addStretch(1);
    connect(add, &QPushButton::clicked, this, &RegisterForm::add_asked);
    connect(kg_, &QLineEdit::returnPressed, this, &RegisterForm::add_asked);
    for (const std::string& name : refrigerants)
        refrigerant_->addItem(qs(name));
}

std::optional<RefrigerantEntry> RegisterForm::entry() {
    const std::optional<double> kg = parsed_number(kg_->text());
    if (!kg || *kg < 0.0 || *kg > most_entry_kg) {
        say(tr("Enter the mass in kg as a number, 0 or more."), kg_);
        return std::nullopt;
    }
    if (refrigerant_->currentText().trimmed().isEmpty()) {
        say(tr("Say which refrigerant."), refrigerant_);
        return std::nullopt;
    }
    if (by_->text().trimmed().isEmpty()) {
        say(tr("Say who moved it."), by_);
        return std::nullopt;
    }
    RefrigerantEntry entry;
    entry.id = uuid_v4([] { return QRandomGenerator::system()->generate64(); });
    entry.on = on_->date().toString(Qt::ISODate).toStdString();
    entry.refrigerant = refrigerant_->currentText().trimmed().toStdString();
    entry.move = static_cast<RefrigerantMove>(move_->currentData().toInt());
    entry.kg = *kg;
    entry.bottle = bottle_->text().trimmed().toStdString();
    entry.by = by_->text().trimmed().toStdString();
    entry.note = note_->text().trimmed().toStdString();
    entry.corrects_id = corrects_id_;
    say(QString());
    return entry;
}

void RegisterForm::correct(const RefrigerantEntry& old) {
    corrects_id_ = old.id;
    on_->setDate(QDate::fromString(qs(old.on), Qt::ISODate));
    refrigerant_->setCurrentText(qs(old.refrigerant));
    move_->setCurrentIndex(move_->findData(static_cast<int>(old.move)));
    kg_->setText(QString::number(old.kg, 'f', 3));
    bottle_->setText(qs(old.bottle));
    note_->setText(qs(old.note));
    correcting_->setText(tr("Corrects the entry of %1. With 0 kg it counts as none.").arg(qs(old.on)));
    correcting_->show();
    kg_->setFocus();
    kg_->selectAll();
}

void RegisterForm::clear() {
    kg_->clear();
    bottle_->clear();
    note_->clear();
    corrects_id_.clear();
    correcting_->hide();
    say(QString(), kg_);
}

void RegisterForm::say(const QString& text, QWidget* where) {
    problem_->setText(text);
    problem_->setVisible(!text.isEmpty());
    if (where != nullptr) where->setFocus();
}

QString RegisterForm::problem() const {
    return problem_->text();
}

}  // namespace wg::ui
