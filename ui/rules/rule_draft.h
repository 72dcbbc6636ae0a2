#pragma once
// A rule set as it is being edited: the file's own JSON, value by value.

#include <QByteArray>
#include <QJsonObject>
#include <QJsonValue>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/quantity/result.h"
#include "ui/common/kept_version.h"
#include "ui/rules/rule_fields.h"

namespace wg::ui {

/// One value of a set on screen.
struct RuleRow {
    const RuleFieldGroup* group = nullptr;
    const RuleField* field = nullptr;
    int item = -1;       ///< of a list
    QString group_name;  ///< "Service 2"
    QStringList path;    ///< in the file; figures count items of lists
};

/// Where a value's source stands. `own` may be empty: then the value shares `shared` with its group, and an entry
/// changes that for all of them.
struct RuleSource {
    QStringList own, shared;
    [[nodiscard]] bool none() const { return own.isEmpty() && shared.isEmpty(); }
};

class RuleDraft {
   public:
    RuleDraft() = default;
    explicit RuleDraft(QJsonObject set) : set_(std::move(set)) {}
    /// A file's text; refused when the reader of the format refuses it.
    [[nodiscard]] static Result<RuleDraft> read(const std::string& text, const std::string& name);

    [[nodiscard]] const QJsonObject& set() const { return set_; }
    [[nodiscard]] QByteArray text() const;
    [[nodiscard]] QString id() const { return set_.value(QLatin1String("id")).toString(); }
    [[nodiscard]] QString label() const { return set_.value(QLatin1String("label")).toString(); }
    [[nodiscard]] bool assumed() const { return set_.value(QLatin1String("assumed")).toBool(); }
    /// What the reader of the format has against it.
    [[nodiscard]] std::vector<Problem> problems() const;

    [[nodiscard]] std::vector<RuleRow> rows() const;
    /// Undefined: left out.
    [[nodiscard]] QJsonValue at(const QStringList& path) const;
    /// Undefined takes the value out.
    void put(const QStringList& path, const QJsonValue& value);
    /// A further item of a list of this group, with values that the reader takes but for a tax rate, which it refuses
    /// until one is typed; its first row.
    QStringList add_item(const RuleFieldGroup& group);
    void remove_item(const RuleFieldGroup& group, int item);

    [[nodiscard]] static RuleSource source_of(const RuleRow& row);
    /// The value's own, else its group's. Empty for a value that is left out.
    [[nodiscard]] QString source_words(const RuleRow& row) const;
    /// Whether its source says nothing, or says that it is assumed. Values that are left out are the standard's.
    [[nodiscard]] bool is_assumed(const RuleRow& row) const;
    [[nodiscard]] int count_assumed() const;
    /// Tax rates whose name holds another percentage than they have, in words: the name stands on quotes.
    [[nodiscard]] QStringList misnamed_rates() const;

   private:
    QJsonObject set_;
};

/// A value as people read it, without unit; what holds when it is left out stands in brackets.
[[nodiscard]] QString value_words(const RuleField& field, const QJsonValue& value);
/// As it is typed.
[[nodiscard]] QString value_entry(const RuleField& field, const QJsonValue& value);
/// The value of an entry. Problem in words, with the range; nothing is cut to fit.
struct RuleEntered {
    QJsonValue value;
    QString problem;
};
[[nodiscard]] RuleEntered entered_value(const RuleField& field, const QString& text);
/// "10 to 80 m/s. Of a site that has none of its own".
[[nodiscard]] QString range_words(const RuleField& field);

/// In the order of the page.
[[nodiscard]] std::vector<VersionChange> changes_between(const RuleDraft& before, const RuleDraft& after);

}  // namespace wg::ui
