// Runs the tests of a window room: GoogleTest with a QApplication on the offscreen platform.

#include <gtest/gtest.h>

#include <QApplication>
#include <clocale>

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    // As app/main.cpp does: numbers are written with points, whatever the machine's locale.
    std::setlocale(LC_NUMERIC, "C");
    return RUN_ALL_TESTS();
}
