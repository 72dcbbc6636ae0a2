// The least that a Qt program with a window can be: what start_to_first_paint.py compares ours with.

#include <QApplication>
#include <QLabel>
#include <QMainWindow>

#include "tests/bench/start/end_at_first_paint.h"

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QMainWindow window;
    window.setCentralWidget(new QLabel(QStringLiteral("A window"), &window));
    window.resize(1366, 768);
    wg::bench::end_at_first_paint(window);
    window.show();
    return QApplication::exec();
}
