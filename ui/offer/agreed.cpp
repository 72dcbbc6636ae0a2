#include "ui/offer/agreed.h"

#include <QObject>
#include <algorithm>
#include <set>

#include "core/plan/frozen_plan.h"
#include "core/plan/issued_paper.h"
#include "core/store/price_book.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

/// Which version of the firm's list held when the quote was issued, and which is the newest.
void add_list_versions(store::Store& store, Agreed& out) {
    if (out.price_list_id.empty()) return;
    const auto history = store::PriceBook(store).history(out.price_list_id);
    if (!history.ok()) return;  // a list of the program has none
    for (const store::PriceListVersion& version : history.value()) {
        if (version.withdrawn) continue;
        if (out.newest_list_version == 0) {
            out.newest_list_version = version.version;
            out.newest_list_at = version.saved_at;
        }
        if (version.saved_at > out.issued_at) continue;
        out.price_list_version = version.version;
        return;
    }
}

std::optional<Problem> read_frozen(const store::IssuedQuote& quote, Agreed& out) {
    const std::string where = "quote " + quote.number;
    auto offer = quote::frozen_offer(quote.plan_json, where);
    if (!offer.ok()) return offer.problems().front();
    out.offer = std::move(offer).value();
    if (const auto paper = plan::issued_paper(quote.plan_json, where); paper.ok() && paper.value())
        out.price_list_id = paper.value()->job.price_list;
    return std::nullopt;
}

std::set<std::string> keys_of_office(const plan::Plan& plan) {
    std::set<std::string> out;
    if (!plan.offered) return out;
    const auto note = [&out](const quote::OfferedLine& line) {
        if (line.source != quote::LineSource::plan)
            out.insert(line.line.item_id.empty() ? line.element_id : line.line.item_id);
    };
    for (const quote::OfferedLine& line : plan.offered->lines)
        note(line);
    for (const quote::Option& option : plan.offered->options)
        note(option.line);
    return out;
}

QString lines_words(int lines) {
    return lines == 1 ? QObject::tr("1 line") : QObject::tr("%1 lines").arg(lines);
}

// A paper over another quote has another sum: it is told with it, never as if it confirmed what was agreed last.
QString paper_words(const Agreed& agreed) {
    QStringList words;
    bool confirmed = false;
    for (const OverPaper& one : agreed.papers) {
        QString told =
            (one.paper.kind == store::NumberKind::order ? QObject::tr("order %1") : QObject::tr("change order %1"))
                .arg(qs(one.paper.number));
        if (one.paper.quote_id == agreed.quote_id) {
            confirmed = true;
        } else {
            told = QObject::tr("%1 is over %2 (quote %3)")
                       .arg(told, money(one.gross, qs(one.currency)), qs(one.quote_number));
        }
        words += told;
    }
    if (!confirmed) words += QObject::tr("quote %1 is not confirmed yet").arg(qs(agreed.quote_number));
    return words.join(QStringLiteral("; "));
}

QString list_words(const Agreed& agreed, const std::string& price_list) {
    if (agreed.price_list_id.empty()) return {};
    if (price_list != agreed.price_list_id) return QObject::tr("the job has another price list now");
    // A list that came from another machine later has no version of the quote's day here.
    if (agreed.price_list_version == 0 || agreed.price_list_version == agreed.newest_list_version) return {};
    return QObject::tr("price list: version %1 then, version %2 since %3")
        .arg(agreed.price_list_version)
        .arg(agreed.newest_list_version)
        .arg(day(agreed.newest_list_at));
}

QStringList causes_of(const quote::PriceChange& change, const Agreed& agreed, const std::string& price_list) {
    const QString currency = qs(agreed.offer.currency);
    const auto sum = [&currency](Money amount) {
        return amount.minor == 0 ? money(amount, currency) : money_difference(amount, currency);
    };
    QStringList out;
    const auto add = [&](const QString& what, const quote::CauseSum& cause, const QString& more = {}) {
        if (cause.lines == 0) return;
        QString words = QObject::tr("%1, %2: %3 net").arg(what, lines_words(cause.lines), sum(cause.net));
        if (!more.isEmpty()) words += QStringLiteral(" (%1)").arg(more);
        out += words;
    };
    add(QObject::tr("Prices a unit"), change.unit_prices, list_words(agreed, price_list));
    add(QObject::tr("Amounts that the plan asks for"), change.amounts);
    add(QObject::tr("Lines that the office entered or changed"), change.office);
    add(QObject::tr("Other words or units"), change.words);
    if (change.discount.minor != 0) out += QObject::tr("Discount: %1 net").arg(sum(change.discount));
    if (change.tax_rates)
        out += QObject::tr("Tax at other rates: %1").arg(sum(change.tax));
    else if (change.tax.minor != 0)
        out += QObject::tr("Tax on it: %1").arg(sum(change.tax));
    if (change.to_bring != change.gross)
        out += QObject::tr("With subsidies the client brings %1").arg(sum(change.to_bring));
    return out;
}

}  // namespace

