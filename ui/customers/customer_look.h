#pragma once
// What a customer has with the firm: jobs, issued quotes, parts fitted with their numbers, and jobs that may be theirs.

#include <QWidget>
#include <string>

#include "core/store/customers.h"

class QLabel;
class QTableWidget;
class QVBoxLayout;

namespace wg::ui {

class CustomerLook : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive it.
    explicit CustomerLook(store::Store& store, QWidget* parent = nullptr);
    void show_customer(const std::string& customer_id);  ///< empty: none
    [[nodiscard]] QTableWidget* jobs() const { return jobs_; }
    [[nodiscard]] QTableWidget* quotes() const { return quotes_; }
    [[nodiscard]] QTableWidget* fitted() const { return fitted_; }
    [[nodiscard]] QTableWidget* likely() const { return likely_; }

   Q_SIGNALS:
    void open_asked(const QString& job_id);
    void linked();  ///< or parted: counts in the list changed
    void problem(const QString& text);

   private:
    void fill(const store::CustomerAtOneLook& look);
    void fill_likely();
    void part_selected();
    void link_selected();

    store::Store& store_;
    std::string customer_id_;
    QLabel* words_ = nullptr;
    QTableWidget* jobs_ = nullptr;
    QTableWidget* quotes_ = nullptr;
    QTableWidget* fitted_ = nullptr;
    QTableWidget* likely_ = nullptr;
    QWidget* jobs_part_ = nullptr;
    QWidget* quotes_part_ = nullptr;
    QWidget* fitted_part_ = nullptr;
    QWidget* likely_part_ = nullptr;
};

}  // namespace wg::ui
