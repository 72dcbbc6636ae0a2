#pragma once
// What each kind of reading is called, its units, and the range in which an entry can be meant.

#include <QString>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

struct ReadingWords {
    ReadingKind kind = ReadingKind::remark;
    QString value_name;  ///< empty: no figure, only a note
    QString unit;
    int decimals = 1;
    double least = 0.0;
    double most = 0.0;
    QString second_name;  ///< empty: no second figure
    QString second_unit;
};

[[nodiscard]] const ReadingWords& words_of(ReadingKind kind);
/// "25.0 bar at 18.0 °C", or the note of a remark.
[[nodiscard]] QString value_words(const Reading& reading);
/// Finite and within the range a reading of this kind can have.
[[nodiscard]] bool plausible(ReadingKind kind, double value);

}  // namespace wg::ui
