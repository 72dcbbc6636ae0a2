#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QFile>
#include <QJsonArray>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "core/plan/rule_set.h"
#include "core/plan/rule_sources.h"
#include "tests/tools/load_reference.h"
#include "ui/common/versions_view.h"
#include "ui/rules/rule_model.h"
#include "ui/rules/rule_page.h"

namespace wg::ui {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

std::vector<std::string> program_files() {
    std::vector<std::string> out;
    for (const char* id : {"assumed", "example-mountain", "example-sea-level-map"})
        out.push_back(test::read_resource(std::string("rules/") + id + ".json").value());
    return out;
}

RuleDraft shipped() {
    return RuleDraft::read(program_files().front(), "assumed.json").value();
}

class RulesTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now, "Ada Reed on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        page_ = std::make_unique<RulePage>(*store_, program_files());
        QObject::connect(page_.get(), &RulePage::problem, [this](const QString& text) { problems_ += text; });
        ASSERT_TRUE(page_->choose(QStringLiteral("assumed")));
    }

    QModelIndex at(const QStringList& path, int column = RuleModel::column_figure) {
        const int row = page_->model()->row_of(path);
        EXPECT_GE(row, 0) << path.join('/').toStdString();
        return page_->model()->index(row, column);
    }
    bool enter(const QStringList& path, const QString& text, int column = RuleModel::column_figure) {
        return page_->model()->setData(at(path, column), text, Qt::EditRole);
    }
    static QStringList action(const char* key) { return {QStringLiteral("actions"), QString::fromLatin1(key)}; }
    plan::RuleSet kept(const std::string& id) {
        const store::RuleBook book(*store_);
        const auto version = book.history(id).value().front().version;
        return plan::rule_set_from_json(book.content(id, version).value(), id).value();
    }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<RulePage> page_;
    QStringList problems_;
};

// The reader of the format is the judge of what is right: what stands on screen is held to it at both ends.
TEST(RuleFields, ranges_on_screen_are_those_of_the_reader) {
    int held = 0;
    for (const RuleRow& row : shipped().rows()) {
        const RuleField& field = *row.field;
        if (field.kind != RuleKind::number && field.kind != RuleKind::whole) continue;
        const auto with = [&](double shown) {
            RuleDraft draft = shipped();
            draft.put(row.path, shown / field.shown_by);
            // Edge zones lift at least as much as the middle.
            if (field.key == QLatin1String("net_uplift_middle"))
                draft.put(QStringList{QStringLiteral("actions"), QStringLiteral("net_uplift_edge")}, -5.0);
            if (field.key == QLatin1String("net_uplift_edge"))
                draft.put(QStringList{QStringLiteral("actions"), QStringLiteral("net_uplift_middle")}, 0.0);
            return draft.problems();
        };
        const double beyond = field.kind == RuleKind::whole ? 1.0 : 1e-3 * std::max(1.0, field.most);
        const std::string name = row.path.join(QLatin1Char('/')).toStdString();
        EXPECT_TRUE(with(field.least).empty()) << name << ": " << text_of(with(field.least));
        EXPECT_TRUE(with(field.most).empty()) << name << ": " << text_of(with(field.most));
        EXPECT_FALSE(with(field.least - beyond).empty()) << name;
        EXPECT_FALSE(with(field.most + beyond).empty()) << name;
        ++held;
    }
    EXPECT_GT(held, 30);
}

TEST(RuleFields, every_field_of_the_format_is_on_screen) {
    const RuleDraft draft = shipped();
    QStringList shown;
    for (const RuleRow& row : draft.rows())
        shown << row.path.join(QLatin1Char('/'));
    for (const std::string& value : plan::values_with_source())
        EXPECT_TRUE(shown.contains(QStringLiteral("actions/") + QString::fromStdString(value))) << value;
    const auto expect_all = [&](const QStringList& place) {
        const QJsonObject object = place.isEmpty() ? draft.set() : draft.at(place).toObject();
        for (auto it = object.begin(); it != object.end(); ++it) {
            // Beside every value, in the head of the page, or never changed.
            if (it.value().isObject() || it.key() == QLatin1String("schema") || it.key() == QLatin1String("assumed") ||
                (place.isEmpty() && it.key() == QLatin1String("id")))
                continue;
            const QString path = (QStringList(place) << it.key()).join(QLatin1Char('/'));
            const bool list = it.value().isArray() && !shown.contains(path);
            const bool source = it.key() == QLatin1String("source");
            EXPECT_TRUE(list || source || shown.contains(path)) << path.toStdString();
        }
    };
    expect_all({});
    for (const char* place :
         {"actions", "tax", "tax/rates/0", "market/0", "service/0", "charge_duties", "charge_duties/leak_checks/0"})
        expect_all(QString::fromLatin1(place).split(QLatin1Char('/')));
}

