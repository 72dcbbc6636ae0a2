#include "ui/prices/purchase_page.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/drawing/amount_table.h"
#include "ui/prices/purchase_words.h"
#include "ui/prices/receive_dialog.h"

namespace wg::ui {
namespace {

constexpr int most_purchases_shown = 200;
constexpr int rows_seen_at_least = 4;

/// With head and some rows, in letters of any size.
int least_table_height(const QWidget& table) {
    return (rows_seen_at_least + 1) * (2 * table.fontMetrics().height());
}

QString supplier_words(const std::string& supplier) {
    return supplier.empty() ? PurchasePage::tr("no supplier told") : qs(supplier);
}

QString minute_of(const std::string& at) {
    return QDateTime::fromString(qs(at), Qt::ISODate).toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

QString name_or_not_told(const std::string& by) {
    return by.empty() ? PurchasePage::tr("not told") : qs(by);
}

}  // namespace

PurchasePage::PurchasePage(store::Store& store, std::function<const std::vector<parts::PriceItem>&()> items,
                           QWidget* parent)
    : QWidget(parent), store_(store), items_(std::move(items)) {
    stack_ = new QStackedWidget(this);
    none_ = new QLabel(stack_);
    none_->setWordWrap(true);
    none_->setTextFormat(Qt::PlainText);
    none_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* some = new QSplitter(Qt::Vertical);
    some->setChildrenCollapsible(false);
    some->addWidget(make_lists());
    some->addWidget(make_below());
    auto* scroll = new QScrollArea(stack_);
    scroll->setWidgetResizable(true);
    scroll->setWidget(some);
    stack_->addWidget(none_);
    stack_->addWidget(scroll);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 12, 0, 0);
    whole->addWidget(stack_);
}

QString PurchasePage::words_of_none() const {
    return stack_->currentIndex() == 0 ? none_->text() : QString();
}

QWidget* PurchasePage::make_lists() {
    auto* part = new QWidget(this);
    table_ = reading_table({tr("Purchase list"), tr("Issued"), tr("Job"), tr("Supplier"), tr("State"), tr("By")}, part);
    table_->setAccessibleName(tr("Purchase lists"));
    table_->setMinimumHeight(least_table_height(*table_));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    open_supplier_ = new QPushButton(tr("Open the supplier's paper"), part);
    open_whole_ = new QPushButton(tr("Open the whole list"), part);
    receive_ = new QPushButton(tr("Book what came\u2026"), part);
    receive_->setProperty("role", QStringLiteral("primary"));
    receive_->setToolTip(tr("Shows the supplier's lines; what came goes into stock, the rest stays to come"));
    auto* row = new QHBoxLayout;
    row->addWidget(open_supplier_);
    row->addWidget(open_whole_);
    row->addStretch(1);
    row->addWidget(receive_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 4);
    column->setSpacing(8);
    column->addWidget(table_, 1);
    column->addLayout(row);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &PurchasePage::show_lines);
    connect(table_, &QTableWidget::activated, this, &PurchasePage::ask_and_receive);
    connect(open_supplier_, &QPushButton::clicked, this, [this] { open_paper(true); });
    connect(open_whole_, &QPushButton::clicked, this, [this] { open_paper(false); });
    connect(receive_, &QPushButton::clicked, this, &PurchasePage::ask_and_receive);
    return part;
}

