#include <gtest/gtest.h>

#include <memory>

#include "core/job/words.h"
#include "tests/ui/documents/paper_texts.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/install_texts.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace languages_test {

constexpr Language others[] = {Language::spanish, Language::german};

QString sheet_in(Language language, PaperInput input) {
    input.look.language = language;
    return sample::text_of_paper(Paper::install_sheet, input);
}

TEST(PaperLanguages, every_step_tool_and_phrase_of_core_is_told_in_each_language) {
    for (const Language language : others) {
        const PaperLanguage spoken(language);
        for (const paper::StepText& line : paper::step_texts()) {
            EXPECT_TRUE(can_say(QString::fromUtf8(line.text))) << line.text;
            if (*line.why != '\0') {
                EXPECT_TRUE(can_say(QString::fromUtf8(line.why))) << line.why;
            }
        }
        for (const paper::ToolText& tool : paper::tool_texts()) {
            EXPECT_TRUE(can_say(QString::fromUtf8(tool.text))) << tool.text;
            EXPECT_TRUE(can_say(QString::fromUtf8(tool.place))) << tool.place;
        }
        for (const char* phrase : paper::core_phrases())
            EXPECT_TRUE(can_say(QString::fromUtf8(phrase))) << phrase;
    }
}

TEST(PaperLanguages, no_phrase_of_the_english_sheet_is_left_on_another) {
    PaperInput input = sample::input();
    input.plan.findings.clear();  // their texts are the test below
    for (parts::Line& line : input.plan.parts.lines)
        line.text = line.why = "";
    input.plan.block.refrigerant = Refrigerant::r290;
    input.plan.run.extra_charge_kg = 0.08;
    const QString english = sheet_in(Language::english, input);
    const std::pair<Language, const char*> files[] = {{Language::spanish, "paper_es.ts"},
                                                      {Language::german, "paper_de.ts"}};
    for (const auto& [language, file] : files) {
        const QString text = sheet_in(language, input);
        int seen = 0;
        for (const auto& [source, translation] : sample::phrases_in(file)) {
            ASSERT_FALSE(translation.isEmpty()) << file << ": " << source.toStdString();
            const QString piece = sample::longest_piece(source);
            if (piece.size() < 12 || !english.contains(piece) || translation.contains(piece)) continue;
            EXPECT_FALSE(text.contains(piece)) << file << ": " << piece.toStdString();
            ++seen;
        }
        EXPECT_GT(seen, 150) << file;
    }
}

TEST(PaperLanguages, figures_dates_and_bearings_follow_the_language_and_screens_do_not) {
    EXPECT_EQ(quantity(1234.5, QStringLiteral("kg"), 1), QStringLiteral("1\u202f234.5\u202fkg"));
    EXPECT_EQ(day("2027-06-21"), QStringLiteral("21 June 2027"));
    {
        const PaperLanguage spoken(Language::german);
        EXPECT_EQ(quantity(1234.5, QStringLiteral("kg"), 1), QStringLiteral("1\u202f234,5\u202fkg"));
        EXPECT_EQ(day("2027-06-21"), QStringLiteral("21. Juni 2027"));
        EXPECT_TRUE(bearing(90.0).endsWith(QLatin1Char('O'))) << "Ost";
        {
            const PaperLanguage inner(Language::spanish);
            EXPECT_EQ(day("2027-06-21"), QStringLiteral("21 de junio de 2027"));
            EXPECT_TRUE(bearing(270.0).endsWith(QLatin1Char('O'))) << "oeste";
        }
        EXPECT_EQ(say("Fitter"), QStringLiteral("Monteur"));
    }
    EXPECT_EQ(say("Fitter"), QStringLiteral("Fitter"));
    EXPECT_EQ(bearing(90.0).right(1), QStringLiteral("E"));
    // Only the papers whose words are all told are made in another language.
    PaperInput input = sample::input();
    input.look.language = Language::german;
    const auto workings = paper::lay_out(Paper::workings, std::make_shared<const PaperInput>(input));
    EXPECT_TRUE(workings.front().text.contains(QStringLiteral("Workings")));
}

TEST(PaperLanguages, readings_in_the_steps_carry_the_name_that_the_language_gives_them) {
    for (const Language language : others) {
        const QString text = sheet_in(language, sample::input());
        const PaperLanguage spoken(language);
        for (const ReadingKind kind : {ReadingKind::pressure_hold_start, ReadingKind::vacuum_level,
                                       ReadingKind::wall_contact, ReadingKind::loop_impedance}) {
            const QString name = say(wg::text_of(kind));
            EXPECT_NE(name, QString::fromLatin1(wg::text_of(kind)));
            EXPECT_TRUE(text.contains(name)) << name.toStdString();
        }
    }
}

TEST(PaperLanguages, what_core_says_is_told_by_its_pattern_with_figures_and_names_put_back) {
    EXPECT_EQ(paper::say_filled("run of 11.4 m"), QStringLiteral("run of 11.4 m")) << "English is as it stands";
    const PaperLanguage spoken(Language::german);
    EXPECT_EQ(paper::say_filled("takes up 5.2 l of expansion at a pre-charge of 3.5 bar"),
              QStringLiteral("nimmt 5,2 l Ausdehnung auf bei 3,5 bar Vordruck"));
    EXPECT_EQ(paper::say_filled("to be made: drain, 1.5 m"), QStringLiteral("herzustellen: Abfluss, 1,5 m"))
        << "a phrase within a phrase";
    EXPECT_EQ(paper::say_filled("own circuit for the block; sold by 5 m"),
              QStringLiteral("eigener Stromkreis für den Block; Gebinde 5 m"));
    // A name may look like a placeholder and is put back as it is.
    EXPECT_EQ(paper::say_filled("to be made: 100 %1 %2 wool"), QStringLiteral("herzustellen: 100 %1 %2 wool"));
    EXPECT_EQ(paper::say_filled("No such text of 3.5 bar"), QStringLiteral("„No such text of 3.5 bar“ (auf Englisch)"));
    EXPECT_EQ(paper::say_name("Utility room"), QStringLiteral("Utility room"));
    EXPECT_EQ(paper::edge_words(QStringLiteral("lower (from corner 3)")), QStringLiteral("unten (ab Ecke 3)"));
}

}  // namespace languages_test
}  // namespace wg::ui
