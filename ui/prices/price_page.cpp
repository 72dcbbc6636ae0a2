#include "ui/prices/price_page.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/calm_combo.h"
#include "ui/common/format.h"
#include "ui/common/versions_head.h"
#include "ui/common/versions_view.h"
#include "ui/common/wide_column.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_terms.h"
#include "ui/prices/purchase_page.h"
#include "ui/prices/stock_page.h"

namespace wg::ui {
namespace {

constexpr int price_row_px = 32;
constexpr int least_text_px = 260;
constexpr int keep_changes_ms = 250;
constexpr int heading_spare_px = 6;

}  // namespace

PricePage::PricePage(store::Store& store, std::shared_ptr<const plan::Reference> reference, QWidget* parent)
    : QWidget(parent), store_(store), reference_(std::move(reference)) {
    model_ = new PriceModel(this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    tabs_->addTab(make_items(), tr("Items"));
    const auto items = [this]() -> const std::vector<parts::PriceItem>& { return model_->list().items; };
    terms_ = new PriceTerms(tabs_, items);
    for (const auto& [words, page] : terms_->pages())
        tabs_->addTab(page, words);
    stock_ = new StockPage(store_, items, tabs_);
    tabs_->addTab(stock_, tr("Stock"));
    purchases_ = new PurchasePage(store_, items, tabs_);
    tabs_->addTab(purchases_, tr("Purchase lists"));
    connect(stock_, &StockPage::problem, this, &PricePage::problem);
    connect(stock_, &StockPage::said, this, &PricePage::said);
    connect(purchases_, &PurchasePage::problem, this, &PricePage::problem);
    connect(purchases_, &PurchasePage::said, this, &PricePage::said);
    state_ = new QLabel(this);
    state_->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addWidget(make_head());
    checked_ = new QPushButton(tr("Prices are checked"), this);
    checked_->setToolTip(tr("Takes the mark of invented prices away; what still has one is told first"));
    connect(checked_, &QPushButton::clicked, this, &PricePage::ask_checked);
    auto* told = new QHBoxLayout;
    told->setSpacing(8);
    told->addWidget(state_, 1);
    told->addWidget(checked_, 0, Qt::AlignTop);
    column->addLayout(told);
    column->addWidget(tabs_, 1);
    connect(model_, &PriceModel::refused, this, &PricePage::problem);
    connect(terms_, &PriceTerms::refused, this, &PricePage::problem);
    connect(model_, &PriceModel::edited, this, &PricePage::refresh_state);
    connect(model_, &PriceModel::edited, this, &PricePage::taken);
    connect(terms_, &PriceTerms::edited, this, &PricePage::taken);
    connect(terms_, &PriceTerms::edited, this, [this] {
        model_->set_terms(shown_list());
        refresh_state();
    });
    keep_delay_.setSingleShot(true);
    keep_delay_.setInterval(keep_changes_ms);
    connect(&keep_delay_, &QTimer::timeout, this, &PricePage::keep_changes);
    reload();
    bring_back();
}

QWidget* PricePage::make_head() {
    head_ = new VersionsHead({tr("Price list"), tr("New price list"), tr("Withdraw the list"), QStringLiteral("list"),
                              [] { return tr("Prices %1").arg(QDate::currentDate().year()); }},
                             this);
    connect(head_, &VersionsHead::chosen, this, [this](const QString& id) {
        if (!choose(id.toStdString())) head_->choice()->show_data(qs(shown_id_));
    });
    connect(head_, &VersionsHead::new_asked, this,
            [this](const QString& id, const QString& label) { make_own(id.toStdString(), label); });
    connect(head_, &VersionsHead::read_asked, this, &PricePage::ask_import);
    connect(head_, &VersionsHead::write_asked, this, &PricePage::ask_export);
    connect(head_, &VersionsHead::versions_asked, this, [this] { versions()->exec(); });
    connect(head_, &VersionsHead::withdraw_asked, this,
            [this](const QString& why) { withdraw(why, Instant{QDateTime::currentSecsSinceEpoch()}); });
    connect(head_, &VersionsHead::discard_asked, this, &PricePage::discard_changes);
    connect(head_, &VersionsHead::save_asked, this,
            [this](const QString& note) { save_version(note, Instant{QDateTime::currentSecsSinceEpoch()}); });
    return head_;
}

QWidget* PricePage::make_items() {
    auto* part = new QWidget(this);
    search_ = new QLineEdit(part);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(tr("Search by item, id, supplier or order number"));
    search_->setAccessibleName(tr("Search the items"));
    search_->setClearButtonEnabled(true);
    table_ = new QTableView(part);
    table_->setAccessibleName(tr("Items of the price list"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(price_row_px);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionResizeMode(QHeaderView::Interactive);
    const std::pair<int, int> widths[] = {
        {PriceModel::column_id, 124},   {PriceModel::column_unit, 52},      {PriceModel::column_supplier_price, 92},
        {PriceModel::column_group, 68}, {PriceModel::column_cost, 94},      {PriceModel::column_margin, 92},
        {PriceModel::column_price, 98}, {PriceModel::column_many, 128},     {PriceModel::column_pack, 58},
        {PriceModel::column_waste, 88}, {PriceModel::column_supplier, 130}, {PriceModel::column_number, 128},
        {PriceModel::column_tax, 90}};
    header->ensurePolished();  // the style's own letters are wider than the plain ones
    for (const auto& [column, width] : widths)
        table_->setColumnWidth(column, std::max(width, header->sectionSizeHint(column) + heading_spare_px));
    keep_wide(*table_, PriceModel::column_text, least_text_px);
    add_ = new QPushButton(tr("Add an item"), part);
    remove_ = new QPushButton(tr("Remove the item"), part);
    import_items_ = new QPushButton(tr("Take prices from a CSV file"), part);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(search_, 1);
    row->addWidget(add_);
    row->addWidget(remove_);
    row->addWidget(import_items_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addLayout(row);
    column->addWidget(table_, 1);
    connect(search_, &QLineEdit::textChanged, model_, &PriceModel::set_words);
    connect(add_, &QPushButton::clicked, this, [this] {
        const int at = model_->add_item();
        table_->setCurrentIndex(model_->index(at, PriceModel::column_text));
        table_->scrollToBottom();
        table_->edit(table_->currentIndex());
    });
    connect(remove_, &QPushButton::clicked, this, [this] { model_->remove_row(table_->currentIndex().row()); });
    connect(import_items_, &QPushButton::clicked, this, &PricePage::ask_import_items);
    return part;
}

bool PricePage::tell(const std::vector<Problem>& problems) {
    if (!problems.empty()) Q_EMIT problem(qs(text_of(problems)));
    return problems.empty();
}

void PricePage::read_lists() {
    entries_.clear();
    const store::PriceBook book(store_);
    const auto lists = book.lists();
    if (!tell(lists.ok() ? std::vector<Problem>{} : lists.problems())) return;
    for (const store::PriceListVersion& version : lists.value()) {
        const auto content = book.content(version.list_id, version.version);
        if (!content.ok()) {
            tell(content.problems());
            continue;
        }
        Result<parts::PriceList> list = parts::price_list_from_json(content.value(), "price list " + version.list_id);
        if (!list.ok()) {
            tell(list.problems());
            continue;
        }
        entries_.push_back({std::move(list).value(), true, version});
    }
    for (const auto& [id, list] : reference_->price_lists) {
        const bool own = std::any_of(entries_.begin(), entries_.end(), [&](const Entry& e) { return e.list.id == id; });
        if (!own) entries_.push_back({list, false, {}});
    }
}

void PricePage::fill_choice() {
    std::vector<VersionsHead::Line> lines;
    lines.reserve(entries_.size());
    for (const Entry& entry : entries_)
        lines.push_back({qs(entry.list.id), qs(entry.list.label), entry.own, entry.version.withdrawn});
    head_->show_lines(lines, qs(shown_id_));
}

void PricePage::reload() {
    const bool kept = has_changes();
    read_lists();
    if (current() == nullptr) shown_id_ = entries_.empty() ? std::string() : entries_.front().list.id;
    fill_choice();
    if (kept) {
        refresh_state();
    } else if (const Entry* entry = current()) {
        show_entry(*entry);
    }
}

PricePage::Entry* PricePage::current() {
    for (Entry& entry : entries_)
        if (entry.list.id == shown_id_) return &entry;
    return nullptr;
}

const PricePage::Entry* PricePage::current() const {
    for (const Entry& entry : entries_)
        if (entry.list.id == shown_id_) return &entry;
    return nullptr;
}

void PricePage::show_entry(const Entry& entry) {
    shown_id_ = entry.list.id;
    based_on_ = entry.version.version;
    model_->set_list(entry.list, entry.own);
    terms_->set_list(entry.list, entry.own);
    head_->choice()->show_data(qs(shown_id_));
    refresh_state();
}

bool PricePage::choose(const std::string& list_id) {
    if (list_id == shown_id_) return true;
    if (has_changes()) {
        Q_EMIT problem(
            tr("The list on screen has changes. Save them as a version, or discard them, then change the list."));
        return false;
    }
    for (const Entry& entry : entries_) {
        if (entry.list.id != list_id) continue;
        show_entry(entry);
        return true;
    }
    return false;
}

parts::PriceList PricePage::shown_list() const {
    parts::PriceList list = model_->list();
    terms_->write_to(list);
    return list;
}

bool PricePage::has_changes() const {
    const Entry* entry = current();
    return entry != nullptr && entry->own &&
           (!terms_->unfinished().isEmpty() ||
            parts::price_list_to_json(shown_list()) != parts::price_list_to_json(entry->list));
}

}  // namespace wg::ui
