// The catalogue of equipment on the desk, against the reader of the format and a store.

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <functional>

#include "core/equipment/codec.h"
#include "core/heatpump/cycle.h"
#include "core/store/database.h"
#include "core/store/entries_kept.h"
#include "tests/tools/load_reference.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/field_box.h"
#include "ui/equipment/item_fields.h"
#include "ui/equipment/item_form.h"
#include "ui/equipment/item_history.h"
#include "ui/equipment/item_list.h"
#include "ui/equipment/item_plot.h"

namespace wg::ui {
namespace equipment_test {
namespace {

using store::ItemKind;

constexpr ItemKind kinds[] = {ItemKind::collector, ItemKind::block, ItemKind::cylinder, ItemKind::fixing_method};

Instant at(int minute) {
    return {instant_from_iso8601("2027-06-21T12:00:00Z").value().unix_s + 60 * minute};
}

const plan::Reference& program() {
    static const plan::Reference reference = test::reference();
    return reference;
}

std::vector<ItemDraft> programs_items() {
    return drafts_of(QByteArray::fromStdString(catalogue_to_json(program().catalogue)), "program").value();
}

ItemDraft first_of(ItemKind kind) {
    for (const ItemDraft& draft : programs_items()) {
        if (draft.kind == kind) return draft;
    }
    throw std::runtime_error("none of that kind");
}

/// Ten coefficients of the smallest sense, invented: capacity rises with s, power with d.
ItemDraft block_by_coefficients() {
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

ItemDraft tested_collector() {
    ItemDraft draft = first_of(ItemKind::collector);
    draft.item.insert("iso9806", QJsonObject{{"eta0_b", 0.75}, {"a1", 24}, {"a3", 3}, {"a4", 0.8}});
    return draft;
}

Result<Catalogue> read(const ItemDraft& draft) {
    const QByteArray text = text_of(draft);
    return catalogue_from_json(std::string_view(text.constData(), static_cast<std::size_t>(text.size())), "item");
}

std::string problems_of(const ItemDraft& draft) {
    const Result<Catalogue> result = read(draft);
    return result ? std::string() : wg::text_of(result.problems());
}

/// All paths of an item, those of its objects too.
QStringList paths_of(const QJsonObject& item) {
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

// ---------------------------------------------------------------------------------------------- fields and texts

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
    EXPECT_EQ(changes.front().field.toStdString(), "Mass, empty, kg");
    EXPECT_EQ(changes.front().after.toStdString(), "11");
    bool test = false;
    for (const FieldChange& change : changes)
        test = test || (change.field.startsWith("Loss at 3 m/s") && change.before == "24" && change.after == "25.5");
    EXPECT_TRUE(test);
    EXPECT_EQ(changes.back().after, "Sheet of May");
}

// ---------------------------------------------------------------------------------------------- form

TEST(ItemForm, GivesBackEveryItemAsItWasShown) {
    ItemForm form;
    std::vector<ItemDraft> all = programs_items();
    all.push_back(block_by_coefficients());
    all.push_back(tested_collector());
    for (const ItemDraft& draft : all) {
        form.show_item(draft, false, true);
        EXPECT_EQ(text_of(form.draft()).toStdString(), text_of(draft).toStdString());
    }
}

TEST(ItemForm, ATextWhereANumberBelongsIsRefusedByTheReaderBesideItsField) {
    ItemForm form;
    form.show_item(first_of(ItemKind::cylinder), false, true);
    QSignalSpy changed(&form, &ItemForm::changed);
    form.box("volume_l")->type("a lot");
    form.box("height_m")->type("1,65");
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(form.draft().item.value("height_m").toDouble(), 1.65) << "a decimal comma is understood";
    const auto result = read(form.draft());
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(form.show_problems(by_field(ItemKind::cylinder, result.problems())).isEmpty());
    EXPECT_TRUE(form.box("volume_l")->problem().contains("number")) << form.box("volume_l")->problem().toStdString();
    EXPECT_EQ(form.box("height_m")->problem(), "");
    form.show_item(first_of(ItemKind::collector), false, true);
    form.box("width_m")->type("2.9");
    form.show_problems(by_field(ItemKind::collector, read(form.draft()).problems()));
    EXPECT_TRUE(form.box("width_m")->problem().startsWith("\u2018Short side\u2019 is 2.9, above \u2018Long side\u2019"))
        << form.box("width_m")->problem().toStdString() << " names the other field as the screen does";
}

TEST(ItemForm, ALineOfADataSheetIsPastedAndTwoLinesFillBoth) {
    ItemForm form;
    form.show_item(first_of(ItemKind::block), false, true);
    form.data_form()->setCurrentIndex(1);
    Q_EMIT form.data_form()->activated(1);
    EXPECT_TRUE(form.draft().item.value("compressor").isObject());
    EXPECT_FALSE(form.draft().item.contains("displacement_cm3")) << "the other form is left out, not lost";
    form.box("compressor.capacity_w")->type("2600 90 -14 0.9 -0.4 0 0 0 0 0\n250\t1\t5.5\t0\t0\t0\t0\t0\t0\t0");
    const QJsonObject data = form.draft().item.value("compressor").toObject();
    EXPECT_EQ(data.value("capacity_w").toArray().size(), 10);
    EXPECT_EQ(data.value("power_w").toArray().at(2).toDouble(), 5.5);
    // By hand, a letter at a time: parted only when the field is left.
    QLineEdit* edit = form.box("compressor.mass_flow_kg_h")->findChild<QLineEdit*>();
    QTest::keyClicks(edit, "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20");
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("mass_flow_kg_h").toArray().size(), 20);
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("mass_flow_kg_h").toArray().size(), 10);
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("power_w").toArray().at(9).toDouble(), 20.0);
    form.box("compressor.power_w")->type("1 2 3");
    form.show_problems(by_field(ItemKind::block, read(form.draft()).problems()));
    EXPECT_TRUE(form.box("compressor.power_w")->problem().contains("10"))
        << form.box("compressor.power_w")->problem().toStdString();
    form.data_form()->setCurrentIndex(0);
    Q_EMIT form.data_form()->activated(0);
    EXPECT_EQ(problems_of(form.draft()), "") << "the efficiencies are still there";
}

// ---------------------------------------------------------------------------------------------- page

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

TEST_F(EquipmentPageTest, ItemsOfTheProgramAreSearchedAndCannotBeChanged) {
    const int all = page.list()->table()->rowCount();
    EXPECT_EQ(all, static_cast<int>(programs_items().size()));
    page.list()->kind()->setCurrentIndex(2);
    Q_EMIT page.list()->kind()->activated(2);
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(program().catalogue.blocks.size()));
    EXPECT_TRUE(page.plot()->has_picture()) << page.plot()->words().toStdString();
    page.list()->search()->setText("no such thing");
    EXPECT_EQ(page.list()->table()->rowCount(), 0);
    EXPECT_EQ(page.state_words(), "No item is chosen.");
    page.list()->kind()->setCurrentIndex(0);
    page.list()->search()->setText(QString::fromStdString(program().catalogue.collectors.front().name));
    EXPECT_GE(page.list()->table()->rowCount(), 1);
    EXPECT_LT(page.list()->table()->rowCount(), all);
    EXPECT_FALSE(page.can_save());
    EXPECT_TRUE(page.plot()->has_picture());
    EXPECT_EQ(told, "");
}

