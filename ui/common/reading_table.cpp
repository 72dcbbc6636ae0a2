#include "ui/common/reading_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableWidget>
#include <algorithm>
#include <numeric>

namespace wg::ui {
namespace {

class SharedWidth : public QObject {
   public:
    SharedWidth(QTableWidget& table, std::vector<int> shares, std::vector<int> least_px)
        : QObject(&table), table_(table), shares_(std::move(shares)), least_px_(std::move(least_px)) {
        table_.viewport()->installEventFilter(this);
        share();
    }

   protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Resize) share();
        return false;
    }

   private:
    void share() {
        const int all = std::accumulate(shares_.begin(), shares_.end(), 0);
        int left = table_.viewport()->width();
        for (std::size_t at = 0; at < shares_.size(); ++at) {
            const bool last = at + 1 == shares_.size();
            const int least = at < least_px_.size() ? least_px_[at] : 0;
            const int width = last ? left : std::max(least, table_.viewport()->width() * shares_[at] / all);
            table_.setColumnWidth(static_cast<int>(at), width);
            left -= width;
        }
    }

    QTableWidget& table_;
    std::vector<int> shares_;
    std::vector<int> least_px_;
};

}  // namespace

QTableWidget* reading_table(const QStringList& header, QWidget* parent) {
    auto* table = new QTableWidget(0, static_cast<int>(header.size()), parent);
    table->setHorizontalHeaderLabels(header);
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setWordWrap(true);
    table->setTabKeyNavigation(false);
    return table;
}

void add_reading_row(QTableWidget& table, const QStringList& cells) {
    const int row = table.rowCount();
    table.insertRow(row);
    for (int column = 0; column < cells.size(); ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        item->setToolTip(cells[column]);
        table.setItem(row, column, item);
    }
}

void share_width(QTableWidget& table, std::vector<int> shares, std::vector<int> least_px) {
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    new SharedWidth(table, std::move(shares), std::move(least_px));  // the table's child
}

QString with_capital(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

}  // namespace wg::ui
