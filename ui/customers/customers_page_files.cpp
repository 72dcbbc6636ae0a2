// What the list of customers takes from files and people, and gives to them.

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>

#include "core/customers/list_out.h"
#include "core/store/customers.h"
#include "core/store/personal.h"
#include "core/tables/csv_reader.h"
#include "ui/common/format.h"
#include "ui/common/opened_papers.h"
#include "ui/common/whole_file.h"
#include "ui/customers/client_erase_dialog.h"
#include "ui/customers/customer_import_dialog.h"
#include "ui/customers/customer_look.h"
#include "ui/customers/customer_table_model.h"
#include "ui/customers/customers_page.h"
#include "ui/customers/files.h"

namespace wg::ui {
namespace {

Instant moment_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

/// "; lines 5 and 6 were not taken in" of a table's lines with problems; nothing where there are none.
QString left_out_words(const std::vector<Problem>& problems, const QString& file) {
    constexpr qsizetype most_lines_named = 12;
    const std::string lead = file.toStdString() + ", line ";
    QStringList lines;
    for (const Problem& one : problems) {
        if (!one.where.starts_with(lead)) continue;
        const QString line = qs(one.where.substr(lead.size()));
        if (!lines.contains(line)) lines << line;
    }
    if (lines.isEmpty()) return {};
    if (lines.size() == 1) return CustomersPage::tr("; line %1 was not taken in").arg(lines.front());
    if (lines.size() > most_lines_named)
        return CustomersPage::tr("; %1 lines were not taken in").arg(number(static_cast<double>(lines.size())));
    const QString last = lines.takeLast();
    return CustomersPage::tr("; lines %1 and %2 were not taken in").arg(lines.join(QStringLiteral(", ")), last);
}

/// What went, what stays and what was not reached.
QString erased_words(const customers::Customer& customer, const store::Erased& erased) {
    const auto words = [](int count, const QString& one, const QString& many) {
        return count == 0 ? QString() : counted(count, one, many);
    };
    QStringList gone{CustomersPage::tr("customer %1 with addresses, contacts and notes").arg(qs(customer.number)),
                     words(erased.jobs, CustomersPage::tr("%1 job"), CustomersPage::tr("%1 jobs")),
                     words(erased.photographs, CustomersPage::tr("%1 photograph"), CustomersPage::tr("%1 photographs")),
                     words(erased.quotes, CustomersPage::tr("%1 quote"), CustomersPage::tr("%1 quotes"))};
    gone.removeAll(QString());
    QString out = CustomersPage::tr("Erased: %1.").arg(gone.join(QStringLiteral(", ")));
    const QString kept = words(erased.quotes_kept, CustomersPage::tr(" %1 quote stays until its time is over."),
                               CustomersPage::tr(" %1 quotes stay until their time is over."));
    return out + kept +
           CustomersPage::tr(
               " Backups made before, files that were exported and copies on other machines still hold "
               "the data.");
}

}  // namespace

void CustomersPage::take_in_table() {
    if (!save_edited()) return;
    const QString path = QFileDialog::getOpenFileName(this, tr("Take in a table of customers"), QString(),
                                                      tr("Tables saved as text (*.csv *.txt *.tsv);;All files (*)"));
    if (path.isEmpty()) return;
    const Result<std::string> bytes = read_whole(path);
    const auto table = bytes ? tables::read_csv(bytes.value(), QFileInfo(path).fileName().toStdString())
                             : Result<tables::CsvTable>(bytes.problems());
    const auto here = store::CustomerBook(store_).all();
    if (!table || !here) {
        Q_EMIT problem(tr("Nothing was taken in. %1").arg(qs(text_of(!table ? table.problems() : here.problems()))));
        return;
    }
    CustomerImportDialog dialog(table.value(), QFileInfo(path).fileName(), here.value(), this);
    if (dialog.exec() == QDialog::Accepted) take_in(dialog.preview(), QFileInfo(path).fileName());
}

bool CustomersPage::take_in(const customers::ImportPreview& preview, const QString& file) {
    const auto done = store::CustomerBook(store_).import(preview.rows, moment_now());
    if (!done) {
        Q_EMIT problem(tr("Nothing was taken in. %1").arg(qs(text_of(done.problems()))));
        return false;
    }
    reload();
    Q_EMIT said(tr("%1, %2").arg(counted(done.value().added, tr("%1 customer added"), tr("%1 customers added")),
                                 tr("%1 changed").arg(number(done.value().changed))) +
                left_out_words(preview.problems, file));
    return true;
}

void CustomersPage::save_list() {
    if (!save_edited()) return;
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save this list"), QStringLiteral("customers.csv"), table_files(true));
    if (path.isEmpty()) return;
    const store::CustomerBook book(store_);
    std::vector<customers::Customer> them;
    std::vector<Problem> problems;
    if (model_->query().isEmpty()) {
        Result<std::vector<customers::Customer>> all = book.all();
        if (all)
            them = std::move(all).value();
        else
            problems = all.problems();
    } else {
        const auto rows = book.page(model_->query().toStdString(), 200'000, 0);
        if (!rows) problems = rows.problems();
        for (std::size_t i = 0; rows && i < rows.value().size() && problems.empty(); ++i) {
            const Result<customers::Customer> one = book.load(rows.value()[i].id);
            if (one)
                them.push_back(one.value());
            else
                problems = one.problems();
        }
    }
    const Result<bool> written =
        problems.empty() ? write_table(path, tr("Customers"), customers::rows_of(them)) : Result<bool>(problems);
    if (written)
        Q_EMIT said(
            counted(static_cast<int>(them.size()), tr("%1 customer saved as %2"), tr("%1 customers saved as %2"))
                .arg(path));
    else
        Q_EMIT problem(qs(text_of(written.problems())));
}

void CustomersPage::choose_other() {
    if (!save_edited() || shown_id_.empty()) return;
    bool chosen = false;
    const QString words = QInputDialog::getText(
        this, tr("Bring another customer into this one"),
        tr("Number or name of the customer who is the same. Their jobs, addresses, contacts and notes come to the one "
           "shown; the number stays as a former one. This cannot be undone."),
        QLineEdit::Normal, {}, &chosen);
    if (!chosen || words.trimmed().isEmpty()) return;
    const auto found = store::CustomerBook(store_).page(words.toStdString(), 50, 0);
    if (!found) {
        Q_EMIT problem(qs(text_of(found.problems())));
        return;
    }
    QStringList names;
    std::vector<std::string> ids;
    for (const store::CustomerRow& row : found.value()) {
        if (row.id == shown_id_) continue;
        names << tr("%1, %2, %3").arg(qs(row.number), qs(row.name), qs(row.town));
        ids.push_back(row.id);
    }
    if (ids.empty()) {
        Q_EMIT problem(tr("No other customer has these words."));
        return;
    }
    // Also for a single one: what is brought together is seen before.
    const QString name =
        QInputDialog::getItem(this, tr("Bring another customer into this one"),
                              tr("This one becomes part of the customer shown:"), names, 0, false, &chosen);
    const qsizetype at = names.indexOf(name);
    if (chosen && at >= 0) bring_in(ids[static_cast<std::size_t>(at)]);
}

bool CustomersPage::bring_in(const std::string& other_id) {
    if (!save_edited() || shown_id_.empty()) return false;
    const auto done = store::CustomerBook(store_).bring_together(shown_id_, other_id, this_second());
    if (!done.ok()) {
        Q_EMIT problem(qs(text_of(done.problems())));
        return false;
    }
    reload(done.value().id);
    Q_EMIT said(tr("Brought together as customer %1").arg(qs(done.value().number)));
    return true;
}

void CustomersPage::hand_out() {
    if (!save_edited() || shown_id_.empty()) return;
    const QString path = QFileDialog::getSaveFileName(this, tr("Hand out all that is kept of the client"),
                                                      QStringLiteral("client-data.zip"), tr("Archive (*.zip)"));
    if (path.isEmpty()) return;
    const store::PersonalData kept(store_);
    const auto named = kept.named({shown_id_});
    const auto bytes = named ? kept.export_as_file(named.value()) : Result<std::string>(named.problems());
    const Result<bool> written = bytes ? write_whole(path, bytes.value()) : Result<bool>(bytes.problems());
    if (written)
        Q_EMIT said(tr("All that is kept of the client is in %1").arg(path));
    else
        Q_EMIT problem(qs(text_of(written.problems())));
}

void CustomersPage::erase() {
    if (!save_edited() || shown_id_.empty()) return;
    store::PersonalData kept(store_);
    const auto named = kept.named({shown_id_});
    if (!named) {
        Q_EMIT problem(qs(text_of(named.problems())));
        return;
    }
    const auto customer = store::CustomerBook(store_).load(shown_id_);
    if (!customer) {
        Q_EMIT problem(qs(text_of(customer.problems())));
        return;
    }
    ClientEraseDialog dialog(customer.value(), static_cast<int>(named.value().job_ids.size()),
                             kept.years_kept() ? kept.years_kept().value() : 0, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto done =
        kept.erase(named.value().job_ids, dialog.reason().toStdString(), moment_now(), named.value().customer_ids);
    remove_opened_papers();  // those of the client are among them
    shown_id_.clear();
    reload();
    Q_EMIT jobs_changed();
    if (!done) {
        Q_EMIT problem(qs(text_of(done.problems())));
        return;
    }
    Q_EMIT said(erased_words(customer.value(), done.value()));
}

void CustomersPage::remove() {
    if (shown_id_.empty()) return;
    const Result<bool> done = store::CustomerBook(store_).remove(shown_id_);
    if (!done) {
        Q_EMIT problem(qs(text_of(done.problems())));
        return;
    }
    shown_id_.clear();
    reload();
}

}  // namespace wg::ui
