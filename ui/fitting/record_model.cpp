#include "ui/fitting/record_model.h"

#include <QDateTime>
#include <QFont>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/fitting/reading_words.h"

namespace wg::ui {

void RecordModel::set_record(const std::vector<Reading>& record) {
    beginResetModel();
    record_.assign(record.rbegin(), record.rend());
    corrected_.clear();
    for (const Reading& reading : record_) {
        if (!reading.corrects_id.empty()) corrected_.insert(reading.corrects_id);
    }
    endResetModel();
}

const Reading* RecordModel::reading_at(int row) const {
    return row >= 0 && row < rowCount() ? &record_[static_cast<std::size_t>(row)] : nullptr;
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
    if (role == Qt::ForegroundRole && corrected) return current_theme().muted;
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue((index.column() == column_value ? Qt::AlignRight : Qt::AlignLeft) |
                                   Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
        case column_when: {
            const QDateTime at = QDateTime::fromString(qs(reading->taken_at), Qt::ISODate);
            return at.isValid() ? at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(reading->taken_at);
        }
        case column_kind: return QString::fromUtf8(text_of(reading->kind));
        case column_value: return reading->kind == ReadingKind::remark ? QString() : value_words(*reading);
        case column_instrument: return qs(reading->instrument);
        case column_by: return qs(reading->taken_by);
        case column_note: {
            QString note = qs(reading->note);
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
        return QVariant::fromValue((section == column_value ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_when: return tr("When");
        case column_kind: return tr("Reading");
        case column_value: return tr("Value");
        case column_instrument: return tr("Instrument");
        case column_by: return tr("By");
        case column_note: return tr("Note");
        default: return {};
    }
}

}  // namespace wg::ui
