#include "ui/rating/test_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent>
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/rating/report.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/drawing/picture_view.h"
#include "ui/rating/set_chooser.h"

namespace wg::ui {
namespace {

constexpr int left_width = 520;
constexpr int row_height = 29;
constexpr int figure_width = 100;
const std::vector<TappingCycle> cycles{TappingCycle::m, TappingCycle::l, TappingCycle::xl};
const std::vector<rating::Air> airs{rating::air_2, rating::air_7, rating::air_14};
constexpr int usual_air = 1;  // as chosen_ is at first

QTableWidgetItem* cell(const QString& text, bool figure, const QString& tip = {}) {
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft));
    item->setToolTip(tip);
    return item;
}

/// The ratings of one air, cycle by cycle.
using OfAir = std::vector<const rating::Rating*>;

struct Line {
    QString words;
    QString tip;
    std::function<QString(const OfAir&)> figure;
};

/// A figure that is the same for all cycles.
template <class Figure>
std::function<QString(const OfAir&)> once(Figure figure) {
    return [figure](const OfAir& air) { return figure(*air.front()); };
}
/// A count for each cycle.
std::function<QString(const OfAir&)> counts(int rating::Day::*count) {
    return [count](const OfAir& air) {
        QStringList all;
        for (const rating::Rating* r : air)
            all += QString::number(r->day.*count);
        return all.join(QStringLiteral(", "));
    };
}

std::vector<Line> lines() {
    using rating::Rating;
    const auto tr = [](const char* text) { return TestPage::tr(text); };
    std::vector<Line> out;
    QStringList names;
    for (std::size_t i = 0; i < cycles.size(); ++i) {
        names += QLatin1String(rating::letters_of(cycles[i]));
        out.push_back({tr("COP_DHW, cycle %1").arg(names.back()),
                       tr("Heat drawn over cold water to all electricity of the draw-off day"),
                       [i](const OfAir& air) { return number(air[i]->cop_dhw, 2); }});
    }
    out.push_back({tr("Heat-up time"), tr("From cold water to the thermostat's first stop"),
                   once([](const Rating& r) { return quantity(r.heat_up_h, QStringLiteral("h"), 1); })});
    out.push_back({tr("Electricity for heating up"), tr("Controls included"), once([](const Rating& r) {
                       return quantity(r.heat_up_electricity_kwh, QStringLiteral("kWh"), 2);
                   })});
    out.push_back({tr("Standby power"), tr("Mean electric power over whole thermostat cycles"),
                   once([](const Rating& r) { return quantity(r.standby_w, QStringLiteral("W"), 1); })});
    out.push_back({tr("Mixed water at 40 °C"), tr("One draw of the hot cylinder, pump standing still"),
                   once([](const Rating& r) { return quantity(r.v40_l, QStringLiteral("l")); })});
    out.push_back({tr("Hot water temperature"), tr("Mean of that draw down to 40 °C"),
                   once([](const Rating& r) { return temperature(r.hot_water_c, 1); })});
    const QString each = names.join(QStringLiteral(", "));
    out.push_back({tr("Draws short of heat (%1)").arg(each),
                   tr("Of the four days that count: draws that lack more than 2 % of their heat"),
                   counts(&rating::Day::short_draws)});
    out.push_back(
        {tr("Draws too cool (%1)").arg(each),
         tr("Of the four days that count: draws for which the top of the cylinder is colder than the peak that "
            "the cycle asks for (55 °C for dishes)"),
         counts(&rating::Day::peaks_missed)});
    out.push_back(
        {tr("Heat that does not add up"), tr("Share of the heat moved in the whole test; a check of the computation"),
         once([](const Rating& r) { return r.closure < 1e-6 ? TestPage::tr("< 0.0001 %") : percent(r.closure, 4); })});
    return out;
}

}  // namespace

QString air_words(const rating::Air& air) {
    const auto figure = [](double value) { return number(value, std::fabs(value - std::round(value)) < 1e-9 ? 0 : 1); };
    return QStringLiteral("%1 (%2)\u202f°C").arg(figure(air.dry_c), figure(air.wet_c));
}

TestPage::TestPage(SetChooser& chooser, QWidget* parent) : QWidget(parent), chooser_(chooser) {
    figures_ = new QTableWidget(static_cast<int>(lines().size()), 1 + static_cast<int>(airs.size()), this);
    figures_->setHorizontalHeaderItem(0, cell(tr("Air, dry (wet) bulb"), false));
    for (std::size_t air = 0; air < airs.size(); ++air)
        figures_->setHorizontalHeaderItem(static_cast<int>(air) + 1, cell(air_words(airs[air]), true));
    figures_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    figures_->setSelectionBehavior(QAbstractItemView::SelectColumns);
    figures_->setSelectionMode(QAbstractItemView::SingleSelection);
    figures_->setShowGrid(false);
    figures_->setTabKeyNavigation(false);
    figures_->setAccessibleName(tr("Results of the rating test by air"));
    figures_->verticalHeader()->hide();
    figures_->verticalHeader()->setDefaultSectionSize(row_height);
    figures_->horizontalHeader()->setHighlightSections(false);
    figures_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    figures_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    for (std::size_t air = 0; air < airs.size(); ++air)
        figures_->horizontalHeader()->resizeSection(static_cast<int>(air) + 1, figure_width);
    auto* heading = heading_label(tr("Figures"), this);
    assumptions_ = new QLabel(this);
    assumptions_->setWordWrap(true);
    assumptions_->setProperty("role", QStringLiteral("muted"));
    assumptions_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* left = new QVBoxLayout;
    left->setSpacing(6);
    left->addWidget(heading);
    left->addWidget(figures_, 1);
    view_ = new PictureView(this);
    pointer_ = new QLabel(QStringLiteral(" "), this);
    pointer_->setProperty("role", QStringLiteral("muted"));
    auto* over = heading_label(tr("Heating up from cold"), this);
    auto* right = new QVBoxLayout;
    right->setSpacing(6);
    right->addWidget(over);
    right->addWidget(view_, 1);
    right->addWidget(pointer_);
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    auto* left_box = new QWidget(this);
    left_box->setFixedWidth(left_width);
    left->setContentsMargins(0, 0, 0, 0);
    left_box->setLayout(left);
    row->addWidget(left_box);
    row->addLayout(right, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    column->addLayout(row, 1);
    column->addWidget(assumptions_);
    connect(figures_, &QTableWidget::currentCellChanged, this,
            [this](int, int column_now) { show_picture(column_now); });
    connect(view_, &PictureView::pointed_at, this,
            [this](const QString& text) { pointer_->setText(text.isEmpty() ? QStringLiteral(" ") : text); });
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<const Answer>>::finished, this, &TestPage::take);
}

