#pragma once
// An item between its text (docs/equipment-format.md) and the values of the form.

#include <QJsonObject>
#include <QString>
#include <optional>
#include <vector>

#include "core/quantity/result.h"
#include "core/store/equipment_book.h"
#include "ui/common/kept_version.h"

namespace wg::ui {

/// One item as it stands in a file, with the file's note. Values of the form may be wrong: the reader judges them.
struct ItemDraft {
    store::ItemKind kind = store::ItemKind::collector;
    QJsonObject item;
    QString note;
};

[[nodiscard]] QString name_of_draft(const ItemDraft& draft);
/// A file of this one item, fields in the order of the form.
[[nodiscard]] QByteArray text_of(const ItemDraft& draft);
/// A catalogue file of several.
[[nodiscard]] QByteArray text_of(const std::vector<ItemDraft>& drafts);
/// The items of a file, each by itself with the file's note. Refused: what catalogue_from_json refuses.
[[nodiscard]] Result<std::vector<ItemDraft>> drafts_of(const QByteArray& text, const std::string& file_name);

/// A value of an item by its path, "iso9806.a1"; undefined: left out.
[[nodiscard]] QJsonValue value_at(const QJsonObject& item, const QString& path);
void set_value_at(QJsonObject& item, const QString& path, const QJsonValue& value);
/// For people; "left out" when undefined.
[[nodiscard]] QString words_of_value(const QJsonValue& value);

/// Field by field, in the order of the form.
[[nodiscard]] std::vector<VersionChange> changes_between(const ItemDraft& before, const ItemDraft& after);

/// Problems by the field that they are about, "iso9806.a1"; an empty key: about the item as a whole. Each text says
/// what is wrong and what to do.
struct FieldProblem {
    QString key, text;
};
[[nodiscard]] std::vector<FieldProblem> by_field(store::ItemKind kind, const std::vector<Problem>& problems);

}  // namespace wg::ui
