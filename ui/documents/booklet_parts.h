#pragma once
// Parts of the hand-over booklet: large and plain, for people who know nothing of heat pumps.

#include "ui/documents/papers.h"

namespace wg::ui::paper {

inline constexpr double booklet_pt = 12.0;
inline constexpr double booklet_heading_pt = 15.0;
inline const Style booklet_text{booklet_pt, false, false};

/// How much hot water there is and how long it takes to get it back.
void booklet_hot_water(Flow& flow, const PaperInput& input);
/// Electricity and bills by month, with their range.
void booklet_bills(Flow& flow, const SharedInput& input);
/// What is normal, and what is not.
void booklet_watch(Flow& flow);
void booklet_never(Flow& flow, const PaperInput& input);
/// Scalding, legionella and being away.
void booklet_health(Flow& flow, const PaperInput& input);

/// Two columns of words, what and its answer.
void booklet_pairs(Flow& flow, const std::vector<std::pair<QString, QString>>& lines, const QString& left = {},
                   const QString& right = {});

}  // namespace wg::ui::paper
