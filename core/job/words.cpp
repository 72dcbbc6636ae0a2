#include "core/job/words.h"

namespace wg {

template <>
const std::vector<Word<Terrain>>& words<Terrain>() {
    static const std::vector<Word<Terrain>> list = {
        {Terrain::sea_0, "sea_0", "open sea or coast (0)"},
        {Terrain::open_i, "open_i", "lakes or flat open land (I)"},
        {Terrain::farmland_ii, "farmland_ii", "farmland with single trees or houses (II)"},
        {Terrain::suburb_iii, "suburb_iii", "village, suburb or forest (III)"},
        {Terrain::town_iv, "town_iv", "town centre (IV)"},
    };
    return list;
}

template <>
const std::vector<Word<SurfaceKind>>& words<SurfaceKind>() {
    static const std::vector<Word<SurfaceKind>> list = {
        {SurfaceKind::roof, "roof", "roof"},
        {SurfaceKind::wall, "wall", "wall"},
        {SurfaceKind::terrace, "terrace", "terrace"},
        {SurfaceKind::ground, "ground", "ground"},
    };
    return list;
}

template <>
const std::vector<Word<Covering>>& words<Covering>() {
    static const std::vector<Word<Covering>> list = {
        {Covering::clay_tile, "clay_tile", "clay tiles"},
        {Covering::concrete_tile, "concrete_tile", "concrete tiles"},
        {Covering::slate, "slate", "slates"},
        {Covering::standing_seam, "standing_seam", "standing seam"},
        {Covering::membrane, "membrane", "roofing membrane"},
        {Covering::masonry, "masonry", "masonry"},
        {Covering::render, "render", "render"},
        {Covering::timber, "timber", "timber boarding"},
        {Covering::paving, "paving", "paving"},
        {Covering::soil, "soil", "soil"},
    };
    return list;
}

template <>
const std::vector<Word<RoofForm>>& words<RoofForm>() {
    static const std::vector<Word<RoofForm>> list = {
        {RoofForm::duo_pitch, "duo_pitch", "duo-pitch roof"},
        {RoofForm::mono_pitch, "mono_pitch", "mono-pitch roof"},
        {RoofForm::hip, "hip", "hip roof"},
        {RoofForm::flat, "flat", "flat roof"},
        {RoofForm::not_a_roof, "not_a_roof", "not a roof"},
    };
    return list;
}

template <>
const std::vector<Word<KeepOutKind>>& words<KeepOutKind>() {
    static const std::vector<Word<KeepOutKind>> list = {
        {KeepOutKind::roof_window, "roof_window", "roof window"},
        {KeepOutKind::vent, "vent", "vent"},
        {KeepOutKind::valley, "valley", "valley"},
        {KeepOutKind::reserved, "reserved", "to be kept free"},
    };
    return list;
}

template <>
const std::vector<Word<ObstacleKind>>& words<ObstacleKind>() {
    static const std::vector<Word<ObstacleKind>> list = {
        {ObstacleKind::box, "box", "box"},
        {ObstacleKind::prism, "prism", "building outline"},
        {ObstacleKind::post, "post", "post"},
        {ObstacleKind::tree, "tree", "tree"},
    };
    return list;
}

template <>
const std::vector<Word<ObstacleUse>>& words<ObstacleUse>() {
    static const std::vector<Word<ObstacleUse>> list = {
        {ObstacleUse::chimney, "chimney", "chimney"},
        {ObstacleUse::vent, "vent", "vent"},
        {ObstacleUse::dormer, "dormer", "dormer"},
        {ObstacleUse::parapet, "parapet", "parapet"},
        {ObstacleUse::neighbour, "neighbour", "neighbouring building"},
        {ObstacleUse::pole, "pole", "pole or aerial"},
        {ObstacleUse::tree, "tree", "tree"},
        {ObstacleUse::other, "other", "something else"},
    };
    return list;
}

template <>
const std::vector<Word<BuildingShape>>& words<BuildingShape>() {
    static const std::vector<Word<BuildingShape>> list = {
        {BuildingShape::gable, "gable", "gable roof"},
        {BuildingShape::hip, "hip", "hip roof"},
        {BuildingShape::mono_pitch, "mono_pitch", "mono-pitch roof"},
        {BuildingShape::lean_to, "lean_to", "lean-to"},
        {BuildingShape::flat, "flat", "flat roof"},
    };
    return list;
}

template <>
const std::vector<Word<MarkKind>>& words<MarkKind>() {
    static const std::vector<Word<MarkKind>> list = {
        {MarkKind::arrow, "arrow", "arrow"},
        {MarkKind::text, "text", "text"},
    };
    return list;
}

template <>
const std::vector<Word<TappingCycle>>& words<TappingCycle>() {
    static const std::vector<Word<TappingCycle>> list = {
        {TappingCycle::s, "s", "S"},    {TappingCycle::m, "m", "M"},       {TappingCycle::l, "l", "L"},
        {TappingCycle::xl, "xl", "XL"}, {TappingCycle::xxl, "xxl", "XXL"},
    };
    return list;
}

template <>
const std::vector<Word<Fuel>>& words<Fuel>() {
    static const std::vector<Word<Fuel>> list = {
        {Fuel::electric_immersion, "electric_immersion", "electric immersion heater"},
        {Fuel::natural_gas, "natural_gas", "natural gas"},
        {Fuel::lpg, "lpg", "liquefied petroleum gas"},
        {Fuel::heating_oil, "heating_oil", "heating oil"},
        {Fuel::wood, "wood", "wood"},
    };
    return list;
}

template <>
const std::vector<Word<DrawSource>>& words<DrawSource>() {
    static const std::vector<Word<DrawSource>> list = {
        {DrawSource::cycle, "cycle", "the same every day, by a cycle"},
        {DrawSource::household, "household", "a household, different every day"},
    };
    return list;
}

template <>
const std::vector<Word<DayRhythm>>& words<DayRhythm>() {
    static const std::vector<Word<DayRhythm>> list = {
        {DayRhythm::even, "even", "mornings and evenings alike"},
        {DayRhythm::morning, "morning", "mostly mornings"},
        {DayRhythm::evening, "evening", "mostly evenings"},
    };
    return list;
}

template <>
const std::vector<Word<HolidayRule>>& words<HolidayRule>() {
    static const std::vector<Word<HolidayRule>> list = {
        {HolidayRule::as_usual, "as_usual", "kept warm as usual"},
        {HolidayRule::off, "off", "off, no frost protection"},
        {HolidayRule::frost_safe, "frost_safe", "off but kept from freezing"},
    };
    return list;
}

template <>
const std::vector<Word<BackUpRule>>& words<BackUpRule>() {
    static const std::vector<Word<BackUpRule>> list = {
        {BackUpRule::when_blocked_or_cold, "when_blocked_or_cold", "pump cannot run, or water is cold"},
        {BackUpRule::below_wanted, "below_wanted", "only when water is cold"},
        {BackUpRule::never, "never", "never"},
    };
    return list;
}

template <>
const std::vector<Word<HygieneRule>>& words<HygieneRule>() {
    static const std::vector<Word<HygieneRule>> list = {
        {HygieneRule::none, "none", "none"},
        {HygieneRule::weekly, "weekly", "once a week"},
        {HygieneRule::daily, "daily", "every day"},
    };
    return list;
}

template <>
const std::vector<Word<HygieneSource>>& words<HygieneSource>() {
    static const std::vector<Word<HygieneSource>> list = {
        {HygieneSource::immersion, "immersion", "immersion heater alone"},
        {HygieneSource::pump_then_immersion, "pump_then_immersion", "heat pump, then immersion heater"},
    };
    return list;
}

template <>
const std::vector<Word<Hand>>& words<Hand>() {
    static const std::vector<Word<Hand>> list = {
        {Hand::left, "left", "connections left"},
        {Hand::right, "right", "connections right"},
    };
    return list;
}

template <>
const std::vector<Word<Joined>>& words<Joined>() {
    static const std::vector<Word<Joined>> list = {
        {Joined::parallel, "parallel", "in parallel"},
        {Joined::series, "series", "one after the other"},
    };
    return list;
}

template <>
const std::vector<Word<RoutePointKind>>& words<RoutePointKind>() {
    static const std::vector<Word<RoutePointKind>> list = {
        {RoutePointKind::free, "free", "bend"},
        {RoutePointKind::roof_passage, "roof_passage", "roof passage"},
        {RoutePointKind::wall_passage, "wall_passage", "wall passage"},
        {RoutePointKind::floor_passage, "floor_passage", "floor passage"},
    };
    return list;
}

template <>
const std::vector<Word<JobState>>& words<JobState>() {
    static const std::vector<Word<JobState>> list = {
        {JobState::visit, "visit", "visit"},       {JobState::planning, "planning", "planning"},
        {JobState::offered, "offered", "offered"}, {JobState::accepted, "accepted", "accepted"},
        {JobState::fitted, "fitted", "fitted"},    {JobState::in_service, "in_service", "in service"},
        {JobState::closed, "closed", "closed"},
    };
    return list;
}

}  // namespace wg
