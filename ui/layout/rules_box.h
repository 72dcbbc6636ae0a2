#pragma once
// What the equipment's data ask of the selected collector, line by line, each with its mark, its word and how it
// stands.

#include <QWidget>
#include <string>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace wg::ui {

class JobSession;

class RulesBox : public QWidget {
    Q_OBJECT
   public:
    explicit RulesBox(QWidget* parent = nullptr);
    void show_rules(const JobSession* session, const std::string& placement_id);
    [[nodiscard]] QStringList lines() const;  ///< as read aloud

   private:
    struct Line {
        QWidget* row = nullptr;
        QLabel* mark = nullptr;
        QLabel* words = nullptr;
    };
    Line& line(std::size_t index);

    QLabel* heading_ = nullptr;
    QVBoxLayout* column_ = nullptr;
    std::vector<Line> lines_;
};

}  // namespace wg::ui
