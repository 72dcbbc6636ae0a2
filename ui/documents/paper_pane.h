#pragma once
// One paper on screen with what can be done with it: turn pages, zoom, save as PDF, print.

#include <QWidget>
#include <functional>
#include <memory>
#include <vector>

#include "ui/documents/documents.h"

class QLabel;
class QPushButton;
class QToolButton;

namespace wg::ui {

class FlowLayout;
class LookButton;
class PageView;

class PaperPane : public QWidget {
    Q_OBJECT
   public:
    PaperPane(Paper paper, QWidget* parent = nullptr);

    void set_input(std::shared_ptr<const PaperInput> input);
    [[nodiscard]] const std::shared_ptr<const PaperInput>& input() const { return input_; }
    /// False while figures are still being worked out: what is saved or printed must belong to the job as it stands.
    void set_ready(bool ready, const QString& why_not = {});
    [[nodiscard]] PageView& view() { return *view_; }
    /// A button that shows another paper of the same input in its place; saving and printing are of what is shown.
    void offer_also(Paper other);
    /// The same for more papers than a row has room for: one button with a list, which says what is on screen.
    void offer_in_list(const std::vector<Paper>& others);
    [[nodiscard]] QToolButton* list_button() const { return list_; }
    [[nodiscard]] Paper shown() const { return shown_; }
    [[nodiscard]] LookButton& look_button() { return *look_; }
    /// How papers look; what the input says of it is replaced. Set from outside without a signal.
    void set_look(const PaperLook& look);
    [[nodiscard]] const PaperLook& look() const;
    /// More buttons of the stage, right of those for the paper.
    void add_button(QPushButton* button);

    /// Writes the PDF; what went wrong is told by `failed` and stays on screen there.
    bool save_to(const QString& path);

   Q_SIGNALS:
    void look_changed(const wg::ui::PaperLook& look);  ///< by hand
    void saved(const QString& path);
    void failed(const QString& text);

   private:
    void ask_and_save();
    void ask_and_print();
    void refresh_words();
    void show_paper(Paper paper);

    Paper paper_;  ///< the pane's own
    Paper shown_;
    std::vector<QToolButton*> others_;  ///< of papers that stand in its place when asked for
    QToolButton* list_ = nullptr;       ///< null: none
    std::shared_ptr<const PaperInput> input_;
    bool ready_ = true;
    QString why_not_;
    PageView* view_ = nullptr;
    QLabel* page_words_ = nullptr;
    QLabel* zoom_words_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
    LookButton* look_ = nullptr;
    FlowLayout* tools_ = nullptr;
};

}  // namespace wg::ui
