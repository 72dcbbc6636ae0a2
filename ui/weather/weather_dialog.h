#pragma once
// Weather year of a job: which year it is planned with, how good that year is, and which others are near.

#include <QDialog>
#include <QFutureWatcher>
#include <QString>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "ui/weather/place_list.h"
#include "ui/weather/year_look.h"

class QLabel;
class QPushButton;

namespace wg::ui {

class NoticeBar;
class WeatherPictures;

/// A year of the firm's library.
struct KeptYear {
    std::string id;
    std::string label;
    bool invented = false;
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
};

struct WeatherDialogInput {
    Location site;
    std::string climate_id;                               ///< of the job
    std::shared_ptr<const plan::PreparedWeather> in_use;  ///< null: not known yet
    std::shared_ptr<const plan::Reference> reference;     ///< holds the climates
    std::vector<KeptYear> kept;
    /// Gives a kept year by its id.
    std::function<Result<std::shared_ptr<const plan::PreparedWeather>>(const std::string& id)> read_kept;
};

class WeatherDialog : public QDialog {
    Q_OBJECT
   public:
    /// Reads the user's file; refused with line and column when it is no weather year.
    using ReadFile = std::function<Result<std::shared_ptr<const plan::PreparedWeather>>(const QString& path)>;

    WeatherDialog(WeatherDialogInput input, ReadFile read_file, QWidget* parent = nullptr);
    ~WeatherDialog() override;

    /// After the dialog was accepted: one of the two is set.
    [[nodiscard]] const std::string& chosen_climate() const { return chosen_climate_; }
    [[nodiscard]] const QString& chosen_file() const { return chosen_file_; }

    /// Reads a file and puts it first in the list; false when it was refused, which is said in the dialog.
    bool add_file(const QString& path);
    [[nodiscard]] PlaceList& places() { return *places_; }
    [[nodiscard]] WeatherPictures& pictures() { return *pictures_; }
    [[nodiscard]] bool busy() const { return watcher_.isRunning(); }
    [[nodiscard]] QString place_words() const;

   private:
    struct Made {
        std::string key;
        std::shared_ptr<const YearLook> look;
        QString problem;
    };
    QWidget* make_left();
    QWidget* make_right();
    void list_places();
    [[nodiscard]] bool is_kept(const std::string& id) const;
    void show_selected();
    void take();
    void ask_for_file();
    void choose();

    WeatherDialogInput input_;
    ReadFile read_file_;
    PlaceList* places_ = nullptr;
    WeatherPictures* pictures_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QLabel* title_ = nullptr;
    QLabel* place_ = nullptr;
    QLabel* caution_ = nullptr;
    QPushButton* use_ = nullptr;
    std::map<std::string, std::shared_ptr<const plan::PreparedWeather>> files_;  ///< by path
    std::map<std::string, std::shared_ptr<const YearLook>> looks_;               ///< by climate id or path
    QFutureWatcher<Made> watcher_;
    std::string wanted_;  ///< key of the year to be shown
    std::string chosen_climate_;
    QString chosen_file_;
};

}  // namespace wg::ui
