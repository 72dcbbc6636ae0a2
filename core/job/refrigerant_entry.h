#pragma once
// One move of the firm's refrigerant: what came into its bottles, what went out, and what a count found. Append-only,
// as the record of a job: a correction is a new entry that names the old one.

#include <string>

#include "core/job/words.h"

namespace wg {

enum class RefrigerantMove {
    received,   ///< bought or handed over to the firm: into its stock
    used,       ///< charged into a system: out of stock
    recovered,  ///< taken out of a system into the firm's bottles: into stock
    returned,   ///< given back, for reclaim or destruction: out of stock
    leaked,     ///< lost from a system, as far as known: no stock moves
    counted,    ///< found on the scale; bottles counted on one day add up
};

struct RefrigerantEntry {
    std::string id;           ///< UUID; of a job's reading: the reading's own
    std::string on;           ///< ISO 8601 date
    std::string refrigerant;  ///< "R134a"
    RefrigerantMove move = RefrigerantMove::received;
    double kg = 0.0;  ///< 0..100000
    std::string bottle;
    std::string note;
    std::string by;
    std::string job_id;       ///< empty: not from a job
    std::string reading_id;   ///< of the job's record; empty: entered in the register
    std::string corrects_id;  ///< entry that this one stands for; empty: an entry of its own
    friend bool operator==(const RefrigerantEntry&, const RefrigerantEntry&) = default;
};

template <>
const std::vector<Word<RefrigerantMove>>& words<RefrigerantMove>();

}  // namespace wg
