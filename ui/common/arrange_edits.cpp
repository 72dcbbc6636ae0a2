#include "ui/common/arrange_edits.h"

#include <algorithm>
#include <cmath>

#include "core/equipment/equipment.h"
#include "core/fixing/mounting_rules.h"
#include "core/site/geometry.h"
#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

const CollectorModel* model_of_choice(const JobSession& session) {
    const Choice* choice = session.current_choice();
    return choice != nullptr ? find_collector(session.reference().catalogue, choice->collector_model) : nullptr;
}

/// Changes every collector named, in one step.
void edit_each(JobSession& session, const QString& what, const std::vector<std::string>& ids,
               const std::function<void(Placement&)>& change, const QString& merge_key = {}) {
    const Choice* current = session.current_choice();
    if (current == nullptr) return;
    const std::string choice_id = current->id;
    session.edit(
        what,
        [&](Job& job) {
            Choice& choice = *with_id(job.choices, choice_id);
            for (const std::string& id : ids) {
                if (Placement* target = with_id(choice.placements, id)) change(*target);
            }
        },
        merge_key);
}

/// Those of the ids that lie on the first one's surface, with their upright bounds.
struct Together {
    std::vector<const Placement*> placements;
    std::vector<site::Bounds> bounds;
};
Together together(const JobSession& session, const std::vector<std::string>& ids) {
    Together out;
    const Choice* choice = session.current_choice();
    const CollectorModel* model = model_of_choice(session);
    if (choice == nullptr || model == nullptr) return out;
    const Site& site = session.job().site;
    const Surface* surface = nullptr;
    for (const std::string& id : ids) {
        const Placement* one = with_id(choice->placements, id);
        if (one == nullptr) continue;
        if (surface == nullptr) surface = find_surface(site, one->surface_id);
        if (surface == nullptr || one->surface_id != surface->id) continue;
        out.placements.push_back(one);
        out.bounds.push_back(site::bounds_of(site::place(*surface, site.sketch_up_azimuth_deg, *one, *model).outline));
    }
    return out;
}

void move_each(JobSession& session, const QString& what, const Together& plates,
               const std::vector<fixing::Move>& moves) {
    std::vector<PlacedAt> to;
    for (std::size_t i = 0; i < plates.placements.size(); ++i) {
        const Placement& one = *plates.placements[i];
        to.push_back({one.id, {one.x_m + moves[i].right_m, one.y_m + moves[i].up_m}});
    }
    std::vector<std::string> ids;
    for (const PlacedAt& at : to)
        ids.push_back(at.id);
    session.end_merge();
    edit_each(session, what, ids, [&](Placement& target) {
        const auto at = std::find_if(to.begin(), to.end(), [&](const PlacedAt& p) { return p.id == target.id; });
        target.x_m = to_mm(at->middle.x_m);
        target.y_m = to_mm(at->middle.y_m);
    });
}

}  // namespace

void place_collectors(JobSession& session, const std::vector<PlacedAt>& to) {
    std::vector<std::string> ids;
    QString key = QStringLiteral("move");
    for (const PlacedAt& at : to) {
        if (!std::isfinite(at.middle.x_m) || !std::isfinite(at.middle.y_m)) return;
        ids.push_back(at.id);
        key += QLatin1Char(':') + qs(at.id);
    }
    const QString what = to.size() == 1 ? QObject::tr("Move the collector")
                                        : QObject::tr("Move %1 collectors").arg(static_cast<qulonglong>(to.size()));
    edit_each(
        session, what, ids,
        [&](Placement& target) {
            const auto at = std::find_if(to.begin(), to.end(), [&](const PlacedAt& p) { return p.id == target.id; });
            target.x_m = to_mm(at->middle.x_m);
            target.y_m = to_mm(at->middle.y_m);
        },
        key);
}

void align_collectors(JobSession& session, const std::vector<std::string>& ids, fixing::Align to) {
    const Together plates = together(session, ids);
    if (plates.placements.size() < 2) return;
    move_each(session, QObject::tr("Bring %1 collectors into line").arg(plates.placements.size()), plates,
              fixing::aligning_moves(plates.bounds, to));
}

