#pragma once
// Today's backup of the store, made beside the work and told only when it fails.

#include <QObject>
#include <QThread>
#include <string>

namespace wg::ui {

class DailyBackup : public QObject {
    Q_OBJECT
   public:
    /// `place`: of the store that is open. One in memory or on a server gets none: a server is backed up there.
    explicit DailyBackup(std::string place, QObject* parent = nullptr);
    /// A backup that was begun is finished first.
    ~DailyBackup() override;
    void begin();

   Q_SIGNALS:
    void failed(const QString& text);

   private:
    std::string place_;
    QThread* thread_ = nullptr;
};

}  // namespace wg::ui
