#include "ui/prices/purchase_page.h"

#include <QDateTime>
#include <QDesktopServices>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableWidget>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/opened_papers.h"
#include "ui/common/reading_table.h"
#include "ui/common/whole_file.h"
#include "ui/prices/stock_model.h"

namespace wg::ui {
namespace {

constexpr int most_purchases_shown = 200;

QString supplier_words(const std::string& supplier) {
    return supplier.empty() ? PurchasePage::tr("no supplier told") : qs(supplier);
}

bool can_be_booked(const store::PurchaseOrdered& line) {
    return !line.received && !line.item_id.empty() && line.thousandths > 0;
}

}  // namespace

int PurchasePage::Row::open() const {
    return static_cast<int>(std::count_if(lines.begin(), lines.end(), can_be_booked));
}

PurchasePage::PurchasePage(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    stack_ = new QStackedWidget(this);
    auto* none = new QLabel(
        tr("No purchase list has gone out yet. Save one in a job: Offer, Lines, Save purchase list."), stack_);
    none->setWordWrap(true);
    none->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* some = new QWidget(stack_);
    table_ = reading_table({tr("Purchase list"), tr("Issued"), tr("Job"), tr("Supplier"), tr("State"), tr("By")}, some);
    table_->setAccessibleName(tr("Purchase lists"));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    lines_table_ = reading_table({tr("Part"), tr("Ordered"), tr("State")}, some);
    lines_table_->setAccessibleName(tr("What was ordered"));
    lines_table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    lines_table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    open_ = new QPushButton(tr("Open the paper"), some);
    receive_ = new QPushButton(tr("Book as received"), some);
    receive_->setToolTip(tr("Puts what this supplier was to send into stock, once"));
    auto* row = new QHBoxLayout;
    row->addWidget(open_);
    row->addStretch(1);
    row->addWidget(receive_);
    auto* column = new QVBoxLayout(some);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(table_, 1);
    column->addWidget(lines_table_, 1);
    column->addLayout(row);
    stack_->addWidget(none);
    stack_->addWidget(some);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 12, 0, 0);
    whole->addWidget(stack_);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &PurchasePage::show_lines);
    connect(table_, &QTableWidget::activated, this, &PurchasePage::open_paper);
    connect(open_, &QPushButton::clicked, this, &PurchasePage::open_paper);
    connect(receive_, &QPushButton::clicked, this,
            [this] { receive(table_->currentRow(), Instant{QDateTime::currentSecsSinceEpoch()}); });
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
    const store::PurchaseBook book(store_);
    const int selected = table_->currentRow();
    rows_.clear();
    table_->setRowCount(0);
    const auto papers = book.papers(most_purchases_shown);
    tell(papers.ok() ? std::vector<Problem>{} : papers.problems());
    for (const store::PurchasePaper& paper : papers.ok() ? papers.value() : std::vector<store::PurchasePaper>{}) {
        const auto lines = book.lines(paper.id);
        if (!tell(lines.ok() ? std::vector<Problem>{} : lines.problems())) continue;
        const std::size_t first = rows_.size();
        for (const store::PurchaseOrdered& line : lines.value()) {
            const auto known = std::find_if(rows_.begin() + static_cast<std::ptrdiff_t>(first), rows_.end(),
                                            [&](const Row& one) { return one.supplier == line.supplier; });
            if (known == rows_.end())
                rows_.push_back({paper, line.supplier, {line}});
            else
                known->lines.push_back(line);
        }
        if (rows_.size() == first) rows_.push_back({paper, {}, {}});
    }
    const store::StockBook stock(store_);
    for (const Row& row : rows_) {
        const auto number = stock.number_of_job(row.paper.job_id);
        const bool any =
            std::any_of(row.lines.begin(), row.lines.end(), [](const auto& line) { return line.received; });
        const QString state = row.open() > 0 ? tr("%1 to come").arg(row.open())
                              : any          ? tr("received")
                                             : tr("nothing for the stock");
        const QDateTime at = QDateTime::fromString(qs(row.paper.kept_at), Qt::ISODate).toLocalTime();
        add_reading_row(*table_, {qs(row.paper.number), at.toString(QStringLiteral("yyyy-MM-dd HH:mm")),
                                  number.ok() ? qs(number.value()) : QString(), supplier_words(row.supplier), state,
                                  row.paper.kept_by.empty() ? tr("not told") : qs(row.paper.kept_by)});
    }
    stack_->setCurrentIndex(rows_.empty() ? 0 : 1);
    if (!rows_.empty()) table_->selectRow(std::clamp(selected, 0, static_cast<int>(rows_.size()) - 1));
    show_lines();
}

void PurchasePage::show_lines() {
    lines_table_->setRowCount(0);
    const Row* row = row_at(table_->currentRow());
    open_->setEnabled(row != nullptr);
    receive_->setEnabled(row != nullptr && row->open() > 0);
    if (row == nullptr) return;
    for (const store::PurchaseOrdered& line : row->lines) {
        const QString state = line.received           ? tr("received")
                              : line.item_id.empty()  ? tr("a line of the office's own: no stock is kept of it")
                              : line.thousandths == 0 ? tr("nothing was ordered")
                                                      : tr("to come");
        add_reading_row(*lines_table_, {qs(line.text), stock_quantity(line.thousandths, line.unit), state});
    }
}

bool PurchasePage::receive(int row, Instant now) {
    const Row* list = row_at(row);
    if (list == nullptr) return false;
    const QString number = qs(list->paper.number);
    const auto booked = store::PurchaseBook(store_).receive(list->paper.id, list->supplier, now);
    if (!tell(booked.ok() ? std::vector<Problem>{} : booked.problems())) return false;
    reload();
    Q_EMIT said(tr("%1 lines of %2 are booked as received").arg(booked.value()).arg(number));
    Q_EMIT stock_changed();
    return true;
}

bool PurchasePage::save_paper(int row, const QString& path) {
    const Row* list = row_at(row);
    if (list == nullptr) return false;
    const auto bytes = store::PurchaseBook(store_).paper(list->paper.id);
    if (!tell(bytes.ok() ? std::vector<Problem>{} : bytes.problems())) return false;
    const auto written = write_whole(path, bytes.value());
    return tell(written.ok() ? std::vector<Problem>{} : written.problems());
}

void PurchasePage::open_paper() {
    const Row* list = row_at(table_->currentRow());
    if (list == nullptr) return;
    const QString path =
        place_for_opened_paper(QStringLiteral("purchase-%1.pdf").arg(paper_file_stem(list->paper.number)));
    if (!save_paper(table_->currentRow(), path)) return;
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        Q_EMIT problem(tr("No program that shows PDF files answered. The paper lies at %1.").arg(path));
}

}  // namespace wg::ui
