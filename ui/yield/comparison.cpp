#include "ui/yield/comparison.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent>

#include "core/job/codec.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

using Words = QString (*)(const plan::Plan&);

struct Line {
    const char* what;
    Words words;
    bool yield = false;  ///< known only with a year of operation
};

QString money_range(const plan::Plan& p) {
    const plan::Ranged& cost = p.figures.running_cost_minor;
    return ranged({cost.low / 100.0, cost.mid / 100.0, cost.high / 100.0}, qs(p.currency));
}

QString shade_words(const plan::Plan& p) {
    double open = 0.0;
    double shaded = 0.0;
    for (const plan::PlacementPlan& placement : p.placements) {
        open += placement.plane_unshaded_kwh_m2;
        shaded += placement.plane_kwh_m2;
    }
    return open > 0.0 ? percent(1.0 - shaded / open, 1) : QStringLiteral("\u2014");
}

const std::vector<Line>& lines() {
    static const std::vector<Line> table = {
        {QT_TRANSLATE_NOOP("Comparison", "Collectors"),
         [](const plan::Plan& p) {
             return QStringLiteral("%1 × %2").arg(p.placements.size()).arg(qs(p.collector.name));
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Heat pump"), [](const plan::Plan& p) { return qs(p.block.name); }},
        {QT_TRANSLATE_NOOP("Comparison", "Cylinder"),
         [](const plan::Plan& p) {
             return qs(p.cylinder.name) + QStringLiteral(", ") + quantity(p.cylinder.volume_l, QStringLiteral("l"));
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Price with tax"),
         [](const plan::Plan& p) {
             return p.quote ? money(p.quote->gross, qs(p.currency)) : QStringLiteral("\u2014");
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Hot water a year"),
         [](const plan::Plan& p) { return ranged(p.figures.heat_kwh, QStringLiteral("kWh")); }, true},
        {QT_TRANSLATE_NOOP("Comparison", "Electricity a year"),
         [](const plan::Plan& p) { return ranged(p.figures.electricity_kwh, QStringLiteral("kWh")); }, true},
        {QT_TRANSLATE_NOOP("Comparison", "Heat for each kWh of electricity"),
         [](const plan::Plan& p) { return ranged(p.figures.seasonal_factor, QStringLiteral("kWh"), 1); }, true},
        {QT_TRANSLATE_NOOP("Comparison", "Electricity cost a year"), money_range, true},
        {QT_TRANSLATE_NOOP("Comparison", "Comfort: not met at the wanted temperature"),
         [](const plan::Plan& p) {
             return QStringLiteral("about %1, %2 draws")
                 .arg(quantity(p.season.total.shortfall_kwh, QStringLiteral("kWh")))
                 .arg(p.season.shortfall_draws);
         },
         true},
        {QT_TRANSLATE_NOOP("Comparison", "Comfort: coldest water at the top"),
         [](const plan::Plan& p) { return QStringLiteral("about ") + temperature(p.season.lowest_top_c, 0); }, true},
        {QT_TRANSLATE_NOOP("Comparison", "Cold to set-point, fair light"),
         [](const plan::Plan& p) {
             if (!p.warm_up_fair) return QStringLiteral("\u2014");
             return p.warm_up_fair->reached
                        ? QStringLiteral("about ") + quantity(p.warm_up_fair->hours, QStringLiteral("h"), 1)
                        : QStringLiteral("not reached");
         },
         true},
        {QT_TRANSLATE_NOOP("Comparison", "Light lost to shade"), shade_words},
        {QT_TRANSLATE_NOOP("Comparison", "Run, one way"), [](const plan::Plan& p) { return length_m(p.run.length_m); }},
        {QT_TRANSLATE_NOOP("Comparison", "Refrigerant"),
         [](const plan::Plan& p) {
             return QString::fromLatin1(name_of(p.block.refrigerant)) + QStringLiteral(", ") +
                    quantity(p.run.total_charge_kg, QStringLiteral("kg"), 2);
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Worst fixing point"),
         [](const plan::Plan& p) { return percent(p.figures.worst_utilisation); }},
        {QT_TRANSLATE_NOOP("Comparison", "Stands against it"),
         [](const plan::Plan& p) {
             int stops = 0;
             int cautions = 0;
             for (const Finding& finding : p.findings) {
                 stops += finding.severity == Severity::stop ? 1 : 0;
                 cautions += finding.severity == Severity::caution ? 1 : 0;
             }
             return QStringLiteral("%1 stop, %2 caution").arg(stops).arg(cautions);
         }},
    };
    return table;
}

QString cell_words(const Line& line, const ChoicePlan& choice) {
    if (choice.plan == nullptr) return choice.problem.isEmpty() ? QStringLiteral("\u2026") : QStringLiteral("\u2014");
    if (line.yield && !choice.plan->has_yield) return QStringLiteral("\u2014");
    return line.words(*choice.plan);
}

}  // namespace

Comparison::Comparison(QWidget* parent) : QWidget(parent) {
    table_ = new QTableWidget(this);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setAlternatingRowColors(true);
    table_->setShowGrid(false);
    table_->setWordWrap(true);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter |
                                                    Qt::Alignment(Qt::TextWordWrap));
    table_->horizontalHeader()->setMinimumHeight(64);  // labels of choices take two lines
    table_->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->verticalHeader()->setMinimumSectionSize(34);
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->setAccessibleName(tr("Choices compared"));
    progress_ = new QLabel(this);
    progress_->setProperty("role", QStringLiteral("muted"));
    progress_->setWordWrap(true);
    cancel_ = new QPushButton(tr("Stop planning"), this);
    cancel_->hide();
    auto* foot = new QHBoxLayout;
    foot->addWidget(progress_, 1);
    foot->addWidget(cancel_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    column->addWidget(table_, 1);
    column->addLayout(foot);
    connect(&watcher_, &QFutureWatcher<ChoicePlan>::finished, this, &Comparison::take_plan);
    connect(cancel_, &QPushButton::clicked, this, [this] {
        cancelled_ = true;
        fill();
    });
}

Comparison::~Comparison() {
    // The job planned is a copy and the reference is shared, but the watcher must not tell a widget that is gone.
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void Comparison::set_session(JobSession* session) {
    session_ = session;
    plans_.clear();
    content_.clear();
    cancelled_ = false;
    refresh();
}

void Comparison::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    cancelled_ = false;
    refresh();
}

void Comparison::refresh() {
    if (session_ == nullptr) {
        table_->clear();
        return;
    }
    const std::string content = content_sha256(session_->job());
    if (content != content_) {
        content_ = content;
        plans_.clear();
        cancelled_ = false;
    }
    // The choice on screen is planned already.
    if (const auto shown = session_->plan(); shown != nullptr && session_->settled()) {
        plans_[shown->choice_id] = ChoicePlan{shown->choice_id, shown, QString()};
    }
    plan_next();
    fill();
}

void Comparison::plan_next() {
    if (session_ == nullptr || watcher_.isRunning() || cancelled_ || session_->planning()) return;
    if (!isVisible() && !wanted_) return;
    for (const Choice& choice : session_->job().choices) {
        if (plans_.count(choice.id) > 0) continue;
        planning_content_ = content_;
        auto job = std::make_shared<const Job>(session_->job());
        auto reference = session_->shared_reference();
        watcher_.setFuture(QtConcurrent::run([job, reference, id = choice.id] {
            ChoicePlan done;
            done.choice_id = id;
            plan::Options options;
            options.choice_id = id;
            options.keep_hours = false;
            auto planned = plan::plan(*job, *reference, options);
            if (planned.ok()) {
                done.plan = std::make_shared<const plan::Plan>(std::move(planned).value());
            } else {
                done.problem = qs(text_of(planned.problems()));
            }
            return done;
        }));
        return;
    }
}

void Comparison::take_plan() {
    const ChoicePlan done = watcher_.result();
    if (planning_content_ == content_) plans_[done.choice_id] = done;
    plan_next();
    fill();
    Q_EMIT plans_changed();
}

void Comparison::set_wanted(bool wanted) {
    if (wanted && !wanted_) cancelled_ = false;
    wanted_ = wanted;
    if (wanted) refresh();
}

void Comparison::fill() {
    if (session_ == nullptr) return;
    const std::vector<Choice>& choices = session_->job().choices;
    const auto& rows = lines();
    table_->setRowCount(static_cast<int>(rows.size()));
    table_->setColumnCount(static_cast<int>(choices.size()));
    QStringList heads;
    QStringList sides;
    for (const Line& line : rows)
        sides += tr(line.what);
    QStringList problems;
    for (std::size_t column = 0; column < choices.size(); ++column) {
        const Choice& choice = choices[column];
        const bool chosen = choice.id == session_->job().chosen_choice_id;
        heads += qs(choice.label) + (chosen ? tr(" (chosen)") : QString());
        const auto found = plans_.find(choice.id);
        const ChoicePlan planned = found == plans_.end() ? ChoicePlan{} : found->second;
        if (!planned.problem.isEmpty()) problems += qs(choice.label) + QStringLiteral(": ") + planned.problem;
        for (std::size_t row = 0; row < rows.size(); ++row) {
            auto* item = new QTableWidgetItem(cell_words(rows[row], planned));
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            if (chosen) {
                QFont font = base_font();
                font.setWeight(QFont::DemiBold);
                item->setFont(font);
            }
            table_->setItem(static_cast<int>(row), static_cast<int>(column), item);
        }
    }
    table_->setHorizontalHeaderLabels(heads);
    table_->setVerticalHeaderLabels(sides);
    const auto left = static_cast<int>(choices.size() - std::min(choices.size(), plans_.size()));
    cancel_->setVisible(busy() && !cancelled_);
    if (left > 0 && cancelled_) {
        progress_->setText(tr("Stopped. %n choice(s) not planned; look at this tab again to go on.", nullptr, left));
    } else if (left > 0) {
        progress_->setText(tr("Planning the other choices: %n left.", nullptr, left));
    } else if (!problems.isEmpty()) {
        progress_->setText(problems.join(QLatin1Char('\n')));
    } else if (choices.size() == 1) {
        progress_->setText(
            tr("One choice only. Duplicate it on the Layout stage to compare another collector, place or cylinder."));
    } else {
        progress_->setText(tr("All with the same weather, draw-off and prices."));
    }
}

FigureTable Comparison::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("what")};
    if (session_ == nullptr) return out;
    for (const Choice& choice : session_->job().choices)
        out.header += qs(choice.label);
    for (const Line& line : lines()) {
        QStringList row{QString::fromUtf8(line.what)};
        for (const Choice& choice : session_->job().choices) {
            const auto found = plans_.find(choice.id);
            row += cell_words(line, found == plans_.end() ? ChoicePlan{} : found->second);
        }
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
