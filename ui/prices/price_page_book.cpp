// New lists, versions and list files of the page of price lists; tables are in price_files.cpp.

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>

#include "core/parts/price_changes.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/common/versions_view.h"
#include "ui/common/whole_file.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_list_bytes = 16 * mebibyte;  ///< what the reader of price lists takes

/// A list named after a year holds for that year, whatever days the one it is made from has.
void take_year_of_name(parts::PriceList& list) {
    static const QRegularExpression year_word(QStringLiteral("\\b(20\\d\\d)\\b"));
    const QRegularExpressionMatch found = year_word.match(qs(list.label));
    if (!found.hasMatch()) return;
    const std::string year = found.captured(1).toStdString();
    list.valid_from = year + "-01-01";
    list.valid_to = year + "-12-31";
}

/// "1,049.00 EUR" as the rest of the window writes it.
QString amounts_as_elsewhere(const std::string& text) {
    static const QRegularExpression between_thousands(QStringLiteral("(?<=\\d),(?=\\d{3}(,\\d{3})*\\.\\d\\d )"));
    return qs(text).replace(between_thousands, QString(QChar(0x202F)));
}

}  // namespace

bool PricePage::make_own(const std::string& id, const QString& label) {
    if (current() == nullptr) return false;
    parts::PriceList list = shown_list();
    list.id = id;
    list.label = label.trimmed().toStdString();
    take_year_of_name(list);
    list.note.clear();  // the mark of invented prices stays until somebody says that they are checked
    const std::string text = parts::price_list_to_json(list);
    const Result<parts::PriceList> read = parts::price_list_from_json(text, "price list " + id);
    if (!tell(read.ok() ? std::vector<Problem>{} : read.problems())) return false;
    if (reference_->price_lists.count(id) != 0) {
        Q_EMIT problem(tr("'%1' is the id of a list that comes with the program. Choose another.").arg(qs(id)));
        return false;
    }
    const auto saved = store::PriceBook(store_).save(id, text, 0, {}, Instant{QDateTime::currentSecsSinceEpoch()});
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    shown_id_ = id;
    read_lists();
    fill_choice();
    if (const Entry* entry = current()) show_entry(*entry);
    Q_EMIT said(tr("'%1' is a list of the firm's own now, for %2 to %3")
                    .arg(label.trimmed(), day(list.valid_from), day(list.valid_to)));
    Q_EMIT lists_changed();
    return true;
}

bool PricePage::save_version(const QString& note, Instant now) {
    Entry* entry = current();
    if (entry == nullptr || !entry->own) return false;
    if (const QString lack = terms_->unfinished(); !lack.isEmpty()) {
        Q_EMIT problem(tr("Not saved. %1 Type it, or remove the row.").arg(lack));
        return false;
    }
    const std::string text = parts::price_list_to_json(shown_list());
    // What the fields let pass and the file's reader does not would be a list that nobody can read again.
    const Result<parts::PriceList> read = parts::price_list_from_json(text, "price list " + shown_id_);
    if (!tell(read.ok() ? std::vector<Problem>{} : read.problems())) return false;
    const auto saved = store::PriceBook(store_).save(shown_id_, text, based_on_, note.trimmed().toStdString(), now);
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    entry->list = read.value();
    entry->version = saved.value();
    show_entry(*entry);
    keep_changes();
    fill_choice();
    Q_EMIT said(tr("Version %1 of '%2' saved").arg(saved.value().version).arg(qs(entry->list.label)));
    Q_EMIT lists_changed();
    return true;
}

bool PricePage::withdraw(const QString& note, Instant now) {
    Entry* entry = current();
    if (entry == nullptr || !entry->own) return false;
    const auto done =
        store::PriceBook(store_).withdraw(shown_id_, entry->version.version, note.trimmed().toStdString(), now);
    if (!tell(done.ok() ? std::vector<Problem>{} : done.problems())) return false;
    entry->version = done.value();
    based_on_ = entry->version.version;
    fill_choice();
    refresh_state();
    Q_EMIT said(tr("'%1' is withdrawn").arg(qs(entry->list.label)));
    Q_EMIT lists_changed();
    return true;
}

std::unique_ptr<VersionsDialog> PricePage::versions() {
    const auto kept = kept_versions(store::PriceBook(store_).history(shown_id_));
    const auto between = [this, id = shown_id_](std::int64_t before,
                                                std::int64_t after) -> Result<std::vector<VersionChange>> {
        const auto read = [&](std::int64_t version) -> Result<parts::PriceList> {
            const auto text = store::PriceBook(store_).content(id, static_cast<int>(version));
            if (!text.ok()) return text.problems();
            return parts::price_list_from_json(text.value(), "price list " + id);
        };
        const Result<parts::PriceList> then = read(before);
        const Result<parts::PriceList> now = read(after);
        if (!then.ok() || !now.ok()) return (then.ok() ? now : then).problems();
        std::vector<VersionChange> out;
        for (const parts::PriceChange& change : parts::price_changes(then.value(), now.value()))
            out.push_back({with_capital(qs(change.where)), amounts_as_elsewhere(change.before),
                           change.after.empty() ? tr("removed") : amounts_as_elsewhere(change.after)});
        return out;
    };
    return std::make_unique<VersionsDialog>(tr("Versions of the price list"), kept, between, this);
}

bool PricePage::import_file(const QString& path) {
    if (has_changes()) {
        Q_EMIT problem(tr("The list on screen has changes. Save or discard them first."));
        return false;
    }
    const Result<std::string> text = read_whole(path, most_list_bytes);
    if (!tell(text.ok() ? std::vector<Problem>{} : text.problems())) return false;
    const Result<parts::PriceList> list =
        parts::price_list_from_json(text.value(), QFileInfo(path).fileName().toStdString());
    if (!tell(list.ok() ? std::vector<Problem>{} : list.problems())) return false;
    const std::string id = list.value().id;
    if (reference_->price_lists.count(id) != 0 &&
        std::none_of(entries_.begin(), entries_.end(), [&](const Entry& e) { return e.own && e.list.id == id; })) {
        Q_EMIT problem(
            tr("'%1' is the id of a list that comes with the program. Give the file's list another id.").arg(qs(id)));
        return false;
    }
    int based_on = 0;
    for (const Entry& entry : entries_)
        if (entry.own && entry.list.id == id) based_on = entry.version.version;
    const std::string as_kept = parts::price_list_to_json(list.value());
    const auto saved = store::PriceBook(store_).save(id, as_kept, based_on,
                                                     tr("from %1").arg(QFileInfo(path).fileName()).toStdString(),
                                                     Instant{QDateTime::currentSecsSinceEpoch()});
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    shown_id_ = id;
    reload();
    Q_EMIT said(
        tr("'%1' is version %2 of the list in the book").arg(qs(list.value().label)).arg(saved.value().version));
    Q_EMIT lists_changed();
    return true;
}

void PricePage::ask_import() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Read a price list"), {}, tr("Price lists (*.json)"));
    if (!path.isEmpty()) import_file(path);
}

}  // namespace wg::ui
