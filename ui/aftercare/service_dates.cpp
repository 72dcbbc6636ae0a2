#include "ui/aftercare/service_dates.h"

#include <QDateTime>
#include <algorithm>

#include "core/commissioning/commissioning.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QDate day_of(const Reading& reading) {
    const QDateTime at = QDateTime::fromString(qs(reading.taken_at), Qt::ISODate);
    return at.isValid() ? at.toLocalTime().date() : QDate();
}

bool of_running_system(ReadingKind kind) {
    switch (kind) {
        case ReadingKind::charge_added:
        case ReadingKind::suction_temperature:
        case ReadingKind::discharge_temperature:
        case ReadingKind::supply_current:
        case ReadingKind::water_temperature: return true;
        default: return false;
    }
}

/// "Service done [anode]: ..." with the rule's id, which no translation changes.
QString mark_of_service(const std::string& id) {
    return QStringLiteral("Service done [%1]").arg(qs(id));
}

}  // namespace

QDate started_on(const std::vector<Reading>& record) {
    // The first such reading: later ones are taken at services.
    QDate first;
    for (const Reading& reading : commissioning::standing(record)) {
        const QDate day = day_of(reading);
        if (of_running_system(reading.kind) && day.isValid() && (!first.isValid() || day < first)) first = day;
    }
    return first;
}

Reading service_done(const plan::ServiceDue& service, const QString& taken_at, const QString& by, const QString& note) {
    Reading reading;
    reading.kind = ReadingKind::remark;
    reading.taken_at = taken_at.toStdString();
    reading.taken_by = by.toStdString();
    QString text = mark_of_service(service.id) + QStringLiteral(": ") + qs(service.text);
    if (!note.isEmpty()) text += QStringLiteral(". ") + note;
    reading.note = text.toStdString();
    return reading;
}

std::vector<ServiceDate> service_dates(const std::vector<plan::ServiceDue>& services,
                                       const std::vector<Reading>& record, const QDate& today) {
    const QDate start = started_on(record);
    const std::vector<Reading> standing = commissioning::standing(record);
    std::vector<ServiceDate> dates;
    for (const plan::ServiceDue& service : services) {
        ServiceDate date;
        date.service = service;
        date.counted_from = start;
        for (const Reading& reading : standing) {
            if (reading.kind != ReadingKind::remark || !qs(reading.note).startsWith(mark_of_service(service.id)))
                continue;
            const QDate day = day_of(reading);
            if (day.isValid() && (!date.counted_from.isValid() || day >= date.counted_from)) {
                date.counted_from = day;
                date.was_done = true;
            }
        }
        if (date.counted_from.isValid() && service.every_months > 0) {
            date.due = date.counted_from.addMonths(service.every_months);
            date.overdue = date.due < today;
        }
        dates.push_back(std::move(date));
    }
    std::stable_sort(dates.begin(), dates.end(), [](const ServiceDate& a, const ServiceDate& b) {
        if (a.due.isValid() != b.due.isValid()) return a.due.isValid();
        return a.due < b.due;
    });
    return dates;
}

}  // namespace wg::ui
