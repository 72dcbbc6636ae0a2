#pragma once
// The record as a table, newest first; entries that a later one corrects, and those that the chain says were altered,
// are marked, never hidden.

#include <QAbstractTableModel>
#include <set>
#include <vector>

#include "core/job/job.h"
#include "ui/common/entry_breaks.h"

namespace wg::ui {

class RecordModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column {
        column_number,
        column_chain,  ///< what the chain says against an entry; nothing while it is whole
        column_kind,
        column_value,
        column_when,
        column_instrument,
        column_by,
        column_note,
        column_plan,
        column_count
    };

    using QAbstractTableModel::QAbstractTableModel;
    void set_record(const std::vector<Reading>& record);
    /// Mark of the plan as it is now: entries made for another one are marked.
    void set_plan_mark(const std::string& mark);
    [[nodiscard]] const Reading* reading_at(int row) const;
    /// The newest entry that the chain speaks against; -1: the chain is whole.
    [[nodiscard]] int first_broken_row() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

   private:
    std::vector<Reading> record_;  ///< newest first
    std::set<std::string> corrected_;
    EntryBreaks breaks_;
    std::string plan_mark_;
};

}  // namespace wg::ui
