// The firm's own items beside the program's.

#include "core/plan/reference_overlay.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/equipment/codec.h"
#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace reference_overlay_test {
namespace {

class ReferenceOverlay : public ::testing::Test {
   protected:
    static void SetUpTestSuite() { program_ = new Reference(test::reference()); }
    static void TearDownTestSuite() { delete program_; }

    static std::string one(Catalogue catalogue) { return catalogue_to_json(catalogue); }
    static CollectorModel collector(const std::string& id) {
        CollectorModel model = program_->catalogue.collectors.front();
        model.id = id;
        return model;
    }
    static BlockModel block(const std::string& id) {
        BlockModel model = program_->catalogue.blocks.front();
        model.id = id;
        return model;
    }
    static CylinderModel cylinder(const std::string& id, std::vector<std::string> fits) {
        CylinderModel model = program_->catalogue.cylinders.front();
        model.id = id;
        model.fits_blocks = std::move(fits);
        return model;
    }
    static Reference* program_;
};
Reference* ReferenceOverlay::program_ = nullptr;

TEST_F(ReferenceOverlay, OwnItemsStandAfterThePrograms) {
    FixingMethod method = program_->catalogue.fixing_methods.front();
    method.id = "own-hook";
    const Overlay both = with_own_items(*program_, {{"a", one({{}, {}, {cylinder("own-cylinder", {"own-block"})}, {}})},
                                                    {"b", one({{collector("own-plate")}, {}, {}, {}})},
                                                    {"c", one({{}, {block("own-block")}, {}, {}})},
                                                    {"d", one({{}, {}, {}, {method}})}});
    EXPECT_TRUE(both.left_out.empty()) << text_of(both.left_out);
    const Catalogue& all = both.reference.catalogue;
    EXPECT_EQ(all.collectors.back(), collector("own-plate"));
    EXPECT_EQ(all.blocks.back(), block("own-block"));
    EXPECT_EQ(all.cylinders.back().id, "own-cylinder") << "names a block that comes after it in the list";
    EXPECT_EQ(all.fixing_methods.back(), method);
    EXPECT_EQ(all.collectors.size(), program_->catalogue.collectors.size() + 1);
    EXPECT_EQ(both.reference.weather, program_->weather);
}

TEST_F(ReferenceOverlay, WhatIsWrongIsLeftOutWithItsReasonAndTheRestIsThere) {
    BlockModel hot = block("hot");
    hot.shell_loss = 0.4;  // the format takes it, the heat pump does not
    const Overlay both =
        with_own_items(*program_, {{"taken", one({{collector(program_->catalogue.blocks.front().id)}, {}, {}, {}})},
                                   {"text", "{\"schema\": 1, \"blocks\": [{}]}"},
                                   {"hot", one({{}, {hot}, {}, {}})},
                                   {"lost", one({{}, {}, {cylinder("lost", {"nowhere"})}, {}})},
                                   {"good", one({{collector("twice")}, {}, {}, {}})},
                                   {"again", one({{}, {block("twice")}, {}, {}})}});
    const std::string why = text_of(both.left_out);
    EXPECT_NE(why.find("taken: "), std::string::npos) << why;
    EXPECT_NE(why.find("is the id of another item here"), std::string::npos) << why;
    EXPECT_NE(why.find("text: blocks[0]"), std::string::npos) << why;
    EXPECT_NE(why.find("shell_loss"), std::string::npos) << why;
    EXPECT_NE(why.find("names the block 'nowhere'"), std::string::npos) << why;
    EXPECT_NE(why.find("again: "), std::string::npos) << why;
    EXPECT_EQ(why.find("good: "), std::string::npos) << why;
    EXPECT_NE(find_collector(both.reference.catalogue, "twice"), nullptr);
    EXPECT_EQ(find_block(both.reference.catalogue, "twice"), nullptr);
    EXPECT_EQ(both.reference.catalogue.blocks.size(), program_->catalogue.blocks.size());
}

TEST_F(ReferenceOverlay, ARefrigerantWithoutATableLeavesTheBlockOut) {
    Reference without = *program_;
    without.refrigerants.erase(program_->catalogue.blocks.front().refrigerant);
    const Overlay both = with_own_items(without, {{"b", one({{}, {block("own-block")}, {}, {}})}});
    EXPECT_NE(text_of(both.left_out).find("no property table"), std::string::npos) << text_of(both.left_out);
}

TEST_F(ReferenceOverlay, ALaterVersionMayKeepItsId) {
    const Overlay both = with_own_items(*program_, {{"a", one({{collector("own")}, {}, {}, {}})}});
    const Catalogue later{{collector("own")}, {}, {}, {}};
    EXPECT_FALSE(problems_beside(both.reference, later, "own").empty());
    EXPECT_TRUE(problems_beside(both.reference, later, "own", "own").empty());
}

TEST_F(ReferenceOverlay, AJobPlansWithOwnItemsAndItsPlanHoldsThemWhole) {
    Job job = test::demo_job();
    for (Choice& choice : job.choices)
        choice.collector_model = "own-plate";
    const Result<Plan> unknown = plan(job, *program_);
    ASSERT_FALSE(unknown.ok());
    EXPECT_NE(text_of(unknown.problems()).find("there is no collector 'own-plate' here"), std::string::npos);
    EXPECT_NE(text_of(unknown.problems()).find("Equipment on the desk"), std::string::npos);
    EXPECT_EQ(unknown_equipment(program_->catalogue, job.choices.front()),
              std::vector<std::string>{"collector 'own-plate'"});

    CollectorModel own = *find_collector(program_->catalogue, chosen_choice(test::demo_job())->collector_model);
    own.id = "own-plate";
    own.mass_kg += 0.125;
    const Overlay both = with_own_items(*program_, {{"own", one({{own}, {}, {}, {}})}});
    EXPECT_TRUE(unknown_equipment(both.reference.catalogue, job.choices.front()).empty());
    const Plan planned = plan(job, both.reference).value();
    const nlohmann::json frozen = nlohmann::json::parse(plan_to_json(planned));
    const Catalogue read = catalogue_from_json(frozen.at("equipment").dump(), "frozen").value();
    EXPECT_EQ(read.collectors, std::vector<CollectorModel>{own});
    EXPECT_EQ(read.blocks, std::vector<BlockModel>{planned.block});
    EXPECT_EQ(read.cylinders, std::vector<CylinderModel>{planned.cylinder});
    EXPECT_EQ(read.fixing_methods, std::vector<FixingMethod>{planned.fixing_method});
}

}  // namespace
}  // namespace reference_overlay_test
}  // namespace wg::plan
