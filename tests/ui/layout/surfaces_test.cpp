// A collector can be put on every kind of surface of a house from the window, lying or standing as it should there.
#include <gtest/gtest.h>

#include <QTest>

#include "core/fixing/layout_rules.h"
#include "core/fixing/mounting_rules.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace surfaces_test {

Surface surface(const char* id, SurfaceKind kind, RoofForm form, double tilt_deg, double width_m, double up_m,
                double height_m, Covering covering) {
    Surface s;
    s.id = id;
    s.label = id;
    s.kind = kind;
    s.roof_form = form;
    s.tilt_deg = tilt_deg;
    s.azimuth_deg = 200.0;
    s.origin = {0.0, 0.0, height_m};
    s.outline = {{0, 0}, {width_m, 0}, {width_m, up_m}, {0, up_m}};
    s.covering = covering;
    return s;
}

struct Kind {
    Surface surface;
    bool on_frame = false;
};
std::vector<Kind> kinds() {
    using K = SurfaceKind;
    using F = RoofForm;
    return {
        {surface("pitched roof", K::roof, F::duo_pitch, 38.0, 8.0, 5.0, 3.0, Covering::clay_tile), false},
        {surface("flat roof", K::roof, F::flat, 2.0, 8.0, 6.0, 3.5, Covering::membrane), true},
        {surface("house wall", K::wall, F::not_a_roof, 90.0, 8.0, 3.0, 0.0, Covering::render), false},
        {surface("balustrade", K::wall, F::not_a_roof, 90.0, 4.0, 1.5, 2.8, Covering::masonry), false},
        {surface("terrace", K::terrace, F::not_a_roof, 0.0, 6.0, 4.0, 0.0, Covering::paving), true},
        {surface("ground", K::ground, F::not_a_roof, 0.0, 9.0, 9.0, 0.0, Covering::soil), true},
    };
}

struct Surfaces : testing::TestWithParam<std::size_t> {};

TEST_P(Surfaces, TakesACollectorFromTheWindow) {
    const Kind kind = kinds()[GetParam()];
    Job job = sample::job();
    job.site.surfaces.push_back(kind.surface);
    JobSession session{job, sample::reference(), sample::quick_to_read_plan};
    const std::string id = add_collector(session, kind.surface.id);
    const Choice& choice = *session.current_choice();
    ASSERT_EQ(choice.placements.size(), 2u);
    const Placement& put = choice.placements.back();
    EXPECT_EQ(put.id, id);
    EXPECT_EQ(put.frame_tilt_deg.has_value(), kind.on_frame);
    if (kind.on_frame) {
        EXPECT_EQ(put.frame_azimuth_deg, 180.0) << "to the equator, whatever the edge of the terrace";
    }
    const CollectorModel& model = sample::reference()->catalogue.collectors.front();
    for (const Finding& f : fixing::check_layout(session.job().site, choice, model)) {
        if (f.place_id == id) {
            EXPECT_NE(f.severity, Severity::stop) << f.message;
        }
    }
    // The face-on drawing shows it, the keys move it, and the same by way of another surface.
    LayoutStage stage;
    stage.resize(1000, 640);
    stage.set_session(&session);
    stage.show_place(QString::fromStdString(id));
    stage.show();
    EXPECT_EQ(stage.surface_canvas()->surface_id(), kind.surface.id);
    EXPECT_FALSE(stage.grab().isNull());
    const double x_m = put.x_m;
    QTest::keyClick(stage.surface_canvas(), Qt::Key_Right);
    EXPECT_NEAR(session.current_choice()->placements.back().x_m, x_m + 0.01, 1e-9);
    move_placement_to_surface(session, sample::placement_id, kind.surface.id);
    EXPECT_EQ(session.current_choice()->placements.front().frame_tilt_deg.has_value(), kind.on_frame);
}

INSTANTIATE_TEST_SUITE_P(Kinds, Surfaces, testing::Range(std::size_t{0}, std::size_t{6}), [](const auto& tested) {
    std::string name = kinds()[tested.param].surface.id;
    for (char& c : name)
        c = c == ' ' ? '_' : c;
    return name;
});

}  // namespace surfaces_test
}  // namespace wg::ui
