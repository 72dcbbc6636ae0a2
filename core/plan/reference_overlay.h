#pragma once
// The firm's own equipment laid over that of the program, with the checks that reach across items.

#include <string>
#include <vector>

#include "core/plan/reference.h"

namespace wg::plan {

/// An item's text, and what it is called where something is wrong with it.
struct OwnItem {
    std::string where;
    std::string text;  ///< docs/equipment-format.md
};

/// The reference with the firm's items after the program's, and why an item was left out. What is left out hinders
/// nothing else: the others are there.
struct Overlay {
    Reference reference;
    std::vector<Problem> left_out;
};

/// Items of `own` are left out when their text is refused, when their id is taken (by the program's: an own item never
/// stands in the place of one, since jobs and issued papers name items by id and would mean something else from then
/// on; or by one before it), when their refrigerant has no table here, when the compressor's data cannot be computed
/// with, or when a cylinder names a block that is nowhere. Weather, prices and rules stay as they are. Pure.
[[nodiscard]] Overlay with_own_items(const Reference& program, const std::vector<OwnItem>& own);

/// What would keep these items out of `reference`; empty: nothing. An item of `own` whose id is `replaces` counts as a
/// later version of the one that is there.
[[nodiscard]] std::vector<Problem> problems_beside(const Reference& reference, const Catalogue& own,
                                                   const std::string& where, const std::string& replaces = {});

/// Ids of a choice that no catalogue here holds, each with its kind in words: "collector 'x'". Empty: all are known.
[[nodiscard]] std::vector<std::string> unknown_equipment(const Catalogue& catalogue, const Choice& choice);

}  // namespace wg::plan
