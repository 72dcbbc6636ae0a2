// Which weather year the open job is planned with.

#include <QFileDialog>

#include "ui/common/edits.h"
#include "ui/common/notice_bar.h"
#include "ui/common/problem_dialog.h"
#include "ui/weather/weather_dialog.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"
#include "ui/window/weather_file.h"

namespace wg::ui {

void MainWindow::show_weather() {
    if (session_ == nullptr) return;
    const Job& job = session_->job();
    WeatherDialogInput input;
    input.site = job.site.location;
    input.climate_id = job.weather;
    input.file = weather_file_of(*store_, job.id);
    // While a plan is under way the year at hand may still be that of another climate; a file's is there from the
    // start.
    if (!input.file.isEmpty() || !session_->planning()) input.in_use = session_->reference().weather;
    input.reference = reference_;
    WeatherDialog dialog(std::move(input), &read_weather_file, this);
    if (dialog.exec() != QDialog::Accepted) return;
    if (!dialog.chosen_file().isEmpty()) {
        plan_with_weather(dialog.chosen_file());
    } else if (!dialog.chosen_climate().empty()) {
        plan_with_climate(dialog.chosen_climate());
    }
}

void MainWindow::plan_with_climate(const std::string& climate_id) {
    if (session_ == nullptr) return;
    if (!weather_file_of(*store_, session_->job().id).isEmpty()) {
        plan_with_weather(QString());
        if (!weather_file_of(*store_, session_->job().id).isEmpty()) return;  // could not be left; that has been said
    }
    set_weather(*session_, climate_id);
}

void MainWindow::choose_weather_file() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Plan with a weather file"), QString(),
                                     tr("Weather years: EPW, TMY3, PVGIS (*.epw *.EPW *.csv *.CSV);;All files (*)"));
    if (!path.isEmpty()) plan_with_weather(path);
}

void MainWindow::plan_with_weather(const QString& path) {
    if (session_ == nullptr) return;
    if (!path.isEmpty()) {
        const auto read = with_weather_file(*reference_, path);
        if (!read.ok()) {
            show_problems(this, tr("This weather file cannot be used"), tr("The job is planned as before."),
                          QString::fromStdString(text_of(read.problems())));
            return;
        }
    }
    if (!leave_job()) return;
    if (const auto kept = keep_weather_file(*store_, session_->job().id, path); !kept.ok()) {
        notice().add(Mark::caution, QString::fromStdString(text_of(kept.problems())));
        return;
    }
    const int stage = job_page_->stage();
    show_session(session_->job());
    job_page_->show_stage(stage);
}

std::shared_ptr<const plan::Reference> MainWindow::reference_for(const Job& job, QString& caution) {
    const QString path = weather_file_of(*store_, job.id);
    if (path.isEmpty()) return reference_;
    const auto own = with_weather_file(*reference_, path);
    if (own.ok()) return own.value();
    caution = tr("The weather file of this job cannot be read; it is planned with its own climate. %1")
                  .arg(QString::fromStdString(text_of(own.problems())));
    return reference_;
}

}  // namespace wg::ui
