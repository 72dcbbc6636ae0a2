#include "ui/desk/job_table_model.h"

#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "core/job/words.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int page_rows = 100;

/// Today and this year in fewer words: the column is read downwards, so what differs has to stand out.
QString changed_text(const std::string& changed_at) {
    const QDateTime stamp = QDateTime::fromString(qs(changed_at), Qt::ISODate).toLocalTime();
    if (!stamp.isValid()) return qs(changed_at);
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);
    if (stamp.date() == QDate::currentDate())
        return JobTableModel::tr("today %1").arg(english.toString(stamp.time(), QStringLiteral("HH:mm")));
    return english.toString(stamp.date(), QStringLiteral("d MMM yyyy"));
}

}  // namespace

JobTableModel::JobTableModel(store::Store& store, QObject* parent) : QAbstractTableModel(parent), store_(store) {}

void JobTableModel::set_query(const QString& query) {
    const std::string text = query.simplified().toStdString();
    if (text == query_ && !rows_.empty()) return;
    query_ = text;
    reload();
}

void JobTableModel::reload() {
    Result<std::vector<store::JobRow>> first = store_.list(query_, page_rows, 0);
    const Result<int> count = store_.count(query_);
    beginResetModel();
    rows_ = first.ok() ? std::move(first).value() : std::vector<store::JobRow>();
    total_ = count.ok() ? count.value() : -1;
    at_end_ = rows_.size() < static_cast<std::size_t>(page_rows);
    endResetModel();
    if (!first.ok()) Q_EMIT problem(qs(text_of(first.problems())));
}

const store::JobRow* JobTableModel::row(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &rows_[static_cast<std::size_t>(row)];
}

int JobTableModel::row_of(const std::string& job_id) const {
    const auto at = std::find_if(rows_.begin(), rows_.end(), [&](const store::JobRow& r) { return r.id == job_id; });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int JobTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int JobTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant JobTableModel::data(const QModelIndex& index, int role) const {
    const store::JobRow* at = index.isValid() ? row(index.row()) : nullptr;
    if (at == nullptr) return {};
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
        switch (index.column()) {
            case number_column: return qs(at->number);
            case client_column: return qs(at->client);
            case title_column:
                return at->invented && role == Qt::ToolTipRole ? tr("%1. Demonstration data.").arg(qs(at->title))
                                                               : qs(at->title);
            case town_column: return qs(at->town);
            case state_column: return QString::fromUtf8(text_of(at->state));
            case changed_column: return changed_text(at->changed_at);
            default: return {};
        }
    }
    if (role == Qt::TextAlignmentRole && index.column() == changed_column) {
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    }
    return {};
}

QVariant JobTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(
            Qt::Alignment((section == changed_column ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case number_column: return tr("Job");
        case client_column: return tr("Client");
        case title_column: return tr("Title");
        case town_column: return tr("Town");
        case state_column: return tr("State");
        case changed_column: return tr("Changed");
        default: return {};
    }
}

bool JobTableModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && !at_end_;
}

void JobTableModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent)) return;
    const Result<std::vector<store::JobRow>> page = store_.list(query_, page_rows, rowCount());
    if (!page.ok()) {
        at_end_ = true;
        Q_EMIT problem(qs(text_of(page.problems())));
        return;
    }
    at_end_ = page.value().size() < static_cast<std::size_t>(page_rows);
    if (page.value().empty()) return;
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(page.value().size()) - 1);
    rows_.insert(rows_.end(), page.value().begin(), page.value().end());
    endInsertRows();
}

}  // namespace wg::ui
