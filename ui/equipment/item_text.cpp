#include "ui/equipment/item_text.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>

#include "core/equipment/codec.h"
#include "ui/common/format.h"
#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace {

constexpr store::ItemKind all_kinds[] = {store::ItemKind::collector, store::ItemKind::block, store::ItemKind::cylinder,
                                         store::ItemKind::fixing_method};

QByteArray json_of(const QJsonValue& value) {
    const QByteArray wrapped = QJsonDocument(QJsonArray{value}).toJson(QJsonDocument::Compact);
    return wrapped.mid(1, wrapped.size() - 2);
}

void add_line(QByteArray& out, const QString& key, const QByteArray& value, int indent) {
    if (!out.endsWith('{')) out += ',';
    out += '\n' + QByteArray(indent, ' ') + json_of(key) + ": " + value;
}

// The item's fields in the order of the form, an object in the place of its first field; what the form does not know
// comes last, since the reader has to see it.
QByteArray item_json(const ItemDraft& draft) {
    QByteArray out("{");
    const QString object_key = object_key_of(draft.kind);
    QStringList written;
    for (const FieldGroup& group : fields_of(draft.kind)) {
        for (const ItemField& field : group.fields) {
            const bool inner = field.key.contains(QLatin1Char('.'));
            const QString key = inner ? object_key : field.key;
            if (written.contains(key) || draft.item.value(key).isUndefined()) continue;
            written << key;
            if (!inner || !draft.item.value(key).isObject()) {
                add_line(out, key, json_of(draft.item.value(key)), 6);
                continue;
            }
            QByteArray object("{");
            QJsonObject left = draft.item.value(key).toObject();
            for (const FieldGroup& other : fields_of(draft.kind)) {
                for (const ItemField& f : other.fields) {
                    if (!f.key.startsWith(object_key + QLatin1Char('.'))) continue;
                    const QString inner_key = f.key.mid(object_key.size() + 1);
                    const QJsonValue value = left.take(inner_key);
                    if (!value.isUndefined()) add_line(object, inner_key, json_of(value), 8);
                }
            }
            for (auto it = left.begin(); it != left.end(); ++it)
                add_line(object, it.key(), json_of(it.value()), 8);
            add_line(out, key, object + '}', 6);
        }
    }
    for (auto it = draft.item.begin(); it != draft.item.end(); ++it) {
        if (!written.contains(it.key())) add_line(out, it.key(), json_of(it.value()), 6);
    }
    return out + '}';
}

/// The reader names other fields as they stand in a file; on screen they have names.
QString with_labels(store::ItemKind kind, QString text) {
    for (const FieldGroup& group : fields_of(kind)) {
        for (const ItemField& field : group.fields) {
            const QString key = field.key.section(QLatin1Char('.'), -1);
            if (!key.contains(QLatin1Char('_')) || !text.contains(key)) continue;
            const QRegularExpression word(QStringLiteral("\\b%1\\b").arg(key));
            text.replace(word, QStringLiteral("\u2018%1\u2019").arg(field.label));
        }
    }
    return text;
}

}  // namespace

QString name_of_draft(const ItemDraft& draft) {
    const char* key = draft.kind == store::ItemKind::fixing_method ? "label" : "name";
    return draft.item.value(QLatin1String(key)).toString();
}

QByteArray text_of(const std::vector<ItemDraft>& drafts) {
    QByteArray out("{\n  \"schema\": 1");
    QString note;
    for (const ItemDraft& draft : drafts) {
        if (note.isEmpty()) note = draft.note;
    }
    if (!note.isEmpty()) out += ",\n  \"note\": " + json_of(note);
    for (const store::ItemKind kind : all_kinds) {
        QByteArray list;
        for (const ItemDraft& draft : drafts) {
            if (draft.kind == kind) list += (list.isEmpty() ? "\n    " : ",\n    ") + item_json(draft);
        }
        if (!list.isEmpty()) out += ",\n  " + json_of(list_key_of(kind)) + ": [" + list + "\n  ]";
    }
    return out + "\n}\n";
}

QByteArray text_of(const ItemDraft& draft) {
    return text_of(std::vector<ItemDraft>{draft});
}

