#pragma once
// The values of a rule set as a table that is edited in place.

#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <vector>

#include "ui/rules/rule_draft.h"

namespace wg::ui {

class RuleModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { column_group, column_value, column_figure, column_unit, column_source, column_state, column_count };

    explicit RuleModel(QObject* parent = nullptr);
    void set_draft(RuleDraft draft, bool editable);
    [[nodiscard]] const RuleDraft& draft() const { return draft_; }
    /// Only rows with all these words in group, value, figure or source.
    void set_words(const QString& words);
    void set_assumed(bool assumed);
    /// Of a list; the row that shows its first value.
    int add_item(RuleGroup group);
    /// The item that this row belongs to; false: the row stands once.
    bool remove_item_of(int row);
    [[nodiscard]] bool is_item(int row) const;
    /// Null: no such row.
    [[nodiscard]] const RuleRow* row_at(int row) const;
    /// -1: not on screen.
    [[nodiscard]] int row_of(const QStringList& path) const;
    /// What an entry would be refused for, with the range; empty: nothing.
    [[nodiscard]] QString judged(const QModelIndex& index, const QString& text) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

   Q_SIGNALS:
    void refused(const QString& text);
    void edited();

   private:
    void find();
    bool enter_source(const RuleRow& row, const QString& text);
    [[nodiscard]] QString text_at(const RuleRow& row, int column) const;
    [[nodiscard]] bool may_edit(const RuleRow& row, int column) const;

    RuleDraft draft_;
    std::vector<RuleRow> shown_;
    QStringList words_;
    bool editable_ = false;
};

}  // namespace wg::ui
