#pragma once
// The parts list: every line says why it is there.

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
    bool priced = true;  ///< false: not in the price list (a finding says so)
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
};

struct Outcome {
    std::vector<Line> lines;
    double labour_h = 0.0;
    std::vector<Finding> findings;
};

[[nodiscard]] Outcome list_parts(const Input& input);

/// RFC 4180 CSV with a header line, UTF-8, '.' as decimal sign; cells that a spreadsheet would read as a formula are
/// prefixed with an apostrophe.
[[nodiscard]] std::string to_csv(const std::vector<Line>& lines, const std::string& currency);

}  // namespace wg::parts
