#pragma once
// What papers say, and the phrases they say it with, for tests of their languages.

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <memory>
#include <utility>
#include <vector>

#include "tests/ui/documents/sample.h"
#include "ui/documents/papers.h"

namespace wg::ui::sample {

/// Every text of every page, a line each.
inline QString text_of_paper(Paper paper, const PaperInput& input) {
    QString text;
    for (const paper::Page& page : paper::lay_out(paper, std::make_shared<const PaperInput>(input)))
        text += page.text.join(QLatin1Char('\n')) + QLatin1Char('\n');
    return text;
}

/// The longest piece of fixed text of a phrase, which stands for it.
inline QString longest_piece(const QString& phrase) {
    static const QRegularExpression hole(QStringLiteral("%\\d|\\{[a-z_]+\\}"));
    QString piece;
    for (const QString& part : phrase.split(hole))
        if (part.size() > piece.size()) piece = part;
    return piece;
}

/// Source and translation of every phrase, as the translators' files have them.
inline std::vector<std::pair<QString, QString>> phrases_in(const char* file) {
    QFile source(QStringLiteral(WG_RESOURCES_DIR "/translations/") + QLatin1String(file));
    EXPECT_TRUE(source.open(QIODevice::ReadOnly)) << file;
    std::vector<std::pair<QString, QString>> phrases;
    QXmlStreamReader xml(&source);
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) continue;
        if (xml.name() == QStringLiteral("source")) phrases.emplace_back(xml.readElementText(), QString());
        if (xml.name() == QStringLiteral("translation")) phrases.back().second = xml.readElementText();
    }
    return phrases;
}

}  // namespace wg::ui::sample
