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

#include "core/rating/report.h"
#include "ui/common/format.h"
#include "ui/drawing/picture_view.h"
#include "ui/rating/set_chooser.h"

namespace wg::ui {
namespace {

constexpr int left_width = 520;
constexpr int row_height = 30;
const std::vector<TappingCycle> cycles{TappingCycle::m, TappingCycle::l, TappingCycle::xl};
const std::vector<rating::Air> airs{rating::air_2, rating::air_7, rating::air_14};
constexpr int usual_air = 1;

struct Line {
    QString words;
    QString tip;
    QString (*figure)(const rating::Rating&);
    std::size_t cycle;  ///< of which the figure is
};

std::vector<Line> lines() {
    std::vector<Line> out;
    for (std::size_t i = 0; i < cycles.size(); ++i)
        out.push_back({TestPage::tr("COP_DHW, cycle %1").arg(QLatin1String(rating::letters_of(cycles[i]))),
                       TestPage::tr("Heat drawn over cold water to all electricity of the draw-off day"),
                       [](const rating::Rating& r) { return number(r.cop_dhw, 2); }, i});
    for (std::size_t i = 0; i < cycles.size(); ++i)
        out.push_back(
            {TestPage::tr("Draws short of heat, cooler than asked, %1")
                 .arg(QLatin1String(rating::letters_of(cycles[i]))),
             TestPage::tr(
                 "Of the four days that count: draws that lack more than 2 % of their heat, and draws for which "
                 "the top of the cylinder is colder than the peak that the cycle asks for"),
             [](const rating::Rating& r) {
                 return QStringLiteral("%1, %2").arg(r.day.short_draws).arg(r.day.peaks_missed);
             },
             i});
    constexpr std::size_t any = 1;
    out.push_back({TestPage::tr("Heat-up time"), TestPage::tr("From cold water to the thermostat's first stop"),
                   [](const rating::Rating& r) { return quantity(r.heat_up_h, QStringLiteral("h"), 1); }, any});
    out.push_back(
        {TestPage::tr("Electricity for heating up"), TestPage::tr("Controls included"),
         [](const rating::Rating& r) { return quantity(r.heat_up_electricity_kwh, QStringLiteral("kWh"), 2); }, any});
    out.push_back({TestPage::tr("Standby power"), TestPage::tr("Mean electric power over whole thermostat cycles"),
                   [](const rating::Rating& r) { return quantity(r.standby_w, QStringLiteral("W"), 1); }, any});
    out.push_back({TestPage::tr("Mixed water at 40 °C"),
                   TestPage::tr("One draw of the hot cylinder, pump standing still"),
                   [](const rating::Rating& r) { return quantity(r.v40_l, QStringLiteral("l")); }, any});
    out.push_back({TestPage::tr("Hot water temperature"), TestPage::tr("Mean of that draw down to 40 °C"),
                   [](const rating::Rating& r) { return temperature(r.hot_water_c, 1); }, any});
    out.push_back({TestPage::tr("Heat that does not add up"),
                   TestPage::tr("Share of the heat moved in the whole test; a check of the computation"),
                   [](const rating::Rating& r) {
                       return r.closure < 1e-6 ? TestPage::tr("under 0.0001 %") : percent(r.closure, 4);
                   },
                   any});
    return out;
}

}  // namespace

QString air_words(const rating::Air& air) {
    const auto figure = [](double value) { return number(value, std::fabs(value - std::round(value)) < 1e-9 ? 0 : 1); };
    return QStringLiteral("%1 (%2)\u202f°C").arg(figure(air.dry_c), figure(air.wet_c));
}

TestPage::TestPage(SetChooser& chooser, QWidget* parent) : QWidget(parent), chooser_(chooser) {
    figures_ = new QTableWidget(static_cast<int>(lines().size()), static_cast<int>(airs.size()), this);
    QStringList heads;
    for (const rating::Air& air : airs)
        heads += air_words(air);
    figures_->setHorizontalHeaderLabels(heads);
    figures_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    figures_->setSelectionBehavior(QAbstractItemView::SelectColumns);
    figures_->setSelectionMode(QAbstractItemView::SingleSelection);
    figures_->setShowGrid(false);
    figures_->setTabKeyNavigation(false);
    figures_->setAccessibleName(tr("Results of the rating test by air"));
    figures_->verticalHeader()->setDefaultSectionSize(row_height);
    figures_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    figures_->verticalHeader()->setHighlightSections(false);
    figures_->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    figures_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    auto* heading = new QLabel(tr("Figures by air, dry (wet) bulb"), this);
    heading->setProperty("role", QStringLiteral("heading"));
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
    auto* over = new QLabel(tr("Heating up from cold"), this);
    over->setProperty("role", QStringLiteral("heading"));
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
    for (std::size_t row = 0; row < rows.size(); ++row) {
        const int at = static_cast<int>(row);
        auto* head = new QTableWidgetItem(rows[row].words);
        head->setToolTip(rows[row].tip);
        figures_->setVerticalHeaderItem(at, head);
        for (std::size_t air = 0; air < airs.size(); ++air) {
            QString text = QStringLiteral("\u2014");
            QString tip = rows[row].tip;
            if (table_ != nullptr) {
                const rating::Rating& r = table_->table.cells[air * cycles.size() + rows[row].cycle].rating;
                if (r.completed)
                    text = rows[row].figure(r);
                else
                    tip = qs(r.why_not);
            }
            auto* cell = new QTableWidgetItem(text);
            cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            cell->setToolTip(tip);
            figures_->setItem(at, static_cast<int>(air), cell);
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
        words += lines.join(QLatin1Char(' ')).replace(QStringLiteral(" deg C"), QStringLiteral("\u202f°C"));
    }
    assumptions_->setText(words);
    if (figures_->currentColumn() < 0) {
        const QSignalBlocker quiet(figures_);
        figures_->setCurrentCell(0, usual_air);
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
    picture_.chosen = column >= 0 ? static_cast<std::size_t>(column) : usual_air;
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