TEST_F(EquipmentPageTest, ANewItemIsMadeFromOneCorrectedAndSavedInVersions) {
    QSignalSpy changed(&page, &EquipmentPage::items_changed);
    page.select(some_program_id(ItemKind::cylinder));
    page.begin_from_this();
    EXPECT_TRUE(page.state_words().contains("not saved")) << page.state_words().toStdString();
    page.form()->box("id")->type(some_program_id(ItemKind::block));
    page.judge();
    EXPECT_FALSE(page.can_save());
    EXPECT_TRUE(page.form()->box("id")->problem().contains("another item")) << "an id of the program's is refused";
    EXPECT_FALSE(page.save(at(1)));
    page.form()->box("id")->type("own-cylinder");
    page.form()->box("volume_l")->type("9");
    page.judge();
    EXPECT_FALSE(page.can_save());
    page.form()->box("volume_l")->type("210");
    ASSERT_TRUE(page.save(at(2))) << page.state_words().toStdString();
    EXPECT_EQ(changed.count(), 1);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(page.list()->selected(), "own-cylinder");
    page.form()->box("mass_kg")->type("70");
    page.judge();
    EXPECT_TRUE(page.can_save());
    ASSERT_TRUE(page.approve("Ada Reed", at(3)) == false) << "not while something is unsaved";
    ASSERT_TRUE(page.save(at(4)));
    EXPECT_EQ(kept().front().version, 2);
    ASSERT_TRUE(page.approve("Ada Reed", at(5)));
    EXPECT_TRUE(page.state_words().contains("Approved by Ada Reed"));
    ASSERT_TRUE(page.set_withdrawn(true, at(6)));
    EXPECT_TRUE(kept().front().withdrawn);
    ASSERT_TRUE(page.set_withdrawn(false, at(7)));
    EXPECT_EQ(kept().front().version, 4);
    EXPECT_EQ(told, "");
}

