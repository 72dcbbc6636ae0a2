#pragma once
// An outline as a table of corners, for surfaces and keep-outs that are no rectangles.

#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

#include "core/quantity/geometry.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class CornerTable : public QWidget {
    Q_OBJECT
   public:
    explicit CornerTable(QWidget* parent = nullptr);
    /// Other pairs of figures than corners: headings of the columns, and the pair that a first row begins with.
    void set_meaning(const QString& first, const QString& second, Point2 first_row);
    void set_outline(const std::vector<Point2>& outline);
    /// Says why an outline cannot be taken, in words; empty: it was taken.
    void set_taker(std::function<QString(const std::vector<Point2>&)> taker) { taker_ = std::move(taker); }
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] QString problem() const;

   private:
    void cell_edited(int row, int column);
    void add_corner();
    void remove_corner();
    void offer(const std::vector<Point2>& outline);
    void show_outline();

    std::vector<Point2> outline_;
    Point2 first_row_;
    std::function<QString(const std::vector<Point2>&)> taker_;
    QTableWidget* table_ = nullptr;
    QLabel* problem_ = nullptr;
};

/// The outline as left, low, width and height when it is a rectangle along the axes.
struct Rectangle {
    double left_m = 0.0, low_m = 0.0, width_m = 0.0, height_m = 0.0;
};
[[nodiscard]] std::optional<Rectangle> as_rectangle(const std::vector<Point2>& outline);
[[nodiscard]] std::vector<Point2> outline_of(const Rectangle& rectangle);

}  // namespace wg::ui
