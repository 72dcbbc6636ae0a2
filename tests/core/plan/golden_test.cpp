// The demonstration and five further invented jobs, planned in full and held to texts that were read through line by
// line: tests/golden/*.txt. After a change that is meant to move figures, write them anew with WG_GOLDEN=write, read
// the difference, and keep it only when every line of it is understood.

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"
#include "tests/tools/plan_digest.h"

namespace wg::plan {
namespace {

std::string file_text(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> out;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        out.push_back(line);
    return out;
}

class GoldenPlan : public ::testing::TestWithParam<const char*> {};

TEST_P(GoldenPlan, is_as_it_was_read_through) {
    const std::string name = GetParam(), folder = std::string(WG_TESTS_DIR) + "/golden/";
    Reference reference = test::reference();
    Job job = test::demo_job();
    if (name != "demo") {
        const Result<Job> read = job_from_json(file_text(folder + "jobs/" + name + ".json"), name);
        ASSERT_TRUE(read.ok()) << text_of(read.problems());
        job = read.value();
    }
    const auto weather = weather_for(reference, job.weather);
    ASSERT_TRUE(weather.ok()) << text_of(weather.problems());
    reference.weather = weather.value();
    const Result<Plan> planned = plan(job, reference);
    ASSERT_TRUE(planned.ok()) << text_of(planned.problems());
    const std::string now = test::digest_of(planned.value());
    EXPECT_EQ(now.find("nan"), std::string::npos);
    EXPECT_EQ(now.find("inf "), std::string::npos);

    const std::string path = folder + name + ".txt";
    const char* write = std::getenv("WG_GOLDEN");
    if (write != nullptr && std::string(write) == "write") {
        std::ofstream(path, std::ios::binary) << now;
        return;
    }
    const std::vector<std::string> had = lines_of(file_text(path)), has = lines_of(now);
    ASSERT_FALSE(had.empty()) << path << " is missing";
    int told = 0;
    for (std::size_t i = 0; i < std::max(had.size(), has.size()) && told < 10; ++i) {
        const std::string was = i < had.size() ? had[i] : "(nothing)", is = i < has.size() ? has[i] : "(nothing)";
        if (was == is) continue;
        ++told;
        ADD_FAILURE() << path << ':' << i + 1 << "\n  was " << was << "\n  is  " << is;
    }
}

INSTANTIATE_TEST_SUITE_P(Jobs, GoldenPlan,
                         ::testing::Values("demo", "flat_roof_ballast", "coast_gable", "snow_valley",
                                           "southern_terrace", "pantry_r290"),
                         [](const auto& job) { return std::string(job.param); });

}  // namespace
}  // namespace wg::plan
