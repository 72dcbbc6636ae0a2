#pragma once
// The desk's services due: over all jobs, by week and area.

#include <QWidget>
#include <vector>

#include "ui/common/figure_table.h"
#include "ui/desk/due_groups.h"

class QButtonGroup;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class ServicesPage : public QWidget {
    Q_OBJECT
   public:
    enum Span { overdue_only, four_weeks, three_months, everything };

    /// The store must outlive the page.
    explicit ServicesPage(store::Store& store, QWidget* parent = nullptr);
    void reload(CivilDate today);
    void choose(Span span);
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] QLineEdit* area() const { return area_; }
    [[nodiscard]] const std::vector<DueWeek>& weeks() const { return weeks_; }
    /// What a job has due first; null: nothing known.
    [[nodiscard]] const store::ServiceDueRow* next_of(const std::string& job_id) const;
    /// "3 services due this week, 1 overdue"; empty: none.
    [[nodiscard]] QString count_words() const;
    [[nodiscard]] QString calendar() const;
    [[nodiscard]] FigureTable list() const;

   Q_SIGNALS:
    void open_asked(const QString& job_id);
    void problem(const QString& text);
    void said(const QString& text);
    void reloaded();

   private:
    QWidget* make_head();
    void fill();
    void add_heading(const DueWeek& week);
    void add_visit(const DueVisit& visit);
    void save(const QString& title, const QString& name, const QString& filter, const QByteArray& bytes);

    store::Store& store_;
    CivilDate today_;
    std::vector<store::ServiceDueRow> rows_;
    std::vector<DueWeek> weeks_;
    QButtonGroup* spans_ = nullptr;
    QLineEdit* area_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* none_ = nullptr;
    QPushButton* calendar_ = nullptr;
    QPushButton* list_ = nullptr;
};

}  // namespace wg::ui
