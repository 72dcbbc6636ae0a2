#pragma once
// Cost and carbon dioxide over the years: new set against present heater, with its range, and the choices side by side.

#include <optional>

#include "core/economy/course.h"
#include "ui/drawing/curves_painter.h"
#include "ui/yield/picture_page.h"

class QButtonGroup;

namespace wg::ui {

/// What the economy of the plan was worked out with, to ask for the same at both ends of the range.
struct CostBasis {
    Demand demand;
    economy::Tariffs tariffs;
};

/// Another choice of the job, planned complete.
struct CostChoice {
    QString label;
    std::shared_ptr<const plan::Plan> plan;
};

class CostPage : public PicturePage {
    Q_OBJECT
   public:
    /// Spent by set and present heater; saved less spent, all choices; carbon dioxide.
    enum class View { spent, choices, emissions };

    explicit CostPage(QWidget* parent = nullptr);
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, const std::optional<CostBasis>& basis,
                  bool carried = false);
    /// The choices beside the one that is shown; `waiting`: some are still being planned.
    void set_others(std::vector<CostChoice> others, bool waiting);
    void show_view(View view);
    [[nodiscard]] View shown() const;
    [[nodiscard]] CurvesPicture picture(const Theme& theme) const;
    [[nodiscard]] const economy::Course& course() const { return course_; }
    [[nodiscard]] FigureTable figures() const override;

   Q_SIGNALS:
    void others_asked();  ///< a view is shown that compares choices

   protected:
    [[nodiscard]] QString caption() const override;

   private:
    struct Column {
        QString name;
        QString key;
        std::vector<double> values;  ///< by year
        enum class Role { middle, low, high, present, other } role = Role::middle;
    };
    void refresh();
    [[nodiscard]] std::vector<Column> columns() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] QString view_name() const;
    [[nodiscard]] QString year_words(int year) const;
    [[nodiscard]] QString all_words() const;
    [[nodiscard]] int last_year() const;

    std::shared_ptr<const plan::Plan> plan_;
    std::optional<CostBasis> basis_;
    economy::CourseEnds ends_;
    economy::Course course_;
    std::vector<CostChoice> others_;
    bool waiting_ = false;
    QButtonGroup* views_ = nullptr;
    std::optional<int> cursor_;  ///< year
};

}  // namespace wg::ui
