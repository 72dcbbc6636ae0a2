#pragma once
// Saves the open job to the store a second after the last edit, and keeps what is not saved yet every quarter of a
// second while edits go on.

#include <QDateTime>
#include <QObject>
#include <QPointer>
#include <QTimer>

#include "core/store/store.h"

namespace wg::ui {

class EditKeeper;
class JobSession;

class AutoSaver : public QObject {
    Q_OBJECT
   public:
    /// The store must outlive the saver.
    explicit AutoSaver(store::Store& store, QObject* parent = nullptr);
    void set_session(JobSession* session);
    /// Saves at once when there is something to save. True: nothing is left unsaved.
    bool save_now();
    /// How long after a save that was refused it is made again: a server may be back, a disk have room.
    void set_again_ms(int ms) { again_ms_ = ms; }
    /// The last successful save of this session; invalid: none yet.
    [[nodiscard]] QDateTime saved_at() const { return saved_at_; }
    /// What kept the last try from saving; empty: it worked.
    [[nodiscard]] QString problem() const { return problem_; }

   Q_SIGNALS:
    void saved(bool after_failure);
    void failed(const QString& text);
    void not_kept(const QString& text);  ///< edits are safe only once they are saved

   private:
    store::Store& store_;
    QPointer<JobSession> session_;
    EditKeeper* keeper_ = nullptr;
    QTimer delay_;
    QTimer keep_delay_;
    int again_ms_ = 5000;
    QDateTime saved_at_;
    QString problem_;
};

}  // namespace wg::ui
