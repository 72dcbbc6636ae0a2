// Jobs that travel: out as a file, in from one, and two copies of one job put together.

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>

#include "core/exchange/parcel.h"
#include "core/merge/field_words.h"
#include "core/store/customers.h"
#include "core/store/travel.h"
#include "ui/common/building_edits.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/problem_dialog.h"
#include "ui/common/whole_file.h"
#include "ui/desk/desk_page.h"
#include "ui/window/auto_saver.h"
#include "ui/window/copies_dialog.h"
#include "ui/window/history_dialog.h"
#include "ui/window/job_files.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace {

Instant at_this_moment() {
    return {QDateTime::currentSecsSinceEpoch()};
}

QStringList notes_of(const store::Taken& taken) {
    QStringList notes;
    if (taken.brought_back) notes << MainWindow::tr("It had been removed from this desk and is back.");
    if (!taken.other_number.empty())
        notes << MainWindow::tr("It came as number %1, which another job has here. It is %2 now.")
                     .arg(qs(taken.other_number), qs(taken.job.number));
    if (!taken.likely_same.empty()) {
        QStringList numbers;
        for (const std::string& number : taken.likely_same)
            numbers << qs(number);
        notes << MainWindow::tr(
                     "The desk has a job for the same client and house under another identity: %1. "
                     "They are not put together.")
                     .arg(numbers.join(QStringLiteral(", ")));
    }
    if (taken.quotes > 0 || taken.pictures > 0)
        notes << MainWindow::tr("New here: issued quotes %1, photographs %2.").arg(taken.quotes).arg(taken.pictures);
    if (taken.firm_data > 0)
        notes << MainWindow::tr(
            "Prices, rules or equipment that the job is planned with came with it and are kept here now.");
    for (const std::string& line : taken.left_out)
        notes << MainWindow::tr("Not taken: %1").arg(qs(line));
    return notes;
}

// What each open field was in the job that both copies were made from.
QStringList before_words(const Job& base, const std::vector<merge::Open>& open) {
    const merge::Versions versions = merge::begin(base);
    QStringList out;
    for (const merge::Open& field : open) {
        const auto found = versions.fields.find(field.path);
        out << (found == versions.fields.end() || found->second.empty()
                    ? MainWindow::tr("not there")
                    : qs(merge::value_words(versions, field.path, found->second.front().json)));
    }
    return out;
}

}  // namespace

void MainWindow::export_job() {
    if (session_ == nullptr || !leave_job()) return;
    const QString path = QFileDialog::getSaveFileName(this, tr("Export the job"), exchange_file_name(session_->job()),
                                                      tr("Jobs to send (*.warmgable)"));
    if (path.isEmpty()) return;
    export_job_to(path);
}

bool MainWindow::export_job_to(const QString& path) {
    if (!saver_->save_now()) return false;
    const auto out = store::Travel(*store_).parcel_of(
        session_->job().id, "Warmgable " + QCoreApplication::applicationVersion().toStdString(), at_this_moment());
    Result<std::string> bytes = out ? exchange::pack(out.value().parcel) : Result<std::string>(out.problems());
    if (!bytes) {
        job_page_->notice().add(Mark::stop, tr("The job was not exported. %1").arg(qs(text_of(bytes.problems()))));
        return false;
    }
    const Result<bool> written = write_whole(path, bytes.value());
    if (!written) {
        job_page_->notice().add(Mark::stop, qs(text_of(written.problems())));
        return false;
    }
    job_page_->set_saved_text(tr("exported to %1").arg(QFileInfo(path).fileName()));
    if (!out.value().missing.empty()) {
        QStringList lines;
        for (const std::string& line : out.value().missing)
            lines << qs(line);
        job_page_->notice().add(
            Mark::caution, tr("The file lacks what this store lacks, too: %1").arg(lines.join(QStringLiteral("; "))));
    }
    return true;
}

bool MainWindow::open_job_file(const QString& path) {
    if (!is_exchange_file(path)) {
        const Result<std::string> text = read_job_file(path);
        if (text) return open_job_text(text.value(), QFileInfo(path).fileName().toStdString());
        show_problems(this, tr("This file cannot be opened"), tr("Nothing was changed."), qs(text_of(text.problems())));
        return false;
    }
    const std::string name = QFileInfo(path).fileName().toStdString();
    const Result<std::string> bytes = read_whole(path, exchange::max_file_bytes);
    const auto parcel = bytes ? exchange::unpack(bytes.value(), name) : Result<exchange::Parcel>(bytes.problems());
    if (!leave_job()) return false;
    auto taken = parcel ? store::Travel(*store_).take(parcel.value(), at_this_moment())
                        : Result<store::Taken>(parcel.problems());
    if (!taken) {
        show_problems(this, tr("This file cannot be taken in"), tr("Nothing was changed."),
                      qs(text_of(taken.problems())));
        return false;
    }
    show_taken(std::move(taken).value(), parcel.value().seat_name);
    return true;
}

