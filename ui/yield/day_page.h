#pragma once
// One day hour by hour: water at the top and bottom, plate and air, power.

#include <QDate>

#include "ui/yield/chart_page.h"

class QComboBox;
class QSlider;

namespace wg::ui {

class DayPage : public ChartPage {
    Q_OBJECT
   public:
    explicit DayPage(QWidget* parent = nullptr);
    void set_plan(const std::shared_ptr<const plan::Plan>& plan);
    /// 0..364, day of a year without 29 February.
    void show_day(int day);
    [[nodiscard]] int day() const;
    [[nodiscard]] FigureTable figures() const override;

   private:
    void refresh();
    void jump(int which);

    std::shared_ptr<const plan::Plan> plan_;
    QSlider* slider_ = nullptr;
    QLabel* date_ = nullptr;
    QComboBox* jump_ = nullptr;
};

}  // namespace wg::ui
