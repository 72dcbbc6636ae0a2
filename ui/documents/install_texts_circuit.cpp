// From the lines to the hand-over. Common practice of refrigeration and plumbing fitters in our own words, no published
// source but where one is named; makers' sheets and local codes go first.

#include "ui/common/paper_words.h"
#include "ui/documents/install_texts.h"

namespace wg::ui::paper {

using enum Step::Kind;
using enum Who;
using Facts = const StepFacts&;

const std::vector<StepText>& texts_of_lines_and_water() {
    static const std::vector<StepText> lines = {
        {section, anybody, marked("Refrigerant lines")},
        {work, anybody,
         marked(
             "Uncoil both tubes, dehydrated and capped as delivered, by rolling along the floor, never by pulling the "
             "coil open. Slide the insulation on before anything is joined: {insulation}, joints glued, no gaps."),
         marked("A flattened tube starves the plate; a gap in the insulation drips on the ceiling below.")},
        {work, anybody,
         marked(
             "Lay the run as drawn, bends with a bender, clips every 1.0 m level and 1.5 m upright. Caps stay on and "
             "come off only when the joint is made."),
         marked("Damp and dirt that get in now come back as a blocked valve or a burnt motor.")},
        {work, anybody, marked("Let the suction line fall evenly to the block, without sags that hold oil."),
         marked("Oil that lies in a sag is missing in the compressor."),
         [](Facts f) { return !f.collector_below && !f.oil_traps; }},
        {work, anybody,
         marked("Bend the oil traps into the suction line where the cut list names them; elsewhere no sags."),
         marked("The gas lifts oil in short slugs from a trap; a sag elsewhere only catches it."),
         [](Facts f) { return f.oil_traps; }},
        {work, anybody,
         marked(
             "The plate hangs below the block: lay the suction line with an oil trap at its foot and no other sags."),
         marked("Oil has to be lifted by the gas in short slugs; a sag higher up catches it."),
         [](Facts f) { return f.collector_below && !f.oil_traps; }},
        {work, anybody,
         marked(
             "The plates stand side by side in the circuit: branch both lines so that each plate has the same length "
             "of tube, branches level, none above the other."),
         marked("The plate with the shorter way takes the refrigerant, the other stays dry and warm."),
         [](Facts f) { return f.parallel; }},
        {work, anybody,
         marked("The plates stand one after the other in the circuit: liquid into the first, its suction into the "
                "liquid connection of the next, suction line from the last."),
         marked("Crossed, one plate is passed by, and the test of tightness does not show it."),
         [](Facts f) { return f.series; }},
        {work, anybody,
         marked("The expansion device sits at the collector: set it upright as its arrow says, bulb clamped on the "
                "suction tube and insulated, wet cloth round it where heat is used."),
         marked("A bulb in the sun or the wind reads the weather instead of the tube."),
         [](Facts f) { return f.expansion_at_collector; }},
        {work, anybody, marked("Cut to length with a tube cutter, deburr with the tube's end held down, wipe clean."),
         marked("Swarf ends in the expansion valve.")},
        {work, anybody,
         marked("Slide the nut on, then flare. Look at the flare: even all round, shiny, no crack, no burr."),
         marked("A nut forgotten means cutting again; a cracked flare holds for the test and leaks in winter."),
         [](Facts f) { return f.flared; }},
        {work, anybody,
         marked(
             "Oil the flare's back with refrigeration oil, turn the nut on by hand over all its thread, then tighten "
             "with torque wrench and second spanner: liquid {liquid_od} {torque_liquid}, suction {suction_od} "
             "{torque_suction}. Verify with the fitting's maker."),
         marked("Too loose leaks at once, too tight cracks and leaks later. By feel is neither."),
         [](Facts f) { return f.flared; }},
        {work, refrigerants,
         marked("Braze what is not flared with dry nitrogen flowing through the tube, fire watch and extinguisher at "
                "hand, flame kept off seals and insulation."),
         marked("Without nitrogen the tube scales inside and the scale travels to the valve."),
         [](Facts f) { return f.brazed; }},

        {section, anybody, marked("Heat pump and cylinder")},
        {work, two_persons,
         marked("Stand the cylinder at its spot, plumb, on its feet, with room to draw anode and heater."),
         marked("Once it is full nobody moves it.")},
        {work, anybody, marked("Check the anode: fitted, wired where it has a wire, tight."),
         marked("Transport loosens it."), [](Facts f) { return f.anode; }},
        {work, anybody,
         marked(
             "Look at condenser, flange and seal seat: clean, dry, no scratch; the seal new, in its groove, without a "
             "twist."),
         marked("A reused or twisted seal weeps behind the insulation for years."), [](Facts f) { return f.immersed; }},
        {work, two_persons,
         marked(
             "Lower the condenser in straight, without letting it strike or lean on the wall; it must touch no other "
             "metal inside."),
         marked("Metal on metal in drinking water is a battery: the softer one is eaten through."),
         [](Facts f) { return f.immersed; }},
        {work, anybody,
         marked("Before water comes in, measure with a continuity meter between condenser and cylinder wall: no "
                "contact. Enter it as '{wall_contact}'. With contact take it out and set it again."),
         marked("Once the cylinder is full the meter reads the water, and the fault stays until it leaks."),
         [](Facts f) { return f.immersed; }},
        {work, anybody,
         marked(
             "Tighten the flange's screws crosswise: opposite screws in turn, three rounds (hand-tight, half, full), "
             "to the cylinder maker's torque; go round once more after the first heating."),
         marked("One side first tips the flange and pinches the seal."), [](Facts f) { return f.immersed; }},
        {work, anybody,
         marked("Check that the wrapped condenser sits tight on the shell with its paste or band unbroken; do not pull "
                "on its tubes."),
         marked("Air between coil and shell costs heat all its life."), [](Facts f) { return !f.immersed; }},
        {hold, anybody, marked("Condenser and cylinder"),
         marked("No contact between condenser and cylinder wall, flange tightened in three rounds, anode in place."),
         [](Facts f) { return f.immersed; }},

        {section, anybody, marked("Water side")},
        {work, anybody,
         marked(
             "Fit in the direction of flow: stop valve, reducing valve, safety group with check valve and safety "
             "valve {safety_valve}, expansion vessel pre-charged to {precharge}, open tundish to the drain. Reducing "
             "valve and safety group always. No stop valve between safety valve and cylinder."),
         marked(
             "Water grows when heated. With its way out blocked the cylinder is a pressure vessel without a valve.")},
        {work, anybody,
         marked(
             "Fit the thermostatic mixing valve at the hot outlet and set it to the wanted temperature at the nearest "
             "tap."),
         marked("Scalds happen in seconds above 60 °C."), [](Facts f) { return f.mixing_valve; }},
        {work, anybody,
         marked(
             "Connect the recirculation to its own port with its own check valve, pump and timer; balance it so that "
             "the return stays hot."),
         marked("Without a check valve cold water runs backwards to the tap."),
         [](Facts f) { return f.recirculation; }},
        {work, anybody,
         marked(
             "Flush, then fill through the cold inlet with the farthest hot tap open. Close the tap when water comes "
             "without air. Look at every joint under pressure; vent again next day. Enter '{cold_pressure}'."),
         marked("A heater or condenser in air overheats: never power up before water runs from the tap.")},
        {work, anybody, marked("Lift the safety valve by hand: it runs to the tundish and closes again."),
         marked("A valve that sticks now will stick when it matters.")},
        {hold, anybody, marked("Water side full and tight"),
         marked("Water runs from the farthest hot tap without air and nothing drips: '{water_vented}' and "
                "'{safety_valve_lift}' are entered.")},
    };
    return lines;
}

const std::vector<StepText>& texts_of_tests_and_start() {
    static const std::vector<StepText> lines = {
        {section, anybody, marked("Pressure hold")},
        {work, refrigerants,
         marked(
             "The block's valves stay SHUT: its charge is behind them. Through the service port only, fill collector "
             "and lines with dry nitrogen from a regulator, in steps: 3 bar, 10 bar, then {test_pressure} gauge. "
             "Never above {max_pressure}."),
         marked("Never oxygen: with oil it explodes. Never air: it brings water. Nitrogen that gets into the block "
                "spoils its charge.")},
        {work, anybody,
         marked("Soap every joint, flares and brazed ones, and both stubs of each plate. Mark those that are good."),
         marked("The joint without soap is the one that leaks.")},
        {work, anybody,
         marked("Shut the bottle, wait until the gas has taken the tubes' temperature, enter '{pressure_hold_start}' "
                "with pressure and temperature. Hold at least 30 minutes, longer when the sun moves; enter "
                "'{pressure_hold_end}'."),
         marked("Pressure follows temperature: about 0.1 bar for each 1 K at 25 bar. The program corrects for it.")},
        {hold, anybody, marked("Pressure hold passed"),
         marked("The two readings agree after correction for temperature; no joint bubbles.")},
        {work, refrigerants, marked("Let the nitrogen out slowly through the port, outdoors, away from faces."),
         marked("It smothers in a closed room and blows swarf into eyes.")},

        {section, anybody, marked("Evacuate")},
        {work, refrigerants,
         marked(
             "Evacuate collector and lines through the service port, the block's valves still SHUT. Never through the "
             "block's own pipe. Gauge at the far end from the pump if it can be."),
         marked("Pulling through the block takes its charge and oil; a gauge at the pump reads the pump.")},
        {work, refrigerants,
         marked("Pull down until the gauge stands below {vacuum} absolute and stays: '{vacuum_level}'. Then close the "
                "valve to the pump and watch the rise for {vacuum_wait} minutes: '{vacuum_after_rise}' not above "
                "{vacuum_limit}. Enter both with the temperature of the coldest part."),
         marked("A rise that levels off is water still boiling: go on pumping. A rise that does not is a leak: back to "
                "soap. Below about 5 °C water does not leave by itself: warm the lines.")},
        {work, anybody, marked("Never purge with refrigerant."),
         marked("It leaves air and water in, and is forbidden.")},
        {hold, anybody, marked("Vacuum holds"),
         marked("With the pump shut off the rise is within the limit of the table.")},

        {section, anybody, marked("Charge and open")},
        {work, refrigerants,
         marked("Use bottle, hose and scale kept for {refrigerant} only, outdoors or with the room aired, detector on; "
                "bond the bottle to earth. No brazing from here on."),
         marked("R290 is propane: a charge left in a hose burns."), [](Facts f) { return f.flammable_a3; }},
        {work, refrigerants,
         marked("Air the room while charging and keep ignition sources switched off outside it. No brazing from here "
                "on."),
         marked("{refrigerant} burns slowly but it burns."), [](Facts f) { return f.flammable_a2l; }},
        {work, refrigerants,
         marked("Weigh in the extra charge of {extra_charge} {refrigerant} on a scale, as liquid, slowly, through the "
                "service port into the evacuated lines, valves still shut. Enter it as '{charge_added}' and write the "
                "total of {total_charge} on the block's label."),
         marked("Charge by weight, not by pressure or by feel."), [](Facts f) { return f.extra_charge; }},
        {work, refrigerants,
         marked("No extra charge: the run is within what the factory charge serves. Write the total of {total_charge} "
                "{refrigerant} on the block's label."),
         marked("More than the plate can boil off goes to the compressor as liquid."),
         [](Facts f) { return !f.extra_charge; }},
        {work, refrigerants,
         marked("Check once more that the cylinder is full of water. Then open the liquid valve slowly by a quarter "
                "turn, listen, wait until the pressure stands, open fully; then the suction valve. Put the caps back "
                "on: they are part of the seal."),
         marked(
             "Opened in one go, liquid strikes the compressor's oil; with an empty cylinder the condenser has nothing "
             "to give its heat to.")},
        {work, anybody, marked("Go over all joints with a leak detector made for {refrigerant}."),
         marked("Nitrogen does not find every leak that refrigerant finds.")},

        {section, anybody, marked("Electrical connection")},
        {work, electrician,
         marked(
             "Own protected circuit from the board: breaker, residual current device and copper cable as listed under "
             "'Cylinder's place'. Supply locked off and tested dead before the cover comes off."),
         marked("A shared circuit trips at the first cold start.")},
        {work, electrician,
         marked("Connect earth first, and bond plate, profiles and tubes as the local wiring rules ask."),
         marked("Metal on a roof is in reach of lightning and faults; the local rules decide how it is bonded.")},
        {work, electrician,
         marked("Measure before first power and enter with the instrument: '{protective_conductor}', "
                "'{insulation_resistance}', '{earth_resistance}', '{loop_impedance}', '{residual_current_trip}', "
                "'{supply_voltage}'."),
         marked("What is not measured is not safe.")},
        {hold, electrician, marked("Electrical tests"),
         marked("Measured by a licensed person before first power; figures entered.")},

        {section, anybody, marked("Start, record, hand over")},
        {work, anybody,
         marked("Enter '{heating_start}'. Switch on, set {set_point}. Listen through the first ten minutes: even hum, "
                "plate cool all over, no knocking."),
         marked("A plate cold in one strip only is short of refrigerant; a liquid knock means switch off at once.")},
        {work, anybody,
         marked("After 30 minutes enter '{suction_temperature}', '{discharge_temperature}', '{supply_current}', "
                "'{water_temperature}' and '{outdoor_temperature}', and say whether the plate lies in sun or shade; "
                "compare with the expected values."),
         marked("The first figures are what every later service is held against.")},
        {work, anybody,
         marked(
             "Check drain and tundish. Enter '{set_point_reading}' and '{hygiene_setting}' to the local rule and tell "
             "the client what the hygiene run does."),
         marked("Water kept lukewarm for weeks breeds bacteria.")},
        {work, anybody, marked("At the set-point enter '{heating_end}' and, at the nearest tap, '{tap_temperature}'."),
         marked("A tap hotter than agreed scalds; a heating that took too long shows a fault.")},
        {work, anybody,
         marked(
             "Show the client: switch-off, mixing valve, safety valve by hand, whom to call. Hand over papers, record "
             "and this sheet."),
         marked("What the client was not shown the client will ring about on a Sunday.")},
        {hold, anybody, marked("Hand over"),
         marked("Record entered, site clean, client shown. Signatures on the last page.")},
    };
    return lines;
}

std::vector<StepText> step_texts() {
    std::vector<StepText> all;
    for (const auto* part :
         {&texts_of_access_and_place(), &texts_of_fixing(), &texts_of_lines_and_water(), &texts_of_tests_and_start()})
        all.insert(all.end(), part->begin(), part->end());
    return all;
}

const std::vector<ToolText>& tool_texts() {
    static const char* const to_hand = marked("To hand at the side door");
    static const char* const rack = marked("Roof rack and long tray");
    static const char* const drawers = marked("Workshop drawers");
    static const char* const cold_case = marked("Refrigeration case");
    static const char* const bottles = marked("Bottles upright, ventilated, strapped");
    static const char* const meters = marked("Electrical case");
    static const std::vector<ToolText> tools = {
        {to_hand, marked("Spirit level, tape, chalk line, square, pencil; compass, inclinometer; camera")},
        {to_hand, marked("Personal: helmet, goggles, gloves for sheet edges and for refrigerant, shoes with grip")},
        {rack, marked("Harness, lanyard and anchor; roof ladder; edge protection"), [](Facts f) { return f.on_roof; }},
        {rack, marked("Ladder or tower with ties"), [](Facts f) { return f.on_wall; }},
        {rack, marked("Broom, scale for the ballast, hoist or barrow for the slabs"),
         [](Facts f) { return f.kind == FixingKind::ballast; }},
        {drawers, marked("Drill, wood bits, impact driver, torque bits for the fixing screws"),
         [](Facts f) { return f.into_timber; }},
        {drawers, marked("Angle grinder with stone disc for the tiles, goggles, dust mask"),
         [](Facts f) { return f.hook_on_tiles(); }},
        {drawers, marked("Torque wrench for the clamps"), [](Facts f) { return f.kind == FixingKind::seam_clamp; }},
        {drawers, marked("Hammer drill, masonry bits, blow-out pump, brush, torque wrench for the anchors"),
         [](Facts f) { return f.wall_anchor() || f.frame_anchor(); }},
        {drawers, marked("Core bit or hole saw and sleeves for the passages"), [](Facts f) { return f.passages; }},
        {cold_case, marked("Tube cutter, deburrer, bender, flaring tool, refrigeration oil"),
         [](Facts f) { return f.flared; }},
        {cold_case, marked("Tube cutter, deburrer, bender, refrigeration oil"), [](Facts f) { return !f.flared; }},
        {cold_case, marked("Torque wrench with open jaws for the flare nuts, second spanner"),
         [](Facts f) { return f.flared; }},
        {cold_case, marked("Vacuum pump with check valve, vacuum gauge in Pa, valve-core tool, short wide hoses")},
        {cold_case, marked("Pump and detector fit for flammable gas, bonding lead, vent hose, warning signs"),
         [](Facts f) { return f.flammable(); }},
        {cold_case, marked("Leak detector made for {refrigerant}")},
        {cold_case, marked("Scale reading to 5 g, bottle and hoses kept for {refrigerant}"),
         [](Facts f) { return f.extra_charge; }},
        {bottles, marked("Brazing set, filler rods, nitrogen flow meter, extinguisher"),
         [](Facts f) { return f.brazed; }},
        {bottles, marked("Dry nitrogen with regulator and safety valve, hose, soap spray")},
        {meters, marked("Continuity meter, torque wrench for the flange"), [](Facts f) { return f.immersed; }},
        {meters, marked("Contact thermometer, clamp ammeter, insulation, loop and residual-current tester")},
    };
    return tools;
}

}  // namespace wg::ui::paper
