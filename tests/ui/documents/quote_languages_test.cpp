// The quote in every language: choices beside each other, options, instalments, subsidies, ranges and cautions
// included.

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include "tests/ui/documents/paper_texts.h"
#include "ui/common/format.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace quote_languages_test {

PaperInput full_quote(Language language) {
    PaperInput input = sample::input();
    input.look.language = language;
    input.quote_number = QStringLiteral("Q2027-0007");
    input.takes_place_of = QStringLiteral("Q2027-0006");
    input.tariffs = economy::Tariffs{};
    input.job.offer.discount_percent = 2.5;
    input.plan.quote->discount = {12'345};
    input.job.title = "Job 7";
    for (parts::Line& line : input.plan.quote->lines)
        line.text.clear();  // names of data stay as the data have them
    input.plan.range_method =
        "eight in ten of 10 made years of the climate, and two runs of the year with plate to refrigerant -20/+20 %, "
        "compressor -5/+5 %, condenser -15/+15 %, draw-off +15/-15 % together (sizes assumed)";
    input.plan.economy.present_cost = {40'000};
    input.plan.economy.simple_payback_y = 12.0;
    input.plan.services.water.to_be_made = {"drain, 1.5 m"};
    input.plan.findings = {{"heater.large-share", Severity::caution, Stage::yield, "", "",
                            "The immersion heater uses 31 % of the electricity",
                            "Take a larger block or more collector area", "", ""}};
    quote::Offered offered;
    offered.quote = *input.plan.quote;
    quote::Option option;
    option.line.line.text = "Recirculation pump with timer";
    option.line.line.unit = "pc";
    option.line.line.to_buy = 1.0;
    option.gross = {23'450};
    offered.options = {option};
    offered.subsidies = {{"", "Grant 7 of the town", {50'000}}};
    offered.granted = {50'000};
    offered.to_bring = input.plan.quote->gross - Money{50'000};
    offered.instalments = {{"", "I", 40.0, {100'000}}, {"", "II", 60.0, {150'000}}};
    input.plan.offered = offered;
    for (int n = 1; n <= 2; ++n) {
        plan::Plan other = input.plan;
        other.choice_id = sample::uuid(60 + n);
        other.choice_label = "B" + std::to_string(n);
        other.figures.electricity_kwh = {400.0 + n, 450.0 + n, 520.0 + n};
        Choice choice = input.job.choices.front();
        choice.id = other.choice_id;
        choice.label = other.choice_label;
        input.job.choices.push_back(choice);
        input.beside.push_back(std::make_shared<const plan::Plan>(other));
    }
    return input;
}

QString quote_in(Language language) {
    return sample::text_of_paper(Paper::quote, full_quote(language));
}

TEST(QuoteLanguages, no_phrase_of_the_english_quote_is_left_on_another) {
    const QString english = quote_in(Language::english);
    for (const auto& [language, file] :
         {std::pair{Language::spanish, "paper_es.ts"}, std::pair{Language::german, "paper_de.ts"}}) {
        const QString text = quote_in(language);
        int seen = 0;
        for (const auto& [source, translation] : sample::phrases_in(file)) {
            const QString piece = sample::longest_piece(source);
            if (piece.size() < 8 || !english.contains(piece) || translation.contains(piece)) continue;
            EXPECT_FALSE(text.contains(piece)) << file << ": " << piece.toStdString();
            ++seen;
        }
        EXPECT_GT(seen, 60) << file;
        EXPECT_FALSE(text.contains(QStringLiteral("(en inglés)")) || text.contains(QStringLiteral("(auf Englisch)")));
    }
}

TEST(QuoteLanguages, sums_dates_and_shares_are_written_as_the_language_does) {
    const QString german = quote_in(Language::german);
    EXPECT_TRUE(german.contains(QStringLiteral("Angebot Q2027-0007")));
    EXPECT_TRUE(german.contains(QStringLiteral("12. April 2027")));
    EXPECT_TRUE(german.contains(QStringLiteral("12. Mai 2027"))) << "held for 30 days";
    EXPECT_TRUE(german.contains(QStringLiteral("234,50\u202fEUR")));
    EXPECT_TRUE(german.contains(QStringLiteral("2,50\u202f%"))) << "the discount";
    EXPECT_TRUE(german.contains(QStringLiteral("Abfluss, 1,5\u202fm")) ||
                german.contains(QStringLiteral("Abfluss, 1,5 m")));
    EXPECT_TRUE(german.contains(QStringLiteral("Zirkulationspumpe"))) << "an option";
    const QString spanish = quote_in(Language::spanish);
    EXPECT_TRUE(spanish.contains(QStringLiteral("12 de abril de 2027")));
    EXPECT_TRUE(spanish.contains(QStringLiteral("1\u202f500,00\u202fEUR"))) << "an instalment";
    EXPECT_TRUE(spanish.contains(QStringLiteral("Total a pagar")));
    for (const QString& text : {german, spanish}) {
        EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("\\d\\.\\d\\d\u202fEUR"))));
        EXPECT_TRUE(text.contains(QStringLiteral("Grant 7 of the town"))) << "the office's own words stay";
    }
}

TEST(QuoteLanguages, the_caution_at_the_foot_is_never_cut) {
    for (const Language language : {Language::english, Language::spanish, Language::german}) {
        for (int month = 1; month <= 12; ++month) {
            PaperInput input = full_quote(language);
            input.look.large_print = true;
            input.look.form = month % 2 == 0 ? PageForm::letter : PageForm::a4;
            input.printed_on = QDate(2027, month, 28);
            const auto pages = paper::lay_out(Paper::quote, std::make_shared<const PaperInput>(input));
            ASSERT_FALSE(pages.empty());
            for (const paper::Page& page : pages)
                EXPECT_EQ(page.lettering.back().text.toStdString(), page.text.back().toStdString());
        }
    }
}

TEST(QuoteLanguages, the_place_to_sign_stands_with_what_to_know) {
    for (const Language language : {Language::english, Language::spanish, Language::german}) {
        const PaperInput input = full_quote(language);
        const auto pages = paper::lay_out(Paper::quote, std::make_shared<const PaperInput>(input));
        const PaperLanguage spoken(language);
        const QString know = say("What you should know before you decide");
        for (const paper::Page& page : pages) {
            if (page.text.contains(know)) EXPECT_TRUE(page.text.contains(say("Order"))) << know.toStdString();
        }
    }
}

TEST(QuoteLanguages, each_phrase_of_core_is_found_with_its_figures_in_place) {
    for (const Language language : {Language::spanish, Language::german}) {
        const PaperLanguage spoken(language);
        for (const char* phrase : paper::offer_phrases()) {
            QString english = QString::fromUtf8(phrase);
            QString wanted = say(phrase);
            for (int n = 1; n <= 5; ++n) {
                const QString figure = QStringLiteral("%1.5").arg(10 + n);
                english.replace(QStringLiteral("%%1").arg(n), figure);
                wanted.replace(QStringLiteral("%%1").arg(n), QStringLiteral("%1,5").arg(10 + n));
            }
            EXPECT_EQ(paper::say_filled(english.toStdString()).toStdString(), with_signs(wanted).toStdString());
        }
    }
}

TEST(QuoteLanguages, core_still_says_what_the_patterns_wait_for) {
    QString sources;
    QDirIterator files(QStringLiteral(WG_TESTS_DIR "/../core"), {QStringLiteral("*.cpp")}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        sources += QString::fromUtf8(file.readAll());
    }
    for (const char* name : {"prices/invented.json", "rules/assumed.json"}) {
        QFile file(QStringLiteral(WG_RESOURCES_DIR "/") + QLatin1String(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        sources += QString::fromUtf8(file.readAll());
    }
    static const QRegularExpression joint(QStringLiteral("\"\\s*\\n\\s*\""));
    sources.remove(joint);
    ASSERT_GT(sources.size(), 1'000'000);
    for (const char* phrase : paper::offer_phrases()) {
        const QString piece = sample::longest_piece(QString::fromUtf8(phrase));
        // A piece may be put together from two literals.
        const QString head = piece.left(16), tail = piece.right(16);
        EXPECT_TRUE(sources.contains(head) || sources.contains(tail)) << phrase;
    }
}

}  // namespace quote_languages_test
}  // namespace wg::ui
