#pragma once
// Sun and light: the light on a collector by months, the sun's way over the site, the light by tilt and bearing.

#include <memory>

#include "core/plan/plan.h"
#include "ui/yield/yield_page.h"

class QButtonGroup;
class QComboBox;
class QStackedWidget;

namespace wg::ui {

class LightMonths;
class OrientationPage;
class SunPathPage;

class LightPage : public YieldPage {
    Q_OBJECT
   public:
    explicit LightPage(QWidget* parent = nullptr);
    /// `plan` null: nothing to show. `weather` may be null while it is being prepared.
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, const Site& site,
                  const std::shared_ptr<const plan::PreparedWeather>& weather);
    enum class View { months, sun_path, orientation };
    void show_view(View view);
    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;

   private:
    [[nodiscard]] const YieldPage& current() const;
    void refresh();

    QButtonGroup* views_ = nullptr;
    QComboBox* collectors_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    LightMonths* months_ = nullptr;
    SunPathPage* sun_path_ = nullptr;
    OrientationPage* orientation_ = nullptr;
    std::shared_ptr<const plan::Plan> plan_;
    std::shared_ptr<const plan::PreparedWeather> weather_;
    Site site_;
};

}  // namespace wg::ui
