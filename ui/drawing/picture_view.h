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

    /// What arrow keys do (`right` and `up` in steps of the picture, negative: left and down); the words are told.
    using Step = std::function<QString(int right, int up)>;
    /// A click, or Return for the place of the cursor (then `at` is null).
    using Click = std::function<void(const QRectF& area, const QPointF* at, double text_units)>;

    explicit PictureView(QWidget* parent = nullptr);
    void show_picture(Paint paint, Words words);
    /// No picture, but why.
    void show_reason(const QString& reason);
    [[nodiscard]] const QString& reason() const { return reason_; }
    [[nodiscard]] bool has_picture() const { return static_cast<bool>(paint_); }
    /// Makes the picture one that the keyboard reaches.
    void set_keys(Step step, Click click = {});
    /// For paper, in its colours: PNG at 300 dots an inch, or PDF when the name ends so. `caption`: a line below.
    [[nodiscard]] bool save(const QString& path, const QString& caption = {}) const;
    /// True while the picture is painted for a file: nothing of pointer and cursor belongs into it.
    [[nodiscard]] bool saving() const { return saving_; }
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
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

   private:
    [[nodiscard]] double text_units() const;
    void paint_page(QPainter& painter, const QSizeF& page, const QString& caption) const;
    Paint paint_;
    Words words_;
    QString reason_;
    Step step_;
    Click click_;
    mutable bool saving_ = false;
};

}  // namespace wg::ui
