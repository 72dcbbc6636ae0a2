#pragma once
// What a single field of a job may hold. Shared by the reader of job files and by `validate`, so that both judge alike.

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "core/quantity/geometry.h"
#include "core/quantity/result.h"

namespace wg::job_fields {

inline constexpr std::size_t max_problems = 50;
inline constexpr std::size_t max_text_bytes = 64 * 1024;
inline constexpr std::size_t max_list = 10000;
inline constexpr std::size_t max_corners = 1000;
inline constexpr double max_coordinate_m = 10000.0;

/// Where in the job: a chain of keys and indices, written out only when there is something to say.
struct Path {
    const Path* parent = nullptr;
    const char* key = nullptr;               ///< member name; null for an element of a list
    std::size_t index = 0;                   ///< of the element
    const std::string* label = nullptr;      ///< the element's own name, for people
    [[nodiscard]] std::string text() const;  ///< `site.surfaces[2] "South roof".outline`
};

/// Collects problems up to max_problems.
class ProblemList {
   public:
    explicit ProblemList(std::string file_name) : file_name_(std::move(file_name)) {}
    void add(const Path& path, std::string what, std::string remedy);
    [[nodiscard]] bool full() const noexcept { return problems_.size() >= max_problems; }
    [[nodiscard]] std::vector<Problem>& problems() noexcept { return problems_; }

   private:
    std::string file_name_;
    std::vector<Problem> problems_;
};

/// Closed range, in the unit of the field's name.
struct Range {
    double low = -max_coordinate_m;
    double high = max_coordinate_m;
};

enum class Presence { may_be_empty, needed };

inline constexpr Presence needed = Presence::needed;
inline constexpr Presence may_be_empty = Presence::may_be_empty;
inline constexpr Range bearing{0.0, 360.0};
inline constexpr Range turn{-360.0, 360.0};
inline constexpr Range size{0.0, max_coordinate_m};
inline constexpr Range share{0.0, 1.0};
/// Of a length that has to be there: a millimetre at least.
inline constexpr Range extent{0.001, max_coordinate_m};

void check_number(ProblemList& problems, const Path& path, double value, Range range);
void check_integer(ProblemList& problems, const Path& path, std::int64_t value, std::int64_t low, std::int64_t high);
void check_text(ProblemList& problems, const Path& path, const std::string& value, std::size_t max_bytes);
void check_uuid(ProblemList& problems, const Path& path, const std::string& value, Presence presence);
void check_sha256(ProblemList& problems, const Path& path, const std::string& value, Presence presence);
void check_instant(ProblemList& problems, const Path& path, const std::string& value, Presence presence);
void check_date(ProblemList& problems, const Path& path, const std::string& value);
void check_coordinates(ProblemList& problems, const Path& path, const double* values, std::size_t count);
void check_outline(ProblemList& problems, const Path& path, const std::vector<Point2>& outline, Presence presence);
void check_length(ProblemList& problems, const Path& path, std::size_t length, std::size_t max_length);

}  // namespace wg::job_fields
