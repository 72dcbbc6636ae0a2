// What the page of price lists asks for: names, notes and list files; tables are in price_files.cpp.

#include <QDate>
#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>

#include "ui/common/format.h"
#include "ui/common/whole_file.h"
#include "ui/prices/price_history.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_list_bytes = 16 * mebibyte;  ///< what the reader of price lists takes

Instant moment_of_asking() {
    return Instant{QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

void PricePage::ask_new() {
    bool ok = false;
    const QString label = QInputDialog::getText(this, tr("New price list"), tr("Name of the list"), QLineEdit::Normal,
                                                tr("Prices %1").arg(QDate::currentDate().year()), &ok);
    if (!ok || label.trimmed().isEmpty()) return;
    // An id from the name: jobs and files name the list by it, so it stays when the name changes.
    QString id;
    for (const QChar c : label.trimmed().toLower().normalized(QString::NormalizationForm_D)) {
        if (c.isLetterOrNumber() && c.unicode() < 128) id += c;
        if (c.isSpace() && !id.endsWith(QLatin1Char('-'))) id += QLatin1Char('-');
    }
    if (id.isEmpty()) id = QStringLiteral("list");
    QString free = id;
    const auto taken = [this](const QString& wanted) {
        return std::any_of(entries_.begin(), entries_.end(), [&](const Entry& e) { return qs(e.list.id) == wanted; });
    };
    for (int n = 2; taken(free); ++n)
        free = QStringLiteral("%1-%2").arg(id).arg(n);
    make_own(free.toStdString(), label);
}

bool PricePage::make_own(const std::string& id, const QString& label) {
    if (current() == nullptr) return false;
    parts::PriceList list = shown_list();
    list.id = id;
    list.label = label.trimmed().toStdString();
    list.invented = false;
    list.note.clear();
    const std::string text = parts::price_list_to_json(list);
    const Result<parts::PriceList> read = parts::price_list_from_json(text, "price list " + id);
    if (!tell(read.ok() ? std::vector<Problem>{} : read.problems())) return false;
    if (reference_->price_lists.count(id) != 0) {
        Q_EMIT problem(tr("'%1' is the id of a list that comes with the program. Choose another.").arg(qs(id)));
        return false;
    }
    const auto saved = store::PriceBook(store_).save(id, text, 0, {}, moment_of_asking());
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    shown_id_ = id;
    read_lists();
    fill_choice();
    if (const Entry* entry = current()) show_entry(*entry);
    Q_EMIT said(tr("'%1' is a list of the firm's own now").arg(label.trimmed()));
    Q_EMIT lists_changed();
    return true;
}

void PricePage::ask_save() {
    bool ok = false;
    const QString note = QInputDialog::getText(this, tr("Save as a version"), tr("What changed (may stay empty)"),
                                               QLineEdit::Normal, {}, &ok);
    if (ok) save_version(note, moment_of_asking());
}

void PricePage::ask_withdraw() {
    bool ok = false;
    const QString note = QInputDialog::getText(
        this, tr("Withdraw the list"),
        tr("It is no longer offered for jobs; its versions stay, and saving brings it back.\nWhy (may stay empty)"),
        QLineEdit::Normal, {}, &ok);
    if (ok) withdraw(note, moment_of_asking());
}

void PricePage::show_history() {
    PriceHistory(store_, shown_id_, this).exec();
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
    const auto saved = store::PriceBook(store_).save(
        id, as_kept, based_on, tr("from %1").arg(QFileInfo(path).fileName()).toStdString(), moment_of_asking());
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
