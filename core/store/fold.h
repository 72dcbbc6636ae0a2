#pragma once
// Words as the search on PostgreSQL knows them: parted and folded here, so that every server finds the same and as
// SQLite does (its tokenizer `unicode61 remove_diacritics 2`): letters and digits make a word, capitals and accents
// aside.

#include <QString>
#include <QStringList>

namespace wg::store {

[[nodiscard]] QStringList folded_words(const QString& text);

/// A tsvector's text: the words with their places; between two fields there is a gap that no phrase spans.
[[nodiscard]] QString vector_of(const QStringList& fields);

/// A tsquery's text: every word, parted at spaces, as a phrase whose last part is a beginning. Empty when there is
/// none.
[[nodiscard]] QString query_of(const QStringList& typed);

}  // namespace wg::store
