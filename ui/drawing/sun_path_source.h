#pragma once
// Fills the sun-path picture from a site and a collector, for every stage that shows it, and puts it into a view.

#include <string>

#include "core/job/job.h"
#include "core/site/geometry.h"
#include "ui/drawing/picture_view.h"
#include "ui/drawing/sun_path_painter.h"

namespace wg::ui {

class SunPathSource {
   public:
    /// Sun and horizon of a site; the sun's table is worked out anew only when the place is another.
    void show_site(const Site& site);
    /// And what stands before a collector on that surface; null: the sky alone.
    void show_plate(const Site& site, const site::PlacedCollector* placed, const std::string& surface_id);
    void mark_horizon(const std::optional<HorizonPoint>& point) { picture_.marked = point; }
    void mark_sun(const std::optional<SunPathPicture::SunMark>& sun) { picture_.now = sun; }
    void show_few_lines(bool on) { picture_.few_lines = on; }
    [[nodiscard]] const SunPathPicture& picture() const { return picture_; }

    /// Paints into the view, with words for what the pointer is over. The source has to outlive the view's use of it.
    void put_into(PictureView& view) const;

   private:
    sky::SunPlace place_;  ///< that the table in the picture was made for
    SunPathPicture picture_;
};

/// "21 June: sun from 5:30 to 21:20, at most 66 deg high. 21 December: ..." and that times are standard time.
[[nodiscard]] QString sun_path_words(const SunPathPicture& picture);

}  // namespace wg::ui
