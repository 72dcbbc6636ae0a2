#include "ui/prices/stock_page.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "core/store/purchase_book.h"
#include "ui/common/format.h"
#include "ui/prices/stock_model.h"

namespace wg::ui {
namespace {

constexpr int stock_row_px = 32;

}  // namespace

StockPage::StockPage(store::Store& store, std::function<const std::vector<parts::PriceItem>&()> items, QWidget* parent)
    : QWidget(parent), store_(store), items_(std::move(items)) {
    auto* halves = new QSplitter(Qt::Horizontal);
    halves->setChildrenCollapsible(false);
    halves->addWidget(make_items());
    halves->addWidget(make_moves());
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    halves->setSizes({760, 540});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    auto* scroll = new QScrollArea(this);  // with large letters the form is higher than a small screen
    scroll->setWidgetResizable(true);
    scroll->setWidget(halves);
    column->addWidget(scroll, 1);
    refresh_form();
}

QWidget* StockPage::make_items() {
    auto* part = new QWidget(this);
    search_ = new QLineEdit(part);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(tr("Search by item or id"));
    search_->setAccessibleName(tr("Search the stock"));
    search_->setClearButtonEnabled(true);
    state_ = new QLabel(part);
    state_->setWordWrap(true);
    model_ = new StockModel(this);
    table_ = new QTableView(part);
    table_->setAccessibleName(tr("Items in stock"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(stock_row_px);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionResizeMode(StockModel::column_text, QHeaderView::Stretch);
    table_->setColumnWidth(StockModel::column_id, 116);
    for (const int column : {StockModel::column_level, StockModel::column_on_order, StockModel::column_free})
        table_->setColumnWidth(column, 84);
    // The longest month's name, whatever the letters.
    constexpr int beside_words_px = 20;
    table_->setColumnWidth(StockModel::column_counted,
                           table_->fontMetrics().horizontalAdvance(day("2026-09-30")) + beside_words_px);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addWidget(search_);
    column->addWidget(state_);
    column->addWidget(table_, 1);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& words) {
        model_->set_words(words);
        if (const int row = model_->row_of(item_id_, unit_); row >= 0) table_->selectRow(row);
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        if (const StockModel::Row* row = now.isValid() ? model_->row_at(now.row()) : nullptr)
            choose(row->item_id, row->unit);
    });
    return part;
}

bool StockPage::tell(const std::vector<Problem>& problems) {
    if (!problems.empty()) Q_EMIT problem(qs(text_of(problems)));
    return problems.empty();
}

void StockPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    reload();  // other pages book, too
}

void StockPage::reload() {
    const auto standings = store::stock_standings(store_, {}, {});
    if (!tell(standings.ok() ? std::vector<Problem>{} : standings.problems())) return;
    const std::string item = item_id_;
    const std::string unit = unit_;
    model_->set(items_(), standings.value());
    const QStringList missing = model_->below_nothing();
    const auto kept = std::count_if(standings.value().begin(), standings.value().end(),
                                    [](const parts::ItemStanding& one) { return one.in_stock.has_value(); });
    QString words = kept == 0 ? tr("No stock is kept yet. Choose an item and enter what is there as counted.")
                              : tr("Items that stock is kept of: %1.").arg(kept);
    if (!missing.isEmpty())
        words +=
            QLatin1Char(' ') +
            tr("\u25b2 More was taken than was there; count: %1.").arg(missing.mid(0, 5).join(QStringLiteral(", ")));
    state_->setText(words);
    if (const int row = model_->row_of(item, unit); row >= 0) table_->selectRow(row);
    show_moves();
}

QString StockPage::state_words() const {
    return state_->text();
}

void StockPage::choose(const std::string& item_id, const std::string& unit) {
    if (item_id == item_id_ && unit == unit_) return;
    item_id_ = item_id;
    unit_ = unit;
    clear_form();
    if (const int row = model_->row_of(item_id, unit); row >= 0) table_->selectRow(row);
    show_moves();
}

}  // namespace wg::ui
