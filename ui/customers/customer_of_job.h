#pragma once
// Which customer a job's client is: the one it is linked with, else one that people choose or that is made of the
// client's words.

#include <QDialog>
#include <string>
#include <vector>

#include "core/store/customers.h"

class QListWidget;
class QPushButton;

namespace wg::ui {

class CustomerOfJobDialog : public QDialog {
    Q_OBJECT
   public:
    /// `likely`: who the client may be (`CustomerBook::likely_of`).
    CustomerOfJobDialog(const Job& job, const std::vector<store::CustomerRow>& likely, QWidget* parent = nullptr);
    /// Id; empty: a new customer.
    [[nodiscard]] std::string chosen() const;
    [[nodiscard]] QListWidget* list() const { return list_; }
    [[nodiscard]] QPushButton* link_button() const { return link_; }

   private:
    QListWidget* list_ = nullptr;
    QPushButton* link_ = nullptr;
};

/// Links the job with this customer; empty: with a new one, made of the client. Its id.
[[nodiscard]] Result<std::string> link_with_customer(store::Store& store, const Job& job,
                                                     const std::string& customer_id, Instant now);
/// Id of the customer that the job is linked with; where there is none it is asked for. Empty: left as it is.
[[nodiscard]] Result<std::string> customer_for(store::Store& store, const std::string& job_id, Instant now,
                                               QWidget* parent);
/// "Customer C-0001" and the like, for what leads there; empty: the job names no client.
[[nodiscard]] QString words_of_customer_step(store::Store& store, const Job& job);

}  // namespace wg::ui
