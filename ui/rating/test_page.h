#pragma once
// Page "Test": figures by cycle and air, the course of the heating up, and what was assumed.

#include <QFutureWatcher>
#include <QWidget>
#include <memory>

#include "core/rating/table.h"
#include "ui/drawing/rating_painters.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class PictureView;
class SetChooser;

class TestPage : public QWidget {
    Q_OBJECT
   public:
    explicit TestPage(SetChooser& chooser, QWidget* parent = nullptr);
    ~TestPage() override;

    /// Computes the test of the set as it is chosen now; the newest wins.
    void run();
    [[nodiscard]] bool busy() const { return busy_; }
    /// The last finished table; null while there is none or the set cannot be tested.
    [[nodiscard]] const rating::Table* table() const { return table_ ? &table_->table : nullptr; }
    [[nodiscard]] const HeatUpPicture& picture() const { return picture_; }
    [[nodiscard]] QString words() const;

   Q_SIGNALS:
    void failed(const QString& words);
    void finished();

   private:
    struct Answer {
        rating::Item item;
        rating::Chamber chamber;
        rating::Table table;
        std::vector<Problem> problems;
    };
    void take();
    void show_table();
    void show_picture(int column);
    [[nodiscard]] QString words_at(const QRectF& area, QPointF at, double text_units) const;

    SetChooser& chooser_;
    QFutureWatcher<std::shared_ptr<const Answer>> watcher_;
    std::shared_ptr<const Answer> table_;
    bool busy_ = false;       ///< until the answer is taken over
    bool again_ = false;      ///< something changed while computing
    std::size_t chosen_ = 1;  ///< air of which the power is shown
    HeatUpPicture picture_;
    QTableWidget* figures_ = nullptr;
    PictureView* view_ = nullptr;
    QLabel* pointer_ = nullptr;
    QLabel* assumptions_ = nullptr;
};

/// "7 (6)\u202f°C": dry and wet bulb.
[[nodiscard]] QString air_words(const rating::Air& air);

}  // namespace wg::ui
