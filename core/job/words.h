#pragma once
// The one spelling of every enumerator: in job files, on screens and on paper.
// `key` is what JSON holds; `text` is what people read.

#include <optional>
#include <string_view>
#include <vector>

#include "core/job/job.h"

namespace wg {

template <class E>
struct Word {
    E value;
    const char* key;
    const char* text;
};

/// All words of an enumeration, in the order lists show them. Specialised for every enum of job.h.
template <class E>
[[nodiscard]] const std::vector<Word<E>>& words();

// Declared before any use, so that every translation unit takes the ones in words.cpp.
template <>
const std::vector<Word<Terrain>>& words<Terrain>();
template <>
const std::vector<Word<SurfaceKind>>& words<SurfaceKind>();
template <>
const std::vector<Word<Covering>>& words<Covering>();
template <>
const std::vector<Word<RoofForm>>& words<RoofForm>();
template <>
const std::vector<Word<KeepOutKind>>& words<KeepOutKind>();
template <>
const std::vector<Word<ObstacleKind>>& words<ObstacleKind>();
template <>
const std::vector<Word<ObstacleUse>>& words<ObstacleUse>();
template <>
const std::vector<Word<BuildingShape>>& words<BuildingShape>();
template <>
const std::vector<Word<MarkKind>>& words<MarkKind>();
template <>
const std::vector<Word<OfferLineKind>>& words<OfferLineKind>();
template <>
const std::vector<Word<HillKind>>& words<HillKind>();
template <>
const std::vector<Word<EarthingSystem>>& words<EarthingSystem>();
template <>
const std::vector<Word<CableMethod>>& words<CableMethod>();
template <>
const std::vector<Word<Fixture>>& words<Fixture>();
template <>
const std::vector<Word<TappingCycle>>& words<TappingCycle>();
template <>
const std::vector<Word<DrawSource>>& words<DrawSource>();
template <>
const std::vector<Word<DayRhythm>>& words<DayRhythm>();
template <>
const std::vector<Word<HolidayRule>>& words<HolidayRule>();
template <>
const std::vector<Word<BackUpRule>>& words<BackUpRule>();
template <>
const std::vector<Word<HygieneRule>>& words<HygieneRule>();
template <>
const std::vector<Word<HygieneSource>>& words<HygieneSource>();
template <>
const std::vector<Word<Fuel>>& words<Fuel>();
template <>
const std::vector<Word<Hand>>& words<Hand>();
template <>
const std::vector<Word<Joined>>& words<Joined>();
template <>
const std::vector<Word<RoutePointKind>>& words<RoutePointKind>();
template <>
const std::vector<Word<ReadingKind>>& words<ReadingKind>();
template <>
const std::vector<Word<Occasion>>& words<Occasion>();
template <>
const std::vector<Word<PlateState>>& words<PlateState>();
template <>
const std::vector<Word<JobState>>& words<JobState>();

template <class E>
[[nodiscard]] const char* key_of(E value) {
    for (const Word<E>& w : words<E>()) {
        if (w.value == value) return w.key;
    }
    return "";
}

template <class E>
[[nodiscard]] const char* text_of(E value) {
    for (const Word<E>& w : words<E>()) {
        if (w.value == value) return w.text;
    }
    return "";
}

template <class E>
[[nodiscard]] std::optional<E> from_key(std::string_view key) {
    for (const Word<E>& w : words<E>()) {
        if (key == w.key) return w.value;
    }
    return std::nullopt;
}

}  // namespace wg
