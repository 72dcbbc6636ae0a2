// What the Offer stage buys and takes: purchase lists with the papers to suppliers, and parts out of stock.

#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <QTimer>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/store/purchase_book.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/common/whole_file.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/papers.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/purchase_dialog.h"
#include "ui/offer/take_dialog.h"

namespace wg::ui {
namespace {

/// What can be known before anything is written there.
std::optional<Problem> no_place_for(const QString& path) {
    const QFileInfo file(path);
    const QFileInfo folder(file.absolutePath());
    if (folder.isDir() && folder.isWritable() && (!file.exists() || file.isFile())) return std::nullopt;
    return Problem{QDir::toNativeSeparators(path).toStdString(), "cannot be written",
                   "Choose the name of a file in a folder you may write to"};
}

/// "P2027-0001 Pellow Copper.pdf", with nothing in it that a file's name cannot have; one of its own among `others`.
QString supplier_file(const std::string& number, const std::string& supplier, const QStringList& others) {
    QString name;
    for (const QChar c : qs(number) + QLatin1Char(' ') + qs(supplier).left(60))
        name += c.isLetterOrNumber() || QStringLiteral("-_ &.").contains(c) ? c : QLatin1Char('-');
    const auto with_end = [&name](int count) {
        return count == 1 ? name + QStringLiteral(".pdf") : QStringLiteral("%1 (%2).pdf").arg(name).arg(count);
    };
    int count = 1;
    while (others.contains(with_end(count), Qt::CaseInsensitive))
        ++count;
    return with_end(count);
}

QStringList below_nothing(const std::vector<store::PurchaseOrdered>& lines, const quote::SupplyOf& supply_of) {
    QStringList out;
    for (const store::PurchaseOrdered& line : lines) {
        if (line.item_id.empty() || !supply_of) continue;
        const quote::Supply supply = supply_of(line.item_id);
        if (supply.in_stock && *supply.in_stock < 0.0) out += qs(line.text);
    }
    out.removeDuplicates();
    return out;
}

/// The whole list, and a paper to each supplier of whom something is ordered.
Result<store::PurchasePrints> print_purchase(PaperInput& paper, const std::vector<store::PurchaseOrdered>& lines,
                                             const std::string& number) {
    paper.order->number = qs(number);
    store::PurchasePrints out;
    const auto whole = pdf_bytes(Paper::purchase_list, paper);
    if (!whole.ok()) return whole.problems();
    out.whole = whole.value().toStdString();
    for (const store::PurchaseOrdered& line : lines) {
        const bool made = !out.to_suppliers.empty() && out.to_suppliers.back().first == line.supplier;
        if (line.supplier.empty() || line.thousandths == 0 || made) continue;  // lines stand by supplier
        paper.purchase_supplier = line.supplier;
        const auto pdf = pdf_bytes(Paper::purchase_order, paper);
        if (!pdf.ok()) return pdf.problems();
        out.to_suppliers.emplace_back(line.supplier, pdf.value().toStdString());
    }
    return out;
}

Instant moment_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

bool OfferStage::save_purchase_list(const QString& path, Instant now, bool supplier_prices) {
    if (session_ == nullptr || store_ == nullptr || session_->plan() == nullptr || !session_->settled()) return false;
    const QDate day = QDateTime::fromSecsSinceEpoch(now.unix_s).date();
    PaperInput paper = *input_now(day);
    paper.look = paper_->look();
    paper.order = OrderInput{};
    paper.purchase_prices = supplier_prices;
    if (const auto unread = take_stock(*store_, paper)) {
        notice_->add(Mark::stop, qs(unread->text()));
        return false;
    }
    // A folder that takes nothing uses up no number.
    if (const auto no_place = no_place_for(path)) {
        notice_->add(Mark::stop, qs(no_place->text()));
        return false;
    }
    const std::vector<store::PurchaseOrdered> lines = ordered_lines(paper);
    store::PurchasePrints prints;
    const auto print = [&](const std::string& number) -> Result<store::PurchasePrints> {
        auto made = print_purchase(paper, lines, number);
        if (made.ok()) prints = made.value();
        return made;
    };
    const auto kept = store::PurchaseBook(*store_).keep(session_->job().id, lines, print, now);
    if (!kept.ok()) {
        notice_->add(Mark::stop, qs(text_of(kept.problems())));
        return false;
    }
    if (const QStringList missing = below_nothing(lines, paper.supply_of); !missing.isEmpty())
        notice_->add(
            Mark::caution,
            tr("The book of stock has less than nothing of %1: nothing of it is counted on. Count what is there.")
                .arg(missing.join(QStringLiteral(", "))));
    // Only now that the number is this list's: no paper lies about under a number that the next list gets, too.
    std::vector<Problem> unwritten;
    const auto write = [&unwritten](const QString& file, const std::string& bytes) {
        const auto written = write_whole(file, bytes);
        if (!written.ok()) unwritten.insert(unwritten.end(), written.problems().begin(), written.problems().end());
    };
    write(path, prints.whole);
    const QDir folder = QFileInfo(path).absoluteDir();
    QStringList names{QFileInfo(path).fileName()};
    for (const auto& [supplier, bytes] : prints.to_suppliers) {
        names += supplier_file(kept.value().number, supplier, names);
        write(folder.filePath(names.back()), bytes);
    }
    refresh();
    if (!unwritten.empty()) {
        notice_->add(
            Mark::stop,
            tr("Purchase list %1 is kept, but not every file was written. %2 Open its papers from the purchase "
               "lists beside the prices; a list made anew would order it twice.")
                .arg(qs(kept.value().number), qs(text_of(unwritten))));
        return false;
    }
    Q_EMIT status_text(tr("Purchase list %1 saved as %2, papers to suppliers beside it: %3")
                           .arg(qs(kept.value().number), path)
                           .arg(prints.to_suppliers.size()));
    return true;
}

void OfferStage::ask_and_save_purchase() {
    if (session_ == nullptr || store_ == nullptr || session_->plan() == nullptr) return;
    const auto input = input_now(QDate::currentDate());
    PurchaseDialog dialog(quote::purchase_list(paper::offered_of(input->plan), input->supply_of, input->ordered_before),
                          qs(input->plan.currency), this);
    if (dialog.exec() != QDialog::Accepted) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save purchase list"), folder + QStringLiteral("/%1 purchase.pdf").arg(qs(session_->job().number)),
        tr("PDF (*.pdf)"));
    if (!path.isEmpty()) save_purchase_list(path, moment_now(), dialog.with_prices());
}

std::optional<std::vector<TakeLine>> OfferStage::lines_to_take() {
    if (session_ == nullptr || store_ == nullptr || session_->plan() == nullptr) return std::nullopt;
    const std::string job_id = session_->job().id;
    const auto input = input_now(QDate::currentDate());
    const auto taken = store::StockBook(*store_).taken_for(job_id);
    const auto needs = quote::stock_needs(paper::offered_of(input->plan), input->supply_of);
    std::set<std::string> named;
    for (const quote::StockNeed& need : needs)
        named.insert(need.item_id);
    // None named would be the whole book.
    const auto standings = named.empty() ? Result<std::vector<parts::ItemStanding>>(std::vector<parts::ItemStanding>{})
                                         : store::stock_standings(*store_, {named.begin(), named.end()}, job_id);
    for (const auto* problems :
         {taken.ok() ? nullptr : &taken.problems(), standings.ok() ? nullptr : &standings.problems()}) {
        if (problems == nullptr) continue;
        notice_->add(Mark::stop, qs(text_of(*problems)));
        return std::nullopt;
    }
    std::vector<TakeLine> out;
    for (const quote::StockNeed& need : needs) {
        TakeLine line{need.item_id, need.text, need.unit, std::llround(need.quantity * 1000.0), 0, std::nullopt, 0};
        if (const auto gone = taken.value().find({need.item_id, need.unit}); gone != taken.value().end())
            line.taken = gone->second;
        for (const parts::ItemStanding& one : standings.value()) {
            if (one.item_id != need.item_id || one.unit != need.unit) continue;
            line.in_stock = one.in_stock;
            line.on_order = one.on_order;
        }
        out.push_back(std::move(line));
    }
    return out;
}

std::unique_ptr<TakeDialog> OfferStage::take_dialog() {
    auto lines = lines_to_take();
    if (!lines) return nullptr;
    const auto planned = store::StockBook(*store_).taken_as_planned(session_->job().id);
    return std::make_unique<TakeDialog>(qs(session_->job().number), std::move(*lines),
                                        planned.ok() && planned.value() > 0, this);
}

void OfferStage::ask_and_take() {
    const auto dialog = take_dialog();
    if (dialog == nullptr) return;
    const int answer = dialog->exec();
    if (answer == TakeDialog::take) take_from_stock(dialog->takings(), moment_now());
    if (answer == TakeDialog::put_back) put_back_into_stock(moment_now());
}

bool OfferStage::take_from_stock(const std::vector<store::StockBook::Taking>& takings, Instant now) {
    if (session_ == nullptr || store_ == nullptr) return false;
    const auto taken = store::StockBook(*store_).take_for_job(session_->job().id, takings, now);
    if (!taken.ok()) {
        notice_->add(Mark::stop, qs(text_of(taken.problems())));
        return false;
    }
    refresh();
    Q_EMIT status_text(taken.value() == 1 ? tr("1 line was taken from stock")
                                          : tr("%1 lines were taken from stock").arg(taken.value()));
    return true;
}

bool OfferStage::put_back_into_stock(Instant now) {
    if (session_ == nullptr || store_ == nullptr) return false;
    const auto back = store::StockBook(*store_).put_back_for_job(session_->job().id, now);
    if (!back.ok()) {
        notice_->add(Mark::stop, qs(text_of(back.problems())));
        return false;
    }
    refresh();
    Q_EMIT status_text(back.value() == 1 ? tr("1 line was put back into stock")
                                         : tr("%1 lines were put back into stock").arg(back.value()));
    return true;
}

void OfferStage::watch_state() {
    if (session_ == nullptr || store_ == nullptr) return;
    if (const JobState state = session_->job().state; state != JobState::closed) {
        ask_stock_ = ask_stock_ || is_fitted(state) != was_fitted_;
        was_fitted_ = is_fitted(state);
    }
    if (!ask_stock_ || !session_->settled()) return;
    ask_stock_ = false;
    QTimer::singleShot(0, this, &OfferStage::ask_about_stock);  // the edit that did it is done first
}

void OfferStage::ask_about_stock() {
    if (session_ == nullptr || store_ == nullptr || session_->plan() == nullptr) return;
    const bool fitted = is_fitted(session_->job().state);
    bool any = false;
    if (fitted) {
        const auto lines = lines_to_take();
        any =
            lines && std::any_of(lines->begin(), lines->end(), [](const TakeLine& line) { return proposed(line) > 0; });
    } else {
        const auto planned = store::StockBook(*store_).taken_as_planned(session_->job().id);
        any = planned.ok() && planned.value() > 0;
    }
    if (!any) return;
    QMessageBox ask(QMessageBox::Question, fitted ? tr("The job is fitted") : tr("The job is not fitted any more"),
                    fitted ? tr("Its parts are still in the book of stock. Take them out?")
                           : tr("Its parts were taken from stock. Put them back?"),
                    QMessageBox::NoButton, this);
    const auto* look = ask.addButton(tr("Look at the lines\u2026"), QMessageBox::AcceptRole);
    ask.addButton(tr("Leave the stock as it is"), QMessageBox::RejectRole);
    ask.exec();
    if (ask.clickedButton() == look) ask_and_take();
}

}  // namespace wg::ui
