// What to watch, what never to do, and health in the hand-over booklet.

#include <algorithm>
#include <optional>

#include "core/commissioning/commissioning.h"
#include "ui/common/format.h"
#include "ui/documents/booklet_parts.h"
#include "ui/documents/install_steps.h"

namespace wg::ui::paper {
namespace {

void danger(Flow& flow, Sign sign, const QString& title, const QString& text) {
    Flow::Notice notice{sign, title, text};
    notice.size_pt = booklet_pt;
    flow.caution(notice);
}

/// Hot water at the tap as it was handed over: the newest reading that stands.
std::optional<double> handed_over_tap_c(const Job& job) {
    std::optional<double> found;
    for (const Reading& entry : commissioning::standing(job.record))
        if (entry.kind == ReadingKind::tap_temperature) found = entry.value;
    return found;
}

QString run_words(const Hygiene& hygiene) {
    const QString often =
        hygiene.rule == HygieneRule::daily ? QStringLiteral("Every day") : QStringLiteral("Once a week");
    return QStringLiteral(
               "%1 the water is heated to %2 against bacteria (legionella). Leave this setting on; the water is "
               "hotter then.")
        .arg(often, temperature(hygiene.target_c));
}

}  // namespace

void booklet_watch(Flow& flow) {
    flow.heading(QStringLiteral("What is normal"), booklet_heading_pt);
    std::vector<std::pair<QString, QString>> normal = {
        {QStringLiteral("A hum like a refrigerator"), QStringLiteral("The heat pump is running, by night too.")},
        {QStringLiteral("A hiss or a click"), QStringLiteral("For some seconds at start and stop.")},
        {QStringLiteral("The plate is wet or drips"), QStringLiteral("Water from the air. It gives warmth that way.")},
        {QStringLiteral("Frost or ice on the plate"),
         QStringLiteral("In cold, damp weather. It thaws by itself, and steams a little. Do not scrape.")},
        {QStringLiteral("Drops in the funnel at the cylinder"),
         QStringLiteral("While it heats: warm water needs more room.")},
        {QStringLiteral("No sun, and yet hot water"), QStringLiteral("It works from the air as well.")}};
    booklet_pairs(flow, normal, QStringLiteral("You notice"), QStringLiteral("Why"));
    flow.heading(QStringLiteral("When to call us"), booklet_heading_pt);
    booklet_pairs(
        flow,
        {{QStringLiteral("Water only lukewarm for a day"),
          QStringLiteral("Look whether the switch at the board is on. Then call.")},
         {QStringLiteral("The switch at the board trips"), QStringLiteral("Switch on once. Trips again: leave "
                                                                          "it off and call.")},
         {QStringLiteral("The funnel drips all day"), QStringLiteral("Call. Never close or plug it.")},
         {QStringLiteral("Water under cylinder or heat pump"),
          QStringLiteral("Switch off at the board, shut the cold water cock, call.")},
         {QStringLiteral("Knocking, grinding, much louder"), QStringLiteral("Switch off at the board, call.")},
         {QStringLiteral("A pipe or the plate is damaged"),
          QStringLiteral("Switch off at the board, air the room, stay away from the place, call.")},
         {QStringLiteral("Ice on the plate for days in mild weather"), QStringLiteral("Call.")}},
        QStringLiteral("You notice"), QStringLiteral("What to do"));
}

void booklet_never(Flow& flow, const PaperInput& input) {
    const StepFacts facts = facts_of(input.job, input.plan);
    flow.heading(QStringLiteral("Never do this"), booklet_heading_pt);
    if (facts.flammable()) {
        danger(flow, Sign::flame, QStringLiteral("No flame and no spark near the heat pump"),
               QStringLiteral(
                   "What runs in its pipes can burn (%1). Keep the openings that air the room free, put no open "
                   "fire, boiler or store of petrol there, drill nothing. You smell or hear something come out: "
                   "touch no switch, open windows, go out, call.")
                   .arg(QString::fromLatin1(name_of(input.plan.block.refrigerant))));
    }
    if (facts.on_roof || facts.on_wall) {
        danger(flow, Sign::height, QStringLiteral("Do not climb to the plate"),
               QStringLiteral("Do not step on it, lean a ladder on it or clean it yourself. Leaves that reach it: call "
                              "somebody who is trained for it."));
    }
    danger(flow, Sign::caution, QStringLiteral("Leave plate and pipes as they are"),
           QStringLiteral(
               "Do not cover, paint, drill, bend or hang anything on them. No high-pressure cleaner, no salt, no "
               "ice scraper."));
    danger(flow, Sign::pressure, QStringLiteral("Never close the safety valve's outlet"),
           QStringLiteral("Water that is heated needs a way out. With the outlet closed the cylinder can burst."));
    danger(flow, Sign::electricity, QStringLiteral("Open no cover"),
           QStringLiteral("There is mains voltage behind it. Switch off at the board when something is wrong."));
}

void booklet_health(Flow& flow, const PaperInput& input) {
    const Demand& demand = input.job.demand;
    flow.heading(QStringLiteral("Hot water: scalding and health"), booklet_heading_pt);
    QString scald = QStringLiteral(
                        "The water in the cylinder is at %1 or hotter. Feel it before you bathe a child or "
                        "somebody who feels little.")
                        .arg(temperature(demand.set_point_c));
    if (const auto tap = handed_over_tap_c(input.job))
        scald += QStringLiteral(" At the tap it was %1 at the hand-over; the valve that mixes it is set by us.")
                     .arg(temperature(*tap));
    else if (input.plan.services.water.mixing_valve)
        scald += QStringLiteral(" A valve mixes it for the tap; it is set by us.");
    danger(flow, Sign::heat, QStringLiteral("Hot water scalds in seconds"), scald);
    danger(flow, Sign::hygiene, QStringLiteral("Water that stands lukewarm breeds bacteria"),
           demand.hygiene.rule == HygieneRule::none
               ? QStringLiteral(
                     "No heating against bacteria is set: do not turn the water below %1, and use every hot tap "
                     "at least once a week.")
                     .arg(temperature(std::max(50.0, demand.set_point_c)))
               : run_words(demand.hygiene) + QStringLiteral(" Use every hot tap at least once a week."));
    flow.heading(QStringLiteral("When you are away"), booklet_heading_pt);
    const auto advice = [&](const QString& text) { flow.bullet(text, booklet_text); };
    advice(QStringLiteral("For some days: leave everything as it is."));
    if (demand.control.holiday_rule == HolidayRule::off) {
        advice(QStringLiteral(
            "For longer: it is set to rest in the holidays you told us. For others, switch it off at the "
            "control."));
    } else {
        advice(QStringLiteral(
            "For more than a week: switch to absence at the control, or off. The plate needs no care; the "
            "cylinder and its pipes must stay free of frost."));
    }
    advice(
        QStringLiteral("When you are back: have the water heated to 60 °C once, then let every hot tap run for three "
                       "minutes, with the window open and without breathing the spray. Only then shower."));
}

}  // namespace wg::ui::paper
