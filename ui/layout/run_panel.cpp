#include "ui/layout/run_panel.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

#include "core/job/words.h"
#include "core/plan/plan.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {
namespace {

constexpr double sketch_reach_m = 1000.0;

const RoutePoint* point_of(const JobSession* session, const std::string& id) {
    const Choice* choice = session != nullptr ? session->current_choice() : nullptr;
    if (choice == nullptr) return nullptr;
    for (const RoutePoint& point : choice->route) {
        if (point.id == id) return &point;
    }
    return nullptr;
}

QString words_of(const plan::Plan& plan) {
    const pipework::Run& run = plan.run;
    QString out =
        RunPanel::tr("Run %1 one way, %2, %3. Charge %4.")
            .arg(length_m(run.length_m),
                 run.bends == 1 ? RunPanel::tr("1 bend") : RunPanel::tr("%1 bends").arg(run.bends),
                 run.passages == 1 ? RunPanel::tr("1 passage") : RunPanel::tr("%1 passages").arg(run.passages),
                 quantity(run.total_charge_kg, RunPanel::tr("kg"), 2));
    if (plan.run_suggested) out = RunPanel::tr("No run drawn: figures follow a suggested way.") + u' ' + out;
    if (!run.oil.traps.empty())
        out += u' ' + (run.oil.traps.size() == 1 ? RunPanel::tr("1 oil trap.")
                                                 : RunPanel::tr("%1 oil traps.").arg(run.oil.traps.size()));
    if (plan.run_loss_percent)
        out += u' ' + RunPanel::tr("Suction line costs %1 of the seasonal factor.")
                          .arg(quantity(*plan.run_loss_percent, QStringLiteral("%"), 1));
    return out;
}

}  // namespace

RunPanel::RunPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    column->addWidget(words_);
    suggest_ = new QPushButton(tr("Suggest a run"), this);
    suggest_->setToolTip(
        tr("Along roof and walls, through one passage where it must, out of rooms without pipes. Replaces the bends "
           "below; "
           "one step to undo"));
    column->addWidget(suggest_);
    connect(suggest_, &QPushButton::clicked, this, &RunPanel::suggest);
    note_ = new QLabel(this);
    note_->setWordWrap(true);
    note_->setForegroundRole(QPalette::PlaceholderText);
    note_->setAccessibleName(tr("About the suggested run"));
    note_->hide();
    column->addWidget(note_);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Bends and passages from collector to block"));
    list_->setMinimumHeight(150);
    column->addWidget(list_, 1);
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item == nullptr) return;
        point_id_ = item->data(Qt::UserRole).toString().toStdString();
        refresh_selected();
        Q_EMIT point_chosen(qs(point_id_));
    });
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* add = new QPushButton(tr("Add bend"), this);
    add->setToolTip(tr("After the selected bend; in the middle of the longest leg when none is selected"));
    remove_ = new QPushButton(tr("Remove"), this);
    row->addWidget(add, 1);
    row->addWidget(remove_);
    column->addLayout(row);
    connect(add, &QPushButton::clicked, this, &RunPanel::add_bend);
    connect(remove_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr && !point_id_.empty()) remove_route_point(*session_, point_id_);
    });
    selected_box_ = new QWidget(this);
    auto* form = new QFormLayout(selected_box_);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(8);
    kind_ = new CalmCombo(selected_box_);
    kind_->setAccessibleName(tr("Kind of point"));
    for (const Word<RoutePointKind>& word : words<RoutePointKind>()) {
        kind_->addItem(QString::fromUtf8(word.text), QString::fromLatin1(word.key));
    }
    form->addRow(tr("Kind"), kind_);
    const NumberField::Range reach{-sketch_reach_m, sketch_reach_m, 3, 0.05, false};
    x_ = new NumberField(tr("Right"), tr("m"), reach, selected_box_);
    y_ = new NumberField(tr("Up the sketch"), tr("m"), reach, selected_box_);
    z_ = new NumberField(tr("Over ground"), tr("m"), {-50.0, 200.0, 3, 0.05, false}, selected_box_);
    form->addRow(tr("Right"), x_);
    form->addRow(tr("Up"), y_);
    form->addRow(tr("Height"), z_);
    column->addWidget(selected_box_);
    connect(kind_, &QComboBox::activated, this, [this](int index) {
        const auto kind = from_key<RoutePointKind>(kind_->itemData(index).toString().toStdString());
        if (session_ != nullptr && kind) set_route_point_kind(*session_, point_id_, *kind);
    });
    for (NumberField* field : {x_, y_, z_}) {
        connect(field, &NumberField::committed, this, [this](std::optional<double>) { commit_position(); });
    }
}