QWidget* PurchasePage::make_below() {
    auto* halves = new QSplitter(Qt::Horizontal, this);
    halves->setChildrenCollapsible(false);
    lines_table_ = reading_table({tr("Part"), tr("Ordered"), tr("Received"), tr("State")}, halves);
    lines_table_->setAccessibleName(tr("What was ordered"));
    lines_table_->setMinimumHeight(least_table_height(*lines_table_));
    lines_table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    lines_table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    auto* right = new QWidget(halves);
    bookings_table_ = reading_table({tr("Booked"), tr("What"), tr("Note"), tr("By")}, right);
    bookings_table_->setAccessibleName(tr("Deliveries booked"));
    bookings_table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    bookings_table_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    take_back_ = new QPushButton(tr("Take the booking back\u2026"), right);
    take_back_->setToolTip(tr("The booking stays in the book of stock with an entry against it, and counts no more"));
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(bookings_table_, 1);
    column->addWidget(take_back_, 0, Qt::AlignRight);
    halves->addWidget(lines_table_);
    halves->addWidget(right);
    halves->setStretchFactor(0, 3);
    halves->setStretchFactor(1, 2);
    connect(bookings_table_, &QTableWidget::itemSelectionChanged, this, [this] {
        const int at = bookings_table_->currentRow();
        const bool counts = at >= 0 && at < static_cast<int>(bookings_.size()) &&
                            std::any_of(bookings_[static_cast<std::size_t>(at)].moves.begin(),
                                        bookings_[static_cast<std::size_t>(at)].moves.end(),
                                        [](const parts::StockMove& move) { return move.thousandths > 0; });
        take_back_->setEnabled(counts);
    });
    connect(take_back_, &QPushButton::clicked, this, &PurchasePage::ask_and_take_back);
    return halves;
}

bool PurchasePage::tell(const std::vector<Problem>& problems) {
    if (!problems.empty()) Q_EMIT problem(qs(text_of(problems)));
    return problems.empty();
}

void PurchasePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    reload();
}

const PurchasePage::Row* PurchasePage::row_at(int row) const {
    if (row < 0 || row >= static_cast<int>(rows_.size())) return nullptr;
    return &rows_[static_cast<std::size_t>(row)];
}

void PurchasePage::reload() {
    const Row* before = row_at(table_->currentRow());
    const std::string paper_id = before == nullptr ? std::string() : before->paper.id;
    const std::string supplier = before == nullptr ? std::string() : before->supplier;
    rows_.clear();
    table_->setRowCount(0);
    auto lists = store::PurchaseBook(store_).lists(most_purchases_shown);
    if (!tell(lists.ok() ? std::vector<Problem>{} : lists.problems())) {
        none_->setText(tr("The purchase lists could not be read. %1").arg(qs(text_of(lists.problems()))));
        stack_->setCurrentIndex(0);
        show_lines();
        return;
    }
    none_->setText(tr("No purchase list has gone out yet. Save one in a job: Offer, Lines, Save purchase list."));
    for (const store::PurchaseList& list : lists.value()) {
        const std::size_t first = rows_.size();
        for (const store::PurchaseOrdered& line : list.lines) {
            const auto known = std::find_if(rows_.begin() + static_cast<std::ptrdiff_t>(first), rows_.end(),
                                            [&](const Row& one) { return one.supplier == line.supplier; });
            const bool has_paper =
                std::find(list.papers_to.begin(), list.papers_to.end(), line.supplier) != list.papers_to.end();
            if (known == rows_.end())
                rows_.push_back({list.paper, list.job_number, line.supplier, {line}, has_paper});
            else
                known->lines.push_back(line);
        }
        if (rows_.size() == first) rows_.push_back({list.paper, list.job_number, {}, {}, false});
    }
    for (const Row& row : rows_)
        add_reading_row(*table_,
                        {qs(row.paper.number), minute_of(row.paper.kept_at), qs(row.job_number),
                         supplier_words(row.supplier), list_state(row.lines), name_or_not_told(row.paper.kept_by)});
    stack_->setCurrentIndex(rows_.empty() ? 0 : 1);
    select(paper_id, supplier);
    show_lines();
}

void PurchasePage::select(const std::string& paper_id, const std::string& supplier) {
    const auto same = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) {
        return row.paper.id == paper_id && row.supplier == supplier;
    });
    if (!rows_.empty()) table_->selectRow(same == rows_.end() ? 0 : static_cast<int>(same - rows_.begin()));
}

QString PurchasePage::number_of(const store::PurchaseOrdered& line) const {
    if (line.item_id.empty()) return {};
    const std::vector<parts::PriceItem>& items = items_();
    const auto item =
        std::find_if(items.begin(), items.end(), [&](const parts::PriceItem& one) { return one.id == line.item_id; });
    if (item == items.end()) return {};
    const bool theirs = qs(item->supplier).trimmed().compare(qs(line.supplier).trimmed(), Qt::CaseInsensitive) == 0;
    return theirs ? qs(item->supplier_number) : QString();
}

