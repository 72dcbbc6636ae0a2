#include <gtest/gtest.h>

#include <QRegularExpression>
#include <algorithm>

#include "core/job/words.h"
#include "tests/ui/documents/record_sample.h"
#include "ui/common/format.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/papers.h"
#include "ui/documents/record_parts.h"

namespace wg::ui {
namespace record_paper_test {

std::vector<paper::Page> record_pages(const PaperInput& input) {
    return paper::lay_out(Paper::record, std::make_shared<const PaperInput>(input));
}

QStringList record_cells(const PaperInput& input) {
    QStringList cells;
    for (const paper::Page& page : record_pages(input))
        cells += page.text;
    return cells;
}

QString record_text(const PaperInput& input) {
    return record_cells(input).join(QLatin1Char('\n'));
}

TEST(RecordPaper, every_entry_stands_on_paper_with_number_kind_value_and_who) {
    const PaperInput input = sample::recorded_input();
    const QStringList cells = record_cells(input);
    qsizetype at = cells.indexOf(QStringLiteral("Every entry, in the order made"));
    ASSERT_GE(at, 0);
    for (std::size_t i = 0; i < input.job.record.size(); ++i) {
        const Reading& entry = input.job.record[i];
        // In order: number, time, kind, value, by.
        qsizetype row = cells.indexOf(QString::number(i + 1), at);
        while (row >= 0 && cells[row + 2] != paper::entry_kind(entry))
            row = cells.indexOf(QString::number(i + 1), row + 1);
        ASSERT_GE(row, 0) << "entry " << i + 1;
        EXPECT_EQ(cells[row + 1], paper::entry_time(entry));
        EXPECT_TRUE(cells[row + 3].startsWith(paper::entry_value(entry))) << cells[row + 3].toStdString();
        EXPECT_TRUE(cells[row + 4].startsWith(QString::fromStdString(entry.taken_by)));
        at = row;
    }
}

TEST(RecordPaper, a_corrected_entry_is_struck_through_and_names_what_took_its_place) {
    const PaperInput input = sample::recorded_input();
    const auto& record = input.job.record;
    std::size_t wrong = 0;
    std::size_t right = 0;
    for (std::size_t i = 0; i < record.size(); ++i) {
        if (!record[i].corrects_id.empty()) {
            right = i + 1;
            wrong = paper::entry_number(record, record[i].corrects_id);
        }
    }
    ASSERT_GT(wrong, 0U);
    const QString text = record_text(input);
    EXPECT_TRUE(text.contains(QStringLiteral("Replaced by no. %1").arg(right)));
    EXPECT_TRUE(text.contains(QStringLiteral("Takes the place of no. %1").arg(wrong)));
    // A rule runs through the words of the wrong value, and through none of the right one's.
    const QString wrong_value = paper::entry_value(record[wrong - 1]);
    const QString right_value = paper::entry_value(record[right - 1]);
    int struck = 0;
    for (const paper::Page& page : record_pages(input)) {
        for (const paper::Lettering& piece : page.lettering) {
            if (piece.text != wrong_value && piece.text != right_value) continue;
            for (const paper::Rule& rule : page.rules) {
                const bool through = std::abs(rule.line.x1() - piece.baseline.x()) < 1.0 &&
                                     std::abs(rule.line.length() - piece.width) < 1.0 &&
                                     rule.line.y1() < piece.baseline.y() &&
                                     rule.line.y1() > piece.baseline.y() - paper::text_units(piece.style.size_pt);
                if (!through) continue;
                EXPECT_EQ(piece.text, wrong_value);
                ++struck;
            }
        }
    }
    EXPECT_EQ(struck, 1);
}

TEST(RecordPaper, a_failed_test_stands_with_its_day_beside_the_one_that_passed) {
    const QString text = record_text(sample::recorded_input());
    EXPECT_TRUE(text.contains(QStringLiteral("Tests made more than once, as each was judged")));
    EXPECT_TRUE(text.contains(QStringLiteral("failed")));
    EXPECT_TRUE(text.contains(QStringLiteral("12 April 2027, 10:05")));
}

TEST(RecordPaper, models_serial_numbers_and_charge_are_told) {
    PaperInput input = sample::recorded_input();
    const QString text = record_text(input);
    for (const char* wanted : {"ML21-2703-0417", "T14-000812", "F250-2027-1180", "Tarn 14", "Fell 250", "R134a (A1)"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(wanted))) << wanted;
    // 1.2 kg from the factory and 0.081 kg weighed in; 1.2 kg were planned as 1.72 t.
    EXPECT_TRUE(text.contains(quantity(1.281, QStringLiteral("kg"), 3) + QStringLiteral(" in the system")));
    EXPECT_TRUE(text.contains(quantity(1.72 * 1.281 / 1.2, QStringLiteral("t"), 3)));
    Reading out = input.job.record.back();
    out.id = sample::uuid(900);
    out.kind = ReadingKind::refrigerant_recovered;
    out.value = 0.1;
    input.job.record.push_back(out);
    EXPECT_TRUE(
        record_text(input).contains(quantity(1.181, QStringLiteral("kg"), 3) + QStringLiteral(" in the system")));
}

TEST(RecordPaper, a_plan_changed_after_the_entries_is_told_with_both_marks) {
    PaperInput input = sample::recorded_input();
    const QString mark = QString::fromStdString(input.plan.plan_mark);
    EXPECT_TRUE(record_text(input).contains(QStringLiteral("All entries were made for the plan as it stands.")));
    EXPECT_FALSE(record_text(input).contains(QStringLiteral("The plan was changed after entries were made")));
    input.plan.plan_mark = "0000-1111";
    const QString changed = record_text(input);
    EXPECT_TRUE(changed.contains(QStringLiteral("The plan was changed after entries were made")));
    EXPECT_TRUE(changed.contains(mark));
    EXPECT_TRUE(changed.contains(QStringLiteral("0000-1111")));
}

TEST(RecordPaper, the_head_of_the_chain_stands_in_groups_and_a_break_is_told) {
    PaperInput input = sample::recorded_input();
    const std::string head = input.job.record.back().sha256;
    ASSERT_EQ(head.size(), 64U);
    QString text = record_text(input);
    EXPECT_TRUE(text.contains(paper::hash_in_groups(head)));
    EXPECT_EQ(paper::hash_in_groups(head).size(), 64 + 7);
    EXPECT_EQ(paper::hash_in_groups(head).remove(QLatin1Char(' ')), QString::fromStdString(head));
    EXPECT_TRUE(text.contains(QStringLiteral("whole: no chained entry was altered")));
    input.job.record[6].value = 24.0;
    text = record_text(input);
    EXPECT_TRUE(text.contains(QStringLiteral("The chain is broken at entry no. 7")));
    EXPECT_FALSE(text.contains(QStringLiteral("whole: no chained entry was altered")));
}

TEST(RecordPaper, a_verdict_on_an_altered_entry_proves_nothing) {
    PaperInput input = sample::recorded_input();
    const QString whole = record_text(input);
    EXPECT_FALSE(whole.contains(QStringLiteral("proves nothing")));
    const auto& judged = input.plan.assessments;
    const auto with_entries = std::find_if(judged.begin(), judged.end(), [](const commissioning::Assessment& a) {
        return !a.reading_ids.empty() && a.subject != "Record";
    });
    ASSERT_NE(with_entries, judged.end());
    const std::size_t number = paper::entry_number(input.job.record, with_entries->reading_ids.front());
    ASSERT_GT(number, 0U);
    input.job.record[number - 1].value += 0.01;
    const QString text = record_text(input);
    EXPECT_TRUE(text.contains(QStringLiteral("proves nothing")));
    EXPECT_TRUE(text.contains(QStringLiteral("It rests on entry no. %1 altered").arg(number))) << text.toStdString();
}

TEST(RecordPaper, curve_bands_and_sources_of_the_verdicts_stand_on_it) {
    const PaperInput input = sample::recorded_input();
    bool drawn = false;
    for (const paper::Page& page : record_pages(input))
        for (const paper::Picture& picture : page.pictures)
            drawn = drawn || picture.name == QStringLiteral("curve of Evacuation");
    EXPECT_TRUE(drawn);
    const QString text = record_text(input);
    for (const commissioning::Assessment& one : input.plan.assessments) {
        EXPECT_TRUE(text.contains(QString::fromStdString(one.subject))) << one.subject;
        if (!one.working.source.empty()) {
            EXPECT_TRUE(text.contains(with_signs(one.working.source))) << one.working.source;
        }
    }
    EXPECT_TRUE(text.contains(quantity(71.5, QStringLiteral("°C"), 1)));
    EXPECT_TRUE(text.contains(QStringLiteral("outside"))) << "71.5 lies above the band that ends at 70";
    EXPECT_FALSE(text.contains(QStringLiteral("deg C")))
        << text.mid(std::max<qsizetype>(0, text.indexOf(QStringLiteral("deg C")) - 60), 120).toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("MOhm")));
}

