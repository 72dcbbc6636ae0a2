#include "core/plan/study_sample.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/weather/climate_table.h"
#include "core/weather/random.h"

namespace wg::plan::detail {

std::vector<double> latin_column(std::uint64_t seed, const std::string& key, std::size_t members) {
    constexpr std::uint64_t odd = 0x9E3779B97F4A7C15ULL;  // keeps neighbouring seeds apart
    weather::Random random((seed * odd) ^ weather::seed_of_id(key));
    std::vector<std::size_t> cell(members);
    std::iota(cell.begin(), cell.end(), std::size_t{0});
    for (std::size_t i = members; i > 1; --i) {
        const auto other = static_cast<std::size_t>(random.uniform() * static_cast<double>(i));
        std::swap(cell[i - 1], cell[std::min(other, i - 1)]);
    }
    std::vector<double> out(members);
    for (std::size_t i = 0; i < members; ++i)
        out[i] = (static_cast<double>(cell[i]) + random.uniform()) / static_cast<double>(members);
    return out;
}

std::vector<double> ranks(const std::vector<double>& values) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::vector<double> out(values.size());
    for (std::size_t i = 0; i < order.size();) {
        std::size_t j = i;
        while (j < order.size() && values[order[j]] == values[order[i]])
            ++j;
        for (std::size_t k = i; k < j; ++k)
            out[order[k]] = 0.5 * static_cast<double>(i + 1 + j);
        i = j;
    }
    return out;
}

double rank_correlation(const std::vector<double>& a, const std::vector<double>& b) {
    const double mean = 0.5 * (static_cast<double>(a.size()) + 1.0);
    double aa = 0.0, bb = 0.0, ab = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        aa += (a[i] - mean) * (a[i] - mean);
        bb += (b[i] - mean) * (b[i] - mean);
        ab += (a[i] - mean) * (b[i] - mean);
    }
    return aa > 0.0 && bb > 0.0 ? ab / std::sqrt(aa * bb) : 0.0;
}

double squared_correlation_error(double r, std::size_t n) {
    if (n < 2) return 1.0;
    const double s2 = (1.0 - r * r) * (1.0 - r * r) / (static_cast<double>(n) - 1.0);
    return std::sqrt(4.0 * r * r * s2 + 2.0 * s2 * s2);
}

}  // namespace wg::plan::detail
