#pragma once
// Pages on screen, painted from the same layout that is printed: sharp at every zoom.

#include <QAbstractScrollArea>
#include <QPixmap>
#include <vector>

#include "ui/documents/sheet.h"

namespace wg::ui {

class PageView : public QAbstractScrollArea {
    Q_OBJECT
   public:
    explicit PageView(QWidget* parent = nullptr);

    void set_pages(std::vector<paper::Page> pages);
    [[nodiscard]] int page_count() const { return static_cast<int>(pages_.size()); }
    [[nodiscard]] int current_page() const;  ///< from 1; 0 without pages
    void go_to_page(int page);
    /// 1.0: as large as on paper on a 96 dpi screen. 0.25..4.
    void set_zoom(double zoom);
    void fit_width();
    [[nodiscard]] double zoom() const { return zoom_; }

   Q_SIGNALS:
    void view_changed();  ///< zoom, page or number of pages

   protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

   private:
    [[nodiscard]] double scale() const;  ///< screen pixels for a page unit
    [[nodiscard]] QSizeF page_size() const;
    [[nodiscard]] double page_step() const;
    void update_bars();
    const QPixmap& picture_of(std::size_t page);

    std::vector<paper::Page> pages_;
    std::vector<QPixmap> pictures_;  ///< of the pages at this zoom; null until seen
    double zoom_ = 1.0;
    bool fitted_ = true;
};

}  // namespace wg::ui