Result<std::vector<ItemDraft>> drafts_of(const QByteArray& text, const std::string& file_name) {
    const Result<Catalogue> read =
        catalogue_from_json(std::string_view(text.constData(), static_cast<std::size_t>(text.size())), file_name);
    if (!read) return read.problems();
    QJsonParseError error;
    const QJsonObject file = QJsonDocument::fromJson(text, &error).object();
    if (error.error != QJsonParseError::NoError)
        return Problem{file_name, error.errorString().toStdString(), "Save the file as UTF-8 JSON without a mark"};
    std::vector<ItemDraft> out;
    for (const store::ItemKind kind : all_kinds) {
        for (const QJsonValue item : file.value(list_key_of(kind)).toArray())
            out.push_back({kind, item.toObject(), file.value(QLatin1String("note")).toString()});
    }
    return out;
}

QJsonValue value_at(const QJsonObject& item, const QString& path) {
    const qsizetype dot = path.indexOf(QLatin1Char('.'));
    if (dot < 0) return item.value(path);
    return item.value(path.left(dot)).toObject().value(path.mid(dot + 1));
}

void set_value_at(QJsonObject& item, const QString& path, const QJsonValue& value) {
    const qsizetype dot = path.indexOf(QLatin1Char('.'));
    const auto put = [&value](QJsonObject& object, const QString& key) {
        if (value.isUndefined()) {
            object.remove(key);
        } else {
            object.insert(key, value);
        }
    };
    if (dot < 0) {
        put(item, path);
        return;
    }
    QJsonObject inner = item.value(path.left(dot)).toObject();
    put(inner, path.mid(dot + 1));
    item.insert(path.left(dot), inner);
}

QString words_of_value(const QJsonValue& value) {
    switch (value.type()) {
        case QJsonValue::Undefined: return QCoreApplication::translate("ItemFields", "left out");
        case QJsonValue::Bool:
            return value.toBool() ? QCoreApplication::translate("ItemFields", "yes")
                                  : QCoreApplication::translate("ItemFields", "no");
        case QJsonValue::String: return value.toString();
        default: return QString::fromUtf8(json_of(value));
    }
}

std::vector<VersionChange> changes_between(const ItemDraft& before, const ItemDraft& after) {
    std::vector<VersionChange> out;
    const auto compare = [&out](const QString& name, const QJsonValue& one, const QJsonValue& other) {
        if (words_of_value(one) != words_of_value(other))
            out.push_back({name, words_of_value(one), words_of_value(other)});
    };
    for (const FieldGroup& group : fields_of(after.kind)) {
        for (const ItemField& field : group.fields) {
            const QString name =
                field.unit.isEmpty() ? field.label : QStringLiteral("%1, %2").arg(field.label, field.unit);
            compare(name, value_at(before.item, field.key), value_at(after.item, field.key));
        }
    }
    if (before.note != after.note)
        out.push_back({QCoreApplication::translate("ItemFields", "Note"), before.note, after.note});
    return out;
}

std::vector<FieldProblem> by_field(store::ItemKind kind, const std::vector<Problem>& problems) {
    std::vector<FieldProblem> out;
    out.reserve(problems.size());
    for (const Problem& problem : problems) {
        const QString where = qs(problem.where);
        QString key;
        for (const FieldGroup& group : fields_of(kind)) {
            for (const ItemField& field : group.fields) {
                // The place ends in the field, after the item's name in quotes or its number in brackets.
                if (where.endsWith(QStringLiteral("\".") + field.key) ||
                    where.endsWith(QStringLiteral("].") + field.key))
                    key = field.key;
            }
        }
        QString text = with_labels(kind, QStringLiteral("%1. %2").arg(qs(problem.what), qs(problem.remedy)));
        if (key.isEmpty()) {
            text.prepend(where + QStringLiteral(": "));
        } else if (problem.what == "is missing") {
            text = QCoreApplication::translate("ItemFields", "Still to be filled in");
        } else {
            text.prepend(QStringLiteral("\u2018%1\u2019 ").arg(find_field(kind, key)->label));
        }
        out.push_back({key, text});
    }
    return out;
}

}  // namespace wg::ui
