#include "ui/fitting/chain_words.h"

#include <QCoreApplication>
#include <map>

#include "core/job/words.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString chain_tr(const char* text) {
    return QCoreApplication::translate("ChainWords", text);
}

QString entries(std::size_t count) {
    return count == 1 ? chain_tr("1 entry") : chain_tr("%1 entries").arg(count);
}

}  // namespace

ChainWords chain_words(const std::vector<Reading>& record) {
    if (record.empty()) return {Mark::empty, {chain_tr("No entry yet")}};
    const ChainReport report = check_chain(record);
    ChainWords out;
    if (report.whole() && report.chained == 0) {
        out.mark = Mark::note;
        out.lines << chain_tr("Not chained: %1 made before entries were chained").arg(entries(report.older));
        return out;
    }
    if (report.whole() && report.ends.size() > 1) {
        QStringList ends;
        for (const std::string& end : report.ends)
            ends << qs(end).left(8).toUpper();
        out.mark = Mark::note;
        out.lines << chain_tr("Chained: %1, whole, written on %2 copies apart; ends in %3")
                         .arg(entries(report.chained))
                         .arg(report.ends.size())
                         .arg(ends.join(chain_tr(" and ")));
        return out;
    }
    if (report.whole()) {
        out.lines << chain_tr("Chained: %1, whole, ends in %2")
                         .arg(entries(report.chained), qs(report.head).left(8).toUpper());
        if (report.older > 0) out.lines << chain_tr("%1 before that are not chained").arg(entries(report.older));
        return out;
    }
    out.mark = Mark::stop;
    out.lines << chain_tr("The chain is not whole: the record was altered outside this program");
    for (const ChainBreak& one : report.breaks)
        out.lines << chain_tr("Entry %1 (%2) %3")
                         .arg(one.index + 1)
                         .arg(QString::fromUtf8(text_of(record[one.index].kind)), qs(one.what));
    return out;
}

QString plan_words(const Reading& reading) {
    if (reading.plan_mark.empty()) return {};
    return chain_tr("revision %1, mark %2").arg(reading.plan_revision).arg(qs(reading.plan_mark));
}

QString other_plan_words(const std::vector<Reading>& record, const std::string& mark_now, std::int64_t revision_now) {
    if (mark_now.empty()) return {};
    std::map<std::string, std::pair<std::size_t, const Reading*>> others;
    for (const Reading& reading : record) {
        if (reading.plan_mark.empty() || reading.plan_mark == mark_now) continue;
        auto& [count, newest] = others[reading.plan_mark];
        ++count;
        newest = &reading;
    }
    if (others.empty()) return {};
    QStringList parts;
    for (const auto& [mark, of] : others)
        parts << (of.first == 1 ? chain_tr("1 entry was made for %1").arg(plan_words(*of.second))
                                : chain_tr("%1 entries were made for %2").arg(of.first).arg(plan_words(*of.second)));
    return chain_tr("%1; the plan is now revision %2, mark %3")
        .arg(parts.join(QStringLiteral("; ")))
        .arg(revision_now)
        .arg(qs(mark_now));
}

}  // namespace wg::ui
