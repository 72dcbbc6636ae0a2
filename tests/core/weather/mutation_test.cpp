// Damaged weather files: the small corpus of the fuzz targets, changed at random in seconds. The claims stand in
// tests/fuzz/weather_claims.h and end the program when one is broken.

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "tests/fuzz/fuzz_weather.cpp"

namespace wg::weather {
namespace {

struct Target {
    const char* name;
    fuzz::Reader reader;
};
const Target targets[] = {
    {"epw", read_epw}, {"tmy3", read_tmy3}, {"pvgis", read_pvgis_tmy}, {"plain", read_plain}, {"any", read_any}};

std::vector<std::string> corpus(const std::string& name) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(WG_TESTS_DIR "/fuzz/corpus/" + name))
        paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<std::string> out;
    for (const auto& path : paths) {
        std::ifstream file(path, std::ios::binary);
        out.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    return out;
}

const std::vector<std::string>& tokens() {
    static const std::vector<std::string> list = {"nan",
                                                  "-inf",
                                                  "1e999",
                                                  "0x10",
                                                  "9999",
                                                  "-9900",
                                                  "99.9",
                                                  "1e-320",
                                                  "-0",
                                                  "\"",
                                                  ",",
                                                  ";",
                                                  "\n",
                                                  "\r\n",
                                                  ":",
                                                  "#",
                                                  "*",
                                                  "@",
                                                  "24:00",
                                                  "2028-02-29 00:00",
                                                  "2001,2,29,1",
                                                  "02/29/2000",
                                                  "20000229:0010",
                                                  "\xEF\xBB\xBF",
                                                  "\xff",
                                                  "\0",
                                                  "# sun_minute: 61",
                                                  "# utc_offset_h: -3.5",
                                                  "99999999999999999999",
                                                  "2027-12-31 24:00",
                                                  "-"};
    return list;
}

// Seconds by default; WG_MUTATION_ROUNDS=20000 by hand.
int rounds() {
    const char* wanted = std::getenv("WG_MUTATION_ROUNDS");
    return wanted == nullptr ? 60 : std::max(1, std::atoi(wanted));
}

std::string mutated(std::string text, std::mt19937_64& random) {
    for (std::uint64_t k = 1 + random() % 4; k > 0 && !text.empty(); --k) {
        const std::size_t at = random() % text.size();
        switch (random() % 5) {
            case 0: text[at] = static_cast<char>(static_cast<unsigned char>(text[at]) ^ (1U << (random() % 8))); break;
            case 1: text.erase(at, 1 + random() % 12); break;
            case 2: text.insert(at, tokens()[random() % tokens().size()]); break;
            case 3: {  // a field
                const std::size_t end = std::min(text.find_first_of(",;\n", at), text.size());
                text.replace(at, end - at, tokens()[random() % tokens().size()]);
                break;
            }
            default: text.insert(random() % text.size(), text.substr(at, random() % 80)); break;
        }
    }
    return text;
}

TEST(WeatherMutation, TheCorpusReachesYearsAndRefusalsOfEveryReader) {
    for (const Target& target : targets) {
        int accepted = 0;
        int refused = 0;
        for (const std::string& bytes : corpus(target.name))
            ++(fuzz::check_bytes(target.reader, bytes) ? accepted : refused);
        EXPECT_GT(refused, 0) << target.name;
        if (target.reader != read_any) EXPECT_GT(accepted, 0) << target.name;
    }
}

TEST(WeatherMutation, ChangedFilesAreRefusedWithLineAndColumnOrComeBackBitForBit) {
    constexpr std::uint64_t seed = 20270621;
    for (const Target& target : targets) {
        std::mt19937_64 random(seed);
        const std::vector<std::string> start = corpus(target.name);
        for (int round = 0; round < rounds(); ++round)
            fuzz::check_bytes(target.reader, mutated(start[random() % start.size()], random));
    }
}

TEST(WeatherMutation, PiecesAndRandomBytesAreRefused) {
    std::mt19937_64 random(20270622);
    for (int round = 0; round < 3000; ++round) {
        const Target& target = targets[random() % std::size(targets)];
        std::string bytes(random() % 300, '\0');
        for (char& c : bytes)
            c = static_cast<char>(random() % 4 == 0 ? random() & 0xffU : 0x20 + random() % 0x5f);
        if (!bytes.empty() && bytes[0] == '@') continue;
        EXPECT_FALSE(fuzz::check_text(target.reader, bytes));
    }
    for (const Target& target : targets) {
        if (target.reader == read_any) continue;
        const std::string& whole = fuzz::base_of(target.reader).text;
        for (int round = 0; round < 12; ++round)
            EXPECT_FALSE(
                fuzz::check_text(target.reader, std::string_view(whole).substr(0, random() % (whole.size() - 9000))));
    }
}

}  // namespace
}  // namespace wg::weather
