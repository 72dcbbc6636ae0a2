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

/// In the order of the places they are named in; two beside each other where the lettering leaves room.
void tools_to_load(Flow& flow, const std::vector<Tool>& all) {
    flow.subheading(say("Tools to load"));
    const bool one_column = flow.sheet().large_print;
    Table table;
    table.size_pt = least_pt;
    table.columns = {{QString(), 7.0, false, true}, {QString(), 0.0}};
    if (!one_column) table.columns.insert(table.columns.end(), {{QString(), 7.0, false, true}, {QString(), 0.0}});
    QStringList places;
    for (const Tool& tool : all)
        if (!places.contains(tool.place)) places += tool.place;
    for (const QString& place : places) {
        table.rows.push_back({QStringList{place}, Row::Kind::group});
        QStringList here;
        for (const Tool& tool : all)
            if (tool.place == place) here += tool.text;
        // An odd one out leaves a box for what the firm adds.
        const qsizetype each = one_column ? 1 : 2;
        for (qsizetype i = 0; i < here.size(); i += each) {
            QStringList cells{QString(), here[i]};
            if (!one_column) cells << QString() << here.value(i + 1);
            table.rows.push_back({cells});
        }
    }
    flow.table(table);
}

}  // namespace

void load_list(Flow& flow, const PaperInput& input) {
    flow.heading(say("Parts to load"));
    Table table;
    table.columns = {
        {say("Part"), 0.0}, {say("Quantity"), 18.0, true}, {say("Why"), 76.0}, {say("On van"), 18.0, false, true}};
    // The reasons are long: a little smaller they mostly stay on one line.
    table.size_pt = least_pt;
    QStringList places;
    for (const parts::Line& line : input.plan.parts.lines) {
        const QString place = van_place_of(line, input.plan);
        if (!line.labour && !places.contains(place)) places += place;
    }
    for (const QString& place : places) {
        table.rows.push_back({QStringList{place}, Row::Kind::group});
        for (const parts::Line& line : input.plan.parts.lines) {
            if (line.labour || van_place_of(line, input.plan) != place) continue;
            table.rows.push_back({QStringList{say_name(line.text), amount_words(line.to_buy, line.unit),
                                              say_filled(line.why), QString()}});
        }
    }
    if (table.rows.empty())
        flow.paragraph(say("No parts are listed."));
    else
        flow.table(table);
    tools_to_load(flow, tools_for(input.job, input.plan));
}

}  // namespace wg::ui::paper
