#pragma once
// Items of the program and invented ones, and the page of equipment with an empty store.

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonObject>
#include <memory>
#include <stdexcept>

#include "core/equipment/codec.h"
#include "tests/tools/load_reference.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/field_box.h"
#include "ui/equipment/item_form.h"
#include "ui/equipment/item_text.h"

namespace wg::ui {
namespace equipment_test {

using store::ItemKind;

inline constexpr ItemKind kinds[] = {ItemKind::collector, ItemKind::block, ItemKind::cylinder, ItemKind::fixing_method};

inline Instant at(int minute) {
    return {instant_from_iso8601("2027-06-21T12:00:00Z").value().unix_s + 60 * minute};
}

inline const plan::Reference& program() {
    static const plan::Reference reference = test::reference();
    return reference;
}

inline std::vector<ItemDraft> programs_items() {
    return drafts_of(QByteArray::fromStdString(catalogue_to_json(program().catalogue)), "program").value();
}

inline ItemDraft first_of(ItemKind kind) {
    for (const ItemDraft& draft : programs_items()) {
        if (draft.kind == kind) return draft;
    }
    throw std::runtime_error("none of that kind");
}

/// Ten coefficients of the smallest sense, invented: capacity rises with s, power with d.
inline ItemDraft block_by_coefficients() {
    ItemDraft draft = first_of(ItemKind::block);
    for (const char* key : {"displacement_cm3", "speed_rpm", "volumetric_at_unity", "volumetric_slope", "overall_peak",
                            "overall_peak_at", "overall_curvature"})
        draft.item.remove(QLatin1String(key));
    const QJsonArray capacity{2600.0, 90.0, -14.0, 0.9, -0.4, 0, 0, 0, 0, 0};
    const QJsonArray power{350.0, 1.0, 7.0, 0, 0, 0, 0, 0, 0, 0};
    draft.item.insert("compressor", QJsonObject{{"capacity_w", capacity},
                                                {"power_w", power},
                                                {"suction_superheat_k", 10},
                                                {"subcooling_k", 0},
                                                {"evaporating_min_c", -15},
                                                {"evaporating_max_c", 15},
                                                {"condensing_min_c", 30},
                                                {"condensing_max_c", 65}});
    return draft;
}

inline ItemDraft tested_collector() {
    ItemDraft draft = first_of(ItemKind::collector);
    draft.item.insert("iso9806", QJsonObject{{"eta0_b", 0.75}, {"a1", 24}, {"a3", 3}, {"a4", 0.8}});
    return draft;
}

inline Result<Catalogue> read(const ItemDraft& draft) {
    const QByteArray text = text_of(draft);
    return catalogue_from_json(std::string_view(text.constData(), static_cast<std::size_t>(text.size())), "item");
}

inline std::string problems_of(const ItemDraft& draft) {
    const Result<Catalogue> result = read(draft);
    return result ? std::string() : wg::text_of(result.problems());
}

/// All paths of an item, those of its objects too.
inline QStringList paths_of(const QJsonObject& item) {
    QStringList out;
    for (auto it = item.begin(); it != item.end(); ++it) {
        if (!it.value().isObject()) {
            out << it.key();
            continue;
        }
        for (const QString& inner : it.value().toObject().keys())
            out << it.key() + '.' + inner;
    }
    return out;
}

class EquipmentPageTest : public ::testing::Test {
   protected:
    EquipmentPageTest() {
        QObject::connect(&page, &EquipmentPage::problem, [this](const QString& text) { told += text; });
    }
    QString key_of(const char* id) { return QString::fromLatin1(id); }
    QString some_program_id(ItemKind kind) { return first_of(kind).item.value("id").toString(); }
    /// A saved item of the firm made from one of the program's.
    void save_own(ItemKind kind, const char* id, int minute) {
        page.select(some_program_id(kind));
        page.begin_from_this();
        page.form()->box("id")->type(QString::fromLatin1(id));
        ASSERT_TRUE(page.save(at(minute))) << page.state_words().toStdString();
    }
    std::vector<store::EquipmentVersion> kept() { return store::EquipmentBook(*store).current().value().items; }

    std::unique_ptr<store::Store> store = store::Store::open(":memory:", Instant{0}, "Ada on desk-2").value();
    std::shared_ptr<const plan::Reference> reference = std::make_shared<const plan::Reference>(program());
    QString told;
    EquipmentPage page{*store, reference};
};

}  // namespace equipment_test
}  // namespace wg::ui