TEST_F(EquipmentPageTest, EntriesStayWhenAnotherItemIsLookedAtAndAreDroppedOnlyOnRequest) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.select(some_program_id(ItemKind::block));
    page.reload();
    page.select("own-cylinder");
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    page.begin_new(ItemKind::fixing_method);
    page.form()->box("label")->type("Half a method");
    page.select("own-cylinder");
    page.drop_entries();
    EXPECT_NE(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    EXPECT_EQ(kept().front().version, 1);
    page.select(
        "new\x01"
        "000002");
    EXPECT_EQ(page.form()->draft().item.value("label").toString(), "Half a method");
    page.drop_entries();
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(programs_items().size()) + 1);
}

TEST_F(EquipmentPageTest, ASaveThatAnotherMachineOvertookIsToldAndNothingIsLost) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(2)).ok());
    EXPECT_FALSE(page.save(at(3)));
    EXPECT_TRUE(told.contains("version 2")) << told.toStdString();
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    page.reload();
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0) << "the entry stays";
    EXPECT_TRUE(page.save(at(4)));
    EXPECT_EQ(kept().front().version, 3);
}

TEST_F(EquipmentPageTest, AfterASaveThatFailedOtherwiseAVersionOfSomebodyElseIsNotOvertakenUnseen) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    // The store takes nothing for a while.
    ASSERT_FALSE(
        store->database().run("CREATE TEMP TRIGGER away BEFORE INSERT ON main.equipment_version "
                              "BEGIN SELECT RAISE(ABORT, 'away'); END"));
    EXPECT_FALSE(page.save(at(2)));
    ASSERT_FALSE(store->database().run("DROP TRIGGER away"));
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(3)).ok());
    page.reload();
    told.clear();
    EXPECT_FALSE(page.save(at(4))) << "not unseen";
    EXPECT_TRUE(told.contains("version 2")) << told.toStdString();
    EXPECT_EQ(kept().front().version, 2);
    EXPECT_TRUE(page.history()->isVisibleTo(&page)) << "the newer version is shown";
    ASSERT_EQ(page.history()->versions()->rowCount(), 2);
    EXPECT_EQ(page.history()->versions()->item(0, 0)->text(), "2");
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0) << "the entry stays";
    ASSERT_TRUE(page.save(at(5))) << told.toStdString();
    EXPECT_EQ(kept().front().version, 3);
}

TEST_F(EquipmentPageTest, EntriesThatWereNotSavedComeBackAtTheNextStart) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.begin_new(ItemKind::fixing_method);
    page.form()->box("label")->type("Half a method");
    const auto entries = [this] { return store::EntriesKept(*store).all(store::EntryBook::equipment).value().entries; };
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return entries().size() == 2 && entries()[1].content.find("71") != std::string::npos; }, 5000))
        << "without being asked";
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries()[0].content.find("Half") != std::string::npos; }, 5000));
    // The program is killed; the next one opens the same store.
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::said, [&](const QString& text) { said += text; });
    EXPECT_EQ(next.unsaved(), 2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("are back: 2")) << said.toStdString();
    next.select("own-cylinder");
    EXPECT_EQ(next.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    ASSERT_TRUE(next.save(at(5)));
    EXPECT_EQ(entries().size(), 1U) << "what is saved is not kept any more";
    next.begin_new(ItemKind::block);
    EXPECT_EQ(next.unsaved(), 2) << "beside the one that came back";
    next.drop_entries();
    next.forget_entries();
    EXPECT_TRUE(entries().empty());
    EXPECT_EQ(EquipmentPage(*store, reference).unsaved(), 0);
}

