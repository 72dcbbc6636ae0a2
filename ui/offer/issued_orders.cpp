// What follows an acceptance: confirmations and change orders of the quotes that went out.

#include <QDateTime>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/opened_papers.h"
#include "ui/offer/agreed.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issue.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/offer_input.h"

namespace wg::ui {

namespace {

Paper paper_of(store::NumberKind kind) {
    return kind == store::NumberKind::order ? Paper::order_confirmation : Paper::change_order;
}

QDate day_of_stamp(const std::string& at) {
    return QDateTime::fromString(qs(at), Qt::ISODate).toLocalTime().date();
}

// "order O2027-0001 of 26 June 2027"
QString dated_paper(const store::OrderPaper& paper) {
    const QString words = paper.kind == store::NumberKind::order ? IssuedPage::tr("order %1 of %2")
                                                                 : IssuedPage::tr("change order %1 of %2");
    return words.arg(qs(paper.number), day(paper.kept_at));
}

QString listed(const std::vector<store::OrderPaper>& papers) {
    QStringList words;
    for (const store::OrderPaper& one : papers)
        words += dated_paper(one);
    return words.join(QStringLiteral(", "));
}

}  // namespace

QString IssuedPage::order_words(const std::string& quote_id) const {
    QString words;
    for (const store::OrderPaper& order : orders_) {
        if (order.quote_id != quote_id) continue;
        words += QLatin1Char('\n') + dated_paper(order);
        if (const store::OrderPaper* later = store::replaced_by(orders_, order.id))
            words += tr(", replaced by %1").arg(qs(later->number));
    }
    return words;
}

std::vector<store::OrderPaper> IssuedPage::replaced_by_confirming(int row) const {
    std::vector<store::OrderPaper> out;
    for (const store::OrderPaper& one : standing_of_accepted(orders_, answers_)) {
        // Newest first: what belongs to a newer quote is not overtaken by this one.
        for (int other = row; other < static_cast<int>(quotes_.size()); ++other)
            if (quotes_[static_cast<std::size_t>(other)].id == one.quote_id) out.push_back(one);
    }
    return out;
}

QString IssuedPage::why_ask_first(int row) const {
    if (row < 0 || row >= static_cast<int>(quotes_.size())) return {};
    if (!kept_order(store::NumberKind::order, quotes_[static_cast<std::size_t>(row)].id).empty()) return {};
    const std::vector<store::OrderPaper> standing = standing_of_accepted(orders_, answers_);
    if (standing.empty()) return {};
    const std::vector<store::OrderPaper> replaced = replaced_by_confirming(row);
    if (replaced.empty())
        return tr("A newer quote of this job came to %1 already. A confirmation of this one takes the place of none of "
                  "it: the client then holds both.")
            .arg(listed(standing));
    return tr("The client has %1. A confirmation of quote %2 takes its place, and says so on the paper. A change order "
              "tells what differs alone and leaves the rest as agreed.")
        .arg(listed(replaced), qs(quotes_[static_cast<std::size_t>(row)].number));
}

void IssuedPage::ask_and_confirm() {
    const int row = table_->currentRow();
    const Instant now{QDateTime::currentSecsSinceEpoch()};
    const QString why = why_ask_first(row);
    if (why.isEmpty()) return open_order(confirm_order(row, now));
    QMessageBox ask(QMessageBox::Question, tr("Confirm the order a second time?"), why, QMessageBox::NoButton, this);
    const std::string& quote_id = quotes_[static_cast<std::size_t>(row)].id;
    const bool has_change = !kept_order(store::NumberKind::change_order, quote_id).empty();
    const QAbstractButton* change = nullptr;
    if (agreed_before(row) >= 0)
        change = ask.addButton(has_change ? tr("Open the change order") : tr("Make a change order"),
                               QMessageBox::AcceptRole);
    const auto* yes = ask.addButton(tr("Confirm anew"), QMessageBox::AcceptRole);
    ask.addButton(tr("Leave it"), QMessageBox::RejectRole);
    ask.exec();
    if (ask.clickedButton() == yes) open_order(confirm_order(row, now));
    if (change != nullptr && ask.clickedButton() == change) open_order(order_change(row, now));
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

std::string IssuedPage::keep_order(store::NumberKind kind, int row, Result<OrderInput> order, Instant now,
                                   const std::vector<store::OrderPaper>& replaced) {
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
    input.order = std::move(order).value();
    std::vector<std::string> ids;
    ids.reserve(replaced.size());
    for (const store::OrderPaper& one : replaced) {
        ids.push_back(one.id);
        input.order->takes_place_of.push_back({paper_of(one.kind), qs(one.number), day_of_stamp(one.kept_at)});
    }
    const auto kept = keep_order_paper(*store_, input, kind, quotes_[static_cast<std::size_t>(row)].id, now, ids);
    if (!kept.ok()) {
        Q_EMIT problem(qs(text_of(kept.problems())));
        return {};
    }
    Q_EMIT said(tr("%1 %2 is made and kept").arg(title_of(paper_of(kind)), qs(kept.value().number)));
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
                      order_of(*store_, quote, answered == answers_.end() ? none : answered->second), now,
                      replaced_by_confirming(row));
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
    if (const store::OrderPaper* later = store::replaced_by(orders_, order_id))
        Q_EMIT said(tr("%1 takes the place of %2.").arg(qs(later->number), qs(named->number)));
    const QString path = place_for_opened_paper(
        QStringLiteral("%1-%2.pdf")
            .arg(QString::fromLatin1(store::key_of(named->kind)), paper_file_stem(named->number)));
    if (write_bytes(path, bytes.value())) open_file(path);
}

}  // namespace wg::ui
