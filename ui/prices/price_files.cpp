// The page's tables and files: items out as JSON or CSV, prices in from a table of another program.

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

#include "ui/common/format.h"
#include "ui/common/whole_file.h"
#include "ui/prices/import_dialog.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_table_bytes = 32 * mebibyte;  // as the reader of tables has it

}  // namespace

bool PricePage::export_file(const QString& path) {
    const bool as_table = path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive);
    const Result<bool> written =
        write_whole(path, as_table ? parts::items_to_csv(shown_list()) : parts::price_list_to_json(shown_list()));
    if (!written) {
        Q_EMIT problem(qs(wg::text_of(written.problems())));
        return false;
    }
    Q_EMIT said(as_table ? tr("Items saved as a table: %1").arg(path) : tr("Saved: %1").arg(path));
    return true;
}

void PricePage::ask_export() {
    const QString table = tr("Items as a table (*.csv)");
    QString chosen;
    QString path =
        QFileDialog::getSaveFileName(this, tr("Write the price list"), QStringLiteral("%1.json").arg(qs(shown_id_)),
                                     tr("Price lists (*.json)") + QStringLiteral(";;") + table, &chosen);
    if (path.isEmpty()) return;
    // The kind that was chosen counts: the name offered ends otherwise.
    if (chosen == table && path.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) {
        path.chop(5);
        path += QStringLiteral(".csv");
        if (QFile::exists(path)) {
            Q_EMIT problem(tr("%1 is there already. Choose that name itself to write over it.").arg(path));
            return;
        }
    }
    export_file(path);
}

void PricePage::ask_import_items() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Take prices from a table"), {},
                                                      tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
    if (path.isEmpty()) return;
    const Result<std::string> table = read_whole(path, most_table_bytes);
    if (!table) {
        Q_EMIT problem(qs(wg::text_of(table.problems())));
        return;
    }
    const std::optional<parts::PriceList> taken = PriceImportDialog::ask(
        QByteArray::fromStdString(table.value()), QFileInfo(path).fileName(), shown_list(), this);
    if (taken) take_items(*taken);
}

void PricePage::take_items(const parts::PriceList& list) {
    model_->set_list(list, true);
    refresh_state();
    Q_EMIT said(tr("Prices are taken. Save them as a version, or discard the changes."));
}

}  // namespace wg::ui
