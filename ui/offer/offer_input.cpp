#include "ui/offer/offer_input.h"

#include <QDateTime>
#include <cmath>
#include <map>

#include "core/plan/issued_paper.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/comparison/choice_plans.h"
#include "ui/documents/logo.h"
#include "ui/documents/papers.h"
#include "ui/documents/session_input.h"

namespace wg::ui {
namespace {

QDate day_of(const std::string& iso8601_text) {
    const QDateTime at = QDateTime::fromString(qs(iso8601_text), Qt::ISODate);
    return at.isValid() ? at.toLocalTime().date() : QDate::fromString(qs(iso8601_text), Qt::ISODate);
}

quote::OrderedBefore ordered_before(const std::vector<store::PurchaseOrdered>& lines) {
    quote::OrderedBefore out;
    for (const store::PurchaseOrdered& line : lines)
        out[{line.item_id.empty() ? line.text : line.item_id, line.unit}] +=
            parts::units_of_thousandths(line.closed ? line.received : line.thousandths);
    return out;
}

}  // namespace

std::vector<std::string> beside_on_offer(const JobSession& session) {
    std::vector<std::string> out;
    const Choice* shown = session.current_choice();
    for (const Choice& choice : session.job().choices) {
        if (!choice.on_offer || choice.id == (shown == nullptr ? std::string() : shown->id)) continue;
        if (out.size() + 1 < most_on_offer) out.push_back(choice.id);
    }
    return out;
}

QString why_not_beside(JobSession& session) {
    ChoicePlans& plans = ChoicePlans::of(session);
    for (const std::string& id : beside_on_offer(session)) {
        const QString label = qs(find_choice(session.job(), id)->label);
        const ChoicePlan* made = plans.plan_of(id);
        if (made == nullptr)
            return QObject::tr("The choice \u201c%1\u201d, which is on offer too, is still being worked out.")
                .arg(label);
        if (made->plan == nullptr)
            return QObject::tr("The choice \u201c%1\u201d, which is on offer too, has no plan: %2")
                .arg(label, made->problem);
        if (made->plan->stopped())
            return QObject::tr("The choice \u201c%1\u201d, which is on offer too, has a stop.").arg(label);
    }
    return {};
}

std::shared_ptr<PaperInput> offer_input(JobSession& session, const Firm& firm, const QDate& today) {
    const auto bare = input_of(session, firm, today);
    if (bare == nullptr) return nullptr;
    auto out = std::make_shared<PaperInput>(*bare);
    const ChoicePlans& plans = ChoicePlans::of(session);
    for (const std::string& id : beside_on_offer(session)) {
        const ChoicePlan* made = plans.plan_of(id);
        if (made != nullptr && made->plan != nullptr) out->beside.push_back(made->plan);
    }
    const auto& lists = session.reference().price_lists;
    if (const auto list = lists.find(session.job().price_list); list != lists.end()) {
        out->tariffs = list->second.tariffs;
        // The list lives as long as the reference does.
        out->supply_of = [reference = session.shared_reference(), prices = &list->second](const std::string& item) {
            return quote::supply_in(*prices, item);
        };
    }
    return out;
}

std::optional<Problem> take_stock(store::Store& store, PaperInput& input) {
    std::map<std::string, std::string> unit_of;
    const auto note = [&unit_of](const parts::Line& line) {
        if (!line.labour && !line.item_id.empty()) unit_of.emplace(line.item_id, line.unit);
    };
    const plan::Plan& plan = input.plan;
    for (const parts::Line& line : plan.parts.lines)
        note(line);
    if (plan.offered) {
        for (const quote::OfferedLine& line : plan.offered->lines)
            note(line.line);
        for (const quote::Option& option : plan.offered->options)
            note(option.line.line);
    }
    std::vector<std::string> ids;
    ids.reserve(unit_of.size());
    for (const auto& [id, unit] : unit_of)
        ids.push_back(id);
    const auto ordered = store::PurchaseBook(store).lines_of_job(input.job.id);
    if (!ordered.ok()) return ordered.problems().front();
    if (ids.empty()) {
        input.ordered_before = ordered_before(ordered.value());
        return std::nullopt;
    }
    const auto taken = store::StockBook(store).taken_for(input.job.id);
    if (!taken.ok()) return taken.problems().front();
    const auto found = store::stock_standings(store, ids, input.job.id);
    if (!found.ok()) return found.problems().front();
    std::map<std::string, parts::ItemStanding> standings;
    for (const parts::ItemStanding& one : found.value())
        if (unit_of.at(one.item_id) == one.unit) standings.emplace(one.item_id, one);
    std::map<std::string, double> taken_of;
    for (const auto& [key, thousandths] : taken.value())
        if (const auto unit = unit_of.find(key.first); unit != unit_of.end() && unit->second == key.second)
            taken_of[key.first] = parts::units_of_thousandths(thousandths);
    input.ordered_before = ordered_before(ordered.value());
    input.supply_of = [before = input.supply_of, standings, taken_of](const std::string& item) {
        quote::Supply supply = before ? before(item) : quote::Supply{};
        if (const auto gone = taken_of.find(item); gone != taken_of.end()) supply.taken = gone->second;
        const auto there = standings.find(item);
        if (there == standings.end()) return supply;
        const parts::ItemStanding& one = there->second;
        if (one.in_stock) supply.in_stock = parts::units_of_thousandths(*one.in_stock);
        supply.on_order = parts::units_of_thousandths(one.on_order);
        supply.reserved = parts::units_of_thousandths(one.reserved);
        supply.orders = one.orders;
        supply.reservations = one.reservations;
        return supply;
    };
    return std::nullopt;
}

std::vector<store::PurchaseOrdered> ordered_lines(const PaperInput& input) {
    std::vector<store::PurchaseOrdered> out;
    for (const quote::PurchaseGroup& group :
         quote::purchase_list(paper::offered_of(input.plan), input.supply_of, input.ordered_before)) {
        for (const quote::PurchaseLine& line : group.lines) {
            store::PurchaseOrdered one;
            one.position = static_cast<int>(out.size()) + 1;
            one.supplier = group.supplier;
            one.item_id = line.item_id;
            one.text = line.text;
            one.unit = line.unit;
            one.thousandths = std::llround(line.to_order * 1000.0);
            one.needed = std::llround(line.wanted * 1000.0);
            one.service = line.service;
            out.push_back(std::move(one));
        }
    }
    return out;
}

std::string number_overtaken(const std::vector<store::IssuedQuote>& quotes,
                             const std::map<std::string, std::vector<store::QuoteAnswer>>& answers) {
    for (const store::IssuedQuote& quote : quotes) {
        const auto answered = answers.find(quote.id);
        if (answered == answers.end() || answered->second.back().answer == store::Answer::accepted) return quote.number;
    }
    return {};
}

Result<OrderInput> order_of(store::Store& store, const store::IssuedQuote& quote,
                            const std::vector<store::QuoteAnswer>& answers) {
    const std::string where = "quote " + quote.number;
    if (answers.empty() || answers.back().answer != store::Answer::accepted)
        return Problem{where, "is not accepted", "Enter the client's acceptance first"};
    const store::QuoteAnswer& accepted = answers.back();
    const auto agreed = quote::frozen_offer(quote.plan_json, where);
    if (!agreed.ok()) return agreed.problems();
    OrderInput out;
    out.quote_number = qs(quote.number);
    out.quote_on = day_of(quote.issued_at);
    out.accepted_on = QDate::fromString(qs(accepted.on), Qt::ISODate);
    out.accepted_by = qs(accepted.who);
    out.note = qs(accepted.note);
    out.agreed = agreed.value();
    const auto paper = plan::issued_paper(quote.plan_json, where);
    if (!paper.ok()) return paper.problems();
    if (paper.value()) out.terms = qs(paper.value()->job.offer.terms).trimmed();
    if (!accepted.signature_sha256.empty()) {
        const auto kept = store::QuoteBook(store).signature(accepted.id);
        if (!kept.ok()) return kept.problems();
        const auto image = signature_from_bytes(QByteArray::fromStdString(kept.value()));
        if (image.ok()) out.signature = image.value();
    }
    return out;
}

Result<OrderInput> change_of_order(store::Store& store, const store::IssuedQuote& agreed,
                                   const std::vector<store::QuoteAnswer>& answers, const store::IssuedQuote& newer) {
    auto order = order_of(store, agreed, answers);
    if (!order.ok()) return order;
    const auto after = quote::frozen_offer(newer.plan_json, "quote " + newer.number);
    if (!after.ok()) return after.problems();
    const auto change = quote::change_order(order.value().agreed, after.value());
    if (!change.ok()) return change.problems();
    OrderInput out = std::move(order).value();
    out.newer_number = qs(newer.number);
    out.newer_on = day_of(newer.issued_at);
    out.change = change.value();
    out.signature = {};
    return out;
}

}  // namespace wg::ui
