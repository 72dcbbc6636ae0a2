#pragma once
// The site in plan on screen: elements are selected and dragged (Visit) or the run's bends are (Layout).

#include <functional>
#include <memory>
#include <string>

#include "ui/drawing/canvas.h"
#include "ui/drawing/canvas_tool.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {

class JobSession;

class SiteCanvas : public Canvas {
    Q_OBJECT
   public:
    enum class Drags { elements, bends };
    explicit SiteCanvas(Drags drags, QWidget* parent = nullptr);

    void set_session(JobSession* session);
    void set_selected(const std::string& id);
    [[nodiscard]] const std::string& selected() const { return selected_; }

    /// The next click (or Enter, in the middle of the view) gives a point in sketch coordinates to `then`; Escape
    /// drops the question. `prompt` stands in the bottom line meanwhile.
    void ask_point(const QString& prompt, std::function<void(Point2)> then);
    [[nodiscard]] bool asking() const { return static_cast<bool>(then_); }

    /// Pictures to lie under the sketch, asked for at each painting.
    using Underlays = std::function<std::vector<UnderlayImage>()>;
    void set_underlays(Underlays underlays) { underlays_ = std::move(underlays); }

    /// Gives the hand to a tool until it has finished; null takes it back. The canvas takes the focus.
    void set_tool(std::unique_ptr<CanvasTool> tool);
    [[nodiscard]] CanvasTool* tool() const { return tool_.get(); }

    [[nodiscard]] SiteView view() const { return {units_per_m(), origin()}; }

   Q_SIGNALS:
    void selection_changed(const QString& id);
    void tool_ended();

   protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] Fit fit_into(const QRectF& area) const override;
    void press(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void drag(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void release(QPointF at) override;
    void hover(QPointF at) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    bool focusNextPrevChild(bool next) override;

   private:
    [[nodiscard]] std::string id_at(QPointF at) const;
    [[nodiscard]] std::vector<std::string> ids_in_order() const;
    [[nodiscard]] std::optional<Point2> position_of(const std::string& id) const;
    void move_to(const std::string& id, Point2 to);
    void select(const std::string& id);
    void answer(Point2 point);
    void after_tool();
    void paint_prompt(QPainter& painter, const QString& text) const;
    void insert_bend(QPointF at);
    [[nodiscard]] QString words_for(const std::string& id) const;

    Drags drags_;
    JobSession* session_ = nullptr;
    std::string selected_;
    bool moving_ = false;
    Point2 grab_;   ///< element's position less the pointer's, when the drag began
    Point2 start_;  ///< element's position when the drag began
    std::function<void(Point2)> then_;
    QString prompt_;
    Underlays underlays_;
    std::unique_ptr<CanvasTool> tool_;
    std::vector<std::unique_ptr<CanvasTool>> retired_;  ///< may still be running: what it made took its place
};

}  // namespace wg::ui
