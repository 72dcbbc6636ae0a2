#include "ui/documents/filled_words.h"

#include <QRegularExpression>
#include <algorithm>
#include <optional>

#include "ui/common/paper_words.h"

namespace wg::ui::paper {
namespace {

/// A pattern taken apart: %n catches whatever stands between two pieces of fixed text.
struct Pattern {
    const char* english = "";
    QRegularExpression form;
    qsizetype fixed = 0;  ///< letters of fixed text: the more, the less by chance it fits
    int holes = 0;
};

Pattern pattern_of(const char* english) {
    const QString text = QString::fromUtf8(english);
    Pattern pattern;
    pattern.english = english;
    QString form;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] == QLatin1Char('%') && i + 1 < text.size() && text[i + 1].isDigit()) {
            form += QStringLiteral("(.+?)");
            ++pattern.holes;
            ++i;
            continue;
        }
        form += QRegularExpression::escape(QString(text[i]));
        ++pattern.fixed;
    }
    pattern.form =
        QRegularExpression(QRegularExpression::anchoredPattern(form), QRegularExpression::DotMatchesEverythingOption);
    pattern.form.optimize();
    return pattern;
}

const std::vector<Pattern>& patterns() {
    static const std::vector<Pattern> list = [] {
        std::vector<Pattern> made;
        for (const char* english : core_phrases())
            made.push_back(pattern_of(english));
        std::stable_sort(made.begin(), made.end(),
                         [](const Pattern& a, const Pattern& b) { return a.fixed > b.fixed; });
        return made;
    }();
    return list;
}

/// Decimal points of figures become commas; "EN 806-2" and dates have none, "3.2.1" is left alone.
QString with_commas(QString text) {
    static const QRegularExpression figure(QStringLiteral("(?<![\\d.])(\\d+)\\.(\\d+)(?![\\d.]*\\d)"));
    return text.replace(figure, QStringLiteral("\\1,\\2"));
}

std::optional<QString> told(const QString& english, int depth);

/// What stood in a hole: a figure, words that are core's again, or a name.
QString put_back(const QString& english, int depth) {
    if (depth < 3) {
        if (const auto words = told(english, depth + 1)) return *words;
        // A list of core's words: all of them or none, a name may hold a comma too.
        QStringList parts = english.split(QStringLiteral(", "));
        bool all = parts.size() > 1;
        for (QString& part : parts) {
            const auto words = told(part, depth + 1);
            all = all && words.has_value();
            if (words) part = *words;
        }
        if (all) return parts.join(QStringLiteral(", "));
    }
    return with_commas(english);
}

std::optional<QString> told(const QString& english, int depth) {
    for (const Pattern& pattern : patterns()) {
        const QRegularExpressionMatch match = pattern.form.match(english);
        if (!match.hasMatch()) continue;
        if (!can_say(QString::fromUtf8(pattern.english))) return std::nullopt;
        // Put back in one sweep: a name may hold a per cent sign itself.
        const QString form = say(pattern.english);
        QString out;
        for (qsizetype i = 0; i < form.size(); ++i) {
            if (form[i] == QLatin1Char('%') && i + 1 < form.size() && form[i + 1].isDigit()) {
                out += put_back(match.captured(form[i + 1].digitValue()), depth);
                ++i;
            } else {
                out += form[i];
            }
        }
        return out;
    }
    return std::nullopt;
}

}  // namespace

QString say_filled(const std::string& english) {
    const QString text = QString::fromStdString(english);
    if (text.isEmpty() || PaperLanguage::now() == Language::english) return with_signs(text);
    if (const auto words = told(text, 0)) return with_signs(*words);
    return say("\"%1\" (in English)").arg(with_signs(text));
}

QString say_name(const std::string& english) {
    const QString text = QString::fromStdString(english);
    if (PaperLanguage::now() == Language::english) return with_signs(text);
    return with_signs(told(text, 0).value_or(text));
}

QString edge_words(const QString& english) {
    return say_name(english.toStdString());
}

}  // namespace wg::ui::paper
