#include "ui/rules/rule_draft.h"

#include <QCoreApplication>
#include <QHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "core/plan/rule_set.h"
#include "core/plan/rule_sources.h"

namespace wg::ui {
namespace {

QString draft_words(const char* text) {
    return QCoreApplication::translate("RuleDraft", text);
}

QJsonValue inside(const QJsonValue& whole, const QStringList& path, qsizetype depth) {
    if (depth == path.size()) return whole;
    if (whole.isArray()) {
        const QJsonArray list = whole.toArray();
        const int item = path[depth].toInt();
        if (item < 0 || item >= list.size()) return QJsonValue(QJsonValue::Undefined);
        return inside(list[item], path, depth + 1);
    }
    if (!whole.isObject()) return QJsonValue(QJsonValue::Undefined);
    return inside(whole.toObject().value(path[depth]), path, depth + 1);
}

QJsonValue with_value(const QJsonValue& whole, const QStringList& path, qsizetype depth, const QJsonValue& value) {
    if (depth == path.size()) return value;
    if (whole.isArray()) {
        QJsonArray list = whole.toArray();
        const int item = path[depth].toInt();
        if (item < 0 || item >= list.size()) return list;
        list[item] = with_value(list[item], path, depth + 1, value);
        return list;
    }
    QJsonObject object = whole.toObject();
    const QJsonValue changed = with_value(object.value(path[depth]), path, depth + 1, value);
    if (changed.isUndefined() || (changed.isObject() && changed.toObject().isEmpty())) {
        object.remove(path[depth]);
    } else {
        object.insert(path[depth], changed);
    }
    return object;
}

QStringList list_path(const RuleFieldGroup& group) {
    return group.object.isEmpty() ? QStringList{group.list} : QStringList{group.object, group.list};
}

bool is_source(const RuleField& field) {
    return field.key == QLatin1String("source") || field.key == QLatin1String("net_pressure_source");
}

}  // namespace

Result<RuleDraft> RuleDraft::read(const std::string& text, const std::string& name) {
    const Result<plan::RuleSet> judged = plan::rule_set_from_json(text, name);
    if (!judged) return judged.problems();
    const QJsonDocument document = QJsonDocument::fromJson(QByteArray::fromStdString(text));
    if (!document.isObject())
        return Problem{name, "cannot be shown", "Write it in UTF-8, with numbers that a computer can hold"};
    return RuleDraft(document.object());
}

QByteArray RuleDraft::text() const {
    return QJsonDocument(set_).toJson(QJsonDocument::Indented);
}

std::vector<Problem> RuleDraft::problems() const {
    const QByteArray bytes = text();
    const std::string name = "rule set '" + id().toStdString() + "'";
    const Result<plan::RuleSet> read =
        plan::rule_set_from_json({bytes.constData(), static_cast<std::size_t>(bytes.size())}, name);
    return read.ok() ? std::vector<Problem>{} : read.problems();
}

QJsonValue RuleDraft::at(const QStringList& path) const {
    return inside(set_, path, 0);
}

void RuleDraft::put(const QStringList& path, const QJsonValue& value) {
    set_ = with_value(set_, path, 0, value).toObject();
}

std::vector<RuleRow> RuleDraft::rows() const {
    std::vector<RuleRow> out;
    for (const RuleFieldGroup& group : rule_groups()) {
        const bool once = group.list.isEmpty();
        const int count = once ? 1 : static_cast<int>(at(list_path(group)).toArray().size());
        for (int item = 0; item < count; ++item) {
            QStringList place = once ? QStringList{} : list_path(group) << QString::number(item);
            if (once && !group.object.isEmpty()) place << group.object;
            const QString name = once ? group.title : QStringLiteral("%1 %2").arg(group.title).arg(item + 1);
            for (const RuleField& field : group.fields)
                out.push_back({&group, &field, once ? -1 : item, name, QStringList(place) << field.key});
        }
    }
    return out;
}

QStringList RuleDraft::add_item(const RuleFieldGroup& group) {
    const QStringList path = list_path(group);
    QJsonArray list = at(path).toArray();
    const auto free = [&list](const QString& key, const QString& stem) {
        for (int n = static_cast<int>(list.size()) + 1;; ++n) {
            const QString wanted = QStringLiteral("%1-%2").arg(stem).arg(n);
            if (std::none_of(list.begin(), list.end(),
                             [&](const QJsonValue& one) { return one.toObject().value(key).toString() == wanted; }))
                return wanted;
        }
    };
    QJsonObject item;
    for (const RuleField& field : group.fields) {
        switch (field.kind) {
            case RuleKind::number:
            case RuleKind::whole: item.insert(field.key, field.least); break;
            case RuleKind::word: item.insert(field.key, field.choices.front().key); break;
            case RuleKind::day: item.insert(field.key, QStringLiteral("2027-01-01")); break;
            default: item.insert(field.key, draft_words("New")); break;
        }
    }
    // What the reader would refuse otherwise.
    if (group.group == RuleGroup::rate) {
        item[QLatin1String("tax_class")] = free(QStringLiteral("tax_class"), QStringLiteral("class"));
        // Nothing is exempt because nobody typed a rate: the reader refuses it until then.
        item.remove(QLatin1String("rate"));
    } else if (group.group == RuleGroup::service) {
        item[QLatin1String("id")] = free(QStringLiteral("id"), QStringLiteral("service"));
        item[QLatin1String("every_months")] = 12;
        item[QLatin1String("when")] = QStringLiteral("always");
    } else if (group.group == RuleGroup::leak) {
        item[QLatin1String("every_months")] = 12;
        if (at({group.object, QStringLiteral("source")}).isUndefined())
            put({group.object, QStringLiteral("source")}, draft_words("assumed"));
    }
    if (group.group == RuleGroup::market || group.group == RuleGroup::service)
        item[QLatin1String("source")] = draft_words("assumed");
    list.append(item);
    put(path, list);
    return QStringList(path) << QString::number(list.size() - 1) << group.fields.front().key;
}

void RuleDraft::remove_item(const RuleFieldGroup& group, int item) {
    QJsonArray list = at(list_path(group)).toArray();
    if (item < 0 || item >= list.size()) return;
    list.removeAt(item);
    put(list_path(group), list);
}

RuleSource RuleDraft::source_of(const RuleRow& row) {
    const QString key = row.field->key;
    // Names and words of a rule are the firm's own; what is taken from somewhere are its figures and choices.
    if (row.field->kind == RuleKind::text || row.field->kind == RuleKind::names) return {};
    switch (row.group->group) {
        case RuleGroup::tax:
        case RuleGroup::rate:
        case RuleGroup::duties:
        case RuleGroup::leak: return {{}, {row.group->object, QStringLiteral("source")}};
        case RuleGroup::market:
        case RuleGroup::service: return {{}, {row.group->list, QString::number(row.item), QStringLiteral("source")}};
        default:
            return {{row.group->object, QStringLiteral("sources"), key},
                    {row.group->object, QString::fromLatin1(plan::group_source_of(key.toStdString()))}};
    }
}

QString RuleDraft::source_words(const RuleRow& row) const {
    if (at(row.path).isUndefined()) return {};
    const RuleSource source = source_of(row);
    const QString own = source.own.isEmpty() ? QString() : at(source.own).toString();
    return own.isEmpty() && !source.shared.isEmpty() ? at(source.shared).toString() : own;
}

bool RuleDraft::is_assumed(const RuleRow& row) const {
    if (is_source(*row.field))
        return plan::says_assumed(at(row.path).toString().toStdString()) && row.group->group == RuleGroup::set;
    if (source_of(row).none() || at(row.path).isUndefined()) return false;
    return plan::says_assumed(source_words(row).toStdString());
}

QStringList RuleDraft::misnamed_rates() const {
    static const QRegularExpression figure(QStringLiteral("(\\d+(?:[.,]\\d+)?)\\s*%"),
                                           QRegularExpression::UseUnicodePropertiesOption);
    QStringList out;
    for (const RuleRow& row : rows()) {
        const QJsonValue rate = at(row.path);
        if (row.group->group != RuleGroup::rate || row.field->key != QLatin1String("rate") || !rate.isDouble())
            continue;
        QStringList name = row.path;
        name.last() = QStringLiteral("label");
        const QString label = at(name).toString();
        const QRegularExpressionMatch named = figure.match(label);
        if (!named.hasMatch()) continue;
        const double percent = named.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
        if (std::fabs(percent - 100.0 * rate.toDouble()) > 1e-6)
            out << draft_words("%1 is named '%2', but its rate is %3 %")
                       .arg(row.group_name, label, value_words(*row.field, rate));
    }
    return out;
}

int RuleDraft::count_assumed() const {
    const std::vector<RuleRow> all = rows();
    return static_cast<int>(
        std::count_if(all.begin(), all.end(), [this](const RuleRow& row) { return is_assumed(row); }));
}

namespace {

// By which the same value is found in another version: items of lists by their own name where they have one.
QString name_of_row(const RuleDraft& draft, const RuleRow& row) {
    if (row.item < 0) return QStringLiteral("%1: %2").arg(row.group_name, row.field->label);
    const char* key = row.group->group == RuleGroup::service ? "id"
                      : row.group->group == RuleGroup::rate  ? "tax_class"
                                                             : nullptr;
    QStringList path = row.path;
    if (key != nullptr) path.last() = QString::fromLatin1(key);
    const QString item = key == nullptr ? QString() : draft.at(path).toString();
    return QStringLiteral("%1: %2").arg(
        item.isEmpty() ? row.group_name : QStringLiteral("%1 '%2'").arg(row.group->title, item), row.field->label);
}

struct NamedValues {
    QStringList order;
    QHash<QString, QString> values;
};

NamedValues named_values(const RuleDraft& draft) {
    NamedValues out;
    const auto add = [&out](const QString& name, const QString& value) {
        if (!out.values.contains(name)) out.order << name;
        out.values.insert(name, value);
    };
    add(draft_words("Assumed"), draft.assumed() ? draft_words("yes") : draft_words("no"));
    QStringList sources;
    for (const RuleRow& row : draft.rows()) {
        const QString name = name_of_row(draft, row);
        const QJsonValue value = draft.at(row.path);
        add(name, value.isUndefined() ? QString() : value_words(*row.field, value));
        const RuleSource source = RuleDraft::source_of(row);
        if (!source.own.isEmpty()) add(draft_words("Source of %1").arg(name), draft.at(source.own).toString());
        if (source.own.isEmpty() && !source.shared.isEmpty() &&
            !sources.contains(source.shared.join(QLatin1Char('/')))) {
            sources << source.shared.join(QLatin1Char('/'));
            add(draft_words("Source of %1").arg(name), draft.at(source.shared).toString());
        }
    }
    return out;
}

}  // namespace

std::vector<VersionChange> changes_between(const RuleDraft& before, const RuleDraft& after) {
    const NamedValues then = named_values(before);
    const NamedValues now = named_values(after);
    QStringList order = now.order;
    for (const QString& name : then.order)
        if (!now.values.contains(name)) order << name;
    std::vector<VersionChange> out;
    for (const QString& name : order) {
        if (then.values.value(name) != now.values.value(name) ||
            then.values.contains(name) != now.values.contains(name))
            out.push_back({name, then.values.value(name), now.values.value(name)});
    }
    return out;
}

}  // namespace wg::ui
