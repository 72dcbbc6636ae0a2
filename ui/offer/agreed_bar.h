#pragma once
// What was agreed, over the pages of the Offer stage: a job that is priced anew does not change it.

#include <QFrame>
#include <QPointer>
#include <optional>

#include "ui/common/job_session.h"
#include "ui/offer/agreed.h"

class QLabel;
class QPushButton;

namespace wg::ui {

class AgreedBar : public QFrame {
    Q_OBJECT
   public:
    /// null store: nothing is ever agreed. The store must outlive it.
    explicit AgreedBar(store::Store* store, QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// Reads what was agreed again: quotes, answers or papers may be others.
    void reload();
    /// Sets today's price beside it.
    void compare();
    /// Choices that have to be planned for it beside the one on screen.
    [[nodiscard]] std::vector<std::string> wants() const;
    [[nodiscard]] const std::optional<Agreed>& agreed() const { return agreed_; }
    [[nodiscard]] const AgreedWords& words() const { return words_; }

   Q_SIGNALS:
    void problem(const QString& text);

   private:
    void show_words();

    store::Store* store_ = nullptr;
    QPointer<JobSession> session_;
    std::optional<Agreed> agreed_;
    AgreedWords words_;
    QLabel* agreed_line_ = nullptr;
    QLabel* today_line_ = nullptr;
    QPushButton* why_ = nullptr;
    QLabel* causes_ = nullptr;
};

}  // namespace wg::ui
