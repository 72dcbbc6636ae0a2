#include "ui/rating/files.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace wg::ui {
namespace {

constexpr qint64 most_bytes = 16LL * 1024 * 1024;

}  // namespace

Result<std::string> read_small_file(const QString& path) {
    const std::string name = path.toStdString();
    QFile file(path);
    if (QFileInfo(path).isDir()) return Problem{name, "this is a folder, not a file", "Choose a file inside it"};
    if (!file.open(QIODevice::ReadOnly))
        return Problem{name, "cannot be read: " + file.errorString().toStdString(), "Check the name and the rights"};
    const QByteArray text = file.read(most_bytes + 1);
    if (text.size() > most_bytes)
        return Problem{name, "the file is longer than 16 MiB", "Check that it is the right file"};
    return text.toStdString();
}

Result<bool> write_small_file(const QString& path, const std::string& text) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(text.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size || !file.commit())
        return Problem{path.toStdString(), "cannot be written: " + file.errorString().toStdString(),
                       "Choose another folder"};
    return true;
}

}  // namespace wg::ui
