// Starts the program: a command without a window, or the window.

#include <QApplication>
#include <QDateTime>
#include <QFileInfo>
#include <QGuiApplication>
#include <QIcon>
#include <QMessageBox>
#include <QThread>
#include <QTimer>
#include <clocale>
#include <future>
#include <iostream>
#include <memory>

#include "app/command_line.h"
#include "app/resources.h"
#include "app/store_command.h"
#include "core/store/store.h"
#include "ui/common/opened_papers.h"
#include "ui/common/theme.h"
#include "ui/window/main_window.h"

namespace {

using namespace wg;

constexpr int first_paint_ms = 3000;

/// Qt takes the machine's locale for the C library too; files and prints need points in numbers, whatever the locale.
void keep_points_in_numbers() {
    std::setlocale(LC_NUMERIC, "C");
}

/// A machine without a login session has no runtime folder; Qt says so at every start, and nothing here needs one.
void leave_out_runtime_folder(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (message.startsWith(QLatin1String("QStandardPaths: XDG_RUNTIME_DIR"))) return;
    std::cerr << qFormatLogMessage(type, context, message).toStdString() << '\n';
}

int run_without_window(int argc, char** argv, const QStringList& arguments) {
    // PDF lettering needs fonts, fonts need a platform; the offscreen one works with and without a display.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    keep_points_in_numbers();
    return app::run_command(arguments, std::cout, std::cerr);
}

struct WindowArguments {
    bool demo = false;
    QString store_path;
    QString job_path;
    QString wrong;
};

WindowArguments read_window_arguments(const QStringList& arguments) {
    WindowArguments read;
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString& argument = arguments[i];
        if (argument == QLatin1String("--demo")) {
            read.demo = true;
        } else if (argument == QLatin1String("--store") && i + 1 < arguments.size()) {
            read.store_path = arguments[++i];
        } else if (!argument.startsWith(QLatin1Char('-')) && read.job_path.isEmpty()) {
            read.job_path = argument;
        } else {
            read.wrong = argument;
        }
    }
    return read;
}

int cannot_start(const std::vector<Problem>& problems) {
    const QString words = QString::fromStdString(text_of(problems));
    std::cerr << words.toStdString() << '\n';
    QMessageBox box(QMessageBox::Critical, QStringLiteral("Warmgable"), words);
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    box.exec();
    return app::exit_bad_input;
}

int run_window(int argc, char** argv, const QStringList& arguments) {
    // Read while fonts and theme are loaded.
    // Qt takes the first thread that touches it for the main one; were it the reader's, the window would get no events.
    static_cast<void>(QThread::currentThread());
    auto reading = std::async(std::launch::async, [] { return app::built_in_reference(); });
    QApplication application(argc, argv);
    keep_points_in_numbers();
    QApplication::setApplicationName(QStringLiteral("Warmgable"));
    QApplication::setApplicationVersion(QStringLiteral(WG_VERSION));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/warmgable.svg")));
    ui::apply_theme(application, ui::ThemeKind::light);

    const WindowArguments given = read_window_arguments(arguments);
    if (!given.wrong.isEmpty()) {
        std::cerr << "warmgable: unknown argument '" << given.wrong.toStdString() << "'\nSee 'warmgable --help'.\n";
        return app::exit_bad_usage;
    }
    const QString store_path = given.store_path.isEmpty() ? app::usual_store_path() : given.store_path;
    const Instant now{QDateTime::currentSecsSinceEpoch()};
    auto store = store::Store::open_place(store_path.toStdString(), now, app::seat_name());
    if (!store) return cannot_start(store.problems());
    auto reference = reading.get();
    if (!reference) return cannot_start(reference.problems());

    ui::MainWindow window(std::move(store).value(),
                          std::make_shared<const plan::Reference>(std::move(reference).value()));
    window.set_program_rules(app::built_in_rules());
    window.show();
    if (given.demo) {
        window.open_job_text(*app::resource_text("demo/job.json"), "demo/job.json");
    } else if (!given.job_path.isEmpty()) {
        if (!QFileInfo(given.job_path).isFile())
            return cannot_start(
                {{given.job_path.toStdString(), "there is no such file", "Check the name and the folder"}});
        window.open_job_file(given.job_path);
    }
    constexpr int copies_stay_days = 1;
    // Once the window stands and has been painted.
    QTimer::singleShot(first_paint_ms, &window,
                       [] { ui::remove_opened_papers(QDateTime::currentDateTime().addDays(-copies_stay_days)); });
    QTimer::singleShot(first_paint_ms, &window, &ui::MainWindow::keep_daily_backup);
    return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
    qInstallMessageHandler(leave_out_runtime_folder);
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments.append(QString::fromLocal8Bit(argv[i]));
    if (app::is_command(arguments)) return run_without_window(argc, argv, arguments);
    return run_window(argc, argv, arguments);
}
