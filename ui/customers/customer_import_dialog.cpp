#include "ui/customers/customer_import_dialog.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/store/customers.h"
#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/mark.h"
#include "ui/common/plain_table.h"
#include "ui/common/theme.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int import_row_px = 34;
constexpr int column_row_px = 40;  // holds a field
constexpr int samples = 3;
constexpr int most_lines_shown = 2000;

}  // namespace

QString column_words(customers::Column column) {
    using C = customers::Column;
    switch (column) {
        case C::ignored: return CustomerImportDialog::tr("not taken in");
        case C::number: return CustomerImportDialog::tr("customer number");
        case C::name: return CustomerImportDialog::tr("name");
        case C::first_name: return CustomerImportDialog::tr("first name");
        case C::tax_id: return CustomerImportDialog::tr("tax id");
        case C::notes: return CustomerImportDialog::tr("notes");
        case C::bill_street: return CustomerImportDialog::tr("street");
        case C::bill_postcode: return CustomerImportDialog::tr("postcode");
        case C::bill_town: return CustomerImportDialog::tr("town");
        case C::site_street: return CustomerImportDialog::tr("street of the site");
        case C::site_postcode: return CustomerImportDialog::tr("postcode of the site");
        case C::site_town: return CustomerImportDialog::tr("town of the site");
        case C::contact_name: return CustomerImportDialog::tr("contact");
        case C::contact_role: return CustomerImportDialog::tr("role of the contact");
        case C::phone: return CustomerImportDialog::tr("telephone");
        case C::email: return CustomerImportDialog::tr("e-mail");
        case C::former_numbers: return CustomerImportDialog::tr("former numbers");
    }
    return {};
}

