#pragma once
// A small invented job, a catalogue for it, and ways to plan that tests can watch and hold up.

#include <QTest>
#include <atomic>
#include <chrono>
#include <memory>
#include <mutex>
#include <thread>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/common/job_session.h"

namespace wg::ui::sample {

inline Surface roof() {
    Surface surface;
    surface.id = "11111111-1111-4111-8111-111111111111";
    surface.label = "South roof";
    surface.outline = {{0, 0}, {8, 0}, {8, 5}, {0, 5}};
    surface.rafters.present = true;
    return surface;
}

inline Surface terrace() {
    Surface surface;
    surface.id = "22222222-2222-4222-8222-222222222222";
    surface.label = "Terrace";
    surface.kind = SurfaceKind::terrace;
    surface.roof_form = RoofForm::flat;
    surface.tilt_deg = 0.0;
    surface.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
    surface.covering = Covering::paving;
    return surface;
}

inline Job job() {
    Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    job.number = "T-0001";
    job.invented = true;
    job.revision = 4;
    job.client.name = "Client (invented)";
    job.site.location.latitude_deg = 47.0;
    job.site.surfaces = {roof(), terrace()};
    CylinderSpot spot;
    spot.id = "33333333-3333-4333-8333-333333333333";
    spot.label = "Cellar";
    job.site.spots = {spot};
    Obstacle chimney;
    chimney.id = "44444444-4444-4444-8444-444444444444";
    chimney.label = "Chimney";
    job.site.obstacles = {chimney};
    Choice choice;
    choice.id = "55555555-5555-4555-8555-555555555555";
    choice.label = "A";
    choice.collector_model = "plate";
    choice.block_model = "block";
    choice.cylinder_model = "cylinder";
    choice.fixing_method = "hooks";
    choice.spot_id = spot.id;
    Placement placement;
    placement.id = "66666666-6666-4666-8666-666666666666";
    placement.label = "Collector 1";
    placement.surface_id = roof().id;
    placement.x_m = 4.0;
    placement.y_m = 2.5;
    choice.placements = {placement};
    job.choices = {choice};
    job.chosen_choice_id = choice.id;
    return job;
}

inline const std::string placement_id = job().choices.front().placements.front().id;

inline std::shared_ptr<const plan::Reference> reference() {
    auto reference = std::make_shared<plan::Reference>();
    CollectorModel plate;
    plate.id = "plate";
    plate.tilt_min_deg = 15.0;
    plate.tilt_recommended_min_deg = 30.0;
    reference->catalogue.collectors = {plate};
    BlockModel block;
    block.id = "block";
    reference->catalogue.blocks = {block};
    CylinderModel cylinder;
    cylinder.id = "cylinder";
    reference->catalogue.cylinders = {cylinder};
    FixingMethod hooks;
    hooks.id = "hooks";
    hooks.coverings = {Covering::clay_tile};
    reference->catalogue.fixing_methods = {hooks};
    return reference;
}

/// A plan whose figures tell which edit it was made of: run = x of the first collector, heat = 100 times that.
inline Result<plan::Plan> quick_to_read_plan(const Job& job, const plan::Reference&, const plan::Options& options) {
    plan::Plan plan;
    plan.choice_id = options.choice_id;
    const Choice* choice = find_choice(job, options.choice_id);
    if (choice == nullptr) return Problem{"choices", "there is no choice " + options.choice_id, "Add one"};
    const double x_m = choice->placements.empty() ? 0.0 : choice->placements.front().x_m;
    plan.figures.run_m = x_m;
    if (options.yield) {
        plan.has_yield = true;
        plan.figures.heat_kwh = {90.0 * x_m, 100.0 * x_m, 110.0 * x_m};
        plan.workings.push_back({"yield.heat", "Heat", "", {}, "", "", false});
    }
    return plan;
}

/// Holds full plans up until let go, and remembers which were made.
class Gate {
   public:
    [[nodiscard]] PlanFunction function() {
        return [this](const Job& job, const plan::Reference& reference, const plan::Options& options) {
            if (options.yield) {
                while (held_)
                    std::this_thread::sleep_for(std::chrono::milliseconds(1));
                const std::lock_guard<std::mutex> lock(mutex_);
                made_.push_back(job.choices.front().placements.front().x_m);
            }
            return quick_to_read_plan(job, reference, options);
        };
    }
    void hold() { held_ = true; }
    void let_go() { held_ = false; }
    [[nodiscard]] std::vector<double> made() {
        const std::lock_guard<std::mutex> lock(mutex_);
        return made_;
    }

   private:
    std::atomic<bool> held_ = false;
    std::mutex mutex_;
    std::vector<double> made_;
};

inline constexpr int patience_ms = 5000;  ///< far above what a loaded machine needs for a plan of nothing

[[nodiscard]] inline bool settle(const JobSession& session) {
    return QTest::qWaitFor([&session] { return !session.planning(); }, patience_ms);
}

}  // namespace wg::ui::sample
