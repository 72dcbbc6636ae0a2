#include "ui/window/firm_equipment.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/plan/reference_overlay.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

bool names_item(const Job& job, const std::string& id) {
    return std::any_of(job.choices.begin(), job.choices.end(), [&id](const Choice& choice) {
        return choice.collector_model == id || choice.block_model == id || choice.cylinder_model == id ||
               choice.fixing_method == id;
    });
}

}  // namespace

FirmEquipment::FirmEquipment(store::Store& store, std::shared_ptr<const plan::Reference> program)
    : store_(store), program_(std::move(program)), reference_(program_), with_withdrawn_(program_) {}

std::shared_ptr<const plan::Reference> FirmEquipment::laid_over(const std::vector<std::string>& withdrawn_ids,
                                                                bool all_withdrawn, QString* problems) const {
    std::vector<plan::OwnItem> own;
    for (const store::EquipmentVersion& item : items_) {
        if (!item.withdrawn || all_withdrawn ||
            std::find(withdrawn_ids.begin(), withdrawn_ids.end(), item.item_id) != withdrawn_ids.end())
            own.push_back({item.item_id, item.content});
    }
    if (own.empty()) return program_;
    plan::Overlay both = plan::with_own_items(*program_, own);
    if (problems != nullptr && !both.left_out.empty()) *problems = qs(text_of(both.left_out));
    return std::make_shared<const plan::Reference>(std::move(both.reference));
}

void FirmEquipment::lay_over(std::shared_ptr<const plan::Reference> program) {
    if (program == program_) return;
    program_ = std::move(program);
    reference_ = with_withdrawn_ = program_;
    items_.clear();  // so that the next refresh lays them over what is there now
}

QString FirmEquipment::refresh() {
    Result<store::EquipmentKept> kept = store::EquipmentBook(store_).current();
    if (!kept) return qs(text_of(kept.problems()));
    if (kept.value().items == items_ && kept.value().damaged.empty()) return {};
    items_ = std::move(kept.value().items);
    QString left_out;
    reference_ = laid_over({}, false, &left_out);
    const bool any_withdrawn =
        std::any_of(items_.begin(), items_.end(), [](const auto& item) { return item.withdrawn; });
    with_withdrawn_ = any_withdrawn ? laid_over({}, true, nullptr) : reference_;
    QStringList words;
    if (!kept.value().damaged.empty()) words << qs(text_of(kept.value().damaged));
    if (!left_out.isEmpty()) words << left_out;
    return words.join(QLatin1Char('\n'));
}

std::shared_ptr<const plan::Reference> FirmEquipment::reference_for(const Job& job, QStringList& withdrawn) const {
    std::vector<std::string> named;
    for (const store::EquipmentVersion& item : items_) {
        if (!item.withdrawn || !names_item(job, item.item_id)) continue;
        named.push_back(item.item_id);
        withdrawn << qs(item.item_id);
    }
    return named.empty() ? reference_ : laid_over(named, false, nullptr);
}

QString unknown_equipment_words(const plan::Reference& reference, const Job& job) {
    QStringList unknown;
    for (const Choice& choice : job.choices) {
        for (const std::string& item : plan::unknown_equipment(reference.catalogue, choice)) {
            if (!unknown.contains(qs(item))) unknown << qs(item);
        }
    }
    if (unknown.isEmpty()) return {};
    return QCoreApplication::translate(
               "FirmEquipment",
               "This job names equipment that is not here: %1. Ask whoever planned with it for its file and read that "
               "under Equipment on the desk, or choose other equipment in Layout.")
        .arg(unknown.join(QStringLiteral(", ")));
}

}  // namespace wg::ui
