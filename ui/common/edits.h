#pragma once
// The verbs: one free function for each thing a user does to a job. Each makes one undo step through
// JobSession::edit(); a verb whose element does not exist, whose value is not finite, or that changes nothing makes
// none. Positions are rounded to whole millimetres here, once. Verbs about collectors and the run act on the
// session's current choice.
//
// `merge_key`: calls with the same non-empty key in a row become one step (a drag, typing in one field); the verbs
// for moving make their own key from the element. End a drag with JobSession::end_merge().

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/sizing_advice.h"
#include "ui/common/job_session.h"

namespace wg::ui {

/// A fresh UUID, version 4, without braces.
[[nodiscard]] std::string new_id();

// ------------------------------------------------------------------------------------------------ job and client
void set_number(JobSession& session, const std::string& number);
void set_title(JobSession& session, const std::string& title);
void set_client(JobSession& session, const Client& client, const QString& merge_key = {});
void set_survey(JobSession& session, const Survey& survey, const QString& merge_key = {});
void set_demand(JobSession& session, const Demand& demand, const QString& merge_key = {});
void set_state(JobSession& session, JobState state);
void set_notes(JobSession& session, const std::string& notes, const QString& merge_key = {});
void set_weather(JobSession& session, const std::string& climate_id);
void set_rule_set(JobSession& session, const std::string& rule_set_id);
void set_price_list(JobSession& session, const std::string& price_list_id);
/// Adds to the record with a fresh id; returns it. The record only grows, and undo does not take an entry back: to
/// correct, name the entry in corrects_id.
std::string append_reading(JobSession& session, Reading reading);
void set_limits(JobSession& session, const AcceptanceLimits& limits);
void set_aftercare_terms(JobSession& session, const AftercareTerms& terms, const QString& merge_key = {});
std::string add_photograph(JobSession& session, Photograph photograph);
void set_photograph_caption(JobSession& session, const std::string& photograph_id, const std::string& caption);
void remove_photograph(JobSession& session, const std::string& photograph_id);

// ---------------------------------------------------------------------------------------------------- the site
void set_location(JobSession& session, const Location& location, const QString& merge_key = {});
void set_terrain(JobSession& session, Terrain terrain);
/// nullopt: the rule set's assumption.
void set_basic_wind(JobSession& session, std::optional<double> basic_wind_m_s);
void set_ground_snow(JobSession& session, std::optional<double> ground_snow_kn_m2);
void set_ground_albedo(JobSession& session, double ground_albedo);
void set_sketch_up_azimuth(JobSession& session, double azimuth_deg);
void set_horizon(JobSession& session, const std::vector<HorizonPoint>& horizon);
/// The compass readings stay: the horizon's true bearings turn with it.
void set_declination(JobSession& session, double declination_deg);
/// nullopt: not marked.
void set_street_azimuth(JobSession& session, std::optional<double> azimuth_deg);

/// Elements given without an id get a fresh one, without a label one such as "Roof 2"; the id is returned.
std::string add_surface(JobSession& session, Surface surface);
std::string add_obstacle(JobSession& session, Obstacle obstacle);
std::string add_spot(JobSession& session, CylinderSpot spot);
std::string add_keep_out(JobSession& session, const std::string& surface_id, KeepOut keep_out);
/// Replaces the element of the same id.
void set_surface(JobSession& session, const Surface& surface, const QString& merge_key = {});
void set_obstacle(JobSession& session, const Obstacle& obstacle, const QString& merge_key = {});
void set_spot_data(JobSession& session, const CylinderSpot& spot, const QString& merge_key = {});
void set_keep_out(JobSession& session, const KeepOut& keep_out, const QString& merge_key = {});
/// Moves without turning, in sketch coordinates; a prism moves with its outline, and for it x and y are those of the
/// outline's first corner.
void move_obstacle(JobSession& session, const std::string& obstacle_id, double x_m, double y_m);
void move_spot(JobSession& session, const std::string& spot_id, double x_m, double y_m);
void move_surface(JobSession& session, const std::string& surface_id, double origin_x_m, double origin_y_m);
/// Surface (with the collectors on it, in every choice), obstacle, spot (choices move to the first one left), room
/// or keep-out.
void remove_element(JobSession& session, const std::string& id);

// ------------------------------------------------------------------------------------------------- the choices
/// A first proposal from catalogue and site: equipment that goes together, one collector on the first roof (else wall,
/// terrace, ground), the first spot. Becomes the current choice; the chosen one when there was none. Empty id and no
/// step when the catalogue has no collector, block or cylinder.
std::string add_choice(JobSession& session);
/// A copy under the next free letter, fresh ids throughout; becomes the current choice.
std::string duplicate_choice(JobSession& session, const std::string& choice_id);
/// A set of the advice on sizes as a further choice, with places as the advice found them; becomes the current choice.
/// Empty id and no step when the choice that the advice started from is gone.
std::string add_set_as_choice(JobSession& session, const plan::SizingWish& wish, const plan::SizingPoint& point);
void rename_choice(JobSession& session, const std::string& choice_id, const std::string& label);
void mark_chosen(JobSession& session, const std::string& choice_id);
void remove_choice(JobSession& session, const std::string& choice_id);

void set_collector_model(JobSession& session, const std::string& model_id);
void set_joined(JobSession& session, Joined joined);
void set_block_model(JobSession& session, const std::string& model_id);
void set_cylinder_model(JobSession& session, const std::string& model_id);
void set_spot(JobSession& session, const std::string& spot_id);
void set_fixing_method(JobSession& session, const std::string& method_id);
void add_extra(JobSession& session, const std::string& price_item, double quantity);
void set_extra_quantity(JobSession& session, const std::string& extra_id, double quantity);
void remove_extra(JobSession& session, const std::string& extra_id);

/// Where the whole collector lies inside the surface, off keep-outs, obstacles and other collectors, with the maker's
/// strip free where that can be had, as near as can be to the middle; the middle itself when there is no such place.
[[nodiscard]] Point2 free_place(const JobSession& session, const Surface& surface, const Placement& placement);
std::string add_collector(JobSession& session, const std::string& surface_id);
void remove_collector(JobSession& session, const std::string& placement_id);
void set_placement(JobSession& session, const Placement& placement, const QString& merge_key = {});
void move_placement(JobSession& session, const std::string& placement_id, double x_m, double y_m);
void turn_placement(JobSession& session, const std::string& placement_id, double turn_deg);
void set_hand(JobSession& session, const std::string& placement_id, Hand hand);
/// To free_place() of the other surface. Level surfaces get a frame that looks to the equator, steep ones lose theirs.
void move_placement_to_surface(JobSession& session, const std::string& placement_id, const std::string& surface_id);
/// Puts a collector where a search found a place, held by that fixing method: the one named, or a further one when the
/// id is empty. One step; returns the collector's id, empty when nothing could be done.
std::string put_collector(JobSession& session, const std::string& placement_id, Placement at,
                          const std::string& fixing_method);
/// nullopt: the plate lies with its surface.
void set_frame(JobSession& session, const std::string& placement_id, std::optional<double> tilt_deg,
               std::optional<double> azimuth_deg);

/// `index`: place in the order from collector to block; past the end: last.
std::string add_route_point(JobSession& session, std::size_t index, const Point3& position,
                            RoutePointKind kind = RoutePointKind::free);
void move_route_point(JobSession& session, const std::string& point_id, const Point3& position);
void set_route_point_kind(JobSession& session, const std::string& point_id, RoutePointKind kind);
void remove_route_point(JobSession& session, const std::string& point_id);
void set_route(JobSession& session, std::vector<RoutePoint> route);

}  // namespace wg::ui
