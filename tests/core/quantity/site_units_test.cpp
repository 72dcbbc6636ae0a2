#include "core/quantity/site_units.h"

#include <gtest/gtest.h>

namespace wg {
namespace {

// NIST SP 811 (2008), appendix B.8: 1 psi = 6.894757 kPa; 1 mm of mercury = 133.3224 Pa; B.9: deg F to deg C;
// 1 ounce (avoirdupois) = 28.34952 g.
TEST(SiteUnits, the_published_factors) {
    EXPECT_NEAR(site_unit(SiteQuantity::gauge_pressure, "psi").kept(362.594), 25.0, 1e-3);
    EXPECT_NEAR(site_unit(SiteQuantity::gauge_pressure, "kPa").kept(2500.0), 25.0, 1e-12);
    EXPECT_NEAR(site_unit(SiteQuantity::vacuum, "micron").kept(500.0), 66.6612, 1e-4);
    EXPECT_NEAR(site_unit(SiteQuantity::vacuum, "mbar").kept(2.7), 270.0, 1e-9);
    EXPECT_NEAR(site_unit(SiteQuantity::temperature, "\u00b0F").kept(32.0), 0.0, 1e-12);
    EXPECT_NEAR(site_unit(SiteQuantity::temperature, "\u00b0F").kept(-40.0), -40.0, 1e-12);
    EXPECT_NEAR(site_unit(SiteQuantity::temperature_gap, "\u00b0F").kept(9.0), 5.0, 1e-12);
    EXPECT_NEAR(site_unit(SiteQuantity::mass, "oz").kept(16.0), 0.45359, 1e-5);
}

TEST(SiteUnits, there_and_back_is_the_same_and_the_first_is_the_records) {
    for (const SiteQuantity quantity : {SiteQuantity::gauge_pressure, SiteQuantity::vacuum, SiteQuantity::temperature,
                                        SiteQuantity::temperature_gap, SiteQuantity::mass}) {
        ASSERT_FALSE(site_units(quantity).empty());
        EXPECT_EQ(site_units(quantity).front().kept(12.5), 12.5);
        for (const SiteUnit& unit : site_units(quantity)) {
            EXPECT_NEAR(unit.shown(unit.kept(17.25)), 17.25, 1e-12) << unit.name;
            EXPECT_STREQ(site_unit(quantity, unit.name).name, unit.name);
        }
        EXPECT_STREQ(site_unit(quantity, "furlong").name, site_units(quantity).front().name);
    }
    EXPECT_TRUE(site_units(SiteQuantity::none).empty());
}

}  // namespace
}  // namespace wg