TEST_F(EquipmentPageTest, EntriesThatCameBackDoNotOverwriteWhatSomebodySavedSince) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.keep_entries();
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(2)).ok());
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::problem, [&](const QString& text) { said += text; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("saved by somebody since, as version 2")) << said.toStdString();
    next.select("own-cylinder");
    EXPECT_FALSE(next.save(at(3))) << "not unseen";
    EXPECT_EQ(next.form()->draft().item.value("mass_kg").toDouble(), 71.0);
}

TEST_F(EquipmentPageTest, KeptEntriesThatAreDamagedOrNoneAreToldAndHinderNothing) {
    store::EntriesKept book(*store);
    ASSERT_TRUE(book.keep(store::EntryBook::equipment, {"x", 0, "", "no json"}, at(1)).ok());
    ASSERT_TRUE(book.keep(store::EntryBook::equipment, {"y", 0, "", "{\"kind\":\"boat\",\"item\":{}}"}, at(1)).ok());
    ASSERT_TRUE(
        book.keep(store::EntryBook::equipment, {"z", 7, "", "{\"kind\":\"block\",\"item\":{\"id\":3}}"}, at(1)).ok());
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::problem, [&](const QString& text) { said += text; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("'x' cannot be read") && said.contains("'y' cannot be read")) << said.toStdString();
    EXPECT_EQ(next.unsaved(), 1) << "of an item that is gone: something new";
}

TEST_F(EquipmentPageTest, ABlockThatCannotRunIsRefusedByTheHeatPumpsOwnRules) {
    page.select(some_program_id(ItemKind::block));
    page.begin_from_this();
    page.form()->box("id")->type("own-block");
    page.form()->box("shell_loss")->type("0.35");  // the format takes it
    page.judge();
    EXPECT_FALSE(page.can_save());
    EXPECT_NE(page.form()->box("shell_loss")->problem(), "");
    page.form()->box("shell_loss")->type("0.1");
    page.judge();
    EXPECT_TRUE(page.can_save());
}

TEST_F(EquipmentPageTest, ItemsGoOutAsAFileAndComeInElsewhere) {
    save_own(ItemKind::block, "own-block", 1);
    save_own(ItemKind::cylinder, "own-cylinder", 2);
    page.form()->box("fits_blocks")->type("own-block");
    ASSERT_TRUE(page.save(at(3)));
    const QByteArray file = page.export_text(true);
    const auto elsewhere = store::Store::open(":memory:", Instant{0}, "Ben").value();
    EquipmentPage there(*elsewhere, reference);
    QSignalSpy changed(&there, &EquipmentPage::items_changed);
    const auto done = there.import_text(file, "from-ada.json", at(4));
    ASSERT_TRUE(done.ok()) << wg::text_of(done.problems());
    EXPECT_TRUE(done.value().startsWith("2 new")) << done.value().toStdString();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(there.export_text(true), file);
    EXPECT_TRUE(there.import_text(file, "from-ada.json", at(5)).value().contains("2 as they were"));
    EXPECT_EQ(changed.count(), 1);
    there.select("own-block");
    const auto read_back = drafts_of(there.export_text(false), "one").value();
    ASSERT_EQ(read_back.size(), 1U);
    EXPECT_EQ(read_back.front().item.value("id").toString(), "own-block");
}

TEST_F(EquipmentPageTest, AHostileFileChangesNothing) {
    const ItemDraft good = first_of(ItemKind::cylinder);
    ItemDraft taken = good;  // the id of the program's
    ItemDraft own = good;
    own.item.insert("id", "own");
    ItemDraft wrong = good;
    wrong.item.insert("id", "wrong");
    wrong.item.insert("volume_l", 1e9);
    ItemDraft lost = good;
    lost.item.insert("id", "lost");
    lost.item.insert("fits_blocks", QJsonArray{"nowhere"});
    const QByteArray files[] = {QByteArray(),
                                QByteArray("not json"),
                                QByteArray("\xEF\xBB\xBF") + "{",
                                QByteArray("{\"schema\": 2}"),
                                QByteArray("{\"schema\": 1}"),
                                QByteArray(100000, '['),
                                text_of({own, taken}),
                                text_of({own, wrong}),
                                text_of({own, lost}),
                                text_of({own, own}),
                                text_of(own).chopped(20)};
    for (const QByteArray& file : files) {
        const auto done = page.import_text(file, "hostile.json", at(1));
        EXPECT_FALSE(done.ok()) << file.left(60).toStdString();
        EXPECT_NE(wg::text_of(done.problems()).find("hostile.json"), std::string::npos);
        EXPECT_TRUE(kept().empty());
    }
    EXPECT_TRUE(page.import_text(text_of(own), "good.json", at(2)).ok());
}

