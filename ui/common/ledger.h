#pragma once
// The ledger beside every stage: live figures of the current choice, each a button that opens its working.

#include <QAbstractButton>
#include <QPointer>
#include <QWidget>
#include <vector>

#include "ui/common/ledger_lines.h"

class QLabel;

namespace wg::ui {

class JobSession;

/// One figure: title and value above, range, 'show working' and difference below.
class LedgerRow : public QAbstractButton {
    Q_OBJECT
   public:
    explicit LedgerRow(QWidget* parent = nullptr);
    void set_line(const LedgerLine& line);
    [[nodiscard]] const LedgerLine& line() const { return line_; }
    [[nodiscard]] QSize sizeHint() const override;

   protected:
    void paintEvent(QPaintEvent* event) override;

   private:
    LedgerLine line_;
};

class Ledger : public QWidget {
    Q_OBJECT
   public:
    explicit Ledger(QWidget* parent = nullptr);
    void set_session(JobSession* session);

    /// Key of the working of the row that has the focus; empty: none has.
    [[nodiscard]] QString focused_key() const;

   Q_SIGNALS:
    void working_asked(const QString& key);

   private:
    void refresh();

    QPointer<JobSession> session_;
    std::vector<LedgerRow*> rows_;
    QLabel* state_ = nullptr;
};

}  // namespace wg::ui
