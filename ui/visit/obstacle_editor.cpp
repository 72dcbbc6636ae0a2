#include "ui/visit/obstacle_editor.h"

#include <QLocale>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {
namespace {

constexpr double widest_m = 1000.0;

}  // namespace

ObstacleEditor::ObstacleEditor(QWidget* parent) : FormColumn(parent) {
    heading(tr("Obstacle"));
    TextField* label = text(tr("Name"), [this](const QString& value) {
        apply([&](Obstacle& o) { o.label = value.trimmed().toStdString(); });
    });
    shows_.push_back([label](const Obstacle& o) { label->set_value(qs(o.label)); });
    CalmCombo* kind = words_of<ObstacleKind>(tr("Shape"), [this](ObstacleKind value) {
        apply([&](Obstacle& o) {
            if (value == ObstacleKind::prism && o.outline.size() < 3) {
                const double w = std::max(o.width_m, 0.1);
                const double d = std::max(o.depth_m, 0.1);
                o.outline = outline_of({o.base.x_m - w / 2.0, o.base.y_m - d / 2.0, w, d});
            }
            if (value == ObstacleKind::tree) o.crown_base_m = std::min(o.crown_base_m, o.height_m);
            o.kind = value;
        });
    });
    shows_.push_back([kind](const Obstacle& o) { kind->show_data(QString::fromLatin1(key_of(o.kind))); });
    using K = ObstacleKind;
    const std::vector<K> all{K::box, K::prism, K::post, K::tree};
    const NumberField::Range size{0.001, widest_m, 2, 0.05, false};
    sized(tr("Height, foot to top"), tr("m"), size, &Obstacle::height_m, all);
    NumberField* foot = number(tr("Foot over ground"), tr("m"), {-100.0, widest_m, 2, 0.05, false},
                               [this](std::optional<double> value) {
                                   if (value) apply([&](Obstacle& o) { o.base.z_m = *value; });
                               });
    shows_.push_back([foot](const Obstacle& o) { foot->set_value(o.base.z_m); });
    sized(tr("Width"), tr("m"), size, &Obstacle::width_m, {K::box});
    sized(tr("Depth"), tr("m"), size, &Obstacle::depth_m, {K::box});
    sized(tr("Turned, counter-clockwise"), tr("\u00b0"), {-360.0, 360.0, 1, 1.0, false}, &Obstacle::turn_deg, {K::box});
    sized(tr("Radius"), tr("m"), size, &Obstacle::radius_m, {K::post, K::tree});
    sized(tr("Crown begins over the foot"), tr("m"), {0.0, widest_m, 2, 0.05, false}, &Obstacle::crown_base_m,
          {K::tree});
    CalmCombo* from = month(tr("In leaf from"), &Obstacle::leaf_from_month);
    CalmCombo* to = month(tr("In leaf to"), &Obstacle::leaf_to_month);
    shown_.push_back({from, {K::tree}});
    shown_.push_back({to, {K::tree}});
    sized(tr("Sun let through in leaf, 0 to 1"), QString(), {0.0, 1.0, 2, 0.05, false}, &Obstacle::transmittance_leaf,
          {K::tree});
    sized(tr("Sun let through when bare, 0 to 1"), QString(), {0.0, 1.0, 2, 0.05, false}, &Obstacle::transmittance_bare,
          {K::tree});
    auto* corners = new CornerTable(this);
    add(corners);
    shown_.push_back({corners, {K::prism}});
    corners->set_taker(
        [this](const std::vector<Point2>& outline) { return apply([&](Obstacle& o) { o.outline = outline; }); });
    shows_.push_back([corners](const Obstacle& o) { corners->set_outline(o.outline); });
    finish();
}

void ObstacleEditor::sized(const QString& label, const QString& unit, const NumberField::Range& range,
                           double Obstacle::*member, std::vector<ObstacleKind> kinds) {
    const std::size_t index = shown_.size();
    NumberField* field = number(label, unit, range, [this, index, member](std::optional<double> value) {
        if (value) apply([&](Obstacle& o) { o.*member = *value; }, qobject_cast<NumberField*>(shown_[index].field));
    });
    shown_.push_back({field, std::move(kinds)});
    shows_.push_back([field, member](const Obstacle& o) { field->set_value(o.*member); });
}

CalmCombo* ObstacleEditor::month(const QString& label, int Obstacle::*member) {
    CalmCombo* combo =
        choice(label, [this, member](const QString& value) { apply([&](Obstacle& o) { o.*member = value.toInt(); }); });
    const QLocale english(QLocale::English);
    for (int m = 1; m <= 12; ++m)
        combo->addItem(english.monthName(m), QString::number(m));
    shows_.push_back([combo, member](const Obstacle& o) { combo->show_data(QString::number(o.*member)); });
    return combo;
}

const Obstacle* ObstacleEditor::obstacle() const {
    if (session_ == nullptr) return nullptr;
    for (const Obstacle& one : session_->job().site.obstacles) {
        if (one.id == obstacle_id_) return &one;
    }
    return nullptr;
}

QString ObstacleEditor::apply(const std::function<void(Obstacle&)>& change, NumberField* field) {
    const Obstacle* now = obstacle();
    if (now == nullptr) return tr("The obstacle is gone");
    Obstacle changed = *now;
    change(changed);
    const QString why = refusal(session_->job(), [&](Job& job) {
        for (Obstacle& one : job.site.obstacles) {
            if (one.id == obstacle_id_) one = changed;
        }
    });
    if (why.isEmpty()) {
        set_obstacle(*session_, changed);
    } else if (field != nullptr) {
        field->show_problem(why);
    }
    return why;
}

void ObstacleEditor::show_obstacle(JobSession* session, const std::string& obstacle_id) {
    session_ = session;
    obstacle_id_ = obstacle_id;
    refresh();
}

void ObstacleEditor::refresh() {
    const Obstacle* now = obstacle();
    setEnabled(now != nullptr);
    if (now == nullptr) return;
    for (const Shown& one : shown_) {
        const bool counts = std::find(one.kinds.begin(), one.kinds.end(), now->kind) != one.kinds.end();
        show_row(one.field, counts);
    }
    for (const auto& show : shows_)
        show(*now);
}

}  // namespace wg::ui
