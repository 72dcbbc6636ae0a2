// What the page of price lists says about the one on screen, and the mark of invented prices.

#include <QDateTime>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

#include "core/parts/unchecked_prices.h"
#include "ui/common/format.h"
#include "ui/common/versions_head.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {
namespace {

constexpr int most_prices_named = 6;

QString mark_words(int unchecked) {
    const QString begin = PricePage::tr("\u25c6 Prices taken from an invented list, not checked: quotes say so.");
    if (unchecked == 0) return begin;
    return begin + QLatin1Char(' ') +
           (unchecked == 1 ? PricePage::tr("1 price is still the invented one.")
                           : PricePage::tr("%1 prices are still the invented ones.").arg(number(unchecked)));
}

}  // namespace

QString PricePage::state_words() const {
    return state_->text();
}

QStringList PricePage::state_of(const Entry& entry, const parts::PriceList& list, bool changed) const {
    const auto without_cost =
        std::count_if(list.items.begin(), list.items.end(), [](const parts::PriceItem& item) { return !item.cost; });
    QStringList words{tr("%1 items, %2. Prices in %3, net, from %4 to %5.")
                          .arg(number(static_cast<double>(list.items.size())),
                               without_cost == 0
                                   ? tr("all with their cost")
                                   : tr("%1 without a cost").arg(number(static_cast<double>(without_cost))),
                               qs(list.currency), day(list.valid_from), day(list.valid_to))};
    if (list.invented)
        words +=
            entry.own ? mark_words(static_cast<int>(unchecked().size())) : tr("Every price of this list is invented.");
    const QString today = QDate::currentDate().toString(Qt::ISODate);
    if (today < qs(list.valid_from) || today > qs(list.valid_to)) words += tr("It does not hold today.");
    if (!entry.own) {
        words += tr("It comes with the program and is not changed: make a list of the firm's own from it.");
    } else {
        words += tr("Version %1, saved %2%3.")
                     .arg(number(entry.version.version), day(entry.version.saved_at),
                          entry.version.saved_by.empty() ? QString() : tr(" by %1").arg(qs(entry.version.saved_by)));
        if (entry.version.withdrawn) words += tr("Withdrawn: jobs are not offered it until it is saved again.");
        if (changed) words += tr("Changes are not saved yet.");
        if (const QString lack = terms_->unfinished(); !lack.isEmpty())
            words += tr("\u25b2 Taxes and energy: %1").arg(lack);
    }
    return words;
}

void PricePage::refresh_state() {
    const Entry* entry = current();
    checked_->setVisible(false);
    if (entry == nullptr) {
        state_->setText(tr("There is no price list."));
        return;
    }
    const parts::PriceList list = shown_list();
    const bool changed = has_changes();
    if ((changed || !kept_id_.empty()) && !keep_delay_.isActive()) keep_delay_.start();
    state_->setText(state_of(*entry, list, changed).join(QLatin1Char(' ')));
    head_->allow(entry->own, entry->version.withdrawn, changed);
    checked_->setVisible(entry->own && list.invented);
    for (QPushButton* edit : {add_, remove_, import_items_})
        edit->setEnabled(entry->own);
}

QStringList PricePage::unchecked() const {
    QStringList out;
    const parts::PriceList list = shown_list();
    for (const auto& [id, other] : reference_->price_lists) {
        if (!other.invented) continue;
        for (const std::string& name : parts::same_prices(list, other))
            out << qs(name);
    }
    return out;
}

void PricePage::set_checked() {
    terms_->set_checked();
}

void PricePage::ask_checked() {
    const QStringList left = unchecked();
    const int count = static_cast<int>(left.size());
    QMessageBox box(QMessageBox::Question, tr("Prices are checked"),
                    tr("Take the mark of invented prices from '%1'?").arg(qs(shown_list().label)),
                    QMessageBox::NoButton, this);
    QString words =
        count == 0
            ? tr("No price is one of the invented list any more.")
            : tr("Still those of the invented list: %1").arg(left.mid(0, most_prices_named).join(QStringLiteral("; ")));
    if (count > most_prices_named) words += tr("; and %1 more").arg(number(count - most_prices_named));
    if (count > 0) {
        words += tr(".\nWithout the mark, quotes with these prices no longer say that they are invented.");
        box.setDetailedText(left.join(QLatin1Char('\n')));
    }
    box.setInformativeText(words);
    QPushButton* take = box.addButton(tr("Take the mark away"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(tr("Keep the mark"), QMessageBox::RejectRole));
    box.exec();
    if (box.clickedButton() == take) set_checked();
}

}  // namespace wg::ui
