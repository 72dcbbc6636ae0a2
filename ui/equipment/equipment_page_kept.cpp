// Entries that are not saved as a version, kept aside in the store and brought back.

#include <QDateTime>
#include <QJsonDocument>
#include <algorithm>

#include "core/store/entries_kept.h"
#include "ui/common/format.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/item_list.h"

namespace wg::ui {
namespace {

constexpr int digits_of_new_key = 6;

QString kept_kind_key() {
    return QStringLiteral("kind");
}

std::string entry_text(const ItemDraft& draft) {
    const QJsonObject out{{kept_kind_key(), QString::fromLatin1(store::key_of(draft.kind))},
                          {QStringLiteral("note"), draft.note},
                          {QStringLiteral("item"), draft.item}};
    return QJsonDocument(out).toJson(QJsonDocument::Compact).toStdString();
}

/// The values may be wrong, as they were in the form.
std::optional<ItemDraft> entry_of(const std::string& text) {
    const QJsonDocument read = QJsonDocument::fromJson(QByteArray::fromStdString(text));
    if (!read.isObject()) return std::nullopt;
    const QString kind = read.object().value(kept_kind_key()).toString();
    for (const store::ItemKind one : {store::ItemKind::collector, store::ItemKind::block, store::ItemKind::cylinder,
                                      store::ItemKind::fixing_method}) {
        if (kind != QLatin1String(store::key_of(one))) continue;
        return ItemDraft{one, read.object().value(QStringLiteral("item")).toObject(),
                         read.object().value(QStringLiteral("note")).toString()};
    }
    return std::nullopt;
}

}  // namespace

void EquipmentPage::keep_entries() {
    keep_delay_.stop();
    if (judge_delay_.isActive()) judge();
    keep_delay_.stop();
    const Instant now{QDateTime::currentSecsSinceEpoch()};
    store::EntriesKept book(store_);
    std::vector<Problem> failed;
    for (auto draft = drafts_.constBegin(); draft != drafts_.constEnd(); ++draft) {
        std::string text = entry_text(*draft);
        if (kept_.contains(draft.key()) && kept_.value(draft.key()) == text) continue;
        const auto kept = book.keep(store::EntryBook::equipment,
                                    {draft.key().toStdString(), bases_.value(draft.key(), 0), {}, text}, now);
        if (kept.ok())
            kept_.insert(draft.key(), std::move(text));
        else
            failed = kept.problems();
    }
    for (const QString& key : kept_.keys()) {
        if (drafts_.contains(key)) continue;
        const auto gone = book.forget(store::EntryBook::equipment, key.toStdString());
        if (gone.ok())
            kept_.remove(key);
        else
            failed = gone.problems();
    }
    if (!failed.empty() && !keep_failed_)
        Q_EMIT problem(tr("Entries cannot be kept aside while they are not saved: %1").arg(qs(wg::text_of(failed))));
    keep_failed_ = !failed.empty();
}

void EquipmentPage::forget_entries() {
    keep_delay_.stop();
    store::EntriesKept book(store_);
    for (const QString& key : kept_.keys())
        if (book.forget(store::EntryBook::equipment, key.toStdString()).ok()) kept_.remove(key);
}

void EquipmentPage::bring_back() {
    const auto kept = store::EntriesKept(store_).all(store::EntryBook::equipment);
    QStringList words;
    if (!kept.ok()) words << qs(wg::text_of(kept.problems()));
    if (kept.ok() && !kept.value().damaged.empty()) words << qs(wg::text_of(kept.value().damaged));
    int count = 0;
    for (const store::KeptEntry& entry : kept.ok() ? kept.value().entries : std::vector<store::KeptEntry>()) {
        const std::optional<ItemDraft> draft = entry_of(entry.content);
        if (!draft) {
            words << tr("Entries of '%1' cannot be read.").arg(qs(entry.entry));
            continue;
        }
        QString key = qs(entry.entry);
        const auto known = known_.constFind(key);
        const bool there = known != known_.constEnd() && !known->program;
        kept_.insert(key, entry.content);
        if (there && text_of(*draft) == text_of(known->saved)) continue;
        if (!there) {
            // New ones keep their keys; the next new one gets another.
            const int number = key.right(digits_of_new_key).toInt();
            if (key.startsWith(QStringLiteral("new") + QChar(1)) && number > 0)
                new_count_ = std::max(new_count_, number);
            else
                key =
                    QStringLiteral("new%1%2").arg(QChar(1)).arg(++new_count_, digits_of_new_key, 10, QLatin1Char('0'));
        }
        drafts_.insert(key, *draft);
        bases_.insert(key, there ? entry.based_on : 0);
        ++count;
        if (there && known->version && known->version->version != entry.based_on)
            words
                << tr("'%1' was saved by somebody since, as version %2: compare, then drop the entries or make an item "
                      "of its own of them.")
                       .arg(key, number(static_cast<int>(known->version->version)));
    }
    const bool wrong = !words.isEmpty();
    if (count > 0) {
        words.prepend(
            tr("The program ended before these entries were saved: items with entries that are back: %1. Save them, or "
               "drop the entries.")
                .arg(number(count)));
        show_list(current_);
        show_current(list_->selected());
    }
    if (kept_.size() > drafts_.size()) keep_delay_.start();
    // Once somebody listens.
    if (!words.isEmpty())
        QTimer::singleShot(0, this, [this, wrong, told = words.join(QLatin1Char('\n'))] {
            if (wrong)
                Q_EMIT problem(told);
            else
                Q_EMIT said(told);
        });
}

}  // namespace wg::ui
