// A value of a rule set as it is read and typed.

#include <QCoreApplication>
#include <QDate>
#include <QJsonArray>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

#include "ui/drawing/fields.h"
#include "ui/rules/rule_draft.h"

namespace wg::ui {
namespace {

constexpr int longest_rule_text = 2000;  // as the reader of the format has it

QString value_tr(const char* text) {
    return QCoreApplication::translate("RuleValue", text);
}

QString figure_of(const RuleField& field, double value) {
    // Shares come as per cent: 0.07 times a hundred is not quite 7.
    const double shown = field.shown_by == 1.0 ? value : std::round(value * field.shown_by * 1e9) / 1e9;
    return QString::number(shown, 'g', QLocale::FloatingPointShortest);
}

QString range_of(const RuleField& field) {
    const auto figure = [](double value) { return QString::number(value, 'g', QLocale::FloatingPointShortest); };
    const QString unit = field.unit.isEmpty() ? value_tr(", no unit") : QLatin1Char(' ') + field.unit;
    return value_tr("%1 to %2%3").arg(figure(field.least), figure(field.most), unit);
}

RuleEntered number_entered(const RuleField& field, const QString& text) {
    const std::optional<double> number = parsed_number(text);
    if (!number) return {{}, value_tr("'%1' is no number; %2 is asked for").arg(text.trimmed(), range_of(field))};
    if (*number < field.least || *number > field.most)
        return {{}, value_tr("%1 is beyond %2").arg(text.trimmed(), range_of(field))};
    if (field.kind == RuleKind::whole && *number != std::floor(*number))
        return {{}, value_tr("'%1' has a fraction; a whole number is asked for").arg(text.trimmed())};
    return {*number / field.shown_by, {}};
}

RuleEntered word_entered(const RuleField& field, const QString& text) {
    QStringList known;
    for (const RuleChoice& choice : field.choices) {
        if (choice.key == text.trimmed() || choice.words.compare(text.trimmed(), Qt::CaseInsensitive) == 0)
            return {choice.key, {}};
        known << choice.words;
    }
    return {{}, value_tr("'%1' is none of: %2").arg(text.trimmed(), known.join(QStringLiteral(", ")))};
}

}  // namespace

QString range_words(const RuleField& field) {
    const bool figure = field.kind == RuleKind::number || field.kind == RuleKind::whole;
    QStringList out;
    if (figure) out << range_of(field);
    if (!field.line.isEmpty()) out << field.line;
    if (field.may_lack)
        out << (field.when_lacking.isEmpty() ? value_tr("May be left out")
                                             : value_tr("Where it is not set, this holds: %1").arg(field.when_lacking));
    return out.join(QStringLiteral(". "));
}

QString value_entry(const RuleField& field, const QJsonValue& value) {
    if (value.isUndefined()) return {};
    switch (field.kind) {
        case RuleKind::number:
        case RuleKind::whole: return value.isDouble() ? figure_of(field, value.toDouble()) : QString();
        case RuleKind::flag: return value.toBool() ? QStringLiteral("yes") : QStringLiteral("no");
        case RuleKind::names: {
            QStringList out;
            for (const QJsonValue one : value.toArray())
                out << one.toString();
            return out.join(QStringLiteral(", "));
        }
        default: return value.toString();
    }
}

QString value_words(const RuleField& field, const QJsonValue& value) {
    if (value.isUndefined())
        return field.when_lacking.isEmpty() ? QString() : value_tr("%1 (not set)").arg(field.when_lacking);
    if (field.kind == RuleKind::flag) return value.toBool() ? value_tr("yes") : value_tr("no");
    if (field.kind != RuleKind::word) return value_entry(field, value);
    for (const RuleChoice& choice : field.choices)
        if (choice.key == value.toString()) return choice.words;
    return value.toString();
}

RuleEntered entered_value(const RuleField& field, const QString& text) {
    if (text.trimmed().isEmpty()) {
        if (field.may_lack) return {QJsonValue(QJsonValue::Undefined), {}};
        return {{}, value_tr("an entry is asked for")};
    }
    if (text.size() > longest_rule_text)
        return {{}, value_tr("the entry is longer than %1 characters").arg(longest_rule_text)};
    switch (field.kind) {
        case RuleKind::number:
        case RuleKind::whole: return number_entered(field, text);
        case RuleKind::word: return word_entered(field, text);
        case RuleKind::flag: {
            const QString word = text.trimmed().toLower();
            if (word == QLatin1String("yes") || word == QLatin1String("true")) return {true, {}};
            if (word == QLatin1String("no") || word == QLatin1String("false")) return {false, {}};
            return {{}, value_tr("'%1' is neither yes nor no").arg(text.trimmed())};
        }
        case RuleKind::day:
            if (!QDate::fromString(text.trimmed(), Qt::ISODate).isValid() || text.trimmed().size() != 10)
                return {{}, value_tr("'%1' is no day, as 2027-06-21").arg(text.trimmed())};
            return {text.trimmed(), {}};
        case RuleKind::names: {
            static const QRegularExpression between(QStringLiteral("[\\s,;]+"));
            return {QJsonArray::fromStringList(text.split(between, Qt::SkipEmptyParts)), {}};
        }
        default: break;
    }
    return {text.trimmed(), {}};
}

}  // namespace wg::ui