TEST_F(EquipmentPageTest, TheHistoryTellsWhatChangedFieldByField) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71.5");
    ASSERT_TRUE(page.save(at(2)));
    ASSERT_TRUE(page.set_withdrawn(true, at(3)));
    ItemHistory history;
    history.show_versions(store::EquipmentBook(*store).history("own-cylinder").value());
    ASSERT_EQ(history.versions()->rowCount(), 3);
    EXPECT_EQ(history.changes()->rowCount(), 0) << "withdrawing changes no data";
    EXPECT_EQ(history.versions()->item(0, 0)->text(), "3, withdrawn");
    EXPECT_EQ(history.versions()->item(0, 2)->text(), "Ada on desk-2");
    history.versions()->setCurrentCell(1, 0);
    ASSERT_EQ(history.changes()->rowCount(), 1);
    EXPECT_EQ(history.changes()->item(0, 0)->text(), "Mass, empty, kg");
    EXPECT_EQ(history.changes()->item(0, 2)->text(), "71.5");
    history.versions()->setCurrentCell(2, 0);
    EXPECT_EQ(history.changes()->rowCount(), 0);
}

TEST_F(EquipmentPageTest, DamagedItemsAreToldAndTheRestIsShown) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    const auto problem = store->database().run(
        "INSERT INTO equipment_version (item_id, version, kind, content, sha256, withdrawn, came, saved_at, saved_by) "
        "VALUES ('own-cylinder', 2, 'cylinder', 'gone', ?, 0, 0, '', '')",
        {QString(64, QChar('0'))});
    ASSERT_FALSE(problem.has_value()) << problem->text();
    page.reload();
    EXPECT_TRUE(told.contains("damaged")) << told.toStdString();
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(programs_items().size()));
}

TEST_F(EquipmentPageTest, AnItemThatCameWithAJobSaysSo) {
    ItemDraft draft = first_of(ItemKind::cylinder);
    draft.item.insert("id", "from-elsewhere");
    const auto put = store::EquipmentBook(*store).put_from_elsewhere("from-elsewhere", text_of(draft).toStdString(),
                                                                     "2027-06-21T12:00:00Z");
    ASSERT_TRUE(put.ok()) << wg::text_of(put.problems());
    page.reload();
    page.select("from-elsewhere");
    EXPECT_TRUE(page.state_words().contains("Came with a job")) << page.state_words().toStdString();
    EXPECT_EQ(page.list()->table()->item(page.list()->table()->currentRow(), 2)->text(), "came with a job");
    page.form()->box("mass_kg")->type("70");
    ASSERT_TRUE(page.save(at(1))) << "it can be taken over as the firm's own";
    EXPECT_FALSE(page.state_words().contains("Came with a job")) << page.state_words().toStdString();
}

TEST(ItemPlot, DrawsWhatTheDataMakeAndSaysWhyWhenNot) {
    ItemPlot plot;
    const BlockModel tried = read(block_by_coefficients()).value().blocks.front();
    const auto wrong = heatpump::problems_of(tried, *program().refrigerants.at(tried.refrigerant));
    ASSERT_TRUE(wrong.empty()) << wg::text_of(wrong);
    plot.show_item(read(block_by_coefficients()).value(), program());
    EXPECT_TRUE(plot.has_picture());
    plot.show_item(read(first_of(ItemKind::cylinder)).value(), program());
    EXPECT_FALSE(plot.has_picture());
    plot.show_item(read(tested_collector()).value(), program());
    EXPECT_TRUE(plot.has_picture());
    EXPECT_TRUE(plot.words().contains("test")) << plot.words().toStdString();
    const auto picture =
        collector_picture(heatpump::collector_curves(read(tested_collector()).value().collectors.front(), {3.0}),
                          theme_of(ThemeKind::light));
    // At 3 m/s and the air's own temperature the efficiency is the zero-loss one.
    double nearest = 1.0;
    double efficiency = 0.0;
    for (const QPointF& p : picture.panels.front().curves.front().points) {
        if (std::abs(p.x()) >= nearest) continue;
        nearest = std::abs(p.x());
        efficiency = p.y();
    }
    EXPECT_NEAR(nearest, 0.0, 1e-9);
    EXPECT_NEAR(efficiency, 0.75, 1e-9);
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
