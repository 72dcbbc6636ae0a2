#pragma once
// The horizon as it is entered, over the sun's way at that place.

#include "ui/drawing/sun_path_source.h"

namespace wg::ui {

class HorizonPicture : public PictureView {
    Q_OBJECT
   public:
    explicit HorizonPicture(QWidget* parent = nullptr);
    void show_site(const Site& site);
    /// Marks the reading in that row of the horizon's table; -1: none.
    void mark_row(int row);
    [[nodiscard]] const SunPathPicture& picture() const { return source_.picture(); }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 230}; }
    [[nodiscard]] QSize sizeHint() const override { return {360, 240}; }

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    void refresh();
    Location place_;
    std::vector<HorizonPoint> horizon_;
    int row_ = -1;
    SunPathSource source_;
};

}  // namespace wg::ui
