#include "ui/common/whole_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace wg::ui {

Result<std::string> read_whole(const QString& path, std::size_t most) {
    const std::string shown = QDir::toNativeSeparators(path).toStdString();
    if (QFileInfo(path).isDir()) return Problem{shown, "is a folder, not a file", "Choose a file inside it"};
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{shown, "cannot be read: " + file.errorString().toStdString(),
                       "Choose another file or ask for access"};
    const QByteArray bytes = file.read(static_cast<qint64>(most) + 1);
    if (file.error() != QFileDevice::NoError)
        return Problem{shown, "cannot be read: " + file.errorString().toStdString(), "Try again"};
    if (static_cast<std::size_t>(bytes.size()) > most)
        return Problem{shown, "is larger than " + std::to_string(most / mebibyte) + " MiB",
                       "Check that it is the right file"};
    return bytes.toStdString();
}

Result<bool> write_whole(const QString& path, std::string_view bytes) {
    const std::string shown = QDir::toNativeSeparators(path).toStdString();
    // A device or a pipe would be replaced by a file of its name.
    if (const QFileInfo there(path); there.exists() && !there.isFile())
        return Problem{shown, "is a folder or a device, not a file", "Choose another name"};
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes.size());
    if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit()) return true;
    return Problem{shown, "cannot be written: " + file.errorString().toStdString(),
                   "Choose a folder you may write to, with room on its disk"};
}

Result<bool> write_whole(const QString& path, const QByteArray& bytes) {
    return write_whole(path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

}  // namespace wg::ui
