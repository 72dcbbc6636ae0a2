#include "ui/weather/place_list.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int row_height = 36;

QTableWidgetItem* cell(const QString& text, bool figure) {
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft));
    return item;
}

}  // namespace

QString distance_words(double distance_km) {
    if (!(distance_km >= 0.1)) return QObject::tr("at the site");
    return quantity(distance_km, QStringLiteral("km"), distance_km < 10.0 ? 1 : 0);
}

QString height_words(std::optional<double> higher_m) {
    if (!higher_m) return {};
    const double rounded = std::round(std::fabs(*higher_m));
    if (rounded < 1.0) return QObject::tr("same height");
    return *higher_m > 0.0 ? QObject::tr("%1 higher").arg(quantity(rounded, QStringLiteral("m")))
                           : QObject::tr("%1 lower").arg(quantity(rounded, QStringLiteral("m")));
}

PlaceList::PlaceList(QWidget* parent) : QWidget(parent) {
    search_ = new QLineEdit(this);
    search_->setPlaceholderText(tr("Search places"));
    search_->setAccessibleName(tr("Search places"));
    search_->setClearButtonEnabled(true);
    table_ = new QTableWidget(0, 3, this);
    table_->setHorizontalHeaderLabels({tr("Place"), tr("Distance"), tr("Height")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(row_height);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->setAccessibleName(tr("Weather years, nearest first"));
    count_ = new QLabel(this);
    count_->setProperty("role", QStringLiteral("muted"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(search_);
    column->addWidget(table_, 1);
    column->addWidget(count_);
    connect(search_, &QLineEdit::textChanged, this, &PlaceList::filter);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &PlaceList::selection_changed);
}

void PlaceList::set_places(std::vector<WeatherPlace> places) {
    places_ = std::move(places);
    fill();
    int chosen = 0;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        if (places_[i].in_use) chosen = static_cast<int>(i);
    }
    select(chosen);
}

void PlaceList::add_first(WeatherPlace place) {
    places_.insert(places_.begin(), std::move(place));
    fill();
    select(0);
}

void PlaceList::fill() {
    const QSignalBlocker quiet(table_);
    table_->clearContents();
    table_->setRowCount(static_cast<int>(places_.size()));
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const WeatherPlace& place = places_[i];
        const int row = static_cast<int>(i);
        QTableWidgetItem* name = cell(place.in_use ? tr("In use: %1").arg(place.label) : place.label, false);
        name->setToolTip(place.path.isEmpty() ? place.label : place.path);
        QFont font = table_->font();
        font.setBold(place.in_use);
        name->setFont(font);
        table_->setItem(row, 0, name);
        table_->setItem(row, 1, cell(distance_words(place.distance_km), true));
        table_->setItem(row, 2, cell(height_words(place.higher_m), true));
        if (place.caution.isEmpty()) continue;
        for (const int column : {1, 2})
            table_->item(row, column)->setForeground(current_theme().muted);
    }
    filter();
}

void PlaceList::search(const QString& text) {
    search_->setText(text);
}

void PlaceList::filter() {
    const QString wanted = search_->text().trimmed();
    int shown = 0;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const bool fits = places_[i].label.contains(wanted, Qt::CaseInsensitive);
        table_->setRowHidden(static_cast<int>(i), !fits);
        shown += fits ? 1 : 0;
    }
    count_->setText(wanted.isEmpty() ? tr("%1 places, by distance and height").arg(places_.size())
                                     : tr("%1 of %2 places").arg(shown).arg(places_.size()));
}

void PlaceList::select(int place) {
    if (place < 0 || place >= table_->rowCount()) return;
    table_->selectRow(place);
    table_->scrollToItem(table_->item(place, 0));
}

const WeatherPlace* PlaceList::selected() const {
    const QList<QTableWidgetItem*> items = table_->selectedItems();
    if (items.isEmpty()) return nullptr;
    const auto row = static_cast<std::size_t>(items.front()->row());
    return row < places_.size() ? &places_[row] : nullptr;
}

}  // namespace wg::ui
