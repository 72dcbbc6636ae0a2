#pragma once
// The year as a carpet of days and hours: load and comfort, with every hour marked in which water fell short.

#include <QString>

#include "ui/drawing/carpet_painter.h"
#include "ui/yield/picture_page.h"

class QComboBox;

namespace wg::season {
struct HourSeries;
}

namespace wg::ui {

class ComfortPage : public PicturePage {
    Q_OBJECT
   public:
    enum class Measure { drawn, below_wanted, top, electricity, pump };

    explicit ComfortPage(QWidget* parent = nullptr);
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried = false);
    void show_measure(Measure measure);
    [[nodiscard]] Measure measure() const;
    [[nodiscard]] const CarpetPicture& picture() const { return picture_; }
    [[nodiscard]] FigureTable figures() const override;

   Q_SIGNALS:
    void day_asked(int day);  ///< 0..364, to be looked at hour by hour

   protected:
    [[nodiscard]] QString caption() const override;

   private:
    void refresh();
    [[nodiscard]] const season::HourSeries* hours() const;
    [[nodiscard]] QString step(int days_on, int hours_on);
    [[nodiscard]] QString words_at(int hour) const;

    std::shared_ptr<const plan::Plan> plan_;
    QComboBox* measures_ = nullptr;
    std::vector<double> values_;  ///< what the picture shows; empty: not known
    CarpetPicture picture_;
    int cursor_ = -1;
};

}  // namespace wg::ui
