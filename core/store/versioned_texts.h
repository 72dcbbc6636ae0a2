#pragma once
// Texts of the firm that are kept version by version: price lists, equipment, rule sets. A version stays as it was
// saved; a change is the next version, based on the newest one that there is, and to withdraw a text is one, too.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

/// A table with the columns id, version, withdrawn, came, note, saved_by, saved_at, sha256 and content.
struct TextTable {
    const char* table;
    const char* id_column;
    const char* note_column;  ///< the one that differs from table to table: a note, or a kind
    const char* what;         ///< "price list": what a text is called in messages
    const char* place;        ///< "the book": where it is kept
};

struct TextVersion {
    std::string id;
    std::int64_t version = 0;  ///< 1, 2, 3 ... of the text
    bool withdrawn = false;
    bool came = false;  ///< with a job from another machine
    std::string note;   ///< TextTable::note_column
    std::string saved_by;
    std::string saved_at;  ///< ISO 8601
    std::string sha256;    ///< of the content
    std::string content;   ///< empty when only rows were asked for
    bool damaged = false;  ///< the content was read, and has lost its hash
    friend bool operator==(const TextVersion&, const TextVersion&) = default;
};

/// Rows tell who saved what and when; contents may be large.
enum class Ask { rows, contents };

class VersionedTexts {
   public:
    /// The store must outlive it.
    VersionedTexts(Store& store, const TextTable& table);

    /// The newest version of each text, withdrawn ones included, by id.
    [[nodiscard]] Result<std::vector<TextVersion>> newest_of_each(Ask ask) const;
    /// Nothing when there is none.
    [[nodiscard]] Result<std::optional<TextVersion>> newest(const std::string& id, Ask ask) const;
    /// Newest first.
    [[nodiscard]] Result<std::vector<TextVersion>> history(const std::string& id, Ask ask) const;
    /// Refused: a version that is not here, or whose text lost its hash.
    [[nodiscard]] Result<std::string> content(const std::string& id, std::int64_t version) const;

    /// Within a transaction: the version that one based on `based_on` would follow; nothing for a text that is new (0).
    /// Refused: a new text that is here already, one that is not here, one that somebody else changed meanwhile.
    [[nodiscard]] Result<std::optional<TextVersion>> followed(const std::string& id, std::int64_t based_on,
                                                              Ask ask) const;
    /// Within a transaction: `version` with its content and note as the one after `after`, saved here and now.
    [[nodiscard]] Result<TextVersion> put_after(std::int64_t after, TextVersion version, Instant now) const;
    /// In a transaction of its own: the version that follows `based_on`. Refused: what `followed` refuses, and the
    /// newest version again.
    [[nodiscard]] Result<TextVersion> save(const TextVersion& version, std::int64_t based_on, Instant now) const;
    /// The same text as a version that is not offered any more.
    [[nodiscard]] Result<TextVersion> withdraw(const std::string& id, std::int64_t based_on, const std::string& note,
                                               Instant now) const;
    /// Within a transaction: a version that came with a job from another machine becomes the newest here when there is
    /// none, or when the newest here came, too, and is older. What was saved here is never overtaken by what comes.
    /// False: nothing was added. `version` has id, note, content and saved_at.
    [[nodiscard]] Result<bool> put_from_elsewhere(TextVersion version) const;

    /// "price list 'firm-2027'".
    [[nodiscard]] std::string name_of(std::string_view id) const;

   private:
    [[nodiscard]] Result<std::vector<TextVersion>> read(const std::string& id, bool newest_only, Ask ask) const;
    [[nodiscard]] std::optional<Problem> insert(const TextVersion& version) const;

    Store& store_;
    const Database& database_;
    TextTable table_;
};

/// Versions whose text no longer has its hash, in words.
[[nodiscard]] Result<std::vector<std::string>> damaged_versions_of(const Database& database, const TextTable& table);

}  // namespace wg::store
