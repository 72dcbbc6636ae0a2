#include "ui/documents/install_texts.h"

namespace wg::ui::paper {

using Kind = Step::Kind;

const std::vector<StepText>& step_texts() {
    static const std::vector<StepText> lines = {
        // ------------------------------------------------------------------------------------------------------ access
        {Kind::section, u"Hazards and access"},
        {Kind::work,
         u"Read page 1 and walk the site with it. Agree with the client who stays clear of where, and for how long.",
         u"What the survey did not show is cheapest to find before tools are out."},
        {Kind::work, u"Put up the scaffold or edge protection named on page 1 before anybody works on the surface.",
         u"A fall is the worst thing that can happen on this job. A harness does not replace an edge that holds.",
         [](const StepFacts& f) { return f.on_roof && f.scaffold; }},
        {Kind::work,
         u"Secure the roof: edge protection or scaffold, roof ladder, nobody below. Not in wind, rain, frost or on "
         u"moss.",
         u"A plate catches wind like a sail: two persons carry it, none throws or lowers it free.",
         [](const StepFacts& f) { return f.on_roof && !f.scaffold; }},
        {Kind::work,
         u"Set ladder or tower on firm ground, tied; keep the foot of the wall clear while the plate goes up.", u"",
         [](const StepFacts& f) { return f.on_wall; }},
        {Kind::work,
         u"Look for overhead lines within reach of ladder, plate and tube. Less than the local safe distance: stop and "
         u"ask the network operator.",
         u"A plate or a length of copper makes a good conductor in the wrong place."},
        {Kind::work,
         u"Keep flames, sparks and switches that are not sealed away from every place where refrigerant is opened; air "
         u"the room; have a gas detector for {refrigerant} on, low down.",
         u"{refrigerant} ({safety_class}) burns and is heavier than air: it gathers in pits and drains.",
         [](const StepFacts& f) { return f.flammable(); }},
        // ------------------------------------------------------------------------------------------------------- place
        {Kind::section, u"Check the place"},
        {Kind::work,
         u"Compare the drawing with the roof, wall or ground: edges, openings, obstacles and covering. Measure two "
         u"dimensions of the set-out table back.",
         u"If one is out by more than 30 mm, stop and replan: points would miss what holds them."},
        {Kind::work,
         u"Find the rafters or studs and check width and soundness at two points (test hole or from inside).",
         u"The loads in the table assume sound timber of the class in the plan. Rot, splits or trussed members with "
         u"nail plates: stop.",
         [](const StepFacts& f) { return f.into_timber; }},
        {Kind::work,
         u"Check the deck, paving or soil under the frame: level, drained, and able to carry frame, ballast and snow.",
         u"", [](const StepFacts& f) { return f.on_frame || f.on_level; }},
        {Kind::work,
         u"At the cylinder spot check headroom, free space, floor, supply, earth, cold, hot and drain against the list "
         u"on this sheet.",
         u"A filled cylinder weighs {filled_mass}: what the floor carries is measured or asked for, not guessed."},
        {Kind::work,
         u"Unpack and look over plate, block and cylinder. Leave all caps on. A plate that has lost its holding charge "
         u"or has a dent in a channel goes back.",
         u"A leak found on the ground costs an hour, on the roof a day."},
        // ------------------------------------------------------------------------------------------------------ fixing
        {Kind::section, u"Mark, drill, sleeve and seal"},
        {Kind::work,
         u"Mark all {points} fixing points from the set-out table, from the two edges named. Check both diagonals of "
         u"each plate's set of points: equal within 5 mm.",
         u"A plate forced onto a crooked frame is under strain for life."},
        {Kind::work, u"{method_steps}"},
        {Kind::work,
         u"Open the covering at each point, drill into the middle of the timber, {screws} screws a point, full grip of "
         u"{grip}. Set none where the timber splits: move along the rafter, note it on the drawing.",
         u"Pull-out goes with the threaded length in sound wood, and is nothing in a split.",
         [](const StepFacts& f) { return f.into_timber; }},
        {Kind::work,
         u"Drill passages for the run with a slight fall to the outside, deburr, set a sleeve, and keep tube and "
         u"insulation free in it.",
         u"Copper rubbing on masonry wears through; water follows a hole that falls inwards.",
         [](const StepFacts& f) { return f.passages; }},
        {Kind::work,
         u"Seal each point and passage to the covering's own rules: underlay first, then flashing or sealing collar. "
         u"Sealant alone is not a seal.",
         u"The client's roof must be as tight as before. Photograph each one before it is covered."},
        {Kind::work, u"Set profiles and feet, seal under each foot, tighten crosswise, check with a straight edge.",
         u""},
        {Kind::hold, u"Fixing points and seals",
         u"Every point numbered in the table is set, on timber or base as shown, sealed and photographed."},
        // --------------------------------------------------------------------------------------------------- collector
        {Kind::section, u"Hang the collector"},
        {Kind::work,
         u"Hang the plate with two persons: the level side level (spirit level on the lower edge), connections down "
         u"and on the LEFT seen face-on.",
         u"Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor wears.",
         [](const StepFacts& f) { return f.left_hand; }},
        {Kind::work,
         u"Hang the plate with two persons: the level side level (spirit level on the lower edge), connections down "
         u"and on the RIGHT seen face-on.",
         u"Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor wears.",
         [](const StepFacts& f) { return f.right_hand; }},
        {Kind::work, u"Keep the order of the plates as drawn and the clearances between them.",
         u"Air has to pass all round.", [](const StepFacts& f) { return f.several; }},
        {Kind::work,
         u"Hold each connection with a second spanner when anything is turned on it. Do not step on the plate or lean "
         u"a ladder on it.",
         u"The channels are thin sheet: a twist of the stub tears them where nobody can reach."},
        // ------------------------------------------------------------------------------------------------------- lines
        {Kind::section, u"Refrigerant lines"},
        {Kind::work,
         u"Uncoil both tubes by rolling along the floor, never by pulling the coil open. Insulate before bending: "
         u"{insulation}, joints glued, no gaps.",
         u"A flattened tube starves the plate; a gap in the insulation drips on the ceiling below."},
        {Kind::work,
         u"Lay the run as drawn, bends with a bender, clips every 1.0 m level and 1.5 m upright. Caps stay on until "
         u"the joint is made.",
         u"Damp and dirt that get in now come back as a blocked valve or a burnt motor."},
        {Kind::work, u"Let the suction line fall evenly to the block, without sags that hold oil.", u"",
         [](const StepFacts& f) { return !f.collector_below; }},
        {Kind::work,
         u"The plate hangs below the block: lay the suction line with an oil trap at its foot and no other sags.",
         u"Oil has to be lifted by the gas in short slugs; a sag higher up catches it.",
         [](const StepFacts& f) { return f.collector_below; }},
        {Kind::work,
         u"Cut with a tube cutter, deburr with the tube's mouth down, slide the nut on, flare. Look at the flare: "
         u"even, shiny, no crack.",
         u"Swarf ends in the expansion valve. A cracked flare holds for the test and leaks in winter."},
        {Kind::work,
         u"Oil the flare's back with refrigeration oil, start the nut by hand, then tighten with torque wrench and "
         u"counter-spanner: liquid {liquid_od} {torque_liquid}, suction {suction_od} {torque_suction}. Verify with the "
         u"fitting's maker.",
         u"Too loose leaks at once, too tight cracks and leaks later. By feel is neither."},
        // ------------------------------------------------------------------------------------------------- heat pump
        {Kind::section, u"Heat pump and cylinder"},
        {Kind::work, u"Stand the cylinder at its spot, plumb, on its feet, with room to draw anode and heater.", u""},
        {Kind::work,
         u"Set the condenser into the cylinder dry and straight with a new seal. It must touch no other metal inside: "
         u"feel or look all round before closing.",
         u"Metal on metal in drinking water is a battery: the softer one is eaten through.",
         [](const StepFacts& f) { return f.immersed; }},
        {Kind::work, u"Tighten the flange's screws crosswise in three rounds to the cylinder maker's torque.",
         u"One side first tips the flange and pinches the seal.", [](const StepFacts& f) { return f.immersed; }},
        {Kind::work,
         u"Check that the wrapped condenser sits tight on the shell with its paste or band unbroken; do not pull on "
         u"its tubes.",
         u"", [](const StepFacts& f) { return !f.immersed; }},
        {Kind::work, u"Check the anode: fitted, wired where it has a wire, tight.", u"Transport loosens it.",
         [](const StepFacts& f) { return f.anode; }},
        {Kind::section, u"Water side"},
        {Kind::work,
         u"Fit in the direction of flow: stop valve, reducing valve where mains are over the limit, check valve, "
         u"expansion vessel pre-charged to {precharge}, safety valve {safety_valve} with an open tundish to the drain. "
         u"No stop valve between safety valve and cylinder.",
         u"Water grows when heated. With its way out blocked the cylinder is a pressure vessel without a valve."},
        {Kind::work,
         u"Fit the thermostatic mixing valve at the hot outlet and set it to the wanted temperature at the nearest "
         u"tap.",
         u"Scalds happen in seconds above 60 °C."},
        {Kind::work,
         u"Connect the recirculation with its own check valve, pump and timer; balance it so that the return stays "
         u"hot.",
         u"", [](const StepFacts& f) { return f.recirculation; }},
        {Kind::work,
         u"Flush, then fill through the cold inlet with the furthest hot tap open. Close the tap when water comes "
         u"without air. Look at every joint under pressure; vent again next day.",
         u"An immersion heater or condenser in air overheats: never power up before water runs from the tap."},
        {Kind::hold, u"Water side full and tight",
         u"Water runs from the furthest hot tap without air, nothing drips, safety valve lifts by hand and closes."},
        // ------------------------------------------------------------------------------------------------ pressure
        // hold
        {Kind::section, u"Pressure hold"},
        {Kind::work,
         u"The block's valves stay SHUT. Through the service port only, fill collector and lines with dry nitrogen "
         u"from a regulator, in steps: 3 bar, 10 bar, then {test_pressure} gauge. Never above {max_pressure}.",
         u"Never oxygen: with oil it explodes. Never air: it brings water. The nitrogen must not reach the block's "
         u"charge."},
        {Kind::work,
         u"Soap every joint, flares and brazed ones, and both stubs of each plate. Mark those that are good.", u""},
        {Kind::work,
         u"Shut the bottle, wait until the gas has taken the tubes' temperature, write down pressure and temperature. "
         u"Hold at least 30 minutes, longer when the sun moves; write down both again.",
         u"Pressure follows temperature: about 0.1 bar for each 1 K at 25 bar. The program corrects for it."},
        {Kind::hold, u"Pressure hold passed",
         u"The two readings agree after correction for temperature; no joint bubbles."},
        {Kind::work, u"Let the nitrogen out slowly through the port, outdoors, away from faces.",
         u"It smothers in a closed room and blows swarf into eyes."},
        // ---------------------------------------------------------------------------------------------------- evacuate
        {Kind::section, u"Evacuate"},
        {Kind::work,
         u"Evacuate collector and lines through the service port, the block's valves still SHUT. Never through the "
         u"block's own pipe. Gauge at the far end from the pump if it can be.",
         u"Pulling through the block takes its charge and oil; a gauge at the pump reads the pump."},
        {Kind::work,
         u"Pull down until the gauge stands below {vacuum} absolute and stays, then close the valve to the pump and "
         u"watch the rise for {vacuum_wait} minutes: not above {vacuum_limit}. Write both down with the temperature of "
         u"the coldest part.",
         u"A rise that levels off is water still boiling: go on pumping. A rise that does not is a leak: back to soap. "
         u"Below about 5 °C water does not leave by itself: warm the lines."},
        {Kind::work, u"Never purge with refrigerant.", u"It leaves air and water in, and is forbidden."},
        {Kind::hold, u"Vacuum holds", u"With the pump shut off the rise is within the limit of the table."},
        // ---------------------------------------------------------------------------------------------------- open up
        {Kind::section, u"Open and charge"},
        {Kind::work,
         u"Check once more that the cylinder is full of water. Then open the liquid valve slowly by a quarter turn, "
         u"listen, wait until the pressure stands, open fully; then the suction valve. Put the caps back on: they are "
         u"part of the seal.",
         u"Opened in one go, liquid strikes the compressor's oil."},
        {Kind::work, u"Go over all joints with a leak detector made for {refrigerant}.", u""},
        {Kind::work,
         u"Weigh in the extra charge of {extra_charge} {refrigerant} on a scale, as liquid, slowly, through the "
         u"service port. Write the weight on the block's label: total {total_charge}.",
         u"Charge by weight, not by pressure or by feel.", [](const StepFacts& f) { return f.extra_charge; }},
        {Kind::work,
         u"No extra charge: the run is within what the factory charge serves. Write the total of {total_charge} "
         u"{refrigerant} on the block's label.",
         u"", [](const StepFacts& f) { return !f.extra_charge; }},
        {Kind::work,
         u"Use bottle, hose and scale kept for {refrigerant} only, outdoors or with the room aired, detector on; bond "
         u"the bottle to earth. No brazing from here on.",
         u"R290 is propane: a charge left in a hose burns.", [](const StepFacts& f) { return f.flammable_a3; }},
        {Kind::work, u"Air the room while charging and keep ignition sources switched off outside it.",
         u"{refrigerant} burns slowly but it burns.", [](const StepFacts& f) { return f.flammable_a2l; }},
        // -------------------------------------------------------------------------------------------------- electrical
        {Kind::section, u"Electrical connection, by a licensed person"},
        {Kind::work,
         u"Own circuit from the board: {breaker}, residual current device {rcd}, cable {cable} copper. Supply locked "
         u"off and tested dead before the cover comes off.",
         u"Sharing a circuit trips at the first cold start."},
        {Kind::work, u"Connect earth first, and bond plate, profiles and tubes as the local wiring rules ask.",
         u"Metal on a roof is in reach of lightning and faults; the local rules decide how it is bonded."},
        {Kind::work,
         u"Measure insulation resistance, earth resistance and trip time of the residual current device; write them "
         u"down with the instrument.",
         u""},
        {Kind::hold, u"Electrical tests", u"Measured by a licensed person before first power; figures entered below."},
        // ------------------------------------------------------------------------------------------------------- start
        {Kind::section, u"Start, record, hand over"},
        {Kind::work,
         u"Switch on, set {set_point}. Listen through the first ten minutes: even hum, plate cool all over, no "
         u"knocking.",
         u"A plate cold in one strip only is short of refrigerant; a liquid knock means switch off at once."},
        {Kind::work,
         u"After 30 minutes write down suction and discharge temperature, current, water and outdoor temperature; "
         u"compare with the expected values.",
         u""},
        {Kind::work,
         u"Check drain, tundish and set-point cut-off; set the legionella programme to the local rule and tell the "
         u"client what it does.",
         u"Water kept lukewarm for weeks breeds bacteria."},
        {Kind::work,
         u"Show the client: switch-off, mixing valve, safety valve by hand, whom to call. Hand over papers, record and "
         u"this sheet.",
         u""},
        {Kind::hold, u"Hand over", u"Record entered, site clean, client shown. Signatures on the last page."},
    };
    return lines;
}

const std::vector<ToolText>& tool_texts() {
    static const std::vector<ToolText> tools = {
        {u"Spirit level, tape, chalk line, square, pencil; camera"},
        {u"Harness, lanyard and anchor; roof ladder; edge protection", [](const StepFacts& f) { return f.on_roof; }},
        {u"Ladder or tower with ties", [](const StepFacts& f) { return f.on_wall; }},
        {u"Drill, wood bits, impact driver, torque bits for the fixing screws",
         [](const StepFacts& f) { return f.into_timber; }},
        {u"Hammer drill, masonry bits, blow-out pump, torque wrench for the anchors",
         [](const StepFacts& f) { return f.on_wall && !f.into_timber; }},
        {u"Core bit or hole saw and sleeves for the passages", [](const StepFacts& f) { return f.passages; }},
        {u"Tube cutter, deburrer, bender, flaring tool, refrigeration oil"},
        {u"Torque wrench with open jaws for both flare sizes, counter-spanner"},
        {u"Dry nitrogen with regulator and safety valve, hose, soap spray"},
        {u"Vacuum pump with check valve, vacuum gauge in Pa, valve-core tool, short wide hoses"},
        {u"Pump and detector fit for flammable gas, bonding lead, vent hose, warning signs",
         [](const StepFacts& f) { return f.flammable(); }},
        {u"Leak detector made for {refrigerant}"},
        {u"Scale reading to 5 g, bottle and hoses kept for {refrigerant}",
         [](const StepFacts& f) { return f.extra_charge; }},
        {u"Contact thermometer, clamp ammeter, insulation and residual-current tester"},
        {u"Personal: helmet, goggles, gloves for sheet edges and for refrigerant, shoes with grip"},
    };
    return tools;
}

}  // namespace wg::ui::paper
