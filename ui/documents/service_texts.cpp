#include "ui/documents/service_texts.h"

namespace wg::ui::paper {

namespace {

using Part = Step::Kind;
using Facts = ServiceFacts;

}  // namespace

const std::vector<ServiceText>& service_texts() {
    static const std::vector<ServiceText> lines = {
        {Part::section, u"Before anything is switched off"},
        {Part::work,
         u"Ask the client: enough hot water, new noises, drips, bills higher than before, anything built or planted "
         u"near "
         u"the plate.",
         u"People notice first what instruments show later."},
        {Part::work, u"Read the block's fault memory and the meters; write both down.",
         u"Switching off can clear the memory."},
        {Part::work,
         u"Keep flames and sparks away, air the room, detector for {refrigerant} on, low down, before the block is "
         u"opened.",
         u"{refrigerant} ({safety_class}) burns and is heavier than air.",
         [](const Facts& f) { return f.place.flammable(); }},
        // ------------------------------------------------------------------------------------------------------- plate
        {Part::section, u"Plate and fixings"},
        {Part::work, u"Secure the way to the plate as on page 1. Not in wind, wet or frost.", u"",
         [](const Facts& f) { return f.place.on_roof || f.place.on_wall; }},
        {Part::work,
         u"Take leaves, moss and nests away from front, rear and lower edge. Wash with clear water and a soft brush; "
         u"no "
         u"pressure washer, no solvent, no steel.",
         u"Moss keeps metal wet; a jet bends the sheet and drives water under the covering."},
        {Part::work,
         u"Look over the plate, its edges and stubs: dents, bare metal, white or green bloom, oil. Photograph what is "
         u"new.",
         u"Oil on the outside is refrigerant that has left."},
        {Part::work,
         u"Check every fixing point by hand and with the torque wrench: {torque}. Renew what is rusted or loose.",
         u"A point that works loose hands its load to its neighbours.", [](const Facts& f) { return f.torque_told; }},
        {Part::work, u"Check every fixing point by hand: nothing moves, nothing is rusted, no tile or seam is cracked.",
         u"A point that works loose hands its load to its neighbours.",
         [](const Facts& f) { return !f.torque_told && !f.ballast; }},
        {Part::work, u"Count the ballast, check mats and level; see that water runs off under the frame.",
         u"Ballast that was borrowed is missed in the next storm.", [](const Facts& f) { return f.ballast; }},
        {Part::work,
         u"Check seals of points and passages from outside, and from inside with a lamp: no stain, no daylight.",
         u"Water that gets in shows a year later and a metre lower.",
         [](const Facts& f) { return f.passage || f.place.on_roof; }},
        // ------------------------------------------------------------------------------------------------------- lines
        {Part::section, u"Lines and insulation"},
        {Part::work,
         u"Follow both tubes from plate to block: clips tight, nothing rubs, insulation closed, cover against sun and "
         u"beaks whole, joints glued. Mend gaps at once.",
         u"A gap drips in summer and costs heat in winter."},
        {Part::work, u"Look at every flare and valve cap for oil; caps on and tight.", u"The cap is part of the seal."},
        // ---------------------------------------------------------------------------------------------------------
        // leak
        {Part::section, u"Refrigerant circuit, by a certified person"},
        {Part::work,
         u"Leak check: joints, stubs and valves with a detector made for {refrigerant}, and by the running values "
         u"below. "
         u"It is due at least every {leak_months} months: {leak_why}.",
         u"Enter day, person, certificate, result and every gram in the register. Source: {leak_source}.",
         [](const Facts& f) { return f.leak_duty; }},
        {Part::work,
         u"Check joints, stubs and valves with a detector made for {refrigerant}. No regular leak check is asked for "
         u"by "
         u"the rule set.",
         u"", [](const Facts& f) { return !f.leak_duty; }},
        {Part::work,
         u"Connect no manifold unless the running values ask for it. Found a leak: recover, mend, hold with nitrogen, "
         u"evacuate, weigh {total_charge} in; check again after a day and within a month.",
         u"Each connection loses gas. Topping up hides a leak."},
        {Part::work,
         u"Check the room: ventilation open, no source of ignition brought in, warning label readable, detector "
         u"answers "
         u"its test gas.",
         u"The room was judged for {total_charge} of {refrigerant} as it was surveyed.",
         [](const Facts& f) { return f.place.flammable(); }},
        // ---------------------------------------------------------------------------------------------------
        // electrical
        {Part::section, u"Electrical, by a licensed person"},
        {Part::work,
         u"Lock off and test dead. Tighten terminals, look for heat marks, check bonding of plate and tubes.",
         u"Terminals loosen with every winter."},
        {Part::work,
         u"Measure insulation resistance of block and immersion heater apart, then trip time at {rcd}; write both "
         u"down.",
         u"A heater that takes up water shows here first."},
        // --------------------------------------------------------------------------------------------------------
        // water
        {Part::section, u"Water side and cylinder"},
        {Part::work, u"Read the cold pressure with no tap open; compare with that at the start.", u""},
        {Part::work,
         u"Check the setting of the reducing valve and clean its strainer: shut, release, rinse, watch it close.",
         u"A strainer full of sand starves the tap and wears the seat.",
         [](const Facts& f) { return f.reducing_valve; }},
        {Part::work, u"Clean the strainer in the cold inlet: shut, release, rinse, vent.", u"",
         [](const Facts& f) { return !f.reducing_valve; }},
        {Part::work,
         u"Shut the expansion vessel off, empty its water side, measure the pre-charge: {precharge}. Fill up with "
         u"nitrogen or air.",
         u"A vessel without gas makes the safety valve drip at each heating."},
        {Part::work,
         u"Lift the safety valve ({safety_valve}) by hand: it runs freely to the tundish and closes dry. It drips on: "
         u"change it.",
         u"A valve that is never lifted grows fast with scale."},
        {Part::work, u"Pour a litre into tundish and condensate drain: both run off, trap full, hose not kinked.",
         u"Under the block water finds the wires."},
        {Part::work,
         u"Draw the anode ({anode}), after shutting the cold inlet and releasing pressure. Change it when worn to a "
         u"third "
         u"of its diameter; new seal. Headroom short: chain anode.",
         u"When it is gone the cylinder is eaten in its place.", [](const Facts& f) { return f.sacrificial_anode; }},
        {Part::work, u"Check the powered anode ({anode}): lamp or current as its maker says, plug in, wire whole.",
         u"Unplugged it protects nothing.", [](const Facts& f) { return f.powered_anode; }},
        {Part::work, u"Draw off at the lowest cock until clear. Hard water: look at the immersion heater for scale.",
         u"Scale and mud lie where the condenser gives its heat."},
        {Part::work, u"Check the flange of the condenser: dry, its screws even, no rust trail.", u"",
         [](const Facts& f) { return f.place.immersed; }},
        {Part::work,
         u"Measure mixed water at the nearest tap. Turn the mixing valve from end to end and back, clean its "
         u"strainers, "
         u"measure again.",
         u"A valve that sticks scalds on the day it is needed.", [](const Facts& f) { return f.mixing_valve; }},
        {Part::work, u"Check pump, timer and check valve of the recirculation; measure the return.", u"",
         [](const Facts& f) { return f.recirculation; }},
        {Part::work,
         u"See in the memory that the hygiene runs reached {hygiene}, or start one and measure at the outlet.",
         u"A run that never gets there is no run.", [](const Facts& f) { return f.hygiene; }},
        // ----------------------------------------------------------------------------------------------------------
        // run
        {Part::section, u"Run, read, compare"},
        {Part::work,
         u"Draw hot water until the pump starts, let it run 30 minutes, read the values below and hold them against "
         u"expected band and first reading.",
         u"One value outside: read again. Two: look for the cause before you leave."},
        {Part::work, u"Set clock, windows and set-point ({set_point}) as the client wants them, and say what they do.",
         u"", [](const Facts& f) { return f.clock; }},
        {Part::work, u"Set the set-point ({set_point}) as the client wants it.", u"",
         [](const Facts& f) { return !f.clock; }},
        {Part::work,
         u"Enter readings and services in the record, with photographs. Clean up, tell the client what was found and "
         u"when "
         u"to look again.",
         u""},
    };
    return lines;
}

const std::vector<ServicePart>& service_parts() {
    static const std::vector<ServicePart> parts = {
        {u"Anode: {anode}; chain anode where headroom is short; seal",
         [](const Facts& f) { return f.sacrificial_anode; }},
        {u"Seals for flange, strainer and valves; safety valve {safety_valve}"},
        {u"Cartridge or strainers for the mixing valve", [](const Facts& f) { return f.mixing_valve; }},
        {u"Insulation as fitted, glue, cover against sun; clips"},
        {u"Fixing parts as fitted: {fixing}; sealing for the covering"},
        {u"Harness, roof ladder, edge protection", [](const Facts& f) { return f.place.on_roof; }},
        {u"Ladder or tower with ties", [](const Facts& f) { return f.place.on_wall; }},
        {u"Torque wrench for {torque}", [](const Facts& f) { return f.torque_told; }},
        {u"Soft brush, hose, bucket; hose for draining the cylinder"},
        {u"Leak detector made for {refrigerant}; soap spray; new caps and flare seals"},
        {u"Detector, pump and hoses fit for flammable gas; test gas; warning labels",
         [](const Facts& f) { return f.place.flammable(); }},
        {u"Contact thermometer, clamp ammeter, insulation and residual-current tester, pressure gauge for water and "
         u"vessel"},
        {u"Register and certificate of the person who checks for leaks", [](const Facts& f) { return f.leak_duty; }},
    };
    return parts;
}

}  // namespace wg::ui::paper