TestPage::~TestPage() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void TestPage::run() {
    again_ = busy_;
    if (busy_) return;
    busy_ = true;
    watcher_.setFuture(
        QtConcurrent::run([item = chooser_.item(), chamber = chooser_.chamber(), reference = chooser_.reference()] {
            auto answer = std::make_shared<Answer>();
            answer->item = item;
            answer->chamber = chamber;
            if (item.refrigerant == nullptr) {
                answer->problems.push_back({item.block.name, "there is no table of its refrigerant", "Choose another"});
                return std::shared_ptr<const Answer>(answer);
            }
            auto made = rating::rate_table(item, chamber, {}, cycles, airs);
            made.ok() ? void(answer->table = std::move(made).value()) : void(answer->problems = made.problems());
            return std::shared_ptr<const Answer>(answer);
        }));
}

void TestPage::take() {
    busy_ = false;
    if (again_) return run();
    const std::shared_ptr<const Answer> answer = watcher_.result();
    table_ = answer->problems.empty() ? answer : nullptr;
    show_table();
    if (table_ == nullptr) Q_EMIT failed(qs(wg::text_of(answer->problems)));
    Q_EMIT finished();
}

void TestPage::show_table() {
    const std::vector<Line> rows = lines();
    for (std::size_t air = 0; air < airs.size(); ++air) {
        OfAir ratings;
        bool finished = table_ != nullptr;
        for (std::size_t i = 0; finished && i < cycles.size(); ++i) {
            ratings.push_back(&table_->table.cells[air * cycles.size() + i].rating);
            finished = ratings.back()->completed;
        }
        const QString why_not = ratings.empty() || finished ? QString() : qs(ratings.back()->why_not);
        for (std::size_t row = 0; row < rows.size(); ++row) {
            const int at = static_cast<int>(row);
            if (air == 0) figures_->setItem(at, 0, cell(rows[row].words, false, rows[row].tip));
            figures_->setItem(at, static_cast<int>(air) + 1,
                              cell(finished ? rows[row].figure(ratings) : QStringLiteral("\u2014"), true,
                                   finished ? rows[row].tip : why_not));
        }
    }
    QString words;
    if (table_ != nullptr) {
        for (std::size_t air = 0; air < airs.size(); ++air) {
            const rating::Rating& r = table_->table.cells[air * cycles.size()].rating;
            if (!r.completed) words += tr("Not finished in air of %1. %2\n").arg(air_words(airs[air]), qs(r.why_not));
        }
        QStringList lines;
        for (const std::string& line : rating::assumptions_of(table_->item, table_->chamber, {}))
            lines += qs(line);
        words += lines.join(QLatin1Char(' '))
                     .replace(QStringLiteral(" deg C"), QStringLiteral("\u202f°C"))
                     .replace(QStringLiteral(" deg "), QStringLiteral("° "));
    }
    assumptions_->setText(words);
    if (figures_->currentColumn() < 0) {
        const QSignalBlocker quiet(figures_);
        figures_->setCurrentCell(0, usual_air + 1);
    }
    show_picture(figures_->currentColumn());
}

void TestPage::show_picture(int column) {
    picture_ = {};
    if (table_ == nullptr) {
        view_->show_picture({}, {});
        return;
    }
    for (std::size_t air = 0; air < airs.size(); ++air)
        picture_.courses.push_back({air_words(airs[air]), table_->table.cells[air * cycles.size()].rating.curve});
    if (column > 0) chosen_ = static_cast<std::size_t>(column - 1);
    picture_.chosen = chosen_;
    picture_.set_point_c = table_->item.set_point_c;
    view_->show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            paint_heat_up(painter, picture_, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF at, double text_units) { return words_at(area, at, text_units); });
}

QString TestPage::words_at(const QRectF& area, QPointF at, double text_units) const {
    const PlotFrame frame = heat_up_frame(picture_, area, text_units);
    const double hours = frame.value_at(at).x();
    if (hours < frame.x_from || hours > frame.x_to || picture_.chosen >= picture_.courses.size()) return {};
    const auto& course = picture_.courses[picture_.chosen];
    const auto point = std::lower_bound(course.points.begin(), course.points.end(), hours,
                                        [](const rating::CurvePoint& p, double h) { return p.hours < h; });
    if (point == course.points.end()) return tr("Air %1: hot by then").arg(course.label);
    return tr("Air %1, after %2: water %3, on top %4, heat %5, electricity %6")
        .arg(course.label, quantity(point->hours, QStringLiteral("h"), 1), temperature(point->water_c, 1),
             temperature(point->top_c, 1), quantity(point->heat_w, QStringLiteral("W")),
             quantity(point->electric_w, QStringLiteral("W")));
}

QString TestPage::words() const {
    return assumptions_->text();
}

}  // namespace wg::ui
