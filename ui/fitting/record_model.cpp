#include "ui/fitting/record_model.h"

#include <QDateTime>
#include <QFont>
#include <algorithm>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/fitting/chain_words.h"
#include "ui/fitting/instrument_book.h"
#include "ui/fitting/reading_words.h"

namespace wg::ui {
namespace {

QString value_shown(const Reading& reading) {
    switch (words_of(reading.kind).manner) {
        case EntryManner::figure:
        case EntryManner::yes_no:
        case EntryManner::signature: return value_words(reading);
        case EntryManner::words: return reading.kind == ReadingKind::serial_number ? qs(reading.note) : QString();
        case EntryManner::photograph: return {};
    }
    return {};
}

/// What was read or done and of what; a remark says itself, for it has no figure.
QString kind_shown(const Reading& reading) {
    QString kind = QString::fromUtf8(text_of(reading.kind));
    if (!reading.subject.empty() && reading.kind != ReadingKind::signature)
        kind += QStringLiteral(": ") + qs(reading.subject);
    else if (reading.kind == ReadingKind::remark && !reading.note.empty())
        kind += QStringLiteral(": ") + qs(reading.note);
    return kind;
}

/// What the other columns do not say: occasion, how it was read, then the note.
QString note_shown(const Reading& reading) {
    QStringList parts;
    if (reading.occasion != Occasion::fitting) parts << QString::fromUtf8(text_of(reading.occasion));
    if (reading.indoors_c)
        parts << RecordModel::tr("indoors %1").arg(quantity(*reading.indoors_c, QStringLiteral("°C"), 1));
    if (reading.plate != PlateState::not_told)
        parts << RecordModel::tr("plate %1").arg(QString::fromUtf8(text_of(reading.plate)));
    if (!reading.note.empty() && reading.kind != ReadingKind::serial_number) parts << qs(reading.note);
    return parts.join(QStringLiteral("; "));
}

}  // namespace

void RecordModel::set_record(const std::vector<Reading>& record) {
    beginResetModel();
    record_.assign(record.rbegin(), record.rend());
    corrected_.clear();
    breaks_ = entry_breaks(record);
    for (const Reading& reading : record_) {
        if (!reading.corrects_id.empty()) corrected_.insert(reading.corrects_id);
    }
    endResetModel();
}

void RecordModel::set_plan_mark(const std::string& mark) {
    if (mark == plan_mark_) return;
    plan_mark_ = mark;
    if (!record_.empty()) Q_EMIT dataChanged(index(0, column_plan), index(rowCount() - 1, column_plan));
}

const Reading* RecordModel::reading_at(int row) const {
    return row >= 0 && row < rowCount() ? &record_[static_cast<std::size_t>(row)] : nullptr;
}

int RecordModel::first_broken_row() const {
    const auto at = std::find_if(record_.begin(), record_.end(),
                                 [this](const Reading& reading) { return breaks_.count(reading.id) > 0; });
    return at == record_.end() ? -1 : static_cast<int>(at - record_.begin());
}

int RecordModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(record_.size());
}

int RecordModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant RecordModel::data(const QModelIndex& index, int role) const {
    const Reading* reading = index.isValid() ? reading_at(index.row()) : nullptr;
    if (reading == nullptr) return {};
    const bool corrected = corrected_.count(reading->id) > 0;
    if (role == Qt::FontRole && corrected) {
        QFont font = base_font();
        font.setStrikeOut(true);
        return font;
    }
    const auto broken = breaks_.find(reading->id);
    if (broken != breaks_.end()) {
        if (role == Qt::DecorationRole && index.column() == column_chain) return mark_icon(Mark::stop, current_theme());
        if (role == Qt::ForegroundRole) return current_theme().stop;
        if (role == Qt::ToolTipRole) return broken->second.meaning;
    }
    if (role == Qt::ForegroundRole && corrected) return current_theme().muted;
    const bool other_plan = !reading->plan_mark.empty() && !plan_mark_.empty() && reading->plan_mark != plan_mark_;
    if (role == Qt::DecorationRole && index.column() == column_plan && other_plan)
        return mark_icon(Mark::caution, current_theme());
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(
            (index.column() == column_value || index.column() == column_number ? Qt::AlignRight : Qt::AlignLeft) |
            Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
        case column_number: return rowCount() - index.row();
        case column_chain: return broken == breaks_.end() ? QString() : broken->second.word;
        case column_when: {
            const QDateTime at = QDateTime::fromString(qs(reading->taken_at), Qt::ISODate);
            return at.isValid() ? at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(reading->taken_at);
        }
        case column_kind: return kind_shown(*reading);
        case column_value: return value_shown(*reading);
        case column_instrument:
            if (role == Qt::ToolTipRole && !reading->calibrated_on.empty())
                return calibration_words(qs(reading->calibrated_on), QDate::currentDate());
            return qs(reading->instrument);
        case column_by: return qs(reading->taken_by);
        case column_plan: return plan_words(*reading);
        case column_note: {
            QString note = note_shown(*reading);
            if (corrected) note = tr("(corrected later) ") + note;
            if (!reading->corrects_id.empty()) note = tr("(correction) ") + note;
            return note;
        }
        default: return {};
    }
}

QVariant RecordModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(
            (section == column_value || section == column_number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_number: return tr("No.");
        case column_chain: return tr("Chain");
        case column_when: return tr("When");
        case column_kind: return tr("Reading");
        case column_value: return tr("Value");
        case column_instrument: return tr("Instrument");
        case column_by: return tr("By");
        case column_note: return tr("Note");
        case column_plan: return tr("Made for");
        default: return {};
    }
}

}  // namespace wg::ui
