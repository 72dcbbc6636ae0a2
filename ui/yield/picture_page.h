#pragma once
// A page with a painted picture and words below; the keyboard reaches what the pointer does.

#include "ui/drawing/picture_view.h"
#include "ui/yield/yield_page.h"

class QLabel;
class QVBoxLayout;

namespace wg::plan {
struct Plan;
}

namespace wg::ui {

class PicturePage : public YieldPage {
    Q_OBJECT
   public:
    explicit PicturePage(QWidget* parent = nullptr);
    [[nodiscard]] bool has_picture() const override { return view_->has_picture(); }
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] PictureView& view() { return *view_; }

   protected:
    [[nodiscard]] const PictureView& view() const { return *view_; }
    /// Rows above the picture, for controls of the page.
    [[nodiscard]] QVBoxLayout& column() { return *column_; }
    /// The words that follow are about figures from before the last edit.
    void set_carried(bool carried) { carried_ = carried; }
    void set_words(const QString& text);
    /// No picture, and why in its place.
    void show_reason(const QString& reason);
    /// Line below a saved picture: what it is and of which job.
    [[nodiscard]] virtual QString caption() const { return {}; }

   private:
    PictureView* view_ = nullptr;
    QLabel* words_ = nullptr;
    QVBoxLayout* column_ = nullptr;
    bool carried_ = false;
};

/// "What: number and title of the job, choice. Weather." for a caption.
[[nodiscard]] QString caption_of(const QString& what, const plan::Plan& plan);
/// Plain number for a figures file.
[[nodiscard]] QString cell_number(double value, int decimals);

}  // namespace wg::ui
