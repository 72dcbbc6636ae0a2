#include "core/store/price_book.h"

#include "core/parts/prices.h"
#include "core/store/text_checks.h"

namespace wg::store {
namespace {

constexpr TextTable price_lists_kept{"price_list", "list_id", "note", "price list", "the book"};

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

constexpr TextKind price_list_kind{"price list", "the list", "firm-2027", std::size_t{16} << 20U,
                                   [](const std::string& content, const std::string& name) -> Result<std::string> {
                                       const Result<parts::PriceList> read = parts::price_list_from_json(content, name);
                                       if (!read) return read.problems();
                                       return read.value().id;
                                   }};

}  // namespace

Result<PriceListVersion> PriceBook::save(const std::string& list_id, const std::string& content, int based_on,
                                         const std::string& note, Instant now) {
    const VersionedTexts texts(store_, price_lists_kept);
    const TextVersion text = text_version(list_id, content, note);
    if (auto problem = refuse_text(price_list_kind, text, texts.name_of(list_id))) return *problem;
    return list_version(texts.save(text, based_on, now));
}

Result<PriceListVersion> PriceBook::withdraw(const std::string& list_id, int based_on, const std::string& note,
                                             Instant now) {
    const VersionedTexts texts(store_, price_lists_kept);
    if (auto problem = refuse_note(note, texts.name_of(list_id))) return *problem;
    return list_version(texts.withdraw(list_id, based_on, note, now));
}

Result<bool> PriceBook::put_from_elsewhere(const std::string& list_id, const std::string& content,
                                           const std::string& saved_at, const std::string& note) {
    const VersionedTexts texts(store_, price_lists_kept);
    TextVersion came = text_version(list_id, content, note);
    if (auto problem = refuse_text(price_list_kind, came, texts.name_of(list_id))) return *problem;
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
