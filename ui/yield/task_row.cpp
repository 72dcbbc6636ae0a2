#include "ui/yield/task_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QStyle>

#include "ui/common/format.h"
#include "ui/yield/background_task.h"

namespace wg::ui {

TaskRow::TaskRow(const QString& words, BackgroundTask* task, QWidget* parent)
    : QWidget(parent), task_(task), words_(words) {
    button_ = new QPushButton(words, this);
    progress_ = new QProgressBar(this);
    progress_->setRange(0, 100);
    progress_->setMaximumWidth(220);
    progress_->setTextVisible(false);  // dark figures on the bar's own colour cannot be read; the words have them
    progress_->hide();
    state_ = new QLabel(this);
    state_->setProperty("role", QStringLiteral("muted"));
    row_ = new QHBoxLayout(this);
    row_->setContentsMargins(16, 8, 16, 0);
    row_->setSpacing(8);
    row_->addWidget(button_);
    row_->addWidget(progress_);
    row_->addWidget(state_, 1);
    connect(button_, &QPushButton::clicked, this, [this] {
        if (task_->running()) {
            task_->stop();
        } else {
            Q_EMIT start_asked();
        }
    });
    connect(task, &BackgroundTask::progressed, this, [this](int percent_done) {
        if (!task_->running()) return;
        progress_->setValue(percent_done);
        state_->setText(state_words_ + QLatin1Char(' ') + percent(percent_done / 100.0));
    });
    connect(task, &BackgroundTask::finished, this, &TaskRow::follow);
}

void TaskRow::set_state(const QString& words, bool caution) {
    state_words_ = words;
    state_->setText(words);
    state_->setProperty("role", caution ? QStringLiteral("caution") : QStringLiteral("muted"));
    state_->style()->unpolish(state_);
    state_->style()->polish(state_);
}

QString TaskRow::state() const {
    return state_->text();
}

void TaskRow::set_enabled(bool can_start) {
    can_start_ = can_start;
    button_->setEnabled(can_start_ || task_->running());
}

void TaskRow::follow() {
    const bool runs = task_->running();
    button_->setText(runs ? tr("Stop") : words_);
    button_->setEnabled(runs || can_start_);
    if (!runs) progress_->setValue(0);
    progress_->setVisible(runs);
}

}  // namespace wg::ui