TEST(RuleFields, choices_on_screen_are_taken_by_the_reader) {
    int tried = 0;
    for (const RuleRow& row : shipped().rows()) {
        for (const RuleChoice& choice : row.field->choices) {
            RuleDraft draft = shipped();
            draft.put(row.path, choice.key);
            EXPECT_TRUE(draft.problems().empty()) << choice.key.toStdString() << text_of(draft.problems());
            ++tried;
        }
    }
    EXPECT_GT(tried, 12);
}

TEST(RuleValue, entries_are_read_as_people_write_them_and_refused_with_the_range) {
    const RuleField& wind = *find_rule_field(RuleGroup::wind, QStringLiteral("basic_wind_m_s"));
    EXPECT_EQ(entered_value(wind, QStringLiteral("27,5")).value.toDouble(), 27.5);
    for (const char* wrong : {"", "9.99", "80.1", "nan", "1e9", "-26", "26 m/s", "twenty"}) {
        const RuleEntered entered = entered_value(wind, QString::fromLatin1(wrong));
        EXPECT_FALSE(entered.problem.isEmpty()) << wrong;
        EXPECT_TRUE(entered.value.isNull() || entered.value.isUndefined()) << wrong;
    }
    EXPECT_TRUE(entered_value(wind, QStringLiteral("90")).problem.contains(QStringLiteral("10 to 80 m/s")));
    const RuleField& rate = *find_rule_field(RuleGroup::rate, QStringLiteral("rate"));
    EXPECT_EQ(entered_value(rate, QStringLiteral("19")).value.toDouble(), 0.19) << "per cent on screen, a share inside";
    EXPECT_EQ(value_words(rate, 0.07), QStringLiteral("7"));
    const RuleField& every = *find_rule_field(RuleGroup::service, QStringLiteral("every_months"));
    EXPECT_FALSE(entered_value(every, QStringLiteral("1.5")).problem.isEmpty());
    const RuleField& since = *find_rule_field(RuleGroup::market, QStringLiteral("since"));
    for (const char* wrong : {"2025-02-30", "1 May 2027", "2027-6-1"})
        EXPECT_FALSE(entered_value(since, QString::fromLatin1(wrong)).problem.isEmpty()) << wrong;
    const RuleField& lift = *find_rule_field(RuleGroup::net, QStringLiteral("net_uplift_edge"));
    EXPECT_TRUE(entered_value(lift, {}).value.isUndefined()) << "may be left out";
    EXPECT_EQ(value_words(lift, QJsonValue(QJsonValue::Undefined)), QStringLiteral("-1.8 (not set)"));
    const RuleField& gases = *find_rule_field(RuleGroup::duties, QStringLiteral("by_mass"));
    EXPECT_EQ(entered_value(gases, QStringLiteral("R1234yf, R32")).value.toArray().size(), 2);
}

TEST_F(RulesTest, the_programs_sets_are_shown_with_what_is_assumed_and_not_changed) {
    EXPECT_FALSE(enter(action("basic_wind_m_s"), QStringLiteral("30")));
    EXPECT_FALSE(page_->has_changes());
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("comes with the program")));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("New jobs use this set")));
    EXPECT_TRUE(at(action("basic_wind_m_s"), RuleModel::column_state).data().toString().contains("assumed"));
    EXPECT_TRUE(at(action("gamma_variable"), RuleModel::column_state).data().toString().isEmpty());
    EXPECT_TRUE(at(action("gamma_variable"), RuleModel::column_source).data().toString().contains("EN 1990"));
    EXPECT_EQ(at(action("basic_wind_m_s"), RuleModel::column_unit).data().toString(), QStringLiteral("m/s"));
    EXPECT_FALSE(page_->assumed_box()->isEnabled());
    EXPECT_TRUE(page_->assumed_box()->isChecked());
    QAbstractItemModelTester tester(page_->model());
    page_->search()->setText(QStringLiteral("assumed"));
    EXPECT_GT(page_->model()->rowCount(), 3);
    EXPECT_LT(page_->model()->rowCount(), 20);
}

