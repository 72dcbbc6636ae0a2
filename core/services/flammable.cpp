// Flammable refrigerant against the room it could leak into.
#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

const char* const area_source = "IEC 60335-2-40 annex GG, EN 378-1";
const char* const opening_source = "IEC 60335-2-40:2018, GG.2 (openings for natural ventilation)";
constexpr double practical_share = 0.2;  ///< of the lower flammability limit, EN 378-1

/// g/mol.
double molar_mass(Refrigerant refrigerant) noexcept {
    switch (refrigerant) {
        case Refrigerant::r134a: return 102.03;
        case Refrigerant::r290: return 44.10;
        case Refrigerant::r1234yf: return 114.04;
        case Refrigerant::r513a: return 108.43;
    }
    return 0.0;
}

/// Up to the next 0.1 m2, so that the figure asked for is enough.
std::string square_metres_up(double area_m2) {
    return fixed(std::ceil(area_m2 * 10.0 - 1e-9) / 10.0, 1) + " m2";
}
std::string square_centimetres_up(double area_m2) {
    return fixed(10.0 * std::ceil(area_m2 * 1e3 - 1e-9), 0) + " cm2";
}

struct Case {
    const Input& input;
    const SpotFindings& findings;
    double charge_kg = 0.0;
    bool mildly = false;
    RoomCharge room;
    std::string has;  ///< "The system holds 0.360 kg of flammable R290"
};

std::string openings(const Case& c, const RoomAir& air) {
    return "openings that cannot be shut to a neighbouring room with which it makes up " +
           square_metres_up(c.room.least_area_m2) + ", " + square_centimetres_up(air.opening_m2) +
           " at the floor and half as much again above 1.5 m" +
           (c.mildly ? "" : " (class A3: where the edition in force lets them count)");
}

void too_much_for_the_room(const Case& c, const RoomAir& air) {
    const CylinderSpot& spot = c.input.spot;
    const std::string rule = "Charge of flammable refrigerant in a room";
    if (c.charge_kg > c.room.outside_kg) {
        c.findings.add(Severity::stop, Stage::layout, "room.charge-too-large",
                       c.has + ", more than the " + fixed(c.room.outside_kg, 2) + " kg allowed indoors in any room",
                       "Choose a block with less charge or another refrigerant", rule, area_source);
        return;
    }
    if (c.charge_kg <= c.room.room_kg) return;
    const std::string short_of = c.has + "; a room of " + fixed(spot.floor_area_m2, 1) + " m2 takes " +
                                 fixed(c.room.room_kg, 3) + " kg when it leaves at " +
                                 fixed(c.input.block.release_height_m, 1) + " m";
    if (c.input.block.ventilated_enclosure) {
        c.findings.add(Severity::caution, Stage::layout, "room.charge-enclosure",
                       short_of + "; the block leads its own leaks outdoors, lines and joints in the room do not",
                       "Make no joint in the room, lead the lines to the block in one piece or in a sleeve open to "
                       "outdoors, and keep the maker's proof of the enclosure with the job",
                       "Ventilated enclosure of the block", area_source);
    } else if (spot.ventilated) {
        c.findings.add(
            Severity::caution, Stage::layout, "room.charge-ventilated",
            short_of + "; the room is said to be ventilated",
            "Prove the ventilation by the standard, and keep the proof with the job: " + openings(c, air) + " will do",
            rule, opening_source);
    } else {
        c.findings.add(Severity::stop, Stage::layout, "room.charge", short_of,
                       "Choose a room of " + square_metres_up(c.room.least_area_m2) +
                           " or more, a shorter run, or a block with less charge; or " + openings(c, air),
                       rule, area_source);
    }
}

void ignition(const Case& c) {
    if (!c.input.spot.ignition_source) return;
    c.findings.add(c.mildly || c.charge_kg <= c.room.free_kg ? Severity::caution : Severity::stop, Stage::layout,
                   "room.ignition-source", c.has + ", and there is a source of ignition in the room",
                   "Remove the source (open flame, sparking switchgear), or choose another spot or refrigerant",
                   "No ignition source where flammable refrigerant may leak", area_source);
}

