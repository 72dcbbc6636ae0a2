#pragma once
// The two pictures of the sky over a job's site: the sun's way, and the year's light by tilt and bearing.

#include <memory>

#include "core/plan/plan.h"
#include "ui/drawing/orientation_map_painter.h"
#include "ui/drawing/sun_path_source.h"
#include "ui/yield/picture_page.h"

namespace wg::ui {

using SkyPage = PicturePage;

class SunPathPage : public SkyPage {
    Q_OBJECT
   public:
    using SkyPage::SkyPage;
    /// `placed` null: the sky alone.
    void show_site(const Site& site, const plan::PlacementPlan* placed);
    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] const SunPathPicture& picture() const { return source_.picture(); }

   private:
    SunPathSource source_;
};

class OrientationPage : public SkyPage {
    Q_OBJECT
   public:
    using SkyPage::SkyPage;
    void show_site(const Site& site, const std::shared_ptr<const plan::PreparedWeather>& weather,
                   const std::vector<plan::PlacementPlan>& placements);
    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] const OrientationPicture& picture() const { return picture_; }

   private:
    std::shared_ptr<const plan::PreparedWeather> weather_;  ///< that the map was made for
    double albedo_ = -1.0;
    OrientationPicture picture_;
};

}  // namespace wg::ui
