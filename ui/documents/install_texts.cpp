// From the first look at the site to the plate that hangs. Common practice of roofers and fitters in our own words, no
// published source; the maker's sheet of a fixing goes first where it says otherwise.

#include "ui/documents/install_texts.h"

#include "ui/common/paper_words.h"

namespace wg::ui::paper {

using enum Step::Kind;
using enum Who;
using Facts = const StepFacts&;

const std::vector<StepText>& texts_of_access_and_place() {
    static const std::vector<StepText> lines = {
        {section, anybody, marked("Hazards and access")},
        {work, anybody,
         marked("Read page 1 and walk the site with it. Agree with the client who stays clear of where, and for how "
                "long."),
         marked("What the survey did not show is cheapest to find before tools are out.")},
        {work, anybody,
         marked("Put up the scaffold or edge protection named on page 1 before anybody works on the surface."),
         marked(
             "A fall is the worst thing that can happen on this job. A harness does not replace an edge that holds."),
         [](Facts f) { return f.on_roof && f.scaffold; }},
        {work, anybody,
         marked(
             "Secure the roof: edge protection or scaffold, roof ladder, nobody below. Not in wind, rain, frost or on "
             "moss."),
         marked("A plate catches wind like a sail: two persons carry it, none throws or lowers it free."),
         [](Facts f) { return f.on_roof && !f.scaffold; }},
        {work, anybody,
         marked("Set ladder or tower on firm ground, tied; keep the foot of the wall clear while the plate goes up."),
         marked("A ladder that slips takes the plate along."), [](Facts f) { return f.on_wall; }},
        {work, anybody,
         marked("Look for overhead lines within reach of ladder, plate and tube. Less than the local safe distance: "
                "stop and ask the network operator."),
         marked("A plate or a length of copper makes a good conductor in the wrong place.")},
        {work, anybody,
         marked("Keep flames, sparks and switches that are not sealed away from every place where refrigerant is "
                "opened; air the room; have a gas detector for {refrigerant} on, low down."),
         marked("{refrigerant} ({safety_class}) burns and is heavier than air: it gathers in pits and drains."),
         [](Facts f) { return f.flammable(); }},
        {work, anybody,
         marked("Check that the room's permanent opening of at least {opening} to the next room is there and free."),
         marked("The charge is allowed in this room only with it."), [](Facts f) { return f.room_opening; }},

        {section, anybody, marked("Check the place")},
        {work, anybody,
         marked("Compare the drawing with the surface: edges, openings, obstacles and covering. Measure two dimensions "
                "of the set-out table back."),
         marked("If one is out by more than 30 mm, stop and replan: points would miss what holds them.")},
        {work, anybody,
         marked(
             "Check with compass and inclinometer where the plate looks to and how it is tilted, as on page 1. Never "
             "lay it flat."),
         marked("Flat, rain, frost and leaves stay on it and oil does not come back. Look also for shade that grew "
                "since the survey.")},
        {work, anybody,
         marked("Find the rafters or studs and check width and soundness at two points (test hole or from inside)."),
         marked("The loads in the table assume sound timber of the class in the plan. Rot, splits or trussed members "
                "with nail plates: stop."),
         [](Facts f) { return f.into_timber; }},
        {work, anybody,
         marked("Tap the wall and drill a test hole beside the first point: solid, hollow or aerated, how thick render "
                "and insulation are."),
         marked("The loads in the table hold for the masonry in the plan. In another wall this anchor holds less: stop "
                "and ask its maker."),
         [](Facts f) { return f.wall_anchor(); }},
        {work, anybody,
         marked("Look whether the seams are sound, closed and of the shape the clamp is made for, and where the sheets "
                "are held fast."),
         marked("The clamp holds the seam, and only the clips below hold the seam on the roof."),
         [](Facts f) { return f.kind == FixingKind::seam_clamp; }},
        {work, anybody,
         marked("Check the roof's covering and what carries it: no blisters, no ponds, drains free; the load of plate, "
                "frame, ballast and snow agreed with whoever answers for the structure."),
         marked("Ballast on a weak deck or soft insulation sinks, ponds and leaks."),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        {work, anybody,
         marked("Check paving, slab or soil under the frame: firm, drained, no cable or pipe below the footings."),
         marked("A foot that sinks tilts the plate away from its level side."),
         [](Facts f) { return f.frame_anchor(); }},
        {work, anybody,
         marked("Walk the run: the shortest way that the drawing allows, free of flues, hot pipes and places where "
                "nails will come."),
         marked("Every metre more costs heat and charge.")},
        {work, anybody,
         marked(
             "At the cylinder spot check headroom, free space, floor, supply, cold, hot, drain and earth against the "
             "list on this sheet."),
         marked("A filled cylinder weighs {filled_mass}: what the floor carries is measured or asked for, not "
                "guessed.")},
        {work, anybody, marked("Check where the recirculation comes back and that it can be shut."),
         marked("It goes to its own port, not into the cold inlet."), [](Facts f) { return f.recirculation; }},
        {work, anybody,
         marked("Unpack and look over plate, block and cylinder; enter their numbers as '{serial_number}'. Leave all "
                "caps on. A plate that has lost its holding charge or has a dent in a channel goes back."),
         marked("A leak found on the ground costs an hour, on the roof a day.")},
    };
    return lines;
}

const std::vector<StepText>& texts_of_fixing() {
    static const std::vector<StepText> lines = {
        {section, anybody, marked("Mark, drill, sleeve and seal"), "",
         [](Facts f) { return f.pierces() || f.wall_anchor() || f.frame_anchor(); }},
        {section, anybody, marked("Mark and set the fixing points"), "",
         [](Facts f) { return !(f.pierces() || f.wall_anchor() || f.frame_anchor()); }},
        {work, anybody,
         marked(
             "Mark all {points} fixing points from the set-out table, from the two edges named. Check both diagonals "
             "of each plate's set of points: equal within 5 mm."),
         marked("A plate forced onto a crooked frame is under strain for life.")},
        {work, anybody,
         marked("Have the maker's sheet of '{method}' at hand; where it says otherwise than the steps here, it goes "
                "first."),
         ""},
        // Hook over tiles.
        {work, anybody, marked("Push up or lift the tiles at each point and lay them where they cannot slide."),
         marked("A tile that slides off kills whoever stands below."), [](Facts f) { return f.hook_on_tiles(); }},
        {work, anybody,
         marked("Set each hook on the middle of its rafter; pack it until its arm passes over the tile below with air "
                "between, 5 mm or more."),
         marked("A hook that presses on the tile below breaks it under the first snow."),
         [](Facts f) { return f.hook_on_tiles(); }},
        {work, anybody, marked("Set each hook flat on the middle of its rafter, its arm free of the covering below."),
         marked("A hook that presses on the covering breaks it under the first snow."),
         [](Facts f) { return f.kind == FixingKind::hook && !f.tiles; }},
        {work, anybody,
         marked("Screw each point down: {screws} screws of {screw}, {grip} of thread in the timber, pre-drilled near "
                "ends. Where the timber splits set none: move along the rafter and note it on the drawing."),
         marked("Pull-out goes with the threaded length in sound wood, and is nothing in a split."),
         [](Facts f) { return f.kind == FixingKind::hook && f.into_timber; }},
        {work, anybody,
         marked(
             "Grind a notch into the underside of the tile above, never its weather face, so that it lies flat again; "
             "on the ground or with goggles and mask."),
         marked("A tile that stands up lets driven rain and snow in and lifts in wind."),
         [](Facts f) { return f.hook_on_tiles(); }},
        // Through the covering.
        {work, anybody,
         marked("Drill at the crown or another high part of the covering, never in the trough where water runs, at a "
                "right angle{drill_words}. Masonry and slate without hammer."),
         marked("Every hole in the water's way leaks some day."),
         [](Facts f) { return f.kind == FixingKind::screw_through; }},
        {work, anybody,
         marked("Clear the dust from hole and covering, set the sleeve through covering and underlay, its lower seal "
                "tight on the underlay."),
         marked(
             "Without a sleeve the screw crushes tile and underlay, and water that passes the tile goes on inwards."),
         [](Facts f) { return f.kind == FixingKind::screw_through; }},
        {work, anybody,
         marked("Drive the double-ended screw into the middle of the timber to its mark: {grip} of thread in the wood. "
                "Set the sealing washer and tighten until the seal swells evenly, no further{torque_words}."),
         marked("Too loose leaks, too tight squeezes the seal out and it leaks next winter."),
         [](Facts f) { return f.kind == FixingKind::screw_through; }},
        // Clamp on a seam.
        {work, anybody,
         marked("Clamp to the seam without drilling or bending it; clamp and sheet of metals that suit each "
                "other{torque_words}."),
         marked("A hole in the seam leaks and ends the roof's warranty; copper above zinc or aluminium eats it."),
         [](Facts f) { return f.kind == FixingKind::seam_clamp; }},
        {work, anybody,
         marked("One row of clamps fixed, the others free to slide with the sheet, as the roof's maker asks."),
         marked("A metal roof grows by a millimetre a metre between night and noon and shears what holds it fast."),
         [](Facts f) { return f.kind == FixingKind::seam_clamp; }},
        // Anchor in a wall.
        {work, anybody,
         marked("Drill at a right angle{drill_words}, away from joints and edges; hollow blocks without hammer."),
         marked("A blow breaks the webs that the anchor is to hold in. A hole too deep leaves mortar without backing."),
         [](Facts f) { return f.wall_anchor(); }},
        {work, anybody, marked("Clean each hole: blow out, brush, blow out again, until no dust comes."),
         marked("On dust no anchor and no mortar holds half of its load."), [](Facts f) { return f.wall_anchor(); }},
        {work, anybody,
         marked("Set sleeve or anchor to its mark, with mortar fill from the bottom; wait its setting time by the "
                "wall's temperature, then tighten with a torque wrench{torque_words}."),
         marked("Turned too early the bond is broken and nobody sees it."), [](Facts f) { return f.wall_anchor(); }},
        {work, anybody,
         marked("The load goes through the render into the masonry: bracket on a firm ground, render cut round it, "
                "joint sealed. Through insulation only with a spacer made for it."),
         marked("Tightened onto insulation the bracket works loose; open render draws water behind it."),
         [](Facts f) { return f.wall_anchor() && f.render; }},
        {work, anybody, marked("Seal round each bracket's bolt with lasting elastic sealant, open below."),
         marked("Water in the hole freezes and bursts the brick; open below it can leave."),
         [](Facts f) { return f.wall_anchor() && !f.render; }},
        // Frame anchored to the ground.
        {work, anybody,
         marked("Set the frame out square, cast a footing under each foot below frost depth, and let the concrete "
                "harden before anything is tightened."),
         marked("Soil that freezes lifts what stands in it."), [](Facts f) { return f.frame_anchor() && f.soil; }},
        {work, anybody,
         marked("Anchor each foot into footing or slab{drill_words}, hole blown out; tighten with a torque "
                "wrench{torque_words}."),
         marked("Paving alone holds no wind."), [](Facts f) { return f.frame_anchor(); }},
        {work, anybody,
         marked("Where an anchor goes through a membrane, have its maker's roofer flash and seal the foot before the "
                "frame comes on."),
         marked("Below a frame nobody finds the leak again."), [](Facts f) { return f.frame_anchor() && f.membrane; }},
        // Ballast.
        {work, anybody,
         marked("Sweep the covering, lay the protective mats under every foot and tray. Pierce nothing."),
         marked("A stone under a foot is a hole after one winter."),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        {work, two_persons,
         marked("Set the frame out square on the mats and lay the ballast: {ballast} at each of the {points} points, "
                "weighed or counted, locked against sliding."),
         marked("Wind takes the plate at the point with too little. Never borrow from one point for another."),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        {work, anybody,
         marked("Keep the ways of the water free: no mat, tray or slab in front of a drain or across the fall."),
         marked("A pond weighs more than the plate and finds every seam."),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        // For all again.
        {work, anybody,
         marked("Drill passages for the run with a slight fall to the outside, deburr, set a sleeve, and keep tube and "
                "insulation free in it."),
         marked("Copper rubbing on masonry wears through; water follows a hole that falls inwards."),
         [](Facts f) { return f.passages; }},
        {work, anybody,
         marked("Seal each point and passage to the covering's own rules: underlay first, then flashing or sealing "
                "collar. Sealant alone is not a seal."),
         marked("The client's roof must be as tight as before. Take a photograph of each before it is covered."),
         [](Facts f) { return f.pierces(); }},
        {work, anybody, marked("Seal each passage: sleeve to wall or roof outside, tube to sleeve with a soft collar."),
         marked("What is not sealed outside runs down inside."), [](Facts f) { return f.passages && !f.pierces(); }},
        {work, anybody,
         marked("Set the profiles, seal their feet where they stand on the covering, tighten crosswise, check with "
                "straight edge and spirit level."),
         marked("What is crooked now pulls on the plate's channels later."),
         [](Facts f) { return f.kind != FixingKind::ballast; }},
        {work, anybody,
         marked("Set the profiles on the frame, tighten crosswise, check with straight edge and spirit level."),
         marked("What is crooked now pulls on the plate's channels later."),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        {hold, anybody, marked("Fixing points and seals"),
         marked("Every point numbered in the table is set as shown, sealed and photographed.")},

        {section, anybody, marked("Hang the collector")},
        {work, two_persons,
         marked("Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on "
                "the LEFT seen face-on."),
         marked("Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor "
                "wears."),
         [](Facts f) { return f.left_hand; }},
        {work, two_persons,
         marked("Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on "
                "the RIGHT seen face-on."),
         marked("Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor "
                "wears."),
         [](Facts f) { return f.right_hand; }},
        {work, anybody, marked("Keep the order of the plates as drawn and the clearances between them."),
         marked("Air has to pass all round."), [](Facts f) { return f.several; }},
        {work, anybody,
         marked("Hold each connection with a second spanner when anything is turned on it. Do not step on the plate or "
                "lean a ladder on it."),
         marked("The channels are thin sheet: a twist of the stub tears them where nobody can reach.")},
    };
    return lines;
}

}  // namespace wg::ui::paper
