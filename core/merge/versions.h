#pragma once
// A version for every field of a job: which edit, on which machine, gave it the value that it has. With them two copies
// are put together field by field (join.h). Everything the job says stands in its versions too; the job follows from
// them.
//
// Edits are told by a dot: the machine and a number that is above every number the machine had seen. A field holds the
// dots that no other edit has replaced: one, or several when machines changed it without knowing of one another. What
// is removed keeps its fields, so that it can come back whole (P. S. Almeida, A. Shoker, C. Baquero, "Delta state
// replicated data types", J. Parallel Distrib. Comput. 111, 2018; L. Lamport, "Time, clocks, and the
// ordering of events in a distributed system", Comm. ACM 21, 1978). docs/handbook/travel.md tells it in words.

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace wg::merge {

/// A machine that edits jobs. Its id must never be used by two machines, nor again after older data were put back on
/// it: a data folder that was copied or restored needs a new one.
struct Seat {
    std::string id;    ///< 1..64 of a-z, 0-9 and "-": a UUID
    std::string name;  ///< for people: "Office", "Tablet of J. Okafor"; at most 200 bytes
    friend bool operator==(const Seat&, const Seat&) = default;
};

/// A machine as these versions know it, with the number of its newest edit among them.
struct SeenSeat {
    Seat seat;
    std::uint64_t seen = 0;
    friend bool operator==(const SeenSeat&, const SeenSeat&) = default;
};

struct Value {
    std::uint32_t seat = 0;  ///< place among `Versions::seats`
    std::uint64_t number = 0;
    Instant at;                       ///< by the machine's clock; shown, never used to decide
    std::optional<std::string> json;  ///< compact; none: removed, or left out
    friend bool operator==(const Value&, const Value&) = default;
};

struct Versions {
    std::string job_id;
    std::vector<SeenSeat> seats;                                    ///< sorted by id
    std::map<std::string, std::vector<Value>, std::less<>> fields;  ///< by path (path.h); values sorted by seat, number
    friend bool operator==(const Versions&, const Versions&) = default;
};

/// The first versions of a job that has none. Two machines that begin with the same content get the same: their edits
/// from then on merge. `job` is valid.
[[nodiscard]] Versions begin(const Job& job);

/// The versions after the job became `after` on `seat`; the same as before when no field changed. Refused: a job that
/// is not valid or another one, a malformed seat, and an entry of the record that was altered, removed or moved.
[[nodiscard]] Result<Versions> edited(const Versions& versions, const Job& after, const Seat& seat, Instant at);

/// The versions of a copy that was changed by a program that keeps none, or by hand: `versions` as they were when the
/// copy was made, `copy` as it came back. The same copy gives the same versions wherever it is read. Entries of its
/// record that are missing or altered do not count as edits: they stay as they were and are open.
[[nodiscard]] Result<Versions> of_copy(const Versions& versions, const Job& copy, const std::string& name);

/// The job that the versions describe, with what repairs make of it (open.h). Revision, times of change and base are
/// not among them and stay empty.
[[nodiscard]] Result<Job> job_of(const Versions& versions);

}  // namespace wg::merge
