#pragma once
// Lettering in painter units of any size: the same call serves a screen in pixels and paper in tenths of a millimetre.

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <vector>

namespace wg::ui {

class Lettering {
   public:
    /// `text_units`: height of the em square in painter units, above 0.
    explicit Lettering(double text_units, bool bold = false);

    [[nodiscard]] double width(const QString& text) const;
    [[nodiscard]] double line() const;  ///< height of one line
    [[nodiscard]] QSizeF size(const QString& text) const { return {width(text), line()}; }
    /// Box of unturned text of which the side or corner named by `hold` sits on `anchor`.
    [[nodiscard]] QRectF box(QPointF anchor, Qt::Alignment hold, const QString& text) const;
    /// Draws one line, turned clockwise about the anchor.
    void draw(QPainter& painter, QPointF anchor, Qt::Alignment hold, const QString& text, const QColor& colour,
              double turn_deg = 0.0) const;
    /// The same in the middle of a box, on a plate of `plate` colour (no plate when it is invalid).
    void draw_in(QPainter& painter, const QRectF& box, const QString& text, const QColor& colour,
                 const QColor& plate = QColor()) const;

   private:
    QFont font_;
    double scale_ = 1.0;  ///< fonts come in whole pixels; the rest is scaled
    QFontMetricsF metrics_;
};

/// Finds a place for labels beside their anchors so that they stay clear of what is drawn and of each other.
class LabelPlacer {
   public:
    struct Label {
        QRectF box;
        bool far = false;  ///< so far from its anchor that a leader line is wanted
    };

    /// Labels are kept inside `bounds` where possible; an empty rectangle sets no bounds.
    explicit LabelPlacer(const QRectF& bounds = {}) : bounds_(bounds) {}
    void keep_free(const QRectF& box) { taken_.push_back(box); }
    void keep_free_line(QPointF a, QPointF b, double width);
    /// The freest box of `size` at `gap` or a few gaps from the anchor; it is taken from then on. `prefer`: direction
    /// (unit length) to look in first; none by default.
    Label place(QPointF anchor, QSizeF size, double gap, QPointF prefer = {});
    /// The same without taking it.
    [[nodiscard]] Label find(QPointF anchor, QSizeF size, double gap, QPointF prefer = {}) const;
    [[nodiscard]] bool is_free(const QRectF& box) const;
    /// How much of a box is taken, summed over what takes it; 0: free.
    [[nodiscard]] double crowding(const QRectF& box) const;

   private:
    /// Crowding times 10 and `rest` on top; not summed to the end once it cannot fall below `enough`.
    [[nodiscard]] double score(const QRectF& box, double rest, double enough) const;

    QRectF bounds_;
    std::vector<QRectF> taken_;
};

}  // namespace wg::ui
