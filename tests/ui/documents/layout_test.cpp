#include <gtest/gtest.h>

#include "tests/ui/documents/record_sample.h"
#include "tests/ui/documents/recorder.h"
#include "tests/ui/documents/sample.h"
#include "ui/documents/drawings.h"
#include "ui/documents/flow.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace layout_test {

constexpr Paper all_papers[] = {
    Paper::quote,         Paper::install_sheet, Paper::survey_sheet,  Paper::workings,           Paper::record,
    Paper::service_sheet, Paper::booklet,       Paper::cover_letter,  Paper::order_confirmation, Paper::change_order,
    Paper::parts_list,    Paper::purchase_list, Paper::purchase_order};
constexpr double rounding = 1.0;       // page units: fonts are sized in whole hundredths of a millimetre
constexpr double true_to_scale = 2.0;  // page units: 0.02 mm on paper, a tenth of a drawn line

QRectF box_of(const paper::Lettering& piece) {
    // Cap height and a little of the descent: what the eye sees as the line.
    const double height = paper::text_units(piece.style.size_pt);
    return {piece.baseline.x(), piece.baseline.y() - 0.72 * height, piece.width, 0.80 * height};
}

void expect_clean(const std::vector<paper::Page>& pages, const std::string& what) {
    for (std::size_t p = 0; p < pages.size(); ++p) {
        const auto& pieces = pages[p].lettering;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const QRectF box = box_of(pieces[i]);
            const std::string where = what + " page " + std::to_string(p + 1) + ": " + pieces[i].text.toStdString();
            EXPECT_GE(box.left(), paper::margin - rounding) << where;
            EXPECT_LE(box.right(), pages[p].sheet.width - paper::margin + rounding) << where;
            EXPECT_GE(box.top(), paper::margin - rounding) << where;
            EXPECT_LE(box.bottom(), pages[p].sheet.height - paper::margin + rounding) << where;
            for (std::size_t j = i + 1; j < pieces.size(); ++j) {
                const QRectF both = box.intersected(box_of(pieces[j]));
                EXPECT_FALSE(both.width() > rounding && both.height() > rounding)
                    << where << " runs into " << pieces[j].text.toStdString();
            }
            for (const paper::Picture& picture : pages[p].pictures) {
                EXPECT_FALSE(picture.frame.intersects(box))
                    << where << " runs into picture " << picture.name.toStdString();
            }
        }
    }
}

std::vector<PaperLook> all_looks() {
    std::vector<PaperLook> looks;
    for (const PageForm form : {PageForm::a4, PageForm::letter})
        for (const bool large : {false, true})
            looks.push_back({form, large, large, Language::english});
    return looks;
}

std::vector<paper::Page> pages_of(Paper kind, const PaperInput& input) {
    return paper::lay_out(kind, std::make_shared<const PaperInput>(input));
}

TEST(PaperLayout, lettering_stays_inside_the_margins_and_never_overlaps) {
    PaperInput input = sample::input();
    PaperInput recorded = sample::recorded_input();
    recorded.picture = sample::picture_of;
    for (const PaperLook& look : all_looks()) {
        input.look = recorded.look = look;
        for (const Paper kind : all_papers) {
            const std::string name = (title_of(kind) + QLatin1Char(' ') + look_key(look)).toStdString();
            expect_clean(pages_of(kind, input), name);
            expect_clean(pages_of(kind, recorded), name + " with a record");
        }
    }
    input.look = {};
    input.plan.findings.insert(input.plan.findings.begin(), 12, sample::stop());
    input.plan.block.refrigerant = Refrigerant::r290;
    for (const Paper kind : all_papers)
        expect_clean(pages_of(kind, input), title_of(kind).toStdString() + " stopped");
}

TEST(PaperLayout, the_install_sheet_is_clean_in_every_language_and_breaks_no_word) {
    for (const Language language : {Language::english, Language::spanish, Language::german}) {
        PaperInput input = sample::input();
        input.look.language = language;
        input.plan.findings.insert(input.plan.findings.begin(), 3, sample::stop());
        const auto pages = pages_of(Paper::install_sheet, input);
        const PaperLanguage spoken(language);
        const QStringList to_sign = {say("Name"), say("Signature"), say("Date, time")};  // stand in no text
        const std::string what = "language " + std::to_string(static_cast<int>(language));
        expect_clean(pages, what);
        // A word cut by a narrow column leaves a line that is no whole words of the text on the page.
        for (const paper::Page& page : pages) {
            const QString all = QLatin1Char(' ') + page.text.join(QLatin1Char(' ')).simplified() + QLatin1Char(' ');
            for (const paper::Lettering& piece : page.lettering) {
                const QString line = piece.text.simplified();
                const qsizetype at = all.indexOf(line);
                if (at < 1 || line.size() < 2 || to_sign.contains(line)) continue;  // shortened heads are not found
                bool whole = false;
                for (qsizetype i = at; i >= 0 && !whole; i = all.indexOf(line, i + 1)) {
                    const QChar before = all[i - 1];
                    const QChar after = all[i + line.size()];
                    whole = !(before.isLetter() && line.front().isLetter()) &&
                            !(after.isLetter() && line.back().isLetter());
                }
                EXPECT_TRUE(whole) << what << ": " << line.toStdString();
            }
        }
    }
}

