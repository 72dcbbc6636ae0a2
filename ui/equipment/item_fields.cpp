#include "ui/equipment/item_fields.h"

#include <QCoreApplication>

namespace wg::ui {
namespace {

QString field_tr(const char* text) {
    return QCoreApplication::translate("ItemFields", text);
}

}  // namespace

ItemField number_field(const char* key, const QString& label, const QString& unit, double least, double most,
                       const QString& line) {
    ItemField out;
    out.key = QLatin1String(key);
    out.label = label;
    out.unit = unit;
    out.least = least;
    out.most = most;
    out.line = line;
    return out;
}

ItemField whole_field(const char* key, const QString& label, double least, double most, const QString& line) {
    ItemField out = number_field(key, label, {}, least, most, line);
    out.kind = FieldKind::whole;
    return out;
}

ItemField plain_field(const char* key, FieldKind kind, const QString& label, const QString& line) {
    ItemField out;
    out.key = QLatin1String(key);
    out.kind = kind;
    out.label = label;
    out.line = line;
    return out;
}

ItemField choice_field(const char* key, const QString& label, std::vector<FieldChoice> choices, const QString& line) {
    ItemField out = plain_field(key, FieldKind::choice, label, line);
    out.choices = std::move(choices);
    return out;
}

ItemField optional(ItemField field) {
    field.required = false;
    return field;
}

std::vector<ItemField> naming_fields(bool with_maker) {
    std::vector<ItemField> out = {
        plain_field("id", FieldKind::text, field_tr("Id"),
                    field_tr("Jobs and price lists name the item by it; it stays as it is once saved"))};
    if (with_maker) {
        out.push_back(plain_field("maker", FieldKind::text, field_tr("Maker")));
        out.push_back(plain_field("name", FieldKind::text, field_tr("Name")));
    } else {
        out.push_back(plain_field("label", FieldKind::text, field_tr("Name")));
    }
    out.push_back(optional(plain_field("invented", FieldKind::flag, field_tr("Invented"),
                                       field_tr("Marks demonstration data: every paper then says so"))));
    return out;
}

const std::vector<FieldGroup>& fields_of(store::ItemKind kind) {
    static const std::vector<FieldGroup> collectors = collector_fields();
    static const std::vector<FieldGroup> blocks = block_fields();
    static const std::vector<FieldGroup> cylinders = cylinder_fields();
    static const std::vector<FieldGroup> methods = fixing_method_fields();
    switch (kind) {
        case store::ItemKind::collector: return collectors;
        case store::ItemKind::block: return blocks;
        case store::ItemKind::cylinder: return cylinders;
        case store::ItemKind::fixing_method: break;
    }
    return methods;
}

const ItemField* find_field(store::ItemKind kind, const QString& key) {
    for (const FieldGroup& group : fields_of(kind)) {
        for (const ItemField& field : group.fields) {
            if (field.key == key) return &field;
        }
    }
    return nullptr;
}

QString words_of(store::ItemKind kind) {
    switch (kind) {
        case store::ItemKind::collector: return field_tr("Collector");
        case store::ItemKind::block: return field_tr("Heat-pump block");
        case store::ItemKind::cylinder: return field_tr("Cylinder");
        case store::ItemKind::fixing_method: break;
    }
    return field_tr("Fixing method");
}

QString short_words_of(store::ItemKind kind) {
    if (kind == store::ItemKind::block) return field_tr("Block");
    return kind == store::ItemKind::fixing_method ? field_tr("Fixing") : words_of(kind);
}

QString list_key_of(store::ItemKind kind) {
    return QLatin1String(store::key_of(kind)) + QLatin1Char('s');
}

QString object_key_of(store::ItemKind kind) {
    if (kind == store::ItemKind::collector) return QStringLiteral("iso9806");
    return kind == store::ItemKind::block ? QStringLiteral("compressor") : QString();
}

}  // namespace wg::ui
