#pragma once
// Up to four of the job's choices side by side, with what is done to a choice as a whole: duplicate, rename, mark.

#include <QPointer>
#include <QWidget>
#include <string>
#include <vector>

#include "ui/common/figure_table.h"
#include "ui/comparison/choice_rows.h"

class QLabel;
class QHBoxLayout;
class QMenu;
class QPushButton;
class QTableWidget;
class QToolButton;

namespace wg::ui {

class ChoicePlans;
class JobSession;
class TextField;

class Comparison : public QWidget {
    Q_OBJECT
   public:
    explicit Comparison(QWidget* parent = nullptr);

    void set_session(JobSession* session);
    [[nodiscard]] FigureTable figures() const;
    /// The choice that the buttons act on: that of the table's current column.
    [[nodiscard]] std::string selected() const;
    void select(const std::string& choice_id);

   Q_SIGNALS:
    void said(const QString& text);  ///< what was just done, for the bottom line

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

   private:
    void build_bar(QHBoxLayout* bar);
    void build_table();
    void look();
    void fill();
    void fill_menu();
    void fill_cells(const std::vector<ComparedRow>& rows);
    void fill_heads();
    void fill_foot();
    void refresh_bar();
    void copy(bool csv);
    [[nodiscard]] std::vector<ComparedChoice> choices() const;
    [[nodiscard]] std::size_t basis() const;
    [[nodiscard]] QStringList labels() const;

    QPointer<JobSession> session_;
    QPointer<ChoicePlans> plans_;
    std::vector<std::string> shown_;  ///< ids of the columns
    QToolButton* which_ = nullptr;
    QMenu* which_menu_ = nullptr;
    TextField* name_ = nullptr;
    QPushButton* show_ = nullptr;
    QPushButton* duplicate_ = nullptr;
    QPushButton* mark_ = nullptr;
    QToolButton* copy_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* foot_ = nullptr;
    QPushButton* stop_ = nullptr;
};

}  // namespace wg::ui
