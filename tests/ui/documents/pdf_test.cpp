#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTransform>

#include "tests/ui/documents/sample.h"
#include "ui/documents/drawings.h"
#include "ui/documents/print_check.h"

namespace wg::ui {
namespace pdf_test {

constexpr Paper all_papers[] = {
    Paper::quote,         Paper::install_sheet, Paper::survey_sheet,  Paper::workings,           Paper::record,
    Paper::service_sheet, Paper::booklet,       Paper::cover_letter,  Paper::order_confirmation, Paper::change_order,
    Paper::parts_list,    Paper::purchase_list, Paper::purchase_order};

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Output of a program on a file; nullopt when the program is not installed.
std::optional<QString> output_of(const QString& program, const QString& path) {
    QProcess process;
    process.start(program, {path});
    if (!process.waitForStarted(5000)) return std::nullopt;
    process.waitForFinished(20000);
    return QString::fromUtf8(process.readAllStandardOutput());
}

TEST(PaperPdf, all_fonts_are_embedded_and_pages_are_a4) {
    QTemporaryDir folder;
    for (const Paper kind : all_papers) {
        const QString path = folder.filePath(file_name_of(kind));
        const auto written = write_pdf(kind, sample::input(), path);
        ASSERT_TRUE(written.ok()) << text_of(written.problems());
        const auto fonts = output_of(QStringLiteral("pdffonts"), path);
        const auto info = output_of(QStringLiteral("pdfinfo"), path);
        if (!fonts || !info) GTEST_SKIP() << "poppler's pdffonts and pdfinfo are not installed";
        const QStringList lines = fonts->trimmed().split(QLatin1Char('\n')).mid(2);
        ASSERT_FALSE(lines.isEmpty());
        for (const QString& line : lines) {
            // name type encoding emb sub uni object ID: 'emb' is the fifth column from the right.
            const QStringList columns = line.simplified().split(QLatin1Char(' '));
            ASSERT_GE(columns.size(), 7);
            EXPECT_EQ(columns[columns.size() - 5], QStringLiteral("yes")) << line.toStdString();
        }
        EXPECT_TRUE(info->contains(QStringLiteral("(A4)"))) << info->toStdString();
        const QString pages = QStringLiteral("Pages:");
        const QString count = info->mid(info->indexOf(pages) + pages.size()).trimmed().section(QLatin1Char('\n'), 0, 0);
        EXPECT_EQ(count.toInt(), static_cast<int>(written.value().pages.size()));
    }
}

/// How much darker the first is at the worst place of about 4 mm by 4 mm, 0..255. Lines and letters, which every
/// program draws a little thicker or thinner, are lost in so large a place.
int darker_by(const QImage& first, const QImage& second) {
    const QSize places(first.width() / 16, first.height() / 16);
    const auto grey = [&](const QImage& page) {
        return page.scaled(places, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(QImage::Format_Grayscale8);
    };
    const QImage a = grey(first);
    const QImage b = grey(second);
    int worst = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            worst = std::max(worst, b.constScanLine(y)[x] - a.constScanLine(y)[x]);
    return worst;
}

TEST(PaperPdf, tints_stay_tints_though_the_file_knows_no_transparency) {
    QTemporaryDir folder;
    for (const bool black : {false, true}) {
        for (const Paper kind : {Paper::quote, Paper::install_sheet, Paper::survey_sheet, Paper::booklet}) {
            PaperInput input = sample::input();
            input.look.black_and_white = black;
            const QString path = folder.filePath(file_name_of(kind));
            ASSERT_TRUE(write_pdf(kind, input, path).ok());
            constexpr int dpi = 100;
            const auto screen = preview(kind, input, dpi);
            for (std::size_t i = 0; i < screen.size(); ++i) {
                const QString n = QString::number(i + 1);
                const QString image = folder.filePath(QStringLiteral("page"));
                QProcess painter;
                painter.start(QStringLiteral("pdftoppm"),
                              {QStringLiteral("-r"), QString::number(dpi), QStringLiteral("-singlefile"),
                               QStringLiteral("-png"), QStringLiteral("-f"), n, QStringLiteral("-l"), n, path, image});
                if (!painter.waitForStarted(5000)) GTEST_SKIP() << "poppler's pdftoppm is not installed";
                ASSERT_TRUE(painter.waitForFinished(20000));
                const QImage printed(image + QStringLiteral(".png"));
                ASSERT_FALSE(printed.isNull());
                EXPECT_LT(darker_by(printed, screen[i]), 60)
                    << title_of(kind).toStdString() << ", page " << i + 1 << (black ? ", black" : "");
            }
        }
    }
}

TEST(PaperPdf, papers_are_for_the_archive_and_say_so) {
    // ISO 19005-1: 6.7.11 (part and conformance in the metadata), 6.2.2 (output intent), 6.4 (no transparency).
    for (const Paper kind : all_papers) {
        const auto pdf = pdf_bytes(kind, sample::input());
        ASSERT_TRUE(pdf.ok()) << text_of(pdf.problems());
        const QByteArray& bytes = pdf.value();
        EXPECT_TRUE(bytes.contains("pdfaid:part=\"1\"") && bytes.contains("pdfaid:conformance=\"B\""));
        EXPECT_TRUE(bytes.contains("/GTS_PDFA1"));
        static const QRegularExpression clear(QStringLiteral("/(?:ca|CA) 0|/SMask (?!/None)|/S /Transparency"));
        EXPECT_FALSE(QString::fromLatin1(bytes).contains(clear)) << title_of(kind).toStdString();
    }
}

TEST(PaperPdf, a_paper_that_cannot_be_written_leaves_what_was_there) {
    QTemporaryDir folder;
    const QString missing = folder.filePath(QStringLiteral("no such folder/quote.pdf"));
    const auto refused = write_pdf(Paper::quote, sample::input(), missing);
    ASSERT_FALSE(refused.ok());
    EXPECT_FALSE(refused.problems().front().remedy.empty());
    EXPECT_FALSE(QFile::exists(missing));
}

TEST(PaperPdf, an_older_paper_is_replaced_whole_and_nothing_else_is_left_in_the_folder) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("quote.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("older");
    old.close();
    ASSERT_TRUE(write_pdf(Paper::quote, sample::input(), path).ok());
    const QByteArray bytes = bytes_of(path);
    EXPECT_TRUE(bytes.startsWith("%PDF"));
    EXPECT_TRUE(bytes.trimmed().endsWith("%%EOF"));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(PaperPdf, preview_has_as_many_pages_as_the_paper_at_the_asked_size) {
    QTemporaryDir folder;
    const auto written = write_pdf(Paper::quote, sample::input(), folder.filePath(QStringLiteral("q.pdf")));
    ASSERT_TRUE(written.ok());
    const auto images = preview(Paper::quote, sample::input(), 40);
    EXPECT_EQ(images.size(), written.value().pages.size());
    EXPECT_EQ(images.front().size(), QSize(331, 468));  // A4 at 40 dpi
}

std::optional<QString> run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForStarted(5000)) return std::nullopt;
    process.waitForFinished(60000);
    return QString::fromUtf8(process.readAllStandardOutput());
}

std::vector<PaperLook> pdf_looks() {
    std::vector<PaperLook> looks;
    for (const PageForm form : {PageForm::a4, PageForm::letter})
        for (const bool large : {false, true})
            looks.push_back({form, large, false, Language::english});
    return looks;
}

TEST(PaperPdf, the_code_on_the_first_page_is_read_by_a_scanner) {
    QTemporaryDir folder;
    for (const PaperLook& look : pdf_looks()) {
        PaperInput input = sample::input();
        input.look = look;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        ASSERT_TRUE(write_pdf(Paper::install_sheet, input, path).ok());
        const QString image = folder.filePath(QStringLiteral("page"));
        // The code stands where the overview ends: on the first page, in large print on a later one.
        bool read = false;
        for (int page = 1; page <= 6 && !read; ++page) {
            const QString n = QString::number(page);
            if (!run(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("120"), QStringLiteral("-gray"),
                                                  QStringLiteral("-singlefile"), QStringLiteral("-png"),
                                                  QStringLiteral("-f"), n, QStringLiteral("-l"), n, path, image}))
                GTEST_SKIP() << "poppler's pdftoppm is not installed";
            const auto seen =
                run(QStringLiteral("zbarimg"), {QStringLiteral("-q"), QStringLiteral("--raw"),
                                                QStringLiteral("--nodbus"), image + QStringLiteral(".png")});
            if (!seen) GTEST_SKIP() << "zbarimg is not installed";
            if (seen->trimmed().isEmpty()) continue;
            read = true;
            EXPECT_EQ(seen->trimmed(), print_code(input.plan));
            EXPECT_EQ(check_print(*seen, input.plan.job_id, input.plan.job_revision, input.plan.plan_mark).state,
                      PrintState::present);
        }
        EXPECT_TRUE(read) << look_key(look).toStdString();
    }
}

/// Boxes of the paths of an SVG that pdftocairo made, in millimetres on paper (its user unit is 1 pt).
std::vector<QRectF> path_boxes(const QString& svg) {
    static const QRegularExpression path(
        QStringLiteral("<path[^>]*? d=\"([^\"]*)\"[^>]*?(?:transform=\"matrix\\(([^)]*)\\)\")?[^>]*/>"));
    static const QRegularExpression figure(QStringLiteral("-?[0-9]+(?:\\.[0-9]+)?(?:e-?[0-9]+)?"));
    static const QRegularExpression turn(QStringLiteral("transform=\"matrix\\(([^)]*)\\)\""));
    std::vector<QRectF> boxes;
    for (auto it = path.globalMatch(svg); it.hasNext();) {
        const auto match = it.next();
        QTransform matrix;
        if (const auto found = turn.match(match.captured(0)); found.hasMatch()) {
            const QStringList m =
                found.captured(1).split(QRegularExpression(QStringLiteral("[, ]+")), Qt::SkipEmptyParts);
            if (m.size() == 6)
                matrix = QTransform(m[0].toDouble(), m[1].toDouble(), m[2].toDouble(), m[3].toDouble(), m[4].toDouble(),
                                    m[5].toDouble());
        }
        QPolygonF points;
        QList<double> pair;
        for (auto number = figure.globalMatch(match.captured(1)); number.hasNext();) {
            pair += number.next().captured(0).toDouble();
            if (pair.size() == 2) {
                points << matrix.map(QPointF(pair[0], pair[1]));
                pair.clear();
            }
        }
        const QRectF box = points.boundingRect();
        constexpr double mm_per_pt = 25.4 / 72.0;
        boxes.emplace_back(box.left() * mm_per_pt, box.top() * mm_per_pt, box.width() * mm_per_pt,
                           box.height() * mm_per_pt);
    }
    return boxes;
}

TEST(PaperPdf, the_roof_in_the_file_is_true_to_the_scale_it_states_within_half_a_millimetre) {
    QTemporaryDir folder;
    for (const PaperLook& look : pdf_looks()) {
        PaperInput input = sample::input();
        input.look = look;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        ASSERT_TRUE(write_pdf(Paper::install_sheet, input, path).ok());
        bool stated = false;
        for (int page = 1; page <= 30 && !stated; ++page) {
            const QString n = QString::number(page);
            const auto words = run(QStringLiteral("pdftotext"),
                                   {QStringLiteral("-f"), n, QStringLiteral("-l"), n, path, QStringLiteral("-")});
            if (!words) GTEST_SKIP() << "poppler's pdftotext is not installed";
            const auto scale = QRegularExpression(QStringLiteral("Scale\\s1:(\\d+)\\son\\s(A4|Letter)")).match(*words);
            if (!scale.hasMatch()) continue;
            stated = true;
            EXPECT_EQ(scale.captured(2), look.form == PageForm::a4 ? QStringLiteral("A4") : QStringLiteral("Letter"));
            const double denominator = scale.captured(1).toDouble();
            const auto svg = run(QStringLiteral("pdftocairo"), {QStringLiteral("-svg"), QStringLiteral("-f"), n,
                                                                QStringLiteral("-l"), n, path, QStringLiteral("-")});
            if (!svg) GTEST_SKIP() << "poppler's pdftocairo is not installed";
            // The sample's roof is 9.2 m by 5.6 m.
            double nearest = 1e9;
            for (const QRectF& box : path_boxes(*svg))
                nearest = std::min(nearest, std::max(std::abs(box.width() - 9200.0 / denominator),
                                                     std::abs(box.height() - 5600.0 / denominator)));
            EXPECT_LT(nearest, 0.5) << look_key(look).toStdString();
        }
        EXPECT_TRUE(stated) << look_key(look).toStdString();
    }
}

/// The page that states a scale: its number, the denominator and its paths; `page` is 0 when no page does.
struct ScaledPage {
    int page = 0;
    double denominator = 0.0;
    std::vector<QRectF> boxes;
};
std::optional<ScaledPage> first_scaled_page(const QString& path) {
    for (int page = 1; page <= 30; ++page) {
        const QString n = QString::number(page);
        const auto words = run(QStringLiteral("pdftotext"),
                               {QStringLiteral("-f"), n, QStringLiteral("-l"), n, path, QStringLiteral("-")});
        if (!words) return std::nullopt;
        const auto scale = QRegularExpression(QStringLiteral("Scale\\s1:(\\d+)\\son\\s")).match(*words);
        if (!scale.hasMatch()) continue;
        const auto svg = run(QStringLiteral("pdftocairo"), {QStringLiteral("-svg"), QStringLiteral("-f"), n,
                                                            QStringLiteral("-l"), n, path, QStringLiteral("-")});
        if (!svg) return std::nullopt;
        return ScaledPage{page, scale.captured(1).toDouble(), path_boxes(*svg)};
    }
    return ScaledPage{};
}

TEST(PaperPdf, fixing_points_and_scale_bar_in_the_file_are_true_within_half_a_millimetre) {
    QTemporaryDir folder;
    for (const PaperLook& look : pdf_looks()) {
        const std::string name = look_key(look).toStdString();
        PaperInput input = sample::input();
        input.look = look;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        ASSERT_TRUE(write_pdf(Paper::install_sheet, input, path).ok());
        const auto found = first_scaled_page(path);
        if (!found) GTEST_SKIP() << "poppler's pdftotext and pdftocairo are not installed";
        ASSERT_GT(found->page, 0) << name;
        const double mm_per_m = 1000.0 / found->denominator;
        // The sample's roof is 9.2 m by 5.6 m; its lower left corner is where the points are measured from.
        const QRectF* roof = nullptr;
        for (const QRectF& box : found->boxes)
            if (std::abs(box.width() - 9.2 * mm_per_m) < 0.5 && std::abs(box.height() - 5.6 * mm_per_m) < 0.5)
                roof = &box;
        ASSERT_NE(roof, nullptr) << name;
        for (const fixing::FixingPoint& point : input.plan.placements.front().fixing.points) {
            const QPointF wanted(roof->left() + point.position.x_m * mm_per_m,
                                 roof->bottom() - point.position.y_m * mm_per_m);
            double nearest = 1e9;
            for (const QRectF& box : found->boxes) {
                if (std::max(box.width(), box.height()) > 6.0) continue;  // a mark, no line or plate
                nearest = std::min(nearest, std::hypot(box.center().x() - wanted.x(), box.center().y() - wanted.y()));
            }
            EXPECT_LT(nearest, 0.5) << name << ", point " << point.number;
        }
        // The bar is the row of equal boxes 1.6 mm high; together they are its length at the stated scale.
        const paper::ScaleBar bar = paper::scale_bar_for({static_cast<int>(found->denominator)});
        const double part = bar.length_m / bar.parts * mm_per_m;
        QRectF all;
        int parts = 0;
        for (const QRectF& box : found->boxes) {
            if (std::abs(box.height() - 1.6) > 0.1 || std::abs(box.width() - part) > 0.2) continue;
            all = all.united(box);
            ++parts;
        }
        EXPECT_GE(parts, bar.parts) << name;
        EXPECT_NEAR(all.width(), bar.length_m * mm_per_m, 0.5) << name;
    }
}

TEST(PaperPdf, no_lettering_in_the_file_is_smaller_than_the_least) {
    QTemporaryDir folder;
    for (const PaperLook& look : pdf_looks()) {
        PaperInput input = sample::input();
        input.look = look;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        ASSERT_TRUE(write_pdf(Paper::install_sheet, input, path).ok());
        // At zoom 3 a size of 9 pt is told as 27.
        const auto xml =
            run(QStringLiteral("pdftohtml"), {QStringLiteral("-xml"), QStringLiteral("-zoom"), QStringLiteral("3"),
                                              QStringLiteral("-i"), QStringLiteral("-stdout"), path});
        if (!xml) GTEST_SKIP() << "poppler's pdftohtml is not installed";
        static const QRegularExpression size(QStringLiteral("<fontspec [^>]*size=\"(\\d+)\""));
        int sizes = 0;
        for (auto it = size.globalMatch(*xml); it.hasNext(); ++sizes) {
            const int told = it.next().captured(1).toInt();
            EXPECT_GE(told, look.large_print ? 42 : 27) << look_key(look).toStdString();
        }
        EXPECT_GE(sizes, 3) << "headings, text and drawings differ";
    }
}

}  // namespace pdf_test
}  // namespace wg::ui
