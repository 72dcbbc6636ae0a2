#include "ui/prices/purchase_page.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/drawing/amount_table.h"
#include "ui/prices/receive_dialog.h"

namespace wg::ui {
namespace {

constexpr int most_purchases_shown = 200;

QString supplier_words(const std::string& supplier) {
    return supplier.empty() ? PurchasePage::tr("no supplier told") : qs(supplier);
}

/// Of a list's lines from one supplier.
QString list_state(const std::vector<store::PurchaseOrdered>& lines) {
    const auto waiting = std::count_if(lines.begin(), lines.end(),
                                       [](const store::PurchaseOrdered& line) { return parts::to_come(line) > 0; });
    switch (parts::standing_of(lines)) {
        case parts::OrderStanding::open: return PurchasePage::tr("open");
        case parts::OrderStanding::partly: return PurchasePage::tr("partly received, lines to come: %1").arg(waiting);
        case parts::OrderStanding::received: return PurchasePage::tr("received");
        case parts::OrderStanding::not_coming: return PurchasePage::tr("does not come");
        case parts::OrderStanding::no_stock: break;
    }
    return PurchasePage::tr("nothing for the stock");
}

QString line_state(const store::PurchaseOrdered& line) {
    switch (parts::standing_of(line)) {
        case parts::OrderStanding::open: return PurchasePage::tr("to come");
        case parts::OrderStanding::partly:
            return PurchasePage::tr("partly, to come: %1").arg(stock_quantity(parts::to_come(line), line.unit));
        case parts::OrderStanding::received:
            return line.received < line.thousandths ? PurchasePage::tr("received, the rest does not come")
                                                    : PurchasePage::tr("received");
        case parts::OrderStanding::not_coming: return PurchasePage::tr("does not come");
        case parts::OrderStanding::no_stock: break;
    }
    if (line.item_id.empty()) return PurchasePage::tr("a line of the office's own: no stock is kept of it");
    if (!parts::is_stocked(line)) return PurchasePage::tr("work or hire: no stock is kept of it");
    return PurchasePage::tr("nothing was ordered");
}

QString minute_of(const std::string& at) {
    return QDateTime::fromString(qs(at), Qt::ISODate).toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

QString name_or_not_told(const std::string& by) {
    return by.empty() ? PurchasePage::tr("not told") : qs(by);
}

}  // namespace

PurchasePage::PurchasePage(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    stack_ = new QStackedWidget(this);
    auto* none = new QLabel(
        tr("No purchase list has gone out yet. Save one in a job: Offer, Lines, Save purchase list."), stack_);
    none->setWordWrap(true);
    none->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* some = new QSplitter(Qt::Vertical, stack_);
    some->setChildrenCollapsible(false);
    some->addWidget(make_lists());
    some->addWidget(make_below());
    stack_->addWidget(none);
    stack_->addWidget(some);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 12, 0, 0);
    whole->addWidget(stack_);
}

QWidget* PurchasePage::make_lists() {
    auto* part = new QWidget(this);
    table_ = reading_table({tr("Purchase list"), tr("Issued"), tr("Job"), tr("Supplier"), tr("State"), tr("By")}, part);
    table_->setAccessibleName(tr("Purchase lists"));
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
    const int selected = table_->currentRow();
    rows_.clear();
    table_->setRowCount(0);
    auto lists = store::PurchaseBook(store_).lists(most_purchases_shown);
    if (!tell(lists.ok() ? std::vector<Problem>{} : lists.problems())) return;
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
    if (!rows_.empty()) table_->selectRow(std::clamp(selected, 0, static_cast<int>(rows_.size()) - 1));
    show_lines();
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
    return std::make_unique<ReceiveDialog>(qs(list->paper.number), supplier_words(list->supplier), list->lines, this);
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
