#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "core/job/words.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/print_check.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/print_row.h"
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

TEST(FittingStageTest, the_record_is_saved_as_pdf_once_it_has_an_entry) {
    const QTemporaryDir folder;
    const auto session = open_session();
    ASSERT_TRUE(session->job().record.empty());
    FittingStage stage;
    QStringList said;
    QObject::connect(&stage, &StageWidget::status_text, &stage, [&said](const QString& text) { said << text; });
    stage.set_session(session.get());
    const QPushButton* save = nullptr;
    for (const QPushButton* one : stage.findChildren<QPushButton*>())
        if (one->text().startsWith(QStringLiteral("Record as PDF"))) save = one;
    ASSERT_NE(save, nullptr);
    EXPECT_FALSE(save->isEnabled());
    EXPECT_TRUE(save->toolTip().contains(QStringLiteral("no entry")));
    ReadingForm& form = stage.form();
    form.choose_kind(ReadingKind::supply_current);
    Fields fields(form);
    fields.value().setText(QStringLiteral("5.8"));
    fields.who().setText(QStringLiteral("A. Reed"));
    ASSERT_TRUE(stage.add_reading(taken_at));
    const QString path = folder.filePath(QStringLiteral("record.pdf"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return session->settled(); }, 5000));
    ASSERT_TRUE(stage.save_record(path));
    EXPECT_TRUE(save->isEnabled());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    EXPECT_TRUE(said.back().contains(path)) << said.join(QLatin1Char('|')).toStdString();
    // The paper is of the job with its newest entry, though the stage was never shown.
    EXPECT_EQ(stage.findChild<PaperPane*>()->input()->job.record, session->job().record);
    EXPECT_FALSE(stage.save_record(folder.filePath(QStringLiteral("no/such/folder/record.pdf"))));
    stage.set_session(nullptr);
    EXPECT_FALSE(save->isEnabled());
    EXPECT_FALSE(stage.save_record(path));
}

TEST(FittingStageTest, a_print_is_present_outdated_or_another_jobs) {
    const auto session = open_session();
    FittingStage stage;
    stage.set_session(session.get());
    PrintRow& row = stage.print_row();
    const auto scan = [&row](const QString& code) {
        row.field().setText(code);
        QTest::keyClick(&row.field(), Qt::Key_Return);
        return row.answer();
    };
    const QString present = print_code(stage.findChild<PaperPane*>()->input()->plan);
    ASSERT_FALSE(present.isEmpty());
    EXPECT_TRUE(scan(present).contains(QStringLiteral("is the present plan: mark 3FA9-07B2")))
        << row.answer().toStdString();
    const QString id = qs(session->job().id);
    const QString outdated = scan(QStringLiteral("warmgable:1:%1:2:AAAA-BBBB").arg(id));
    for (const char* part : {"Outdated", "revision 2", "AAAA-BBBB", "revision 3", "3FA9-07B2"})
        EXPECT_TRUE(outdated.contains(QString::fromLatin1(part))) << part << ": " << outdated.toStdString();
    EXPECT_TRUE(scan(QStringLiteral("warmgable:1:somebody-else:3:3FA9-07B2")).contains(QStringLiteral("another job")));
    EXPECT_TRUE(scan(QStringLiteral("4006381333931")).contains(QStringLiteral("not the code of a print")));
    EXPECT_EQ(row.field().selectedText(), row.field().text()) << "the next scan takes its place";
    // Half a mark is no mistake yet, a whole one is answered without Enter; other jobs start without an answer.
    row.field().setText(QStringLiteral("3fa9-0"));
    EXPECT_TRUE(row.answer().isEmpty());
    row.field().setText(QStringLiteral("3fa9-07b2"));
    EXPECT_TRUE(row.answer().contains(QStringLiteral("present plan"))) << row.answer().toStdString();
    row.set_present(session->job().id, 4, "CCCC-DDDD");
    EXPECT_TRUE(row.answer().startsWith(QStringLiteral("Outdated"))) << "told anew when the plan changes";
    row.set_present("another", 1, "3FA9-07B2");
    EXPECT_TRUE(row.answer().isEmpty());
    stage.set_session(nullptr);
    EXPECT_FALSE(row.isEnabled());
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
    failed.words = "0.9 bar are missing at 15.0 deg C, +/- 0.2, entry of 2026-06-01T11:45:00Z";
    failed.next = "Soap the joints";
    list.set_assessments({failed});
    EXPECT_TRUE(list.text().contains(QStringLiteral("Pressure hold: failed")));
    EXPECT_TRUE(list.text().contains(
        QStringLiteral(u"0.9 bar are missing at 15.0\u202f\u00b0C, \u00b1\u202f0.2, entry of 2026-06-01 11:45")))
        << list.text().toStdString();
    EXPECT_TRUE(list.text().contains(QStringLiteral("Now: Soap the joints")));
    EXPECT_EQ(mark_of(commissioning::Verdict::failed), Mark::stop);
    EXPECT_EQ(mark_of(commissioning::Verdict::passed), Mark::ready);
    EXPECT_EQ(mark_of(commissioning::Verdict::cannot_tell), Mark::caution);
}

TEST(VerdictListTest, a_band_shows_that_a_reading_is_outside_though_it_rounds_to_the_limit) {
    const commissioning::Band current = on_screen({"supply current", "A", 1, 1.3, 1.9, 2.57, 2.6});
    EXPECT_EQ(current.decimals, 2) << "2.6 beside 2.6 would be no news";
    EXPECT_EQ(on_screen({"supply current", "A", 1, 1.3, 1.9, 2.57, 2.5}).decimals, 1);
    EXPECT_EQ(on_screen({"supply current", "A", 1, 1.3, 1.9, 2.57, {}}).decimals, 1);
    EXPECT_EQ(on_screen({"suction gas", "deg C", 1, -4.8, 10.0, 26.4, 24.0}).unit, "\u00b0C");
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
