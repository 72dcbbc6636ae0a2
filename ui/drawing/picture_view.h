#pragma once
// A widget for a picture that is painted by a function, with words for what the pointer is over.

#include <QPainter>
#include <QWidget>
#include <functional>

#include "ui/common/theme.h"

namespace wg::ui {

class PictureView : public QWidget {
    Q_OBJECT
   public:
    using Paint = std::function<void(QPainter& painter, const QRectF& area, const Theme& theme, double text_units)>;
    /// Words for a place in the area; empty: nothing there.
    using Words = std::function<QString(const QRectF& area, QPointF at, double text_units)>;

    explicit PictureView(QWidget* parent = nullptr);
    void show_picture(Paint paint, Words words);
    /// PNG at twice its size on screen and never smaller than a page's width asks.
    [[nodiscard]] bool save(const QString& path) const;
    [[nodiscard]] QSize minimumSizeHint() const override { return {420, 240}; }
    [[nodiscard]] QSize sizeHint() const override { return {860, 460}; }

   Q_SIGNALS:
    void pointed_at(const QString& text);
    /// A press with the main button, with what the picture was painted in.
    void pressed_at(const QRectF& area, QPointF at, double text_units);

   protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

   private:
    [[nodiscard]] double text_units() const;
    Paint paint_;
    Words words_;
};

}  // namespace wg::ui
