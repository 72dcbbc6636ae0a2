#include "ui/prices/purchase_words.h"

#include <algorithm>

#include "ui/drawing/amount_table.h"
#include "ui/prices/purchase_page.h"

namespace wg::ui {
namespace {

bool comes_short(const parts::OrderedLine& line) {
    return parts::is_stocked(line) && line.closed && line.received < line.thousandths;
}

bool came_beyond(const parts::OrderedLine& line) {
    return parts::is_stocked(line) && line.received > line.thousandths;
}

QString with_short_and_beyond(QString words, const std::vector<parts::OrderedLine>& lines) {
    if (const auto count = std::count_if(lines.begin(), lines.end(), comes_short); count > 0)
        words += PurchasePage::tr(", lines that do not come in full: %1").arg(count);
    if (const auto count = std::count_if(lines.begin(), lines.end(), came_beyond); count > 0)
        words += PurchasePage::tr(", lines of which more came: %1").arg(count);
    return words;
}

}  // namespace

QString list_state(const std::vector<parts::OrderedLine>& lines) {
    const auto waiting = std::count_if(lines.begin(), lines.end(),
                                       [](const parts::OrderedLine& line) { return parts::to_come(line) > 0; });
    switch (parts::standing_of(lines)) {
        case parts::OrderStanding::open: return with_short_and_beyond(PurchasePage::tr("open"), lines);
        case parts::OrderStanding::partly:
            return with_short_and_beyond(PurchasePage::tr("partly received, lines to come: %1").arg(waiting), lines);
        case parts::OrderStanding::received: return with_short_and_beyond(PurchasePage::tr("received"), lines);
        case parts::OrderStanding::not_coming: return PurchasePage::tr("does not come");
        case parts::OrderStanding::no_stock: break;
    }
    const bool ordered =
        std::any_of(lines.begin(), lines.end(), [](const parts::OrderedLine& line) { return line.thousandths > 0; });
    return ordered ? PurchasePage::tr("nothing for the stock: work, hire or lines of the office's own")
                   : PurchasePage::tr("nothing was ordered: all was there, on order or ordered before");
}

QString line_state(const parts::OrderedLine& line) {
    switch (parts::standing_of(line)) {
        case parts::OrderStanding::open: return PurchasePage::tr("to come");
        case parts::OrderStanding::partly:
            return PurchasePage::tr("partly, to come: %1").arg(stock_quantity(parts::to_come(line), line.unit));
        case parts::OrderStanding::received:
            if (came_beyond(line))
                return PurchasePage::tr("received, %1 more than ordered")
                    .arg(stock_quantity(line.received - line.thousandths, line.unit));
            return comes_short(line) ? PurchasePage::tr("received, the rest does not come")
                                     : PurchasePage::tr("received");
        case parts::OrderStanding::not_coming: return PurchasePage::tr("does not come");
        case parts::OrderStanding::no_stock: break;
    }
    if (line.item_id.empty()) return PurchasePage::tr("a line of the office's own: no stock is kept of it");
    if (!parts::is_stocked(line)) return PurchasePage::tr("work or hire: no stock is kept of it");
    return PurchasePage::tr("nothing was ordered");
}

}  // namespace wg::ui
