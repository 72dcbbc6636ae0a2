// Files that were let fall on the window.

#include <QDateTime>
#include <QFileInfo>

#include "core/exchange/parcel.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/problem_dialog.h"
#include "ui/common/whole_file.h"
#include "ui/desk/desk_page.h"
#include "ui/equipment/equipment_page.h"
#include "ui/prices/price_page.h"
#include "ui/rules/rule_page.h"
#include "ui/window/file_kind.h"
#include "ui/window/main_window.h"
#include "ui/window/weather_file.h"

namespace wg::ui {
namespace {

Instant drop_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

void MainWindow::take_files(const QStringList& paths) {
    QStringList told;
    for (const QString& path : paths)
        told << take_file(path);
    // One file has told what came of it where it went; of several only the last would be seen.
    if (paths.size() > 1) notice().add(Mark::note, told.join(QLatin1Char('\n')));
}

bool MainWindow::desk_on_screen() {
    if (session_ != nullptr) back_to_desk();
    return session_ == nullptr;
}

QString MainWindow::take_file(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    const QString not_taken = tr("%1: not taken").arg(name);
    const Result<std::string> bytes = read_whole(path, exchange::max_file_bytes);
    if (!bytes) {
        show_problems(this, tr("This file cannot be opened"), tr("Nothing was changed."),
                      qs(text_of(bytes.problems())));
        return not_taken;
    }
    const FileKind kind = kind_of_file(bytes.value());
    const auto asked = [&](bool taken, const QString& words) { return taken ? words.arg(name) : not_taken; };
    switch (kind) {
        case FileKind::exchange:
        case FileKind::job: return asked(open_job_file(path), tr("%1: job opened"));
        case FileKind::weather: return take_weather(path);
        case FileKind::prices: {
            if (!desk_on_screen()) return not_taken;
            desk_->show_prices_tab();
            return asked(desk_->prices()->import_file(path), tr("%1: price list read"));
        }
        case FileKind::rules: {
            if (!desk_on_screen()) return not_taken;
            desk_->show_rules_tab();
            return asked(desk_->rules()->import_file(path), tr("%1: rule set read"));
        }
        case FileKind::equipment: {
            if (!desk_on_screen()) return not_taken;
            desk_->show_equipment_tab();
            const Result<QString> done = desk_->equipment()->import_text(QByteArray::fromStdString(bytes.value()),
                                                                         name.toStdString(), drop_now());
            if (!done) {
                show_problems(this, tr("This file was not taken"), tr("What is wrong with it, item by item."),
                              qs(text_of(done.problems())));
                return not_taken;
            }
            notice().clear();
            notice().add(Mark::note, tr("Equipment read: %1").arg(done.value()));
            return tr("%1: equipment read, %2").arg(name, done.value());
        }
        case FileKind::unknown: break;
    }
    show_problems(this, tr("This file is none that can be taken in"),
                  tr("Let fall here: a job or job file, a weather year (EPW, TMY3, PVGIS or plain CSV), a price list, "
                     "equipment, or a rule set. Pictures belong to Visit, Photographs; supplier's tables to Prices."),
                  tr("%1 holds none of these. Nothing was changed.").arg(name));
    return not_taken;
}

QString MainWindow::take_weather(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    if (session_ != nullptr)
        return plan_with_file(path) ? tr("%1: the job is planned with this weather year").arg(name)
                                    : tr("%1: not taken").arg(name);
    const auto read = read_weather_file(path);
    const Result<store::WeatherYearRow> kept =
        read.ok() ? store_->add_weather_year(read.value()->year, std::string(), drop_now())
                  : Result<store::WeatherYearRow>(read.problems());
    if (!kept.ok()) {
        show_problems(this, tr("This weather file cannot be used"), tr("Nothing was changed."),
                      qs(text_of(kept.problems())));
        return tr("%1: not taken").arg(name);
    }
    notice().clear();
    notice().add(Mark::note, tr("The weather year '%1' is in the library. A job takes it under File, Weather year.")
                                 .arg(qs(kept.value().label)));
    return tr("%1: weather year kept in the library").arg(name);
}

}  // namespace wg::ui
