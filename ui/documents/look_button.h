#pragma once
// One button for how a paper looks: it says what is set, its menu changes it.

#include <QToolButton>
#include <vector>

#include "ui/documents/documents.h"

class QAction;
class QActionGroup;

namespace wg::ui {

class LookButton : public QToolButton {
    Q_OBJECT
   public:
    explicit LookButton(QWidget* parent = nullptr);
    /// From outside: without a signal.
    void set_look(const PaperLook& look);
    [[nodiscard]] const PaperLook& look() const { return look_; }
    /// The entry of the menu called so; null: there is none.
    [[nodiscard]] QAction* entry(const QString& words) const;

   Q_SIGNALS:
    void look_chosen(const wg::ui::PaperLook& look);

   private:
    QAction* add(const QString& words, const QString& tip, QActionGroup* one_of);
    void take();
    void refresh();

    PaperLook look_;
    std::vector<std::pair<QAction*, PageForm>> forms_;
    std::vector<std::pair<QAction*, Language>> languages_;
    QAction* large_ = nullptr;
    QAction* plain_ = nullptr;
};

}  // namespace wg::ui
