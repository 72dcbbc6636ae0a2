#include "app/arguments.h"

#include <QSaveFile>
#include <cmath>
#include <ostream>

#include "app/command_line.h"

namespace wg::app {

int bad_usage(std::ostream& err, const QString& what) {
    err << "warmgable: " << what.toStdString() << "\nSee 'warmgable --help'.\n";
    return exit_bad_usage;
}

int bad_input(std::ostream& err, const std::vector<Problem>& problems) {
    for (const Problem& problem : problems)
        err << problem.text() << '\n';
    return exit_bad_input;
}

bool Arguments::parse(const QStringList& arguments, QStringList& positional, QString& error) {
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    if (!parser.parse(QStringList{QStringLiteral("warmgable")} + arguments)) {
        error = parser.errorText();
        return false;
    }
    positional = parser.positionalArguments();
    return true;
}

Result<double> number_option(const QCommandLineParser& parser, const QString& name, double low, double high,
                             const std::string& remedy) {
    const QString text = parser.value(name);
    bool ok = false;
    const double value = text.toDouble(&ok);
    if (!ok || !std::isfinite(value) || value < low || value > high) {
        return Problem{"--" + name.toStdString(),
                       "'" + text.toStdString() + "' is not a number from " + QString::number(low).toStdString() +
                           " to " + QString::number(high).toStdString(),
                       remedy};
    }
    return value;
}

bool write_file(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write(content.data(), static_cast<qint64>(content.size())) != static_cast<qint64>(content.size()) ||
        !file.commit()) {
        err << path.toStdString() << ": cannot be written: " << file.errorString().toStdString()
            << ". Choose another folder with --out\n";
        return false;
    }
    return true;
}

}  // namespace wg::app
