#pragma once
// What the readings say: each verdict with shape, word, figures and what to do now.

#include <QScrollArea>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "ui/common/mark.h"

class QVBoxLayout;

namespace wg::ui {

[[nodiscard]] Mark mark_of(commissioning::Verdict verdict);

class VerdictList : public QScrollArea {
    Q_OBJECT
   public:
    explicit VerdictList(QWidget* parent = nullptr);
    void set_assessments(const std::vector<commissioning::Assessment>& assessments);
    /// All words shown, for tests and for copying.
    [[nodiscard]] QString text() const { return lines_.join(QLatin1Char('\n')); }

   private:
    QWidget* inside_ = nullptr;
    QVBoxLayout* column_ = nullptr;
    QStringList lines_;
};

}  // namespace wg::ui
