#include "ui/offer/take_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/drawing/amount_table.h"

namespace wg::ui {
namespace {

constexpr int take_wide_px = 860;
constexpr int take_high_px = 560;

QString there_words(const TakeLine& line) {
    if (line.on_order == 0)
        return line.in_stock ? stock_quantity(*line.in_stock, line.unit) : TakeDialog::tr("not kept");
    return TakeDialog::tr("%1 in stock, %2 on order")
        .arg(stock_quantity(line.in_stock.value_or(0), line.unit), stock_quantity(line.on_order, line.unit));
}

}  // namespace

bool is_fitted(JobState state) noexcept {
    return state == JobState::fitted || state == JobState::in_service;
}

std::int64_t proposed(const TakeLine& line) noexcept {
    return line.in_stock ? std::max<std::int64_t>(0, line.planned - line.taken) : 0;
}

TakeDialog::TakeDialog(const QString& job_number, std::vector<TakeLine> lines, bool any_taken_as_planned,
                       QWidget* parent)
    : QDialog(parent), lines_(std::move(lines)) {
    setWindowTitle(tr("Take from stock for job %1").arg(job_number));
    auto* words = new QLabel(
        tr("What of the plan goes out of stock. Of items that no stock is kept of nothing is proposed."), this);
    words->setWordWrap(true);
    table_ =
        new AmountTable({tr("Part"), tr("Planned"), tr("Taken before"), tr("In stock")}, tr("Taken now"), {}, this);
    table_->setAccessibleName(tr("Parts of the job"));
    std::vector<AmountTable::Line> rows;
    rows.reserve(lines_.size());
    for (const TakeLine& line : lines_)
        rows.push_back({{qs(line.text), stock_quantity(line.planned, line.unit),
                         line.taken == 0 ? QString() : stock_quantity(line.taken, line.unit), there_words(line)},
                        line.unit,
                        proposed(line),
                        false});
    table_->set_lines(rows);
    said_ = new QLabel(this);
    said_->setWordWrap(true);
    said_->setProperty("role", QStringLiteral("stop"));
    said_->hide();
    auto* buttons = new QDialogButtonBox(this);
    auto* yes = buttons->addButton(tr("Take from stock"), QDialogButtonBox::AcceptRole);
    yes->setProperty("role", QStringLiteral("primary"));
    if (any_taken_as_planned) {
        auto* back = buttons->addButton(tr("Put back what was taken"), QDialogButtonBox::ActionRole);
        back->setToolTip(tr("An entry against each that was so taken for the job; the book keeps both"));
        connect(back, &QPushButton::clicked, this, [this] { done(put_back); });
    }
    buttons->addButton(tr("Not now"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &TakeDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &TakeDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(8);
    column->addWidget(words);
    column->addWidget(table_, 1);
    column->addWidget(said_);
    column->addWidget(buttons);
    size_for_screen(*this, take_wide_px, take_high_px);
    table_->setFocus();
}

void TakeDialog::say(const QString& words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
}

QString TakeDialog::said() const {
    return said_->text();
}

std::vector<store::StockBook::Taking> TakeDialog::takings() const {
    std::vector<store::StockBook::Taking> out;
    if (!table_->problem().isEmpty()) return out;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const auto now = table_->amount(static_cast<int>(i));
        if (now && *now > 0) out.push_back({lines_[i].item_id, lines_[i].unit, lines_[i].taken, *now});
    }
    return out;
}

QString TakeDialog::less_than_nothing() const {
    QStringList out;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const std::int64_t now = table_->amount(static_cast<int>(i)).value_or(0);
        const std::int64_t left = lines_[i].in_stock.value_or(0) - now;
        if (now > 0 && left < 0)
            out += tr("%1: %2 would be left").arg(qs(lines_[i].text), stock_quantity(left, lines_[i].unit));
    }
    return out.join(QLatin1Char('\n'));
}

void TakeDialog::accept() {
    const QString wrong = table_->problem();
    if (!wrong.isEmpty()) {
        say(wrong);
        return;
    }
    if (takings().empty()) {
        say(tr("Nothing is entered. Enter what goes on the van."));
        return;
    }
    say({});
    if (const QString less = less_than_nothing(); !less.isEmpty()) {
        if (asks_) {
            if (!asks_(less)) return;
        } else {
            QMessageBox ask(QMessageBox::Question, tr("Less than nothing in stock"),
                            tr("More goes than is known to be there:\n%1").arg(less), QMessageBox::NoButton, this);
            const auto* yes = ask.addButton(tr("Take it all the same"), QMessageBox::AcceptRole);
            ask.setDefaultButton(ask.addButton(tr("Correct it"), QMessageBox::RejectRole));
            ask.exec();
            if (ask.clickedButton() != yes) return;
        }
    }
    QDialog::accept();
}

}  // namespace wg::ui
