#pragma once
// What the commands share: reading arguments, telling what is wrong, writing a file.

#include <QCommandLineParser>
#include <QString>
#include <QStringList>
#include <iosfwd>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg::app {

/// Says it and gives exit_bad_usage.
[[nodiscard]] int bad_usage(std::ostream& err, const QString& what);
/// Says them and gives exit_bad_input.
[[nodiscard]] int bad_input(std::ostream& err, const std::vector<Problem>& problems);

/// One command's arguments: options with a value, flags, and the rest.
struct Arguments {
    QCommandLineParser parser;
    bool parse(const QStringList& arguments, QStringList& positional, QString& error);
    void value_option(const QString& name) { parser.addOption({name, QString(), name}); }
    void flag(const QString& name) { parser.addOption(QCommandLineOption(name)); }
};

/// A number of the command line within a range, or a problem that names the option.
[[nodiscard]] Result<double> number_option(
    const QCommandLineParser& parser, const QString& name, double low, double high,
    const std::string& remedy = "Give decimal degrees or metres with a point, e.g. 47.4");

/// False when it cannot be written, which is said.
[[nodiscard]] bool write_file(const QString& path, const std::string& content, std::ostream& err);

}  // namespace wg::app
