#pragma once
// What came in with a copy of the job, and what two copies have otherwise: both sides, to choose from now or later.

#include <QDialog>
#include <string>
#include <utility>
#include <vector>

#include "core/merge/join.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class CopiesDialog : public QDialog {
    Q_OBJECT
   public:
    struct Content {
        QString headline;
        QStringList notes;  ///< what else there is to know, a line each
        std::vector<merge::Change> taken;
        std::vector<merge::Open> open;
        QStringList before;       ///< of each open field what it was before both changed; empty: no such column
        bool decide_all = false;  ///< nothing may stay open: the first side counts where nobody chooses
        QString go_on;            ///< words of the button that takes the choices over
    };
    explicit CopiesDialog(Content content, QWidget* parent = nullptr);

    /// Path and side of every field that somebody decided.
    [[nodiscard]] std::vector<std::pair<std::string, std::size_t>> decided() const;
    /// The list of sides of the n-th open field.
    [[nodiscard]] QComboBox* sides(std::size_t n) const { return sides_.at(n); }
    [[nodiscard]] QTableWidget* taken_table() const { return taken_; }

   private:
    QWidget* make_taken();
    QWidget* make_open();
    void refresh_button();

    Content content_;
    QTableWidget* taken_ = nullptr;
    QTableWidget* open_ = nullptr;
    std::vector<QComboBox*> sides_;
    QPushButton* go_on_ = nullptr;
};

}  // namespace wg::ui
