#include "ui/documents/documents.h"

#include <QBuffer>
#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/common/whole_file.h"
#include "ui/documents/papers.h"

namespace wg::ui {

QString file_name_of(Paper paper) {
    switch (paper) {
        case Paper::quote: return QStringLiteral("quote.pdf");
        case Paper::install_sheet: return QStringLiteral("install-sheet.pdf");
        case Paper::survey_sheet: return QStringLiteral("survey-sheet.pdf");
        case Paper::workings: return QStringLiteral("workings.pdf");
        case Paper::record: return QStringLiteral("record.pdf");
        case Paper::service_sheet: return QStringLiteral("service-sheet.pdf");
        case Paper::booklet: return QStringLiteral("booklet.pdf");
        case Paper::cover_letter: return QStringLiteral("cover-letter.pdf");
        case Paper::order_confirmation: return QStringLiteral("order-confirmation.pdf");
        case Paper::change_order: return QStringLiteral("change-order.pdf");
        case Paper::parts_list: return QStringLiteral("parts-list.pdf");
        case Paper::purchase_list: return QStringLiteral("purchase-list.pdf");
        case Paper::purchase_order: return QStringLiteral("purchase-order.pdf");
    }
    return {};
}

QString title_of(Paper paper) {
    switch (paper) {
        case Paper::quote: return say("Quote");
        case Paper::install_sheet: return say("Install sheet");
        case Paper::survey_sheet: return say("Survey sheet");
        case Paper::workings: return say("Workings");
        case Paper::record: return say("Record");
        case Paper::service_sheet: return say("Service sheet");
        case Paper::booklet: return say("Hand-over booklet");
        case Paper::cover_letter: return say("Cover letter");
        case Paper::order_confirmation: return say("Order confirmation");
        case Paper::change_order: return say("Change order");
        case Paper::parts_list: return say("Parts list");
        case Paper::purchase_list: return say("Purchase list");
        case Paper::purchase_order: return say("Purchase order");
    }
    return {};
}

QString look_key(const PaperLook& look) {
    QStringList words;
    words += look.form == PageForm::letter ? QStringLiteral("letter") : QStringLiteral("a4");
    if (look.large_print) words += QStringLiteral("large-print");
    if (look.black_and_white) words += QStringLiteral("black-and-white");
    words += look.language == Language::spanish  ? QStringLiteral("es")
             : look.language == Language::german ? QStringLiteral("de")
                                                 : QStringLiteral("en");
    return words.join(QLatin1Char(' '));
}

PaperLook look_from_key(const QString& key) {
    const QStringList words = key.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    PaperLook look;
    if (words.contains(QStringLiteral("letter"))) look.form = PageForm::letter;
    look.large_print = words.contains(QStringLiteral("large-print"));
    look.black_and_white = words.contains(QStringLiteral("black-and-white"));
    if (words.contains(QStringLiteral("es"))) look.language = Language::spanish;
    if (words.contains(QStringLiteral("de"))) look.language = Language::german;
    return look;
}

namespace {

QPageSize::PageSizeId page_form_of(const PaperLook& look) {
    return look.form == PageForm::letter ? QPageSize::Letter : QPageSize::A4;
}

Composition texts_of(const std::vector<paper::Page>& pages) {
    Composition composition;
    for (const paper::Page& page : pages)
        composition.pages.push_back(page.text);
    return composition;
}

}  // namespace

Composition compose(Paper paper, const PaperInput& input, QPagedPaintDevice& device) {
    const auto pages = paper::lay_out(paper, std::make_shared<const PaperInput>(input));
    device.setPageLayout(
        QPageLayout(QPageSize(page_form_of(input.look)), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    QPainter painter;
    if (!painter.begin(&device)) return {};
    const double units = device.logicalDpiX() / paper::units_per_inch;
    // Printers that cannot print to the edge start inside it; the sheet's own margins are larger than theirs.
    const QPointF inset = device.pageLayout().paintRectPixels(device.logicalDpiX()).topLeft();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !device.newPage()) return {};
        painter.save();
        painter.translate(-inset);
        painter.scale(units, units);
        paper::paint_page(painter, pages[i]);
        painter.restore();
    }
    if (!painter.end()) return {};
    return texts_of(pages);
}

Result<QByteArray> pdf_bytes(Paper paper, const PaperInput& input, Composition* composition) {
    const auto fail = [&](const char* what) {
        return Problem{title_of(paper).toStdString(), what, "Close other programs and try again"};
    };
    QBuffer buffer;
    if (!buffer.open(QIODevice::WriteOnly)) return fail("no memory for the paper");
    Composition composed;
    {
        QPdfWriter writer(&buffer);
        // For the archive (ISO 19005-1): fonts and colour profile within, nothing transparent, no scripts.
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(1200);
        writer.setTitle(title_of(paper) + QLatin1Char(' ') + qs(input.job.number));
        writer.setCreator(QStringLiteral("Warmgable"));
        composed = compose(paper, input, writer);
    }
    if (composed.pages.empty() || !buffer.data().startsWith("%PDF")) return fail("the paper could not be composed");
    if (composition != nullptr) *composition = std::move(composed);
    return buffer.data();
}

Result<Composition> write_pdf(Paper paper, const PaperInput& input, const QString& path) {
    // Composed in memory first, then written beside and renamed: a half-written paper is never seen.
    Composition composition;
    const Result<QByteArray> bytes = pdf_bytes(paper, input, &composition);
    if (!bytes) return bytes.problems();
    const Result<bool> written = write_whole(path, bytes.value());
    if (!written) return written.problems();
    return composition;
}

std::vector<QImage> preview(Paper paper, const PaperInput& input, int dpi) {
    const auto pages = paper::lay_out(paper, std::make_shared<const PaperInput>(input));
    const double units = dpi / paper::units_per_inch;
    std::vector<QImage> images;
    for (const paper::Page& page : pages) {
        const QSize size(qRound(page.sheet.width * units), qRound(page.sheet.height * units));
        QImage image(size, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(units, units);
        paper::paint_page(painter, page);
        painter.end();
        images.push_back(std::move(image));
    }
    return images;
}

}  // namespace wg::ui
