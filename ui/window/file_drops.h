#pragma once
// Files let fall anywhere on a window. Fields under the pointer would take them for text, so that it is looked for
// before they see them.

#include <QObject>
#include <QStringList>

class QMimeData;
class QWidget;

namespace wg::ui {

class FileDrops : public QObject {
    Q_OBJECT
   public:
    /// `window` must outlive it.
    explicit FileDrops(QWidget& window, QObject* parent = nullptr);
    /// Files of this machine among what is dragged.
    [[nodiscard]] static QStringList files_in(const QMimeData* data);

   Q_SIGNALS:
    /// Later than the drop itself, so that whoever dragged the files is not kept waiting.
    void dropped(const QStringList& paths);

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    QWidget& window_;
};

}  // namespace wg::ui
