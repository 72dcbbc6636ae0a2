#include "ui/layout/collector_panel.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "core/fixing/mounting_rules.h"
#include "core/job/words.h"
#include "ui/common/arrange_edits.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/layout/arrange_panel.h"
#include "ui/layout/edge_offsets.h"
#include "ui/layout/rules_box.h"

namespace wg::ui {
namespace {

constexpr double widest_m = 100.0;       ///< no surface of a house is wider
constexpr double level_tilt_deg = 10.0;  ///< flatter surfaces carry the plate on a frame

const Placement* placement_of(const JobSession* session, const std::string& id) {
    const Choice* choice = session != nullptr ? session->current_choice() : nullptr;
    if (choice == nullptr) return nullptr;
    for (const Placement& one : choice->placements) {
        if (one.id == id) return &one;
    }
    return nullptr;
}

}  // namespace

CollectorPanel::CollectorPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(heading_label(tr("Surface"), this));
    surface_ = new CalmCombo(this);
    surface_->setAccessibleName(tr("Surface shown"));
    column->addWidget(surface_);
    surface_words_ = new QLabel(this);
    surface_words_->setProperty("role", QStringLiteral("muted"));
    surface_words_->setWordWrap(true);
    column->addWidget(surface_words_);
    connect(surface_, &QComboBox::activated, this,
            [this](int index) { Q_EMIT surface_chosen(surface_->itemData(index).toString()); });

    column->addSpacing(8);
    build_collectors(column);
    column->addSpacing(8);
    build_selected(column);
}

void CollectorPanel::build_collectors(QVBoxLayout* column) {
    column->addWidget(heading_label(tr("Collectors"), this));
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Collectors of this choice"));
    list_->setToolTip(tr("Ctrl or Shift with a click selects several"));
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // long names are elided, whole in the tip
    list_->setMaximumHeight(84);
    list_->setMinimumHeight(84);
    column->addWidget(list_);
    connect(list_, &QListWidget::itemSelectionChanged, this, [this] {
        QStringList ids;
        for (int i = 0; i < list_->count(); ++i) {
            const QListWidgetItem* item = list_->item(i);
            if (item->isSelected() && item != list_->currentItem()) ids << item->data(Qt::UserRole).toString();
        }
        const QListWidgetItem* current = list_->currentItem();
        if (current != nullptr && current->isSelected()) ids << current->data(Qt::UserRole).toString();
        Q_EMIT placements_chosen(ids);
    });
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    add_ = new QPushButton(tr("Add collector"), this);
    remove_ = new QPushButton(tr("Remove"), this);
    row->addWidget(add_, 1);
    row->addWidget(remove_);
    column->addLayout(row);
    connect(add_, &QPushButton::clicked, this, [this] {
        if (session_ == nullptr) return;
        const std::string id = add_collector(*session_, surface_id_);
        if (!id.empty()) Q_EMIT placement_chosen(qs(id));
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr && !selection_.empty()) remove_collectors(*session_, std::vector(selection_));
    });
}

