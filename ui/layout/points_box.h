#pragma once
// The fixing points on the surface shown, as a list: what each carries, how much of its hold is used, and by which
// combination.

#include <QStyledItemDelegate>
#include <QWidget>
#include <string>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace wg::ui {

class JobSession;

/// Paints one point on three lines: its number and use with the mark's shape, its forces, what governs.
class PointDelegate : public QStyledItemDelegate {
    Q_OBJECT
   public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

class PointsBox : public QWidget {
    Q_OBJECT
   public:
    explicit PointsBox(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_surface(const std::string& surface_id);
    /// Selects a point's row without telling anybody.
    void mark(const std::string& placement_id, int number);
    [[nodiscard]] QListWidget* list() const { return list_; }

   Q_SIGNALS:
    void point_chosen(const QString& placement_id, int number);
    void working_asked(const QString& placement_id, int number);

   private:
    struct Row {
        std::string placement_id;
        int number = 0;
        friend bool operator==(const Row&, const Row&) = default;
    };
    void refresh();
    void ask();

    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::vector<Row> rows_;
    QListWidget* list_ = nullptr;
    QLabel* none_ = nullptr;
    QPushButton* working_ = nullptr;
};

}  // namespace wg::ui
