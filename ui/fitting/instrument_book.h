#pragma once
// The firm's instruments with their calibration, and its people: chosen on site instead of typed.

#include <QDate>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

/// Where small settings of the firm are kept; the stage knows no store.
struct SettingSource {
    std::function<QString(const QString& key)> read;
    std::function<void(const QString& key, const QString& value)> write;
};

struct Instrument {
    QString name;           ///< make and number
    QString calibrated_on;  ///< ISO 8601 date; empty: not told
    QString last_for;       ///< word of the kind it was last used for
    friend bool operator==(const Instrument&, const Instrument&) = default;
};

class InstrumentBook {
   public:
    void set_source(SettingSource source);  ///< reads what is kept there
    /// Takes in what entries name, so that a firm's second machine knows them from the job.
    void learn(const std::vector<Reading>& record);
    /// The entry's instrument and person, newest first from now on; kept.
    void note(const Reading& reading);

    [[nodiscard]] const std::vector<Instrument>& instruments() const { return instruments_; }
    [[nodiscard]] const QStringList& people() const { return people_; }
    /// The instrument last used for readings of that sort; nothing known: an empty one.
    [[nodiscard]] Instrument last_for(ReadingKind kind) const;
    [[nodiscard]] Instrument named(const QString& name) const;

   private:
    void take(const Instrument& instrument);
    void keep() const;

    SettingSource source_;
    std::vector<Instrument> instruments_;  ///< newest first
    QStringList people_;                   ///< newest first
};

/// "calibrated 2026-03-01, 8 months ago"; empty: no date.
[[nodiscard]] QString calibration_words(const QString& iso_date, const QDate& today);

}  // namespace wg::ui
