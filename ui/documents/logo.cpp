#include "ui/documents/logo.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <algorithm>

namespace wg::ui {
namespace {

constexpr int print_px = 1200;  // of the longer side: 600 dots per inch and more at the size that papers draw
constexpr int most_svg_elements = 5000;
constexpr int deepest_svg = 64;

Problem logo_problem(const char* what, const char* remedy = "Choose a PNG, JPEG or SVG file") {
    return {"picture", what, remedy};
}

/// On white, without an alpha channel.
QImage opaque(const QImage& picture) {
    QImage out(picture.size(), QImage::Format_RGB32);
    out.fill(Qt::white);
    QPainter painter(&out);
    painter.drawImage(0, 0, picture);
    painter.end();
    return out;
}

Result<QImage> raster(const QByteArray& bytes, const char* format) {
    QByteArray held = bytes;
    QBuffer buffer(&held);
    if (!buffer.open(QIODevice::ReadOnly)) return logo_problem("cannot be read");
    QImageReader reader(&buffer, format);
    reader.setAutoTransform(true);
    // Judged before a pixel is decoded: a few bytes can name a picture of gigabytes.
    const QSize size = reader.size();
    if (!size.isValid())
        return logo_problem("is damaged: its size cannot be read", "Save it anew from a picture program");
    if (size.width() > max_logo_px || size.height() > max_logo_px)
        return logo_problem("is larger than 6000 pixels", "Save it smaller");
    if (size.width() < least_logo_px || size.height() < least_logo_px)
        return logo_problem("is smaller than 16 pixels", "Save it larger");
    const QImage picture = reader.read();
    if (picture.isNull())
        return logo_problem("is damaged: it cannot be decoded", "Save it anew from a picture program");
    const QImage fitting = std::max(picture.width(), picture.height()) > print_px
                               ? picture.scaled(print_px, print_px, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                               : picture;
    return opaque(fitting);
}

bool reaches_outside(const QXmlStreamAttribute& attribute) {
    const QString value = attribute.value().toString();
    if (attribute.name() == QLatin1String("href")) return !value.trimmed().startsWith(QLatin1Char('#'));
    if (attribute.name().startsWith(QLatin1String("on"))) return true;  // what a script would do
    QString rest = value.toLower();
    rest.remove(QStringLiteral("url(#"));
    return rest.contains(QStringLiteral("url(")) || rest.contains(QStringLiteral("@import"));
}

/// What stands in it, before a renderer sees it.
std::optional<Problem> refuse_svg(const QByteArray& bytes) {
    QXmlStreamReader xml(bytes);
    int elements = 0;
    int depth = 0;
    bool root = false;
    while (!xml.atEnd()) {
        const auto token = xml.readNext();
        if (token == QXmlStreamReader::DTD) {
            // Entities can grow without end, and a document type can name files.
            return logo_problem("is an SVG with a document type", "Save it as plain SVG");
        }
        if (token == QXmlStreamReader::EndElement) --depth;
        if (token == QXmlStreamReader::Characters &&
            (xml.text().contains(QLatin1String("@import"), Qt::CaseInsensitive) ||
             xml.text().contains(QLatin1String("url("), Qt::CaseInsensitive)))
            return logo_problem("is an SVG whose style reaches outside the file", "Save it as plain SVG");
        if (token != QXmlStreamReader::StartElement) continue;
        if (!root && xml.name() != QLatin1String("svg")) return logo_problem("is no picture");
        root = true;
        if (++elements > most_svg_elements || ++depth > deepest_svg)
            return logo_problem("is an SVG with too many parts", "Save it simpler, or as PNG");
        for (const char* name : {"image", "use", "script", "foreignObject", "animate", "set", "animateTransform",
                                 "animateColor", "animateMotion", "video", "audio"}) {
            if (xml.name() == QLatin1String(name))
                return logo_problem("is an SVG with linked, repeated or moving parts",
                                    "Save it as plain SVG, or as PNG");
        }
        for (const QXmlStreamAttribute& attribute : xml.attributes()) {
            if (reaches_outside(attribute))
                return logo_problem("is an SVG that reaches outside the file", "Save it as plain SVG, or as PNG");
        }
    }
    if (xml.hasError() || !root) return logo_problem("is no picture, or damaged");
    return std::nullopt;
}

Result<QImage> vector_picture(const QByteArray& bytes) {
    if (auto problem = refuse_svg(bytes)) return *problem;
    QSvgRenderer renderer(bytes);
    const QSizeF size = renderer.viewBoxF().size();
    if (!renderer.isValid() || !(size.width() > 0.0) || !(size.height() > 0.0))
        return logo_problem("is an SVG that cannot be drawn", "Save it as plain SVG, or as PNG");
    const QSize px = size.scaled(print_px, print_px, Qt::KeepAspectRatio).toSize();
    if (px.width() < least_logo_px || px.height() < least_logo_px)
        return logo_problem("is an SVG far wider or higher than the other way", "Save it less narrow");
    QImage out(px, QImage::Format_RGB32);
    out.fill(Qt::white);
    QPainter painter(&out);
    renderer.render(&painter, QRectF(QPointF(), QSizeF(px)));
    painter.end();
    return out;
}

bool is_png(const QByteArray& bytes) {
    return bytes.startsWith("\x89PNG\r\n\x1A\n");
}

bool is_jpeg(const QByteArray& bytes) {
    return bytes.startsWith("\xFF\xD8\xFF");
}

}  // namespace

Result<QImage> signature_from_bytes(const QByteArray& bytes) {
    if (bytes.size() > max_logo_bytes) return logo_problem("is larger than 1 MiB", "Save it smaller");
    if (is_png(bytes)) return raster(bytes, "png");
    if (is_jpeg(bytes)) return raster(bytes, "jpeg");
    return logo_problem("is neither PNG nor JPEG", "Scan or photograph the signature as PNG or JPEG");
}

Result<QImage> logo_from_bytes(const QByteArray& bytes) {
    if (bytes.isEmpty()) return logo_problem("is empty");
    if (bytes.size() > max_logo_bytes || is_png(bytes) || is_jpeg(bytes)) return signature_from_bytes(bytes);
    return vector_picture(bytes);
}

}  // namespace wg::ui