CustomerImportDialog::CustomerImportDialog(const tables::CsvTable& table, const QString& file,
                                           const std::vector<customers::Customer>& here, QWidget* parent)
    : QDialog(parent), table_(table), file_(file), here_(here), mapping_(customers::guess_mapping(table)) {
    setWindowTitle(tr("Take in a table of customers"));
    size_for_screen(*this, 1000, 680);
    auto* title = new QLabel(file, this);
    title->setProperty("role", QStringLiteral("title"));
    title->setTextFormat(Qt::PlainText);
    QStringList assumed;
    for (const std::string& one : table.assumed)
        assumed << qs(one);
    auto* how = new QLabel(assumed.join(QStringLiteral(". ")) + QLatin1Char('.'), this);
    how->setProperty("role", QStringLiteral("muted"));
    how->setWordWrap(true);
    headings_ = new QCheckBox(tr("The first line names the columns"), this);
    headings_->setChecked(mapping_.headings);
    columns_ = new QTableWidget(this);
    columns_->setAccessibleName(tr("What each column is"));
    rows_ = new QTableWidget(0, 4, this);
    rows_->setAccessibleName(tr("What would become of each line"));
    rows_->setHorizontalHeaderLabels({tr("Line"), tr("Becomes"), tr("Customer"), tr("What")});
    rows_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    rows_->setColumnWidth(0, 64);
    rows_->setColumnWidth(1, 140);
    rows_->setColumnWidth(2, 240);
    for (QTableWidget* one : {columns_, rows_}) {
        one->setEditTriggers(QAbstractItemView::NoEditTriggers);
        make_plain(*one, import_row_px);
    }
    summary_ = new QLabel(this);
    summary_->setWordWrap(true);
    take_in_ = new QPushButton(this);
    take_in_->setProperty("role", QStringLiteral("primary"));
    auto* leave = new QPushButton(tr("Take nothing in"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(summary_, 1);
    buttons->addWidget(leave);
    buttons->addWidget(take_in_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 24, 24, 16);
    column->setSpacing(8);
    column->addWidget(title);
    column->addWidget(how);
    column->addWidget(headings_);
    column->addWidget(columns_, 2);
    column->addWidget(rows_, 3);
    column->addLayout(buttons);
    make_columns();
    connect(headings_, &QCheckBox::toggled, this, [this](bool on) {
        mapping_.headings = on;
        refresh();
    });
    connect(take_in_, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    refresh();
}

void CustomerImportDialog::make_columns() {
    columns_->setColumnCount(2 + samples);
    columns_->setHorizontalHeaderLabels({tr("Column"), tr("Is"), tr("First lines"), QString(), QString()});
    columns_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    columns_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Fixed);
    columns_->setColumnWidth(1, 220);
    columns_->verticalHeader()->setDefaultSectionSize(column_row_px);
    columns_->setRowCount(static_cast<int>(mapping_.columns.size()));
    for (int at = 0; at < columns_->rowCount(); ++at) {
        const auto place = static_cast<std::size_t>(at);
        const auto cell = [this, place](std::size_t row) {
            const bool there = row < table_.rows.size() && place < table_.rows[row].size();
            return there ? qs(table_.rows[row][place]) : QString();
        };
        const QString name = cell(0).isEmpty() ? tr("column %1").arg(number(at + 1)) : cell(0);
        columns_->setItem(at, 0, new QTableWidgetItem(name));
        auto* box = new CalmCombo(columns_);
        box->setAccessibleName(tr("What %1 is").arg(name));
        for (const customers::Column one : customers::all_columns)
            box->addItem(column_words(one), static_cast<int>(one));
        box->show_data(static_cast<int>(mapping_.columns[place]));
        columns_->setCellWidget(at, 1, box);
        connect(box, &QComboBox::currentIndexChanged, this, [this, place, box] {
            mapping_.columns[place] = static_cast<customers::Column>(box->currentData().toInt());
            refresh();
        });
        for (int i = 0; i < samples; ++i)
            columns_->setItem(at, 2 + i, new QTableWidgetItem(cell(static_cast<std::size_t>(i) + 1)));
    }
}

void CustomerImportDialog::choose(int column, customers::Column meaning) {
    auto* box = qobject_cast<QComboBox*>(columns_->cellWidget(column, 1));
    if (box != nullptr) box->setCurrentIndex(box->findData(static_cast<int>(meaning)));
}

void CustomerImportDialog::refresh() {
    preview_ = customers::preview_import(table_, mapping_, here_, file_.toStdString(), store::CustomerBook::name_key);
    fill_rows();
    const auto count = [this](customers::Outcome outcome) {
        return static_cast<int>(
            std::count_if(preview_.rows.begin(), preview_.rows.end(),
                          [outcome](const customers::ImportedRow& one) { return one.outcome == outcome; }));
    };
    const int fresh = count(customers::Outcome::is_new);
    const int changed = count(customers::Outcome::changed);
    const int left_out = static_cast<int>(preview_.problems.size());
    summary_->setText(
        tr("%1 new, %2 changed, %3 as they are, %4 not taken in")
            .arg(number(fresh), number(changed), number(count(customers::Outcome::same)), number(left_out)));
    take_in_->setText(fresh + changed == 1 ? tr("Take in 1 customer")
                                           : tr("Take in %1 customers").arg(number(fresh + changed)));
    take_in_->setEnabled(fresh + changed > 0);
}

void CustomerImportDialog::fill_rows() {
    // What needs a look stands first; then the lines as they come.
    const int problems = static_cast<int>(std::min<std::size_t>(preview_.problems.size(), most_lines_shown));
    const int lines = static_cast<int>(std::min<std::size_t>(preview_.rows.size(), most_lines_shown));
    rows_->setRowCount(problems + lines);
    const auto set = [this](int row, const QStringList& cells, Mark mark) {
        for (int column = 0; column < static_cast<int>(cells.size()); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(cells[column]);
            if (column == 1) item->setIcon(mark_icon(mark, current_theme()));
            rows_->setItem(row, column, item);
        }
    };
    for (int i = 0; i < problems; ++i) {
        const Problem& one = preview_.problems[static_cast<std::size_t>(i)];
        const std::string lead = file_.toStdString() + ", line ";
        const QString line = one.where.starts_with(lead) ? qs(one.where.substr(lead.size())) : QString();
        set(i, {line, tr("not taken in"), {}, tr("%1. %2.").arg(qs(one.what), qs(one.remedy))}, Mark::stop);
    }
    for (int i = 0; i < lines; ++i) {
        const customers::ImportedRow& one = preview_.rows[static_cast<std::size_t>(i)];
        QStringList changes;
        for (const std::string& change : one.changes)
            changes << qs(change);
        const bool fresh = one.outcome == customers::Outcome::is_new;
        const bool same = one.outcome == customers::Outcome::same;
        const QString what = fresh && !one.customer.addresses.empty() ? qs(one.customer.addresses.front().town)
                                                                      : changes.join(QStringLiteral("; "));
        const QString who = one.customer.number.empty()
                                ? qs(one.customer.name)
                                : tr("%1, %2").arg(qs(one.customer.name), qs(one.customer.number));
        QStringList all_lines{number(one.line)};
        for (const int further : one.more_lines)
            all_lines << number(further);
        set(problems + i,
            {all_lines.join(QStringLiteral(", ")),
             fresh  ? tr("new")
             : same ? tr("as it is")
                    : tr("changed"),
             who, what},
            same    ? Mark::empty
            : fresh ? Mark::ready
                    : Mark::note);
    }
}

QString CustomerImportDialog::summary() const {
    return summary_->text();
}

}  // namespace wg::ui
