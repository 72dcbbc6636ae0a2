#include "ui/layout/equipment_panel.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

QString name_with_mark(const std::string& name, bool invented) {
    return invented ? EquipmentPanel::tr("%1 (invented)").arg(qs(name)) : qs(name);
}

}  // namespace

EquipmentPanel::EquipmentPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    const auto labelled = [&](const QString& label, CalmCombo*& combo) {
        auto* name = new QLabel(label, this);
        name->setProperty("role", QStringLiteral("muted"));
        column->addWidget(name);
        combo = new CalmCombo(this);
        combo->setAccessibleName(label);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(12);
        name->setBuddy(combo);
        column->addWidget(combo);
        return name;
    };
    const auto add = [&](const QString& label, CalmCombo*& combo, void (*verb)(JobSession&, const std::string&)) {
        labelled(label, combo);
        CalmCombo* chosen = combo;
        connect(combo, &QComboBox::activated, this, [this, chosen, verb](int index) {
            if (session_ != nullptr) verb(*session_, chosen->itemData(index).toString().toStdString());
        });
    };
    add(tr("Collector model"), collector_, &set_collector_model);
    joined_name_ = labelled(tr("Refrigerant through the collectors"), joined_);
    joined_->setObjectName(QStringLiteral("joined"));
    joined_->addItem(tr("In parallel"), static_cast<int>(Joined::parallel));
    joined_->addItem(tr("In series"), static_cast<int>(Joined::series));
    connect(joined_, &QComboBox::activated, this, [this](int index) {
        if (session_ != nullptr) set_joined(*session_, static_cast<Joined>(joined_->itemData(index).toInt()));
    });
    add(tr("Heat-pump block"), block_, &set_block_model);
    add(tr("Cylinder"), cylinder_, &set_cylinder_model);
    add(tr("Cylinder's spot"), spot_, &set_spot);
    add(tr("Fixing method"), fixing_, &set_fixing_method);
    words_ = new QLabel(this);
    words_->setProperty("role", QStringLiteral("muted"));
    words_->setWordWrap(true);
    column->addWidget(words_);
}

void EquipmentPanel::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &EquipmentPanel::refresh);
        connect(session_, &JobSession::choice_changed, this, &EquipmentPanel::refresh);
    }
    refresh();
}

void EquipmentPanel::refresh() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    setEnabled(choice != nullptr);
    for (CalmCombo* combo : {collector_, block_, cylinder_, spot_, fixing_})
        combo->clear();
    words_->clear();
    refresh_joined();
    if (choice == nullptr) return;
    const Catalogue& catalogue = session_->reference().catalogue;
    for (const CollectorModel& m : catalogue.collectors) {
        collector_->addItem(name_with_mark(m.name, m.invented), qs(m.id));
    }
    for (const BlockModel& m : catalogue.blocks)
        block_->addItem(name_with_mark(m.name, m.invented), qs(m.id));
    for (const CylinderModel& m : catalogue.cylinders) {
        const bool fits = m.fits_blocks.empty() || std::find(m.fits_blocks.begin(), m.fits_blocks.end(),
                                                             choice->block_model) != m.fits_blocks.end();
        const QString name = name_with_mark(m.name, m.invented);
        cylinder_->addItem(fits ? name : tr("%1 \u2013 not for this block").arg(name), qs(m.id));
    }
    for (const CylinderSpot& s : session_->job().site.spots)
        spot_->addItem(qs(s.label), qs(s.id));
    for (const FixingMethod& m : catalogue.fixing_methods) {
        fixing_->addItem(name_with_mark(m.label, m.invented), qs(m.id));
    }
    collector_->show_data(qs(choice->collector_model));
    block_->show_data(qs(choice->block_model));
    cylinder_->show_data(qs(choice->cylinder_model));
    spot_->show_data(qs(choice->spot_id));
    fixing_->show_data(qs(choice->fixing_method));
    for (CalmCombo* combo : {collector_, block_, cylinder_, spot_, fixing_})
        combo->setToolTip(combo->currentText());
    if (const CollectorModel* m = find_collector(catalogue, choice->collector_model)) {
        words_->setText(tr("Plate %1 \u00d7 %2, %3, keep %4 free all round")
                            .arg(length_mm(m->length_m), length_mm(m->width_m), quantity(m->mass_kg, tr("kg"), 1),
                                 length_mm(m->clearance_m)));
    }
}

void EquipmentPanel::refresh_joined() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    const bool several = choice != nullptr && choice->placements.size() > 1;
    joined_name_->setVisible(several);
    joined_->setVisible(several);
    if (!several) return;
    joined_->show_data(static_cast<int>(choice->joined));
    // A plain tooltip does not wrap by itself.
    QString tip =
        tr("In parallel each collector takes its share of the refrigerant:\n"
           "the pressure drop stays small, and the flow must be shared out evenly.\n"
           "In series all refrigerant passes one collector after the other,\n"
           "in the order of the list: the pressure drops add up, and the\n"
           "first collectors evaporate warmer than the last.");
    const CollectorModel* model = find_collector(session_->reference().catalogue, choice->collector_model);
    if (model != nullptr && model->channel_drop_k > 0.0)
        tip += QLatin1Char('\n') +
               tr("Pressure drop of one collector: %1 of evaporating temperature at %2 of heat.")
                   .arg(quantity(model->channel_drop_k, tr("K"), 1), quantity(model->channel_drop_at_w, tr("W"), 0));
    else if (model != nullptr)
        tip +=
            QLatin1Char('\n') + tr("This collector's data state no pressure drop:\nthe figures are the same for both.");
    joined_->setToolTip(tip);
}

}  // namespace wg::ui
