#pragma once
// The findings of a plan as a list, worst first.

#include <QAbstractListModel>
#include <vector>

#include "core/findings/finding.h"

namespace wg::ui {

/// "Stop: ... Remedy: ..." on several lines, for the clipboard and for screen readers.
[[nodiscard]] QString finding_text(const Finding& finding);
/// "1 stop, 2 cautions"; "none" when empty.
[[nodiscard]] QString count_text(const std::vector<Finding>& findings);

class FindingsModel : public QAbstractListModel {
    Q_OBJECT
   public:
    using QAbstractListModel::QAbstractListModel;
    /// Does nothing when they are the same, so that selection and scroll position stay.
    void set_findings(const std::vector<Finding>& findings);
    [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }
    [[nodiscard]] const Finding* finding(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

   private:
    std::vector<Finding> findings_;
};

}  // namespace wg::ui