QString distribute_collectors(JobSession& session, const std::vector<std::string>& ids, fixing::Along along) {
    const Together plates = together(session, ids);
    if (plates.placements.size() < 3) return QObject::tr("Select three collectors or more: the outer two stay.");
    const auto moves = fixing::distributing_moves(plates.bounds, along);
    if (!moves) {
        return along == fixing::Along::level
                   ? QObject::tr("The outer two stand too near to each other, measured level. Move one outwards.")
                   : QObject::tr("The outer two stand too near to each other, measured upright. Move one outwards.");
    }
    move_each(session, QObject::tr("Space %1 collectors evenly").arg(plates.placements.size()), plates, *moves);
    return {};
}

QString turn_collectors(JobSession& session, const std::vector<std::string>& ids, int direction) {
    const CollectorModel* model = model_of_choice(session);
    if (model == nullptr) return {};
    bool turned = false;
    session.end_merge();
    edit_each(session, QObject::tr("Turn the collector"), ids, [&](Placement& target) {
        const double to = fixing::next_turn_deg(*model, target.turn_deg, direction);
        turned = turned || std::abs(to - target.turn_deg) > 1e-9;
        target.turn_deg = to;
    });
    if (turned || ids.empty()) return {};
    return model->level_side == LevelSide::short_side
               ? QObject::tr("%1 lies with its short side level only.").arg(qs(model->name))
               : QObject::tr("%1 lies with its long side level and its connections below only.").arg(qs(model->name));
}

void set_hands(JobSession& session, const std::vector<std::string>& ids, Hand hand) {
    const QString what =
        hand == Hand::left ? QObject::tr("Put the connections left") : QObject::tr("Put the connections right");
    edit_each(session, what, ids, [hand](Placement& target) { target.hand = hand; });
}

void remove_collectors(JobSession& session, const std::vector<std::string>& ids) {
    const Choice* current = session.current_choice();
    if (current == nullptr) return;
    const std::string choice_id = current->id;
    const QString what =
        ids.size() == 1 ? QObject::tr("Remove a collector") : QObject::tr("Remove %1 collectors").arg(ids.size());
    session.edit(what, [&](Job& job) {
        for (const std::string& id : ids)
            erase_id(with_id(job.choices, choice_id)->placements, id);
    });
}

RowAdded add_row(JobSession& session, const std::string& placement_id, int count, double gap_m) {
    RowAdded out;
    const Choice* current = session.current_choice();
    const CollectorModel* model = model_of_choice(session);
    const Placement* first = current != nullptr ? with_id(current->placements, placement_id) : nullptr;
    if (model == nullptr || first == nullptr || count < 1 || !std::isfinite(gap_m) || gap_m < 0.0) return out;
    const fixing::Row row = fixing::row_beside(session.job().site, *current, *model, *first, count, gap_m);
    if (row.middles.empty()) {
        const QString apart = length_m(gap_m);
        out.refusal =
            row.room_for == 0
                ? QObject::tr("No room for another beside %1 with %2 between them.").arg(qs(first->label), apart)
                : QObject::tr("Only %1 of %2 fit beside %3 with %4 between them.")
                      .arg(QString::number(row.room_for), QString::number(count), qs(first->label), apart);
        return out;
    }
    const std::string choice_id = current->id;
    const Placement like = *first;
    session.end_merge();
    session.edit(QObject::tr("Put %1 collectors in a row").arg(count), [&](Job& job) {
        Choice& choice = *with_id(job.choices, choice_id);
        for (const Point2 at : row.middles) {
            Placement more = like;
            more.id = new_id();
            more.label = free_label(choice.placements, "Collector");
            more.extra_json.clear();
            more.x_m = to_mm(at.x_m);
            more.y_m = to_mm(at.y_m);
            out.ids.push_back(more.id);
            choice.placements.push_back(more);
        }
    });
    return out;
}

}  // namespace wg::ui
