#include "ui/fitting/instrument_book.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/fitting/reading_words.h"

namespace wg::ui {
namespace {

constexpr const char* instruments_key = "fitting.instruments";
constexpr const char* people_key = "fitting.people";
constexpr std::size_t most_kept = 40;

/// Readings that the same instrument serves go by one word: a gauge for suction serves discharge.
QString sort_of(ReadingKind kind) {
    const ReadingWords& w = words_of(kind);
    return w.instrument ? w.unit : QString();
}

}  // namespace

void InstrumentBook::set_source(SettingSource source) {
    source_ = std::move(source);
    if (!source_.read) return;
    instruments_.clear();
    people_.clear();
    const auto list = [this](const char* key) {
        return QJsonDocument::fromJson(source_.read(QString::fromLatin1(key)).toUtf8()).array();
    };
    for (const QJsonValue& value : list(instruments_key)) {
        const QJsonObject one = value.toObject();
        const QString name = one.value(QStringLiteral("name")).toString().trimmed();
        if (name.isEmpty() || instruments_.size() >= most_kept) continue;
        instruments_.push_back({name, one.value(QStringLiteral("calibrated_on")).toString(),
                                one.value(QStringLiteral("last_for")).toString()});
    }
    for (const QJsonValue& value : list(people_key))
        if (!value.toString().isEmpty() && people_.size() < static_cast<qsizetype>(most_kept))
            people_ << value.toString();
}

void InstrumentBook::take(const Instrument& instrument) {
    Instrument taken = instrument;
    const auto known = std::find_if(instruments_.begin(), instruments_.end(),
                                    [&](const Instrument& one) { return one.name == instrument.name; });
    if (known != instruments_.end()) {
        if (taken.calibrated_on.isEmpty()) taken.calibrated_on = known->calibrated_on;
        if (taken.last_for.isEmpty()) taken.last_for = known->last_for;
        instruments_.erase(known);
    }
    instruments_.insert(instruments_.begin(), taken);
    if (instruments_.size() > most_kept) instruments_.pop_back();
}

void InstrumentBook::learn(const std::vector<Reading>& record) {
    for (const Reading& reading : record) {
        const QString name = qs(reading.instrument);
        const bool known = std::any_of(instruments_.begin(), instruments_.end(),
                                       [&](const Instrument& one) { return one.name == name; });
        if (!name.isEmpty() && !known) take({name, qs(reading.calibrated_on), sort_of(reading.kind)});
        const QString who = qs(reading.taken_by);
        // A client signs; that does not make a fitter of him.
        if (!who.isEmpty() && reading.kind != ReadingKind::signature && !people_.contains(who)) people_ << who;
    }
}

void InstrumentBook::note(const Reading& reading) {
    if (!reading.instrument.empty()) take({qs(reading.instrument), qs(reading.calibrated_on), sort_of(reading.kind)});
    const QString who = qs(reading.taken_by);
    if (!who.isEmpty() && reading.kind != ReadingKind::signature) {
        people_.removeAll(who);
        people_.prepend(who);
        while (people_.size() > static_cast<qsizetype>(most_kept))
            people_.removeLast();
    }
    keep();
}

void InstrumentBook::keep() const {
    if (!source_.write) return;
    QJsonArray instruments;
    for (const Instrument& one : instruments_)
        instruments.append(QJsonObject{{QStringLiteral("name"), one.name},
                                       {QStringLiteral("calibrated_on"), one.calibrated_on},
                                       {QStringLiteral("last_for"), one.last_for}});
    const auto write = [this](const char* key, const QJsonArray& array) {
        source_.write(QString::fromLatin1(key), QString::fromUtf8(QJsonDocument(array).toJson(QJsonDocument::Compact)));
    };
    write(instruments_key, instruments);
    write(people_key, QJsonArray::fromStringList(people_));
}

Instrument InstrumentBook::last_for(ReadingKind kind) const {
    const QString sort = sort_of(kind);
    if (!sort.isEmpty())
        for (const Instrument& one : instruments_)
            if (one.last_for == sort) return one;
    return {};
}

Instrument InstrumentBook::named(const QString& name) const {
    for (const Instrument& one : instruments_)
        if (one.name == name) return one;
    return {name, {}, {}};
}

QString calibration_words(const QString& iso_date, const QDate& today) {
    const QDate date = QDate::fromString(iso_date, Qt::ISODate);
    if (!date.isValid()) return {};
    const auto words = [](const char* text) { return QCoreApplication::translate("InstrumentBook", text); };
    int months = (today.year() - date.year()) * 12 + today.month() - date.month();
    if (today.day() < date.day()) --months;
    if (months <= 0) return words("calibrated %1").arg(iso_date);
    if (months == 1) return words("calibrated %1, 1 month ago").arg(iso_date);
    return words("calibrated %1, %2 months ago").arg(iso_date).arg(months);
}

}  // namespace wg::ui
