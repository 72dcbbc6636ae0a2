#include "ui/offer/place_form.h"

#include <QDate>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>

#include "core/quote/margin.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/offer/offer_edits.h"

namespace wg::ui {
namespace {

constexpr double most_storeys = 50.0;
constexpr double most_distance_km = 2000.0;
constexpr double most_trips = 100.0;

QString kept_text(const quote::Margin& margin, const QString& currency) {
    QString words = margin.percent ? PlaceForm::tr("%1 over a cost of %2, that is %3 on the cost.")
                                         .arg(money(margin.kept, currency), money(margin.cost, currency),
                                              percent(*margin.percent / 100.0, 1))
                                   : PlaceForm::tr("No cost is told in the price list.");
    if (margin.unknown_lines == 1)
        words += PlaceForm::tr(" One line over %1 has no cost told.").arg(money(margin.unknown_sold, currency));
    if (margin.unknown_lines > 1) {
        words += PlaceForm::tr(" %1 lines over %2 together have no cost told.")
                     .arg(number(margin.unknown_lines), money(margin.unknown_sold, currency));
    }
    return words;
}

}  // namespace

PlaceForm::PlaceForm(QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    list_ = new CalmCombo(this);
    list_words_ = new QLabel(this);
    list_words_->setWordWrap(true);
    access_ = new CalmCombo(this);
    storeys_ = new NumberField(tr("Storeys to carry the cylinder"), {}, {0.0, most_storeys, 0, 1.0, true}, this);
    distance_ = new NumberField(tr("Distance from the firm, one way"), QStringLiteral("km"),
                                {0.0, most_distance_km, 1, 1.0, true}, this);
    trips_ = new NumberField(tr("Trips there and back"), {}, {1.0, most_trips, 0, 1.0, true}, this);
    kept_ = new QLabel(this);
    kept_->setWordWrap(true);
    kept_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    int row = 0;
    const auto add = [&](const QString& words, QWidget* field) {
        auto* label = new QLabel(words, this);
        label->setBuddy(field);
        field->setAccessibleName(words);
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row++, 1);
    };
    add(tr("Price list"), list_);
    grid->addWidget(list_words_, row++, 1);
    add(tr("The collector is reached by"), access_);
    add(tr("Storeys to carry the cylinder"), storeys_);
    add(tr("Distance from the firm, one way"), distance_);
    add(tr("Trips there and back"), trips_);
    auto* heading = new QLabel(tr("What the firm keeps (on no paper)"), this);
    heading->setWordWrap(true);
    grid->addWidget(heading, row, 0, Qt::AlignTop);
    grid->addWidget(kept_, row++, 1);
    grid->setColumnStretch(1, 1);
    connect(list_, &QComboBox::activated, this, [this] {
        const std::string id = list_->currentData().toString().toStdString();
        if (session_ != nullptr && id != session_->job().price_list) set_price_list(*session_, id);
    });
    connect(access_, &QComboBox::activated, this,
            [this] { edit([&](Offer& o) { o.access = access_->currentData().toString().toStdString(); }); });
    connect(storeys_, &NumberField::committed, this, [this](std::optional<double> value) {
        edit([&](Offer& o) { o.storeys = static_cast<int>(value.value_or(0.0)); });
    });
    connect(distance_, &NumberField::committed, this,
            [this](std::optional<double> value) { edit([&](Offer& o) { o.distance_km = value; }); });
    connect(trips_, &NumberField::committed, this, [this](std::optional<double> value) {
        edit([&](Offer& o) { o.trips = static_cast<int>(value.value_or(0.0)); });
    });
}

void PlaceForm::edit(const std::function<void(Offer&)>& change) {
    if (session_ == nullptr) return;
    Offer offer = session_->job().offer;
    change(offer);
    if (!(offer == session_->job().offer)) set_terms(*session_, offer);
}

void PlaceForm::set_session(JobSession* session) {
    session_ = session;
    refresh();
}

const parts::PriceList* PlaceForm::chosen() const {
    const auto& lists = session_->reference().price_lists;
    const auto found = lists.find(session_->job().price_list);
    return found == lists.end() ? nullptr : &found->second;
}

QString PlaceForm::list_words() const {
    return list_words_->text();
}

QString PlaceForm::kept_words() const {
    return kept_->text();
}

void PlaceForm::fill_lists() {
    const QSignalBlocker quiet(list_);
    const plan::Reference& reference = session_->reference();
    const std::string& used = session_->job().price_list;
    list_->clear();
    for (const auto& [id, list] : reference.price_lists) {
        // One that was withdrawn stays with the jobs that have it.
        if (reference.withdrawn_lists.count(id) != 0 && id != used) continue;
        list_->addItem(qs(list.label), qs(id));
    }
    if (chosen() == nullptr) list_->addItem(tr("%1 (not on this machine)").arg(qs(used)), qs(used));
    list_->show_data(qs(used));
    const parts::PriceList* list = chosen();
    QStringList words;
    if (list == nullptr) {
        words += tr("The list that this job names is not here. Read its file under Prices, or choose another.");
    } else {
        const QString today = QDate::currentDate().toString(Qt::ISODate);
        words += tr("Holds from %1 to %2.").arg(day(list->valid_from), day(list->valid_to));
        if (today < qs(list->valid_from) || today > qs(list->valid_to)) words += tr("It does not hold today.");
        if (reference.withdrawn_lists.count(used) != 0) words += tr("The firm has withdrawn it.");
        if (list->invented) words += tr("Its prices are invented, or not checked yet.");
    }
    list_words_->setText(words.join(QLatin1Char(' ')));
}

void PlaceForm::fill_access(const parts::PriceList* list) {
    const QSignalBlocker quiet(access_);
    const std::string& told = session_->job().offer.access;
    access_->clear();
    access_->addItem(tr("not told"), QString());
    bool known = told.empty();
    if (list != nullptr) {
        for (const parts::Difficulty::Access& one : list->difficulty.access) {
            access_->addItem(tr("%1 (hours x %2)").arg(qs(one.text), QString::number(one.factor, 'g', 4)), qs(one.id));
            known = known || one.id == told;
        }
    }
    if (!known) access_->addItem(tr("%1 (the list has no factor for it)").arg(qs(told)), qs(told));
    access_->show_data(qs(told));
}

void PlaceForm::refresh() {
    setEnabled(session_ != nullptr);
    if (session_ == nullptr) return;
    const Offer& offer = session_->job().offer;
    const parts::PriceList* list = chosen();
    fill_lists();
    fill_access(list);
    storeys_->set_value(offer.storeys > 0 ? std::optional<double>(offer.storeys) : std::nullopt);
    distance_->set_value(offer.distance_km);
    trips_->set_value(offer.trips > 0 ? std::optional<double>(offer.trips) : std::nullopt);
    const bool travels = list != nullptr && list->travel;
    trips_->line_edit()->setPlaceholderText(travels ? tr("%1, as the price list has it").arg(list->travel->trips)
                                                    : QString());
    distance_->line_edit()->setPlaceholderText(travels ? tr("no travel is asked for while it is empty")
                                                       : tr("the price list asks nothing for travel"));
    const auto plan = session_->plan();
    kept_->setText(plan != nullptr && plan->offered ? kept_text(quote::margin_of(*plan->offered), qs(plan->currency))
                                                    : tr("There is no price yet."));
}

}  // namespace wg::ui
