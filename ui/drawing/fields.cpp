#include "ui/drawing/fields.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <cmath>

#include "ui/common/theme.h"

namespace wg::ui {

using namespace Qt::StringLiterals;

std::optional<double> parsed_number(QString text) {
    for (const QChar space : {QChar(u' '), QChar(0x2009), QChar(0x00a0), QChar(0x202f)})
        text.remove(space);
    text.replace(QChar(0x2212), u'-');
    // '1,234.5' is ambiguous between habits: refused rather than guessed.
    if (text.contains(u',') && text.contains(u'.')) return std::nullopt;
    text.replace(u',', u'.');
    QLocale plain = QLocale::c();
    plain.setNumberOptions(QLocale::RejectGroupSeparator);
    bool ok = false;
    const double value = plain.toDouble(text, &ok);
    if (!ok || !std::isfinite(value)) return std::nullopt;
    return value;
}

NumberField::NumberField(const QString& name, const QString& unit, const Range& range, QWidget* parent)
    : QWidget(parent), name_(name), unit_(unit), range_(range) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    edit_ = new QLineEdit(this);
    edit_->setAccessibleName(unit.isEmpty() ? name : u"%1, %2"_s.arg(name, unit));
    edit_->setAlignment(Qt::AlignRight);
    edit_->setMinimumWidth(72);
    edit_->installEventFilter(this);
    if (range.optional) edit_->setPlaceholderText(tr("not known"));
    row->addWidget(edit_, 1);
    unit_label_ = new QLabel(unit, this);
    unit_label_->setProperty("role", QStringLiteral("muted"));
    unit_label_->setMinimumWidth(36);
    row->addWidget(unit_label_);
    column->addLayout(row);
    problem_ = new QLabel(this);
    problem_->setWordWrap(true);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    problem_->hide();
    column->addWidget(problem_);
    setFocusProxy(edit_);
    connect(edit_, &QLineEdit::editingFinished, this, &NumberField::finish);
}

QString NumberField::text_of(std::optional<double> value) const {
    if (!value) return {};
    QString text = QString::number(*value, 'f', range_.decimals);
    if (text.contains(u'.') && !range_.money) {
        // Whole and half figures are read more easily without the zeros behind them; one decimal stays as a sign of it.
        while (text.endsWith(u'0') && !text.endsWith(u".0"_s))
            text.chop(1);
    }
    return text;
}

void NumberField::set_value(std::optional<double> value) {
    if (value == value_ && (!problem_->isHidden() || edit_->hasFocus())) return;
    value_ = value;
    edit_->setText(text_of(value));
    show_problem({});
}

void NumberField::set_range(double least, double most) {
    range_.least = least;
    range_.most = most;
}

void NumberField::set_unit(const QString& unit) {
    if (unit == unit_) return;
    unit_ = unit;
    unit_label_->setText(unit);
    edit_->setAccessibleName(unit.isEmpty() ? name_ : u"%1, %2"_s.arg(name_, unit));
}

void NumberField::show_problem(const QString& text) {
    problem_->setText(text.isEmpty() ? text : u"\u25b2 "_s + text);
    problem_->setVisible(!text.isEmpty());
    // The colour comes from the theme of the moment: the style sheet has no state for a refused entry.
    edit_->setStyleSheet(text.isEmpty() ? QString()
                                        : u"QLineEdit { border: 2px solid %1; }"_s.arg(current_theme().stop.name()));
}

QString NumberField::problem() const {
    return problem_->isHidden() ? QString() : problem_->text();
}

void NumberField::finish() {
    const QString text = edit_->text().trimmed();
    if (text == text_of(value_)) {
        show_problem({});
        return;
    }
    if (text.isEmpty() && range_.optional) {
        value_.reset();
        show_problem({});
        Q_EMIT committed(std::nullopt);
        return;
    }
    const std::optional<double> number = parsed_number(text);
    const QString limits = tr("%1 to %2 %3").arg(text_of(range_.least), text_of(range_.most), unit_).trimmed();
    if (!number) {
        show_problem(tr("Not a number. Give %1.").arg(limits));
        return;
    }
    if (*number < range_.least || *number > range_.most) {
        show_problem(tr("Outside %1. Kept: %2.").arg(limits, value_ ? text_of(value_) : tr("nothing")));
        return;
    }
    const bool same = value_ && *value_ == *number;
    value_ = number;
    edit_->setText(text_of(value_));
    show_problem({});
    // "40" where "40.0" stood is no edit.
    if (!same) Q_EMIT committed(value_);
}

void NumberField::step(int direction) {
    if (range_.step <= 0.0 || !value_) return;
    const double wanted = *value_ + direction * range_.step;
    if (wanted < range_.least - 1e-9 || wanted > range_.most + 1e-9) return;
    edit_->setText(QString::number(wanted, 'f', range_.decimals));
    finish();
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == edit_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape && (edit_->text() != text_of(value_) || !problem_->isHidden())) {
            edit_->setText(text_of(value_));
            show_problem({});
            return true;
        }
        if (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down) {
            step(key->key() == Qt::Key_Up ? 1 : -1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

TextField::TextField(const QString& name, QWidget* parent) : QLineEdit(parent) {
    setAccessibleName(name);
    setMaxLength(2000);
    connect(this, &QLineEdit::editingFinished, this, [this] {
        if (text() == value_) return;
        value_ = text();
        Q_EMIT committed(value_);
    });
}

void TextField::set_value(const QString& text_value) {
    if (text_value == value_ && hasFocus()) return;
    value_ = text_value;
    if (text() == text_value) return;
    setText(text_value);
    setCursorPosition(0);  // the beginning of a long text tells most
}

void TextField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && text() != value_) {
        setText(value_);
        return;
    }
    QLineEdit::keyPressEvent(event);
}

NoteField::NoteField(const QString& name, QWidget* parent) : QPlainTextEdit(parent) {
    setAccessibleName(name);
    setTabChangesFocus(true);
    setFixedHeight(fontMetrics().lineSpacing() * 3 + 20);
}

void NoteField::set_value(const QString& text) {
    if (text == value_ && hasFocus()) return;
    value_ = text;
    if (toPlainText() != text) setPlainText(text);
}

void NoteField::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    if (toPlainText() == value_) return;
    value_ = toPlainText();
    Q_EMIT committed(value_);
}

void NoteField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && toPlainText() != value_) {
        setPlainText(value_);
        return;
    }
    QPlainTextEdit::keyPressEvent(event);
}

}  // namespace wg::ui
