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

/// All words of an enumeration, in the order lists show them. Specialised in words.cpp for every enum of job.h.
template <class E>
[[nodiscard]] const std::vector<Word<E>>& words();

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
