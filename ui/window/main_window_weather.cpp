// Which weather year the open job is planned with.

#include <QDateTime>
#include <QFileDialog>

#include "ui/common/edits.h"
#include "ui/common/format.h"
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
    // While a plan is under way the year at hand may still be that of another climate.
    if (!session_->planning()) input.in_use = session_->reference().weather;
    input.reference = reference_;
    input.kept = kept_years(*store_);
    input.read_kept = [this](const std::string& id) { return kept_year(*store_, id); };
    WeatherDialog dialog(std::move(input), &read_weather_file, this);
    if (dialog.exec() != QDialog::Accepted) return;
    if (!dialog.chosen_file().isEmpty()) {
        plan_with_file(dialog.chosen_file());
    } else if (!dialog.chosen_climate().empty()) {
        plan_with_weather(dialog.chosen_climate());
    }
}

void MainWindow::plan_with_weather(const std::string& weather_id) {
    if (session_ == nullptr) return;
    if (is_kept_year(weather_id)) {
        const auto year = kept_year(*store_, weather_id);
        if (!year.ok()) {
            show_problems(this, tr("This weather year cannot be used"), tr("The job is planned as before."),
                          qs(text_of(year.problems())));
            return;
        }
        session_->offer_weather(weather_id, year.value());
    }
    set_weather(*session_, weather_id);
}

void MainWindow::choose_weather_file() {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Plan with a weather file"), QString(),
        tr("Weather years: EPW, TMY3, PVGIS, plain CSV (*.epw *.EPW *.csv *.CSV);;All files (*)"));
    if (!path.isEmpty()) plan_with_file(path);
}

bool MainWindow::plan_with_file(const QString& path) {
    if (session_ == nullptr) return false;
    const auto refuse = [this](const std::vector<Problem>& problems) {
        show_problems(this, tr("This weather file cannot be used"), tr("The job is planned as before."),
                      qs(text_of(problems)));
        return false;
    };
    const auto read = read_weather_file(path);
    if (!read.ok()) return refuse(read.problems());
    // The library keeps the year itself: the file may go, and other jobs near by can be planned with it, too.
    const Result<store::WeatherYearRow> kept =
        store_->add_weather_year(read.value()->year, std::string(), {QDateTime::currentSecsSinceEpoch()});
    if (!kept.ok()) return refuse(kept.problems());
    session_->offer_weather(kept.value().id, read.value());
    set_weather(*session_, kept.value().id);
    return true;
}

QString MainWindow::take_firms_own() {
    QStringList wrong{prices_.refresh()};
    rules_.lay_over(prices_.reference());
    wrong << rules_.refresh();
    equipment_.lay_over(rules_.reference());
    wrong << equipment_.refresh();
    wrong.removeAll(QString());
    reference_ = equipment_.reference();
    desk_->set_reference(rules_.with_withdrawn(equipment_.reference_with_withdrawn()));
    return wrong.join(QLatin1Char('\n'));
}

std::shared_ptr<const plan::Reference> MainWindow::reference_for(const Job& job, QString& caution) {
    // Another machine may have changed what the firm has since.
    static_cast<void>(take_firms_own());
    QStringList withdrawn;
    QStringList cautions;
    std::shared_ptr<const plan::Reference> reference = equipment_.reference_for(job, withdrawn);
    if (auto with_rules = rules_.with_named(*reference, job)) {
        reference = std::move(with_rules);
        cautions << tr("The rule set of this job is withdrawn: %1. The job goes on with it.").arg(qs(job.rule_set));
    }
    if (const QString unknown = unknown_equipment_words(*reference, job); !unknown.isEmpty()) cautions << unknown;
    if (!withdrawn.isEmpty())
        cautions << tr("Withdrawn from the firm's equipment, and still in this job: %1.")
                        .arg(withdrawn.join(QStringLiteral(", ")));
    caution = cautions.join(QLatin1Char('\n'));
    if (!is_kept_year(job.weather)) return reference;
    const auto year = kept_year(*store_, job.weather);
    if (!year.ok()) {
        cautions
            << tr("The weather year of this job is not in the library of this desk. Read its file, or choose another "
                  "year under File, Weather year. %1")
                   .arg(qs(text_of(year.problems())));
        caution = cautions.join(QLatin1Char('\n'));
        return reference;
    }
    auto own = std::make_shared<plan::Reference>(*reference);
    own->weather = year.value();
    return own;
}

}  // namespace wg::ui
