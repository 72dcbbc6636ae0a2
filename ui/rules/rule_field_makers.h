#pragma once
// How the fields of a rule set are written down, and the groups that stand in a file of their own.

#include <QCoreApplication>
#include <utility>

#include "ui/rules/rule_fields.h"

namespace wg::ui {

[[nodiscard]] inline QString rule_tr(const char* text) {
    return QCoreApplication::translate("RuleFields", text);
}

[[nodiscard]] inline RuleField number_of(const char* key, const QString& label, const QString& unit, double least,
                                         double most, const QString& line) {
    RuleField out;
    out.key = QString::fromLatin1(key);
    out.label = label;
    out.unit = unit;
    out.least = least;
    out.most = most;
    out.line = line;
    return out;
}

[[nodiscard]] inline RuleField of_kind(const char* key, RuleKind kind, const QString& label, const QString& line) {
    RuleField out;
    out.key = QString::fromLatin1(key);
    out.kind = kind;
    out.label = label;
    out.line = line;
    return out;
}

[[nodiscard]] inline RuleField of_words(const char* key, const QString& label, const QString& line,
                                        std::vector<RuleChoice> choices) {
    RuleField out = of_kind(key, RuleKind::word, label, line);
    out.choices = std::move(choices);
    return out;
}

[[nodiscard]] inline RuleField lacking(RuleField field, const QString& then) {
    field.may_lack = true;
    field.when_lacking = then;
    return field;
}

[[nodiscard]] RuleFieldGroup wind_group();
[[nodiscard]] RuleFieldGroup snow_group();
[[nodiscard]] RuleFieldGroup safety_group();
[[nodiscard]] RuleFieldGroup net_group();  ///< wind on a plate that stands off its surface

}  // namespace wg::ui
