#pragma once
// The parts list: every line says why it is there.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/parts/prices.h"
#include "core/pipework/run.h"
#include "core/services/services.h"

namespace wg::parts {

struct Line {
    std::string item_id;
    std::string text;
    std::string unit;
    double quantity = 0.0;  ///< needed
    double to_buy = 0.0;    ///< after waste and whole packs
    Money unit_price;       ///< net
    Money net;              ///< to_buy * unit_price
    std::string tax_class;
    std::string why;  ///< e.g. "run of 11.4 m one way, 5 % for cutting"
    bool labour = false;
    std::optional<Money> unit_cost;  ///< what the firm pays for one; of the firm alone, on no paper for clients
    std::string supplier;
    std::string supplier_number;
    bool priced = true;  ///< false: not in the price list (a finding says so)
};

/// What of the place makes work slower or costs a drive. What is not told stretches nothing.
struct Circumstances {
    std::optional<double> height_m;     ///< highest corner of the plates over ground
    std::vector<Covering> coverings;    ///< of the surfaces that carry plates
    std::string access;                 ///< id of the price list's way to reach them
    int storeys = 0;                    ///< that things are carried up or down
    std::optional<double> distance_km;  ///< one way
    int trips = 0;                      ///< 0: as the price list has it
};

struct Input {
    Choice choice;
    CollectorModel collector;
    BlockModel block;
    CylinderModel cylinder;
    FixingMethod method;
    pipework::Run run;
    int fixing_points = 0;
    services::Outcome services;
    PriceList prices;
    Circumstances circumstances;
};

struct Outcome {
    std::vector<Line> lines;
    double labour_h = 0.0;
    std::vector<Finding> findings;
};

/// By how much the hours of a task stretch, and why; {1, ""} when nothing makes it slower.
struct Stretch {
    double factor = 1.0;
    std::string why;
};
[[nodiscard]] Stretch stretch_of(const LabourTask& task, const Difficulty& difficulty, const Circumstances& at);

[[nodiscard]] Outcome list_parts(const Input& input);

/// RFC 4180 CSV with a header line, UTF-8, '.' as decimal sign; cells that a spreadsheet would read as a formula are
/// prefixed with an apostrophe.
[[nodiscard]] std::string to_csv(const std::vector<Line>& lines, const std::string& currency);

}  // namespace wg::parts