TEST_F(RulesTest, the_firms_own_set_is_made_changed_saved_and_read_again) {
    QSignalSpy changed(page_.get(), &RulePage::sets_changed);
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")))
        << problems_.join(';').toStdString();
    EXPECT_FALSE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Again"))) << "the id is taken";
    EXPECT_FALSE(page_->make_own(QStringLiteral("assumed"), QStringLiteral("Again"))) << "the program's id";
    problems_.clear();
    ASSERT_TRUE(enter(action("basic_wind_m_s"), QStringLiteral("28,5"))) << "a comma as people write it";
    ASSERT_TRUE(enter(action("basic_wind_m_s"), QStringLiteral("NA, zone 2"), RuleModel::column_source));
    ASSERT_TRUE(enter({QStringLiteral("tax"), QStringLiteral("rates"), QStringLiteral("0"), QStringLiteral("rate")},
                      QStringLiteral("19")));
    EXPECT_TRUE(page_->has_changes());
    EXPECT_FALSE(page_->choose(QStringLiteral("assumed"))) << "changes would be lost";
    ASSERT_TRUE(page_->save_version(QStringLiteral("annex of April"), now));
    EXPECT_FALSE(page_->has_changes());
    EXPECT_EQ(changed.count(), 2);
    const plan::RuleSet set = kept("firm");
    EXPECT_EQ(set.actions.basic_wind_m_s, 28.5);
    EXPECT_EQ(set.tax.rates.front().rate, 0.19);
    EXPECT_EQ(set.label, "Our rules");
    EXPECT_TRUE(set.assumed);
    ASSERT_TRUE(page_->choose(QStringLiteral("assumed")));
    ASSERT_TRUE(page_->choose(QStringLiteral("firm")));
    EXPECT_EQ(at(action("basic_wind_m_s")).data().toString(), QStringLiteral("28.5"));
    const auto dialog = page_->versions();
    VersionsView& history = *dialog->view();
    ASSERT_EQ(history.versions()->rowCount(), 2);
    EXPECT_EQ(history.versions()->item(0, 3)->text(), QStringLiteral("annex of April"));
    EXPECT_EQ(history.versions()->item(0, 2)->text(), QStringLiteral("Ada Reed on desk-2"));
    ASSERT_EQ(history.changes()->rowCount(), 3) << "wind, its source, and the rate";
    EXPECT_EQ(history.changes()->item(0, 1)->text(), QStringLiteral("26"));
    EXPECT_EQ(history.changes()->item(0, 2)->text(), QStringLiteral("28.5"));
}

TEST_F(RulesTest, an_entry_that_cannot_stand_is_refused_in_words_and_changes_nothing) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    const QJsonObject before = page_->model()->draft().set();
    const std::tuple<QStringList, const char*, const char*> wrong[] = {
        {action("basic_wind_m_s"), "9", "10 to 80 m/s"},
        {action("k_mod"), "", "an entry is asked for"},
        {action("k_mod"), "nan", "no number"},
        {action("snow_rule"), "lunar", "none of"},
        {action("snow_slides"), "perhaps", "neither yes nor no"},
        {{"service", "0", "every_months"}, "0", "1 to 240"},
        {{"service", "0", "every_months"}, "1.5", "whole number"},
        {{"market", "0", "since"}, "2025-02-30", "no day"},
        {{"label"}, " ", "an entry is asked for"}};
    for (const auto& [path, text, words] : wrong) {
        problems_.clear();
        EXPECT_FALSE(enter(path, QString::fromUtf8(text))) << text;
        ASSERT_EQ(problems_.size(), 1) << text;
        EXPECT_TRUE(problems_[0].contains(QString::fromUtf8(words))) << problems_[0].toStdString();
        EXPECT_FALSE(page_->model()->judged(at(path), QString::fromUtf8(text)).isEmpty()) << "while it is typed";
    }
    problems_.clear();
    EXPECT_FALSE(enter({"tax", "rates", "0", "rate"}, QString(), RuleModel::column_source))
        << "of the group, asked for";
    EXPECT_EQ(page_->model()->draft().set(), before);
    // What only the whole set tells is told as soon as it stands there, and refused when it is saved.
    ASSERT_TRUE(enter({"service", "0", "when"}, QStringLiteral("sometimes")));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("1 problem"))) << page_->state_words().toStdString();
    problems_.clear();
    EXPECT_FALSE(page_->save_version({}, now));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("sometimes")));
}

