// What the page of purchase lists asks before it books, and the papers it hands to other programs.

#include <QDateTime>
#include <QDesktopServices>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QUrl>

#include "ui/common/format.h"
#include "ui/common/opened_papers.h"
#include "ui/common/whole_file.h"
#include "ui/prices/purchase_page.h"
#include "ui/prices/receive_dialog.h"

namespace wg::ui {
namespace {

Instant now_of_booking() {
    return Instant{QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

void PurchasePage::ask_and_receive() {
    reload();  // another seat may have booked since
    const int row = table_->currentRow();
    const auto dialog = dialog_for(row);
    if (dialog == nullptr || !receive_->isEnabled() || dialog->exec() != QDialog::Accepted) return;
    receive(row, dialog->delivered(), dialog->note(), now_of_booking());
}

void PurchasePage::ask_and_take_back() {
    const int row = bookings_table_->currentRow();
    if (row < 0 || row >= static_cast<int>(bookings_.size())) return;
    QMessageBox ask(
        QMessageBox::Question, tr("Take the booking back?"),
        tr("This goes out of stock again and is to come:\n%1\n\nThe booking stays in the book of stock, with "
           "an entry against it.")
            .arg(bookings_table_->item(row, 1)->text()),
        QMessageBox::NoButton, this);
    const auto* yes = ask.addButton(tr("Take it back"), QMessageBox::AcceptRole);
    ask.addButton(tr("Leave it"), QMessageBox::RejectRole);
    ask.exec();
    if (ask.clickedButton() == yes) take_back(row, now_of_booking());
}

bool PurchasePage::save_whole(int row, const QString& path) {
    const Row* list = row_at(row);
    if (list == nullptr) return false;
    const auto bytes = store::PurchaseBook(store_).paper(list->paper.id);
    if (!tell(bytes.ok() ? std::vector<Problem>{} : bytes.problems())) return false;
    const auto written = write_whole(path, bytes.value());
    return tell(written.ok() ? std::vector<Problem>{} : written.problems());
}

bool PurchasePage::save_to_supplier(int row, const QString& path) {
    const Row* list = row_at(row);
    if (list == nullptr) return false;
    const auto bytes = store::PurchaseBook(store_).paper_to(list->paper.id, list->supplier);
    if (!tell(bytes.ok() ? std::vector<Problem>{} : bytes.problems())) return false;
    const auto written = write_whole(path, bytes.value());
    return tell(written.ok() ? std::vector<Problem>{} : written.problems());
}

void PurchasePage::open_paper(bool to_supplier) {
    const int row = table_->currentRow();
    const Row* list = row_at(row);
    if (list == nullptr) return;
    QString stem;
    for (const QChar c : qs(list->paper.number) + (to_supplier ? QLatin1Char('-') + qs(list->supplier) : QString()))
        stem += c.isLetterOrNumber() || c == QLatin1Char('-') ? c : QLatin1Char('-');
    const QString path = place_for_opened_paper(QStringLiteral("purchase-%1.pdf").arg(stem.left(80)));
    if (!(to_supplier ? save_to_supplier(row, path) : save_whole(row, path))) return;
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        Q_EMIT problem(tr("No program that shows PDF files answered. The paper lies at %1.").arg(path));
}

}  // namespace wg::ui
