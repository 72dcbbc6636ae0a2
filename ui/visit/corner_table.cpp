#include "ui/visit/corner_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr double same_m = 1e-6;
constexpr int row_height = 36;

QTableWidgetItem* cell(double value) {
    auto* item = new QTableWidgetItem(QString::number(value, 'f', 3));
    item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    return item;
}

}  // namespace

std::optional<Rectangle> as_rectangle(const std::vector<Point2>& outline) {
    if (outline.size() != 4) return std::nullopt;
    Rectangle r{outline[0].x_m, outline[0].y_m, 0.0, 0.0};
    double right = r.left_m;
    double high = r.low_m;
    for (Point2 p : outline) {
        r.left_m = std::min(r.left_m, p.x_m);
        r.low_m = std::min(r.low_m, p.y_m);
        right = std::max(right, p.x_m);
        high = std::max(high, p.y_m);
    }
    r.width_m = right - r.left_m;
    r.height_m = high - r.low_m;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point2 a = outline[i];
        const Point2 b = outline[(i + 1) % 4];
        const bool upright = std::abs(a.x_m - b.x_m) < same_m;
        const bool level = std::abs(a.y_m - b.y_m) < same_m;
        if (upright == level) return std::nullopt;
        const bool on_x = std::abs(a.x_m - r.left_m) < same_m || std::abs(a.x_m - right) < same_m;
        const bool on_y = std::abs(a.y_m - r.low_m) < same_m || std::abs(a.y_m - high) < same_m;
        if (!on_x || !on_y) return std::nullopt;
    }
    return r;
}

std::vector<Point2> outline_of(const Rectangle& r) {
    return {{r.left_m, r.low_m},
            {r.left_m + r.width_m, r.low_m},
            {r.left_m + r.width_m, r.low_m + r.height_m},
            {r.left_m, r.low_m + r.height_m}};
}

CornerTable::CornerTable(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    table_ = new QTableWidget(0, 2, this);
    table_->setHorizontalHeaderLabels({tr("Right, m"), tr("Up, m")});
    table_->setAccessibleName(tr("Corners of the outline"));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->verticalHeader()->setDefaultSectionSize(row_height);
    table_->setMinimumHeight(row_height * 6);
    column->addWidget(table_);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* add = new QPushButton(tr("Add row"), this);
    auto* remove = new QPushButton(tr("Remove row"), this);
    row->addWidget(add);
    row->addWidget(remove);
    column->addLayout(row);
    connect(table_, &QTableWidget::cellChanged, this, &CornerTable::cell_edited);
    connect(add, &QPushButton::clicked, this, &CornerTable::add_corner);
    connect(remove, &QPushButton::clicked, this, &CornerTable::remove_corner);
}

void CornerTable::set_meaning(const QString& first, const QString& second, Point2 first_row) {
    table_->setHorizontalHeaderLabels({first, second});
    table_->setAccessibleName(first + QStringLiteral(", ") + second);
    first_row_ = first_row;
}

QString CornerTable::problem() const {
    return problem_->isHidden() ? QString() : problem_->text();
}

void CornerTable::set_outline(const std::vector<Point2>& outline) {
    if (outline == outline_ && table_->rowCount() == static_cast<int>(outline.size())) return;
    outline_ = outline;
    problem_->hide();
    show_outline();
}

void CornerTable::show_outline() {
    const QSignalBlocker quiet(table_);
    table_->setRowCount(static_cast<int>(outline_.size()));
    for (int i = 0; i < table_->rowCount(); ++i) {
        const Point2 p = outline_[static_cast<std::size_t>(i)];
        table_->setItem(i, 0, cell(p.x_m));
        table_->setItem(i, 1, cell(p.y_m));
    }
}

void CornerTable::offer(const std::vector<Point2>& outline) {
    const QString why = taker_ ? taker_(outline) : QString();
    if (why.isEmpty()) {
        outline_ = outline;
        problem_->hide();
    } else {
        problem_->setText(tr("\u25b2 %1 The figures stay as they were.").arg(why.endsWith(u'.') ? why : why + u'.'));
        problem_->show();
    }
    show_outline();
}

void CornerTable::cell_edited(int row, int column) {
    std::vector<Point2> outline = outline_;
    if (row < 0 || row >= static_cast<int>(outline.size())) return;
    const auto value = parsed_number(table_->item(row, column)->text());
    if (!value) {
        problem_->setText(tr("\u25b2 '%1' is not a number. The figure stays as it was.")
                              .arg(table_->item(row, column)->text().left(20)));
        problem_->show();
        show_outline();
        return;
    }
    Point2& corner = outline[static_cast<std::size_t>(row)];
    (column == 0 ? corner.x_m : corner.y_m) = std::round(*value * 1000.0) / 1000.0;
    offer(outline);
}

void CornerTable::add_corner() {
    if (outline_.size() < 2) {
        std::vector<Point2> begun = outline_;
        begun.push_back({first_row_.x_m + 30.0 * static_cast<double>(begun.size()), first_row_.y_m});
        offer(begun);
        return;
    }
    // In the middle of the edge behind the current corner, to be moved from there.
    const int current = std::max(table_->currentRow(), 0);
    const std::size_t i = std::min(static_cast<std::size_t>(current), outline_.size() - 1);
    const Point2 a = outline_[i];
    const Point2 b = outline_[(i + 1) % outline_.size()];
    std::vector<Point2> outline = outline_;
    outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                   {std::round((a.x_m + b.x_m) * 500.0) / 1000.0, std::round((a.y_m + b.y_m) * 500.0) / 1000.0});
    offer(outline);
}

void CornerTable::remove_corner() {
    const int current = table_->currentRow();
    if (current < 0 || current >= static_cast<int>(outline_.size())) return;
    std::vector<Point2> outline = outline_;
    outline.erase(outline.begin() + current);
    offer(outline);
}

}  // namespace wg::ui
