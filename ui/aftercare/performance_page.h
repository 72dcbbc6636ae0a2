#pragma once
// The client's electricity meter against the model under the weather of the period.

#include <QFutureWatcher>
#include <QPointer>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/aftercare/performance.h"
#include "core/store/store.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class EmptyPane;
class JobSession;

/// The firm's weather years, as the store has them.
struct LibraryYears {
    std::function<std::vector<store::WeatherYearRow>()> list;
    std::function<Result<weather::Year>(const std::string& id)> read;
};

class PerformancePage : public QWidget {
    Q_OBJECT
   public:
    explicit PerformancePage(QWidget* parent = nullptr);
    ~PerformancePage() override;
    void set_library(LibraryYears library);
    void set_session(JobSession* session);
    void refresh();
    /// Works it out in the background.
    void compare();
    [[nodiscard]] bool busy() const { return watcher_.isRunning(); }
    [[nodiscard]] const std::optional<aftercare::PerformanceCheck>& check() const { return check_; }
    [[nodiscard]] QComboBox* period() const { return period_; }
    [[nodiscard]] QComboBox* weather() const { return weather_; }
    [[nodiscard]] QString verdict_words() const;

   private:
    using Answer = std::shared_ptr<Result<aftercare::PerformanceCheck>>;
    QWidget* make_head();
    QWidget* make_result();
    void fill_weather();
    void take();
    void show_check();
    void say(const QString& text);

    LibraryYears library_;
    QPointer<JobSession> session_;
    std::vector<aftercare::Metered> periods_;
    std::optional<aftercare::PerformanceCheck> check_;
    QFutureWatcher<Answer> watcher_;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QComboBox* period_ = nullptr;
    QComboBox* weather_ = nullptr;
    QPushButton* compare_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* mark_ = nullptr;
    QLabel* verdict_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* look_ = nullptr;
    QLabel* basis_ = nullptr;
};

}  // namespace wg::ui
