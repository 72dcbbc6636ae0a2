#pragma once
// What became of issued quotes: the paper as it went out, byte for byte, and what the client answered. Both only grow.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/order_book.h"
#include "core/store/store.h"

namespace wg::store {

enum class Answer {
    accepted,
    declined,
    withdrawn,  ///< by the firm
};

[[nodiscard]] const char* key_of(Answer answer) noexcept;  ///< "accepted", ...
[[nodiscard]] std::optional<Answer> answer_from_key(std::string_view key) noexcept;

struct QuoteAnswer {
    std::string id;  ///< UUID
    std::string quote_id;
    Answer answer = Answer::accepted;
    std::string on;    ///< ISO 8601 date
    std::string who;   ///< who answered; at most 200 bytes
    std::string note;  ///< at most 2,000 bytes
    std::string entered_by;
    std::string entered_at;
    std::string signature_sha256{};  ///< of the image of a signature kept with it; empty: none
    friend bool operator==(const QuoteAnswer&, const QuoteAnswer&) = default;
};

inline constexpr std::size_t max_paper_bytes = std::size_t{60} << 20U;
inline constexpr std::size_t max_signature_bytes = std::size_t{1} << 20U;

class QuoteBook {
   public:
    /// The store must outlive it.
    explicit QuoteBook(Store& store) : store_(store), database_(store.database()) {}

    /// The quote and its paper, both or neither. Refused: what `Store::issue_quote` refuses, and bytes that are no PDF
    /// or more than `max_paper_bytes`.
    [[nodiscard]] Result<IssuedQuote> issue(const IssuedQuote& quote, std::string_view pdf, Instant now);
    /// The same under the next number of the firm's quotes: `print` makes the paper that bears it. Number, quote and
    /// paper, or none of them; `quote.number` is of no account.
    [[nodiscard]] Result<IssuedQuote> issue_next(const IssuedQuote& quote, const PrintNumbered& print, Instant now);
    /// As it went out. Refused: a quote without one (issued by an older program), or bytes that lost their hash.
    [[nodiscard]] Result<std::string> paper(const std::string& quote_id) const;
    [[nodiscard]] Result<bool> has_paper(const std::string& quote_id) const;

    /// Refused: a quote that is not here, a day that is none or before the quote's, an acceptance without a name, an
    /// answer after the quote was accepted (only a withdrawal may follow), a signature that does not begin as PNG or
    /// JPEG, is larger than `max_signature_bytes`, or stands under something else than an acceptance.
    [[nodiscard]] Result<QuoteAnswer> answer(const QuoteAnswer& answer, Instant now, std::string_view signature = {});
    /// The image of the signature as it was kept. Refused: an answer without one, or bytes that lost their hash.
    [[nodiscard]] Result<std::string> signature(const std::string& answer_id) const;
    /// Of the job's quotes, by quote, in the order they were entered.
    [[nodiscard]] Result<std::map<std::string, std::vector<QuoteAnswer>>> answers(const std::string& job_id) const;

    // Within a transaction, as they are: they were judged on the machine that they come from.
    [[nodiscard]] std::optional<Problem> put_paper(const std::string& quote_id, std::string_view pdf,
                                                   const std::string& kept_at);
    [[nodiscard]] std::optional<Problem> put_answer(const QuoteAnswer& answer);
    [[nodiscard]] std::optional<Problem> put_signature(const std::string& answer_id, std::string_view image);

   private:
    [[nodiscard]] std::optional<Problem> refuse(const QuoteAnswer& answer) const;

    Store& store_;
    const Database& database_;
};

/// Numbers of quotes whose paper no longer has its hash.
[[nodiscard]] Result<std::vector<std::string>> damaged_papers(const Database& database);
/// Numbers of quotes of whose acceptance the signature no longer has its hash.
[[nodiscard]] Result<std::vector<std::string>> damaged_signatures(const Database& database);

}  // namespace wg::store
