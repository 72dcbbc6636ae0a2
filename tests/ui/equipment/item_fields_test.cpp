// The words of an item's fields and its text, against the reader of the format.

#include <gtest/gtest.h>

#include <QJsonDocument>
#include <functional>

#include "tests/ui/equipment/sample.h"
#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST(ItemFields, HaveEveryFieldThatTheFormatWrites) {
    for (const ItemDraft& draft : programs_items()) {
        for (const QString& path : paths_of(draft.item))
            EXPECT_NE(find_field(draft.kind, path), nullptr) << path.toStdString();
    }
    for (const ItemDraft& draft : {block_by_coefficients(), tested_collector()}) {
        ASSERT_EQ(problems_of(draft), "");
        const std::string again = catalogue_to_json(read(draft).value());
        for (const QString& path : paths_of(drafts_of(QByteArray::fromStdString(again), "x").value().front().item))
            EXPECT_NE(find_field(draft.kind, path), nullptr) << path.toStdString();
    }
}

TEST(ItemFields, RangesAndNeedsAreThoseOfTheReader) {
    const ItemDraft samples[] = {first_of(ItemKind::collector), tested_collector(),
                                 first_of(ItemKind::block),     block_by_coefficients(),
                                 first_of(ItemKind::cylinder),  first_of(ItemKind::fixing_method)};
    int looked_at = 0;
    for (const ItemDraft& sample : samples) {
        ASSERT_EQ(problems_of(sample), "");
        for (const FieldGroup& group : fields_of(sample.kind)) {
            for (const ItemField& field : group.fields) {
                const bool inner = field.key.contains('.');
                if (inner && !sample.item.contains(object_key_of(sample.kind))) continue;
                if (group.form == DataForm::curves && sample.item.contains(object_key_of(sample.kind))) continue;
                const std::string name = field.key.toStdString();
                const auto with = [&](const QJsonValue& value) {
                    ItemDraft draft = sample;
                    // Only one of the two may stand.
                    if (name == "compressor.suction_gas_c" && !value.isUndefined())
                        set_value_at(draft.item, "compressor.suction_superheat_k", QJsonValue(QJsonValue::Undefined));
                    set_value_at(draft.item, field.key, value);
                    return by_field(draft.kind, read(draft) ? std::vector<Problem>() : read(draft).problems());
                };
                const auto refused = [&](const QJsonValue& value, const char* words) {
                    for (const FieldProblem& problem : with(value)) {
                        if (problem.key == field.key && problem.text.contains(QLatin1String(words))) return true;
                    }
                    return false;
                };
                if (field.required)
                    EXPECT_TRUE(refused(QJsonValue(QJsonValue::Undefined), "Still to be filled in")) << name;
                if (!field.required && value_at(sample.item, field.key).isUndefined())
                    EXPECT_TRUE(with(QJsonValue(QJsonValue::Undefined)).empty()) << name;
                if (field.kind != FieldKind::number && field.kind != FieldKind::whole) continue;
                ++looked_at;
                const double step = field.kind == FieldKind::whole ? 1.0 : 1e-6 * (field.most - field.least);
                EXPECT_TRUE(refused(field.least - step, "allowed")) << name << " below";
                EXPECT_TRUE(refused(field.most + step, "allowed")) << name << " above";
                EXPECT_FALSE(refused(field.least, "allowed")) << name << " at its least";
                EXPECT_FALSE(refused(field.most, "allowed")) << name << " at its most";
            }
        }
    }
    EXPECT_GT(looked_at, 100);
}

TEST(ItemFields, ChoicesAreThoseOfTheReader) {
    for (const ItemKind kind : kinds) {
        for (const FieldGroup& group : fields_of(kind)) {
            for (const ItemField& field : group.fields) {
                for (const FieldChoice& choice : field.choices) {
                    ItemDraft draft = first_of(kind);
                    const bool many = field.kind == FieldKind::words;
                    set_value_at(draft.item, field.key,
                                 many ? QJsonValue(QJsonArray{choice.key}) : QJsonValue(choice.key));
                    for (const FieldProblem& problem :
                         by_field(kind, read(draft) ? std::vector<Problem>() : read(draft).problems()))
                        EXPECT_NE(problem.key, field.key) << problem.text.toStdString();
                }
            }
        }
    }
}

TEST(ItemText, ComesBackFromItsTextAndIsTheSameItem) {
    for (const ItemDraft& draft : programs_items()) {
        const auto again = drafts_of(text_of(draft), "again");
        ASSERT_TRUE(again.ok()) << wg::text_of(again.problems());
        EXPECT_EQ(text_of(again.value().front()), text_of(draft));
        EXPECT_TRUE(changes_between(draft, again.value().front()).empty());
    }
    const Catalogue whole = catalogue_from_json(text_of(programs_items()).toStdString(), "all").value();
    EXPECT_EQ(whole.collectors, program().catalogue.collectors);
    EXPECT_EQ(whole.blocks, program().catalogue.blocks);
    EXPECT_EQ(whole.cylinders, program().catalogue.cylinders);
    EXPECT_EQ(whole.fixing_methods, program().catalogue.fixing_methods);
}

TEST(ItemText, WhatTheFormDoesNotKnowIsLeftForTheReaderToRefuse) {
    ItemDraft draft = first_of(ItemKind::cylinder);
    draft.item.insert("colour", "blue");
    EXPECT_NE(problems_of(draft).find("colour"), std::string::npos);
    ItemDraft block = block_by_coefficients();
    QJsonObject data = block.item.value("compressor").toObject();
    data.insert("colour", "blue");
    block.item.insert("compressor", data);
    EXPECT_NE(problems_of(block).find("colour"), std::string::npos);
}

TEST(ItemText, ChangesAreToldFieldByField) {
    const ItemDraft before = tested_collector();
    ItemDraft after = before;
    set_value_at(after.item, "iso9806.a1", 25.5);
    set_value_at(after.item, "mass_kg", 11);
    after.item.remove("channel_drop_k");
    after.note = "Sheet of May";
    const auto changes = changes_between(before, after);
    ASSERT_GE(changes.size(), 3U);
    EXPECT_EQ(changes.front().where.toStdString(), "Mass, empty, kg");
    EXPECT_EQ(changes.front().after.toStdString(), "11");
    bool test = false;
    for (const VersionChange& change : changes)
        test = test || (change.where.startsWith("Loss at 3 m/s") && change.before == "24" && change.after == "25.5");
    EXPECT_TRUE(test);
    EXPECT_EQ(changes.back().after, "Sheet of May");
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
