#include "ui/window/file_kind.h"

#include <QByteArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "core/weather/read.h"

namespace wg::ui {
namespace {

bool holds(const QJsonObject& object, std::initializer_list<const char*> keys) {
    for (const char* key : keys)
        if (!object.contains(QLatin1String(key))) return false;
    return true;
}

FileKind kind_of_object(const QJsonObject& object) {
    if (object.value(QLatin1String("format")).toString() == QLatin1String("warmgable-job")) return FileKind::job;
    if (holds(object, {"actions", "tax"})) return FileKind::rules;
    if (holds(object, {"currency", "items"})) return FileKind::prices;
    for (const char* kind : {"collectors", "blocks", "cylinders", "fixing_methods"})
        if (object.value(QLatin1String(kind)).isArray()) return FileKind::equipment;
    return FileKind::unknown;
}

}  // namespace

FileKind kind_of_file(std::string_view bytes) {
    if (bytes.substr(0, 4) == std::string_view("PK\x03\x04", 4)) return FileKind::exchange;
    const std::size_t first = bytes.find_first_not_of(" \t\r\n");
    if (first != std::string_view::npos && bytes[first] == '{') {
        const QJsonDocument document =
            QJsonDocument::fromJson(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())));
        return document.isObject() ? kind_of_object(document.object()) : FileKind::unknown;
    }
    return weather::begins_as_year(bytes) ? FileKind::weather : FileKind::unknown;
}

}  // namespace wg::ui
