#include "ui/window/daily_backup.h"

#include <QDate>

#include "core/store/connection.h"
#include "core/store/keeping.h"
#include "ui/common/format.h"

namespace wg::ui {

DailyBackup::DailyBackup(std::string place, QObject* parent) : QObject(parent), place_(std::move(place)) {}

DailyBackup::~DailyBackup() {
    if (thread_ != nullptr) thread_->wait();
}

void DailyBackup::begin() {
    if (thread_ != nullptr || place_ == ":memory:" || store::is_address(place_)) return;
    const QDate today = QDate::currentDate();
    const CivilDate day{today.year(), today.month(), today.day()};
    thread_ = QThread::create([this, day] {
        const Result<std::string> made = store::keep_daily_backup(place_, day);
        if (!made) Q_EMIT failed(qs(text_of(made.problems())));
    });
    thread_->setParent(this);
    thread_->setObjectName(QStringLiteral("backup"));
    // The hand at the window comes first.
    thread_->start(QThread::LowPriority);
}

}  // namespace wg::ui