TEST_F(RulesTest, the_range_is_told_and_what_is_wrong_while_it_is_typed) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    page_->show();
    page_->table()->setCurrentIndex(at(action("basic_wind_m_s")));
    EXPECT_TRUE(page_->line_words().contains(QStringLiteral("10 to 80 m/s"))) << page_->line_words().toStdString();
    page_->table()->edit(page_->table()->currentIndex());
    auto* editor = page_->table()->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("9"));
    EXPECT_TRUE(page_->line_words().contains(QStringLiteral("9 is beyond 10 to 80 m/s")))
        << page_->line_words().toStdString();
    QTest::keyClicks(editor, QStringLiteral("0"));
    EXPECT_TRUE(page_->line_words().contains(QStringLiteral("90 is beyond")));
    QTest::keyClick(editor, Qt::Key_Escape);
    EXPECT_FALSE(page_->line_words().contains(QStringLiteral("beyond")));
    EXPECT_FALSE(page_->has_changes());
}

TEST_F(RulesTest, a_set_stops_being_assumed_once_every_value_has_a_source) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    EXPECT_FALSE(page_->set_assumed(false));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("Basic wind velocity"))) << problems_[0].toStdString();
    EXPECT_TRUE(page_->assumed_box()->isChecked()) << "as it was";
    int asked = 0;
    for (const RuleRow& row : page_->model()->draft().rows()) {
        if (!page_->model()->draft().is_assumed(row)) continue;
        const bool of_the_set = RuleDraft::source_of(row).none();
        ASSERT_TRUE(enter(row.path, QStringLiteral("national annex"),
                          of_the_set ? RuleModel::column_figure : RuleModel::column_source));
        ++asked;
    }
    EXPECT_GT(asked, 4);
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("all with a source")));
    problems_.clear();
    ASSERT_TRUE(page_->set_assumed(false)) << problems_.join(';').toStdString();
    ASSERT_TRUE(page_->save_version({}, now)) << problems_.join(';').toStdString();
    EXPECT_FALSE(kept("firm").assumed);
    // Taken away again, a source makes the set one that cannot be saved.
    ASSERT_TRUE(enter(action("basic_wind_m_s"), QStringLiteral("assumed"), RuleModel::column_source));
    EXPECT_FALSE(page_->save_version({}, now));
    ASSERT_TRUE(page_->set_assumed(true));
    EXPECT_TRUE(page_->save_version({}, now));
}

TEST_F(RulesTest, a_source_that_is_cleared_is_the_groups_again) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    const QModelIndex source = at(action("gamma_variable"), RuleModel::column_source);
    ASSERT_TRUE(page_->model()->setData(source, QString(), Qt::EditRole));
    EXPECT_EQ(source.data().toString(), page_->model()->draft().at(action("source")).toString());
    EXPECT_TRUE(page_->model()->draft().problems().empty());
}

TEST_F(RulesTest, items_of_lists_are_added_and_removed_and_the_reader_takes_them) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    for (const RuleGroup group : {RuleGroup::rate, RuleGroup::market, RuleGroup::service, RuleGroup::leak}) {
        const QJsonObject before = page_->model()->draft().set();
        const int row = page_->model()->add_item(group);
        ASSERT_GE(row, 0);
        // A tax rate has to be typed first (the test after this one).
        EXPECT_EQ(page_->model()->draft().problems().empty(), group != RuleGroup::rate)
            << text_of(page_->model()->draft().problems());
        EXPECT_NE(page_->model()->draft().set(), before);
        ASSERT_TRUE(page_->model()->remove_item_of(row));
        EXPECT_EQ(page_->model()->draft().set(), before);
    }
    EXPECT_LT(page_->model()->add_item(RuleGroup::wind), 0) << "stands once";
    EXPECT_FALSE(page_->model()->remove_item_of(0));
    EXPECT_FALSE(page_->has_changes());
}

TEST_F(RulesTest, a_new_tax_rate_is_not_saved_until_a_rate_is_typed) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    const int row = page_->model()->add_item(RuleGroup::rate);
    ASSERT_GE(row, 0);
    QStringList path = page_->model()->row_at(row)->path;
    path.last() = QStringLiteral("rate");
    ASSERT_TRUE(at(path).isValid());
    EXPECT_TRUE(at(path).data().toString().isEmpty()) << "no 0 % that nobody typed";
    EXPECT_FALSE(page_->save_version({}, now));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("rate"))) << page_->state_words().toStdString();
    ASSERT_TRUE(enter(path, QStringLiteral("0"))) << "what is exempt is typed";
    EXPECT_TRUE(page_->save_version({}, now));
}

