// Jobs that are begun, opened from the desk or from a file, and written to one.

#include <QDateTime>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

#include "core/job/codec.h"
#include "core/store/customers.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/problem_dialog.h"
#include "ui/customers/customer_of_job.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/new_job.h"
#include "ui/window/job_files.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {
namespace {

Instant moment_of_job() {
    return {QDateTime::currentSecsSinceEpoch()};
}

QString file_filter() {
    return MainWindow::tr("Job files (*.json);;All files (*)");
}

QString files_to_open() {
    return MainWindow::tr("Jobs (*.warmgable *.json);;All files (*)");
}

}  // namespace

bool MainWindow::open_job(const std::string& job_id) {
    if (!leave_job()) return false;
    Result<Job> job = store_->load(job_id);
    if (!job.ok()) {
        back_to_desk();
        desk_->notice().add(Mark::stop, qs(text_of(job.problems())));
        return false;
    }
    show_session(std::move(job).value());
    return true;
}

bool MainWindow::open_job_text(const std::string& text, const std::string& file_name) {
    Result<Job> read = job_from_json(text, file_name);
    if (!read.ok()) {
        show_problems(
            this, tr("This job file cannot be opened"),
            tr("%1 holds something that this program does not accept. Nothing was changed.").arg(qs(file_name)),
            qs(text_of(read.problems())));
        return false;
    }
    if (!leave_job()) return false;
    Job job = std::move(read).value();
    if (!settle_incoming(job)) return false;
    show_session(std::move(job));
    return true;
}

bool MainWindow::settle_incoming(Job& from_file) {
    // A job that was removed from the desk comes back with its file; for any other this does nothing.
    if (!store_->load(from_file.id).ok()) static_cast<void>(store_->restore(from_file.id));
    const Incoming how = incoming(from_file, *store_);
    if (how == Incoming::unknown) {
        from_file.revision = 0;
        return put_on_desk(from_file);
    }
    Result<Job> known = store_->load(from_file.id);
    if (!known.ok()) return false;
    std::optional<bool> take_file = how == Incoming::file_newer;
    if (how == Incoming::differs) take_file = ask_which(known.value(), from_file);
    if (!take_file) return false;
    if (*take_file) {
        from_file.revision = known.value().revision;
        return put_on_desk(from_file);
    }
    from_file = std::move(known).value();
    return true;
}

std::optional<bool> MainWindow::ask_which(const Job& on_desk, const Job& in_file) {
    QMessageBox box(
        QMessageBox::Question, tr("The desk knows this job"),
        tr("Job %1 is on the desk already, and both the desk and the file have changed.").arg(qs(in_file.number)),
        QMessageBox::NoButton, this);
    box.setInformativeText(tr("On the desk: revision %1, changed %2.\nIn the file: changed %3.\n"
                              "If you take the file, the desk's version stays in the job's history.")
                               .arg(on_desk.revision)
                               .arg(day(on_desk.changed_at), day(in_file.changed_at)));
    const QAbstractButton* desk_button = box.addButton(tr("Open the desk's"), QMessageBox::AcceptRole);
    const QAbstractButton* file_button = box.addButton(tr("Take the file's"), QMessageBox::DestructiveRole);
    box.addButton(tr("Cancel"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == desk_button) return false;
    if (box.clickedButton() == file_button) return true;
    return std::nullopt;
}

bool MainWindow::put_on_desk(Job& job) {
    Result<Job> stored = store_->save(job, moment_of_job());
    if (!stored.ok()) {
        show_problems(this, tr("The job could not be put on the desk"),
                      tr("The store refused it. Nothing was changed."), qs(text_of(stored.problems())));
        return false;
    }
    job = std::move(stored).value();
    return true;
}

void MainWindow::start_job() {
    if (!leave_job()) return;
    const Result<std::string> number = store_->next_job_number(QDate::currentDate().year());
    const Result<Job> stored =
        number.ok() ? store_->save(new_job(*reference_, number.value(), moment_of_job(), rules_.for_new_jobs()),
                                   moment_of_job())
                    : Result<Job>(number.problems());
    if (!stored.ok()) {
        notice().add(Mark::stop, qs(text_of(stored.problems())));
        return;
    }
    show_session(stored.value());
}

void MainWindow::start_job_for(const std::string& customer_id) {
    if (!leave_job()) return;
    store::CustomerBook book(*store_);
    const auto customer = book.load(customer_id);
    const Result<std::string> number = store_->next_job_number(QDate::currentDate().year());
    Result<Job> stored =
        !number.ok()     ? Result<Job>(number.problems())
        : !customer.ok() ? Result<Job>(customer.problems())
                         : Result<Job>(new_job(*reference_, number.value(), moment_of_job(), rules_.for_new_jobs()));
    if (stored.ok()) {
        stored.value().client = store::CustomerBook::client_of(customer.value());
        stored = store_->save(stored.value(), moment_of_job());
    }
    const Result<bool> linked =
        stored.ok() ? book.link(stored.value().id, customer_id) : Result<bool>(stored.problems());
    if (!linked.ok()) {
        notice().add(Mark::stop, qs(text_of(linked.problems())));
        return;
    }
    show_session(stored.value());
}

void MainWindow::show_customer_of_job() {
    if (session_ == nullptr || !leave_job()) return;
    const Result<std::string> customer = customer_for(*store_, session_->job().id, moment_of_job(), this);
    if (!customer) {
        notice().add(Mark::stop, qs(text_of(customer.problems())));
        return;
    }
    if (customer.value().empty()) return;
    back_to_desk();
    if (session_ == nullptr) desk_->show_customer(customer.value());
}

void MainWindow::open_file() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a job file"), QString(), files_to_open());
    if (path.isEmpty()) return;
    open_job_file(path);
}

void MainWindow::save_file_as() {
    if (session_ == nullptr) return;
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the job as a file"), job_file_name(session_->job()), file_filter());
    if (path.isEmpty()) return;
    const Result<bool> written = write_job_file(path, session_->job());
    if (written.ok()) {
        job_page_->set_saved_text(tr("saved to %1").arg(QFileInfo(path).fileName()));
    } else {
        job_page_->notice().add(Mark::stop, qs(text_of(written.problems())));
    }
}

}  // namespace wg::ui
