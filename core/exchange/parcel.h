#pragma once
// One job as one file: the job, the copy it was taken from, versions of its fields, issued quotes and photographs.

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg::exchange {

inline constexpr int file_schema = 1;

/// What somebody answered to a quote.
struct SentAnswer {
    std::string id;      ///< UUID
    std::string answer;  ///< "accepted", "declined" or "withdrawn"
    std::string on;      ///< ISO 8601 date
    std::string who;
    std::string note;
    std::string entered_by;
    std::string entered_at;   ///< ISO 8601 UTC
    std::string signature{};  ///< image of the signature under an acceptance, PNG or JPEG; empty: none
    friend bool operator==(const SentAnswer&, const SentAnswer&) = default;
};

/// Paper of what a quote came to: an order's confirmation, or a change of the order.
struct SentOrder {
    std::string id;    ///< UUID
    std::string kind;  ///< "order" or "change-order"
    std::string number;
    std::string kept_at;  ///< ISO 8601 UTC
    std::string kept_by;
    std::string paper;                          ///< PDF as it went out
    std::vector<std::string> takes_place_of{};  ///< ids of papers of orders that it names as replaced
    friend bool operator==(const SentOrder&, const SentOrder&) = default;
};

/// A quote as it was issued, frozen.
struct SentQuote {
    std::string id;  ///< UUID
    std::int64_t job_revision = 0;
    std::string number;
    std::string issued_at;    ///< ISO 8601 UTC
    std::string plan_json;    ///< frozen snapshot
    std::string plan_sha256;  ///< of plan_json
    std::int64_t gross_minor = 0;
    std::string currency;
    std::string paper;  ///< PDF as it went out; empty: none was kept
    std::vector<SentAnswer> answers;
    std::vector<SentOrder> orders{};
    friend bool operator==(const SentQuote&, const SentQuote&) = default;
};

/// Bytes that the job names by their hash: photographs, and attachments of the record.
struct SentPicture {
    std::string sha256;
    std::string bytes;
    friend bool operator==(const SentPicture&, const SentPicture&) = default;
};

/// What the job is planned with and does not come with the program: without it another machine could not plan the job.
struct SentFirmData {
    std::string kind;      ///< "price_list", "equipment" or "rule_set"
    std::string id;        ///< that the job names it by
    std::string saved_at;  ///< ISO 8601 UTC, of the version
    std::string content;   ///< its file (docs/price-format.md, equipment-format.md, rule-set-format.md)
    friend bool operator==(const SentFirmData&, const SentFirmData&) = default;
};

struct Parcel {
    std::string made_at;    ///< ISO 8601 UTC
    std::string made_by;    ///< program and its version
    std::string seat_id;    ///< UUID of the machine it comes from
    std::string seat_name;  ///< for people
    Job job;
    std::optional<Job> base;    ///< content that this copy was taken from, when it had travelled before
    std::string versions_json;  ///< versions of the job's fields as JSON text (docs/exchange-format.md); empty: none
    std::vector<SentQuote> quotes;
    std::vector<SentPicture> pictures;
    std::vector<SentFirmData> firm_data;
    friend bool operator==(const Parcel&, const Parcel&) = default;
};

inline constexpr std::size_t max_file_bytes = std::size_t{1} << 30U;
inline constexpr std::size_t max_unpacked_bytes = std::size_t{1} << 30U;
inline constexpr std::size_t max_entries = 5000;
inline constexpr std::size_t max_picture_bytes = std::size_t{60} << 20U;
inline constexpr std::size_t max_signature_bytes = std::size_t{1} << 20U;
inline constexpr std::size_t max_json_bytes = std::size_t{64} << 20U;

/// Hashes that the job names: of photographs and of attachments, sorted, each once.
[[nodiscard]] std::vector<std::string> named_pictures(const Job& job);

/// The file's bytes. Equal parcels give equal bytes. Refused: a job that is not valid, a picture that has not its hash
/// or that the job does not name, ids or hashes that are none, more than the limits above.
[[nodiscard]] Result<std::string> pack(const Parcel& parcel);

/// All or nothing. Refused, with what is wrong and what to do: not such a file, a newer one, damaged or altered entries
/// (each has its SHA-256 in the list of contents), names beside those of docs/exchange-format.md (so no path leads
/// anywhere), entries that are encrypted, doubled, not listed, larger than they say or than the limits above, JSON that
/// is not what core/job/codec.h reads. `file_name` only serves messages.
[[nodiscard]] Result<Parcel> unpack(std::string_view bytes, const std::string& file_name);

}  // namespace wg::exchange