void work(const Case& c, const RoomAir& air, Outcome& out) {
    const CylinderSpot& spot = c.input.spot;
    const double lfl = c.input.refrigerant->lower_flammability_kg_m3();
    const std::string class_words = c.mildly ? "class A2L: 6, 52 and 260 LFL" : "class A3: 4, 26 and 130 LFL";
    out.workings.push_back(
        {"services.room-charge",
         "Flammable charge in the room",
         "m_max = 2.5 LFL^1.25 h_0 A^0.5, A_min = (m/(2.5 LFL^1.25 h_0))^2",
         {{"LFL", fixed(lfl, 4) + " kg/m3"},
          {"h_0", fixed(c.input.block.release_height_m, 2) + " m, of the block's data"},
          {"A", fixed(spot.floor_area_m2, 1) + " m2"},
          {"no rule up to m_1", fixed(c.room.free_kg, 3) + " kg, " + class_words},
          {"charge", fixed(c.charge_kg, 3) + " kg"},
          {"A_min", air.least_area_m2 > 0.0 ? square_metres_up(air.least_area_m2) : std::string("no room rule")},
          {"whole charge spread over " + fixed(air.volume_m3, 1) + " m3",
           fixed(100.0 * air.share_of_limit, 0) + " % of LFL; the practical limit of EN 378-1 is " +
               fixed(100.0 * practical_share, 0) + " %"},
          {"holds for",
           "a room whose floor is level and open; joints indoors outside the block count with the same "
           "height"},
          refrigeration_word},
         fixed(c.room.room_kg, 3) + " kg allowed",
         area_source,
         false});
    if (!(air.opening_m2 > 0.0)) return;
    out.workings.push_back(
        {"services.room-opening",
         "Openings to a neighbouring room",
         "A_nv = (m - m_max)/(104 LFL) (A/(g m_max))^0.5 M/(M - 29)",
         {{"m - m_max", fixed(c.charge_kg - c.room.room_kg, 3) + " kg"},
          {"M", fixed(molar_mass(c.input.block.refrigerant), 1) + " g/mol"},
          {"low", "lower edge within 0.1 m of the floor, half of it below 0.2 m, what lies above 0.3 m does not count"},
          {"high", "half as much again, 1.5 m over the floor or higher"},
          {"holds for",
           "openings that cannot be shut, to a room inside; both rooms together have A_min; for class A3 only where "
           "the edition in force lets openings count"},
          refrigeration_word},
         square_centimetres_up(air.opening_m2) + " low down",
         opening_source,
         false});
}

}  // namespace

void provide_flammable(const Input& input, Outcome& out) {
    if (input.refrigerant == nullptr || !(input.refrigerant->lower_flammability_kg_m3() > 0.0)) return;
    const CylinderSpot& spot = input.spot;
    const double lfl = input.refrigerant->lower_flammability_kg_m3();
    const SpotFindings findings{input, out.findings};
    Case c{input, findings, input.total_charge_kg, input.refrigerant->safety_class() == "A2L", {}, {}};
    c.room = room_charge(c.charge_kg, lfl, c.mildly, input.block.release_height_m, spot.floor_area_m2);
    c.has = "The system holds " + fixed(c.charge_kg, 3) + " kg of flammable " + input.refrigerant->name();
    RoomAir& air = out.room;
    air.allowed_kg = c.room.room_kg;
    air.least_area_m2 = c.room.least_area_m2;
    air.volume_m3 = spot.floor_area_m2 * spot.headroom_m;
    if (air.volume_m3 > 0.0) air.share_of_limit = c.charge_kg / (air.volume_m3 * lfl);
    if (c.charge_kg <= c.room.outside_kg)
        air.opening_m2 =
            opening_m2(c.charge_kg, c.room.room_kg, lfl, molar_mass(input.block.refrigerant), spot.floor_area_m2);
    too_much_for_the_room(c, air);
    ignition(c);
    work(c, air, out);
}

}  // namespace wg::services
