// What is bought for a job: the list by supplier for the firm itself, and what goes to one supplier alone.

#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

constexpr double need_mm = 20.0;
constexpr double narrow_need_mm = 16.5;  // when all of them stand side by side
constexpr double order_mm = 32.0;

QString packs_words(const quote::PurchaseLine& line) {
    const QString pack = amount_words(line.pack, line.unit);
    return line.packs == 1.0 ? say("1 pack of %1").arg(pack) : say("%1 packs of %2").arg(number(line.packs), pack);
}

QString order_words(const quote::PurchaseLine& line) {
    const QString amount = amount_words(line.to_order, line.unit);
    return line.packs > 0.0 ? amount + QLatin1Char('\n') + packs_words(line) : amount;
}

template <class Has>
bool any_line(const std::vector<quote::PurchaseGroup>& groups, const Has& has) {
    return std::any_of(groups.begin(), groups.end(), [&](const quote::PurchaseGroup& group) {
        return std::any_of(group.lines.begin(), group.lines.end(), has);
    });
}

/// Which columns the firm's list needs: those in which something stands.
struct ListColumns {
    bool stock = false;
    bool on_order = false;
    bool reserved = false;
    bool taken = false;
};

Table list_table(const quote::PurchaseGroup& group, const ListColumns& columns) {
    Table table;
    table.columns = {{QString(), 8.0, false, true}, {say("Supplier's number"), 24.0}, {say("Part"), 0.0}};
    const double each_mm =
        columns.stock && columns.on_order && (columns.reserved || columns.taken) ? narrow_need_mm : need_mm;
    table.columns.push_back({say("Needed"), each_mm, true});
    if (columns.taken) table.columns.push_back({say("Taken for this job"), each_mm, true});
    if (columns.stock) table.columns.push_back({say("In stock"), each_mm, true});
    if (columns.on_order) table.columns.push_back({say("On order"), each_mm, true});
    if (columns.reserved) table.columns.push_back({say("Reserved"), each_mm, true});
    table.columns.push_back({say("To order"), order_mm, true});
    for (const quote::PurchaseLine& line : group.lines) {
        const auto or_nothing = [&line](double amount) {
            return amount > 0.0 ? amount_words(amount, line.unit) : QString();
        };
        QStringList cells{QString(), qs(line.number), say_name(line.text), amount_words(line.needed, line.unit)};
        if (columns.taken) cells += or_nothing(line.taken);
        if (columns.stock) cells += line.in_stock ? amount_words(*line.in_stock, line.unit) : QString();
        if (columns.on_order) cells += or_nothing(line.on_order);
        if (columns.reserved) cells += or_nothing(line.reserved);
        cells += line.ordered_before > 0.0
                     ? order_words(line) + QLatin1Char('\n') +
                           say("Ordered before: %1").arg(amount_words(line.ordered_before, line.unit))
                     : order_words(line);
        table.rows.push_back({cells});
    }
    return table;
}

/// Where what is on order comes from, and for whom what is reserved stays.
void traces(Flow& flow, const std::vector<quote::PurchaseGroup>& groups) {
    QStringList lines;
    for (const quote::PurchaseGroup& group : groups) {
        for (const quote::PurchaseLine& line : group.lines) {
            const auto told = [&](const std::vector<parts::Share>& shares, const QString& words) {
                QStringList each;
                for (const parts::Share& share : shares)
                    each += say("%1 for job %2: %3")
                                .arg(qs(share.purchase_number), qs(share.job_number),
                                     amount_words(parts::units_of_thousandths(share.thousandths), line.unit));
                if (!each.isEmpty()) lines += words.arg(say_name(line.text), each.join(QStringLiteral("; ")));
            };
            told(line.orders, say("%1, on order by %2."));
            told(line.reservations, say("%1, reserved by %2."));
        }
    }
    lines.removeDuplicates();
    if (lines.isEmpty()) return;
    flow.heading(say("On order and reserved"));
    for (const QString& line : lines)
        flow.bullet(line);
}

QString firm_address(const Firm& firm) {
    QStringList address;
    for (const QString& part : {firm.name, firm.street, firm.town})
        if (!part.trimmed().isEmpty()) address += part.trimmed();
    return address.join(QStringLiteral(", "));
}

