// What the buttons of the equipment page do.

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <algorithm>

#include "core/equipment/codec.h"
#include "core/plan/reference_overlay.h"
#include "ui/common/format.h"
#include "ui/common/problem_dialog.h"
#include "ui/common/whole_file.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/item_form.h"
#include "ui/equipment/item_list.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_file_bytes = 16 * mebibyte;

Instant step_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

std::string_view bytes_view(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

QString id_in(const ItemDraft& draft) {
    return draft.item.value(QLatin1String("id")).toString();
}

}  // namespace

QString EquipmentPage::begin(ItemDraft draft) {
    if (judge_delay_.isActive()) judge();
    // A key that no id can be: texts of the format have no control characters but line ends.
    const QString key = QStringLiteral("new%1%2").arg(QChar(1)).arg(++new_count_, 6, 10, QLatin1Char('0'));
    drafts_.insert(key, std::move(draft));
    bases_.insert(key, 0);
    list_->search()->clear();
    current_ = key;
    show_list(key);
    show_current(key);
    return key;
}

void EquipmentPage::begin_new(store::ItemKind kind) {
    begin({kind, {}, {}});
}

void EquipmentPage::begin_from_this() {
    if (judge_delay_.isActive()) judge();
    const Known* known = current();
    if (known == nullptr && !drafts_.contains(current_)) return;
    ItemDraft draft = known == nullptr ? drafts_.value(current_) : drafts_.value(current_, known->saved);
    // An id of its own; the rest is a start.
    const QString stem = id_in(draft).isEmpty() ? QStringLiteral("own") : id_in(draft);
    QString id = stem + QStringLiteral("-own");
    for (int n = 2; known_.contains(id); ++n)
        id = QStringLiteral("%1-own-%2").arg(stem).arg(n);
    draft.item.insert(QLatin1String("id"), id);
    begin(std::move(draft));
}

void EquipmentPage::took(const Result<store::EquipmentVersion>& done, const QString& words) {
    if (!done) {
        Q_EMIT problem(qs(wg::text_of(done.problems())));
        return;
    }
    drafts_.remove(current_);
    bases_.remove(current_);
    current_ = qs(done.value().item_id);
    reload();
    keep_entries();
    Q_EMIT said(words.arg(number(static_cast<int>(done.value().version))));
    Q_EMIT items_changed();
}

bool EquipmentPage::save(Instant now) {
    judge();
    if (!drafts_.contains(current_) || !sound_) {
        form_->go_to_first_problem();
        return false;
    }
    const Known* known = current();
    const QByteArray text = text_of(form_->draft());
    // On what was changed, not on what somebody has saved since.
    const std::int64_t newest = known != nullptr && known->version ? known->version->version : 0;
    const std::int64_t base = bases_.value(current_, newest);
    const auto done = store::EquipmentBook(store_).save(bytes_view(text), base, now);
    took(done, tr("Saved as version %1"));
    if (!done.ok()) show_overtaking(base);
    return done.ok();
}

// Only a version that stands on the screen is what the entries change from then on: after a save that failed for
// another reason, nobody has seen what somebody else may save until the next try.
void EquipmentPage::show_overtaking(std::int64_t base) {
    const Result<store::EquipmentKept> kept = store::EquipmentBook(store_).history(current_.toStdString());
    if (!kept || kept.value().items.empty() || kept.value().items.front().version == base) return;
    const QString key = current_;
    reload();
    const Known* known = current();
    if (current_ != key || known == nullptr || !known->version || !drafts_.contains(key)) return;
    side_->setCurrentWidget(history_);
    bases_.insert(key, known->version->version);
}

void EquipmentPage::drop_entries() {
    judge_delay_.stop();
    drafts_.remove(current_);
    bases_.remove(current_);
    if (current() == nullptr) current_.clear();
    show_list(current_);
    show_current(list_->selected());
    keep_entries();
}

bool EquipmentPage::set_withdrawn(bool withdrawn, Instant now) {
    const Known* known = current();
    if (known == nullptr || !known->version || drafts_.contains(current_)) return false;
    store::EquipmentBook book(store_);
    const std::string id = current_.toStdString();
    const std::int64_t version = known->version->version;
    const auto done = withdrawn ? book.withdraw(id, version, now) : book.bring_back(id, version, now);
    took(done, withdrawn ? tr("Withdrawn with version %1") : tr("Brought back with version %1"));
    return done.ok();
}

bool EquipmentPage::approve(const QString& who, Instant now) {
    const Known* known = current();
    if (known == nullptr || !known->version || drafts_.contains(current_)) return false;
    const auto done = store::EquipmentBook(store_).approve(current_.toStdString(), known->version->version,
                                                           who.trimmed().toStdString(), now);
    took(done, tr("Version %1 is approved"));
    return done.ok();
}

