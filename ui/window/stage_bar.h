#pragma once
// The path of six stages on top of a job: one click or Ctrl+1 to Ctrl+6.

#include <QAbstractButton>
#include <QWidget>
#include <array>

#include "ui/window/stage_marks.h"

namespace wg::ui {

/// A stage's name with its mark; the current one is underlined in the accent colour.
class StageButton : public QAbstractButton {
    Q_OBJECT
   public:
    StageButton(int stage, QWidget* parent = nullptr);
    void set_mark(const StageMark& mark);
    [[nodiscard]] QSize sizeHint() const override;

   protected:
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

   private:
    int stage_;
    StageMark mark_;
    bool by_keyboard_ = false;  ///< the focus came by key: only then a ring shows where it is
};

class StageBar : public QWidget {
    Q_OBJECT
   public:
    explicit StageBar(QWidget* parent = nullptr);
    void set_marks(const std::array<StageMark, stage_count>& marks);
    void set_current(int stage);
    /// Takes the focus to the current stage's button, for stages that have no place of their own for it.
    void focus_current();

   Q_SIGNALS:
    void stage_asked(int stage);

   private:
    std::array<StageButton*, stage_count> buttons_{};
};

}  // namespace wg::ui
