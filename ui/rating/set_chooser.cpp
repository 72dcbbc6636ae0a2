#include "ui/rating/set_chooser.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

#include "core/equipment/codec.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int most_collectors = 8;
constexpr int least_name_letters = 12;

template <class Model>
void fill_combo(CalmCombo* combo, const std::vector<Model>& models) {
    const QVariant before = combo->currentData();
    combo->clear();
    for (const Model& model : models)
        combo->addItem(model.invented ? SetChooser::tr("%1 (invented)").arg(qs(model.name)) : qs(model.name),
                       qs(model.id));
    combo->show_data(before);
    if (combo->currentIndex() < 0) combo->setCurrentIndex(0);
}

void choose(CalmCombo* combo, const std::string& id) {
    combo->show_data(qs(id));
    if (combo->currentIndex() < 0) combo->setCurrentIndex(0);
}

std::string chosen(const CalmCombo* combo) {
    return combo->currentData().toString().toStdString();
}

template <class Model>
bool append(std::vector<Model>& known, const std::vector<Model>& more, std::string& taken) {
    for (const Model& model : more) {
        if (std::any_of(known.begin(), known.end(), [&](const Model& other) { return other.id == model.id; })) {
            taken = model.id;
            return false;
        }
        known.push_back(model);
    }
    return true;
}

QDoubleSpinBox* figure(double low, double high, double step, double value, const QString& unit, QWidget* parent) {
    auto* box = new QDoubleSpinBox(parent);
    box->setRange(low, high);
    box->setDecimals(1);
    box->setSingleStep(step);
    box->setValue(value);
    box->setSuffix(QStringLiteral("\u202f") + unit);
    box->setKeyboardTracking(false);
    return box;
}

}  // namespace

SetChooser::SetChooser(std::shared_ptr<const plan::Reference> reference, const RatingSet& first, QWidget* parent)
    : QWidget(parent), reference_(std::move(reference)), hysteresis_k_(first.hysteresis_k) {
    collector_ = new CalmCombo(this);
    count_ = new QSpinBox(this);
    count_->setRange(1, most_collectors);
    count_->setValue(first.collectors);
    count_->setKeyboardTracking(false);
    block_ = new CalmCombo(this);
    cylinder_ = new CalmCombo(this);
    set_point_ = figure(40.0, 65.0, 1.0, first.set_point_c, QStringLiteral("°C"), this);
    air_speed_ = figure(0.0, 5.0, 0.1, rating::Chamber{}.air_speed_m_s, QStringLiteral("m/s"), this);
    air_speed_->setToolTip(tr("Over the plate in the chamber. Sheets rarely state it: 1.0 m/s is an assumption."));
    fill();
    choose(collector_, first.collector_id);
    choose(block_, first.block_id);
    choose(cylinder_, first.cylinder_id);
    // The longest name must not decide how narrow the window may be; the tip has it whole.
    for (CalmCombo* combo : {collector_, block_, cylinder_}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(least_name_letters);
    }
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    add_field(row, tr("&Plate"), collector_, 3);
    add_field(row, tr("&Number"), count_, 0);
    add_field(row, tr("&Block"), block_, 3);
    add_field(row, tr("C&ylinder"), cylinder_, 3);
    add_field(row, tr("Set-po&int"), set_point_, 0);
    add_field(row, tr("Air speed (ass&umed)"), air_speed_, 0);
    for (CalmCombo* combo : {collector_, block_, cylinder_})
        connect(combo, &QComboBox::currentIndexChanged, this, &SetChooser::changed);
    connect(count_, &QSpinBox::valueChanged, this, &SetChooser::changed);
    connect(set_point_, &QDoubleSpinBox::valueChanged, this, &SetChooser::changed);
    connect(air_speed_, &QDoubleSpinBox::valueChanged, this, &SetChooser::changed);
}

void SetChooser::add_field(QHBoxLayout* row, const QString& words, QWidget* field, int stretch) {
    auto* label = new QLabel(words, this);
    label->setBuddy(field);
    field->setAccessibleName(QString(words).remove(QLatin1Char('&')));
    auto* column = new QVBoxLayout;
    column->setSpacing(2);
    column->addWidget(label);
    column->addWidget(field);
    row->addLayout(column, stretch);
}

void SetChooser::fill() {
    const QSignalBlocker a(collector_), b(block_), c(cylinder_);
    fill_combo(collector_, reference_->catalogue.collectors);
    fill_combo(block_, reference_->catalogue.blocks);
    fill_combo(cylinder_, reference_->catalogue.cylinders);
}

rating::Item SetChooser::item() const {
    rating::Item item;
    const Catalogue& catalogue = reference_->catalogue;
    if (const auto* model = find_collector(catalogue, chosen(collector_))) item.collector = *model;
    if (const auto* model = find_block(catalogue, chosen(block_))) item.block = *model;
    if (const auto* model = find_cylinder(catalogue, chosen(cylinder_))) item.cylinder = *model;
    item.collectors = count_->value();
    item.set_point_c = set_point_->value();
    item.hysteresis_k = hysteresis_k_;
    const auto fluid = reference_->refrigerants.find(item.block.refrigerant);
    if (fluid != reference_->refrigerants.end()) item.refrigerant = fluid->second.get();
    return item;
}

rating::Chamber SetChooser::chamber() const {
    rating::Chamber chamber;
    chamber.air_speed_m_s = air_speed_->value();
    return chamber;
}

bool SetChooser::invented() const {
    const rating::Item now = item();
    return now.collector.invented || now.block.invented || now.cylinder.invented;
}

void SetChooser::set_set_point(double set_point_c) {
    set_point_->setValue(set_point_c);
}
void SetChooser::set_air_speed(double air_speed_m_s) {
    air_speed_->setValue(air_speed_m_s);
}

Result<bool> SetChooser::add_equipment(const std::string& text, const std::string& file_name) {
    const Result<Catalogue> more = catalogue_from_json(text, file_name);
    if (!more.ok()) return more.problems();
    const Catalogue& added = more.value();
    auto grown = std::make_shared<plan::Reference>(*reference_);
    std::string taken;
    if (!append(grown->catalogue.collectors, added.collectors, taken) ||
        !append(grown->catalogue.blocks, added.blocks, taken) ||
        !append(grown->catalogue.cylinders, added.cylinders, taken)) {
        return Problem{file_name, "the id '" + taken + "' is in the catalogue already", "Give the item its own id"};
    }
    if (added.collectors.empty() && added.blocks.empty() && added.cylinders.empty())
        return Problem{file_name, "holds no plate, block or cylinder", "Check that it is the right file"};
    reference_ = std::move(grown);
    {
        const QSignalBlocker a(collector_), b(block_), c(cylinder_);
        fill();
        if (!added.collectors.empty()) choose(collector_, added.collectors.front().id);
        if (!added.blocks.empty()) choose(block_, added.blocks.front().id);
        if (!added.cylinders.empty()) choose(cylinder_, added.cylinders.front().id);
    }
    Q_EMIT changed();
    return true;
}

}  // namespace wg::ui
