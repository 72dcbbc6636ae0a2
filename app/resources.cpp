#include "app/resources.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

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

std::vector<std::string> built_in_rules() {
    std::vector<std::string> out;
    const QJsonDocument index =
        QJsonDocument::fromJson(QByteArray::fromStdString(resource_text("index.json").value_or("")));
    for (const QJsonValue name : index.object().value(QLatin1String("rules")).toArray()) {
        if (std::optional<std::string> text = resource_text(name.toString().toStdString()))
            out.push_back(std::move(*text));
    }
    return out;
}

}  // namespace wg::app
