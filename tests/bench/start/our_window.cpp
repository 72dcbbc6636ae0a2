// The program as app/main.cpp starts it, up to its window's first paint: store, reference data, theme, desk.

#include <QApplication>
#include <QDateTime>
#include <clocale>
#include <cstdio>
#include <future>
#include <memory>

#include "app/resources.h"
#include "core/store/store.h"
#include "tests/bench/start/end_at_first_paint.h"
#include "ui/common/theme.h"
#include "ui/window/main_window.h"

int main(int argc, char** argv) {
    auto reading = std::async(std::launch::async, [] { return wg::app::built_in_reference(); });
    QApplication application(argc, argv);
    std::setlocale(LC_NUMERIC, "C");
    if (argc != 2) {
        std::fputs("our_window STORE\n", stderr);
        return 2;
    }
    wg::ui::apply_theme(application, wg::ui::ThemeKind::light);
    auto store = wg::store::Store::open(argv[1], wg::Instant{QDateTime::currentSecsSinceEpoch()});
    auto reference = reading.get();
    if (!store || !reference) {
        std::fputs(wg::text_of(store ? reference.problems() : store.problems()).c_str(), stderr);
        return 1;
    }
    wg::ui::MainWindow window(std::move(store).value(),
                              std::make_shared<const wg::plan::Reference>(std::move(reference).value()));
    wg::bench::end_at_first_paint(window);
    window.show();
    return QApplication::exec();
}
