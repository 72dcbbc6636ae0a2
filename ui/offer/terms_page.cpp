#include "ui/offer/terms_page.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/common/edit_tools.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/drawing/fields.h"
#include "ui/offer/offer_edits.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/place_form.h"

namespace wg::ui {
namespace {

constexpr int widest_px = 720;
constexpr int words_px = 96;
constexpr double most_days = 3650.0;

}  // namespace

TermsPage::TermsPage(QWidget* parent) : QWidget(parent) {
    auto* inside = new QWidget(this);
    inside->setMaximumWidth(widest_px);
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(12);
    place_ = new PlaceForm(inside);
    column->addWidget(place_);
    column->addWidget(make_money());
    column->addWidget(make_beside());
    column->addWidget(make_words());
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

QWidget* TermsPage::make_money() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    discount_ = new NumberField(tr("Discount on all lines"), QStringLiteral("%"), {0.0, 100.0, 2, 1.0, false}, box);
    reason_ = new TextField(tr("Reason on the quote"), box);
    valid_ = new NumberField(tr("The quote holds for"), tr("days"), {1.0, most_days, 0, 1.0, true}, box);
    valid_->line_edit()->setPlaceholderText(tr("30, as usual"));
    form->addRow(tr("Discount on all lines"), discount_);
    form->addRow(tr("Reason on the quote"), reason_);
    form->addRow(tr("The quote holds for"), valid_);
    column->addLayout(form);
    column->addWidget(heading_label(tr("Instalments"), box));
    grid_ = new QGridLayout;
    grid_->setColumnStretch(0, 1);
    column->addLayout(grid_);
    together_ = new QLabel(box);
    together_->setWordWrap(true);
    column->addWidget(together_);
    add_ = new QPushButton(tr("Add an instalment"), box);
    column->addWidget(add_, 0, Qt::AlignLeft);
    connect(discount_, &NumberField::committed, this,
            [this](std::optional<double> value) { edit([&](Offer& o) { o.discount_percent = value.value_or(0.0); }); });
    connect(reason_, &TextField::committed, this, [this](const QString& words) {
        edit([&](Offer& o) { o.discount_reason = words.trimmed().toStdString(); });
    });
    connect(valid_, &NumberField::committed, this, [this](std::optional<double> value) {
        edit([&](Offer& o) { o.valid_days = static_cast<int>(value.value_or(0.0)); });
    });
    connect(add_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr) add_instalment(*session_);
    });
    return box;
}

QWidget* TermsPage::make_words() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    covering_ = new NoteField(tr("Words to the client, at the head of the quote and in its letter"), box);
    covering_->setToolTip(
        tr("Filled in: %1")
            .arg(QStringLiteral("{client}, {number}, {date}, {valid_until}, {price}, {to_bring}, {title}, "
                                "{job}, {firm}")));
    terms_ = new NoteField(tr("Terms, below the price"), box);
    column->addWidget(heading_label(tr("Words to the client, at the head of the quote and in its letter"), box));
    column->addWidget(covering_);
    column->addWidget(heading_label(tr("Terms, below the price"), box));
    column->addWidget(terms_);
    for (NoteField* field : {covering_, terms_})
        field->setFixedHeight(words_px);
    connect(covering_, &NoteField::committed, this,
            [this](const QString& words) { edit([&](Offer& o) { o.covering = words.trimmed().toStdString(); }); });
    connect(terms_, &NoteField::committed, this,
            [this](const QString& words) { edit([&](Offer& o) { o.terms = words.trimmed().toStdString(); }); });
    return box;
}

QWidget* TermsPage::make_beside() {
    beside_box_ = new QWidget(this);
    auto* column = new QVBoxLayout(beside_box_);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_label(tr("On the quote beside this choice, two at most"), beside_box_));
    return beside_box_;
}

