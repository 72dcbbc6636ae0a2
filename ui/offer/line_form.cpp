#include "ui/offer/line_form.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/edit_tools.h"
#include "ui/common/format.h"
#include "ui/documents/papers.h"
#include "ui/drawing/fields.h"
#include "ui/offer/offer_edits.h"

namespace wg::ui {
namespace {

constexpr double most_quantity = 1e6;
constexpr double most_price = static_cast<double>(max_minor) / 100.0;

std::int64_t minor_of(double major) {
    return std::llround(major * 100.0);
}

double major_of(std::int64_t minor) {
    return static_cast<double>(minor) / 100.0;
}

}  // namespace

LineForm::LineForm(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    head_ = new QLabel(this);
    head_->setWordWrap(true);
    head_->setProperty("role", QStringLiteral("heading"));
    planned_ = new QLabel(this);
    planned_->setWordWrap(true);
    fields_ = new QWidget(this);
    make_fields();
    column->addWidget(head_);
    column->addWidget(planned_);
    column->addWidget(fields_);
    keep_ = new QPushButton(tr("Keep this quantity"), this);
    keep_->setToolTip(tr("The plan asks for another quantity than when the line was changed"));
    column->addWidget(keep_, 0, Qt::AlignLeft);
    back_ = new QPushButton(this);
    column->addWidget(back_, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect_fields();
    show_row(nullptr, nullptr);
}

void LineForm::make_fields() {
    text_ = new TextField(tr("Words"), fields_);
    quantity_ = new NumberField(tr("Quantity"), QString(), {0.0, most_quantity, 3, 1.0, false}, fields_);
    unit_ = new TextField(tr("Unit"), fields_);
    price_ = new NumberField(tr("Price each, net"), QString(), {-most_price, most_price, 2, 0.0, false, true}, fields_);
    tax_ = new CalmCombo(fields_);
    tax_->setAccessibleName(tr("Tax"));
    supplier_ = new TextField(tr("Supplier"), fields_);
    option_ = new QCheckBox(tr("The client may have it or not"), fields_);
    ticked_ = new QCheckBox(tr("The client wants it"), fields_);
    note_ = new TextField(tr("Note for the firm, never on paper"), fields_);
    left_out_ = new QCheckBox(tr("Left out of the offer"), fields_);
    reason_ = new TextField(tr("Reason, for the firm"), fields_);
    everywhere_ = new QCheckBox(tr("In every choice"), fields_);
    // No QFormLayout: with hidden rows and fields that wrap, Qt 6.4 writes past the end of its own list of rows.
    rows_ = new QVBoxLayout(fields_);
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setSpacing(8);
    add_row(tr("Words"), text_);
    add_row(tr("Quantity"), quantity_);
    add_row(tr("Unit"), unit_);
    add_row(tr("Price each, net"), price_);
    add_row(tr("Tax"), tax_);
    add_row(tr("Supplier"), supplier_);
    add_row({}, option_);
    add_row({}, ticked_);
    add_row(tr("Note for the firm, never on paper"), note_);
    add_row({}, left_out_);
    add_row(tr("Reason, for the firm"), reason_);
    add_row({}, everywhere_);
}

void LineForm::add_row(const QString& words, QWidget* field) {
    auto* row = new QWidget(fields_);
    auto* column = new QVBoxLayout(row);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    if (!words.isEmpty()) {
        auto* label = new QLabel(words, row);
        label->setBuddy(field);
        column->addWidget(label);
    }
    column->addWidget(field);
    rows_->addWidget(row);
}

void LineForm::show_row_of(QWidget* field, bool shown) {
    field->parentWidget()->setVisible(shown);
}

void LineForm::connect_fields() {
    connect(text_, &TextField::committed, this, [this](const QString& words) {
        const std::string text = words.trimmed().toStdString();
        own() ? change_own([&](OfferLine& line) { line.text = text; }) : change([&](LineChange& c) {
            c.text = text == row_.line.line.text && c.text.empty() ? std::string() : text;
        });
    });
    connect(quantity_, &NumberField::committed, this, [this](std::optional<double> value) {
        own() ? change_own([&](OfferLine& line) { line.quantity = value.value_or(0.0); }) : change([&](LineChange& c) {
            c.quantity = value;
            // What the plan asks for now is what was looked at.
            c.planned_quantity =
                row_.line.source == quote::LineSource::changed ? row_.line.planned_quantity : row_.line.line.to_buy;
        });
    });
    connect(price_, &NumberField::committed, this, [this](std::optional<double> value) {
        const std::int64_t minor = minor_of(value.value_or(0.0));
        own() ? change_own([&](OfferLine& line) { line.unit_price_minor = minor; })
              : change([&](LineChange& c) { c.unit_price_minor = minor; });
    });
    connect(unit_, &TextField::committed, this, [this](const QString& words) {
        change_own([&](OfferLine& l) { l.unit = words.trimmed().toStdString(); });
    });
    connect(tax_, &QComboBox::activated, this, [this] {
        change_own([&](OfferLine& line) { line.tax_class = tax_->currentData().toString().toStdString(); });
    });
    connect(supplier_, &TextField::committed, this, [this](const QString& words) {
        change_own([&](OfferLine& l) { l.supplier = words.trimmed().toStdString(); });
    });
    connect(option_, &QCheckBox::clicked, this,
            [this](bool on) { change_own([on](OfferLine& line) { line.to_tick = on; }); });
    connect(ticked_, &QCheckBox::clicked, this,
            [this](bool on) { change_own([on](OfferLine& line) { line.ticked = on; }); });
    connect(note_, &TextField::committed, this, [this](const QString& words) {
        change_own([&](OfferLine& l) { l.note = words.trimmed().toStdString(); });
    });
    connect(left_out_, &QCheckBox::clicked, this,
            [this](bool on) { change([on](LineChange& c) { c.left_out = on; }); });
    connect(reason_, &TextField::committed, this,
            [this](const QString& words) { change([&](LineChange& c) { c.reason = words.trimmed().toStdString(); }); });
    connect(everywhere_, &QCheckBox::clicked, this, [this](bool on) {
        const Choice* choice = session_ == nullptr ? nullptr : session_->current_choice();
        const std::string to = on || choice == nullptr ? std::string() : choice->id;
        own() ? change_own([&](OfferLine& line) { line.choice_id = to; })
              : change([&](LineChange& c) { c.choice_id = to; });
    });
    connect(back_, &QPushButton::clicked, this, &LineForm::go_back);
    connect(keep_, &QPushButton::clicked, this, &LineForm::keep_overtaken);
    // The same figure typed again is no edit of it, but somebody has looked.
    connect(quantity_->line_edit(), &QLineEdit::returnPressed, this, &LineForm::keep_overtaken);
}

bool LineForm::own() const {
    return row_.line.source == quote::LineSource::own;
}

const OfferLine* LineForm::own_line() const {
    return session_ == nullptr ? nullptr : with_id(session_->job().offer.lines, row_.line.element_id);
}

void LineForm::change(const std::function<void(LineChange&)>& edit) {
    if (session_ == nullptr || !shown_ || own()) return;
    LineChange changed = change_of(*session_, row_.line);
    edit(changed);
    set_change(*session_, changed);
}

void LineForm::change_own(const std::function<void(OfferLine&)>& edit) {
    const OfferLine* line = own_line();
    if (line == nullptr || !shown_) return;
    OfferLine changed = *line;
    edit(changed);
    set_own_line(*session_, changed);
}

void LineForm::keep_overtaken() {
    if (session_ == nullptr || !shown_ || own() || !row_.line.overtaken || !quantity_->problem().isEmpty()) return;
    change([this](LineChange& c) { c.planned_quantity = row_.line.planned_quantity; });
}

void LineForm::go_back() {
    if (session_ == nullptr || !shown_) return;
    own() ? remove_own_line(*session_, row_.line.element_id) : take_change_back(*session_, row_.line.element_id);
}

void LineForm::show_row(JobSession* session, const OfferRow* row) {
    session_ = session;
    shown_ = session != nullptr && row != nullptr;
    if (shown_) row_ = *row;
    const OfferLine* line = shown_ && own() ? own_line() : nullptr;
    if (shown_ && own() && line == nullptr) shown_ = false;  // its plan is older than its removal
    fields_->setVisible(shown_);
    planned_->setVisible(shown_);
    back_->setVisible(shown_);
    keep_->setVisible(shown_ && row_.line.overtaken);
    if (!shown_) {
        head_->setText(tr("Select a line to change its quantity, price or words, or add one."));
        return;
    }
    const QString currency = session->plan() == nullptr ? QString() : qs(session->plan()->currency);
    price_->set_unit(currency);
    head_->setText(qs(row_.line.line.text));
    const bool subsidy = row_.kind == OfferRow::Kind::subsidy;
    const bool is_own = own();
    for (QWidget* field : {static_cast<QWidget*>(unit_), static_cast<QWidget*>(tax_), static_cast<QWidget*>(supplier_),
                           static_cast<QWidget*>(option_)})
        show_row_of(field, is_own && !subsidy);
    show_row_of(ticked_, is_own && !subsidy && line != nullptr && line->to_tick);
    show_row_of(note_, is_own);
    show_row_of(left_out_, !is_own);
    show_row_of(reason_, !is_own);
    is_own ? show_own(*line) : show_planned();
}

void LineForm::show_own(const OfferLine& line) {
    const bool subsidy = line.kind == OfferLineKind::subsidy;
    planned_->setText(subsidy                              ? tr("A subsidy: taken off what the client has to bring.")
                      : line.kind == OfferLineKind::labour ? tr("Work that no plan asks for.")
                                                           : tr("A part that no plan asks for."));
    text_->set_value(qs(line.text));
    quantity_->set_unit(qs(line.unit));
    quantity_->set_value(line.quantity);
    unit_->set_value(qs(line.unit));
    price_->set_value(major_of(line.unit_price_minor));
    tax_->clear();
    const auto& rules = session_->reference().rule_sets;
    if (const auto set = rules.find(session_->job().rule_set); set != rules.end()) {
        for (const quote::TaxRate& rate : set->second.tax.rates)
            tax_->addItem(QStringLiteral("%1, %2").arg(qs(rate.label), percent(rate.rate, 1)), qs(rate.tax_class));
    }
    tax_->show_data(qs(line.tax_class));
    supplier_->set_value(qs(line.supplier));
    option_->setChecked(line.to_tick);
    ticked_->setChecked(line.ticked);
    note_->set_value(qs(line.note));
    everywhere_->setEnabled(true);
    everywhere_->setChecked(line.choice_id.empty());
    back_->setText(tr("Remove this line"));
    back_->setEnabled(true);
}

void LineForm::show_planned() {
    const quote::OfferedLine& line = row_.line;
    const LineChange* change = with_id(session_->job().offer.changes, line.element_id);
    const bool changed = line.source == quote::LineSource::changed;
    const double quantity = changed ? line.planned_quantity : line.line.to_buy;
    const Money price = changed ? line.planned_price : line.line.unit_price;
    const QString currency = qs(session_->plan()->currency);
    QString planned = tr("The plan asks for %1").arg(paper::amount_words(quantity, line.line.unit));
    if (line.line.priced) planned += tr(" at %1 each").arg(money(price, currency));
    planned_->setText(planned + QStringLiteral(". ") + qs(line.line.why));
    text_->set_value(qs(line.line.text));
    quantity_->set_unit(qs(line.line.unit));
    quantity_->set_value(line.line.to_buy);
    price_->set_value(line.line.priced ? std::optional<double>(major_of(line.line.unit_price.minor)) : std::nullopt);
    left_out_->setChecked(line.left_out);
    reason_->set_value(change == nullptr ? QString() : qs(change->reason));
    // A reason alone is no change.
    reason_->setEnabled(change != nullptr);
    everywhere_->setEnabled(change != nullptr);
    everywhere_->setChecked(change != nullptr && change->choice_id.empty());
    back_->setText(tr("Back to the plan"));
    back_->setEnabled(change != nullptr);
}

void LineForm::focus_first() {
    if (!shown_) return;
    text_->setFocus();
    text_->selectAll();
}

}  // namespace wg::ui