void PurchasePage::show_lines() {
    lines_table_->setRowCount(0);
    const Row* row = row_at(table_->currentRow());
    open_whole_->setEnabled(row != nullptr);
    open_supplier_->setEnabled(row != nullptr && row->has_paper);
    open_supplier_->setToolTip(row == nullptr || row->has_paper
                                   ? QString()
                                   : tr("None was made: an older program kept the list, or nothing was to be ordered "
                                        "of this supplier"));
    receive_->setEnabled(row != nullptr && std::any_of(row->lines.begin(), row->lines.end(), parts::is_stocked));
    if (row != nullptr) {
        for (const store::PurchaseOrdered& line : row->lines)
            add_reading_row(*lines_table_, {qs(line.text), stock_quantity(line.thousandths, line.unit),
                                            line.received == 0 ? QString() : stock_quantity(line.received, line.unit),
                                            line_state(line)});
    }
    show_bookings();
}

void PurchasePage::show_bookings() {
    bookings_.clear();
    bookings_table_->setRowCount(0);
    take_back_->setEnabled(false);
    const Row* row = row_at(table_->currentRow());
    if (row == nullptr) return;
    auto found = store::PurchaseBook(store_).bookings(row->paper.id);
    if (!tell(found.ok() ? std::vector<Problem>{} : found.problems())) return;
    const auto line_of = [row](const parts::StockMove& move) {
        return std::find_if(row->lines.begin(), row->lines.end(),
                            [&](const store::PurchaseOrdered& line) { return line.position == move.purchase_line; });
    };
    for (store::Booking& booking : found.value()) {
        std::erase_if(booking.moves, [&](const parts::StockMove& move) { return line_of(move) == row->lines.end(); });
        if (booking.moves.empty()) continue;
        QStringList what;
        for (const parts::StockMove& move : booking.moves)
            what += move.thousandths == 0 ? tr("%1: taken back").arg(qs(line_of(move)->text))
                                          : QStringLiteral("%1: %2").arg(qs(line_of(move)->text),
                                                                         stock_quantity(move.thousandths, move.unit));
        add_reading_row(*bookings_table_, {minute_of(booking.at), what.join(QLatin1Char('\n')), qs(booking.note),
                                           name_or_not_told(booking.by)});
        bookings_.push_back(std::move(booking));
    }
    bookings_table_->resizeRowsToContents();  // the columns have their widths only now
}

std::unique_ptr<ReceiveDialog> PurchasePage::dialog_for(int row) {
    const Row* list = row_at(row);
    if (list == nullptr) return nullptr;
    QStringList numbers;
    for (const store::PurchaseOrdered& line : list->lines)
        numbers += number_of(line);
    return std::make_unique<ReceiveDialog>(qs(list->paper.number), supplier_words(list->supplier), list->lines, numbers,
                                           this);
}

bool PurchasePage::receive(int row, const std::vector<store::Delivered>& delivered, const QString& note, Instant now) {
    const Row* list = row_at(row);
    if (list == nullptr) return false;
    const QString number = qs(list->paper.number);
    const auto booked =
        store::PurchaseBook(store_).receive(list->paper.id, delivered, note.trimmed().toStdString(), now);
    if (!tell(booked.ok() ? std::vector<Problem>{} : booked.problems())) {
        reload();
        return false;
    }
    reload();
    Q_EMIT said(booked.value() == 1 ? tr("1 line of %1 is booked").arg(number)
                                    : tr("%1 lines of %2 are booked").arg(booked.value()).arg(number));
    return true;
}

bool PurchasePage::take_back(int booking, Instant now) {
    if (booking < 0 || booking >= static_cast<int>(bookings_.size())) return false;
    const auto taken = store::PurchaseBook(store_).take_back(bookings_[static_cast<std::size_t>(booking)], now);
    const bool well = tell(taken.ok() ? std::vector<Problem>{} : taken.problems());
    reload();
    if (well) Q_EMIT said(tr("The booking is taken back: what it brought is to come again"));
    return well;
}

}  // namespace wg::ui
