#pragma once
// Every field of a rule set with the words, unit and range that stand beside it on screen. What is right is decided by
// the reader of the format (core/plan/rule_set.h); tests hold these ranges to it.

#include <QString>
#include <vector>

namespace wg::ui {

enum class RuleKind {
    number,
    whole,
    flag,
    word,   ///< one of the choices
    day,    ///< ISO 8601 date
    names,  ///< several free words, apart by commas
    text,
};

struct RuleChoice {
    QString key, words;
};

struct RuleField {
    QString key;  ///< as in the file
    RuleKind kind = RuleKind::number;
    QString label, unit;
    double least = 0.0, most = 0.0;  ///< of numbers, as shown
    double shown_by = 1.0;           ///< the file's number times this is shown: 100 for shares in %
    QString line;                    ///< what it means
    bool may_lack = false;
    QString when_lacking;  ///< what holds then
    std::vector<RuleChoice> choices;
};

/// Where fields stand in the file, and where their source does.
enum class RuleGroup { set, wind, snow, safety, net, tax, rate, market, service, duties, leak };

struct RuleFieldGroup {
    RuleGroup group = RuleGroup::set;
    QString title;
    QString object;  ///< "actions"; empty: the set itself
    QString list;    ///< of items with these fields: "rates"; empty: stands once
    std::vector<RuleField> fields;
};

/// In the order of the page.
[[nodiscard]] const std::vector<RuleFieldGroup>& rule_groups();
/// For tests; null: no such field.
[[nodiscard]] const RuleField* find_rule_field(RuleGroup group, const QString& key);

}  // namespace wg::ui
