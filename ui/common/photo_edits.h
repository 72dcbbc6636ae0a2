#pragma once
// The verbs about photographs' places and marks, and pictures under the sketch (see edits.h).

#include <QString>
#include <string>

#include "core/job/job.h"

namespace wg::ui {

class JobSession;

/// Replaces the photograph of the same id.
void set_photograph(JobSession& session, const Photograph& photograph, const QString& merge_key = {});
/// Arrow or text on a photograph; returns its id.
std::string add_mark(JobSession& session, const std::string& photograph_id, PhotoMark mark);
void set_mark(JobSession& session, const std::string& photograph_id, const PhotoMark& mark,
              const QString& merge_key = {});
void remove_mark(JobSession& session, const std::string& photograph_id, const std::string& mark_id);

/// Lays a photograph under the sketch, its middle at `middle` and `width_m` wide until it is scaled; `width_px` of the
/// original. Returns the picture's id.
std::string add_underlay(JobSession& session, const std::string& photograph_id, Point2 middle, double width_m,
                         double width_px, double height_px);
void set_underlay(JobSession& session, const UnderlayPicture& picture, const QString& merge_key = {});
void remove_underlay(JobSession& session, const std::string& underlay_id);
/// With it go the pictures under the sketch that show it.
void remove_photograph_and_underlays(JobSession& session, const std::string& photograph_id);

}  // namespace wg::ui