TEST_F(RulesTest, a_tax_rate_named_by_another_percentage_is_told) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    EXPECT_TRUE(page_->model()->draft().misnamed_rates().isEmpty()) << "names of the program hold no figure";
    const QStringList first{QStringLiteral("tax"), QStringLiteral("rates"), QStringLiteral("0")};
    ASSERT_TRUE(enter(QStringList(first) << QStringLiteral("label"), QStringLiteral("Standard rate 20 %")));
    EXPECT_TRUE(page_->model()->draft().misnamed_rates().isEmpty());
    ASSERT_TRUE(enter(QStringList(first) << QStringLiteral("rate"), QStringLiteral("19")));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("is named 'Standard rate 20 %', but its rate is 19 %")))
        << page_->state_words().toStdString();
    ASSERT_TRUE(enter(QStringList(first) << QStringLiteral("label"), QStringLiteral("Standard rate 19,0 %")));
    EXPECT_TRUE(page_->model()->draft().misnamed_rates().isEmpty());
}

TEST_F(RulesTest, the_firm_chooses_the_set_of_new_jobs_and_a_withdrawn_one_is_none) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    EXPECT_TRUE(page_->standard_button()->isEnabled());
    ASSERT_TRUE(page_->use_for_new_jobs());
    EXPECT_EQ(store::RuleBook(*store_).for_new_jobs().value(), "firm");
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("New jobs use this set")));
    EXPECT_FALSE(page_->standard_button()->isEnabled());
    ASSERT_TRUE(page_->withdraw(QStringLiteral("old"), now));
    EXPECT_FALSE(page_->state_words().contains(QStringLiteral("New jobs use this set")));
    EXPECT_FALSE(page_->use_for_new_jobs());
    ASSERT_TRUE(page_->save_version({}, now)) << "and it comes back by saving";
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("New jobs use this set")));
}

TEST_F(RulesTest, somebody_elses_version_is_not_overwritten) {
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    ASSERT_TRUE(enter(action("k_mod"), QStringLiteral("0.8")));
    RuleDraft theirs = page_->model()->draft();
    theirs.put({QStringLiteral("label")}, QStringLiteral("Theirs"));
    ASSERT_TRUE(store::RuleBook(*store_).save("firm", theirs.text().toStdString(), 1, "", now).ok());
    problems_.clear();
    EXPECT_FALSE(page_->save_version({}, now));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("was changed by")));
    page_->reload();
    EXPECT_TRUE(page_->has_changes()) << "what was typed stays";
    EXPECT_EQ(at(action("k_mod")).data().toString(), QStringLiteral("0.8"));
    EXPECT_FALSE(page_->save_version({}, now)) << "reading the book again makes it no change of theirs";
    EXPECT_EQ(store::RuleBook(*store_).history("firm").value().size(), 2U);
    page_->discard_changes();
    EXPECT_EQ(page_->model()->draft().label(), QStringLiteral("Theirs"));
}

TEST_F(RulesTest, files_go_out_and_come_in_and_hostile_ones_leave_no_trace) {
    QTemporaryDir folder;
    ASSERT_TRUE(page_->make_own(QStringLiteral("firm"), QStringLiteral("Our rules")));
    const QString path = folder.filePath(QStringLiteral("rules.json"));
    ASSERT_TRUE(page_->export_file(path));
    ASSERT_TRUE(enter(action("k_mod"), QStringLiteral("0.8")));
    EXPECT_FALSE(page_->import_file(path)) << "changes would be lost";
    ASSERT_TRUE(page_->save_version({}, now));
    ASSERT_TRUE(page_->import_file(path)) << problems_.join(';').toStdString();
    EXPECT_EQ(at(action("k_mod")).data().toString(), QStringLiteral("0.9"));
    EXPECT_EQ(store::RuleBook(*store_).history("firm").value().size(), 3U);
    const QByteArray whole = page_->model()->draft().text();
    const QByteArray hostile[] = {whole.left(whole.size() / 2),
                                  QByteArray("{\"schema\": 1}"),
                                  QByteArray(),
                                  QByteArray("\xEF\xBB\xBF") + whole,
                                  QByteArray(whole).replace("0.9", "9e99"),
                                  QByteArray(100000, '['),
                                  QByteArray::fromStdString(program_files().front())};
    for (const QByteArray& bytes : hostile) {
        QFile bad(folder.filePath(QStringLiteral("bad.json")));
        ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
        bad.write(bytes);
        bad.close();
        problems_.clear();
        EXPECT_FALSE(page_->import_file(bad.fileName())) << bytes.left(40).toStdString();
        EXPECT_EQ(problems_.size(), 1);
    }
    EXPECT_FALSE(page_->import_file(folder.filePath(QStringLiteral("no such file"))));
    EXPECT_EQ(store::RuleBook(*store_).sets().value().size(), 1U);
    EXPECT_EQ(store::RuleBook(*store_).history("firm").value().size(), 3U);
}

}  // namespace
}  // namespace wg::ui
