#pragma once
// Hands on to the store what a saved job with a settled plan says about later: services due, refrigerant moved.

#include <QObject>
#include <QPointer>

#include "core/store/store.h"

namespace wg::ui {

class JobSession;

class AftercareKeeper : public QObject {
    Q_OBJECT
   public:
    /// The store must outlive the keeper.
    explicit AftercareKeeper(store::Store& store, QObject* parent = nullptr);
    void set_session(JobSession* session);
    /// False while the job is not saved or its plan not settled, or belongs to another choice than the chosen one; and
    /// when the store refuses.
    bool keep_now();

   Q_SIGNALS:
    void failed(const QString& text);

   private:
    store::Store& store_;
    QPointer<JobSession> session_;
    std::string kept_;  ///< content that was handed on last
    QString problem_;
};

}  // namespace wg::ui
