// Changes of a price list that are not saved as a version, kept aside in the store and brought back.

#include <QDateTime>

#include "core/store/entries_kept.h"
#include "ui/common/format.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {

void PricePage::keep_changes() {
    keep_delay_.stop();
    store::EntriesKept book(store_);
    const bool changed = has_changes();
    std::vector<Problem> failed;
    if (!kept_id_.empty() && (!changed || kept_id_ != shown_id_)) {
        const auto gone = book.forget(store::EntryBook::prices, kept_id_);
        if (gone.ok()) {
            kept_id_.clear();
            kept_text_.clear();
        } else {
            failed = gone.problems();
        }
    }
    if (changed && failed.empty()) {
        std::string text = parts::price_list_to_json(shown_list());
        if (text == kept_text_ && kept_id_ == shown_id_) return;
        const auto kept = book.keep(store::EntryBook::prices, {shown_id_, based_on_, {}, text},
                                    Instant{QDateTime::currentSecsSinceEpoch()});
        if (kept.ok()) {
            kept_id_ = shown_id_;
            kept_text_ = std::move(text);
        } else {
            failed = kept.problems();
        }
    }
    if (!failed.empty() && !keep_failed_)
        Q_EMIT problem(tr("Changes cannot be kept aside while they are not saved: %1").arg(qs(text_of(failed))));
    keep_failed_ = !failed.empty();
}

void PricePage::bring_back() {
    const auto kept = store::EntriesKept(store_).all(store::EntryBook::prices);
    std::vector<Problem> problems = kept.ok() ? kept.value().damaged : kept.problems();
    QStringList words;
    bool overtaken = false;
    for (const store::KeptEntry& entry : kept.ok() ? kept.value().entries : std::vector<store::KeptEntry>()) {
        const Result<parts::PriceList> list =
            parts::price_list_from_json(entry.content, "price list " + entry.entry + " with changes");
        if (!list.ok()) {
            problems.insert(problems.end(), list.problems().begin(), list.problems().end());
            continue;
        }
        for (const Entry& known : entries_) {
            if (known.list.id != entry.entry || !known.own || has_changes()) continue;
            show_entry(known);
            model_->set_list(list.value(), true);
            terms_->set_list(list.value(), true);
            based_on_ = static_cast<int>(entry.based_on);
            kept_id_ = entry.entry;
            kept_text_ = entry.content;
            if (!has_changes()) continue;  // saved all the same
            words
                << tr("The program ended before changes of '%1' were saved. They are back: save them as a version, or "
                      "discard them.")
                       .arg(qs(list.value().label));
            overtaken = overtaken || known.version.version != based_on_;
            if (known.version.version != based_on_)
                words << tr("Somebody saved version %1 of it since: saving is refused, so that nothing is overwritten. "
                            "Write "
                            "the changes to a file before you discard them.")
                             .arg(number(known.version.version));
        }
    }
    refresh_state();
    if (!problems.empty()) words << qs(text_of(problems));
    // Once somebody listens.
    const bool wrong = overtaken || !problems.empty();
    if (!words.isEmpty())
        QTimer::singleShot(0, this, [this, wrong, told = words.join(QLatin1Char(' '))] {
            if (wrong)
                Q_EMIT problem(told);
            else
                Q_EMIT said(told);
        });
}

void PricePage::discard_changes() {
    if (const Entry* entry = current()) show_entry(*entry);
    keep_changes();
}

}  // namespace wg::ui
