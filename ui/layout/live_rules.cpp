#include "ui/layout/live_rules.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/fixing/layout_rules.h"
#include "core/fixing/zones.h"
#include "ui/common/format.h"
#include "ui/common/mark.h"

namespace wg::ui {
namespace {

Point3 end_of_run(const JobSession& session, const Choice& choice) {
    const auto plan = session.plan();
    if (plan != nullptr && !plan->run.legs.empty()) return plan->run.legs.back().to;
    const CylinderSpot* spot = find_spot(session.job().site, choice.spot_id);
    return spot != nullptr ? spot->position : Point3{};
}

}  // namespace

LiveRules live_rules(const JobSession& session, const std::string& surface_id,
                     const std::vector<std::string>& selected) {
    LiveRules out;
    const Choice* choice = session.current_choice();
    const Site& site = session.job().site;
    const Surface* surface = find_surface(site, surface_id);
    if (choice == nullptr || surface == nullptr) return out;
    const CollectorModel* model = find_collector(session.reference().catalogue, choice->collector_model);
    if (model == nullptr) return out;
    for (const Placement& one : choice->placements) {
        if (one.surface_id != surface_id) continue;
        const bool chosen = std::find(selected.begin(), selected.end(), one.id) != selected.end();
        for (fixing::TightSpot& spot : fixing::tight_spots(site, *choice, *model, one)) {
            if (chosen || spot.severity == Severity::stop) out.tight.push_back(std::move(spot));
        }
        if (!chosen) continue;
        for (Finding& found : fixing::check_attitude(site, *choice, *model, one))
            out.attitude.push_back(std::move(found));
    }
    out.run = site::run_on_surface(site, *surface, *choice, *model, end_of_run(session, *choice));
    return out;
}

QString LiveRules::words() const {
    struct Line {
        Severity severity;
        QString text;
    };
    std::vector<Line> lines;
    for (const fixing::TightSpot& spot : tight)
        lines.push_back({spot.severity, qs(spot.text)});
    for (const Finding& found : attitude)
        lines.push_back({found.severity, qs(found.message)});
    if (lines.empty()) return {};
    const auto worst = std::max_element(lines.begin(), lines.end(),
                                        [](const Line& a, const Line& b) { return a.severity < b.severity; });
    QString said = word_of(mark_of(worst->severity));
    said.front() = said.front().toUpper();
    said += QStringLiteral(": ") + worst->text;
    if (lines.size() > 1) said += QCoreApplication::translate("LiveRules", " (%1 more)").arg(lines.size() - 1);
    return said;
}

fixing::WindZones zones_of(const JobSession& session, const std::string& surface_id) {
    const Choice* choice = session.current_choice();
    const Site& site = session.job().site;
    const Surface* surface = find_surface(site, surface_id);
    if (surface == nullptr) return {};
    const CollectorModel* model =
        choice != nullptr ? find_collector(session.reference().catalogue, choice->collector_model) : nullptr;
    const double plate_m2 = model != nullptr ? model->length_m * model->width_m : 1.0;
    return fixing::wind_zones(*surface, fixing::body_of(site, *surface), plate_m2);
}

}  // namespace wg::ui
