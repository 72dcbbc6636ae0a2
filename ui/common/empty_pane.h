#pragma once
// What an empty part of the window shows: what goes there, and the first step as a button.

#include <QWidget>

class QLabel;
class QPushButton;

namespace wg::ui {

class EmptyPane : public QWidget {
    Q_OBJECT
   public:
    /// `step`: words of the button, a verb first; empty: no button.
    EmptyPane(const QString& title, const QString& text, const QString& step, QWidget* parent = nullptr);
    void set_words(const QString& title, const QString& text, const QString& step);

   Q_SIGNALS:
    void step_asked();

   private:
    QLabel* title_ = nullptr;
    QLabel* text_ = nullptr;
    QPushButton* step_ = nullptr;
};

}  // namespace wg::ui
