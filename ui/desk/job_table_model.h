#pragma once
// The firm's jobs as a table, fetched from the store page by page.

#include <QAbstractTableModel>
#include <cstddef>
#include <set>
#include <string>
#include <vector>

#include "core/store/job_list.h"
#include "ui/common/figure_table.h"

namespace wg::ui {

class JobTableModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column {
        number_column,
        client_column,
        title_column,
        town_column,
        state_column,
        next_column,
        changed_column,
        column_count
    };

    /// The store must outlive the model.
    explicit JobTableModel(store::Store& store, QObject* parent = nullptr);

    /// Shows the jobs that match; empty: all.
    void set_query(const QString& query);
    /// Narrows and sorts beside the words.
    void set_view(const store::JobView& view);
    /// By a column's header: the first click sorts upwards. "Changed" gives the newest first.
    void sort(int column, Qt::SortOrder order) override;
    [[nodiscard]] const store::JobView& view() const { return view_; }
    void reload();
    [[nodiscard]] const store::JobRow* row(int row) const;
    [[nodiscard]] int row_of(const std::string& job_id) const;  ///< among the rows fetched; -1: none
    /// All that match as a table to pass on, fetched or not; at most `most_saved`.
    [[nodiscard]] Result<FigureTable> whole_list() const;
    static constexpr int most_saved = 200'000;
    /// Columns of `whole_list` that hold days or moments.
    [[nodiscard]] static std::set<std::size_t> date_columns_of_list() { return {6, 7}; }
    /// All that match, fetched or not; -1 when the store could not count; one more than `most_counted`: more than that.
    [[nodiscard]] int total() const { return total_; }
    static constexpr int most_counted = 5000;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

   Q_SIGNALS:
    void problem(const QString& text);

   private:
    [[nodiscard]] Result<std::vector<store::JobRow>> page(int offset, int rows) const;
    [[nodiscard]] Result<int> counted() const;
    void add_steps(const std::vector<store::JobRow>& rows);

    store::Store& store_;
    std::string query_;
    store::JobView view_;
    std::vector<store::JobRow> rows_;
    std::vector<NextStepOfJob> steps_;  ///< of rows_; empty when the store could not tell
    int total_ = 0;
    bool at_end_ = false;
};

}  // namespace wg::ui
