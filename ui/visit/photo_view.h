#pragma once
// A photograph at large with its arrows and words on top; they are drawn over it, never into it.

#include <QImage>
#include <QPointF>
#include <QRectF>
#include <QWidget>
#include <string>

#include "core/job/job.h"

namespace wg::ui {

class JobSession;
class PhotoShelf;

/// Arrows and words of a photograph, into the box the picture fills.
void paint_marks(QPainter& painter, const std::vector<PhotoMark>& marks, const QRectF& box, double text_units,
                 const std::string& selected_id);

class PhotoView : public QWidget {
    Q_OBJECT
   public:
    enum class Hand { choose, arrow, text };
    explicit PhotoView(QWidget* parent = nullptr);

    void set_shelf(PhotoShelf* shelf);
    void show_photograph(JobSession* session, const std::string& photograph_id);
    void set_hand(Hand hand);
    /// What the text hand writes.
    void set_words(const QString& words) { words_ = words; }
    [[nodiscard]] Hand hand() const { return hand_; }
    [[nodiscard]] const std::string& selected_mark() const { return selected_; }
    [[nodiscard]] QRectF picture_box() const;

   Q_SIGNALS:
    void status(const QString& text);
    void words_wanted();  ///< the text hand was used with nothing to write

   protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;

   private:
    [[nodiscard]] const Photograph* photograph() const;
    [[nodiscard]] Point2 share_at(QPointF at) const;
    [[nodiscard]] const PhotoMark* mark_near(QPointF at) const;
    [[nodiscard]] const PhotoMark* chosen() const;
    void move_chosen(double dx, double dy);
    void put(Point2 tail, Point2 tip);

    JobSession* session_ = nullptr;
    PhotoShelf* shelf_ = nullptr;
    std::string id_, selected_;
    Hand hand_ = Hand::choose;
    QString words_;
    bool pressed_ = false;
    Point2 from_, to_;
};

}  // namespace wg::ui
