#include "core/site/horizon_text.h"

#include <gtest/gtest.h>

namespace wg::site {
namespace {

TEST(HorizonText, lines_of_a_notebook_in_any_usual_writing) {
    for (const char* text :
         {"90;5\n180;12.5\n", "90\t5\n180\t12,5", "bearing;elevation\n\n# by the gate\n180;12,5\r\n90;5\r\n",
          "90 5\n180 12.5", "90,5\n180,12.5", "90, 5\n180, 12.5",
          "\xEF\xBB\xBF"
          "90\xC2\xB0;5\xC2\xB0\n180;12.5"}) {
        const auto read = horizon_from_text(text, 0.0);
        ASSERT_TRUE(read) << text << ": " << text_of(read.problems());
        ASSERT_EQ(read.value().size(), 2U) << text;
        EXPECT_DOUBLE_EQ(read.value()[0].azimuth_deg, 90.0);
        EXPECT_DOUBLE_EQ(read.value()[1].elevation_deg, 12.5) << text;
    }
}

TEST(HorizonText, declination_east_adds_to_the_compass_and_sorts_anew) {
    const auto read = horizon_from_text("358;4\n2;6\n", 3.0);
    ASSERT_TRUE(read);
    EXPECT_DOUBLE_EQ(read.value()[0].azimuth_deg, 1.0);
    EXPECT_DOUBLE_EQ(read.value()[0].elevation_deg, 4.0);
    EXPECT_DOUBLE_EQ(read.value()[1].azimuth_deg, 5.0);
    EXPECT_EQ(horizon_to_text(read.value(), 3.0), "358.0;4.0\n2.0;6.0\n");
}

TEST(HorizonText, what_cannot_be_read_is_named_by_line) {
    const std::pair<const char*, const char*> cases[] = {{"90;5\nhouse;7\n", "line 2"},
                                                         {"90;5;7\n", "line 1"},
                                                         {"400;5\n", "line 1"},
                                                         {"90;-5\n", "line 1"},
                                                         {"90;85\n", "line 1"},
                                                         {"90;nan\n", "line 1"},
                                                         {"", "no line"},
                                                         {"bearing;elevation\n", "no line"},
                                                         {"90;5\n90;6\n", "90 twice"},
                                                         {"1e999;5\n", "line 1"}};
    for (const auto& [text, words] : cases) {
        const auto read = horizon_from_text(text, 0.0);
        ASSERT_FALSE(read) << text;
        EXPECT_NE(read.problems().front().text().find(words), std::string::npos) << read.problems().front().text();
    }
    std::string long_one;
    for (int i = 0; i < 2000; ++i)
        long_one += std::to_string(i * 0.18) + ";1\n";
    EXPECT_FALSE(horizon_from_text(long_one, 0.0));
}

}  // namespace
}  // namespace wg::site
