// Verbs about the choices and their equipment.

#include "core/equipment/equipment.h"
#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

/// Runs `change` on the current choice as one step.
void edit_current(JobSession& session, const QString& what, const std::function<void(Choice&)>& change,
                  const QString& merge_key = {}) {
    const Choice* current = session.current_choice();
    if (current == nullptr) return;
    const std::string id = current->id;
    session.edit(
        what,
        [&](Job& job) {
            if (Choice* choice = with_id(job.choices, id)) change(*choice);
        },
        merge_key);
}

/// "A", "B", ... "Z", then "Choice 27": the first that no choice uses.
std::string next_letter(const std::vector<Choice>& choices) {
    for (char letter = 'A'; letter <= 'Z'; ++letter) {
        const std::string label(1, letter);
        // "A: two collectors" has taken the letter as much as "A" has.
        const auto takes = [&](const Choice& c) { return c.label == label || c.label.rfind(label + ":", 0) == 0; };
        if (std::none_of(choices.begin(), choices.end(), takes)) {
            return label;
        }
    }
    return free_label(choices, "Choice");
}

/// The surface a first collector goes to: roofs before walls, terraces and ground.
const Surface* first_surface(const Site& site) {
    for (const SurfaceKind kind : {SurfaceKind::roof, SurfaceKind::wall, SurfaceKind::terrace, SurfaceKind::ground}) {
        for (const Surface& surface : site.surfaces) {
            if (surface.kind == kind) return &surface;
        }
    }
    return nullptr;
}

const BlockModel& block_for(const Catalogue& catalogue, const CollectorModel& collector) {
    for (const BlockModel& block : catalogue.blocks) {
        if (collector.face_area_m2 >= block.collector_area_min_m2 &&
            collector.face_area_m2 <= block.collector_area_max_m2) {
            return block;
        }
    }
    return catalogue.blocks.front();
}

const CylinderModel& cylinder_for(const Catalogue& catalogue, const BlockModel& block) {
    for (const CylinderModel& cylinder : catalogue.cylinders) {
        const std::vector<std::string>& fits = cylinder.fits_blocks;
        if (fits.empty() || std::find(fits.begin(), fits.end(), block.id) != fits.end()) return cylinder;
    }
    return catalogue.cylinders.front();
}

std::string method_for(const Catalogue& catalogue, const Surface* surface) {
    if (surface != nullptr) {
        for (const FixingMethod& method : catalogue.fixing_methods) {
            const bool suits = std::find(method.coverings.begin(), method.coverings.end(), surface->covering) !=
                               method.coverings.end();
            if (suits && (!method.needs_rafters || surface->rafters.present)) return method.id;
        }
    }
    return catalogue.fixing_methods.empty() ? std::string() : catalogue.fixing_methods.front().id;
}

}  // namespace

std::string add_choice(JobSession& session) {
    const Catalogue& catalogue = session.reference().catalogue;
    const Job& job = session.job();
    if (catalogue.collectors.empty() || catalogue.blocks.empty() || catalogue.cylinders.empty()) return {};
    const Surface* surface = first_surface(job.site);
    Choice choice;
    choice.id = new_id();
    choice.label = next_letter(job.choices);
    choice.collector_model = catalogue.collectors.front().id;
    const BlockModel& block = block_for(catalogue, catalogue.collectors.front());
    choice.block_model = block.id;
    choice.cylinder_model = cylinder_for(catalogue, block).id;
    choice.fixing_method = method_for(catalogue, surface);
    if (!job.site.spots.empty()) choice.spot_id = job.site.spots.front().id;
    if (surface != nullptr) choice.placements.push_back(proposed_collector(session, choice, *surface));
    const QString what = QObject::tr("Add choice %1").arg(qs(choice.label));
    session.edit(what, [&](Job& changed) {
        if (changed.choices.empty()) changed.chosen_choice_id = choice.id;
        changed.choices.push_back(choice);
    });
    session.set_current_choice(choice.id);
    return choice.id;
}

std::string duplicate_choice(JobSession& session, const std::string& choice_id) {
    const Choice* original = find_choice(session.job(), choice_id);
    if (original == nullptr) return {};
    Choice copy = *original;
    copy.id = new_id();
    copy.label = next_letter(session.job().choices);
    for (Placement& placement : copy.placements)
        placement.id = new_id();
    for (RoutePoint& point : copy.route)
        point.id = new_id();
    for (ExtraItem& extra : copy.extras)
        extra.id = new_id();
    copy.on_offer = false;
    session.edit(QObject::tr("Duplicate choice %1").arg(qs(original->label)), [&](Job& job) {
        job.choices.push_back(copy);
        const auto copy_those_of_it = [&](auto& list) {
            for (std::size_t i = 0, count = list.size(); i < count; ++i) {
                if (list[i].choice_id != choice_id) continue;
                auto further = list[i];
                further.id = new_id();
                further.choice_id = copy.id;
                list.push_back(std::move(further));
            }
        };
        copy_those_of_it(job.offer.changes);
        copy_those_of_it(job.offer.lines);
    });
    session.set_current_choice(copy.id);
    return copy.id;
}

