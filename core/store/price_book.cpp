#include "core/store/price_book.h"

#include "core/parts/prices.h"
#include "core/quantity/utf8.h"
#include "core/store/versioned_texts.h"

namespace wg::store {
namespace {

constexpr TextTable price_lists_kept{"price_list", "list_id", "note", "price list", "the book"};
constexpr std::size_t longest_list_id = 100;
constexpr std::size_t longest_list_note = 2000;

PriceListVersion list_version(const TextVersion& text) {
    return {
        text.id,    static_cast<int>(text.version), text.withdrawn, text.came, text.note, text.saved_by, text.saved_at,
        text.sha256};
}

Result<std::vector<PriceListVersion>> list_versions(const Result<std::vector<TextVersion>>& texts) {
    if (!texts) return texts.problems();
    std::vector<PriceListVersion> out;
    out.reserve(texts.value().size());
    for (const TextVersion& text : texts.value())
        out.push_back(list_version(text));
    return out;
}

Result<PriceListVersion> list_version(const Result<TextVersion>& text) {
    if (!text) return text.problems();
    return list_version(text.value());
}

std::optional<Problem> refuse_list(const std::string& id, const std::string& content, const std::string& note,
                                   const std::string& name) {
    if (id.empty() || id.size() > longest_list_id || !is_utf8(id))
        return Problem{name, "has no id of 1 to 100 characters", "Give the list a short id, e.g. firm-2027"};
    // Qt would drop a byte order mark, and the text would lose its hash: the first byte has to be the file's own.
    if (content.empty() || content.front() != '{')
        return Problem{name, "does not begin as a price list file", "Write the list to a file again"};
    const Result<parts::PriceList> read = parts::price_list_from_json(content, name);
    if (!read) return read.problems().front();
    if (read.value().id != id)
        return Problem{name, "calls itself '" + for_message(read.value().id) + "'",
                       "Keep it under the id that stands in it"};
    if (note.size() > longest_list_note || !is_utf8(note))
        return Problem{name, "the note is longer than 2,000 characters", "Write it shorter"};
    return std::nullopt;
}

TextVersion list_text(const std::string& id, const std::string& content, const std::string& note) {
    TextVersion out;
    out.id = id;
    out.note = note;
    out.content = content;
    return out;
}

}  // namespace

Result<PriceListVersion> PriceBook::save(const std::string& list_id, const std::string& content, int based_on,
                                         const std::string& note, Instant now) {
    const VersionedTexts texts(store_, price_lists_kept);
    if (auto problem = refuse_list(list_id, content, note, texts.name_of(list_id))) return *problem;
    return list_version(texts.save(list_text(list_id, content, note), based_on, now));
}

Result<PriceListVersion> PriceBook::withdraw(const std::string& list_id, int based_on, const std::string& note,
                                             Instant now) {
    const VersionedTexts texts(store_, price_lists_kept);
    if (note.size() > longest_list_note || !is_utf8(note))
        return Problem{texts.name_of(list_id), "the note is longer than 2,000 characters", "Write it shorter"};
    return list_version(texts.withdraw(list_id, based_on, note, now));
}

Result<bool> PriceBook::put_from_elsewhere(const std::string& list_id, const std::string& content,
                                           const std::string& saved_at, const std::string& note) {
    const VersionedTexts texts(store_, price_lists_kept);
    if (auto problem = refuse_list(list_id, content, note, texts.name_of(list_id))) return *problem;
    TextVersion came = list_text(list_id, content, note);
    came.saved_at = saved_at;
    return texts.put_from_elsewhere(std::move(came));
}

Result<std::vector<PriceListVersion>> PriceBook::lists() const {
    return list_versions(VersionedTexts(store_, price_lists_kept).newest_of_each(Ask::rows));
}

Result<std::vector<PriceListVersion>> PriceBook::history(const std::string& list_id) const {
    return list_versions(VersionedTexts(store_, price_lists_kept).history(list_id, Ask::rows));
}

Result<std::string> PriceBook::content(const std::string& list_id, int version) const {
    return VersionedTexts(store_, price_lists_kept).content(list_id, version);
}

Result<std::vector<std::string>> damaged_price_lists(const Database& database) {
    return damaged_versions_of(database, price_lists_kept);
}

}  // namespace wg::store
