#pragma once
// Every field of an equipment item with the words and the range that stand beside it on screen. What is right is
// decided by the reader of the format (core/equipment/codec.h); tests hold these ranges to it.

#include <QString>
#include <QStringList>
#include <vector>

#include "core/store/equipment_book.h"

namespace wg::ui {

enum class FieldKind {
    text,
    number,
    whole,
    flag,
    choice,
    words,   ///< several of the choices
    ids,     ///< free words, apart by spaces or commas
    point,   ///< two numbers
    points,  ///< two numbers a line
    ten,     ///< ten numbers
};

struct FieldChoice {
    QString key, words;
};

struct ItemField {
    QString key;  ///< as in the file; fields of an object after a point: "iso9806.a1"
    FieldKind kind = FieldKind::number;
    QString label, unit;
    double least = 0.0, most = 0.0;  ///< of numbers
    bool required = true;
    QString line;  ///< what it means, and what leaving it out does
    std::vector<FieldChoice> choices;
    [[nodiscard]] bool wide() const { return kind == FieldKind::ten || kind == FieldKind::words; }
};

/// Which way of stating the performance a group belongs to.
enum class DataForm {
    always,
    curves,        ///< of a block: displacement and efficiencies
    coefficients,  ///< of a block: ten coefficients
    tested,        ///< of a collector: ISO 9806
};

struct FieldGroup {
    QString title;
    DataForm form = DataForm::always;
    std::vector<ItemField> fields;
    bool chosen_here = false;  ///< which way the performance is stated is chosen above it
};

/// In the order of the form, which is the order in the file.
[[nodiscard]] const std::vector<FieldGroup>& fields_of(store::ItemKind kind);
/// Null: no such field.
[[nodiscard]] const ItemField* find_field(store::ItemKind kind, const QString& key);
[[nodiscard]] QString words_of(store::ItemKind kind);        ///< "Collector"
[[nodiscard]] QString short_words_of(store::ItemKind kind);  ///< for a narrow column
[[nodiscard]] QString list_key_of(store::ItemKind kind);     ///< "collectors"
[[nodiscard]] QString object_key_of(store::ItemKind kind);   ///< "iso9806", "compressor"; empty: none

// The groups of each kind (item_fields_*.cpp).
[[nodiscard]] std::vector<FieldGroup> collector_fields();
[[nodiscard]] std::vector<FieldGroup> block_fields();
[[nodiscard]] std::vector<FieldGroup> cylinder_fields();
[[nodiscard]] std::vector<FieldGroup> fixing_method_fields();

// For those files.
[[nodiscard]] ItemField number_field(const char* key, const QString& label, const QString& unit, double least,
                                     double most, const QString& line = {});
[[nodiscard]] ItemField whole_field(const char* key, const QString& label, double least, double most,
                                    const QString& line = {});
[[nodiscard]] ItemField plain_field(const char* key, FieldKind kind, const QString& label, const QString& line = {});
[[nodiscard]] ItemField choice_field(const char* key, const QString& label, std::vector<FieldChoice> choices,
                                     const QString& line = {});
[[nodiscard]] ItemField optional(ItemField field);
/// Id, maker, name and invented.
[[nodiscard]] std::vector<ItemField> naming_fields(bool with_maker);

}  // namespace wg::ui
