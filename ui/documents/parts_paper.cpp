// The parts list for whoever packs the van, and the purchase list by supplier.

#include <algorithm>

#include "ui/common/format.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

constexpr double figure_mm = 24.0;

Row part_row(const quote::OfferedLine& offered) {
    const parts::Line& line = offered.line;
    QString why = offered.source == quote::LineSource::own ? say("entered by the office") : say_filled(line.why);
    if (offered.source == quote::LineSource::changed) {
        why = say("the office's: %1").arg(offered.reason.empty() ? say("no reason given") : qs(offered.reason));
        if (offered.planned_quantity != line.to_buy)
            why += QStringLiteral("; ") + say("planned: %1").arg(amount_words(offered.planned_quantity, line.unit));
    }
    return {QStringList{QString(), say_name(line.text), amount_words(line.quantity, line.unit),
                        amount_words(line.to_buy, line.unit), why}};
}

/// Lines that are in, and options that are ticked.
std::vector<const quote::OfferedLine*> lines_that_count(const quote::Offered& offered) {
    std::vector<const quote::OfferedLine*> out;
    for (const quote::OfferedLine& line : offered.lines)
        if (!line.left_out) out.push_back(&line);
    for (const quote::Option& option : offered.options)
        if (option.ticked) out.push_back(&option.line);
    return out;
}

QString packs_words(const quote::PurchaseLine& line) {
    if (line.packs <= 0.0) return {};
    const QString pack = amount_words(line.pack, line.unit);
    return line.packs == 1.0 ? say("1 pack of %1").arg(pack) : say("%1 packs of %2").arg(number(line.packs), pack);
}

}  // namespace

std::vector<Page> lay_out_parts_list(const SharedInput& input) {
    Flow flow(furniture_of(Paper::parts_list, *input));
    const quote::Offered offered = offered_of(input->plan);
    Table parts;
    parts.columns = {{QString(), 8.0, false, true},
                     {say("Part"), 0.0},
                     {say("Needed"), figure_mm, true},
                     {say("To take"), figure_mm, true},
                     {say("Why"), 62.0}};
    Table work;
    work.columns = {{say("Work"), 0.0}, {say("Time"), figure_mm, true}};
    WorkSum sum;
    for (const quote::OfferedLine* line : lines_that_count(offered)) {
        if (line->line.labour) {
            sum.add(line->line.text, line->line.unit, line->line.to_buy, line->line.net);
            work.rows.push_back(
                {QStringList{say_name(line->line.text), amount_words(line->line.to_buy, line->line.unit)}});
        } else {
            parts.rows.push_back(part_row(*line));
        }
    }
    flow.heading(say("Parts"));
    if (parts.rows.empty()) {
        flow.paragraph(say("The plan asks for no parts yet."));
    } else {
        flow.table(parts);
    }
    if (!work.rows.empty()) {
        work.rows.push_back(
            {QStringList{say("Together"), quantity(sum.hours, QStringLiteral("h"), 1)}, Row::Kind::total});
        flow.heading(say("Work"));
        flow.table(work);
    }
    return flow.finish();
}

std::vector<Page> lay_out_purchase_list(const SharedInput& input) {
    Flow flow(furniture_of(Paper::purchase_list, *input));
    const auto groups = quote::purchase_list(offered_of(input->plan), input->supply_of);
    if (groups.empty()) flow.paragraph(say("There is nothing to order."));
    for (const quote::PurchaseGroup& group : groups) {
        flow.heading(group.supplier.empty() ? say("No supplier told") : qs(group.supplier));
        Table table;
        // Stock has a column where any is kept.
        const bool kept = std::any_of(group.lines.begin(), group.lines.end(),
                                      [](const quote::PurchaseLine& line) { return line.in_stock.has_value(); });
        table.columns = {{QString(), 8.0, false, true},
                         {say("Supplier's number"), kept ? 28.0 : 34.0},
                         {say("Part"), 0.0},
                         {say("Needed"), figure_mm, true}};
        if (kept) table.columns.push_back({say("In stock"), figure_mm, true});
        table.columns.push_back({say("To order"), figure_mm, true});
        table.columns.push_back({say("Packs"), kept ? 26.0 : 30.0, true});
        for (const quote::PurchaseLine& line : group.lines) {
            QStringList cells{QString(), qs(line.number), say_name(line.text), amount_words(line.needed, line.unit)};
            if (kept) cells += line.in_stock ? amount_words(*line.in_stock, line.unit) : QString();
            cells += amount_words(line.to_order, line.unit);
            cells += packs_words(line);
            table.rows.push_back({cells});
        }
        flow.table(table);
        flow.pairs({{say("Ordered on"), QString()}, {say("By"), QString()}});
    }
    const Firm& firm = input->firm;
    QStringList address;
    for (const QString& part : {firm.name, firm.street, firm.town})
        if (!part.trimmed().isEmpty()) address += part.trimmed();
    if (!address.isEmpty()) flow.paragraph(say("To be delivered to: %1.").arg(address.join(QStringLiteral(", "))));
    for (const QString& part : firm.supplier_words.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        flow.paragraph(part);
    return flow.finish();
}

}  // namespace wg::ui::paper
