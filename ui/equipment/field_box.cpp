#include "ui/equipment/field_box.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QJsonArray>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/equipment/pasted_numbers.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/item_text.h"

namespace wg::ui {
namespace {

constexpr int lines_height_px = 92;
constexpr int ten_count = 10;

QString shortest(double value) {
    return QString::number(value, 'g', QLocale::FloatingPointShortest);
}

QString numbers_text(const QJsonValue& value, const QString& between) {
    QStringList out;
    for (const QJsonValue one : value.toArray())
        out << (one.isDouble() ? shortest(one.toDouble()) : words_of_value(one));
    return out.join(between);
}

/// The numbers of a text, or the text itself when it holds something else.
QJsonValue numbers_or_text(const QString& text) {
    const Result<std::vector<double>> read = numbers_in(text.toStdString());
    if (!read) return text;
    QJsonArray out;
    for (const double number : read.value())
        out.append(number);
    return out;
}

}  // namespace

FieldBox::FieldBox(const ItemField& field, QWidget* parent) : QWidget(parent), field_(field) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    make_editor(*column);
    for (QLabel** label : {&wrong_, &line_}) {
        *label = new QLabel(this);
        (*label)->setWordWrap(true);
        (*label)->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(*label);
    }
    wrong_->setProperty("role", QStringLiteral("stop"));
    line_->setProperty("role", QStringLiteral("muted"));
    line_->setText(hint());
    line_->setVisible(!hint().isEmpty());
    column->addStretch(1);
    show_problem({});
    set_value(QJsonValue(QJsonValue::Undefined));
}

void FieldBox::make_editor(QVBoxLayout& column) {
    if (field_.kind == FieldKind::flag) {
        check_ = new QCheckBox(field_.label, this);
        column.addWidget(check_);
        connect(check_, &QCheckBox::clicked, this, &FieldBox::changed);
        return;
    }
    auto* name = new QLabel(field_.label, this);
    name->setWordWrap(true);
    column.addWidget(name);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    column.addLayout(row);
    QWidget* editor = nullptr;
    if (field_.kind == FieldKind::choice) {
        editor = combo_ = new CalmCombo(this);
        for (const FieldChoice& choice : field_.choices)
            combo_->addItem(choice.words, choice.key);
        combo_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo_->setMinimumContentsLength(8);
        combo_->setCurrentIndex(-1);
        connect(combo_, &QComboBox::activated, this, &FieldBox::changed);
    } else if (field_.kind == FieldKind::words) {
        editor = new QWidget(this);
        auto* grid = new QGridLayout(editor);
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setSpacing(4);
        for (const FieldChoice& choice : field_.choices) {
            auto* box = new QCheckBox(choice.words, editor);
            const int at = static_cast<int>(boxes_.size());
            grid->addWidget(box, at / 3, at % 3);
            boxes_.push_back(box);
            connect(box, &QCheckBox::clicked, this, &FieldBox::changed);
        }
    } else if (field_.kind == FieldKind::points) {
        editor = lines_ = new QPlainTextEdit(this);
        lines_->setFixedHeight(lines_height_px);
        lines_->setTabChangesFocus(true);
        connect(lines_, &QPlainTextEdit::textChanged, this, &FieldBox::changed);
    } else {
        editor = edit_ = new QLineEdit(this);
        connect(edit_, &QLineEdit::textEdited, this, &FieldBox::typed);
        connect(edit_, &QLineEdit::editingFinished, this, [this] {
            const QString before = edit_->text();
            part_twenty();
            if (edit_->text() != before) Q_EMIT changed();
        });
    }
    editor->setAccessibleName(field_.label);
    name->setBuddy(editor);
    row->addWidget(editor, 1);
    if (field_.unit.isEmpty()) return;
    auto* unit = new QLabel(field_.unit, this);
    unit->setProperty("role", QStringLiteral("muted"));
    unit->setMinimumWidth(48);
    row->addWidget(unit);
}

QString FieldBox::hint() const {
    QString range;
    if (field_.kind == FieldKind::number || field_.kind == FieldKind::whole)
        range = tr("%1 to %2").arg(shortest(field_.least), shortest(field_.most));
    if (range.isEmpty()) return field_.line;
    return field_.line.isEmpty() ? range : QStringLiteral("%1. %2").arg(range, field_.line);
}

void FieldBox::show_problem(const QString& text) {
    problem_ = text;
    wrong_->setText(text);
    wrong_->setVisible(!text.isEmpty());
}

void FieldBox::set_read_only(bool read_only) {
    if (edit_ != nullptr) edit_->setReadOnly(read_only);
    if (lines_ != nullptr) lines_->setReadOnly(read_only);
    if (combo_ != nullptr) combo_->setEnabled(!read_only);
    if (check_ != nullptr) check_->setEnabled(!read_only);
    for (QCheckBox* box : boxes_)
        box->setEnabled(!read_only);
}