TEST(PaperLayout, very_long_entries_break_over_lines_and_pages_instead_of_running_off) {
    PaperInput input = sample::input();
    input.job.client.name = std::string(400, 'W');
    input.job.title = std::string(300, 'M');
    input.job.choices.front().label = std::string(500, 'Q');
    input.plan.choice_label = input.job.choices.front().label;
    input.firm.name = QString(300, QLatin1Char('F'));
    std::string notes;
    for (int i = 0; i < 3000; ++i)
        notes += "note ";
    input.job.notes = notes;
    input.job.survey.access = notes + "\n\x01\x7f end";
    input.plan.parts.lines[4].why = notes;
    input.plan.findings.front().message = notes;
    input.job.record = sample::recorded_input().job.record;
    input.job.record[5].note = notes;
    input.job.record[5].taken_by = std::string(200, 'N');
    input.job.record[7].instrument = std::string(200, 'I');
    input.job.record[9].kind = ReadingKind::photograph;
    input.job.record[9].note = notes;
    input.job.aftercare.warranty_words = notes;
    input.plan.service.front().text = notes;
    input.plan.cylinder.anode = std::string(400, 'A');
    for (const PaperLook& look : all_looks()) {
        input.look = look;
        for (const Paper kind : all_papers)
            expect_clean(pages_of(kind, input), (title_of(kind) + QLatin1Char(' ') + look_key(look)).toStdString());
    }
}

TEST(PaperLayout, nothing_is_lettered_below_nine_points_or_fourteen_in_large_print_drawings_included) {
    PaperInput input = sample::recorded_input();
    input.picture = sample::picture_of;
    for (const PaperLook& look : all_looks()) {
        input.look = look;
        const double least = look.large_print ? 14.0 : 9.0;
        for (const Paper kind : all_papers) {
            int seen = 0;
            for (const paper::Page& page : pages_of(kind, input)) {
                sample::Recorder recorder;
                sample::paint_on(recorder, page);
                for (const sample::SeenText& text : recorder.texts) {
                    EXPECT_GE(text.height_pt, least - 1e-6)
                        << title_of(kind).toStdString() << ": " << text.text.toStdString();
                    ++seen;
                }
            }
            // An order without one says only that.
            EXPECT_GT(seen, kind == Paper::order_confirmation || kind == Paper::change_order ? 10 : 15);
        }
    }
}

TEST(PaperLayout, a_look_is_kept_and_read_back) {
    for (PaperLook look : all_looks()) {
        look.language = look.large_print ? Language::german : Language::spanish;
        EXPECT_EQ(look_from_key(look_key(look)), look) << look_key(look).toStdString();
    }
    EXPECT_EQ(look_from_key(QStringLiteral("what is this")), PaperLook());
}

TEST(PaperLayout, black_and_white_paints_black_and_white_alone) {
    PaperInput input = sample::input();
    input.look.black_and_white = true;
    for (const QImage& page : preview(Paper::install_sheet, input, 60)) {
        int coloured = 0;
        for (int y = 0; y < page.height(); ++y)
            for (int x = 0; x < page.width(); ++x) {
                const QColor c = page.pixelColor(x, y);
                if (std::max({c.red(), c.green(), c.blue()}) - std::min({c.red(), c.green(), c.blue()}) > 6) ++coloured;
            }
        EXPECT_EQ(coloured, 0);
    }
}

TEST(PaperLayout, every_page_is_vector_throughout) {
    for (const Paper kind : all_papers) {
        for (const paper::Page& page : pages_of(kind, sample::input())) {
            sample::Recorder recorder;
            sample::paint_on(recorder, page);
            EXPECT_EQ(recorder.pixmaps, 0);
        }
    }
}

TEST(PaperLayout, the_scale_bar_is_as_long_on_paper_as_it_says) {
    for (const int denominator : {20, 25, 50, 75, 100, 200}) {
        const paper::DrawingScale scale{denominator};
        const paper::ScaleBar bar = paper::scale_bar_for(scale);
        sample::Recorder recorder;
        {
            QPainter painter(&recorder);
            paper::paint_scale_bar(painter, bar, QPointF(2000.0, 5000.0));
        }
        double left = 1e9;
        double right = -1e9;
        for (const QRectF& shape : recorder.shapes) {
            left = std::min(left, shape.left());
            right = std::max(right, shape.right());
        }
        // Length on site divided by the denominator, in hundredths of a millimetre.
        EXPECT_NEAR(right - left, bar.length_m * 1000.0 / denominator * 100.0, true_to_scale) << denominator;
        EXPECT_GE(right - left, 35.0 * paper::mm);
        EXPECT_LE(right - left, 110.0 * paper::mm);
    }
}