void MainWindow::show_taken(store::Taken taken, const std::string& from) {
    QStringList notes = notes_of(taken);
    if (taken.firm_data > 0) take_firms_own();
    const store::CustomerBook book(*store_);
    const Result<std::string> linked = book.customer_of(taken.job.id);
    if (linked && linked.value().empty()) {
        const auto likely = book.likely_of(taken.job.client);
        if (likely && !likely.value().empty())
            notes << tr("The client may be customer %1, %2: the desk's Customers offers to link the job")
                         .arg(qs(likely.value().front().number), qs(likely.value().front().name));
    }
    show_session(taken.job);
    // Both sides changed the building: its roof and walls follow from what it is now.
    for (const std::string& id : taken.buildings_to_remake) {
        const Building* building = find_building(session_->job().site, id);
        if (building == nullptr) continue;
        const QString refused = set_building(*session_, Building(*building));
        if (!refused.isEmpty())
            notes << tr("%1: roof and walls could not be made anew. %2").arg(qs(building->label), refused);
    }
    if (taken.is_new && notes.isEmpty() && taken.open.empty()) return;
    CopiesDialog::Content content;
    content.headline = taken.is_new     ? tr("A job that is new here, from %1").arg(qs(from))
                       : !taken.changed ? tr("The file from %1 holds nothing that is new here").arg(qs(from))
                                        : tr("What came in from %1").arg(qs(from));
    content.notes = notes;
    if (!taken.is_new) content.taken = std::move(taken.taken);
    content.open = std::move(taken.open);
    show_copies(std::move(content));
}

void MainWindow::show_copies(CopiesDialog::Content content) {
    content.go_on = tr("Take the choices over");
    auto* dialog = new CopiesDialog(std::move(content), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { decide(dialog->decided()); });
    dialog->open();
}

void MainWindow::show_open_fields() {
    if (session_ == nullptr) return;
    const auto open = store::Travel(*store_).open_fields(session_->job().id);
    if (!open || open.value().empty()) return;
    CopiesDialog::Content content;
    content.headline = tr("Copies of this job differ");
    content.open = open.value();
    show_copies(std::move(content));
}

void MainWindow::decide(const std::vector<std::pair<std::string, std::size_t>>& sides) {
    if (session_ == nullptr || sides.empty() || !saver_->save_now()) return;
    const int stage = job_page_->stage();
    const auto decided =
        store::Travel(*store_).choose(session_->job().id, session_->job().revision, sides, at_this_moment());
    if (!decided) {
        job_page_->notice().add(Mark::stop, qs(text_of(decided.problems())));
        return;
    }
    show_session(decided.value());
    show_stage(stage);
}

void MainWindow::tell_open_fields() {
    const auto open = store::Travel(*store_).open_fields(session_->job().id);
    if (!open || open.value().empty()) return;
    next_step_ = [this] { show_open_fields(); };
    const auto places = open.value().size();
    notice().add_with_step(Mark::caution,
                           places == 1 ? tr("Copies of this job differ in one place.")
                                       : tr("Copies of this job differ in %1 places.").arg(places),
                           tr("Look at both"));
}

bool MainWindow::saved_elsewhere() const {
    const Result<Job> stored = store_->load(session_->job().id);
    return stored.ok() && stored.value().revision != session_->job().revision;
}

void MainWindow::show_history() {
    if (session_ == nullptr || !leave_job()) return;
    auto* dialog = new HistoryDialog(*store_, session_->job().id, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &HistoryDialog::back_asked, this, &MainWindow::bring_back);
    dialog->open();
}

void MainWindow::bring_back(Job earlier) {
    if (session_ == nullptr || earlier.id != session_->job().id) return;
    const Job& present = session_->job();
    earlier.record = present.record;
    earlier.number = present.number;
    earlier.revision = present.revision;
    earlier.created_at = present.created_at;
    earlier.changed_at = present.changed_at;
    earlier.base_sha256 = present.base_sha256;
    earlier.base_revision = present.base_revision;
    session_->edit(tr("Bring back an earlier revision"), [&earlier](Job& job) { job = earlier; });
    session_->end_merge();
}

void MainWindow::put_together() {
    if (session_ == nullptr) return;
    const Job mine = session_->job();
    auto merged = store::Travel(*store_).bring_together(mine);
    const Result<Job> base = store_->load_revision(mine.id, mine.revision);
    if (!merged || !base) {
        job_page_->notice().add(Mark::stop, qs(text_of(merged ? base.problems() : merged.problems())));
        return;
    }
    CopiesDialog::Content content;
    content.headline = tr("Somebody else saved this job in between");
    content.notes << tr("Both are put together. What only one side changed is taken over.");
    content.taken = merged.value().taken;
    content.open = merged.value().open;
    content.before = before_words(base.value(), content.open);
    content.decide_all = true;
    content.go_on = tr("Save both together");
    auto* dialog = new CopiesDialog(std::move(content), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this,
            [this, dialog, both = std::move(merged).value()] { save_together(both, dialog->decided()); });
    dialog->open();
}

void MainWindow::save_together(const merge::Merged& both,
                               const std::vector<std::pair<std::string, std::size_t>>& sides) {
    merge::Versions versions = both.versions;
    for (const auto& [path, side] : sides) {
        Result<merge::Versions> next =
            merge::choose(versions, path, side, {"this-window", "This window"}, at_this_moment());
        if (!next) {
            job_page_->notice().add(Mark::stop, qs(text_of(next.problems())));
            return;
        }
        versions = std::move(next).value();
    }
    Result<Job> made = merge::job_of(versions);
    if (!made) {
        job_page_->notice().add(Mark::stop, qs(text_of(made.problems())));
        return;
    }
    Job job = std::move(made).value();
    job.revision = both.job.revision;
    job.base_sha256 = both.job.base_sha256;
    job.base_revision = both.job.base_revision;
    const Result<Job> saved = store_->save(job, at_this_moment());
    if (!saved) {
        job_page_->notice().add(Mark::stop, qs(text_of(saved.problems())));
        return;
    }
    const int stage = job_page_->stage();
    job_page_->notice().clear();
    show_session(saved.value());
    show_stage(stage);
    for (const std::string& id : both.buildings_to_remake) {
        const Building* building = find_building(session_->job().site, id);
        if (building != nullptr) static_cast<void>(set_building(*session_, Building(*building)));
    }
}

}  // namespace wg::ui
