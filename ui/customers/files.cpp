#include "ui/customers/files.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace wg::ui {
namespace {

constexpr qint64 most_file_bytes = qint64{64} << 20;

}  // namespace

Result<std::string> bytes_of_file(const QString& path) {
    const std::string name = QFileInfo(path).fileName().toStdString();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{name, file.errorString().toStdString(), "Check that the file may be read"};
    if (file.size() > most_file_bytes) return Problem{name, "is longer than 64 MB", "Split it into parts"};
    const QByteArray bytes = file.read(most_file_bytes + 1);
    if (file.error() != QFileDevice::NoError)
        return Problem{name, file.errorString().toStdString(), "Check that the file may be read"};
    return bytes.toStdString();
}

Result<bool> write_file_whole(const QString& path, std::string_view bytes) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes.size());
    if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit()) return true;
    return Problem{path.toStdString(), "cannot be written: " + file.errorString().toStdString(),
                   "Choose a folder you may write to"};
}

}  // namespace wg::ui
