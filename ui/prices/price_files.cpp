// The page's tables and files: items out as JSON or CSV, prices in from a table of another program.

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QSaveFile>

#include "ui/common/format.h"
#include "ui/prices/import_dialog.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"

namespace wg::ui {
namespace {

constexpr qint64 most_table_bytes = qint64{32} << 20;  // as the reader of tables has it

}  // namespace

bool PricePage::export_file(const QString& path) {
    const bool as_table = path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive);
    const QByteArray bytes = QByteArray::fromStdString(as_table ? parts::items_to_csv(shown_list())
                                                                : parts::price_list_to_json(shown_list()));
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) {
        Q_EMIT said(as_table ? tr("Items saved as a table: %1").arg(path) : tr("Saved: %1").arg(path));
        return true;
    }
    Q_EMIT problem(tr("%1 cannot be written: %2. Choose a folder you may write to.").arg(path, file.errorString()));
    return false;
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
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > most_table_bytes) {
        Q_EMIT problem(tr("%1 cannot be read, or is larger than 32 MiB.").arg(path));
        return;
    }
    const std::optional<parts::PriceList> taken =
        PriceImportDialog::ask(file.readAll(), QFileInfo(path).fileName(), shown_list(), this);
    if (taken) take_items(*taken);
}

void PricePage::take_items(const parts::PriceList& list) {
    model_->set_list(list, true);
    refresh_state();
    Q_EMIT said(tr("Prices are taken. Save them as a version, or discard the changes."));
}

}  // namespace wg::ui
