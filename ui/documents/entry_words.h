#pragma once
// What an entry of the record says, in words with units, for paper.

#include <QDate>
#include <QString>

#include "core/job/job.h"
#include "core/quantity/time.h"

namespace wg::ui::paper {

/// "25.00 bar gauge, plate 18.0 °C"; without a figure its note or subject. Never empty.
[[nodiscard]] QString entry_value(const Reading& entry);
/// "pressure hold, start", with what it was about: "serial number of heat pump".
[[nodiscard]] QString entry_kind(const Reading& entry);
/// As written, with the offset that stands in it: a record says the same wherever it is printed.
[[nodiscard]] QDate entry_day(const Reading& entry);
[[nodiscard]] QString entry_time(const Reading& entry);  ///< "14:05"; empty when the stamp cannot be read
[[nodiscard]] QString entry_when(const Reading& entry);  ///< "12 April 2027, 14:05"; as written when unreadable
/// Who, instrument and its calibration.
[[nodiscard]] QString entry_by(const Reading& entry);

/// Days of the core and of the window; an invalid one is 1 January 1970.
[[nodiscard]] CivilDate civil(const QDate& date);
[[nodiscard]] QDate qdate(const CivilDate& date);

}  // namespace wg::ui::paper
