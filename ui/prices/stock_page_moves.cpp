// The movements of an item, and entering, correcting and striking out one.

#include <QDateTime>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/store/purchase_book.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/drawing/amount_table.h"
#include "ui/drawing/fields.h"
#include "ui/prices/stock_model.h"
#include "ui/prices/stock_page.h"

namespace wg::ui {
namespace {

constexpr int most_moves_shown = 500;

QString move_words(parts::StockMoveKind kind) {
    switch (kind) {
        case parts::StockMoveKind::received: return StockPage::tr("Received");
        case parts::StockMoveKind::taken: return StockPage::tr("Taken for a job");
        case parts::StockMoveKind::counted: return StockPage::tr("Counted");
        case parts::StockMoveKind::returned: return StockPage::tr("Returned from a job");
        case parts::StockMoveKind::fitted: return StockPage::tr("Taken as planned for a job");
    }
    return {};
}

Instant moment_of_entry() {
    return Instant{QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

QWidget* StockPage::make_moves() {
    auto* part = new QWidget(this);
    title_ = new QLabel(part);
    title_->setProperty("role", QStringLiteral("heading"));
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    kind_ = new CalmCombo(part);
    kind_->setAccessibleName(tr("Movement"));
    for (const auto kind : {parts::StockMoveKind::received, parts::StockMoveKind::taken, parts::StockMoveKind::counted,
                            parts::StockMoveKind::returned})
        kind_->addItem(move_words(kind), static_cast<int>(kind));
    quantity_ =
        new NumberField(tr("Quantity"), {},
                        {0.0, parts::units_of_thousandths(parts::most_stock_thousandths), 3, 0.0, true, false}, part);
    quantity_->line_edit()->setPlaceholderText({});
    job_ = new TextField(tr("Number of the job"), part);
    job_->setPlaceholderText(tr("may stay empty"));
    note_ = new TextField(tr("Note"), part);
    note_->setPlaceholderText(tr("may stay empty"));
    enter_ = new QPushButton(tr("Enter"), part);
    enter_->setProperty("role", QStringLiteral("primary"));
    leave_ = new QPushButton(tr("Leave the entry as it is"), part);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(6);
    grid->setColumnStretch(1, 1);
    const std::pair<QString, QWidget*> fields[] = {
        {tr("Movement"), kind_}, {tr("Quantity"), quantity_}, {tr("Number of the job"), job_}, {tr("Note"), note_}};
    int at = 0;
    for (const auto& [words, field] : fields) {
        auto* label = new QLabel(words, part);
        label->setBuddy(field);
        grid->addWidget(label, at, 0);
        grid->addWidget(field, at++, 1);
    }
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(leave_);
    buttons->addWidget(enter_);
    moves_table_ = reading_table({tr("When"), tr("Movement"), tr("Quantity"), tr("Job"), tr("Note"), tr("By")}, part);
    moves_table_->setAccessibleName(tr("Movements of the item"));
    moves_table_->setMinimumHeight(4 * 2 * moves_table_->fontMetrics().height());  // the head and some rows
    moves_table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    moves_table_->horizontalHeader()->setSectionResizeMode(4, QHeaderView::Stretch);
    correct_ = new QPushButton(tr("Correct"), part);
    correct_->setToolTip(tr("The entry stays in the book; the one that corrects it counts in its place"));
    strike_ = new QPushButton(tr("Strike out"), part);
    strike_->setToolTip(tr("The entry stays in the book and counts no more"));
    auto* below = new QHBoxLayout;
    below->addStretch(1);
    below->addWidget(correct_);
    below->addWidget(strike_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(title_);
    column->addLayout(grid);
    column->addLayout(buttons);
    column->addWidget(moves_table_, 1);
    column->addLayout(below);
    connect(enter_, &QPushButton::clicked, this, [this] { enter(moment_of_entry()); });
    connect(leave_, &QPushButton::clicked, this, &StockPage::end_correction);
    connect(correct_, &QPushButton::clicked, this, [this] { begin_correction(moves_table_->currentRow()); });
    connect(strike_, &QPushButton::clicked, this,
            [this] { strike_out(moves_table_->currentRow(), moment_of_entry()); });
    connect(moves_table_, &QTableWidget::itemSelectionChanged, this, &StockPage::refresh_form);
    return part;
}

bool StockPage::is_corrected(std::size_t move) const {
    return std::any_of(moves_.begin(), moves_.end(),
                       [&](const parts::StockMove& one) { return one.corrects_id == moves_[move].id; });
}

void StockPage::show_moves() {
    moves_.clear();
    moves_table_->setRowCount(0);
    if (!item_id_.empty()) {
        const store::StockBook book(store_);
        const auto found = book.moves(item_id_, most_moves_shown);
        const auto ordered_from = store::PurchaseBook(store_).ordered_from(item_id_);
        if (!tell(ordered_from.ok() ? std::vector<Problem>{} : ordered_from.problems())) {
            refresh_form();
            return;
        }
        if (tell(found.ok() ? std::vector<Problem>{} : found.problems())) {
            for (const parts::StockMove& move : found.value())
                if (move.unit == unit_) moves_.push_back(move);
        }
        for (std::size_t i = 0; i < moves_.size(); ++i) {
            const parts::StockMove& move = moves_[i];
            QString what = move_words(move.kind);
            if (!move.corrects_id.empty())
                what = move.thousandths == 0 && move.kind == parts::StockMoveKind::received
                           ? tr("Struck out")
                           : tr("%1, a correction").arg(what);
            if (is_corrected(i)) what += tr(" (corrected)");
            QString job;
            if (!move.job_id.empty()) {
                const auto number = book.number_of_job(move.job_id);
                if (number.ok()) job = qs(number.value());
            }
            QStringList note;
            if (const auto from = ordered_from.value().find({move.purchase_id, move.purchase_line});
                from != ordered_from.value().end()) {
                note += qs(from->second.number);
                if (!from->second.supplier.empty()) note += qs(from->second.supplier);
            }
            if (!move.note.empty()) note += qs(move.note);
            const QDateTime at = QDateTime::fromString(qs(move.at), Qt::ISODate).toLocalTime();
            add_reading_row(
                *moves_table_,
                {at.toString(QStringLiteral("yyyy-MM-dd HH:mm")), what, stock_quantity(move.thousandths, move.unit),
                 job, note.join(QStringLiteral(", ")), move.by.empty() ? tr("not told") : qs(move.by)});
        }
    }
    refresh_form();
}

void StockPage::refresh_form() {
    const StockModel::Row* row = model_->row_at(model_->row_of(item_id_, unit_));
    const QString name = row == nullptr || row->text.isEmpty() ? qs(item_id_) : row->text;
    const bool chosen = !item_id_.empty();
    if (!chosen)
        title_->setText(tr("Choose an item to see and enter its movements."));
    else if (corrects_id_.empty())
        title_->setText(row != nullptr && row->thousandths
                            ? tr("%1: %2 in stock").arg(name, stock_quantity(*row->thousandths, unit_))
                            : tr("%1: no stock is kept of it yet").arg(name));
    else
        title_->setText(tr("%1: correct the entry").arg(name));
    for (QWidget* field : {static_cast<QWidget*>(kind_), static_cast<QWidget*>(quantity_), static_cast<QWidget*>(job_),
                           static_cast<QWidget*>(note_), static_cast<QWidget*>(enter_)})
        field->setEnabled(chosen);
    quantity_->set_unit(qs(unit_));
    enter_->setText(corrects_id_.empty() ? tr("Enter") : tr("Enter the correction"));
    leave_->setVisible(!corrects_id_.empty());
    const int at = moves_table_->currentRow();
    const bool open = at >= 0 && at < static_cast<int>(moves_.size()) && !is_corrected(static_cast<std::size_t>(at));
    correct_->setEnabled(open);
    strike_->setEnabled(open);
}

void StockPage::begin_correction(int row) {
    if (row < 0 || row >= static_cast<int>(moves_.size())) return;
    const parts::StockMove& move = moves_[static_cast<std::size_t>(row)];
    corrects_id_ = move.id;
    corrected_kind_ = move.kind;
    const bool as_planned = move.kind == parts::StockMoveKind::fitted;
    kind_->show_data(static_cast<int>(as_planned ? parts::StockMoveKind::taken : move.kind));
    quantity_->set_value(parts::units_of_thousandths(move.thousandths));
    note_->set_value(qs(move.note));
    const auto number =
        move.job_id.empty() ? Result<std::string>(std::string()) : store::StockBook(store_).number_of_job(move.job_id);
    corrected_job_id_ = move.job_id;
    corrected_job_number_ = number.ok() ? qs(number.value()).trimmed() : QString();
    job_->set_value(corrected_job_number_);
    refresh_form();
}

void StockPage::clear_form() {
    corrects_id_.clear();
    corrected_job_id_.clear();
    corrected_job_number_.clear();
    quantity_->set_value(std::nullopt);
    note_->set_value({});
    job_->set_value({});
}

void StockPage::end_correction() {
    clear_form();
    refresh_form();
}

std::optional<std::int64_t> StockPage::level_with(const parts::StockMove& move) const {
    auto moves = store::StockBook(store_).moves(move.item_id, 0);
    if (!moves.ok()) return std::nullopt;
    std::vector<parts::StockMove> book(moves.value().rbegin(), moves.value().rend());
    book.push_back(move);
    for (const parts::StockLevel& level : parts::stock_levels(book))
        if (level.unit == move.unit) return level.thousandths;
    return std::nullopt;
}

bool StockPage::ask_less_than_nothing(const parts::StockMove& move) {
    const auto after = level_with(move);
    const StockModel::Row* row = model_->row_at(model_->row_of(move.item_id, move.unit));
    const std::int64_t before = row == nullptr ? 0 : row->thousandths.value_or(0);
    // What leaves less lacking than before is on the way to be right.
    if (!after || *after >= 0 || *after >= before) return true;
    const QString words = tr("%1: %2 would be in stock, less than nothing. More goes than is known to have been there.")
                              .arg(row == nullptr || row->text.isEmpty() ? qs(move.item_id) : row->text,
                                   stock_quantity(*after, move.unit));
    if (asks_) return asks_(words);
    QMessageBox ask(QMessageBox::Question, tr("Less than nothing in stock"), words, QMessageBox::NoButton, this);
    const auto* yes = ask.addButton(tr("Enter it all the same"), QMessageBox::AcceptRole);
    ask.setDefaultButton(ask.addButton(tr("Do not enter it"), QMessageBox::RejectRole));
    ask.exec();
    return ask.clickedButton() == yes;
}

bool StockPage::put(parts::StockMove move, Instant now) {
    if (!ask_less_than_nothing(move)) return false;
    const bool corrects = !move.corrects_id.empty();
    const auto entered = store::StockBook(store_).enter(move, now);
    if (!tell(entered.ok() ? std::vector<Problem>{} : entered.problems())) return false;
    if (corrects) {
        clear_form();
    } else {
        // The job stays: the item's next movement is often for it, too.
        quantity_->set_value(std::nullopt);
        note_->set_value({});
    }
    reload();
    const StockModel::Row* row = model_->row_at(model_->row_of(item_id_, unit_));
    if (row != nullptr && row->thousandths && *row->thousandths < 0)
        Q_EMIT problem(
            tr("%1: %2 in stock, less than nothing. Count what is there.")
                .arg(row->text.isEmpty() ? qs(item_id_) : row->text, stock_quantity(*row->thousandths, unit_)));
    else
        Q_EMIT said(tr("Entered in the book of stock"));
    return true;
}

bool StockPage::enter(Instant now) {
    if (item_id_.empty()) return false;
    const auto thousandths = quantity_->value() ? parts::thousandths_of(*quantity_->value()) : std::nullopt;
    if (!quantity_->problem().isEmpty() || !thousandths) {
        Q_EMIT problem(tr("Enter the quantity: a number from 0 on, with at most three decimals."));
        return false;
    }
    parts::StockMove move;
    move.item_id = item_id_;
    move.unit = unit_;
    move.kind = static_cast<parts::StockMoveKind>(kind_->currentData().toInt());
    move.thousandths = *thousandths;
    move.note = note_->text().trimmed().toStdString();
    move.corrects_id = corrects_id_;
    const QString number = job_->text().trimmed();
    if (!corrects_id_.empty() && number == corrected_job_number_) {
        move.job_id = corrected_job_id_;  // also of a job that was removed since, which no number leads to
    } else if (!number.isEmpty()) {
        const auto job = store::StockBook(store_).job_of_number(number.toStdString());
        if (!tell(job.ok() ? std::vector<Problem>{} : job.problems())) return false;
        if (job.value().empty()) {
            Q_EMIT problem(tr("No job has the number '%1'.").arg(number));
            return false;
        }
        move.job_id = job.value();
    }
    // What was taken as planned stays so, that it can be put back with the rest.
    if (!corrects_id_.empty() && corrected_kind_ == parts::StockMoveKind::fitted &&
        move.kind == parts::StockMoveKind::taken && !move.job_id.empty())
        move.kind = parts::StockMoveKind::fitted;
    return put(std::move(move), now);
}

bool StockPage::strike_out(int row, Instant now) {
    if (row < 0 || row >= static_cast<int>(moves_.size())) return false;
    return put(parts::struck_out(moves_[static_cast<std::size_t>(row)]), now);
}

}  // namespace wg::ui
