#include "ui/fitting/reading_form.h"

#include <QComboBox>
#include <QDateTime>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/fitting/reading_words.h"

namespace wg::ui {
namespace {

/// Both decimal signs are typed on site; spaces between thousands are left out.
std::optional<double> number_of(QString text) {
    text = text.simplified()
               .remove(QLatin1Char(' '))
               .replace(QLatin1Char(','), QLatin1Char('.'))
               .replace(QChar(0x2212), QLatin1Char('-'));
    bool ok = false;
    const double value = text.toDouble(&ok);
    if (!ok) return std::nullopt;
    return value;
}

}  // namespace

ReadingForm::ReadingForm(QWidget* parent) : QWidget(parent) {
    kind_ = new QComboBox(this);
    for (const Word<ReadingKind>& word : words<ReadingKind>()) {
        kind_->addItem(QString::fromUtf8(word.text), static_cast<int>(word.value));
    }
    value_label_ = new QLabel(this);
    value_ = new QLineEdit(this);
    second_label_ = new QLabel(this);
    second_ = new QLineEdit(this);
    instrument_ = new QLineEdit(this);
    instrument_->setPlaceholderText(tr("make and number"));
    who_ = new QLineEdit(this);
    note_ = new QLineEdit(this);
    corrects_ = new QComboBox(this);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    add_ = new QPushButton(tr("Add reading"), this);
    add_->setProperty("role", QStringLiteral("primary"));
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    kind_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    corrects_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    corrects_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    corrects_->setMinimumContentsLength(12);  // long entries must not widen the form
    form->addRow(tr("&Reading"), kind_);
    form->addRow(value_label_, value_);
    form->addRow(second_label_, second_);
    form->addRow(tr("&Instrument"), instrument_);
    form->addRow(tr("Read &by"), who_);
    form->addRow(tr("&Note"), note_);
    form->addRow(tr("&Corrects"), corrects_);
    value_label_->setBuddy(value_);
    second_label_->setBuddy(second_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(form);
    column->addWidget(problem_);
    column->addWidget(add_);
    connect(kind_, &QComboBox::currentIndexChanged, this, &ReadingForm::refresh_fields);
    connect(add_, &QPushButton::clicked, this, &ReadingForm::add_asked);
    for (QLineEdit* edit : {value_, second_, instrument_, who_, note_}) {
        connect(edit, &QLineEdit::returnPressed, this, &ReadingForm::add_asked);
    }
    refresh_fields();
}

void ReadingForm::set_record(const std::vector<Reading>& record) {
    const QString chosen = corrects_->currentData().toString();
    corrects_->clear();
    corrects_->addItem(tr("nothing: an entry of its own"), QString());
    for (auto it = record.rbegin(); it != record.rend(); ++it) {
        corrects_->addItem(QStringLiteral("%1: %2").arg(QString::fromUtf8(text_of(it->kind)), value_words(*it)),
                           qs(it->id));
    }
    corrects_->setCurrentIndex(std::max(0, corrects_->findData(chosen)));
}

void ReadingForm::choose_kind(ReadingKind kind) {
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
}

void ReadingForm::correct(const Reading& reading) {
    choose_kind(reading.kind);
    const ReadingWords& w = words_of(reading.kind);
    value_->setText(w.value_name.isEmpty() ? QString() : QString::number(reading.value, 'f', w.decimals));
    second_->setText(reading.second_value ? QString::number(*reading.second_value, 'f', 1) : QString());
    instrument_->setText(qs(reading.instrument));
    note_->setText(qs(reading.note));
    corrects_->setCurrentIndex(std::max(0, corrects_->findData(qs(reading.id))));
    value_->setFocus();
    value_->selectAll();
}

void ReadingForm::start() {
    if (value_->isVisible()) {
        value_->setFocus();
    } else {
        note_->setFocus();
    }
}

void ReadingForm::clear_figures() {
    value_->clear();
    second_->clear();
    note_->clear();
    corrects_->setCurrentIndex(0);
    say(QString());
}

void ReadingForm::refresh_fields() {
    const ReadingWords& w = words_of(static_cast<ReadingKind>(kind_->currentData().toInt()));
    const bool figure = !w.value_name.isEmpty();
    const bool second = !w.second_name.isEmpty();
    value_label_->setText(figure ? QStringLiteral("%1, %2").arg(w.value_name, w.unit) : tr("No figure"));
    second_label_->setText(second ? QStringLiteral("%1, %2").arg(w.second_name, w.second_unit) : QString());
    value_label_->setVisible(figure);
    value_->setVisible(figure);
    second_label_->setVisible(second);
    second_->setVisible(second);
    say(QString());
}

void ReadingForm::say(const QString& text) {
    problem_->setText(text);
    problem_->setVisible(!text.isEmpty());
}

std::optional<Reading> ReadingForm::reading(const QString& taken_at) {
    Reading reading;
    reading.kind = static_cast<ReadingKind>(kind_->currentData().toInt());
    const ReadingWords& w = words_of(reading.kind);
    if (!w.value_name.isEmpty()) {
        const auto value = number_of(value_->text());
        if (!value) {
            say(tr("Enter the %1 in %2 as a number.").arg(w.value_name.toLower(), w.unit));
            value_->setFocus();
            return std::nullopt;
        }
        if (!plausible(reading.kind, *value)) {
            say(tr("%1 cannot be meant: between %2 and %3.")
                    .arg(quantity(*value, w.unit, w.decimals), number(w.least), quantity(w.most, w.unit)));
            value_->setFocus();
            return std::nullopt;
        }
        reading.value = *value;
    }
    if (!w.second_name.isEmpty() && !second_->text().trimmed().isEmpty()) {
        const auto second = number_of(second_->text());
        if (!second || *second < -60.0 || *second > 120.0) {
            say(tr("Enter the %1 in %2, between -60 and 120, or leave it empty.")
                    .arg(w.second_name.toLower(), w.second_unit));
            second_->setFocus();
            return std::nullopt;
        }
        reading.second_value = *second;
    }
    if (w.value_name.isEmpty() && note_->text().trimmed().isEmpty()) {
        say(tr("Write the remark into the note."));
        note_->setFocus();
        return std::nullopt;
    }
    if (who_->text().trimmed().isEmpty()) {
        say(tr("Say who read it."));
        who_->setFocus();
        return std::nullopt;
    }
    reading.taken_at = taken_at.toStdString();
    reading.taken_by = who_->text().trimmed().toStdString();
    reading.instrument = instrument_->text().trimmed().toStdString();
    reading.note = note_->text().trimmed().toStdString();
    reading.corrects_id = corrects_->currentData().toString().toStdString();
    say(QString());
    return reading;
}

}  // namespace wg::ui
