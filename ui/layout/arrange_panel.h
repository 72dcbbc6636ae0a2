#pragma once
// Beside the face-on drawing: bringing several collectors into line, spreading them evenly, and putting more in a row.

#include <QWidget>
#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;

namespace wg::ui {

class JobSession;
class NumberField;

/// For two collectors and more.
class ArrangePanel : public QWidget {
    Q_OBJECT
   public:
    explicit ArrangePanel(QWidget* parent = nullptr);
    void set_session(JobSession* session) { session_ = session; }
    void show_selection(const std::vector<std::string>& placement_ids);

   Q_SIGNALS:
    void said(const QString& refusal);

   private:
    QPushButton* add_button(QGridLayout* grid, int row, int column, const QString& words, const QString& tip,
                            const QString& keys);
    void build_lines(QGridLayout* grid);
    void build_gaps(QGridLayout* grid);

    JobSession* session_ = nullptr;
    std::vector<std::string> ids_;
    QLabel* heading_ = nullptr;
    QLabel* problem_ = nullptr;
    std::vector<QPushButton*> gaps_;  ///< need three
};

/// For one: more of them beside it.
class RowPanel : public QWidget {
    Q_OBJECT
   public:
    explicit RowPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_placement(const std::string& placement_id);
    [[nodiscard]] NumberField* count() const { return count_; }
    [[nodiscard]] NumberField* gap() const { return gap_; }
    [[nodiscard]] QString problem() const;

   Q_SIGNALS:
    void row_put(const QStringList& placement_ids);  ///< the first and what was put beside it
    void said(const QString& refusal);

   private:
    void put();

    JobSession* session_ = nullptr;
    std::string placement_id_;
    std::string model_id_;  ///< of which the gap was taken
    NumberField* count_ = nullptr;
    NumberField* gap_ = nullptr;
    QPushButton* put_ = nullptr;
    QLabel* problem_ = nullptr;
};

}  // namespace wg::ui