void RunPanel::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    point_id_.clear();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &RunPanel::refresh);
        connect(session_, &JobSession::choice_changed, this, &RunPanel::refresh);
        connect(session_, &JobSession::plan_changed, this, &RunPanel::refresh);
    }
    refresh();
}

void RunPanel::show_selected(const std::string& point_id) {
    point_id_ = point_id;
    refresh();
}

void RunPanel::refresh() {
    const QSignalBlocker quiet(list_);
    list_->clear();
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    setEnabled(choice != nullptr);
    if (choice == nullptr) {
        words_->clear();
        refresh_selected();
        return;
    }
    suggest_->setEnabled(!choice->placements.empty());
    if (choice->route != suggested_) {
        suggested_.clear();
        note_->hide();
    }
    const auto plan = session_->plan();
    words_->setText(plan ? words_of(*plan) : tr("No run worked out yet."));
    int number = 1;
    for (const RoutePoint& point : choice->route) {
        auto* item =
            new QListWidgetItem(tr("%1  %2, %3 high")
                                    .arg(number++)
                                    .arg(QString::fromUtf8(wg::text_of(point.kind)), length_m(point.position.z_m)),
                                list_);
        item->setData(Qt::UserRole, qs(point.id));
        if (point.id == point_id_) list_->setCurrentItem(item);
    }
    refresh_selected();
}

void RunPanel::suggest() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return;
    const auto result = plan::suggested_run(session_->job(), session_->reference(), choice->id);
    if (!result || !result.value().found) {
        note_->setText(result ? qs(result.value().why) : qs(text_of(result.problems())));
        note_->show();
        return;
    }
    std::vector<RoutePoint> route = result.value().route;
    for (RoutePoint& point : route)
        point.id = new_id();
    point_id_.clear();
    suggested_ = route;
    note_->setText(qs(result.value().why));
    note_->show();
    set_route(*session_, std::move(route));
    refresh();
}

void RunPanel::refresh_selected() {
    const RoutePoint* point = point_of(session_, point_id_);
    selected_box_->setVisible(point != nullptr);
    remove_->setEnabled(point != nullptr);
    if (point == nullptr) return;
    kind_->show_data(QString::fromLatin1(key_of(point->kind)));
    x_->set_value(point->position.x_m);
    y_->set_value(point->position.y_m);
    z_->set_value(point->position.z_m);
}

void RunPanel::commit_position() {
    if (point_of(session_, point_id_) == nullptr || !x_->value() || !y_->value() || !z_->value()) return;
    move_route_point(*session_, point_id_, {*x_->value(), *y_->value(), *z_->value()});
    session_->end_merge();
}

void RunPanel::add_bend() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return;
    const CollectorModel* model = find_collector(session_->reference().catalogue, choice->collector_model);
    const RouteLine line = route_line(session_->job(), *choice, model);
    if (line.points.size() < 2) return;
    std::size_t leg = 0;
    double longest = -1.0;
    for (std::size_t i = 0; i + 1 < line.points.size(); ++i) {
        const Point3 a = line.points[i];
        const Point3 b = line.points[i + 1];
        const double length = std::hypot(b.x_m - a.x_m, std::hypot(b.y_m - a.y_m, b.z_m - a.z_m));
        const bool after_selected = i >= line.first_bend && i - line.first_bend < choice->route.size() &&
                                    choice->route[i - line.first_bend].id == point_id_;
        if (after_selected) {
            leg = i;
            break;
        }
        if (length > longest) {
            longest = length;
            leg = i;
        }
    }
    const Point3 a = line.points[leg];
    const Point3 b = line.points[leg + 1];
    const std::size_t index = leg + 1 >= line.first_bend ? leg + 1 - line.first_bend : 0;
    const std::string id =
        add_route_point(*session_, index, {(a.x_m + b.x_m) / 2.0, (a.y_m + b.y_m) / 2.0, (a.z_m + b.z_m) / 2.0});
    point_id_ = id;
    refresh();
    Q_EMIT point_chosen(qs(id));
}

}  // namespace wg::ui
