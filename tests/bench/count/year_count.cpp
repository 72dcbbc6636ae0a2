// Runs a year of operation as often as told and nothing else: what instructions.sh counts. The same year as the
// benchmark year_of_operation.

#include <cstdio>
#include <cstdlib>

#include "core/season/season.h"
#include "tests/core/season/fixture.h"

int main(int argc, char** argv) {
    using namespace wg;
    const int times = argc > 1 ? std::atoi(argv[1]) : 1;
    auto input = season_test::equipment(2);
    season_test::add_weather(input);
    input.demand.cycle = TappingCycle::l;
    double sum = 0.0;
    for (int i = 0; i < times; ++i) {
        const auto year = season::run(input);
        if (!year) return 1;
        sum += year.value().seasonal_factor;
    }
    std::printf("%d years, mean seasonal factor %.6f\n", times, times > 0 ? sum / times : 0.0);
    return 0;
}
