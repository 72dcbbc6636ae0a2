#pragma once
// Weather years to choose from, the nearest to the site first, with a search.

#include <QString>
#include <QWidget>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QLineEdit;
class QTableWidget;

namespace wg::ui {

struct WeatherPlace {
    std::string climate_id;  ///< empty: a file
    QString path;            ///< of the file
    QString label;
    double distance_km = 0.0;
    std::optional<double> higher_m;  ///< than the site; negative: lower
    QString caution;                 ///< empty when near
    bool in_use = false;             ///< the job is planned with it now
};

class PlaceList : public QWidget {
    Q_OBJECT
   public:
    explicit PlaceList(QWidget* parent = nullptr);
    /// In the order to be shown. Selects the one in use, else the first.
    void set_places(std::vector<WeatherPlace> places);
    /// Puts one in front and selects it.
    void add_first(WeatherPlace place);
    void select(int place);
    [[nodiscard]] const WeatherPlace* selected() const;
    [[nodiscard]] const std::vector<WeatherPlace>& places() const { return places_; }
    void search(const QString& text);

   Q_SIGNALS:
    void selection_changed();

   private:
    void fill();
    void filter();

    std::vector<WeatherPlace> places_;
    QLineEdit* search_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* count_ = nullptr;
};

/// "12 km", under 10 km "4.2 km", "at the site" within 100 m.
[[nodiscard]] QString distance_words(double distance_km);
/// "40 m higher", "120 m lower", "same height"; empty when not known.
[[nodiscard]] QString height_words(std::optional<double> higher_m);

}  // namespace wg::ui