TEST(PaperLayout, the_roof_is_drawn_at_the_scale_that_is_stated) {
    const PaperInput input = sample::input();
    bool found = false;
    for (const paper::Page& page : pages_of(Paper::install_sheet, input)) {
        for (const paper::Picture& picture : page.pictures) {
            if (!picture.name.startsWith(QStringLiteral("South roof"))) continue;
            found = true;
            sample::Recorder recorder;
            {
                QPainter painter(&recorder);
                picture.paint(painter, picture.frame);
            }
            const double width = 9.2 * picture.units_per_m;
            const double height = 5.6 * picture.units_per_m;
            bool outline = false;
            for (const QRectF& shape : recorder.shapes) {
                outline = outline || (std::abs(shape.width() - width) < true_to_scale &&
                                      std::abs(shape.height() - height) < true_to_scale);
            }
            EXPECT_TRUE(outline) << "no shape of the roof's size at the stated scale";
            const int denominator = static_cast<int>(std::round(100000.0 / picture.units_per_m));
            const QString stated = QStringLiteral("Scale 1:%1 on A4").arg(denominator);
            EXPECT_TRUE(page.text.join(QLatin1Char('\n')).contains(stated)) << stated.toStdString();
        }
    }
    EXPECT_TRUE(found);
}

TEST(PaperLayout, the_largest_scale_that_fits_is_chosen) {
    const auto scale = [](double width_m, double height_m) {
        return paper::scale_that_fits(width_m, height_m, 150.0 * paper::mm, 150.0 * paper::mm);
    };
    EXPECT_EQ(scale(3.0, 2.0)->denominator, 20);  // 150 mm
    EXPECT_EQ(scale(3.01, 2.0)->denominator, 25);
    EXPECT_EQ(scale(7.5, 2.0)->denominator, 50);
    EXPECT_EQ(scale(2.0, 11.0)->denominator, 75);
    EXPECT_EQ(scale(15.0, 15.0)->denominator, 100);
    EXPECT_FALSE(scale(200.0, 1.0).has_value());
}

TEST(PaperFlow, a_table_over_two_pages_repeats_its_header) {
    paper::Flow flow({});
    paper::Table table;
    table.columns = {{QStringLiteral("Alpha"), 40.0}, {QStringLiteral("Beta"), 0.0, true}};
    for (int i = 0; i < 120; ++i)
        table.rows.push_back({QStringList{QStringLiteral("row %1").arg(i), QString::number(i)}});
    flow.table(table);
    const auto pages = flow.finish();
    ASSERT_GE(pages.size(), 2U);
    QStringList rows;
    for (const paper::Page& page : pages) {
        EXPECT_TRUE(page.text.contains(QStringLiteral("Alpha")));
        rows += page.text.filter(QStringLiteral("row "));
    }
    ASSERT_EQ(rows.size(), 120);
    for (int i = 0; i < 120; ++i)
        EXPECT_EQ(rows[i], QStringLiteral("row %1").arg(i));
}

TEST(PaperFlow, a_heading_never_stands_alone_at_the_foot_of_a_page) {
    for (int lines = 30; lines < 60; ++lines) {
        paper::Flow flow({});
        for (int i = 0; i < lines; ++i)
            flow.bullet(QStringLiteral("filler"));
        flow.heading(QStringLiteral("Heading"));
        flow.paragraph(QStringLiteral("What belongs to it."));
        for (const paper::Page& page : flow.finish()) {
            if (page.text.contains(QStringLiteral("Heading"))) {
                EXPECT_TRUE(page.text.contains(QStringLiteral("What belongs to it."))) << lines;
            }
        }
    }
}

TEST(PaperFlow, wrapping_loses_no_word) {
    const QString text = QStringLiteral("Mark all six fixing points from the set-out table, from the two edges named.");
    for (const double width : {20.0, 35.0, 60.0, 120.0}) {
        const QStringList lines = paper::wrap(text, {}, width * paper::mm);
        // A line may also end behind a hyphen.
        QString joined = lines.join(QLatin1Char(' '));
        EXPECT_EQ(joined.replace(QStringLiteral("- "), QStringLiteral("-")), text);
        for (const QString& line : lines)
            EXPECT_LE(paper::text_width(line, {}), width * paper::mm + rounding);
    }
}

}  // namespace layout_test
}  // namespace wg::ui
