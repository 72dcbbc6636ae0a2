#pragma once
// One day hour by hour: water by layers, plate and air, power, light, draws, frost.

#include <optional>

#include "ui/yield/day_picture.h"
#include "ui/yield/picture_page.h"

class QDateEdit;
class QToolButton;

namespace wg::ui {

class DayPage : public PicturePage {
    Q_OBJECT
   public:
    explicit DayPage(QWidget* parent = nullptr);
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried = false);
    /// 0..364, day of a year without 29 February; beyond the ends it goes round.
    void show_day(int day);
    void show_notable(NotableDay which);
    [[nodiscard]] int day() const;
    [[nodiscard]] CurvesPicture picture() const;
    [[nodiscard]] FigureTable figures() const override;

   protected:
    [[nodiscard]] QString caption() const override;

   private:
    void refresh();
    [[nodiscard]] const season::HourSeries* hours() const;
    [[nodiscard]] QString step(int hours_on, int days_on);

    std::shared_ptr<const plan::Plan> plan_;
    QDateEdit* date_ = nullptr;
    std::vector<std::pair<NotableDay, QToolButton*>> jumps_;
    std::optional<int> cursor_;  ///< hour 0..23
};

}  // namespace wg::ui
