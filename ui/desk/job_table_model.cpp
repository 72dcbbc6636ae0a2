#include "ui/desk/job_table_model.h"

#include <QDate>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <map>

#include "core/job/words.h"
#include "core/store/fitted_parts.h"
#include "ui/common/format.h"
#include "ui/desk/step_words.h"

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

void JobTableModel::set_view(const store::JobView& view) {
    if (view == view_) return;
    view_ = view;
    reload();
}

void JobTableModel::sort(int column, Qt::SortOrder order) {
    store::JobView view = view_;
    switch (column) {
        case number_column: view.order = store::JobOrder::number; break;
        case client_column: view.order = store::JobOrder::client; break;
        case title_column: view.order = store::JobOrder::title; break;
        case town_column: view.order = store::JobOrder::town; break;
        case state_column: view.order = store::JobOrder::state; break;
        default: view.order = store::JobOrder::newest; break;
    }
    const bool down = order == Qt::DescendingOrder;
    view.backwards = view.order == store::JobOrder::newest ? !down : down;
    set_view(view);
}

Result<std::vector<store::JobRow>> JobTableModel::page(int offset, int rows) const {
    if (view_ == store::JobView{}) return store_.list(query_, rows, offset);
    const QDate today = QDate::currentDate();
    return store::JobList(store_).page(store::filter_of(view_, query_, {today.year(), today.month(), today.day()}),
                                       rows, offset);
}

Result<int> JobTableModel::counted() const {
    if (view_ == store::JobView{}) return store_.count(query_);
    const QDate today = QDate::currentDate();
    return store::JobList(store_).count(store::filter_of(view_, query_, {today.year(), today.month(), today.day()}),
                                        most_counted);
}

void JobTableModel::reload() {
    Result<std::vector<store::JobRow>> first = page(0, page_rows);
    const Result<int> count = counted();
    beginResetModel();
    steps_.clear();
    rows_ = first.ok() ? std::move(first).value() : std::vector<store::JobRow>();
    total_ = count.ok() ? count.value() : -1;
    at_end_ = rows_.size() < static_cast<std::size_t>(page_rows);
    add_steps(rows_);
    endResetModel();
    if (!first.ok()) Q_EMIT problem(qs(text_of(first.problems())));
}

void JobTableModel::add_steps(const std::vector<store::JobRow>& rows) {
    const QDate today = QDate::currentDate();
    const auto steps = store::JobList(store_).next_steps(rows, {today.year(), today.month(), today.day()});
    if (steps.ok())
        steps_.insert(steps_.end(), steps.value().begin(), steps.value().end());
    else
        Q_EMIT problem(qs(text_of(steps.problems())));
}

Result<FigureTable> JobTableModel::whole_list() const {
    constexpr int at_once = 1000;
    FigureTable out;
    out.header = {tr("Job"),   tr("Client"), tr("Title"), tr("Town"),
                  tr("State"), tr("Next"),   tr("Since"), tr("Changed (UTC)")};
    // A maker who calls an item back asks for its numbers.
    std::map<std::string, QStringList> serials;
    if (!view_.item_id.empty()) {
        const Result<std::vector<store::FittedRow>> parts = store::FittedBook(store_).of_item(view_.item_id);
        if (!parts) return parts.problems();
        for (const store::FittedRow& row : parts.value()) {
            if (row.part.replaced_on.empty() && !row.part.serial.empty()) serials[row.job_id] << qs(row.part.serial);
        }
        out.header << tr("Serial numbers");
    }
    const QDate today = QDate::currentDate();
    for (int offset = 0; offset < most_saved; offset += at_once) {
        const Result<std::vector<store::JobRow>> rows = page(offset, at_once);
        if (!rows) return rows.problems();
        const auto steps = store::JobList(store_).next_steps(rows.value(), {today.year(), today.month(), today.day()});
        if (!steps) return steps.problems();
        for (std::size_t i = 0; i < rows.value().size(); ++i) {
            const store::JobRow& row = rows.value()[i];
            out.rows.push_back({qs(row.number), qs(row.client), qs(row.title), qs(row.town),
                                QString::fromUtf8(text_of(row.state)), step_name(steps.value()[i].step),
                                qs(steps.value()[i].since), qs(row.changed_at)});
            if (!view_.item_id.empty()) out.rows.back() << serials[row.id].join(QStringLiteral(", "));
        }
        if (rows.value().size() < static_cast<std::size_t>(at_once)) break;
    }
    return out;
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
            case next_column: {
                const auto place = static_cast<std::size_t>(index.row());
                if (place >= steps_.size()) return QString();
                return role == Qt::ToolTipRole ? step_words_with_day(steps_[place])
                                               : step_words(steps_[place], QDate::currentDate());
            }
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
    const QString names[] = {tr("Job"), tr("Client"), tr("Title"), tr("Town"), tr("State"), tr("Next"), tr("Changed")};
    static constexpr store::JobOrder orders[] = {
        store::JobOrder::number, store::JobOrder::client, store::JobOrder::title, store::JobOrder::town,
        store::JobOrder::state,  store::JobOrder::newest, store::JobOrder::newest};
    if (section < 0 || section >= column_count) return {};
    if (section == next_column) return names[section];
    if (orders[section] != view_.order) return names[section];
    const bool down = view_.order == store::JobOrder::newest ? !view_.backwards : view_.backwards;
    return names[section] + (down ? QStringLiteral(" \u2193") : QStringLiteral(" \u2191"));
}

bool JobTableModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && !at_end_;
}

void JobTableModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent)) return;
    const Result<std::vector<store::JobRow>> more = page(rowCount(), page_rows);
    if (!more.ok()) {
        at_end_ = true;
        Q_EMIT problem(qs(text_of(more.problems())));
        return;
    }
    at_end_ = more.value().size() < static_cast<std::size_t>(page_rows);
    if (more.value().empty()) return;
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(more.value().size()) - 1);
    add_steps(more.value());
    rows_.insert(rows_.end(), more.value().begin(), more.value().end());
    endInsertRows();
}

}  // namespace wg::ui