void FieldBox::set_value(const QJsonValue& value) {
    if (check_ != nullptr) {
        check_->setChecked(value.toBool());
    } else if (combo_ != nullptr) {
        combo_->setCurrentIndex(value.isString() ? combo_->findData(value.toString()) : -1);
    } else if (lines_ != nullptr) {
        QStringList out;
        for (const QJsonValue pair : value.toArray())
            out << (pair.isArray() ? numbers_text(pair, QStringLiteral("  ")) : words_of_value(pair));
        const QSignalBlocker quiet(lines_);
        lines_->setPlainText(value.isString() ? value.toString() : out.join(QLatin1Char('\n')));
    } else if (!boxes_.empty()) {
        for (std::size_t i = 0; i < boxes_.size(); ++i)
            boxes_[i]->setChecked(value.toArray().contains(field_.choices[i].key));
    } else if (value.isArray()) {
        edit_->setText(numbers_text(value, field_.kind == FieldKind::ids ? QStringLiteral(" ") : QStringLiteral("  ")));
        edit_->setCursorPosition(0);
    } else {
        edit_->setText(value.isUndefined() ? QString()
                                           : (value.isDouble() ? shortest(value.toDouble()) : words_of_value(value)));
        edit_->setCursorPosition(0);
    }
    if (edit_ != nullptr) length_ = edit_->text().size();
    // A flag that has to be given reads as it looks; any other value stays until it is changed.
    read_at_first_ = read();
    shown_ = check_ != nullptr && field_.required && value.isUndefined() ? read_at_first_ : value;
}

QString FieldBox::entered() const {
    return lines_ != nullptr ? lines_->toPlainText() : edit_->text();
}

QJsonValue FieldBox::number_value(const QString& text) const {
    const std::optional<double> number = parsed_number(text);
    return number ? QJsonValue(*number) : QJsonValue(text);
}

QJsonValue FieldBox::value() const {
    const QJsonValue now = read();
    const bool same = now.type() == read_at_first_.type() && words_of_value(now) == words_of_value(read_at_first_);
    return same ? shown_ : now;
}

QJsonValue FieldBox::read() const {
    if (check_ != nullptr) return check_->isChecked();
    if (combo_ != nullptr) {
        return combo_->currentIndex() < 0 ? QJsonValue(QJsonValue::Undefined)
                                          : QJsonValue(combo_->currentData().toString());
    }
    if (!boxes_.empty()) {
        QJsonArray out;
        for (std::size_t i = 0; i < boxes_.size(); ++i) {
            if (boxes_[i]->isChecked()) out.append(field_.choices[i].key);
        }
        return out;
    }
    const QString text = entered();
    if (text.trimmed().isEmpty()) return QJsonValue(QJsonValue::Undefined);
    switch (field_.kind) {
        case FieldKind::number:
        case FieldKind::whole: return number_value(text);
        case FieldKind::point:
        case FieldKind::ten: return numbers_or_text(text);
        case FieldKind::points: {
            QJsonArray out;
            static const QRegularExpression line_end(QStringLiteral("[\\n]"));
            for (const QString& line : text.split(line_end, Qt::SkipEmptyParts)) {
                if (!line.trimmed().isEmpty()) out.append(numbers_or_text(line));
            }
            return out;
        }
        case FieldKind::ids: {
            static const QRegularExpression between(QStringLiteral("[\\s,;]+"));
            return QJsonArray::fromStringList(text.split(between, Qt::SkipEmptyParts));
        }
        default: break;
    }
    return text;
}

void FieldBox::part_twenty() {
    const QJsonArray numbers = read().toArray();
    if (field_.kind != FieldKind::ten || numbers.size() != 2 * ten_count) return;
    QJsonArray first, second;
    for (int i = 0; i < ten_count; ++i) {
        first.append(numbers[i]);
        second.append(numbers[ten_count + i]);
    }
    edit_->setText(numbers_text(first, QStringLiteral("  ")));
    Q_EMIT left_over(second);
}

void FieldBox::typed() {
    // By hand the twentieth number is begun long before it is complete.
    const bool pasted = edit_->text().size() > length_ + 1;
    if (pasted) part_twenty();
    length_ = edit_->text().size();
    Q_EMIT changed();
}

void FieldBox::take(const QJsonValue& value) {
    const QJsonValue shown = shown_;
    const QJsonValue first = read_at_first_;
    set_value(value);
    shown_ = shown;
    read_at_first_ = first;
    Q_EMIT changed();
}

void FieldBox::type(const QString& text) {
    if (lines_ != nullptr) {
        lines_->setPlainText(text);
        return;
    }
    if (combo_ != nullptr) {
        combo_->setCurrentIndex(combo_->findData(text));
        Q_EMIT changed();
        return;
    }
    if (edit_ == nullptr) return;
    edit_->setText(text);
    typed();
}

}  // namespace wg::ui
