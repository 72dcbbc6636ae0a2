#pragma once
// A store with something in every table, and what two equal stores have to answer.

#include "core/store/store.h"

namespace wg::store::test {

void fill(Store& store);
/// An equipment file of one cylinder; plain letters in id and name.
[[nodiscard]] std::string invented_cylinder(const std::string& id, const std::string& name);
void expect_same_answers(Store& one, Store& other);

}  // namespace wg::store::test
