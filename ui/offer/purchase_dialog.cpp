#include "ui/offer/purchase_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"

namespace wg::ui {
namespace {

constexpr int purchase_wide_px = 720;
constexpr int purchase_high_px = 420;

}  // namespace

PurchaseDialog::PurchaseDialog(const std::vector<quote::PurchaseGroup>& groups, const QString& currency,
                               QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Save purchase list"));
    table_ = reading_table({tr("Supplier"), tr("Lines to order"), tr("There or on order"), tr("Taken for this job"),
                            tr("Ordered before"), tr("Net, as far as known")},
                           this);
    table_->setAccessibleName(tr("What is ordered of whom"));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    bool any = false;
    for (const quote::PurchaseGroup& group : groups) {
        const auto ordered = std::count_if(group.lines.begin(), group.lines.end(),
                                           [](const quote::PurchaseLine& line) { return line.to_order > 0.0; });
        any = any || ordered > 0;
        const auto without = [&group](const auto& why) {
            return std::count_if(group.lines.begin(), group.lines.end(),
                                 [&](const quote::PurchaseLine& line) { return !(line.to_order > 0.0) && why(line); });
        };
        const auto taken =
            without([](const quote::PurchaseLine& line) { return line.taken > 0.0 && line.taken >= line.wanted; });
        const auto before = without([](const quote::PurchaseLine& line) { return line.ordered_before > 0.0; });
        add_reading_row(
            *table_,
            {group.supplier.empty() ? tr("no supplier told: no paper") : qs(group.supplier), QString::number(ordered),
             QString::number(static_cast<std::ptrdiff_t>(group.lines.size()) - ordered - taken - before),
             QString::number(taken), QString::number(before),
             group.net.minor == 0 ? QString() : money(group.net, currency)});
    }
    auto* words = new QLabel(
        any ? tr("The list takes the next number of purchases. Beside it each supplier gets a paper with their own "
                 "lines "
                 "alone.")
            : tr("Nothing is to be ordered: all of it is there, on order, or taken for the job. The list reserves the "
                 "rest."),
        this);
    words->setWordWrap(true);
    prices_ = new QCheckBox(tr("&Prices on the papers to suppliers"), this);
    prices_->setChecked(true);
    prices_->setEnabled(any);
    auto* buttons = new QDialogButtonBox(this);
    auto* yes = buttons->addButton(tr("Choose where to save"), QDialogButtonBox::AcceptRole);
    yes->setProperty("role", QStringLiteral("primary"));
    buttons->addButton(tr("Not now"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &PurchaseDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PurchaseDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(8);
    column->addWidget(words);
    column->addWidget(table_, 1);
    column->addWidget(prices_);
    column->addWidget(buttons);
    size_for_screen(*this, purchase_wide_px, purchase_high_px);
}

bool PurchaseDialog::with_prices() const {
    return prices_->isChecked();
}

}  // namespace wg::ui
