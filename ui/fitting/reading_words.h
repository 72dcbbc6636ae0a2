#pragma once
// What each kind of reading is called, its units, how it is entered, and the range in which an entry can be meant.

#include <QDate>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/site_units.h"

namespace wg::ui {

/// How an entry of a kind is made.
enum class EntryManner { figure, yes_no, words, signature, photograph };

struct ReadingWords {
    ReadingKind kind = ReadingKind::remark;
    EntryManner manner = EntryManner::words;
    QString value_name;  ///< empty: no figure
    QString unit;
    int decimals = 1;
    double least = 0.0;
    double most = 0.0;
    SiteQuantity quantity = SiteQuantity::none;  ///< of the figure
    QString second_name{};                       ///< empty: no second figure
    QString second_unit{};
    double second_least = -60.0;
    double second_most = 120.0;
    QString yes{}, no{};      ///< words of 1 and 0
    QString subject_name{};   ///< empty: the kind has no subject
    QStringList subjects{};   ///< to choose from; others can be typed
    bool indoors = false;     ///< asks for the gas indoors
    bool plate = false;       ///< asks how the plate lay
    bool instrument = false;  ///< read off an instrument that is calibrated
};

[[nodiscard]] const ReadingWords& words_of(ReadingKind kind);
/// "25.00 bar at 18.0 °C", "yes", or the note.
[[nodiscard]] QString value_words(const Reading& reading);
/// What was entered and when: "25.00 bar, 09:40"; with the day unless it is today.
[[nodiscard]] QString entered_words(const Reading& reading, const QDate& today);
/// Finite and within the range a reading of this kind can have.
[[nodiscard]] bool plausible(ReadingKind kind, double value);

}  // namespace wg::ui
