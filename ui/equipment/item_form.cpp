#include "ui/equipment/item_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/common/heading_label.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/field_box.h"

namespace wg::ui {
namespace {

constexpr int note_height_px = 64;

}  // namespace

ItemForm::ItemForm(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
}

void ItemForm::build(store::ItemKind kind) {
    parts_.clear();
    order_.clear();
    boxes_.clear();
    forms_.clear();
    data_form_ = nullptr;
    page_ = new QWidget(this);
    page_->setObjectName(QStringLiteral("page"));
    auto* column = new QVBoxLayout(page_);
    column->setContentsMargins(0, 0, 12, 0);
    column->setSpacing(8);
    for (const FieldGroup& group : fields_of(kind)) {
        if (group.chosen_here) add_data_form(kind);
        add_group(group);
    }
    auto* title = heading_label(tr("Note"), page_);
    note_ = new QPlainTextEdit(page_);
    note_->setAccessibleName(tr("Note"));
    note_->setPlaceholderText(tr("Where the data come from: sheet, issue, day"));
    note_->setFixedHeight(note_height_px);
    note_->setTabChangesFocus(true);
    connect(note_, &QPlainTextEdit::textChanged, this, &ItemForm::changed);
    title->setBuddy(note_);
    column->addWidget(title);
    column->addWidget(note_);
    column->addStretch(1);
    setWidget(page_);  // the one before goes with its fields
    if (boxes_.contains(QStringLiteral("compressor.power_w"))) {
        for (const char* key : {"compressor.capacity_w", "compressor.mass_flow_kg_h"}) {
            connect(box(QLatin1String(key)), &FieldBox::left_over, this,
                    [this](const QJsonValue& numbers) { box(QStringLiteral("compressor.power_w"))->take(numbers); });
        }
    }
}

void ItemForm::add_data_form(store::ItemKind kind) {
    auto* part = new QWidget(page_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    auto* name = heading_label(tr("Performance is stated by"), part);
    data_form_ = new CalmCombo(part);
    data_form_->setAccessibleName(name->text());
    if (kind == store::ItemKind::block) {
        data_form_->addItem(tr("Displacement and efficiencies"));
        data_form_->addItem(tr("The maker's ten coefficients (EN 12900)"));
    } else {
        data_form_->addItem(tr("Physical parameters of the plate"));
        data_form_->addItem(tr("Coefficients of a test (ISO 9806)"));
    }
    name->setBuddy(data_form_);
    column->addWidget(name);
    column->addWidget(data_form_);
    page_->layout()->addWidget(part);
    connect(data_form_, &QComboBox::activated, this, [this] {
        show_parts();
        Q_EMIT changed();
    });
}

void ItemForm::add_group(const FieldGroup& group) {
    auto* part = new QWidget(page_);
    auto* grid = new QGridLayout(part);
    grid->setContentsMargins(0, 8, 0, 0);
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    auto* title = heading_label(group.title, part);
    title->setWordWrap(true);
    grid->addWidget(title, 0, 0, 1, 2);
    int row = 1;
    int column = 0;
    for (const ItemField& field : group.fields) {
        auto* box = new FieldBox(field, part);
        if (field.wide() && column == 1) {
            ++row;
            column = 0;
        }
        grid->addWidget(box, row, column, 1, field.wide() ? 2 : 1);
        column = field.wide() ? 0 : 1 - column;
        if (column == 0) ++row;
        order_.push_back(box);
        boxes_.insert(field.key, box);
        forms_.insert(field.key, group.form);
        connect(box, &FieldBox::changed, this, &ItemForm::changed);
    }
    page_->layout()->addWidget(part);
    parts_.push_back({part, group.form});
}

bool ItemForm::used(const ItemField& field) const {
    const bool by_coefficients = data_form_ != nullptr && data_form_->currentIndex() == 1;
    switch (forms_.value(field.key)) {
        case DataForm::always: return true;
        case DataForm::curves: return !by_coefficients;
        case DataForm::coefficients:
        case DataForm::tested: return by_coefficients;
    }
    return true;
}

void ItemForm::show_parts() {
    const bool by_coefficients = data_form_ != nullptr && data_form_->currentIndex() == 1;
    for (const Part& part : parts_) {
        if (part.form != DataForm::always) part.widget->setVisible((part.form == DataForm::curves) != by_coefficients);
    }
}

void ItemForm::show_item(const ItemDraft& draft, bool read_only, bool id_open) {
    const QSignalBlocker quiet(this);
    if (!built_ || draft.kind != shown_.kind) build(draft.kind);
    built_ = true;
    shown_ = draft;
    if (data_form_ != nullptr) {
        data_form_->setCurrentIndex(draft.item.contains(object_key_of(draft.kind)) ? 1 : 0);
        data_form_->setEnabled(!read_only);
    }
    for (FieldBox* box : order_) {
        box->set_value(value_at(draft.item, box->field().key));
        box->show_problem({});
        box->set_read_only(read_only || (box->field().key == QLatin1String("id") && !id_open));
    }
    note_->setPlainText(draft.note);
    note_->setReadOnly(read_only);
    show_parts();
    ensureVisible(0, 0);
}

ItemDraft ItemForm::draft() const {
    ItemDraft out;
    out.kind = shown_.kind;
    if (!built_) return out;
    const QString object_key = object_key_of(shown_.kind);
    if (data_form_ != nullptr && data_form_->currentIndex() == 1) out.item.insert(object_key, QJsonObject{});
    for (const FieldBox* box : order_) {
        if (!used(box->field())) continue;
        const QJsonValue value = box->value();
        if (!value.isUndefined()) set_value_at(out.item, box->field().key, value);
    }
    out.note = note_->toPlainText();
    return out;
}

QStringList ItemForm::show_problems(const std::vector<FieldProblem>& problems) {
    QHash<QString, QStringList> texts;
    QStringList others;
    for (const FieldProblem& problem : problems) {
        if (boxes_.contains(problem.key) && used(boxes_.value(problem.key)->field())) {
            texts[problem.key] << problem.text;
        } else {
            others << problem.text;
        }
    }
    for (FieldBox* box : order_)
        box->show_problem(texts.value(box->field().key).join(QLatin1Char('\n')));
    return others;
}

void ItemForm::go_to_first_problem() {
    for (FieldBox* box : order_) {
        if (box->problem().isEmpty() || box->isHidden()) continue;
        ensureWidgetVisible(box, 0, 120);
        box->setFocus();
        return;
    }
}

}  // namespace wg::ui
