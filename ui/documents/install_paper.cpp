// The install sheet: what the fitters carry onto the roof.

#include <algorithm>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/drawings.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/install_tables.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

constexpr double most_drawing = 175.0 * mm;  ///< height of a surface

/// Collectors that lie alike are told together.
QString placements_in_words(const PaperInput& input) {
    const Choice* choice = find_choice(input.job, input.plan.choice_id);
    struct Alike {
        QStringList labels;
        QString words;
    };
    std::vector<Alike> groups;
    for (const plan::PlacementPlan& placed : input.plan.placements) {
        QString words =
            say(" on ") + qs(placed.surface_label) +
            say(", tilt %1°, looks to %2").arg(number(placed.placed.tilt_deg), bearing(placed.placed.azimuth_deg));
        if (choice != nullptr) {
            for (const Placement& placement : choice->placements) {
                if (placement.id == placed.placement_id) words += QStringLiteral(", ") + hand_words(placement.hand);
            }
        }
        auto group = std::find_if(groups.begin(), groups.end(), [&](const Alike& g) { return g.words == words; });
        if (group == groups.end()) group = groups.insert(group, Alike{{}, words});
        group->labels += qs(placed.label.empty() ? placed.surface_label : placed.label);
    }
    QStringList lines;
    for (const Alike& group : groups)
        lines += group.labels.join(QStringLiteral(", ")) + group.words;
    return lines.join(QStringLiteral("; "));
}

/// What this print is told by, to scan and to read.
void code_box(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    flow.code(
        {say("Job %1, revision %2, mark %3").arg(qs(input.job.number)).arg(plan.job_revision).arg(qs(plan.plan_mark)),
         say("Before work: scan this, or type the mark, under Fitting, 'Code of a print'. It tells "
             "whether this print is still the plan. Do not build from an outdated one.")});
}

void overview(Flow& flow, const PaperInput& input) {
    const Job& job = input.job;
    const plan::Plan& plan = input.plan;
    flow.heading(say("The job"));
    const QString model =
        say("%1 × %2, %3 × %4, %5 each")
            .arg(plan.placements.size())
            .arg(qs(plan.collector.name), length_m(plan.collector.length_m), length_m(plan.collector.width_m),
                 quantity(plan.collector.mass_kg, QStringLiteral("kg")));
    QStringList who{qs(job.client.name), client_address(job.client), qs(job.client.phone)};
    who.removeAll(QString());
    const QString client = who.join(QStringLiteral(", "));
    constexpr double label_mm = 25.0;
    const auto house = [&](Flow& part) {
        part.pairs(
            {{say("Client"), client},
             {say("Access"), qs(job.survey.access)},
             {say("Scaffold"), job.survey.scaffold_needed ? say("needed") : say("not foreseen: decide on the place")},
             {say("Roof condition"), qs(job.survey.roof_condition)}},
            false, label_mm, least_pt);
    };
    const auto system = [&](Flow& part) {
        part.pairs(
            {{say("Collector"), model},
             {say("Where"), placements_in_words(input)},
             {say("Fixing"), qs(plan.fixing_method.label)},
             {say("Heat pump"),
              say("%1, %2 (%3), factory charge %4")
                  .arg(qs(plan.block.name), QString::fromLatin1(name_of(plan.block.refrigerant)),
                       safety_class(plan.block.refrigerant), quantity(plan.block.charge_kg, QStringLiteral("kg"), 2))},
             {say("Cylinder"), say("%1, %2, %3 filled")
                                   .arg(qs(plan.cylinder.name), quantity(plan.cylinder.volume_l, QStringLiteral("l")),
                                        quantity(plan.services.filled_mass_kg, QStringLiteral("kg")))}},
            false, label_mm, least_pt);
    };
    flow.side_by_side(0.49, house, system);
}

void hazards(Flow& flow, const PaperInput& input) {
    flow.heading(say("Before you start: hazards and checks"));
    std::vector<Flow::Notice> warnings = warnings_for(input.job, input.plan);
    for (Flow::Notice& warning : warnings)
        warning.size_pt = least_pt;
    flow.cautions(warnings);
    for (const Finding& finding : input.plan.findings)
        if (finding.severity == Severity::stop) findings_boxes(flow, {finding}, Severity::stop);
    bool first = true;
    for (const Finding& finding : input.plan.findings) {
        if (finding.severity != Severity::caution) continue;
        if (first) flow.subheading(say("Mind besides"));
        first = false;
        const QString place = finding.place.empty() ? QString() : say_name(finding.place) + QStringLiteral(": ");
        flow.bullet(place + say_filled(finding.message), Style{least_pt, false, false});
    }
}

