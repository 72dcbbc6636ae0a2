#pragma once
// How a figure was reached: formula, inputs, result and source of any working of a plan. Not modal, so that it can
// stand open while a collector is dragged.

#include <QDialog>
#include <vector>

#include "core/plan/plan.h"

class QComboBox;
class QTextBrowser;

namespace wg::ui {

/// The working as simple HTML and as plain text for copying.
[[nodiscard]] QString working_html(const Working& working);
[[nodiscard]] QString working_text(const Working& working);

/// The plan's workings, the price build-up as one more ("quote.price"), and of several fixing.worst the worst first.
[[nodiscard]] std::vector<Working> workings_to_show(const plan::Plan& plan);

class WorkingView : public QDialog {
    Q_OBJECT
   public:
    explicit WorkingView(QWidget* parent = nullptr);
    void set_plan(const plan::Plan& plan);
    void show_key(const QString& key);

   private:
    void refresh();
    [[nodiscard]] const Working* shown() const;

    std::vector<Working> workings_;
    QComboBox* choice_ = nullptr;
    QTextBrowser* text_ = nullptr;
};

}  // namespace wg::ui
