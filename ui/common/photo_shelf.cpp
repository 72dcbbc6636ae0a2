#include "ui/common/photo_shelf.h"

#include <QBuffer>
#include <QFutureWatcher>
#include <QImageReader>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/whole_file.h"

namespace wg::ui {
namespace {

struct Decoded {
    QImage image;
    QSize size;
    QString problem;
};

Decoded decode(QByteArray bytes) {
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    Decoded out;
    QSize size = reader.size();
    if (!size.isValid()) {
        out.problem = QObject::tr("The picture cannot be read: %1").arg(reader.errorString());
        return out;
    }
    // The reader scales before it turns, so scaling goes by the size as stored.
    const int longest = std::max(size.width(), size.height());
    if (longest > PhotoShelf::longest_px) reader.setScaledSize(size * PhotoShelf::longest_px / longest);
    if ((reader.transformation() & QImageIOHandler::TransformationRotate90) != 0) size.transpose();
    out.size = size;
    if (!reader.read(&out.image)) out.problem = QObject::tr("The picture cannot be read: %1").arg(reader.errorString());
    return out;
}

}  // namespace

PhotoShelf::PhotoShelf(Read read, Keep keep, QObject* parent)
    : QObject(parent), read_(std::move(read)), keep_(std::move(keep)) {}

Result<std::string> PhotoShelf::keep_file(const QString& path) {
    const Result<std::string> bytes = read_whole(path);
    if (!bytes) return bytes.problems();
    return keep_(bytes.value());
}

Result<std::string> PhotoShelf::keep_bytes(const QByteArray& bytes) {
    return keep_({bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

QImage PhotoShelf::picture(const std::string& sha256) {
    const auto at = entries_.constFind(qs(sha256));
    if (at == entries_.constEnd()) {
        load(sha256);
        return {};
    }
    return at->image;
}

QSize PhotoShelf::size_of(const std::string& sha256) const {
    return entries_.value(qs(sha256)).size;
}

QString PhotoShelf::problem(const std::string& sha256) const {
    return entries_.value(qs(sha256)).problem;
}

void PhotoShelf::load(const std::string& sha256) {
    const QString key = qs(sha256);
    const Result<std::string> bytes = read_(sha256);
    if (!bytes) {
        entries_.insert(key, {{}, {}, qs(bytes.problems().front().text()), true});
        // Not at once: who asks for a picture is in the middle of painting.
        QMetaObject::invokeMethod(
            this, [this, key] { Q_EMIT loaded(key); }, Qt::QueuedConnection);
        return;
    }
    entries_.insert(key, {});
    auto* watcher = new QFutureWatcher<Decoded>(this);
    connect(watcher, &QFutureWatcher<Decoded>::finished, this, [this, watcher, key] {
        const Decoded decoded = watcher->result();
        watcher->deleteLater();
        entries_.insert(key, {decoded.image, decoded.size, decoded.problem, true});
        Q_EMIT loaded(key);
    });
    watcher->setFuture(
        QtConcurrent::run(decode, QByteArray(bytes.value().data(), static_cast<qsizetype>(bytes.value().size()))));
}

}  // namespace wg::ui
