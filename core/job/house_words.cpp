#include "core/job/words.h"

namespace wg {

template <>
const std::vector<Word<HillKind>>& words<HillKind>() {
    static const std::vector<Word<HillKind>> list = {
        {HillKind::none, "none", "level ground"},
        {HillKind::hill, "hill", "hill or ridge"},
        {HillKind::cliff, "cliff", "cliff or escarpment"},
    };
    return list;
}

template <>
const std::vector<Word<OfferLineKind>>& words<OfferLineKind>() {
    static const std::vector<Word<OfferLineKind>> list = {
        {OfferLineKind::part, "part", "part"},
        {OfferLineKind::labour, "labour", "labour"},
        {OfferLineKind::subsidy, "subsidy", "subsidy"},
    };
    return list;
}

template <>
const std::vector<Word<EarthingSystem>>& words<EarthingSystem>() {
    static const std::vector<Word<EarthingSystem>> list = {
        {EarthingSystem::unknown, "unknown", "not known"},
        {EarthingSystem::tn_s, "tn_s", "TN-S"},
        {EarthingSystem::tn_c_s, "tn_c_s", "TN-C-S"},
        {EarthingSystem::tt, "tt", "TT"},
        {EarthingSystem::it, "it", "IT"},
    };
    return list;
}

template <>
const std::vector<Word<CableMethod>>& words<CableMethod>() {
    static const std::vector<Word<CableMethod>> list = {
        {CableMethod::a1, "a1", "A1: single cores in conduit in an insulated wall"},
        {CableMethod::a2, "a2", "A2: multi-core in conduit in an insulated wall"},
        {CableMethod::b1, "b1", "B1: single cores in conduit on a wall"},
        {CableMethod::b2, "b2", "B2: multi-core in conduit on a wall"},
        {CableMethod::c, "c", "C: multi-core clipped to a wall"},
        {CableMethod::e, "e", "E: multi-core in free air"},
    };
    return list;
}

template <>
const std::vector<Word<Fixture>>& words<Fixture>() {
    static const std::vector<Word<Fixture>> list = {
        {Fixture::basin, "basin", "washbasin"},
        {Fixture::bidet, "bidet", "bidet"},
        {Fixture::wc_cistern, "wc_cistern", "WC cistern"},
        {Fixture::shower, "shower", "shower"},
        {Fixture::bath, "bath", "bath"},
        {Fixture::kitchen_sink, "kitchen_sink", "kitchen sink"},
        {Fixture::washing_machine, "washing_machine", "washing machine"},
        {Fixture::dishwasher, "dishwasher", "dishwasher"},
        {Fixture::garden_tap, "garden_tap", "garden tap"},
    };
    return list;
}

}  // namespace wg
