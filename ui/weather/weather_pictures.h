#pragma once
// What a weather year looks like: light and temperature hour by hour, its months, clear mornings against clear
// afternoons, hours in doubt, and the report in words.

#include <QString>
#include <QWidget>
#include <memory>

#include "ui/drawing/carpet_painter.h"
#include "ui/weather/year_look.h"

class QButtonGroup;
class QLabel;
class QPlainTextEdit;
class QStackedWidget;

namespace wg::ui {

class PictureView;

class WeatherPictures : public QWidget {
    Q_OBJECT
   public:
    enum class View { light, temperature, months, clear_days, doubts, report };

    explicit WeatherPictures(QWidget* parent = nullptr);
    /// null: nothing to show yet.
    void show_year(const std::shared_ptr<const YearLook>& look);
    void show_view(View view);
    [[nodiscard]] QString words() const;
    [[nodiscard]] const CarpetPicture& carpet() const { return carpet_; }

   private:
    void refresh();
    void show_carpet(const std::vector<double>& values, const QString& unit, double least, double most);
    [[nodiscard]] QString words_at(int hour) const;

    std::shared_ptr<const YearLook> look_;
    CarpetPicture carpet_;
    View shown_ = View::light;
    QButtonGroup* views_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    PictureView* view_ = nullptr;
    QPlainTextEdit* report_ = nullptr;
    QLabel* pointer_ = nullptr;  ///< what the pointer is over
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui
