#include "ui/window/file_drops.h"

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QUrl>
#include <QWidget>

namespace wg::ui {

FileDrops::FileDrops(QWidget& window, QObject* parent) : QObject(parent), window_(window) {
    window_.setAcceptDrops(true);
    QCoreApplication::instance()->installEventFilter(this);
}

QStringList FileDrops::files_in(const QMimeData* data) {
    QStringList out;
    if (data == nullptr || !data->hasUrls()) return out;
    const QList<QUrl> urls = data->urls();
    for (const QUrl& url : urls)
        if (url.isLocalFile()) out << url.toLocalFile();
    return out;
}

bool FileDrops::eventFilter(QObject* watched, QEvent* event) {
    const QEvent::Type type = event->type();
    if (type != QEvent::DragEnter && type != QEvent::DragMove && type != QEvent::Drop) return false;
    const auto* widget = qobject_cast<QWidget*>(watched);
    // A dialog that waits for an answer is not to be run over.
    if (widget == nullptr || widget->window() != &window_ || QApplication::activeModalWidget() != nullptr) return false;
    auto* drop = static_cast<QDropEvent*>(event);  // the base of all three
    const QStringList files = files_in(drop->mimeData());
    if (files.isEmpty()) return false;
    drop->setDropAction(Qt::CopyAction);
    drop->accept();
    if (type == QEvent::Drop)
        QMetaObject::invokeMethod(
            this, [this, files] { Q_EMIT dropped(files); }, Qt::QueuedConnection);
    return true;
}

}  // namespace wg::ui
