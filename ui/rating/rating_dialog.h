#pragma once
// The rating test of a set and its fit to a data sheet, beside any job.

#include <QDialog>
#include <memory>

#include "core/plan/reference.h"
#include "ui/rating/set_chooser.h"

class QLabel;
class QTabWidget;

namespace wg::ui {

class FitPage;
class NoticeBar;
class TestPage;

class RatingDialog : public QDialog {
    Q_OBJECT
   public:
    RatingDialog(std::shared_ptr<const plan::Reference> reference, const RatingSet& first, QWidget* parent = nullptr);

    /// Puts an equipment file's items beside the catalogue's, for as long as the dialog is open.
    bool add_equipment(const QString& path);
    [[nodiscard]] SetChooser& chooser() { return *chooser_; }
    [[nodiscard]] TestPage& test_page() { return *test_; }
    [[nodiscard]] FitPage& fit_page() { return *fit_; }
    [[nodiscard]] NoticeBar& notice() { return *notice_; }

   private:
    void say(bool well, const QString& words);
    void set_changed();
    void ask_equipment();

    SetChooser* chooser_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QTabWidget* pages_ = nullptr;
    TestPage* test_ = nullptr;
    FitPage* fit_ = nullptr;
    QLabel* invented_ = nullptr;
};

}  // namespace wg::ui
