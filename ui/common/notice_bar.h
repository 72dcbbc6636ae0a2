#pragma once
// A strip for errors and conflicts: stays until closed, its text can be selected and copied.

#include <QFrame>

#include "ui/common/mark.h"

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace wg::ui {

class NoticeBar : public QFrame {
    Q_OBJECT
   public:
    explicit NoticeBar(QWidget* parent = nullptr);
    /// Shows the strip; a text already there is kept above the new one, since nobody may have read it yet.
    void add(Mark mark, const QString& text);
    /// The same with a button beside the text; `step_asked` follows a click on it.
    void add_with_step(Mark mark, const QString& text, const QString& step);
    void clear();
    [[nodiscard]] QString text() const { return lines_.join(QLatin1Char('\n')); }

   Q_SIGNALS:
    void step_asked();

   private:
    void show_lines(Mark mark);

    QLabel* sign_ = nullptr;
    QLabel* text_ = nullptr;
    QPushButton* step_ = nullptr;
    QStringList lines_;
};

}  // namespace wg::ui
