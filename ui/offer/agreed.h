#pragma once
// What was agreed with the client, and what the job comes to when it is priced today.

#include <QString>
#include <QStringList>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/quote/price_change.h"
#include "core/store/quote_book.h"

namespace wg::ui {

/// A paper of the order and the quote that it is over, which need not be the one that was agreed last.
struct OverPaper {
    store::OrderPaper paper;
    std::string quote_number;
    Money gross;
    std::string currency;
};

/// Papers that stand: none takes their place, and the last answer to their quote is an acceptance. A change order that
/// the client declined or has not answered is no part of what was agreed.
[[nodiscard]] std::vector<store::OrderPaper> standing_of_accepted(
    const std::vector<store::OrderPaper>& papers,
    const std::map<std::string, std::vector<store::QuoteAnswer>>& answers);

/// The newest quote whose last answer is an acceptance, as it was frozen: ticked options are among its lines, and a
/// change order that the client accepted is its quote.
struct Agreed {
    std::string quote_id;
    std::string quote_number;
    std::string issued_at;
    store::QuoteAnswer accepted;
    quote::FrozenOffer offer;
    std::vector<OverPaper> papers;  ///< of the order, that stand
    std::string waiting_change;     ///< change order over a newer quote that nobody answered; empty: none
    std::string waiting_quote;
    Money waiting_gross;
    std::string price_list_id;    ///< that it was reckoned with; empty: an older program did not keep it
    int price_list_version = 0;   ///< of the firm's list at that time; 0: none of the firm's
    int newest_list_version = 0;  ///< of the same list now
    std::string newest_list_at;   ///< when that was saved
};

/// Nothing: no quote of the job is accepted. `known`: as it was read before; what was frozen is not read again of the
/// same quote. Refused: what cannot be read.
[[nodiscard]] Result<std::optional<Agreed>> agreed_of(store::Store& store, const std::string& job_id,
                                                      const std::optional<Agreed>& known = {});

/// Nothing without a price. Refused: what `quote::price_change` refuses.
[[nodiscard]] Result<std::optional<quote::PriceChange>> today_beside(const Agreed& agreed, const plan::Plan& plan);

struct AgreedWords {
    QString agreed;      ///< sum, quote, day, choice, papers
    QString today;       ///< today's price and the difference
    QStringList causes;  ///< one a line; empty: nothing differs
    QString advice;      ///< what to do; empty: nothing
};

/// `plan`: of the choice that was agreed; null: not worked out yet (`planning`), or that choice is gone. `price_list`:
/// the job's now.
[[nodiscard]] AgreedWords agreed_words(const Agreed& agreed, const plan::Plan* plan, bool planning,
                                       const std::string& price_list);

}  // namespace wg::ui
