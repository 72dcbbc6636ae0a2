#pragma once
// The two pictures of the sky over a job's site: the sun's way, and the year's light by tilt and bearing.

#include <memory>

#include "core/plan/plan.h"
#include "ui/drawing/orientation_map_painter.h"
#include "ui/drawing/sun_path_painter.h"
#include "ui/yield/yield_page.h"

class QLabel;

namespace wg::ui {

class PictureView;

/// A picture with words below, as a page of the stage.
class SkyPage : public YieldPage {
    Q_OBJECT
   public:
    explicit SkyPage(QWidget* parent = nullptr);
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;

   protected:
    PictureView& view() { return *view_; }
    void set_words(const QString& text);

   private:
    PictureView* view_ = nullptr;
    QLabel* words_ = nullptr;
};

class SunPathPage : public SkyPage {
    Q_OBJECT
   public:
    using SkyPage::SkyPage;
    /// `placed` null: the sky alone.
    void show_site(const Site& site, const plan::PlacementPlan* placed);
    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] const SunPathPicture& picture() const { return picture_; }

   private:
    sky::SunPlace place_;  ///< that the table in the picture was made for
    SunPathPicture picture_;
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
