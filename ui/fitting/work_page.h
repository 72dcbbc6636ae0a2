#pragma once
// The day's work: its parts in order with how far each is, what the chosen one wants, and the entry of it.

#include <QPointer>
#include <QWidget>
#include <vector>

#include "ui/fitting/reading_form.h"
#include "ui/fitting/work_stages.h"

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace wg::ui {

class FlowLayout;
class JobSession;
class VerdictColumn;

class WorkPage : public QWidget {
    Q_OBJECT
   public:
    explicit WorkPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();
    /// Adds what stands in the form to the record; false when the form refuses it.
    bool add_reading(const QString& taken_at);
    /// Reads the log of a gauge and, when the dialog is accepted, enters what it says; false: refused, said in words.
    bool take_in_log(const QString& path);
    /// The entry of a part: `want` counts as they are listed.
    void open_want(int stage, int want);
    void open_kind(ReadingKind kind);
    void correct(const Reading& reading);
    void show_stage(int stage);
    void set_occasion(Occasion occasion);
    /// More buttons above the list of what the part wants, on those parts that have use for it.
    void add_tool(QPushButton* tool, ReadingKind where);
    [[nodiscard]] Occasion occasion() const;
    [[nodiscard]] ReadingForm& form() { return *form_; }
    [[nodiscard]] QListWidget& stage_list() { return *list_; }
    [[nodiscard]] bool entering() const;
    [[nodiscard]] const std::vector<WorkStage>& stages() const { return stages_; }

   Q_SIGNALS:
    void status_text(const QString& text);
    void working_asked(const QString& key);
    void failed(const QString& text);

   protected:
    void resizeEvent(QResizeEvent* event) override;

   private:
    void make_room();
    QWidget* make_list();
    QWidget* make_part();
    void fill_list();
    void fill_part();
    void say_worst(const WorkStage& stage, const std::vector<commissioning::Assessment>& own);
    [[nodiscard]] QString shown_by(const WorkStage& stage, const std::vector<commissioning::Assessment>& own) const;
    void add_want(int at, const Want& want);
    void after_entry(const Reading& reading);
    /// On the day of the entry, else today.
    [[nodiscard]] QString expected_of(const Want& want, const Reading* entry = nullptr) const;
    [[nodiscard]] std::vector<commissioning::Assessment> assessments() const;

    QPointer<JobSession> session_;
    std::vector<WorkStage> stages_;
    std::vector<Reading> standing_;
    EntryBreaks breaks_;
    std::vector<std::pair<QPushButton*, ReadingKind>> tools_;
    int current_ = 0;
    int opened_want_ = -1;
    QString shown_;  ///< what the part's rows show: rebuilt only when it changes
    QWidget* side_ = nullptr;
    QListWidget* list_ = nullptr;
    QComboBox* occasion_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QLabel* title_ = nullptr;
    QLabel* worst_ = nullptr;
    FlowLayout* tool_row_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    QWidget* wants_ = nullptr;
    QVBoxLayout* column_ = nullptr;
    VerdictColumn* verdicts_ = nullptr;
    ReadingForm* form_ = nullptr;
};

}  // namespace wg::ui