std::vector<store::OrderPaper> standing_of_accepted(
    const std::vector<store::OrderPaper>& papers,
    const std::map<std::string, std::vector<store::QuoteAnswer>>& answers) {
    std::vector<store::OrderPaper> out = store::standing(papers);
    std::erase_if(out, [&answers](const store::OrderPaper& one) {
        const auto of_quote = answers.find(one.quote_id);
        return of_quote == answers.end() || of_quote->second.back().answer != store::Answer::accepted;
    });
    return out;
}

Result<std::optional<Agreed>> agreed_of(store::Store& store, const std::string& job_id,
                                        const std::optional<Agreed>& known) {
    const auto quotes = store.quotes(job_id);
    if (!quotes.ok()) return quotes.problems();
    const auto answers = store::QuoteBook(store).answers(job_id);
    if (!answers.ok()) return answers.problems();
    const auto papers = store::OrderBook(store).papers_of(job_id);
    if (!papers.ok()) return papers.problems();
    Agreed out;
    const store::IssuedQuote* waiting = nullptr;
    for (const store::IssuedQuote& quote : quotes.value()) {  // newest first
        const auto answered = answers.value().find(quote.id);
        if (answered == answers.value().end()) {
            if (waiting == nullptr) waiting = &quote;
            continue;
        }
        if (answered->second.back().answer != store::Answer::accepted) continue;
        if (known && known->quote_id == quote.id) {
            out.offer = known->offer;
            out.price_list_id = known->price_list_id;
        } else if (auto problem = read_frozen(quote, out)) {
            return *problem;
        }
        out.quote_id = quote.id;
        out.quote_number = quote.number;
        out.issued_at = quote.issued_at;
        out.accepted = answered->second.back();
        if (waiting != nullptr) {
            const auto standing = store::standing(papers.value());
            const auto change = std::find_if(standing.begin(), standing.end(), [&](const store::OrderPaper& one) {
                return one.kind == store::NumberKind::change_order && one.quote_id == waiting->id;
            });
            if (change != standing.end()) {
                out.waiting_change = change->number;
                out.waiting_quote = waiting->number;
                out.waiting_gross = {waiting->gross_minor};
            }
        }
        for (const store::OrderPaper& one : standing_of_accepted(papers.value(), answers.value())) {
            const auto over = std::find_if(quotes.value().begin(), quotes.value().end(),
                                           [&one](const store::IssuedQuote& of) { return of.id == one.quote_id; });
            if (over != quotes.value().end())
                out.papers.push_back({one, over->number, {over->gross_minor}, over->currency});
        }
        add_list_versions(store, out);
        return std::optional<Agreed>(std::move(out));
    }
    return std::optional<Agreed>();
}

Result<std::optional<quote::PriceChange>> today_beside(const Agreed& agreed, const plan::Plan& plan) {
    if (!plan.quote) return std::optional<quote::PriceChange>();
    const auto today = quote::frozen_offer(plan::offer_of_plan(plan), "job " + plan.job_number);
    if (!today.ok()) return today.problems();
    const auto change = quote::price_change(agreed.offer, today.value(), keys_of_office(plan));
    if (!change.ok()) return change.problems();
    return std::optional<quote::PriceChange>(change.value());
}

AgreedWords agreed_words(const Agreed& agreed, const plan::Plan* plan, bool planning, const std::string& price_list) {
    const QString currency = qs(agreed.offer.currency);
    AgreedWords out;
    out.agreed = QObject::tr("Agreed: %1 with tax").arg(money(agreed.offer.gross, currency));
    out.agreed += QObject::tr(" \u2013 quote %1, accepted %2").arg(qs(agreed.quote_number), day(agreed.accepted.on));
    if (!agreed.accepted.who.empty()) out.agreed += QObject::tr(" by %1").arg(qs(agreed.accepted.who));
    if (!agreed.offer.choice_label.empty())
        out.agreed += QObject::tr(", choice \u201c%1\u201d").arg(qs(agreed.offer.choice_label));
    out.agreed += QStringLiteral("; ") + paper_words(agreed);
    if (plan == nullptr) {
        out.today = planning ? QObject::tr("Today's price of that choice is being worked out.")
                             : QObject::tr("That choice is no longer in the job: today's price cannot be told.");
    } else {
        const auto compared = today_beside(agreed, *plan);
        if (!compared.ok()) {
            out.today = qs(text_of(compared.problems()));
        } else if (!compared.value()) {
            out.today = QObject::tr("Priced today: no price, see the findings.");
        } else if (compared.value()->nothing()) {
            out.today = QObject::tr("Priced today: the same.");
        } else {
            const quote::PriceChange& change = *compared.value();
            out.today = QObject::tr("Priced today: %1").arg(money(change.today_gross, currency));
            out.today += change.gross.minor == 0 ? QObject::tr(", the same sum of other lines.")
                                                 : QObject::tr(", %1.").arg(money_difference(change.gross, currency));
            out.causes = causes_of(change, agreed, price_list);
            out.advice = QObject::tr(
                "What was agreed stands. Only when the client is to have or pay what differs: issue "
                "the quote anew and make a change order of it.");
        }
    }
    if (!agreed.waiting_change.empty())
        out.advice =
            QObject::tr("Change order %1 over quote %2, %3 with tax, waits for the client's answer.")
                .arg(qs(agreed.waiting_change), qs(agreed.waiting_quote), money(agreed.waiting_gross, currency));
    return out;
}

}  // namespace wg::ui
