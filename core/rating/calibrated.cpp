#include "core/rating/calibrated.h"

#include <cmath>

#include "core/equipment/codec.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

namespace wg::rating {
namespace {

constexpr std::size_t longest_note = 2000;  // as the reader has it

std::string figure(double value) {
    if (!std::isfinite(value)) return "none";
    return fixed(value, std::abs(value) < 10.0 ? 2 : std::abs(value) < 100.0 ? 1 : 0);
}

/// Once, however often it was calibrated.
void add_once(std::string& text, const std::string& tail) {
    const bool has = text.size() >= tail.size() && text.compare(text.size() - tail.size(), tail.size(), tail) == 0;
    if (!has) text += tail;
}

template <class Model>
Model renamed(Model model) {
    add_once(model.id, "-calibrated");
    add_once(model.name, " (calibrated)");
    return model;
}

}  // namespace

std::string calibration_note(const Fit& fit, const std::string& source) {
    std::string note = "Calibrated by the computed rating test of EN 16147, no certificate.";
    if (!source.empty()) note += " Declared values from: " + for_message(source, 200) + ".";
    note += " Changed:";
    for (const Calibrated& c : fit.parameters)
        note += " " + c.name + " " + figure(c.before) + " to " + figure(c.after) + unit_of(c.parameter) + ";";
    if (fit.parameters.empty()) note += " nothing;";
    note.back() = '.';
    note += " Declared (computed after):";
    for (const Residual& r : fit.residuals)
        note += " " + r.name + " " + figure(r.declared.value) + " (" + figure(r.after) + (r.met ? ");" : ", not met);");
    note.back() = '.';
    if (note.size() > longest_note) note = for_message(note, longest_note - 3);
    return note;
}

Result<std::string> calibrated_equipment(const Fit& fit, const std::string& source) {
    Catalogue catalogue;
    catalogue.collectors.push_back(renamed(fit.item.collector));
    catalogue.blocks.push_back(renamed(fit.item.block));
    catalogue.cylinders.push_back(renamed(fit.item.cylinder));
    CylinderModel& cylinder = catalogue.cylinders.back();
    // The set was calibrated together; a cylinder that fits some blocks only fits this one too.
    if (!cylinder.fits_blocks.empty()) cylinder.fits_blocks = {catalogue.blocks.back().id};
    std::string text = catalogue_to_json(catalogue, calibration_note(fit, source));
    const auto read = catalogue_from_json(text, "calibrated equipment");
    if (!read) return read.problems();
    return text;
}

}  // namespace wg::rating
