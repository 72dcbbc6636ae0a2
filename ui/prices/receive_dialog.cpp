#include "ui/prices/receive_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/drawing/amount_table.h"

namespace wg::ui {
namespace {

constexpr int receive_wide_px = 860;
constexpr int receive_high_px = 520;
constexpr int longest_delivery_note = 200;

std::int64_t rest_of(const store::PurchaseOrdered& line) {
    return std::max<std::int64_t>(0, line.thousandths - line.received);
}

}  // namespace

ReceiveDialog::ReceiveDialog(const QString& list, const QString& supplier, std::vector<store::PurchaseOrdered> lines,
                             const QStringList& numbers, QWidget* parent)
    : QDialog(parent), lines_(std::move(lines)) {
    setWindowTitle(tr("What came of %1").arg(list));
    auto* words = new QLabel(
        tr("%1, %2: enter what came. What is missing stays to come; tick a line whose rest does not come any more.")
            .arg(list, supplier),
        this);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    table_ = new AmountTable({tr("Part"), tr("Supplier's number"), tr("Ordered"), tr("Received before")},
                             tr("Received now"), tr("Rest does not come"), this);
    table_->setAccessibleName(tr("Lines of the purchase list"));
    std::vector<AmountTable::Line> rows;
    rows.reserve(lines_.size());
    for (const store::PurchaseOrdered& line : lines_) {
        AmountTable::Line row;
        const bool stocked = parts::is_stocked(line);
        const QString text = qs(line.text);
        row.cells = {stocked ? text : tr("%1 (no stock is kept of it)").arg(text),
                     numbers.value(static_cast<int>(rows.size())), stock_quantity(line.thousandths, line.unit),
                     stocked ? stock_quantity(line.received, line.unit) : QString()};
        row.unit = line.unit;
        if (stocked) row.thousandths = line.closed ? 0 : rest_of(line);
        row.ticked = line.closed;
        rows.push_back(std::move(row));
    }
    table_->set_lines(rows);
    note_ = new QLineEdit(this);
    note_->setMaxLength(longest_delivery_note);
    note_->setPlaceholderText(tr("number of the delivery note; may stay empty"));
    auto* note_label = new QLabel(tr("&Note"), this);
    note_label->setBuddy(note_);
    said_ = new QLabel(this);
    said_->setWordWrap(true);
    said_->setProperty("role", QStringLiteral("stop"));
    said_->hide();
    auto* buttons = new QDialogButtonBox(this);
    auto* book = buttons->addButton(tr("Book as received"), QDialogButtonBox::AcceptRole);
    book->setProperty("role", QStringLiteral("primary"));
    buttons->addButton(tr("Book nothing"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &ReceiveDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &ReceiveDialog::reject);
    auto* note_row = new QHBoxLayout;
    note_row->addWidget(note_label);
    note_row->addWidget(note_, 1);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(8);
    column->addWidget(words);
    column->addWidget(table_, 1);
    column->addLayout(note_row);
    column->addWidget(said_);
    column->addWidget(buttons);
    size_for_screen(*this, receive_wide_px, receive_high_px);
    table_->setFocus();
}

void ReceiveDialog::say(const QString& words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
}

QString ReceiveDialog::said() const {
    return said_->text();
}

QString ReceiveDialog::note() const {
    return note_->text().trimmed();
}

std::vector<store::Delivered> ReceiveDialog::delivered() const {
    std::vector<store::Delivered> out;
    if (!table_->problem().isEmpty()) return out;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const int row = static_cast<int>(i);
        const auto now = table_->amount(row);
        if (!now || (*now == 0 && table_->ticked(row) == lines_[i].closed)) continue;
        out.push_back({lines_[i].position, lines_[i].received, *now, table_->ticked(row)});
    }
    return out;
}

QString ReceiveDialog::beyond_order() const {
    QStringList out;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const store::PurchaseOrdered& line = lines_[i];
        const std::int64_t now = table_->amount(static_cast<int>(i)).value_or(0);
        if (now > 0 && line.received + now > line.thousandths)
            out += tr("%1: %2 more than was ordered")
                       .arg(qs(line.text), stock_quantity(line.received + now - line.thousandths, line.unit));
    }
    return out.join(QLatin1Char('\n'));
}

void ReceiveDialog::accept() {
    const QString wrong = table_->problem();
    if (!wrong.isEmpty()) {
        say(wrong);
        return;
    }
    if (delivered().empty()) {
        say(tr("Nothing is entered. Enter what came, or tick what does not come any more."));
        return;
    }
    say({});
    if (const QString beyond = beyond_order(); !beyond.isEmpty()) {
        if (asks_) {
            if (!asks_(beyond)) return;
        } else {
            QMessageBox ask(QMessageBox::Question, tr("More than was ordered"), beyond, QMessageBox::NoButton, this);
            const auto* yes = ask.addButton(tr("It came so"), QMessageBox::AcceptRole);
            ask.setDefaultButton(ask.addButton(tr("Correct it"), QMessageBox::RejectRole));
            ask.exec();
            if (ask.clickedButton() != yes) return;
        }
    }
    QDialog::accept();
}

}  // namespace wg::ui