TEST(RecordPaper, signatures_and_photographs_come_as_pictures_where_they_are_at_hand_and_by_hash_where_not) {
    PaperInput input = sample::recorded_input();
    const auto count = [](const PaperInput& of, const QString& name) {
        int found = 0;
        for (const paper::Page& page : record_pages(of))
            for (const paper::Picture& picture : page.pictures)
                found += picture.name == name ? 1 : 0;
        return found;
    };
    EXPECT_EQ(count(input, QStringLiteral("photographs")) + count(input, QStringLiteral("signature")), 0);
    EXPECT_TRUE(
        record_text(input).contains(QStringLiteral("Roof hooks before the tiles were closed (SHA-256 aaaaaaaaaaaa)")));
    input.picture = sample::picture_of;
    EXPECT_EQ(count(input, QStringLiteral("photographs")), 1) << "two beside each other";
    EXPECT_EQ(count(input, QStringLiteral("signature")), 1);
    const QString text = record_text(input);
    EXPECT_TRUE(text.contains(QStringLiteral("Client: Marta Lindqvist")));
    EXPECT_TRUE(text.contains(QStringLiteral("To sign on paper"))) << "the electrician has not signed";
}

TEST(RecordPaper, every_kind_of_entry_has_words_with_a_unit_where_it_has_a_figure) {
    const QRegularExpression figure_alone(QStringLiteral("^[0-9.\u202f\u2212]+$"));
    for (const Word<ReadingKind>& word : words<ReadingKind>()) {
        Reading entry;
        entry.kind = word.value;
        entry.value = 12.0;
        EXPECT_FALSE(paper::entry_value(entry).isEmpty()) << word.key;
        EXPECT_FALSE(figure_alone.match(paper::entry_value(entry)).hasMatch()) << word.key;
        EXPECT_FALSE(paper::entry_kind(entry).isEmpty()) << word.key;
    }
}

TEST(RecordPaper, an_empty_record_says_so_and_leaves_room_to_sign) {
    const QString text = record_text(sample::input());
    EXPECT_TRUE(text.contains(QStringLiteral("Nothing is entered yet.")));
    EXPECT_TRUE(text.contains(QStringLiteral("No reading is entered that a verdict could rest on.")));
    EXPECT_TRUE(text.contains(QStringLiteral("To sign on paper")));
}

}  // namespace record_paper_test
}  // namespace wg::ui