void drawings(Flow& flow, const SharedInput& input) {
    constexpr double beside_words = 0.55;
    QStringList done;
    for (const plan::PlacementPlan& placed : input->plan.placements) {
        if (done.contains(qs(placed.surface_id))) continue;
        done += qs(placed.surface_id);
        const Surface* surface = find_surface(input->job.site, placed.surface_id);
        if (surface == nullptr) continue;
        const auto shown = draw_surface(flow, input, *surface,
                                        SurfacePicture{true, most_drawing, say("Set-out: ") + qs(surface->label)});
        // The schedule goes below the whole surface; the close-up only helps to find the numbers and has the words on
        // the schedule beside it where its scale allows.
        if (!set_out_table(flow, *input, *surface)) continue;
        const CloseUp small{(flow.room() - 6.0 * mm) * beside_words, 80.0 * mm};
        const CloseUp large{flow.room(), 110.0 * mm};
        const auto words = [&](Flow& part) { set_out_words(part, *input); };
        // Plates far apart get the whole width: smaller than 1:50 their numbers run into each other.
        const auto scale = shown ? close_up_scale(*input, *surface, *shown, small) : std::nullopt;
        if (scale && scale->denominator <= 50 && !flow.sheet().large_print) {
            flow.side_by_side(
                beside_words, [&](Flow& part) { draw_points_close_up(part, input, *surface, *shown, small); }, words);
        } else {
            words(flow);
            if (shown) draw_points_close_up(flow, input, *surface, *shown, large);
        }
    }
    if (done.isEmpty()) flow.paragraph(say("No collector is placed in this choice."));
}

double first_drawing_height(const Flow& flow, const SharedInput& input) {
    if (input->plan.placements.empty()) return 0.0;
    const Surface* surface = find_surface(input->job.site, input->plan.placements.front().surface_id);
    if (surface == nullptr) return 0.0;
    return flow.height_of([&](Flow& part) {
        draw_surface(part, input, *surface, SurfacePicture{true, most_drawing, say("Set-out: ") + qs(surface->label)});
    });
}

/// The drawing with its figures beside it.
void pipe_run(Flow& flow, const SharedInput& input) {
    flow.heading(say("Pipe run"));
    flow.side_by_side(
        0.46, [&](Flow& part) { draw_run(part, input, part.sheet().grown(82.0 * mm)); },
        [&](Flow& part) { cut_list(part, *input); });
    flow.paragraph(
        say("Lengths run along the centre line from collector to block. Both tubes have the same legs. Cut when "
            "the place is measured, not from this list alone."),
        Style{least_pt, false, false});
}

/// "Two persons: Hang the plate ..."
QString with_who(const Step& step) {
    return step.who.isEmpty() ? step.text : step.who + QStringLiteral(": ") + step.text;
}

void steps(Flow& flow, const PaperInput& input) {
    flow.heading(say("The work in order"));
    flow.keep(40.0 * mm);  // some steps with it
    flow.paragraph(say("Tick each step when it is done. At a hold point the work stops until it is signed."));
    // Each hold point goes across the page: what comes before it is above it.
    std::vector<Flow::Work> until_hold;
    for (const Step& step : steps_for(input.job, input.plan)) {
        if (step.kind == Step::Kind::hold) {
            flow.work(until_hold);
            until_hold.clear();
            flow.hold_point(with_who(step), step.why);
        } else {
            until_hold.push_back(
                {step.number, step.kind == Step::Kind::section ? step.text : with_who(step), step.why});
        }
    }
    flow.work(until_hold);
}

}  // namespace

std::vector<Page> lay_out_install_sheet(const SharedInput& input) {
    Flow flow(furniture_of(Paper::install_sheet, *input));
    if (input->plan.stopped()) {
        flow.caution(Sign::stop, say("Not to be issued: has a stop"),
                     say("Do not build from this sheet. What must be changed is named below."));
    }
    overview(flow, *input);
    hazards(flow, *input);
    code_box(flow, *input);
    spot_table(flow, *input);
    // Where a page has room for the run but not for the first drawing, the run goes first.
    const double run_height = flow.height_of([&](Flow& part) { pipe_run(part, input); });
    const bool run_first = run_height <= flow.left() && first_drawing_height(flow, input) > flow.left();
    if (run_first) pipe_run(flow, input);
    drawings(flow, input);
    if (!run_first) pipe_run(flow, input);
    load_list(flow, *input);
    steps(flow, *input);
    readings_table(flow, *input);
    const auto list = [&](Flow& part) { hand_over_list(part, *input); };
    const auto times = [&](Flow& part) { warm_up_times(part, *input); };
    flow.side_by_side(0.62, list, times);
    flow.sign_off(say("Hand over"),
                  say("The system was fitted and tested as on this sheet; deviations are written on it."),
                  {say("Fitter"), say("Electrician"), say("Client")});
    return flow.finish();
}

}  // namespace wg::ui::paper
