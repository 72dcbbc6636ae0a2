#include "ui/prices/price_page.h"

#include <QDate>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/wide_column.h"
#include "ui/drawing/fields.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_terms.h"
#include "ui/prices/purchase_page.h"
#include "ui/prices/stock_page.h"

namespace wg::ui {
namespace {

constexpr int price_row_px = 32;
constexpr int least_text_px = 260;
constexpr int keep_changes_ms = 250;

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
    purchases_ = new PurchasePage(store_, tabs_);
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
    column->addWidget(state_);
    column->addWidget(tabs_, 1);
    connect(model_, &PriceModel::refused, this, &PricePage::problem);
    connect(terms_, &PriceTerms::refused, this, &PricePage::problem);
    connect(model_, &PriceModel::edited, this, &PricePage::refresh_state);
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
    auto* head = new QWidget(this);
    // In a second line where the window is too narrow for all of them.
    auto* row = new FlowLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    choice_ = new CalmCombo(head);
    choice_->setAccessibleName(tr("Price list"));
    choice_->setMinimumWidth(340);
    choice_->setMaximumWidth(460);
    const auto button = [&](const QString& words, void (PricePage::*ask)()) {
        auto* made = new QPushButton(words, head);
        connect(made, &QPushButton::clicked, this, ask);
        row->addWidget(made);
        return made;
    };
    row->addWidget(choice_);
    button(tr("New from this one"), &PricePage::ask_new);
    button(tr("Read a file"), &PricePage::ask_import);
    button(tr("Write a file"), &PricePage::ask_export);
    history_ = button(tr("Versions"), &PricePage::show_history);
    withdraw_ = button(tr("Withdraw"), &PricePage::ask_withdraw);
    discard_ = button(tr("Discard changes"), &PricePage::discard_changes);
    save_ = button(tr("Save as a version"), &PricePage::ask_save);
    save_->setProperty("role", QStringLiteral("primary"));
    connect(choice_, &QComboBox::activated, this, [this] {
        const std::string wanted = choice_->currentData().toString().toStdString();
        if (!choose(wanted)) choice_->show_data(qs(shown_id_));
    });
    return head;
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
    for (const auto& [column, width] : widths)
        table_->setColumnWidth(column, width);
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
    const QSignalBlocker quiet(choice_);
    choice_->clear();
    for (const Entry& entry : entries_) {
        QString words = qs(entry.list.label);
        if (!entry.own) {
            words += tr(" (comes with the program)");
        } else if (entry.version.withdrawn) {
            words += tr(" (withdrawn)");
        }
        choice_->addItem(words, qs(entry.list.id));
    }
    choice_->show_data(qs(shown_id_));
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
    choice_->show_data(qs(shown_id_));
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
           parts::price_list_to_json(shown_list()) != parts::price_list_to_json(entry->list);
}

QString PricePage::state_words() const {
    return state_->text();
}

void PricePage::refresh_state() {
    const Entry* entry = current();
    if (entry == nullptr) {
        state_->setText(tr("There is no price list."));
        return;
    }
    const parts::PriceList list = shown_list();
    const auto without_cost =
        std::count_if(list.items.begin(), list.items.end(), [](const parts::PriceItem& item) { return !item.cost; });
    QStringList words{tr("%1 items, %2. Prices in %3, net, from %4 to %5.")
                          .arg(number(static_cast<double>(list.items.size())),
                               without_cost == 0
                                   ? tr("all with their cost")
                                   : tr("%1 without a cost").arg(number(static_cast<double>(without_cost))),
                               qs(list.currency), day(list.valid_from), day(list.valid_to))};
    if (list.invented) words += tr("Every price of this list is invented.");
    const QString today = QDate::currentDate().toString(Qt::ISODate);
    if (today < qs(list.valid_from) || today > qs(list.valid_to)) words += tr("It does not hold today.");
    const bool changed = has_changes();
    if ((changed || !kept_id_.empty()) && !keep_delay_.isActive()) keep_delay_.start();
    if (!entry->own) {
        words += tr("It comes with the program and is not changed: make a list of the firm's own from it.");
    } else {
        words += tr("Version %1, saved %2%3.")
                     .arg(number(entry->version.version), day(entry->version.saved_at),
                          entry->version.saved_by.empty() ? QString() : tr(" by %1").arg(qs(entry->version.saved_by)));
        if (entry->version.withdrawn) words += tr("Withdrawn: jobs are not offered it until it is saved again.");
        if (changed) words += tr("Changes are not saved yet.");
    }
    state_->setText(words.join(QLatin1Char(' ')));
    save_->setEnabled(entry->own && (changed || entry->version.withdrawn));
    discard_->setEnabled(changed);
    history_->setEnabled(entry->own);
    withdraw_->setEnabled(entry->own && !entry->version.withdrawn && !changed);
    for (QPushButton* edit : {add_, remove_, import_items_})
        edit->setEnabled(entry->own);
}

bool PricePage::save_version(const QString& note, Instant now) {
    Entry* entry = current();
    if (entry == nullptr || !entry->own) return false;
    const std::string text = parts::price_list_to_json(shown_list());
    // What the fields let pass and the file's reader does not would be a list that nobody can read again.
    const Result<parts::PriceList> read = parts::price_list_from_json(text, "price list " + shown_id_);
    if (!tell(read.ok() ? std::vector<Problem>{} : read.problems())) return false;
    const auto saved = store::PriceBook(store_).save(shown_id_, text, based_on_, note.trimmed().toStdString(), now);
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    entry->list = read.value();
    entry->version = saved.value();
    show_entry(*entry);
    keep_changes();
    fill_choice();
    Q_EMIT said(tr("Version %1 of '%2' saved").arg(saved.value().version).arg(qs(entry->list.label)));
    Q_EMIT lists_changed();
    return true;
}

bool PricePage::withdraw(const QString& note, Instant now) {
    Entry* entry = current();
    if (entry == nullptr || !entry->own) return false;
    const auto done =
        store::PriceBook(store_).withdraw(shown_id_, entry->version.version, note.trimmed().toStdString(), now);
    if (!tell(done.ok() ? std::vector<Problem>{} : done.problems())) return false;
    entry->version = done.value();
    based_on_ = entry->version.version;
    fill_choice();
    refresh_state();
    Q_EMIT said(tr("'%1' is withdrawn").arg(qs(entry->list.label)));
    Q_EMIT lists_changed();
    return true;
}

}  // namespace wg::ui
