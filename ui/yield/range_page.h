#pragma once
// What the yearly figures are worth: their range over many drawn years, and which input makes it.

#include <QPointer>
#include <memory>
#include <optional>
#include <string>

#include "core/plan/study.h"
#include "ui/drawing/tornado_painter.h"
#include "ui/yield/yield_page.h"

class QComboBox;
class QLabel;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class BackgroundTask;
class EmptyPane;
class JobSession;
class PictureView;
class TaskRow;

class RangePage : public YieldPage {
    Q_OBJECT
   public:
    explicit RangePage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// After any change of job, choice or plan: figures of another state are marked so.
    void refresh();
    void start();
    [[nodiscard]] BackgroundTask* task() const { return task_; }

    /// A finished study of the session's job as it stands, as if it had just been worked out.
    void show_study(const plan::Study& study);
    [[nodiscard]] const std::optional<plan::Study>& study() const { return study_; }
    [[nodiscard]] bool outdated() const;
    void show_measure(plan::Measure measure);
    [[nodiscard]] bool shows_empty_pane() const;
    [[nodiscard]] QTableWidget* table() const { return table_; }

    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] const TornadoPicture& picture() const { return picture_; }

   private:
    void build();
    void fill_table();
    void fill_picture();
    void fill_words();
    void fill_state();
    [[nodiscard]] std::string state_key() const;

    QPointer<JobSession> session_;
    BackgroundTask* task_ = nullptr;
    TaskRow* row_ = nullptr;
    QComboBox* measures_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    PictureView* view_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* words_ = nullptr;
    std::optional<plan::Study> study_;
    std::string key_;  ///< of the state that the study belongs to
    QString problem_;
    TornadoPicture picture_;
};

}  // namespace wg::ui
