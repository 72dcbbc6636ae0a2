// Damaged job files: whatever happens to the bytes, reading ends with a problem in words or a valid job. The claims
// themselves stand in the fuzz target, which aborts when one is broken.

#include <gtest/gtest.h>

#include <cstring>
#include <random>
#include <string>

#include "tests/core/job/sample_job.h"
#include "tests/fuzz/fuzz_job.cpp"
#include "tests/tools/sweep.h"

namespace wg {
namespace {

constexpr std::uint64_t seed = 20270621;

void feed(const std::string& text) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
}

TEST(JobMutation, EveryTruncationIsRefusedInWords) {
    const std::string text = job_to_json(test::sample_job());
    constexpr std::size_t step = 7;
    for (std::size_t size = 0; size + 2 < text.size(); size += step) {
        EXPECT_FALSE(job_from_json(std::string_view(text).substr(0, size), "cut.json").ok()) << size;
        feed(text.substr(0, size));
    }
}

TEST(JobMutation, FlippedBitsGiveAProblemOrAValidJob) {
    const std::string text = job_to_json(test::sample_job());
    std::mt19937_64 random(seed);
    int accepted = 0;
    const int rounds = sweep::cases(10000);
    for (int i = 0; i < rounds; ++i) {
        std::string bad = text;
        for (std::uint64_t k = 1 + random() % 3; k > 0; --k) {
            char& at = bad[random() % bad.size()];
            at = static_cast<char>(static_cast<unsigned char>(at) ^ (1U << (random() % 8)));
        }
        feed(bad);
        accepted += job_from_json(bad, "").ok() ? 1 : 0;
    }
    // Both ends have to be reached, or the test would look at one of them only.
    EXPECT_GT(accepted, rounds / 50) << "seed " << seed;
    EXPECT_LT(accepted, rounds) << "seed " << seed;
}

TEST(JobMutation, ExchangedTokensGiveAProblemOrAValidJob) {
    const std::string text = job_to_json(test::sample_job());
    const std::vector<std::string> tokens = {"null",
                                             "true",
                                             "[]",
                                             "{}",
                                             "-1",
                                             "1e308",
                                             "1e-320",
                                             "0.5",
                                             "\"\"",
                                             "[[[[",
                                             "}",
                                             "]",
                                             "\\u0000",
                                             "\"",
                                             ",",
                                             ":",
                                             "99999999999999999999",
                                             "\"id\"",
                                             "\xC3",
                                             "-0.0"};
    std::mt19937_64 random(seed + 1);
    for (int i = 0; i < sweep::cases(8000); ++i) {
        std::string bad = text;
        const std::size_t at = random() % bad.size();
        const std::size_t end = std::min(bad.find_first_of(",:\n", at), bad.size());
        bad.replace(at, random() % 2 == 0 ? end - at : 0, tokens[random() % tokens.size()]);
        feed(bad);
    }
}

TEST(JobMutation, MovedPiecesGiveAProblemOrAValidJob) {
    const std::string text = job_to_json(test::sample_job());
    std::mt19937_64 random(seed + 2);
    for (int i = 0; i < 2000; ++i) {
        std::string bad = text;
        const std::size_t from = random() % bad.size();
        const std::string piece = bad.substr(from, random() % 400);
        bad.insert(random() % bad.size(), piece);
        feed(bad);
    }
}

TEST(JobMutation, RandomBytesAreRefused) {
    std::mt19937_64 random(seed + 3);
    for (int i = 0; i < 2000; ++i) {
        std::string bytes(random() % 200, '\0');
        for (char& c : bytes)
            c = static_cast<char>(random() & 0xffU);
        feed(bytes);
        EXPECT_FALSE(job_from_json(bytes, "").ok());
    }
}

}  // namespace
}  // namespace wg
