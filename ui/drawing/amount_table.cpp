#include "ui/drawing/amount_table.h"

#include <QHeaderView>
#include <QSignalBlocker>

#include "core/parts/stock.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int amount_row_px = 36;

QString plain_amount(std::int64_t thousandths) {
    QString text = QString::number(static_cast<double>(thousandths) / 1000.0, 'f', 3);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return text;
}

}  // namespace

QString stock_quantity(std::int64_t thousandths, const std::string& unit) {
    int decimals = 3;
    for (std::int64_t rest = thousandths; decimals > 0 && rest % 10 == 0; rest /= 10)
        --decimals;
    return quantity(parts::units_of_thousandths(thousandths), qs(unit), decimals);
}

AmountTable::AmountTable(const QStringList& header, const QString& amount, const QString& tick, QWidget* parent)
    : QTableWidget(parent), read_columns_(static_cast<int>(header.size())), has_tick_(!tick.isEmpty()) {
    QStringList all = header;
    all += amount;
    if (has_tick_) all += tick;
    setColumnCount(static_cast<int>(all.size()));
    setHorizontalHeaderLabels(all);
    horizontalHeaderItem(0)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(amount_row_px);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AllEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    connect(this, &QTableWidget::cellChanged, this, [this](int row, int column) {
        if (column == read_columns_) look_at(row);
    });
}

void AmountTable::set_lines(const std::vector<Line>& lines) {
    {
        const QSignalBlocker quiet(this);
        lines_ = lines;
        setRowCount(static_cast<int>(lines.size()));
        for (int row = 0; row < rowCount(); ++row) {
            const Line& line = lines_[static_cast<std::size_t>(row)];
            for (int column = 0; column < read_columns_; ++column) {
                auto* cell = new QTableWidgetItem(line.cells.value(column));
                cell->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
                cell->setToolTip(line.cells.value(column));
                if (column > 0) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
                setItem(row, column, cell);
            }
            auto* entered = new QTableWidgetItem(line.thousandths ? plain_amount(*line.thousandths) : QString());
            entered->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            entered->setFlags(line.thousandths ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable
                                               : Qt::ItemFlags(Qt::NoItemFlags));
            setItem(row, read_columns_, entered);
            if (!has_tick_) continue;
            auto* tick = new QTableWidgetItem;
            tick->setFlags(line.thousandths ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable
                                            : Qt::ItemFlags(Qt::NoItemFlags));
            if (line.thousandths) tick->setCheckState(line.ticked ? Qt::Checked : Qt::Unchecked);
            setItem(row, read_columns_ + 1, tick);
        }
    }
    for (int row = 0; row < rowCount(); ++row)
        if (lines_[static_cast<std::size_t>(row)].thousandths) {
            setCurrentCell(row, read_columns_);
            break;
        }
}

std::optional<std::int64_t> AmountTable::amount(int row) const {
    const Line& line = lines_[static_cast<std::size_t>(row)];
    if (!line.thousandths) return std::nullopt;
    const QString text = item(row, read_columns_)->text().trimmed();
    if (text.isEmpty()) return 0;
    const auto units = parsed_number(text);
    const auto thousandths = units ? parts::thousandths_of(*units) : std::nullopt;
    if (!thousandths || (parts::counted_whole(line.unit) && *thousandths % 1000 != 0)) return std::nullopt;
    return thousandths;
}

bool AmountTable::ticked(int row) const {
    return has_tick_ && item(row, read_columns_ + 1)->checkState() == Qt::Checked;
}

QString AmountTable::problem_of(int row) const {
    const Line& line = lines_[static_cast<std::size_t>(row)];
    if (!line.thousandths || amount(row)) return {};
    const QString text = item(row, read_columns_)->text().trimmed();
    const bool whole = parts::counted_whole(line.unit);
    return (whole ? tr("%1: \u201c%2\u201d is no number of whole pieces from 0 on.")
                  : tr("%1: \u201c%2\u201d is no number from 0 on with at most three decimals."))
        .arg(line.cells.value(0), text);
}

QString AmountTable::problem() const {
    for (int row = 0; row < rowCount(); ++row)
        if (const QString words = problem_of(row); !words.isEmpty()) return words;
    return {};
}

void AmountTable::look_at(int row) {
    const QSignalBlocker quiet(this);
    const QString words = problem_of(row);
    QTableWidgetItem* cell = item(row, read_columns_);
    cell->setToolTip(words);
    cell->setForeground(words.isEmpty() ? QBrush(palette().text()) : QBrush(current_theme().stop));
}

void AmountTable::set_amount_text(int row, const QString& text) {
    item(row, read_columns_)->setText(text);
}

void AmountTable::set_ticked(int row, bool on) {
    item(row, read_columns_ + 1)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
}

void AmountTable::set_all(const std::vector<std::optional<std::int64_t>>& amounts) {
    for (int row = 0; row < rowCount() && row < static_cast<int>(amounts.size()); ++row)
        if (const auto& one = amounts[static_cast<std::size_t>(row)]) set_amount_text(row, plain_amount(*one));
}

}  // namespace wg::ui
