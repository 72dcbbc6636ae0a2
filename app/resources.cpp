#include "app/resources.h"

#include <QFile>
#include <QFileInfo>

namespace wg::app {
namespace {

constexpr qint64 largest_file_bytes = 64LL * 1024 * 1024;

}  // namespace

std::optional<std::string> resource_text(const std::string& path) {
    QFile file(QStringLiteral(":/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll().toStdString();
}

Result<std::string> file_text(const std::string& path) {
    const QString name = QString::fromStdString(path);
    const QFileInfo info(name);
    if (!info.exists()) return Problem{path, "there is no such file", "Check the name and the folder"};
    if (info.isDir()) return Problem{path, "this is a folder, not a file", "Name a file inside it"};
    if (info.size() > largest_file_bytes) {
        return Problem{path, "the file holds " + std::to_string(info.size() / (1024 * 1024)) + " MiB, more than 64 MiB",
                       "Check that it is the right file"};
    }
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return Problem{path, "cannot be read: " + file.errorString().toStdString(), "Check the rights on the file"};
    }
    return file.readAll().toStdString();
}

Result<plan::Reference> built_in_reference() {
    return plan::load_reference(resource_text);
}

}  // namespace wg::app
