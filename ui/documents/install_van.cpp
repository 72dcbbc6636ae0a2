// What is loaded, by its place in the van.

#include "ui/documents/install_tables.h"

#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/install_steps.h"

namespace wg::ui::paper {
namespace {

/// Where a part travels: by its kind, told by its id.
QString van_place(const std::string& id) {
    struct Place {
        const char* in_id;
        const char* words;
    };
    static const Place places[] = {{"refrigerant", marked("Bottles upright, ventilated, strapped")},
                                   {"nitrogen", marked("Bottles upright, ventilated, strapped")},
                                   {"collector", marked("On edge along the side wall, padded")},
                                   {"block", marked("Upright at the bulkhead, strapped")},
                                   {"cylinder", marked("Upright at the bulkhead, strapped")},
                                   {"tube", marked("Roof rack and long tray")},
                                   {"pipe", marked("Roof rack and long tray")},
                                   {"insulation", marked("Roof rack and long tray")},
                                   {"frame", marked("Roof rack and long tray")},
                                   {"cable", marked("Electrical case")},
                                   {"breaker", marked("Electrical case")},
                                   {"residual", marked("Electrical case")},
                                   {"isolator", marked("Electrical case")},
                                   {"valve", marked("Water crate")},
                                   {"vessel", marked("Water crate")},
                                   {"tundish", marked("Water crate")},
                                   {"drain", marked("Water crate")}};
    for (const Place& place : places)
        if (id.find(place.in_id) != std::string::npos) return say(place.words);
    return say("Workshop drawers");
}

/// The model's own id says nothing of its kind.
QString van_place_of(const parts::Line& line, const plan::Plan& plan) {
    if (line.item_id == plan.collector.id) return van_place("collector");
    if (line.item_id == plan.block.id || line.item_id == plan.cylinder.id) return van_place("cylinder");
    return van_place(line.item_id);
}

}  // namespace

void load_list(Flow& flow, const PaperInput& input) {
    flow.heading(say("Parts and tools to load"));
    const std::vector<Tool> tools = tools_for(input.job, input.plan);
    // In the order in which the places are named, parts before tools.
    QStringList places;
    for (const parts::Line& line : input.plan.parts.lines) {
        const QString place = van_place_of(line, input.plan);
        if (!line.labour && !places.contains(place)) places += place;
    }
    for (const Tool& tool : tools)
        if (!places.contains(tool.place)) places += tool.place;
    std::vector<Flow::Work> lines;
    for (const QString& place : places) {
        lines.push_back({0, place, QString()});
        for (const parts::Line& line : input.plan.parts.lines) {
            if (line.labour || van_place_of(line, input.plan) != place) continue;
            lines.push_back(
                {Flow::unnumbered, say_name(line.text), say_filled(line.why), amount_words(line.to_buy, line.unit)});
        }
        for (const Tool& tool : tools)
            if (tool.place == place) lines.push_back({Flow::unnumbered, tool.text, QString()});
    }
    flow.work(lines, 10.0);
}

}  // namespace wg::ui::paper