void EquipmentPage::ask_approval() {
    bool given = false;
    const QString who = QInputDialog::getText(this, tr("Approve this version"), tr("Who answers for these data"),
                                              QLineEdit::Normal, QString(), &given);
    if (given) approve(who, step_now());
}

Result<QString> EquipmentPage::import_text(const QByteArray& text, const std::string& file_name, Instant now) {
    const Result<std::vector<ItemDraft>> read = drafts_of(text, file_name);
    if (!read) return read.problems();
    if (read.value().empty()) return Problem{file_name, "holds no item", "Choose a file with equipment"};
    const Result<Catalogue> whole = catalogue_from_json(bytes_view(text), file_name);
    if (!whole) return whole.problems();
    std::vector<Problem> problems;
    // Items of the firm get another version; beside all others their ids have to be free.
    plan::Reference others = all_;
    const auto drop = [&](auto& items) {
        const auto replaced = [&](const auto& item) {
            const auto known = known_.constFind(qs(item.id));
            if (known == known_.constEnd() || known->program) return false;
            return std::any_of(read.value().begin(), read.value().end(), [&](const ItemDraft& draft) {
                return id_in(draft) == qs(item.id) && draft.kind == known->saved.kind;
            });
        };
        items.erase(std::remove_if(items.begin(), items.end(), replaced), items.end());
    };
    drop(others.catalogue.collectors);
    drop(others.catalogue.blocks);
    drop(others.catalogue.cylinders);
    drop(others.catalogue.fixing_methods);
    problems = plan::problems_beside(others, whole.value(), file_name);
    for (const ItemDraft& draft : read.value()) {
        if (drafts_.contains(id_in(draft)))
            problems.push_back({file_name + ": \"" + id_in(draft).toStdString() + '"',
                                "has entries on screen that are not saved", "Save or drop them first"});
    }
    if (!problems.empty()) return problems;
    store::EquipmentBook book(store_);
    int fresh = 0, changed = 0, same = 0;
    for (const ItemDraft& draft : read.value()) {
        const auto known = known_.constFind(id_in(draft));
        const bool there = known != known_.constEnd() && known->version;
        const std::int64_t from = there ? known->version->version : 0;
        if (there && !known->version->withdrawn && text_of(draft) == text_of(known->saved)) {
            ++same;
            continue;
        }
        const QByteArray one = text_of(draft);
        const auto saved = book.save(bytes_view(one), from, now);
        if (!saved) {
            problems = saved.problems();
            break;
        }
        ++(there ? changed : fresh);
    }
    reload();
    if (fresh + changed > 0) Q_EMIT items_changed();
    const QString done =
        tr("%1 new, %2 as another version, %3 as they were").arg(number(fresh), number(changed), number(same));
    if (problems.empty()) return done;
    problems.push_back({file_name, "was read in part: " + done.toStdString(), "Read it again once the cause is gone"});
    return problems;
}

void EquipmentPage::choose_import() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Read equipment"), QString(), tr("Equipment (*.json);;All files (*)"));
    if (path.isEmpty()) return;
    const Result<std::string> text = read_whole(path, most_file_bytes);
    if (!text) {
        Q_EMIT problem(qs(wg::text_of(text.problems())));
        return;
    }
    const Result<QString> done =
        import_text(QByteArray::fromStdString(text.value()), QFileInfo(path).fileName().toStdString(), step_now());
    if (done) {
        Q_EMIT said(tr("Read: %1").arg(done.value()));
        return;
    }
    show_problems(this, tr("This file was not taken"), tr("What is wrong with it, item by item."),
                  qs(wg::text_of(done.problems())));
}

QByteArray EquipmentPage::export_text(bool all) const {
    std::vector<ItemDraft> drafts;
    if (const Known* known = current(); known != nullptr && !all) drafts.push_back(known->saved);
    for (const QString& key : all ? order_ : QStringList()) {
        const auto known = known_.constFind(key);
        if (known->version && !known->version->withdrawn) drafts.push_back(known->saved);
    }
    return drafts.empty() ? QByteArray() : text_of(drafts);
}

void EquipmentPage::choose_export(bool all) {
    const QByteArray text = export_text(all);
    if (text.isEmpty()) {
        Q_EMIT problem(all ? tr("The firm has no items of its own yet.") : tr("This item is not saved yet."));
        return;
    }
    const QString path = QFileDialog::getSaveFileName(this, tr("Write equipment"), QStringLiteral("equipment.json"),
                                                      tr("Equipment (*.json)"));
    if (path.isEmpty()) return;
    const Result<bool> written = write_whole(path, text);
    if (written)
        Q_EMIT said(tr("Written: %1").arg(path));
    else
        Q_EMIT problem(qs(wg::text_of(written.problems())));
}

}  // namespace wg::ui