void supplier_words(Flow& flow, const Firm& firm) {
    for (const QString& part : firm.supplier_words.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        flow.paragraph(part);
}

bool is_ordered(const quote::PurchaseLine& line) {
    return line.to_order > 0.0;
}

QString discount_words(double discount_percent) {
    if (discount_percent <= 0.0) return {};
    const bool whole = std::fabs(discount_percent - std::round(discount_percent)) < 1e-9;
    return percent(discount_percent / 100.0, whole ? 0 : 2);
}

Table priced_table(const quote::PurchaseGroup& group, const QString& currency, bool prices) {
    Table table;
    table.columns = {{say("Your number"), 26.0}, {say("Part"), 0.0}, {say("Quantity"), order_mm, true}};
    if (prices) {
        table.columns.push_back({say("Price each"), 24.0, true});
        table.columns.push_back({say("Trade discount"), 20.0, true});
        table.columns.push_back({say("Net"), 28.0, true});
    }
    for (const quote::PurchaseLine& line : group.lines) {
        if (!is_ordered(line)) continue;
        QStringList cells{qs(line.number), say_name(line.text), order_words(line)};
        if (prices) {
            const auto each = line.list_price ? line.list_price : line.cost;
            cells += each ? money(*each, currency) : QString();
            cells += line.list_price ? discount_words(line.discount_percent) : QString();
            cells += line.net ? money(*line.net, currency) : QString();
        }
        table.rows.push_back({cells});
    }
    if (prices)
        table.rows.push_back({QStringList{QString(), say("Together, without tax"), QString(), QString(), QString(),
                                          money(group.net, currency)},
                              Row::Kind::total});
    return table;
}

}  // namespace

std::vector<Page> lay_out_purchase_list(const SharedInput& input) {
    Flow flow(furniture_of(Paper::purchase_list, *input));
    const auto groups = quote::purchase_list(offered_of(input->plan), input->supply_of, input->ordered_before);
    if (groups.empty()) flow.paragraph(say("There is nothing to order."));
    const ListColumns columns{
        any_line(groups, [](const quote::PurchaseLine& line) { return line.in_stock.has_value(); }),
        any_line(groups, [](const quote::PurchaseLine& line) { return line.on_order > 0.0; }),
        any_line(groups, [](const quote::PurchaseLine& line) { return line.reserved > 0.0; }),
        any_line(groups, [](const quote::PurchaseLine& line) { return line.taken > 0.0; })};
    for (const quote::PurchaseGroup& group : groups) {
        flow.heading(group.supplier.empty() ? say("No supplier told") : qs(group.supplier));
        flow.table(list_table(group, columns));
    }
    if (columns.reserved)
        flow.paragraph(
            say("Reserved is what other jobs that are not fitted yet still need of stock and orders by their "
                "purchase lists."));
    traces(flow, groups);
    const QString address = firm_address(input->firm);
    if (!address.isEmpty()) flow.paragraph(say("To be delivered to: %1.").arg(address));
    supplier_words(flow, input->firm);
    return flow.finish();
}

std::vector<Page> lay_out_purchase_order(const SharedInput& input) {
    Flow flow(furniture_of(Paper::purchase_order, *input));
    const auto groups = quote::purchase_list(offered_of(input->plan), input->supply_of, input->ordered_before);
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const quote::PurchaseGroup& one) {
        return one.supplier == input->purchase_supplier;
    });
    if (group == groups.end() || std::none_of(group->lines.begin(), group->lines.end(), is_ordered)) {
        flow.paragraph(say("There is nothing to order."));
        return flow.finish();
    }
    flow.paragraph(group->supplier.empty() ? say("No supplier told") : qs(group->supplier), Style{12.0, true, false});
    flow.paragraph(say("Please deliver what is listed here, and confirm price and day."));
    flow.pairs({{say("Our order"), input->order ? input->order->number : QString()},
                {say("Date"), date_words(input->printed_on)},
                {say("Deliver to"), firm_address(input->firm)},
                {say("Or to"), QString()},
                {say("Wished on"), QString()}},
               false, 36.0);
    const QString currency = qs(input->plan.currency);
    const bool prices = input->purchase_prices &&
                        std::any_of(group->lines.begin(), group->lines.end(),
                                    [](const auto& line) { return is_ordered(line) && line.net.has_value(); });
    flow.table(priced_table(*group, currency, prices));
    if (prices) {
        flow.paragraph(
            say("Prices are net, as our price list has them. Tell us before you deliver where yours differ."));
        if (group->without_price > 0)
            flow.paragraph(say("Of lines without a price we know none: please tell us yours."));
    }
    supplier_words(flow, input->firm);
    flow.pairs({{say("Ordered on"), QString()}, {say("By"), QString()}});
    return flow.finish();
}

}  // namespace wg::ui::paper
