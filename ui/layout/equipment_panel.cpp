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
    const auto add = [&](const QString& label, CalmCombo*& combo, void (*verb)(JobSession&, const std::string&)) {
        auto* name = new QLabel(label, this);
        name->setProperty("role", QStringLiteral("muted"));
        column->addWidget(name);
        combo = new CalmCombo(this);
        combo->setAccessibleName(label);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(12);
        name->setBuddy(combo);
        column->addWidget(combo);
        CalmCombo* chosen = combo;
        connect(combo, &QComboBox::activated, this, [this, chosen, verb](int index) {
            if (session_ != nullptr) verb(*session_, chosen->itemData(index).toString().toStdString());
        });
    };
    add(tr("Collector model"), collector_, &set_collector_model);
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

}  // namespace wg::ui
