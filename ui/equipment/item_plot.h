#pragma once
// What the entered data make of a block or a collector, as curves.

#include <QWidget>

#include "core/heatpump/curves.h"
#include "core/plan/reference.h"
#include "ui/drawing/curves_painter.h"

class QLabel;

namespace wg::ui {

class PictureView;

class ItemPlot : public QWidget {
    Q_OBJECT
   public:
    explicit ItemPlot(QWidget* parent = nullptr);
    /// The only item of the catalogue.
    void show_item(const Catalogue& catalogue, const plan::Reference& reference);
    /// No curves, but why.
    void show_reason(const QString& reason);
    [[nodiscard]] bool has_picture() const;
    /// What stands below the picture.
    [[nodiscard]] QString words() const;

   private:
    void show_block(const BlockModel& block, const plan::Reference& reference);
    void show_collector(const CollectorModel& model);

    QLabel* title_ = nullptr;
    PictureView* view_ = nullptr;
    QLabel* words_ = nullptr;
};

/// The pictures themselves.
[[nodiscard]] CurvesPicture block_picture(const std::vector<heatpump::BlockCurve>& curves, const Theme& theme);
[[nodiscard]] CurvesPicture collector_picture(const std::vector<heatpump::CollectorCurve>& curves, const Theme& theme);

}  // namespace wg::ui
