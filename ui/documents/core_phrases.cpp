// What the computing rooms say on an install sheet, as patterns. A text of theirs that changes has to change here too:
// until then it stands in English, in quotes. All that the demonstration job and tests/golden/jobs came to say when
// this was written is here; of their other cautions and stops only some.

#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"

namespace wg::ui::paper {

namespace {

// Cautions and stops.
const std::vector<const char*>& finding_phrases() {
    static const std::vector<const char*> list = {
        marked("Fill in on Visit"),
        marked("Enter the value for the place from the national annex or map"),
        marked("The snow load on the ground is not entered; %1 kN/m2 is assumed"),
        marked("The snow load on the ground is not entered; %1 kN/m2 is taken from the rule set's region for %2 m"),
        marked("The basic wind velocity is not entered; %1 m/s is assumed"),
        marked("The plates have %1 m2 a face; the block is made for %2 to %3 m2"),
        marked("Add a collector, or take a smaller block"),
        marked("The points lie almost in one line, which alone cannot keep the plate from tipping; feet %1 apart are "
               "assumed"),
        marked("Take a frame with feet at least %1 apart front to back"),
        marked("%1 has a GWP of %2. EU: split heat pumps up to 12 kW with any fluorinated gas may not be placed on the "
               "market from 2035-01-01 (self-contained ones from 2032-01-01); systems in place may go on running: "
               "verify with the maker how long spares will be had"),
        marked("%1 has a GWP of %2. EU: split systems with less than 3 kg of a listed fluorinated gas of GWP 750 or "
               "more may no longer be placed on the market from 2025-01-01; whether a plate and block joined on site "
               "count as one split system is for the maker to say: verify with the maker"),
        marked("Verify with the maker how the set is classed before offering it"),
        marked("Point %1 is used to %2 % (%3): pull %4 of %5 N, shear %6 of %7 N, under %8"),
        marked("The frame is used to %1 % (%2) with %3 kg a point"),
        marked("bracket"),
        marked("ballast, sliding"),
        marked("ballast, tipping"),
        marked("%1 wind suction"),
        marked("%1 snow"),
        marked("Take a collector with %1 points instead of %2, evenly spread (%3 %)"),
        marked("Choose \"%1\" (used to %2 %)"),
        marked("No other method at hand, no place within 3 m and no number of points up to 10 a profile holds; choose "
               "another surface. Least used: move it %1 m up (%2 %)"),
        marked("Leave as it is only if wind, snow and rafters are confirmed"),
        marked("Leave as it is only if wind and snow are confirmed"),
        marked("The profiles bend out by %1 mm in a span of %2: %3 of what is allowed"),
        marked("Take a collector with more points a profile, or a place with less wind and snow"),
        marked("Frame, plate and ballast put %1 kN/m2 on %2, which may carry %3 kN/m2 besides"),
        marked("Take an anchored frame, a deeper frame, or a place with less wind"),
        marked("The survey does not tell of the electrical supply: %1; nothing is assumed in its place"),
        marked("The survey does not tell of the water supply: %1; what depends on it is not worked out"),
        marked("way from the distribution board"),
        marked("voltage"),
        marked("frequency"),
        marked("main fuse"),
        marked("current of what runs at the same time"),
        marked("earthing system"),
        marked("static pressure"),
        marked("hardness"),
        marked("draw-off points"),
        marked("hot pipes to the taps"),
        marked("The hot pipe to %1 holds %2 l, more than 3 l"),
        marked("Take a recirculation loop or trace heating, a smaller bore, or a spot nearer to the tap"),
        marked("On %1 m with a lift of %2 m the liquid loses %3 kPa, worth %4 K; it leaves the condenser only %5 K "
               "below boiling"),
        marked("Ask the maker whether the expansion device takes flash gas at this height, or bring collector and "
               "block nearer in height"),
        marked("The system holds %1 kg of flammable %2; a room of %3 m2 takes %4 kg when it leaves at %5 m"),
        marked("The system holds %1 kg of flammable %2, and there is a source of ignition in the room"),
        marked("Remove the source (open flame, sparking switchgear), or choose another spot or refrigerant"),
        marked("Choose a room of %1 m2 or more, a shorter run, or a block with less charge; or openings that cannot be "
               "shut to a neighbouring room with which it makes up %2 m2, %3 cm2 at the floor and half as much again "
               "above 1.5 m (class A3: where the edition in force lets them count)"),
        marked("Filled, cylinder and block weigh %1 kg; the %2 kg of the floor are only assumed"),
        marked("Find out what the floor carries"),
        marked("Collector or lines come within %1 m of the lightning protection; %2 m are asked for in the usual "
               "class, %3 m in the severest"),
        marked("Move the collector, or have a lightning protection specialist join it in or move the conductor"),
        marked("The safety valve's discharge is %1 m long, more than the tables hold"),
        marked("Bring a drain nearer to the cylinder, or choose another spot"),
        marked("The method screws into rafters and none are surveyed on %1; points are drawn where the collector has "
               "them"),
        marked("Measure the first rafter and the spacing"),
        marked("The collector reaches beyond the outline of %1"),
    };
    return list;
}

const std::vector<const char*>& other_phrases() {
    static const std::vector<const char*> list = {
        // Edges and places.
        marked("lower"),
        marked("upper"),
        marked("left"),
        marked("right"),
        marked("lower (from corner %1)"),
        marked("upper (from corner %1)"),
        marked("left (from corner %1)"),
        marked("right (from corner %1)"),
        marked("pipe run"),
        marked("Invented firm, for demonstration"),  // the command line's
        marked("Frame"),
        marked("bend"),
        marked("roof passage"),
        marked("wall passage"),
        marked("floor passage"),
        // Names of readings: core/job/record_words.cpp.
        marked("pressure hold, start"),
        marked("pressure hold, end"),
        marked("evacuation, level reached"),
        marked("evacuation, level after closing the valve"),
        marked("charge added"),
        marked("suction temperature"),
        marked("discharge temperature"),
        marked("suction gas"),
        marked("suction pressure"),
        marked("discharge gas"),
        marked("discharge pressure"),
        marked("supply current"),
        marked("water temperature"),
        marked("outdoor temperature"),
        marked("insulation resistance"),
        marked("earth resistance"),
        marked("residual-current device, trip time"),
        marked("first heating, start"),
        marked("first heating, end"),
        marked("condenser to cylinder wall, resistance"),
        marked("protective conductor, continuity"),
        marked("loop impedance"),
        marked("supply voltage"),
        marked("cold water pressure"),
        marked("cylinder full, vented and tight"),
        marked("safety valve lifted by hand"),
        marked("hot water at the tap"),
        marked("set-point as set"),
        marked("hygiene run as set"),
        marked("serial number"),
        // Parts: units, and why they are on the list.
        marked("pc"),
        marked("collectors placed in the layout"),
        marked("one a system"),
        marked("1 fixing point on the set-out drawing"),
        marked("%1 fixing points on the set-out drawing"),
        marked("one for each collector on a frame"),
        marked("liquid line: run of %1 m one way, cutting allowance included"),
        marked("suction line: run of %1 m one way, cutting allowance included"),
        marked("small and suction line of %1 m each, 5 % for cutting; wall against condensation"),
        marked("suction line of %1 m, 5 % for cutting; wall against condensation"),
        marked("small line of %1 m, 5 % for cutting; wall against condensation"),
        marked("%1; sold by %2 m"),
        marked("%1; sold by %2 pc"),
        marked("%1; sold by %2 kg"),
        marked("one at the block and one at each collector"),
        marked("each collector after the first"),
        marked("one every %1 m"),
        marked("%1; tube of this size is not bent by hand"),
        marked("1 bend"),
        marked("%1 bends"),
        marked("brazing under nitrogen, flushing and pressure hold"),
        marked("1 such passage on the route"),
        marked("%1 such passages on the route"),
        marked("run of %1 m is beyond the %2 m of the factory charge: %3 g for each further metre"),
        marked("%1 m one way to the supply; voltage drop %2 %"),
        marked("%1 m one way to the supply; voltage drop %2 %, carries %3 A as laid"),
        marked("own circuit for the block, as its maker asks"),
        marked("own circuit for the block"),
        marked("own circuit for the block, type %1"),
        marked("within reach of the block, for service"),
        marked("cold, hot and shut-off at the cylinder"),
        marked("valve opens at %1 bar"),
        marked("one a cylinder"),
        marked("keeps the cold water to %1 bar at the cylinder"),
        marked("takes up %1 l of expansion at a pre-charge of %2 bar"),
        marked("stored water is hotter than the tap may be"),
        marked("discharge of the safety valve to the drain"),
        marked("discharge of the safety valve to the drain: %1 mm to the tundish, %2 mm from there"),
        marked("to be made: %1"),
        marked("electrical supply, %1"),
        marked("earth, %1"),
        marked("cold water, %1"),
        marked("hot water, %1"),
        marked("drain, %1"),
        marked("extra of this choice"),
        // The pump that does not get there.
        marked("not reached within 72 hours"),
        marked("%1 with water at %2 deg C"),
        marked("evaporating temperature below the envelope"),
        marked("condensing temperature above the envelope"),
        marked("pressure ratio above the envelope"),
        marked("discharge temperature above the envelope"),
        marked("the compressor's data end before this operating point"),
        marked("protective earth, %1"),
        marked("recirculation, %1"),
        // Texts of the price list that comes with the program.
        marked("Collector %1, %2 m2"),
        marked("Collector %1, %2 m2, tested"),
        marked("Block %1, %2, with control"),
        marked("Cylinder %1, %2 l, stainless"),
        marked("Cylinder %1, %2 l, enamelled"),
        marked("Tile hook with two timber screws and clamp"),
        marked("Double-ended screw with sleeve, seals and clamp"),
        marked("Wall bracket with sleeve anchor and mortar"),
        marked("Frame foot with anchor"),
        marked("Ballast tray with mat and slabs for one foot"),
        marked("Seam clamp with bolt"),
        marked("Frame for one collector on a level surface, tilt adjustable"),
        marked("Copper tube %1 mm, EN 12735-1, coil"),
        marked("Copper tube %1 mm"),
        marked("Joint set for one pair of tube ends"),
        marked("Branch set to a further collector, liquid and suction"),
        marked("Insulated pipe clip"),
        marked("Brazing elbow %1 mm"),
        marked("Closed-cell insulation %1 mm wall, weatherproof outdoors"),
        marked("Roof passage with flexible flashing"),
        marked("Wall sleeve with seals and cover"),
        marked("Floor sleeve with fire and sound seal"),
        marked("Refrigerant %1, weighed in"),
        marked("Dry nitrogen for brazing, flushing and pressure hold, use of one bottle"),
        marked("Cable %1 mm2, copper"),
        marked("Circuit breaker %1"),
        marked("Residual-current device %1 mA"),
        marked("Isolating switch beside the block"),
        marked("Thermostatic mixing valve 3/4"),
        marked("Safety group with valve, check valve and shut-off"),
        marked("Pressure reducing valve with gauge and strainer 3/4"),
        marked("Tundish, trap and discharge pipe to the drain"),
        marked("Expansion vessel for drinking water, %1 l"),
        marked("Connection set cold, hot and shut-off"),
        marked("Bringing a missing service to the spot"),
        marked("Drain pan under the cylinder"),
        marked("Recirculation pump with timer"),
        marked("Roof ladder and edge protection, hire and setting up"),
        marked("Taking away and recycling the old cylinder"),
        marked("Electrician's certificate for the new circuit"),
    };
    return list;
}

}  // namespace

const std::vector<const char*>& core_phrases() {
    static const std::vector<const char*> all = [] {
        std::vector<const char*> list = other_phrases();
        list.insert(list.end(), finding_phrases().begin(), finding_phrases().end());
        list.insert(list.end(), offer_phrases().begin(), offer_phrases().end());
        return list;
    }();
    return all;
}

}  // namespace wg::ui::paper