void TermsPage::refresh_beside() {
    std::vector<const Choice*> others;
    const Choice* shown = session_->current_choice();
    std::size_t on = 0;
    for (const Choice& choice : session_->job().choices) {
        if (shown != nullptr && choice.id == shown->id) continue;
        others.push_back(&choice);
        on += choice.on_offer ? 1 : 0;
    }
    while (beside_.size() > others.size()) {
        beside_.back()->hide();
        beside_.back()->deleteLater();
        beside_.pop_back();
    }
    while (beside_.size() < others.size()) {
        auto* box = new QCheckBox(beside_box_);
        beside_box_->layout()->addWidget(box);
        connect(box, &QCheckBox::clicked, this, [this, box](bool checked) {
            if (session_ != nullptr) set_on_offer(*session_, box->property("choice").toString().toStdString(), checked);
        });
        beside_.push_back(box);
    }
    for (std::size_t i = 0; i < others.size(); ++i) {
        QCheckBox* box = beside_[i];
        // A label is the user's own: its ampersand is no shortcut.
        box->setText(qs(others[i]->label).replace(QLatin1Char('&'), QStringLiteral("&&")));
        box->setProperty("choice", qs(others[i]->id));
        box->setChecked(others[i]->on_offer);
        box->setEnabled(others[i]->on_offer || on + 1 < most_on_offer);
    }
    beside_box_->setVisible(!others.empty());
}

void TermsPage::edit(const std::function<void(Offer&)>& change) {
    if (session_ == nullptr) return;
    Offer offer = session_->job().offer;
    change(offer);
    set_terms(*session_, offer);
}

void TermsPage::set_session(JobSession* session) {
    session_ = session;
    place_->set_session(session);
    refresh();
}

void TermsPage::make_rows(std::size_t count) {
    while (rows_.size() > count) {
        const Row row = rows_.back();
        rows_.pop_back();
        for (QWidget* part : {static_cast<QWidget*>(row.text), static_cast<QWidget*>(row.percent),
                              static_cast<QWidget*>(row.sum), static_cast<QWidget*>(row.remove)}) {
            grid_->removeWidget(part);
            part->deleteLater();  // the button that asked for it may be among them
            part->hide();
        }
    }
    while (rows_.size() < count) {
        const std::size_t n = rows_.size();
        const auto line = static_cast<int>(n);
        const QString name = tr("Instalment %1").arg(line + 1);
        Row row;
        row.text = new TextField(name, this);
        row.percent = new NumberField(name, QStringLiteral("%"), {0.0, 100.0, 2, 1.0, false}, this);
        row.sum = new QLabel(this);
        row.sum->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        row.remove = new QPushButton(tr("Remove"), this);
        row.remove->setAccessibleName(tr("Remove instalment %1").arg(line + 1));
        grid_->addWidget(row.text, line, 0);
        grid_->addWidget(row.percent, line, 1);
        grid_->addWidget(row.sum, line, 2);
        grid_->addWidget(row.remove, line, 3);
        const auto of_row = [this, n](const std::function<void(Instalment&)>& change) {
            edit([&](Offer& offer) {
                if (Instalment* one = with_id(offer.instalments, rows_.at(n).id)) change(*one);
            });
        };
        connect(row.text, &TextField::committed, this, [of_row](const QString& words) {
            of_row([&](Instalment& one) { one.text = words.trimmed().toStdString(); });
        });
        connect(row.percent, &NumberField::committed, this, [of_row](std::optional<double> value) {
            of_row([&](Instalment& one) { one.percent = value.value_or(0.0); });
        });
        connect(row.remove, &QPushButton::clicked, this, [this, n] {
            if (session_ != nullptr) remove_instalment(*session_, std::string(rows_.at(n).id));
        });
        rows_.push_back(row);
    }
}

QString TermsPage::together() const {
    return together_->text();
}

void TermsPage::refresh() {
    setEnabled(session_ != nullptr);
    place_->refresh();
    if (session_ == nullptr) return;
    const Offer& offer = session_->job().offer;
    discount_->set_value(offer.discount_percent);
    reason_->set_value(qs(offer.discount_reason));
    valid_->set_value(offer.valid_days > 0 ? std::optional<double>(offer.valid_days) : std::nullopt);
    refresh_beside();
    covering_->set_value(qs(offer.covering));
    terms_->set_value(qs(offer.terms));
    make_rows(offer.instalments.size());
    const auto plan = session_->plan();
    double sum = 0.0;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const Instalment& one = offer.instalments[i];
        rows_[i].id = one.id;
        rows_[i].text->set_value(qs(one.text));
        rows_[i].percent->set_value(one.percent);
        sum += one.percent;
        QString amount;
        if (plan != nullptr && plan->offered) {
            for (const quote::InstalmentSum& priced : plan->offered->instalments) {
                if (priced.element_id == one.id) amount = money(priced.sum, qs(plan->currency));
            }
        }
        rows_[i].sum->setText(amount);
    }
    together_->setText(rows_.empty() ? tr("The sum is paid at once.")
                                     : tr("Together %1 of the total.").arg(percent(sum / 100.0, 2)));
}

}  // namespace wg::ui
