// What follows an acceptance: confirmations and change orders of the quotes that went out.

#include <QDateTime>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/opened_papers.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issue.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/offer_input.h"

namespace wg::ui {

QString paper_file_stem(const std::string& number) {
    QString stem;
    for (const QChar c : qs(number))
        stem += c.isLetterOrNumber() || c == QLatin1Char('-') ? c : QLatin1Char('-');
    return stem;
}

bool IssuedPage::last_answer_is(int row, store::Answer answer) const {
    if (row < 0 || row >= static_cast<int>(quotes_.size())) return false;
    const auto answered = answers_.find(quotes_[static_cast<std::size_t>(row)].id);
    return answered != answers_.end() && answered->second.back().answer == answer;
}

int IssuedPage::agreed_before(int row) const {
    if (row < 0) return -1;
    for (int older = row + 1; older < static_cast<int>(quotes_.size()); ++older)
        if (last_answer_is(older, store::Answer::accepted)) return older;
    return -1;
}

QString IssuedPage::overtaken_by(int row) const {
    for (int newer = 0; newer < row && newer < static_cast<int>(quotes_.size()); ++newer) {
        // The newest that still stands.
        if (last_answer_is(newer, store::Answer::withdrawn) || last_answer_is(newer, store::Answer::declined)) continue;
        const store::IssuedQuote& quote = quotes_[static_cast<std::size_t>(newer)];
        return tr("%1 of %2").arg(qs(quote.number), day(quote.issued_at));
    }
    return {};
}

std::string IssuedPage::kept_order(store::NumberKind kind, const std::string& quote_id) const {
    for (auto order = orders_.rbegin(); order != orders_.rend(); ++order)
        if (order->kind == kind && order->quote_id == quote_id) return order->id;
    return {};
}

std::string IssuedPage::keep_order(store::NumberKind kind, int row, const Result<OrderInput>& order, Instant now) {
    if (!order.ok()) {
        Q_EMIT problem(qs(text_of(order.problems())));
        return {};
    }
    PaperInput input;
    input.job = session_->job();
    if (const auto plan = session_->plan()) input.plan = *plan;
    input.firm = read_firm(store_);
    input.printed_on = QDateTime::fromSecsSinceEpoch(now.unix_s).date();
    if (look_) input.look = look_();
    input.order = order.value();
    const auto kept = keep_order_paper(*store_, input, kind, quotes_[static_cast<std::size_t>(row)].id, now);
    if (!kept.ok()) {
        Q_EMIT problem(qs(text_of(kept.problems())));
        return {};
    }
    const Paper paper = kind == store::NumberKind::order ? Paper::order_confirmation : Paper::change_order;
    Q_EMIT said(tr("%1 %2 is made and kept").arg(title_of(paper), qs(kept.value().number)));
    refresh();
    return kept.value().id;
}

std::string IssuedPage::confirm_order(int row, Instant now) {
    if (store_ == nullptr || session_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return {};
    const store::IssuedQuote& quote = quotes_[static_cast<std::size_t>(row)];
    if (std::string kept = kept_order(store::NumberKind::order, quote.id); !kept.empty()) return kept;
    const auto answered = answers_.find(quote.id);
    const std::vector<store::QuoteAnswer> none;
    return keep_order(store::NumberKind::order, row,
                      order_of(*store_, quote, answered == answers_.end() ? none : answered->second), now);
}

std::string IssuedPage::order_change(int row, Instant now) {
    if (store_ == nullptr || session_ == nullptr) return {};
    const int before = agreed_before(row);
    if (before < 0) {
        Q_EMIT problem(tr("No quote older than this one is accepted: there is nothing to change."));
        return {};
    }
    const store::IssuedQuote& newer = quotes_[static_cast<std::size_t>(row)];
    const store::IssuedQuote& agreed = quotes_[static_cast<std::size_t>(before)];
    if (std::string kept = kept_order(store::NumberKind::change_order, newer.id); !kept.empty()) return kept;
    return keep_order(store::NumberKind::change_order, row,
                      change_of_order(*store_, agreed, answers_.at(agreed.id), newer), now);
}

void IssuedPage::open_order(const std::string& order_id) {
    if (order_id.empty()) return;
    const auto bytes = store::OrderBook(*store_).paper(order_id);
    const auto named =
        std::find_if(orders_.begin(), orders_.end(), [&](const auto& one) { return one.id == order_id; });
    if (!bytes.ok() || named == orders_.end()) {
        Q_EMIT problem(bytes.ok() ? tr("Read the list again.") : qs(text_of(bytes.problems())));
        return;
    }
    const QString path = place_for_opened_paper(
        QStringLiteral("%1-%2.pdf")
            .arg(QString::fromLatin1(store::key_of(named->kind)), paper_file_stem(named->number)));
    if (write_bytes(path, bytes.value())) open_file(path);
}

}  // namespace wg::ui
