#include "ui/visit/keep_out_editor.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"
#include "ui/visit/new_elements.h"

namespace wg::ui {

KeepOutEditor::KeepOutEditor(QWidget* parent) : FormColumn(parent) {
    layout()->setContentsMargins(0, 0, 0, 0);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Zones kept free"));
    list_->setMaximumHeight(110);
    add(list_);
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        zone_id_ = item != nullptr ? item->data(Qt::UserRole).toString().toStdString() : std::string();
        refresh_selected();
    });
    auto* buttons = new QWidget(this);
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* add_button = new QPushButton(tr("Add zone"), buttons);
    remove_ = new QPushButton(tr("Remove"), buttons);
    row->addWidget(add_button, 1);
    row->addWidget(remove_);
    add(buttons);
    connect(add_button, &QPushButton::clicked, this, &KeepOutEditor::add_zone);
    connect(remove_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr && !zone_id_.empty()) remove_element(*session_, zone_id_);
    });
    label_ = text(tr("Name"), [this](const QString& value) {
        apply([&](KeepOut& k) { k.label = value.trimmed().toStdString(); }, nullptr);
    });
    kind_ = words_of<KeepOutKind>(tr("Kind"),
                                  [this](KeepOutKind value) { apply([&](KeepOut& k) { k.kind = value; }, nullptr); });
    const NumberField::Range place{-1000.0, 1000.0, 3, 0.01, false};
    const NumberField::Range size{0.01, 1000.0, 3, 0.01, false};
    pair_next();
    left_ = number(tr("From left"), tr("m"), place, [this](std::optional<double>) { commit_rectangle(left_); });
    low_ = number(tr("From below"), tr("m"), place, [this](std::optional<double>) { commit_rectangle(low_); });
    pair_next();
    width_ = number(tr("Width"), tr("m"), size, [this](std::optional<double>) { commit_rectangle(width_); });
    height_ = number(tr("Height"), tr("m"), size, [this](std::optional<double>) { commit_rectangle(height_); });
    clearance_ =
        number(tr("Kept free all round"), tr("m"), {0.0, 100.0, 3, 0.01, false}, [this](std::optional<double> value) {
            if (value) apply([&](KeepOut& k) { k.clearance_m = *value; }, clearance_);
        });
}

const Surface* KeepOutEditor::surface() const {
    return session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
}

const KeepOut* KeepOutEditor::zone() const {
    const Surface* on = surface();
    if (on == nullptr) return nullptr;
    for (const KeepOut& one : on->keep_outs) {
        if (one.id == zone_id_) return &one;
    }
    return nullptr;
}

void KeepOutEditor::show_zones(JobSession* session, const std::string& surface_id, const std::string& keep_out_id) {
    session_ = session;
    surface_id_ = surface_id;
    if (!keep_out_id.empty()) zone_id_ = keep_out_id;
    refresh();
}

void KeepOutEditor::refresh() {
    const QSignalBlocker quiet(list_);
    list_->clear();
    const Surface* on = surface();
    if (on != nullptr) {
        if (zone() == nullptr) zone_id_ = on->keep_outs.empty() ? std::string() : on->keep_outs.front().id;
        for (const KeepOut& one : on->keep_outs) {
            auto* item = new QListWidgetItem(qs(one.label), list_);
            item->setData(Qt::UserRole, qs(one.id));
            if (one.id == zone_id_) list_->setCurrentItem(item);
        }
    }
    refresh_selected();
}

void KeepOutEditor::refresh_selected() {
    const KeepOut* now = zone();
    remove_->setEnabled(now != nullptr);
    for (QWidget* field : std::initializer_list<QWidget*>{label_, kind_, left_, low_, width_, height_, clearance_}) {
        field->setEnabled(now != nullptr);
    }
    if (now == nullptr) {
        label_->set_value({});
        for (NumberField* field : {left_, low_, width_, height_, clearance_})
            field->set_value(std::nullopt);
        return;
    }
    label_->set_value(qs(now->label));
    kind_->show_data(QString::fromLatin1(key_of(now->kind)));
    const auto rectangle = as_rectangle(now->outline);
    for (NumberField* field : {left_, low_, width_, height_})
        field->setEnabled(rectangle.has_value());
    left_->set_value(rectangle ? std::optional<double>(rectangle->left_m) : std::nullopt);
    low_->set_value(rectangle ? std::optional<double>(rectangle->low_m) : std::nullopt);
    width_->set_value(rectangle ? std::optional<double>(rectangle->width_m) : std::nullopt);
    height_->set_value(rectangle ? std::optional<double>(rectangle->height_m) : std::nullopt);
    clearance_->set_value(now->clearance_m);
}

void KeepOutEditor::apply(const std::function<void(KeepOut&)>& change, NumberField* field) {
    const KeepOut* now = zone();
    if (now == nullptr) return;
    KeepOut changed = *now;
    change(changed);
    const QString why = refusal(session_->job(), [&](Job& job) {
        for (Surface& on : job.site.surfaces) {
            for (KeepOut& one : on.keep_outs) {
                if (one.id == zone_id_) one = changed;
            }
        }
    });
    if (why.isEmpty()) {
        set_keep_out(*session_, changed);
    } else if (field != nullptr) {
        field->show_problem(why);
    }
}

void KeepOutEditor::commit_rectangle(NumberField* field) {
    if (!left_->value() || !low_->value() || !width_->value() || !height_->value()) return;
    const Rectangle wanted{*left_->value(), *low_->value(), *width_->value(), *height_->value()};
    apply([&](KeepOut& k) { k.outline = outline_of(wanted); }, field);
}

void KeepOutEditor::add_zone() {
    const Surface* on = surface();
    if (on == nullptr || on->outline.empty()) return;
    Point2 middle;
    for (Point2 p : on->outline) {
        middle.x_m += p.x_m / static_cast<double>(on->outline.size());
        middle.y_m += p.y_m / static_cast<double>(on->outline.size());
    }
    zone_id_ = add_keep_out(*session_, surface_id_, new_keep_out(KeepOutKind::reserved, middle));
    refresh();
    label_->setFocus();
    label_->selectAll();
}

}  // namespace wg::ui
