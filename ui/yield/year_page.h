#pragma once
// The year by months: where the heat comes from, where it goes, electricity, hours and comfort.

#include <optional>

#include "ui/yield/picture_page.h"
#include "ui/yield/year_measures.h"

class QComboBox;

namespace wg::ui {

class YearPage : public PicturePage {
    Q_OBJECT
   public:
    explicit YearPage(QWidget* parent = nullptr);
    /// `carried`: the yearly figures are those from before the last edit.
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried);
    void show_measure(YearMeasure measure);
    [[nodiscard]] YearMeasure measure() const;
    /// What is painted, in the colours of the window.
    [[nodiscard]] BarsPicture picture() const;
    [[nodiscard]] FigureTable figures() const override;

   protected:
    [[nodiscard]] QString caption() const override;

   private:
    void refresh();
    [[nodiscard]] QString words_of(std::size_t month) const;

    std::shared_ptr<const plan::Plan> plan_;
    QComboBox* measures_ = nullptr;
    std::optional<std::size_t> cursor_;
};

/// Short English month names, January first.
[[nodiscard]] QStringList month_names();

}  // namespace wg::ui
