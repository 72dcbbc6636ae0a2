#pragma once
// Names and list of contents of an exchange file. Internal to core/exchange.

#include <string>
#include <vector>

#include "core/exchange/archive.h"
#include "core/exchange/parcel.h"

namespace wg::exchange {

enum class EntryKind { contents, job, base, versions, quote, paper, picture, firm_data, unknown };
[[nodiscard]] EntryKind kind_of(const std::string& name) noexcept;
[[nodiscard]] std::size_t most_bytes(EntryKind kind) noexcept;

inline constexpr const char* contents_name = "contents.json";
inline constexpr const char* job_name = "job.json";
inline constexpr const char* base_name = "base.json";
inline constexpr const char* versions_name = "versions.json";
[[nodiscard]] std::string quote_name(const std::string& id);
[[nodiscard]] std::string paper_name(const std::string& sha256);
[[nodiscard]] std::string picture_name(const std::string& sha256);
/// `sha256`: of the entry's bytes.
[[nodiscard]] std::string firm_data_name(const std::string& sha256);

/// The list of contents: who made the file, and size and hash of every other entry.
[[nodiscard]] std::string contents_json(const Parcel& parcel, const std::vector<Entry>& entries);
/// Takes what the list tells of the parcel, and holds it against the entries that are there.
[[nodiscard]] std::vector<Problem> check_contents(const std::string& text, const std::vector<Entry>& entries,
                                                  const std::string& file_name, Parcel& into);

/// Papers of orders that may come with one quote, and with all of a file: each takes a number that the firm will not
/// give again, so a file must not be able to use them up.
inline constexpr std::size_t most_orders = 50;
inline constexpr std::size_t most_orders_of_file = 500;

[[nodiscard]] std::string quote_json(const SentQuote& quote);
/// Hashes of the papers that go with a quote; their bytes are entries of their own.
struct NamedPapers {
    std::string quote;                ///< empty: none
    std::vector<std::string> orders;  ///< by the quote's orders
};
[[nodiscard]] Result<SentQuote> quote_from_json(const std::string& text, const std::string& where, NamedPapers& named);

[[nodiscard]] std::string firm_data_json(const SentFirmData& data);
[[nodiscard]] Result<SentFirmData> firm_data_from_json(const std::string& text, const std::string& where);

// The archive itself: archive.cpp is the only file that knows libzip.
[[nodiscard]] Result<std::vector<Entry>> entries_of(std::string_view bytes, const std::string& file_name);

}  // namespace wg::exchange
