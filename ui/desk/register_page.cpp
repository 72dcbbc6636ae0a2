#include "ui/desk/register_page.h"

#include <QDateTime>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/common/whole_file.h"
#include "ui/common/wrapped_cells.h"
#include "ui/desk/register_form.h"

namespace wg::ui {
namespace {

constexpr int entry_role = Qt::UserRole;
constexpr int entry_job_role = Qt::UserRole + 1;
constexpr int register_row_px = 36;

QLabel* register_title(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("title"));
    return label;
}

QTableWidget* register_table(const QStringList& heads, QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setColumnCount(static_cast<int>(heads.size()));
    table->setHorizontalHeaderLabels(heads);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->verticalHeader()->hide();
    table->verticalHeader()->setMinimumSectionSize(register_row_px);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    WrappedCells::use_in(*table);
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

QTableWidgetItem* register_cell(QTableWidget& table, int row, int column, const QString& text, bool figure = false) {
    auto* item = new QTableWidgetItem(text);
    item->setToolTip(text);
    if (figure) {
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        table.horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    table.setItem(row, column, item);
    return item;
}

QString kg_words(double kg) {
    return quantity(kg, QStringLiteral("kg"), 3);
}

}  // namespace

RegisterPage::RegisterPage(store::Store& store, const std::vector<std::string>& refrigerants, QWidget* parent)
    : QWidget(parent), store_(store) {
    auto* split = new QSplitter(Qt::Horizontal, this);
    auto* left = new QSplitter(Qt::Vertical, split);
    left->addWidget(make_years());
    left->addWidget(make_entries());
    left->setStretchFactor(0, 2);
    left->setStretchFactor(1, 3);
    left->setChildrenCollapsible(false);
    split->addWidget(left);
    form_ = new RegisterForm(refrigerants, split);
    split->addWidget(form_);
    connect(form_, &RegisterForm::add_asked, this, [this] { add_entry(Instant{QDateTime::currentSecsSinceEpoch()}); });
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 0);
    split->setSizes({10000, 340});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->addWidget(split);
    fill_years();
    fill_entries();
}

QWidget* RegisterPage::make_years() {
    auto* part = new QWidget(this);
    years_ = register_table({tr("Year"), tr("Refrigerant"), tr("Opening"), tr("Received"), tr("Recovered"), tr("Used"),
                             tr("Given back"), tr("Leaked"), tr("Expected"), tr("Counted"), tr("Off by")},
                            part);
    years_->setAccessibleName(tr("Balance by year"));
    years_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    years_->horizontalHeader()->setStretchLastSection(true);
    year_ = new QLabel(part);
    year_->setWordWrap(true);
    year_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    year_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    save_years_ = new QPushButton(tr("Save the years"), part);
    auto* head = new QHBoxLayout;
    head->addWidget(register_title(tr("Balance by year, in kg"), part), 1);
    head->addWidget(save_years_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(years_, 1);
    column->addWidget(year_);
    connect(years_, &QTableWidget::currentCellChanged, this, [this] { explain_year(); });
    connect(save_years_, &QPushButton::clicked, this,
            [this] { save(QStringLiteral("refrigerant-years.csv"), aftercare::year_reports_csv(reports_)); });
    return part;
}

QWidget* RegisterPage::make_entries() {
    auto* part = new QWidget(this);
    table_ = register_table({tr("Day"), tr("Refrigerant"), tr("Move"), tr("Mass"), tr("Bottle"), tr("By"), tr("Note")},
                            part);
    table_->setAccessibleName(tr("Entries, newest first"));
    table_->horizontalHeader()->setSectionResizeMode(6, QHeaderView::Stretch);
    none_ = new QLabel(tr("No entry yet. What is weighed in or recovered in a job comes here by itself when the job is "
                          "saved; bottles received, given back and counted are entered at the right."),
                       part);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    correct_ = new QPushButton(tr("Correct"), part);
    correct_->setToolTip(
        tr("Takes the selected entry into the form; the new one stands for it, the old one stays to be "
           "read"));
    save_all_ = new QPushButton(tr("Save the register"), part);
    auto* head = new QHBoxLayout;
    head->addWidget(register_title(tr("Entries"), part), 1);
    head->addWidget(correct_);
    head->addWidget(save_all_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 8, 8, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(none_);
    column->addWidget(table_, 1);
    column->addStretch(0);
    connect(save_all_, &QPushButton::clicked, this,
            [this] { save(QStringLiteral("refrigerant-register.csv"), aftercare::register_csv(entries_)); });
    connect(correct_, &QPushButton::clicked, this, [this] {
        const QTableWidgetItem* item = table_->item(table_->currentRow(), 0);
        if (item != nullptr) correct(item->data(entry_role).toString().toStdString());
    });
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) {
        const QTableWidgetItem* item = table_->item(row, 0);
        // What came from a job's record is corrected there, so that both stay the same.
        correct_->setEnabled(item != nullptr && item->data(entry_job_role).toString().isEmpty());
    });
    connect(table_, &QTableWidget::cellActivated, this, [this](int row) {
        const QTableWidgetItem* item = table_->item(row, 0);
        const QString job = item == nullptr ? QString() : item->data(entry_job_role).toString();
        if (!job.isEmpty()) Q_EMIT open_asked(job);
    });
    return part;
}

void RegisterPage::reload() {
    Result<std::vector<RefrigerantEntry>> found = store_.refrigerant_entries();
    entries_.clear();
    if (found.ok()) {
        entries_ = std::move(found).value();
    } else {
        Q_EMIT problem(qs(text_of(found.problems())));
    }
    fill_years();
    fill_entries();
}

void RegisterPage::fill_years() {
    using M = RefrigerantMove;
    reports_ = aftercare::year_reports(entries_);
    years_->setRowCount(static_cast<int>(reports_.size()));
    for (int row = 0; row < years_->rowCount(); ++row) {
        const aftercare::YearReport& r = reports_[static_cast<std::size_t>(row)];
        auto* year = register_cell(*years_, row, 0, QString::number(r.year));
        register_cell(*years_, row, 1, qs(r.refrigerant));
        const double kgs[] = {r.opening_kg,
                              aftercare::of(r.moved, M::received),
                              aftercare::of(r.moved, M::recovered),
                              aftercare::of(r.moved, M::used),
                              aftercare::of(r.moved, M::returned),
                              aftercare::of(r.moved, M::leaked),
                              r.expected_kg};
        for (int i = 0; i < 7; ++i)
            register_cell(*years_, row, 2 + i, number(kgs[i], 3), true);
        register_cell(*years_, row, 9, r.count ? number(r.count->kg, 3) : tr("not counted"), true);
        QString off;
        if (r.count)
            off = QStringLiteral("%1 (%2)").arg(number(r.count->imbalance_kg(), 3),
                                                percent(r.count->imbalance_share(), 1));
        register_cell(*years_, row, 10, off, true);
        const Mark mark = !r.count ? Mark::empty : r.explanations.empty() ? Mark::ready : Mark::caution;
        year->setIcon(mark_icon(mark, current_theme()));
    }
    years_->setVisible(!reports_.empty());
    save_years_->setEnabled(!reports_.empty());
    if (!reports_.empty() && years_->currentRow() < 0) years_->setCurrentCell(0, 0);
    explain_year();
}

void RegisterPage::explain_year() {
    const int row = years_->currentRow();
    if (row < 0 || row >= static_cast<int>(reports_.size())) {
        year_->setText(
            tr("A year's opening stock, with what was received and recovered, less what was used and given "
               "back, is what should be there. Count the bottles on the scale to see whether it is."));
        return;
    }
    const aftercare::YearReport& r = reports_[static_cast<std::size_t>(row)];
    QStringList lines;
    const QString opening = r.opening_from ? tr("from the count of %1").arg(qs(iso8601(*r.opening_from)))
                                           : tr("the register begins without a count");
    lines += tr("%1, %2: opening stock %3 (%4).")
                 .arg(QString::number(r.year), qs(r.refrigerant), kg_words(r.opening_kg), opening);
    if (r.count) {
        lines += tr("Counted on %1: %2, expected that day %3, so off by %4 or %5 of what passed through.")
                     .arg(qs(iso8601(r.count->on)), kg_words(r.count->kg), kg_words(r.count->expected_kg),
                          kg_words(r.count->imbalance_kg()), percent(r.count->imbalance_share(), 1));
        if (r.explanations.empty()) {
            lines += tr("Within what scales and hoses make.");
        } else {
            lines += tr("What may lie behind it:");
            for (const std::string& words : r.explanations)
                lines += QStringLiteral("\u2013 ") + qs(words);
        }
    } else {
        lines += tr("Not counted in this year.");
    }
    year_->setText(lines.join(QLatin1Char('\n')));
}

void RegisterPage::fill_entries() {
    none_->setVisible(entries_.empty());
    table_->setVisible(!entries_.empty());
    save_all_->setEnabled(!entries_.empty());
    table_->setRowCount(static_cast<int>(entries_.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const RefrigerantEntry& e = entries_[entries_.size() - 1 - static_cast<std::size_t>(row)];
        auto* day = register_cell(*table_, row, 0, qs(e.on));
        day->setData(entry_role, qs(e.id));
        day->setData(entry_job_role, qs(e.job_id));
        register_cell(*table_, row, 1, qs(e.refrigerant));
        register_cell(*table_, row, 2, QString::fromUtf8(text_of(e.move)));
        register_cell(*table_, row, 3, kg_words(e.kg), true);
        register_cell(*table_, row, 4, qs(e.bottle));
        register_cell(*table_, row, 5, qs(e.by));
        QString note = e.job_id.empty() ? qs(e.note) : e.note.empty() ? tr("a job") : tr("a job: %1").arg(qs(e.note));
        if (!e.corrects_id.empty()) note.prepend(tr("(correction) "));
        const bool corrected = std::any_of(entries_.begin(), entries_.end(),
                                           [&](const RefrigerantEntry& other) { return other.corrects_id == e.id; });
        if (corrected) note.prepend(tr("(corrected since) "));
        register_cell(*table_, row, 6, note);
    }
    for (int column = 0; column < 6; ++column)
        table_->resizeColumnToContents(column);
    correct_->setEnabled(false);
}

bool RegisterPage::add_entry(Instant now) {
    const std::optional<RefrigerantEntry> entry = form_->entry();
    if (!entry) return false;
    const Result<bool> added = store_.add_refrigerant_entry(*entry, now);
    if (!added.ok()) {
        form_->say(qs(text_of(added.problems())));
        return false;
    }
    form_->clear();
    reload();
    Q_EMIT said(tr("Added to the register"));
    return true;
}

void RegisterPage::correct(const std::string& entry_id) {
    const auto found =
        std::find_if(entries_.begin(), entries_.end(), [&](const RefrigerantEntry& e) { return e.id == entry_id; });
    if (found != entries_.end()) form_->correct(*found);
}

QString RegisterPage::year_words() const {
    return year_->text();
}

void RegisterPage::save(const QString& name, const std::string& text) {
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save as comma separated"), name, tr("Comma separated (*.csv)"));
    if (path.isEmpty()) return;
    const Result<bool> written = write_whole(path, text);
    if (written)
        Q_EMIT said(tr("Saved: %1").arg(path));
    else
        Q_EMIT problem(qs(wg::text_of(written.problems())));
}

}  // namespace wg::ui
