#include "ui/offer/issue.h"

#include "core/quantity/sha256.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/offer/reprint.h"

namespace wg::ui {

Result<store::IssuedQuote> issue_paper(store::Store& store, const PaperInput& shown, const QByteArray& logo_file,
                                       Instant now, const plan::RuleSet* rules) {
    if (!shown.plan.quote) return Problem{"quote", "has no price", "See the findings of the plan"};
    store::IssuedQuote quote;
    quote.id = new_id();
    quote.job_id = shown.plan.job_id;
    quote.job_revision = shown.plan.job_revision;
    quote.issued_at = iso8601(now);
    quote.gross_minor = shown.plan.quote->gross.minor;
    quote.currency = shown.plan.currency;
    quote.plan_json = snapshot_of(shown, logo_file, rules);
    quote.sha256 = sha256_hex(quote.plan_json);
    const auto frozen = input_of_snapshot(quote.plan_json, std::string());
    if (!frozen.ok()) return frozen.problems();
    if (frozen.value() == nullptr) return Problem{"quote", "could not be frozen", "Close other programs and try again"};
    PaperInput paper = *frozen.value();
    const auto print = [&paper](const std::string& number) -> Result<std::string> {
        paper.quote_number = qs(number);
        const auto pdf = pdf_bytes(Paper::quote, paper);
        if (!pdf.ok()) return pdf.problems();
        return pdf.value().toStdString();
    };
    return store::QuoteBook(store).issue_next(quote, print, now);
}

Result<store::OrderPaper> keep_order_paper(store::Store& store, PaperInput input, store::NumberKind kind,
                                           const std::string& quote_id, Instant now,
                                           const std::vector<std::string>& takes_place_of) {
    if (!input.order) return Problem{"order", "has nothing to print", "Enter the client's acceptance first"};
    const Paper paper = kind == store::NumberKind::order ? Paper::order_confirmation : Paper::change_order;
    const auto print = [&](const std::string& number) -> Result<std::string> {
        input.order->number = qs(number);
        const auto pdf = pdf_bytes(paper, input);
        if (!pdf.ok()) return pdf.problems();
        return pdf.value().toStdString();
    };
    return store::OrderBook(store).keep(kind, quote_id, print, now, takes_place_of);
}

}  // namespace wg::ui
