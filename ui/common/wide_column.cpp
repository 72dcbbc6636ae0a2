#include "ui/common/wide_column.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>

namespace wg::ui {
namespace {

class WideColumn : public QObject {
   public:
    WideColumn(QTableView& table, int column, int least_px)
        : QObject(&table), table_(table), column_(column), least_px_(least_px) {
        table_.viewport()->installEventFilter(this);
        QObject::connect(table_.horizontalHeader(), &QHeaderView::sectionResized, this, [this](int changed, int, int) {
            if (changed != column_) fit();
        });
    }

   protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Resize) fit();
        return false;
    }

   private:
    void fit() {
        const QHeaderView* header = table_.horizontalHeader();
        const int others = header->length() - header->sectionSize(column_);
        const int wanted = std::max(least_px_, table_.viewport()->width() - others);
        if (wanted != header->sectionSize(column_)) table_.setColumnWidth(column_, wanted);
    }

    QTableView& table_;
    int column_;
    int least_px_;
};

}  // namespace

void keep_wide(QTableView& table, int column, int least_px) {
    table.horizontalHeader()->setSectionResizeMode(column, QHeaderView::Interactive);
    new WideColumn(table, column, least_px);  // the table's child
}

}  // namespace wg::ui
