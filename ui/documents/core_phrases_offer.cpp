// What the computing rooms say to the client on a quote, as patterns (core_phrases.cpp tells what holds for them).

#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"

namespace wg::ui::paper {

const std::vector<const char*>& offer_phrases() {
    static const std::vector<const char*> list = {
        marked("electric immersion heater"),
        marked("natural gas"),
        marked("liquefied petroleum gas"),
        marked("heating oil"),
        marked("wood"),
        // Work and taxes of the price lists and rule sets that come with the program.
        marked("Survey on site and set-out drawing"),
        marked("Set out and fix points"),
        marked("Lift, hang and secure collectors"),
        marked("Lay, bend, clip and insulate the run"),
        marked("Set cylinder and block, connect water side"),
        marked("Pressure hold, evacuation, charge"),
        marked("Supply, protection, connection and tests"),
        marked("First heating, settings, instruction, papers"),
        marked("Travel, distance"),
        marked("Travel, time"),
        marked("Tax"),
        marked("Standard rate (assumed)"),
        marked("Reduced rate (assumed)"),
        // As older quotes have them.
        marked("Standard rate %1 % (assumed)"),
        marked("Reduced rate %1 % (assumed)"),
        // How the range was found.
        marked("eight in ten of %1 made years of the climate, and two runs of the year with plate to refrigerant %2, "
               "compressor %3, condenser %4, draw-off %5 together (sizes assumed)"),
        marked("two further runs of the year: light %1, plate to refrigerant %2, compressor %3, condenser %4, draw-off "
               "%5 together (sizes assumed)"),
        marked("not worked out yet"),
        // Water.
        marked("At the highest tap %1 bar are left while hot water flows, %2 bar are wanted"),
        marked("Set the reducing valve higher, take a larger hot pipe, or plan a booster"),
        marked("The reducing valve lets %1 stand at the cylinder; the safety valve of %2 asks for %3 at most"),
        marked("Set it to %1 or less"),
        marked("The house has recirculation and the cylinder no port for it"),
        marked("Choose a cylinder with a recirculation port, or join it to the cold inlet as its maker allows"),
        marked("The house has a recirculation loop and the cylinder no connection for it"),
        marked(
            "Choose a cylinder with a recirculation connection, or return through the cold inlet as its maker allows"),
        marked("The store is kept at %1 deg C; legionella grow between 20 and 45 deg C and die slowly below 55"),
        marked(
            "Raise the set-point to 60 deg C, or have the immersion heater lift the whole store to 60 deg C at times "
            "that local rules ask for"),
        marked("The store stands lukewarm in holidays and no hygiene run comes before the return"),
        marked("Switch on the hygiene run before return"),
        marked(
            "The cylinder may hold water of %1 deg C; %2 deg C burns in about %3 s. A thermostatic mixing valve is in "
            "the list"),
        marked("%1 of %2 hygiene runs end after %3 hours without %4 deg C for %5 minutes: the sources are too weak for "
               "it, or draws come in between"),
        marked("Fit a stronger immersion heater, begin earlier in the night, or take another cylinder or block"),
        marked("%1 of %2 hygiene runs hold %3 deg C for %4 minutes only above the immersion heater; the %5 l below it "
               "are no hotter than the heat pump makes them"),
        marked("Choose a target within the heat pump's envelope, a lower immersion heater, or a circulating pump for "
               "the run"),
        marked("The condenser lies in drinking water with a single wall between it and refrigerant with oil"),
        marked("Choose a block with a double-walled or wrapped condenser, or have the maker confirm that it is allowed "
               "where it is fitted"),
        marked("The water has %1 mmol/l of hardness and is heated to %2 deg C: lime settles on heater and condenser"),
        marked("Keep to 60 deg C, or plan softening or lime protection and yearly descaling"),
        // The cylinder's place.
        marked("Only %1 are left over the cylinder"),
        marked("Check that anode and connections can be reached, or take a lower cylinder"),
        marked("Only %1 are left beside the cylinder"),
        marked("Check that it can be brought in and its connections reached"),
        // Supply.
        marked("While the block starts the voltage falls by %1 % over %2 m; lamps flicker and the start may fail"),
        marked("Bring the supply nearer, or ask the maker for a soft starter"),
        marked("Starting takes %1 A; a breaker %2 may trip from %3 A"),
        marked("Take the next slower curve or the next larger rating that the cable carries"),
        marked("The block's data ask for a residual-current device of %1 mA"),
        marked("Check the national rule: 30 mA is usual where people touch water and metal"),
        marked("The house has an IT supply: how a fault is found and cut is not worked out here"),
        marked("Have an electrician plan insulation monitoring and the second fault"),
        marked("The cable alone takes %1 ohm of the fault loop; a breaker %2 switches off at once up to %3 ohm"),
        marked("Let the residual-current device serve, or take a larger section or a quicker curve"),
        marked("The house has lightning protection; the distance from collector and lines to its nearest conductor is "
               "not told"),
        marked("Measure it and fill it in on Visit; %1 m is enough in every class"),
        marked("Have a lightning protection specialist confirm the class and the distance"),
        marked("No surge protection is in the distribution board, and the house has lightning protection"),
        marked("Have devices of type 1 and 2 fitted with the circuit"),
        marked(
            "The circuit's breaker of %1 A is not below the main fuse of %2 A: a fault there may put the house in the "
            "dark"),
        marked("Have an electrician check selectivity"),
        // Layout and yield.
        marked("%1 collectors share one circuit; even flow through them is not worked out here"),
        marked("Ask the block's maker how they are to be joined"),
        marked("Take away a collector, or take a larger block"),
        marked("Shade takes %1 % of the year's light"),
        marked("Shade takes %1 % of the year's light, most of it by %2"),
        marked("Move the collector; the shade map shows where it is lighter"),
        marked("%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, 1 draw)"),
        marked("%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, %4 draws)"),
        marked("Take a larger cylinder, more collector area or a higher set-point"),
        marked(
            "In %1 hours of the year heat is wanted where the compressor's data say nothing; the pump is taken to be "
            "off then and the immersion heater serves"),
        marked("Ask the maker for coefficients over a wider range, or choose a block whose data reach further"),
        marked("The immersion heater uses %1 % of the electricity"),
        marked("Take a larger block or more collector area"),
        marked("The weather year is from a place %1 km away"),
        marked("Plan with a nearer file if there is one"),
        marked("The weather year is from %1 m, the site lies at %2 m; air temperature is not corrected for it"),
        marked("Plan with a file from a similar height"),
    };
    return list;
}

}  // namespace wg::ui::paper
