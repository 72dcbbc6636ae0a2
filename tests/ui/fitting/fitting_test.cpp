#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "core/job/words.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/job_session.h"
#include "ui/documents/paper_pane.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/reading_form.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/record_model.h"
#include "ui/fitting/verdict_list.h"

namespace wg::ui {
namespace {

const QString taken_at = QStringLiteral("2027-06-01T10:00:00+01:00");

/// Fields of the form by the names they have for tests.
struct Fields {
    explicit Fields(ReadingForm& form) : form_(form) {}
    QLineEdit& value() { return edit("value"); }
    QLineEdit& second() { return edit("second"); }
    QLineEdit& instrument() { return *combo("instrument").lineEdit(); }
    QLineEdit& who() { return *combo("who").lineEdit(); }
    QLineEdit& note() { return edit("note"); }
    QLineEdit& edit(const char* name) { return *form_.findChild<QLineEdit*>(QString::fromLatin1(name)); }
    QComboBox& combo(const char* name) { return *form_.findChild<QComboBox*>(QString::fromLatin1(name)); }
    ReadingForm& form_;
};

std::unique_ptr<JobSession> open_session() {
    auto made =
        std::make_unique<JobSession>(sample::job(), std::make_shared<const plan::Reference>(),
                                     [](const Job& job, const plan::Reference&,
                                        const plan::Options&) -> Result<plan::Plan> { return sample::plan(job); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

TEST(ReadingFormTest, a_good_entry_becomes_a_reading_with_both_decimal_signs) {
    ReadingForm form;
    form.choose_kind(ReadingKind::pressure_hold_start);
    Fields fields(form);
    fields.value().setText(QStringLiteral("25,1"));
    fields.second().setText(QStringLiteral("18.5"));
    fields.instrument().setText(QStringLiteral("gauge 7"));
    fields.who().setText(QStringLiteral("A. Reed"));
    const auto reading = form.reading(taken_at);
    ASSERT_TRUE(reading.has_value());
    EXPECT_EQ(reading->kind, ReadingKind::pressure_hold_start);
    EXPECT_DOUBLE_EQ(reading->value, 25.1);
    EXPECT_DOUBLE_EQ(*reading->second_value, 18.5);
    EXPECT_EQ(reading->taken_at, taken_at.toStdString());
    EXPECT_TRUE(reading->corrects_id.empty());
}

TEST(ReadingFormTest, nonsense_is_refused_and_left_standing) {
    ReadingForm form;
    form.choose_kind(ReadingKind::pressure_hold_start);
    Fields fields(form);
    fields.who().setText(QStringLiteral("A. Reed"));
    for (const char* bad : {"", "abc", "1e9", "-3", "nan", "inf"}) {
        fields.value().setText(QString::fromUtf8(bad));
        EXPECT_FALSE(form.reading(taken_at).has_value()) << bad;
        EXPECT_EQ(fields.value().text(), QString::fromUtf8(bad));
    }
    fields.value().setText(QStringLiteral("25"));
    fields.second().setText(QStringLiteral("warm"));
    EXPECT_FALSE(form.reading(taken_at).has_value());
    fields.second().clear();
    EXPECT_TRUE(form.reading(taken_at).has_value());
    fields.who().clear();
    EXPECT_FALSE(form.reading(taken_at).has_value()) << "nobody named";
}

TEST(ReadingFormTest, a_remark_needs_words) {
    ReadingForm form;
    form.choose_kind(ReadingKind::remark);
    Fields fields(form);
    fields.who().setText(QStringLiteral("A. Reed"));
    EXPECT_FALSE(form.reading(taken_at).has_value());
    fields.note().setText(QStringLiteral("tile replaced"));
    EXPECT_TRUE(form.reading(taken_at).has_value());
}

TEST(FittingStageTest, a_correction_is_a_new_entry_that_names_the_old_one) {
    const auto session = open_session();
    FittingStage stage;
    stage.set_session(session.get());
    ReadingForm& form = stage.form();
    form.choose_kind(ReadingKind::supply_current);
    Fields fields(form);
    fields.value().setText(QStringLiteral("5.8"));
    fields.who().setText(QStringLiteral("A. Reed"));
    ASSERT_TRUE(stage.add_reading(taken_at));
    ASSERT_EQ(session->job().record.size(), 1U);
    const Reading first = session->job().record.front();
    form.correct(first);
    fields.value().setText(QStringLiteral("4.8"));
    ASSERT_TRUE(stage.add_reading(taken_at));
    ASSERT_EQ(session->job().record.size(), 2U);
    EXPECT_EQ(session->job().record.front(), first) << "the old entry stays as it was";
    EXPECT_EQ(session->job().record.back().corrects_id, first.id);
    EXPECT_DOUBLE_EQ(session->job().record.back().value, 4.8);
    stage.set_session(nullptr);
}

TEST(FittingStageTest, the_sheet_carries_the_firm_as_it_stands_when_the_stage_is_shown) {
    const auto session = open_session();
    Firm firm;
    FittingStage stage;
    stage.set_firm_source([&firm] { return firm; });
    stage.set_session(session.get());
    const auto* pane = stage.findChild<PaperPane*>();
    ASSERT_NE(pane, nullptr);
    ASSERT_NE(pane->input(), nullptr);
    EXPECT_TRUE(pane->input()->firm.name.isEmpty());
    firm.name = QStringLiteral("Entered on the Offer stage");  // while this stage exists already
    stage.show();
    EXPECT_EQ(pane->input()->firm.name, firm.name);
    stage.set_session(nullptr);
}

TEST(RecordModelTest, shows_newest_first_and_marks_what_was_corrected) {
    RecordModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    Reading first;
    first.id = sample::uuid(90);
    first.kind = ReadingKind::supply_current;
    first.taken_at = "2027-06-01T10:00:00Z";
    first.value = 5.8;
    Reading second = first;
    second.id = sample::uuid(91);
    second.corrects_id = first.id;
    second.value = 4.8;
    model.set_record({first, second});
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_TRUE(model.index(0, RecordModel::column_value).data().toString().startsWith(QStringLiteral("4.8")));
    EXPECT_TRUE(model.index(0, RecordModel::column_note).data().toString().contains(QStringLiteral("(correction)")));
    EXPECT_TRUE(model.index(1, RecordModel::column_note).data().toString().contains(QStringLiteral("corrected later")));
    EXPECT_EQ(model.reading_at(2), nullptr);
}

TEST(VerdictListTest, says_word_figures_and_what_to_do) {
    VerdictList list;
    EXPECT_TRUE(list.text().contains(QStringLiteral("No verdict yet")));
    commissioning::Assessment failed;
    failed.subject = "Pressure hold";
    failed.verdict = commissioning::Verdict::failed;
    failed.words = "0.9 bar are missing";
    failed.next = "Soap the joints";
    list.set_assessments({failed});
    EXPECT_TRUE(list.text().contains(QStringLiteral("Pressure hold: failed")));
    EXPECT_TRUE(list.text().contains(QStringLiteral("0.9 bar are missing")));
    EXPECT_TRUE(list.text().contains(QStringLiteral("Now: Soap the joints")));
    EXPECT_EQ(mark_of(commissioning::Verdict::failed), Mark::stop);
    EXPECT_EQ(mark_of(commissioning::Verdict::passed), Mark::ready);
    EXPECT_EQ(mark_of(commissioning::Verdict::cannot_tell), Mark::caution);
}

TEST(ReadingWordsTest, every_kind_has_its_words_and_range) {
    for (const Word<ReadingKind>& word : words<ReadingKind>()) {
        const ReadingWords& w = words_of(word.value);
        EXPECT_EQ(w.kind, word.value) << word.key;
        if (w.manner != EntryManner::figure) continue;
        EXPECT_FALSE(w.value_name.isEmpty()) << word.key;
        EXPECT_FALSE(w.unit.isEmpty()) << word.key;
        EXPECT_LT(w.least, w.most) << word.key;
        EXPECT_FALSE(plausible(word.value, w.most * 1.01)) << word.key;
        if (w.quantity != SiteQuantity::none)
            EXPECT_EQ(w.unit, QString::fromUtf8(site_units(w.quantity).front().name)) << word.key;
    }
}

}  // namespace
}  // namespace wg::ui