std::string add_set_as_choice(JobSession& session, const plan::SizingWish& wish, const plan::SizingPoint& point) {
    const std::string label = next_letter(session.job().choices);
    const std::size_t before = session.job().choices.size();
    session.edit(QObject::tr("Add choice %1").arg(qs(label)),
                 [&](Job& job) { job = plan::with_set(std::move(job), wish, point, label, new_id); });
    if (session.job().choices.size() == before) return {};
    const std::string id = session.job().choices.back().id;
    session.set_current_choice(id);
    return id;
}

void rename_choice(JobSession& session, const std::string& choice_id, const std::string& label) {
    session.edit(QObject::tr("Rename a choice"), [&](Job& job) {
        if (Choice* choice = with_id(job.choices, choice_id)) choice->label = label;
    });
}

void mark_chosen(JobSession& session, const std::string& choice_id) {
    const Choice* choice = find_choice(session.job(), choice_id);
    if (choice == nullptr) return;
    session.edit(QObject::tr("Mark %1 as chosen").arg(qs(choice->label)),
                 [&](Job& job) { job.chosen_choice_id = choice_id; });
}

void remove_choice(JobSession& session, const std::string& choice_id) {
    const Choice* choice = find_choice(session.job(), choice_id);
    if (choice == nullptr) return;
    session.edit(QObject::tr("Remove choice %1").arg(qs(choice->label)), [&](Job& job) {
        erase_id(job.choices, choice_id);
        const auto of_choice = [&](const auto& element) { return element.choice_id == choice_id; };
        std::erase_if(job.offer.changes, of_choice);
        std::erase_if(job.offer.lines, of_choice);
        if (job.chosen_choice_id == choice_id) {
            job.chosen_choice_id = job.choices.empty() ? std::string() : job.choices.front().id;
        }
    });
}

void set_collector_model(JobSession& session, const std::string& model_id) {
    edit_current(session, QObject::tr("Change the collector model"),
                 [&](Choice& choice) { choice.collector_model = model_id; });
}

void set_joined(JobSession& session, Joined joined) {
    edit_current(session,
                 joined == Joined::series ? QObject::tr("Join the collectors in series")
                                          : QObject::tr("Join the collectors in parallel"),
                 [&](Choice& choice) { choice.joined = joined; });
}

void set_block_model(JobSession& session, const std::string& model_id) {
    edit_current(session, QObject::tr("Change the heat-pump block"),
                 [&](Choice& choice) { choice.block_model = model_id; });
}

void set_cylinder_model(JobSession& session, const std::string& model_id) {
    edit_current(session, QObject::tr("Change the cylinder"),
                 [&](Choice& choice) { choice.cylinder_model = model_id; });
}

void set_spot(JobSession& session, const std::string& spot_id) {
    if (find_spot(session.job().site, spot_id) == nullptr) return;
    edit_current(session, QObject::tr("Change the cylinder's spot"), [&](Choice& choice) { choice.spot_id = spot_id; });
}

void set_fixing_method(JobSession& session, const std::string& method_id) {
    edit_current(session, QObject::tr("Change the fixing method"),
                 [&](Choice& choice) { choice.fixing_method = method_id; });
}

void add_extra(JobSession& session, const std::string& price_item, double quantity) {
    if (!std::isfinite(quantity)) return;
    edit_current(session, QObject::tr("Add an extra"), [&](Choice& choice) {
        ExtraItem extra;
        extra.id = new_id();
        extra.price_item = price_item;
        extra.quantity = quantity;
        choice.extras.push_back(extra);
    });
}

void set_extra_quantity(JobSession& session, const std::string& extra_id, double quantity) {
    if (!std::isfinite(quantity)) return;
    edit_current(
        session, QObject::tr("Change an extra's quantity"),
        [&](Choice& choice) {
            if (ExtraItem* extra = with_id(choice.extras, extra_id)) extra->quantity = quantity;
        },
        QStringLiteral("extra:") + qs(extra_id));
}

void remove_extra(JobSession& session, const std::string& extra_id) {
    edit_current(session, QObject::tr("Remove an extra"), [&](Choice& choice) { erase_id(choice.extras, extra_id); });
}

}  // namespace wg::ui
