#include "ui/fitting/work_stages.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <array>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/documents/install_steps.h"

namespace wg::ui {
namespace {

using K = ReadingKind;

QString stage_words(const char* text) {
    return QCoreApplication::translate("WorkStages", text);
}

QString name_of_kind(K kind) {
    QString name = QString::fromUtf8(text_of(kind));
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}

enum Part { place, water, hold, evacuation, charge, electrical, start, heating, hand_over, part_count };

/// The part of the work at whose end each hold point of the install sheet stands.
struct HoldPlace {
    const char* text;  ///< as the sheet says it in English, which is what the record keeps
    Part part;
};
constexpr std::array<HoldPlace, 7> hold_places = {{{"Fixing points and seals", place},
                                                   {"Condenser and cylinder", place},
                                                   {"Water side full and tight", water},
                                                   {"Pressure hold passed", hold},
                                                   {"Vacuum holds", evacuation},
                                                   {"Electrical tests", electrical},
                                                   {"Hand over", hand_over}}};

void add_holds(std::vector<WorkStage>& stages, const Job& job, const plan::Plan& plan) {
    for (const paper::Step& step : paper::steps_for(job, plan)) {
        if (step.kind != paper::Step::Kind::hold) continue;
        const std::string text = step.text.toStdString();
        const auto* at = std::find_if(hold_places.begin(), hold_places.end(),
                                      [&text](const HoldPlace& known) { return text == known.text; });
        // One not known here is released at the end rather than forgotten.
        const Part part = at == hold_places.end() ? hand_over : at->part;
        stages[part].wants.push_back(
            {K::hold_point, text, stage_words("Hold point: %1").arg(step.text), true, step.why});
    }
}

const commissioning::Band* band_of(K kind, const plan::Plan& plan, const QDate& day) {
    const QString wanted = QString::fromUtf8(text_of(kind));
    for (const commissioning::MonthForecast& forecast : plan.forecasts) {
        if (forecast.month != day.month()) continue;
        for (const commissioning::Band& band : forecast.bands)
            if (qs(band.label).compare(wanted, Qt::CaseInsensitive) == 0) return &band;
    }
    return nullptr;
}

}  // namespace

std::vector<WorkStage> work_stages(const Job& job, const plan::Plan* plan, bool service) {
    const auto want = [](K kind, bool needed = true) { return Want{kind, {}, name_of_kind(kind), needed, {}}; };
    const auto serial = [](const char* part, const QString& name) {
        return Want{K::serial_number, part, name, true, {}};
    };
    std::vector<WorkStage> stages(part_count);
    // A service opens nothing that is sound: what it reads is the running system and what wears.
    const bool fit = !service;
    const bool extra_charge = plan == nullptr || plan->expected.extra_charge_kg > 0.0;
    const bool hygiene = plan != nullptr && plan->expected.hygiene_target_c > 0.0;
    stages[place].title = stage_words("Place and fixings");
    const std::size_t plates = plan == nullptr ? 1 : std::max<std::size_t>(1, plan->placements.size());
    for (std::size_t i = 1; i <= plates; ++i) {
        // Each plate has its own; the only one needs no count.
        const QString count = plates == 1 ? QString() : QStringLiteral(" %1").arg(i);
        stages[place].wants.push_back({K::serial_number,
                                       (QStringLiteral("collector") + count).toStdString(),
                                       stage_words("Serial number of the collector") + count,
                                       true,
                                       {}});
    }
    for (const Want& one :
         {serial("block", stage_words("Serial number of the block")),
          serial("cylinder", stage_words("Serial number of the cylinder")), want(K::wall_contact, false)})
        stages[place].wants.push_back(one);
    stages[water] = {stage_words("Water side"),
                     {want(K::water_vented, fit), want(K::cold_pressure), want(K::safety_valve_lift)}};
    stages[hold] = {stage_words("Pressure hold"), {want(K::pressure_hold_start, fit), want(K::pressure_hold_end, fit)}};
    stages[evacuation] = {stage_words("Evacuation"), {want(K::vacuum_level, fit), want(K::vacuum_after_rise, fit)}};
    stages[charge] = {stage_words("Charge"),
                      {want(K::charge_added, fit && extra_charge), want(K::refrigerant_recovered, false),
                       want(K::refrigerant_lost, false)}};
    stages[electrical] = {
        stage_words("Electrical"),
        {want(K::protective_conductor), want(K::insulation_resistance), want(K::earth_resistance),
         want(K::loop_impedance, false), want(K::residual_current_trip), want(K::supply_voltage, fit)}};
    stages[start] = {stage_words("Start"),
                     {want(K::outdoor_temperature), want(K::irradiance, false), want(K::wind_speed, false),
                      want(K::suction_temperature), want(K::discharge_temperature), want(K::supply_current),
                      want(K::suction_pressure, false), want(K::discharge_pressure, false), want(K::superheat, false)}};
    stages[heating] = {stage_words("First heating"),
                       {want(K::heating_start, fit), want(K::heating_end, fit), want(K::water_temperature),
                        want(K::tap_temperature), want(K::set_point), want(K::hygiene_setting, hygiene)}};
    stages[hand_over] = {stage_words("Hand-over"),
                         {want(K::electricity_meter, false), want(K::heat_meter, false), want(K::water_meter, false),
                          Want{K::signature, "installer", stage_words("Signature of the installer"), true, {}},
                          Want{K::signature, "client", stage_words("Signature of the client"), true, {}}}};
    if (service) {
        for (Want& one : stages[place].wants)
            one.needed = false;
        stages[heating].title = stage_words("Water and set-points");
    } else if (plan != nullptr) {
        add_holds(stages, job, *plan);
    }
    return stages;
}

std::vector<Reading> entries_of(const std::vector<Reading>& record, Occasion occasion, const QDate& today) {
    std::vector<Reading> out = commissioning::standing(record);
    const auto counts = [&](const Reading& r) {
        if (occasion != Occasion::service) return r.occasion != Occasion::service;
        // Last year's service is not today's.
        const QDateTime at = QDateTime::fromString(qs(r.taken_at), Qt::ISODate);
        return r.occasion == Occasion::service && at.toLocalTime().date() == today;
    };
    out.erase(std::remove_if(out.begin(), out.end(), [&](const Reading& r) { return !counts(r); }), out.end());
    return out;
}

const Reading* entry_for(const Want& want, const std::vector<Reading>& standing) {
    for (auto it = standing.rbegin(); it != standing.rend(); ++it)
        if (it->kind == want.kind && (want.subject.empty() || it->subject == want.subject)) return &*it;
    return nullptr;
}

std::vector<commissioning::Assessment> assessments_of(const WorkStage& stage, const std::vector<Reading>& standing,
                                                      const std::vector<commissioning::Assessment>& assessments) {
    const auto wanted = [&](K kind) {
        // Photographs and remarks belong to no part more than to another.
        return kind != K::photograph && kind != K::remark &&
               std::any_of(stage.wants.begin(), stage.wants.end(), [kind](const Want& w) { return w.kind == kind; });
    };
    std::vector<commissioning::Assessment> out;
    for (const commissioning::Assessment& one : assessments) {
        // The first reading that an assessment rests on says where it belongs.
        for (const std::string& id : one.reading_ids) {
            const auto at =
                std::find_if(standing.begin(), standing.end(), [&id](const Reading& r) { return r.id == id; });
            if (at == standing.end()) continue;
            if (wanted(at->kind)) out.push_back(one);
            break;
        }
    }
    return out;
}

bool of_the_chain(const commissioning::Assessment& assessment) {
    return assessment.subject == "Record";
}

WorkState state_of(const WorkStage& stage, const std::vector<Reading>& standing,
                   const std::vector<commissioning::Assessment>& assessments, const EntryBreaks& breaks) {
    QString altered;
    int needed = 0;
    int entered = 0;
    bool any = false;
    bool held = false;
    bool refused = false;
    for (const Want& want : stage.wants) {
        const Reading* entry = entry_for(want, standing);
        if (entry != nullptr && want.kind != K::photograph) any = true;
        if (entry != nullptr && altered.isEmpty() && breaks.count(entry->id) > 0) altered = breaks.at(entry->id).word;
        if (entry != nullptr && want.kind == K::hold_point && entry->value < 0.5) held = true;
        if (entry != nullptr && (want.kind == K::water_vented || want.kind == K::safety_valve_lift))
            refused = refused || entry->value < 0.5;
        if (!want.needed) continue;
        ++needed;
        if (entry != nullptr) ++entered;
    }
    const std::vector<commissioning::Assessment> own = assessments_of(stage, standing, assessments);
    const auto has = [&own](commissioning::Verdict verdict) {
        return std::any_of(own.begin(), own.end(),
                           [verdict](const auto& a) { return a.verdict == verdict && !of_the_chain(a); });
    };
    if (!altered.isEmpty()) return {Mark::stop, altered};
    if (refused || has(commissioning::Verdict::failed)) return {Mark::stop, stage_words("failed")};
    if (held) return {Mark::stop, stage_words("held")};
    if (needed == 0 && !any) return {Mark::note, stage_words("nothing needed")};
    if (!any) return {Mark::empty, stage_words("outstanding")};
    if (entered < needed) return {Mark::begun, stage_words("%1 of %2 entered").arg(entered).arg(needed)};
    if (has(commissioning::Verdict::cannot_tell)) return {Mark::caution, stage_words("not settled")};
    return {Mark::ready, own.empty() ? stage_words("entered") : stage_words("passed")};
}

QString expected_words(K kind, const plan::Plan& plan, const QDate& day) {
    const commissioning::Expected& e = plan.expected;
    const QString bar = QStringLiteral("bar");
    const auto at_most = [](std::optional<double> limit, const QString& unit, int decimals) {
        return limit ? stage_words("at most %1").arg(quantity(*limit, unit, decimals)) : QString();
    };
    switch (kind) {
        case K::pressure_hold_start:
            return stage_words("%1 of dry nitrogen, never above %2")
                .arg(quantity(e.test_pressure_bar, bar, 1), quantity(e.max_pressure_bar, bar, 1));
        case K::pressure_hold_end: return stage_words("as at the start, by the temperature");
        case K::vacuum_level:
            return stage_words("below %1").arg(quantity(paper::vacuum_target_pa, QStringLiteral("Pa")));
        case K::vacuum_after_rise:
            return stage_words("%1 min after valve-off at most %2")
                .arg(paper::vacuum_wait_min)
                .arg(quantity(e.limits.most_vacuum_pa.value_or(paper::vacuum_limit_pa), QStringLiteral("Pa")));
        case K::charge_added:
            return e.extra_charge_kg > 0.0 ? quantity(e.extra_charge_kg, QStringLiteral("kg"), 3)
                                           : stage_words("none planned");
        case K::cold_pressure: {
            QStringList parts;
            if (e.reducing_valve_bar > 0.0)
                parts << stage_words("set to %1").arg(quantity(e.reducing_valve_bar, bar, 1));
            if (e.safety_valve_bar > 0.0)
                parts << stage_words("safety valve opens at %1").arg(quantity(e.safety_valve_bar, bar, 1));
            return parts.join(QStringLiteral("; "));
        }
        case K::insulation_resistance:
            return stage_words("at least %1")
                .arg(quantity(e.limits.least_insulation_mohm.value_or(1.0), QStringLiteral("MΩ"), 1));
        case K::earth_resistance: return at_most(e.limits.most_earth_ohm, QStringLiteral("Ω"), 1);
        case K::loop_impedance: return at_most(e.limits.most_loop_ohm, QStringLiteral("Ω"), 2);
        case K::residual_current_trip: return at_most(e.limits.most_trip_ms.value_or(300.0), QStringLiteral("ms"), 0);
        case K::tap_temperature: return at_most(e.limits.most_tap_c, QStringLiteral("°C"), 0);
        case K::set_point:
        case K::heating_end:
        case K::water_temperature:
            return stage_words("set-point %1").arg(quantity(e.set_point_c, QStringLiteral("°C"), 0));
        case K::hygiene_setting:
            if (!(e.hygiene_target_c > 0.0)) return stage_words("none planned");
            return stage_words("%1 every %2")
                .arg(quantity(e.hygiene_target_c, QStringLiteral("°C"), 0),
                     quantity(e.hygiene_every_days, stage_words("days"), 0));
        default: break;
    }
    if (const commissioning::Band* band = band_of(kind, plan, day))
        return stage_words("about %1 (%2 to %3) in %4")
            .arg(quantity(band->mid, qs(band->unit), band->decimals), number(band->low, band->decimals),
                 number(band->high, band->decimals),
                 QLocale(QLocale::English, QLocale::UnitedKingdom).monthName(day.month()));
    if (kind == K::supply_current)
        return stage_words("at most %1").arg(quantity(e.rated_current_a, QStringLiteral("A"), 1));
    return {};
}

}  // namespace wg::ui