void CollectorPanel::build_selected(QVBoxLayout* column) {
    none_words_ = new QLabel(tr("Click a collector to see and type its place. Ctrl with a click, or a frame drawn "
                                "round them, selects several."),
                             this);
    none_words_->setProperty("role", QStringLiteral("muted"));
    none_words_->setWordWrap(true);
    column->addWidget(none_words_);
    selected_box_ = new QWidget(this);
    column->addWidget(selected_box_);
    auto* inside = new QVBoxLayout(selected_box_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    build_place(inside);
    rules_ = new RulesBox(selected_box_);
    inside->addWidget(rules_);
    row_ = new RowPanel(selected_box_);
    inside->addWidget(row_);
    connect(row_, &RowPanel::row_put, this, &CollectorPanel::placements_chosen);
    connect(row_, &RowPanel::said, this, &CollectorPanel::said);
    arrange_ = new ArrangePanel(this);
    column->addWidget(arrange_);
    connect(arrange_, &ArrangePanel::said, this, &CollectorPanel::said);
    connect_place();
}

void CollectorPanel::build_place(QVBoxLayout* inside) {
    inside->addWidget(heading_label(tr("Place of the selected collector"), selected_box_));
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    form->setVerticalSpacing(8);
    left_ = new NumberField(tr("From the left edge"), tr("m"), {-widest_m, widest_m, 3, 0.01, false}, selected_box_);
    low_ = new NumberField(tr("From the lower edge"), tr("m"), {-widest_m, widest_m, 3, 0.01, false}, selected_box_);
    turn_ = new NumberField(tr("Turned by"), tr("\u00b0"), {-180.0, 180.0, 1, 1.0, false}, selected_box_);
    form->addRow(tr("From left"), left_);
    form->addRow(tr("From below"), low_);
    form->addRow(tr("Turned"), turn_);
    inside->addLayout(form);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    quarter_ = new QPushButton(tr("Turn"), selected_box_);
    hand_ = new QPushButton(selected_box_);
    hand_->setToolTip(tr("Side of the connections. H on the drawing"));
    row->addWidget(quarter_);
    row->addWidget(hand_, 1);
    inside->addLayout(row);
    inside->addWidget(new QLabel(tr("Move to surface"), selected_box_));
    on_surface_ = new CalmCombo(selected_box_);
    on_surface_->setAccessibleName(tr("Surface that carries the collector"));
    on_surface_->setToolTip(tr("Page up and Page down on the drawing"));
    inside->addWidget(on_surface_);
    frame_box_ = new QWidget(selected_box_);
    auto* frame = new QFormLayout(frame_box_);
    frame->setContentsMargins(0, 0, 0, 0);
    frame_tilt_ = new NumberField(tr("Tilt of the frame"), tr("\u00b0"), {0.0, 90.0, 1, 1.0, true}, frame_box_);
    frame_azimuth_ = new NumberField(tr("Bearing of the frame"), tr("\u00b0"), {0.0, 359.9, 1, 1.0, true}, frame_box_);
    frame->addRow(tr("Frame tilt"), frame_tilt_);
    frame->addRow(tr("Faces"), frame_azimuth_);
    inside->addWidget(frame_box_);
}

void CollectorPanel::connect_place() {
    const auto commits = [this](NumberField* field, auto then) {
        connect(field, &NumberField::committed, this, [this, then](std::optional<double> value) {
            if (session_ == nullptr || placement_id_.empty()) return;
            then(value);
            session_->end_merge();
        });
    };
    commits(left_, [this](std::optional<double> v) {
        if (v) commit_offset(true, *v);
    });
    commits(low_, [this](std::optional<double> v) {
        if (v) commit_offset(false, *v);
    });
    commits(turn_, [this](std::optional<double> v) {
        if (v) turn_placement(*session_, placement_id_, *v);
    });
    commits(frame_tilt_, [this](std::optional<double>) { commit_frame(); });
    commits(frame_azimuth_, [this](std::optional<double>) { commit_frame(); });
    connect(quarter_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr && !placement_id_.empty()) turn_collectors(*session_, {placement_id_}, 1);
    });
    connect(hand_, &QPushButton::clicked, this, [this] {
        const Placement* one = placement_of(session_, placement_id_);
        if (one != nullptr) set_hand(*session_, placement_id_, one->hand == Hand::left ? Hand::right : Hand::left);
    });
    connect(on_surface_, &QComboBox::activated, this, [this](int index) {
        if (session_ == nullptr || placement_id_.empty()) return;
        const QString id = on_surface_->itemData(index).toString();
        move_placement_to_surface(*session_, placement_id_, id.toStdString());
        Q_EMIT surface_chosen(id);
    });
}

void CollectorPanel::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    surface_id_.clear();
    placement_id_.clear();
    selection_.clear();
    arrange_->set_session(session);
    row_->set_session(session);
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &CollectorPanel::refresh);
        connect(session_, &JobSession::choice_changed, this, &CollectorPanel::refresh);
        connect(session_, &JobSession::plan_changed, this, &CollectorPanel::refresh_selected);
    }
    refresh();
}

void CollectorPanel::show_state(const std::string& surface_id, const std::vector<std::string>& selection) {
    if (surface_id == surface_id_ && selection == selection_) return;
    surface_id_ = surface_id;
    selection_ = selection;
    placement_id_ = selection.size() == 1 ? selection.front() : std::string();
    refresh();
}

void CollectorPanel::refresh() {
    setEnabled(session_ != nullptr);
    list_surfaces();
    if (session_ == nullptr) {
        const QSignalBlocker quiet(list_);
        list_->clear();
        return;
    }
    surface_->show_data(qs(surface_id_));
    if (const Surface* on = find_surface(session_->job().site, surface_id_)) {
        QString words = tr("%1, tilt %2\u00b0, faces %3")
                            .arg(QString::fromUtf8(wg::text_of(on->covering)))
                            .arg(on->tilt_deg, 0, 'f', 0)
                            .arg(bearing(on->azimuth_deg));
        surface_words_->setText(words);
    } else {
        surface_words_->setText(tr("Add a surface on the Visit stage."));
    }
    refresh_list();
    add_->setEnabled(session_->current_choice() != nullptr && !surface_id_.empty());
    refresh_selected();
}

