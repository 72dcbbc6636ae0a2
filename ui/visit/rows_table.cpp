#include "ui/visit/rows_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int list_row_px = 36;
constexpr int rows_seen_most = 6;

}  // namespace

RowsTable::RowsTable(const QString& name, std::vector<RowsColumn> columns, const QString& add_words, QWidget* parent)
    : QWidget(parent), name_(name), columns_(std::move(columns)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    table_ = new QTableWidget(0, static_cast<int>(columns_.size()), this);
    table_->setAccessibleName(name_);
    QStringList titles;
    for (const RowsColumn& one : columns_)
        titles.append(one.title);
    table_->setHorizontalHeaderLabels(titles);
    QHeaderView* header = table_->horizontalHeader();
    header->setSectionResizeMode(QHeaderView::ResizeToContents);
    header->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->verticalHeader()->setDefaultSectionSize(list_row_px);
    table_->verticalHeader()->hide();
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);  // Tab leaves the table; arrow keys walk in it
    column->addWidget(table_);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    add_ = new QPushButton(add_words, this);
    remove_ = new QPushButton(tr("Remove row"), this);
    remove_->setAccessibleName(tr("Remove row of: %1").arg(name_));
    row->addWidget(add_);
    row->addWidget(remove_);
    column->addLayout(row);
    connect(table_, &QTableWidget::cellChanged, this, &RowsTable::edited);
    connect(add_, &QPushButton::clicked, this, [this] {
        if (!on_add) return;
        const std::size_t before = rows_.size();
        say(on_add());
        if (rows_.size() > before) table_->setCurrentCell(table_->rowCount() - 1, 0);
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        const int current = table_->currentRow();
        if (on_remove && current >= 0 && current < static_cast<int>(rows_.size())) say(on_remove(current));
    });
    show_rows();
}

QString RowsTable::problem() const {
    return problem_->isHidden() ? QString() : problem_->text();
}

void RowsTable::say(const QString& why) {
    problem_->setText(QStringLiteral("\u25b2 ") + why);
    problem_->setVisible(!why.isEmpty());
    if (!why.isEmpty()) show_rows();  // what was typed gives way to what the job holds
}

void RowsTable::set_rows(const std::vector<QVariantList>& rows) {
    if (rows == rows_) return;
    rows_ = rows;
    problem_->hide();
    show_rows();
}

void RowsTable::put_word(int row, int column, const QString& key) {
    const RowsColumn& of = columns_[static_cast<std::size_t>(column)];
    auto* combo = qobject_cast<CalmCombo*>(table_->cellWidget(row, column));
    if (combo == nullptr) {
        combo = new CalmCombo(table_);
        for (const auto& [word_key, text] : of.words)
            combo->addItem(text, word_key);
        combo->setAccessibleName(tr("%1, row %2").arg(of.title).arg(row + 1));
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(6);
        // Rows come and go at the end only, so that a box keeps its row and outlives its own signal.
        connect(combo, &QComboBox::activated, this, [this, combo, row, column](int index) {
            table_->setCurrentCell(row, column);
            if (on_change) say(on_change(row, column, combo->itemData(index)));
        });
        table_->setCellWidget(row, column, combo);
    }
    combo->show_data(key);
}

void RowsTable::show_rows() {
    const QSignalBlocker quiet(table_);
    table_->setRowCount(static_cast<int>(rows_.size()));
    for (int r = 0; r < table_->rowCount(); ++r) {
        const QVariantList& values = rows_[static_cast<std::size_t>(r)];
        for (int c = 0; c < table_->columnCount() && c < values.size(); ++c) {
            const RowsColumn& of = columns_[static_cast<std::size_t>(c)];
            if (of.kind == RowsColumn::Kind::word) {
                put_word(r, c, values[c].toString());
                continue;
            }
            QTableWidgetItem* item = table_->item(r, c);
            if (item == nullptr) table_->setItem(r, c, item = new QTableWidgetItem);
            if (of.kind == RowsColumn::Kind::number) {
                item->setText(QString::number(values[c].toDouble(), 'f', of.decimals));
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            } else if (of.kind == RowsColumn::Kind::check) {
                item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
                item->setCheckState(values[c].toBool() ? Qt::Checked : Qt::Unchecked);
                item->setToolTip(of.title);
            } else {
                item->setText(values[c].toString());
                item->setToolTip(item->text());
            }
        }
    }
    remove_->setEnabled(!rows_.empty());
    const int seen = std::clamp(table_->rowCount(), 1, rows_seen_most);
    table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() + seen * list_row_px + 6);
}

void RowsTable::edited(int row, int column) {
    if (row < 0 || row >= static_cast<int>(rows_.size()) || !on_change) return;
    const RowsColumn& of = columns_[static_cast<std::size_t>(column)];
    const QTableWidgetItem* item = table_->item(row, column);
    if (item == nullptr) return;
    if (of.kind == RowsColumn::Kind::check) return say(on_change(row, column, item->checkState() == Qt::Checked));
    if (of.kind == RowsColumn::Kind::text) return say(on_change(row, column, item->text().trimmed()));
    const auto value = parsed_number(item->text());
    const QString limits =
        tr("%1: %2 to %3.")
            .arg(of.title, QString::number(of.least, 'f', of.decimals), QString::number(of.most, 'f', of.decimals));
    if (!value) return say(tr("'%1' is not a number. ").arg(item->text().left(20)) + limits);
    if (*value < of.least || *value > of.most) return say(limits);
    say(on_change(row, column, *value));
    show_rows();
}

}  // namespace wg::ui
