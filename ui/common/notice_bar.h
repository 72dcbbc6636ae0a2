#pragma once
// A strip for errors, conflicts and good news. Its text can be selected and copied. What is wrong stays until it is
// closed; good news leaves by itself.

#include <QFrame>
#include <QTimer>

#include "ui/common/mark.h"

class QLabel;
class QPushButton;
class QShortcut;

namespace wg::ui {

class NoticeBar : public QFrame {
    Q_OBJECT
   public:
    explicit NoticeBar(QWidget* parent = nullptr);
    /// From now on it lies over its parent instead of standing in a layout: nothing moves when it comes and goes. It
    /// lies where it covers no button, field or tab, within these margins.
    void lie_over(const QMargins& margins);
    /// Shows the strip; a text already there is kept above the new one, since nobody may have read it yet.
    void add(Mark mark, const QString& text);
    /// The same with a button beside the text; `step_asked` follows a click on it.
    void add_with_step(Mark mark, const QString& text, const QString& step);
    /// Good news, in the place of all that stood there: leaves by itself, but not from under pointer or focus.
    void tell(const QString& text);
    void clear();
    /// Of these lines; the others stay.
    void take_away(const QStringList& lines);
    [[nodiscard]] QString text() const { return lines_.join(QLatin1Char('\n')); }
    /// For tests: how long good news stays.
    void set_stay_ms(int ms) { leave_.setInterval(ms); }

   Q_SIGNALS:
    void step_asked();

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

   private:
    void show_lines(Mark mark);
    void show_text();
    void place();
    void place_soon();
    void leave_unless_read();

    QLabel* sign_ = nullptr;
    QLabel* text_ = nullptr;
    QPushButton* step_ = nullptr;
    QPushButton* close_ = nullptr;
    QShortcut* reach_ = nullptr;
    QStringList lines_;
    QMargins margins_;
    QTimer leave_;
    bool over_ = false;
    bool told_ = false;  ///< what stands there is good news
    bool waiting_ = false;
};

}  // namespace wg::ui
