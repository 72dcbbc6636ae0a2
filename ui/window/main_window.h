#pragma once
// The program's window: the desk, or one open job. Puts the parts together and routes what the user asks for.

#include <QMainWindow>
#include <QUndoGroup>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "core/plan/reference.h"
#include "core/store/store.h"
#include "core/store/travel.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/documents/documents.h"
#include "ui/window/copies_dialog.h"
#include "ui/window/firm_equipment.h"
#include "ui/window/firm_prices.h"
#include "ui/window/firm_rules.h"

class QActionGroup;
class QStackedWidget;

namespace wg::ui {

class AftercareKeeper;
class AutoSaver;
class DeskPage;
class JobPage;
class NoticeBar;

class MainWindow : public QMainWindow {
    Q_OBJECT
   public:
    MainWindow(std::unique_ptr<store::Store> store, std::shared_ptr<const plan::Reference> reference,
               QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Files of the rule sets that come with the program, for the desk's page of them.
    void set_program_rules(std::vector<std::string> files);

    /// A job from a file's text. Problems are shown whole; a job that the desk knows with other content asks which of
    /// the two to go on with. True: a job is open now.
    bool open_job_text(const std::string& text, const std::string& file_name);
    /// A job file, or one that came from another machine (docs/exchange-format.md): that is put together with what the
    /// desk has. True: a job is open now.
    bool open_job_file(const QString& path);
    /// The open job, saved first, with its photographs and quotes.
    bool export_job_to(const QString& path);
    /// A job of the desk.
    bool open_job(const std::string& job_id);
    void show_stage(int stage);
    [[nodiscard]] JobSession* session() { return session_.get(); }

    /// Reads a weather file into the firm's library and plans the open job with it, as an edit that can be undone;
    /// false when it was refused.
    bool plan_with_file(const QString& path);

    /// Files that were let fall on the window, one after the other: each is told by what it holds, not by its name, and
    /// does what File, Open or the import of its kind would do.
    void take_files(const QStringList& paths);

    /// Makes today's backup of a store in a file when there is none, in a thread of its own; only a failure is told.
    void keep_daily_backup();

   protected:
    void closeEvent(QCloseEvent* event) override;

   private:
    void make_file_menu();
    void make_edit_menu();
    void make_view_menu();
    void make_equipment_menu();
    void make_help_menu();
    void start_job();
    void start_job_for(const std::string& customer_id);
    void open_file();
    void save();
    void save_file_as();
    void export_job();
    void show_history();
    /// As an edit that can be undone; record, number and bookkeeping stay as they are.
    void bring_back(Job earlier);
    // Copies of the open job.
    void show_taken(store::Taken taken, const std::string& from);
    void show_copies(CopiesDialog::Content content);
    void show_open_fields();
    void tell_open_fields();
    void decide(const std::vector<std::pair<std::string, std::size_t>>& sides);
    /// Whether a save is refused since somebody else saved.
    [[nodiscard]] bool saved_elsewhere() const;
    void put_together();
    void save_together(const merge::Merged& both, const std::vector<std::pair<std::string, std::size_t>>& sides);
    /// The weather year of the open job, and others to choose from.
    void show_weather();
    /// A built-in climate or a year of the library, as an edit that can be undone.
    void plan_with_weather(const std::string& weather_id);
    void choose_weather_file();
    /// One dropped file; what came of it, in words.
    QString take_file(const QString& path);
    QString take_weather(const QString& path);
    bool desk_on_screen();
    /// The rating test, first of the set on screen.
    void show_rating();
    /// Takes over what the store has of the firm's prices, rules and equipment; what is wrong with some of it, in
    /// words.
    QString take_firms_own();
    /// Reference data for a job, with the firm's own and its year from the library. `caution` says what is missing.
    std::shared_ptr<const plan::Reference> reference_for(const Job& job, QString& caution);
    /// True when the job page may be left: saved, or the user says to go without.
    bool leave_job();
    void back_to_desk();
    void show_customer_of_job();
    /// True when nothing that was entered under Equipment is lost by closing, or the user says to go without.
    bool leave_equipment();
    void make_job_page();
    void show_session(Job job);
    void bring_back_unsaved();
    bool settle_incoming(Job& from_file);
    /// Which of the two to go on with: true for the file's; nullopt: neither.
    std::optional<bool> ask_which(const Job& on_desk, const Job& in_file);
    /// Saves and takes over revision and time; says what is wrong when the store refuses.
    bool put_on_desk(Job& job);
    void ask_for_paper(Paper paper);
    void show_paper_when_settled();
    void set_theme(ThemeKind kind);
    void refresh_actions();
    void refresh_saved();
    /// Of the page on screen.
    [[nodiscard]] NoticeBar& notice();

    std::unique_ptr<store::Store> store_;
    FirmPrices prices_;
    FirmRules rules_;
    FirmEquipment equipment_;
    std::shared_ptr<const plan::Reference> reference_;  ///< with the firm's own
    std::unique_ptr<JobSession> session_;
    QUndoGroup undo_group_;
    AutoSaver* saver_ = nullptr;
    AftercareKeeper* aftercare_ = nullptr;
    QStackedWidget* pages_ = nullptr;
    DeskPage* desk_ = nullptr;
    JobPage* job_page_ = nullptr;  ///< null until a job is opened
    QList<QAction*> need_job_;
    QActionGroup* themes_ = nullptr;
    std::optional<Paper> wanted_paper_;
    std::function<void()> next_step_;  ///< behind the button of the notice on screen
};

}  // namespace wg::ui
