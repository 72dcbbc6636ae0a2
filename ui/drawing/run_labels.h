#pragma once
// Places for the labels of the pipe run: none over another, nor over a line as long as there is room elsewhere.

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <vector>

#include "ui/drawing/lettering.h"
#include "ui/drawing/run_painter.h"

namespace wg::ui {

class RunLabels {
   public:
    explicit RunLabels(const QRectF& bounds) : bounds_(bounds), near_(bounds), drawn_() {}

    void keep_free(const QRectF& box);
    void keep_free_line(QPointF a, QPointF b, double width);
    /// A label that stands where it stands.
    void take(const QRectF& box, const QString& text);

    struct Place {
        QRectF box;
        bool leader = false;
        QLineF line;  ///< from the anchor to the box
    };
    /// Beside its anchor where that is free, else the nearest place that is; it is taken from then on.
    [[nodiscard]] Place place(QPointF anchor, QSizeF size, double line, const QString& text);

    [[nodiscard]] const std::vector<RunLabel>& taken() const { return taken_; }

   private:
    [[nodiscard]] bool on_label(const QRectF& box) const;
    [[nodiscard]] double cost(const QRectF& box, QPointF anchor, double line) const;

    QRectF bounds_;
    LabelPlacer near_;   ///< knows lines, shapes and labels
    LabelPlacer drawn_;  ///< the same without bounds, to be asked how much of a box is covered
    std::vector<RunLabel> taken_;
    std::vector<QLineF> leaders_;
};

}  // namespace wg::ui
