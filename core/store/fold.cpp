#include "core/store/fold.h"

namespace wg::store {
namespace {

// PostgreSQL takes words of up to 2046 bytes and vectors of up to 1 MB (manual, section 12.11); far more than people
// search for.
constexpr qsizetype most_of_a_word = 250;
constexpr qsizetype most_of_a_vector = 300'000;
constexpr int gap_between_fields = 2;

QString cut(QString word) {
    word.truncate(most_of_a_word);
    if (!word.isEmpty() && word.back().isHighSurrogate()) word.chop(1);
    return word;
}

}  // namespace

QStringList folded_words(const QString& text) {
    QStringList words;
    QString word;
    const auto end = [&words, &word] {
        if (!word.isEmpty()) words << cut(word);
        word.clear();
    };
    for (const char32_t c : text.normalized(QString::NormalizationForm_KD).toCaseFolded().toStdU32String()) {
        if (QChar::isMark(c)) continue;
        if (QChar::isLetterOrNumber(c))
            word += QChar::fromUcs4(c);
        else
            end();
    }
    end();
    return words;
}

QString vector_of(const QStringList& fields) {
    QString out;
    int place = 0;
    for (const QString& field : fields) {
        for (const QString& word : folded_words(field)) {
            if (out.size() > most_of_a_vector) return out;
            out += (out.isEmpty() ? "'" : " '") + word + "':" + QString::number(++place);
        }
        place += gap_between_fields;
    }
    return out;
}

QString query_of(const QStringList& typed) {
    QString out;
    for (const QString& text : typed) {
        const QStringList words = folded_words(text);
        if (words.isEmpty()) continue;
        out += (out.isEmpty() ? "('" : " & ('") + words.join(QStringLiteral("' <-> '")) + "':*)";
    }
    return out;
}

}  // namespace wg::store
