#include "ui/common/entry_breaks.h"

#include <QCoreApplication>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString break_tr(const char* text) {
    return QCoreApplication::translate("EntryBreaks", text);
}

QString word_of_break(const Reading& entry) {
    if (entry.sha256.empty()) return break_tr("put in");
    return reading_sha256(entry) != entry.sha256 ? break_tr("altered") : break_tr("chain broken");
}

}  // namespace

EntryBreaks entry_breaks(const std::vector<Reading>& record) {
    EntryBreaks out;
    for (const ChainBreak& one : check_chain(record).breaks) {
        EntryBreak& of = out[one.reading_id];
        if (of.number == 0) {
            of.number = static_cast<int>(one.index) + 1;
            of.word = word_of_break(record[one.index]);
        } else {
            of.meaning += QLatin1Char(' ');
        }
        of.meaning += break_tr("Entry %1 %2.").arg(of.number).arg(qs(one.what));
    }
    for (auto& [id, of] : out)
        of.meaning += QLatin1Char(' ') + break_tr(
                                             "Compare with the signed print or a copy of the job; enter anew what "
                                             "cannot be proved.");
    return out;
}

}  // namespace wg::ui
