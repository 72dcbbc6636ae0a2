// The log of a gauge into the record.

#include <QFileInfo>
#include <QStackedWidget>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/whole_file.h"
#include "ui/fitting/log_dialog.h"
#include "ui/fitting/work_page.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_log_bytes = 8 * mebibyte;  // as core/commissioning/gauge_log.h reads

}  // namespace

bool WorkPage::take_in_log(const QString& path) {
    if (session_ == nullptr || path.isEmpty()) return false;
    const Result<std::string> text = read_whole(path, most_log_bytes);
    if (!text) {
        Q_EMIT failed(qs(text.problems().front().text()));
        return false;
    }
    const QString name = QFileInfo(path).fileName();
    const Result<commissioning::GaugeLog> log = commissioning::gauge_log_from_csv(text.value(), name.toStdString());
    if (!log) {
        QStringList lines;
        for (const Problem& problem : log.problems())
            lines << qs(problem.text());
        Q_EMIT failed(lines.join(QLatin1Char('\n')));
        return false;
    }
    LogDialog dialog(log.value(), name, form_->book(), occasion(), window());
    if (dialog.exec() != QDialog::Accepted || session_ == nullptr) return false;
    const std::vector<Reading> entries = dialog.entries();
    for (const Reading& reading : entries)
        append_reading(*session_, reading);
    if (!entries.empty()) form_->book().note(entries.front());
    refresh();
    stack_->setCurrentIndex(0);
    Q_EMIT status_text(tr("%1 entries taken in from %2").arg(entries.size()).arg(name));
    return !entries.empty();
}

}  // namespace wg::ui