void CollectorPanel::refresh_list() {
    const QSignalBlocker quiet(list_);
    struct Entry {
        QString id, words;
    };
    std::vector<Entry> entries;
    if (const Choice* choice = session_->current_choice()) {
        for (const Placement& one : choice->placements) {
            const Surface* on = find_surface(session_->job().site, one.surface_id);
            entries.push_back(
                {qs(one.id), tr("%1 \u2013 %2").arg(qs(one.label), on != nullptr ? qs(on->label) : tr("no surface"))});
        }
    }
    // Rows stay while they still fit: a selection under way in the list must not lose them.
    while (list_->count() > static_cast<int>(entries.size()))
        delete list_->takeItem(list_->count() - 1);
    while (list_->count() < static_cast<int>(entries.size()))
        list_->addItem(QString());
    for (int i = 0; i < list_->count(); ++i) {
        const Entry& entry = entries[static_cast<std::size_t>(i)];
        QListWidgetItem* item = list_->item(i);
        if (item->text() != entry.words) {
            item->setText(entry.words);
            item->setToolTip(entry.words);
        }
        if (item->data(Qt::UserRole).toString() != entry.id) item->setData(Qt::UserRole, entry.id);
        item->setSelected(std::find(selection_.begin(), selection_.end(), entry.id.toStdString()) != selection_.end());
        if (!selection_.empty() && entry.id == qs(selection_.back())) {
            list_->setCurrentItem(item, QItemSelectionModel::NoUpdate);
        }
    }
}

// Filled anew only when it says something else: a drag comes by here with every move of the hand.
void CollectorPanel::list_surfaces() {
    std::vector<QStringList> now;
    if (session_ != nullptr) {
        for (const Surface& surface : session_->job().site.surfaces)
            now.push_back({qs(surface.label), qs(surface.id)});
    }
    if (now == surfaces_listed_) return;
    surfaces_listed_ = now;
    for (CalmCombo* combo : {surface_, on_surface_}) {
        const QSignalBlocker quiet(combo);
        combo->clear();
        for (const QStringList& one : now)
            combo->addItem(one[0], one[1]);
    }
}

void CollectorPanel::refresh_selected() {
    const Placement* one = placement_of(session_, placement_id_);
    selected_box_->setVisible(one != nullptr);
    none_words_->setVisible(selection_.empty());
    arrange_->setVisible(selection_.size() > 1);
    arrange_->show_selection(selection_);
    remove_->setEnabled(!selection_.empty());
    if (one == nullptr) return;
    const Surface* on = find_surface(session_->job().site, one->surface_id);
    const CollectorModel* model =
        find_collector(session_->reference().catalogue, session_->current_choice()->collector_model);
    EdgeOffsets offsets;
    if (on != nullptr && model != nullptr) {
        offsets = edge_offsets(*on, *one, *model, session_->job().site.sketch_up_azimuth_deg);
    }
    left_->set_value(offsets.left_m);
    low_->set_value(offsets.low_m);
    left_->setEnabled(offsets.left_m.has_value());
    low_->setEnabled(offsets.low_m.has_value());
    turn_->set_value(one->turn_deg);
    rules_->show_rules(session_, placement_id_);
    row_->show_placement(placement_id_);
    const bool turns = model != nullptr && (fixing::next_turn_deg(*model, one->turn_deg, 1) != one->turn_deg);
    quarter_->setEnabled(turns);
    quarter_->setToolTip(turns ? tr("To the next position that the maker allows. R on the drawing")
                               : tr("The maker allows this position only"));
    hand_->setText(one->hand == Hand::left ? tr("Connections: left") : tr("Connections: right"));
    on_surface_->show_data(qs(one->surface_id));
    frame_box_->setVisible(one->frame_tilt_deg.has_value() || (on != nullptr && on->tilt_deg < level_tilt_deg));
    frame_tilt_->set_value(one->frame_tilt_deg);
    frame_azimuth_->set_value(one->frame_azimuth_deg);
}

void CollectorPanel::commit_offset(bool from_left, double metres) {
    const Placement* one = placement_of(session_, placement_id_);
    if (one == nullptr) return;
    const Surface* on = find_surface(session_->job().site, one->surface_id);
    const CollectorModel* model =
        find_collector(session_->reference().catalogue, session_->current_choice()->collector_model);
    if (on == nullptr || model == nullptr) return;
    const EdgeOffsets now = edge_offsets(*on, *one, *model, session_->job().site.sketch_up_azimuth_deg);
    if (from_left && now.left_m) {
        move_placement(*session_, placement_id_, one->x_m + metres - *now.left_m, one->y_m);
    } else if (!from_left && now.low_m) {
        move_placement(*session_, placement_id_, one->x_m, one->y_m + metres - *now.low_m);
    }
}

void CollectorPanel::commit_frame() {
    const std::optional<double> tilt = frame_tilt_->value();
    std::optional<double> azimuth = frame_azimuth_->value();
    const Placement* one = placement_of(session_, placement_id_);
    if (one == nullptr) return;
    if (!tilt) azimuth.reset();
    if (tilt && !azimuth) {
        const Surface* on = find_surface(session_->job().site, one->surface_id);
        azimuth = on != nullptr ? on->azimuth_deg : 180.0;
    }
    set_frame(*session_, placement_id_, tilt, azimuth);
}

}  // namespace wg::ui
