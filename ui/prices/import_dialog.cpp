#include "ui/prices/import_dialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/problem_dialog.h"
#include "ui/drawing/fields.h"
#include "ui/prices/import_model.h"

namespace wg::ui {
namespace {

constexpr int import_wide = 1280;
constexpr int import_high = 700;
constexpr int longest_shown_cell = 24;
constexpr int most_rows_for_names = 20;

QString short_cell(const std::string& text) {
    const QString whole = qs(text).simplified();
    return whole.size() > longest_shown_cell ? whole.left(longest_shown_cell) + QStringLiteral("\u2026") : whole;
}

/// A, B ... Z, AA ...: as spreadsheets call columns.
QString column_letters(int column) {
    QString out;
    for (int rest = column; rest >= 0; rest = rest / 26 - 1)
        out.prepend(QChar(u'A' + rest % 26));
    return out;
}

int as_int(std::size_t count) {
    return static_cast<int>(std::min<std::size_t>(count, 1'000'000'000));
}

}  // namespace

std::optional<parts::PriceList> PriceImportDialog::ask(const QByteArray& bytes, const QString& file_name,
                                                       const parts::PriceList& into, QWidget* parent) {
    tables::CsvLimits limits;
    limits.rows = parts::most_import_lines + static_cast<std::size_t>(most_rows_for_names);
    Result<tables::CsvTable> table =
        tables::read_csv({bytes.constData(), static_cast<std::size_t>(bytes.size())}, file_name.toStdString(), limits);
    if (!table.ok()) {
        show_problems(parent, tr("Prices from a table"),
                      tr("The file cannot be read as a table. The list stays as it is."),
                      qs(text_of(table.problems())));
        return std::nullopt;
    }
    PriceImportDialog dialog(std::move(table.value()), file_name, into, parent);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.taken();
}

PriceImportDialog::PriceImportDialog(tables::CsvTable table, const QString& file_name, parts::PriceList into,
                                     QWidget* parent)
    : QDialog(parent), table_(std::move(table)), file_name_(file_name), into_(std::move(into)) {
    setWindowTitle(tr("Prices from a table"));
    size_for_screen(*this, import_wide, import_high);
    const parts::ImportGuess guess = parts::guess_mapping(table_, into_);
    mapping_ = guess.mapping;
    guess_notes_ = guess.notes;
    auto* body = new QHBoxLayout;
    body->setSpacing(16);
    body->addWidget(make_columns());
    body->addWidget(make_preview(), 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(12);
    column->addLayout(body, 1);
    column->addWidget(make_foot());
    fill_columns();
    refresh();
}

// The name above the column, and what its first line holds.
QString PriceImportDialog::column_words(int column) const {
    const auto cell = [&](int row) {
        if (row < 0 || row >= as_int(table_.rows.size())) return QString();
        const std::vector<std::string>& cells = table_.rows[static_cast<std::size_t>(row)];
        return column < as_int(cells.size()) ? short_cell(cells[static_cast<std::size_t>(column)]) : QString();
    };
    const QString name = cell(mapping_.names_row);
    const QString first = cell(mapping_.names_row + 1);
    QString out = column_letters(column);
    if (!name.isEmpty()) out += QStringLiteral("  ") + name;
    if (!first.isEmpty()) out += QStringLiteral("  (%1)").arg(first);
    return out;
}

void PriceImportDialog::fill_columns() {
    names_row_->clear();
    names_row_->addItem(tr("No line"), -1);
    for (int row = 0; row < std::min(as_int(table_.rows.size()), most_rows_for_names); ++row)
        names_row_->addItem(tr("Line %1").arg(table_.line_of_row[static_cast<std::size_t>(row)]), row);
    names_row_->show_data(mapping_.names_row);
    decimal_->show_data(static_cast<int>(mapping_.decimal));
    std::size_t widest = 0;
    for (const std::vector<std::string>& row : table_.rows)
        widest = std::max(widest, row.size());
    for (std::size_t i = 0; i < parts::import_field_count; ++i) {
        columns_[i]->clear();
        columns_[i]->addItem(tr("Not in the table"), -1);
        for (int column = 0; column < as_int(widest); ++column)
            columns_[i]->addItem(column_words(column), column);
        columns_[i]->show_data(mapping_.column[i]);
        columns_[i]->setToolTip(columns_[i]->currentText());
    }
}

void PriceImportDialog::take_choices() {
    const parts::ImportMapping before = mapping_;
    mapping_.names_row = names_row_->currentData().toInt();
    mapping_.decimal = static_cast<parts::DecimalSign>(decimal_->currentData().toInt());
    for (std::size_t i = 0; i < parts::import_field_count; ++i)
        mapping_.column[i] = columns_[i]->currentData().toInt();
    // Other columns may show the sign of decimals; a sign that was chosen by hand stands until then.
    if (mapping_.column != before.column || mapping_.names_row != before.names_row) {
        guess_notes_.clear();
        mapping_.decimal = parts::decimal_sign_of(table_, mapping_, guess_notes_);
    }
    fill_columns();
    refresh();
}

void PriceImportDialog::choose_column(parts::ImportField field, int column) {
    columns_[static_cast<std::size_t>(field)]->show_data(column);
    take_choices();
}

void PriceImportDialog::choose_names_row(int row) {
    names_row_->show_data(row);
    take_choices();
}

void PriceImportDialog::choose_decimal(parts::DecimalSign sign) {
    decimal_->show_data(static_cast<int>(sign));
    take_choices();
}

void PriceImportDialog::refresh() {
    changes_->show_preview(nullptr, nullptr);
    Result<parts::ImportPreview> made = parts::preview_import(table_, file_name_.toStdString(), mapping_, into_);
    refused_ = made.ok() ? std::vector<Problem>{} : made.problems();
    preview_ = made.ok() ? std::move(made.value()) : parts::ImportPreview{};
    changes_->show_preview(&preview_, &into_);
    problems_->show_problems(preview_.problems);
    QStringList notes;
    for (const std::vector<std::string>* said : {&table_.assumed, &guess_notes_, &preview_.notes})
        for (const std::string& note : *said)
            notes += qs(note);
    notes_->setText(notes.join(QStringLiteral(".\n")) + (notes.isEmpty() ? QString() : QStringLiteral(".")));
    counts_->setText(counts_words());
    counts_->setVisible(refused_.empty());
    tabs_->setTabText(0, tr("Changes (%1)").arg(number(changes_->rowCount())));
    tabs_->setTabText(1, tr("Problems (%1)").arg(number(as_int(preview_.wrong_lines))));
    if (preview_.wrong_lines == 0) tabs_->setCurrentIndex(0);
    tabs_->setTabEnabled(1, preview_.wrong_lines > 0);
    leave_out_->setChecked(false);  // other lines may be wrong now: to be decided anew
    const auto box = [](QCheckBox* which, std::size_t count, const QString& words) {
        which->setVisible(count > 0);
        which->setText(words);
        if (count == 0) which->setChecked(false);
    };
    box(remove_gone_, preview_.gone.size(),
        preview_.gone.size() == 1 ? tr("Remove the item that is not in the table")
                                  : tr("Remove the %1 items that are not in the table").arg(preview_.gone.size()));
    box(leave_out_, preview_.wrong_lines,
        preview_.wrong_lines == 1 ? tr("Leave out the line with problems")
                                  : tr("Leave out the %1 lines with problems").arg(preview_.wrong_lines));
    add_new_->setVisible(preview_.added > 0);
    add_new_->setText(preview_.added == 1 ? tr("Add the new item") : tr("Add the %1 new items").arg(preview_.added));
    refresh_foot();
}

QString PriceImportDialog::counts_words() const {
    const QStringList parts = {tr("%1 new").arg(preview_.added), tr("%1 changed").arg(preview_.changed),
                               tr("%1 the same").arg(preview_.same),
                               tr("%1 not in the table").arg(preview_.gone.size()),
                               preview_.wrong_lines == 1 ? tr("1 line with problems")
                                                         : tr("%1 lines with problems").arg(preview_.wrong_lines)};
    return parts.join(QStringLiteral("   "));
}

QString PriceImportDialog::notes_words() const {
    return notes_->text();
}

parts::ImportChoice PriceImportDialog::choice() const {
    return {add_new_->isChecked(), remove_gone_->isChecked(), leave_out_->isChecked()};
}

QString PriceImportDialog::why_not() const {
    if (!refused_.empty()) return qs(text_of(refused_));
    const parts::ImportChoice chosen = choice();
    if (preview_.wrong_lines > 0 && !chosen.leave_out_wrong_lines)
        return tr("Correct the lines with problems in the file, or leave them out.");
    if (chosen.remove_gone && preview_.nameless_lines > 0)
        return tr("A line does not tell its item, which may be one that would be removed.");
    if (preview_.changed == 0 && (preview_.added == 0 || !chosen.add_new) &&
        (preview_.gone.empty() || !chosen.remove_gone))
        return tr("Nothing would change.");
    return {};
}

void PriceImportDialog::refresh_foot() {
    const QString reason = why_not();
    why_not_->setText(reason);
    take_->setEnabled(reason.isEmpty());
}

void PriceImportDialog::accept() {
    if (!why_not().isEmpty()) return;
    Result<parts::PriceList> out = parts::apply_import(preview_, into_, choice());
    if (!out.ok()) {
        why_not_->setText(qs(text_of(out.problems())));
        take_->setEnabled(false);
        return;
    }
    taken_ = std::move(out.value());
    QDialog::accept();
}

}  // namespace wg::ui
