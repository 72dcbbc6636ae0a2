#pragma once
// Takes the code of a print, scanned or typed, and says whether the print is of the plan as it is.

#include <QString>
#include <QWidget>
#include <cstdint>
#include <string>

class QLabel;
class QLineEdit;

namespace wg::ui {

class PrintRow : public QWidget {
    Q_OBJECT
   public:
    explicit PrintRow(QWidget* parent = nullptr);
    /// What prints are held against; an answer on screen is given anew. An empty mark: there is no plan.
    void set_present(const std::string& job_id, std::int64_t revision, const std::string& mark);
    /// The answer on screen; empty: none.
    [[nodiscard]] QString answer() const;
    [[nodiscard]] QLineEdit& field() { return *field_; }
    /// Where the answer stands, there only while there is one: the stage gives it a place of its own, the field has
    /// none.
    [[nodiscard]] QWidget* answer_line() { return line_; }

   protected:
    void changeEvent(QEvent* event) override;

   private:
    void answer_typed();
    void answer_whole();
    void say_nothing();

    std::string job_id_;
    std::int64_t revision_ = 0;
    std::string mark_;
    QLineEdit* field_ = nullptr;
    QWidget* line_ = nullptr;
    QLabel* sign_ = nullptr;
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui
