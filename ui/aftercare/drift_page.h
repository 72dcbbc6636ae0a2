#pragma once
// Readings of services beside those of the fitting: table, and one kind over the visits.

#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/aftercare/drift.h"

class QLabel;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class EmptyPane;
class JobSession;
class PictureView;

class DriftPage : public QWidget {
    Q_OBJECT
   public:
    explicit DriftPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_plan(const plan::Plan& plan);
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] const std::vector<aftercare::DriftRow>& rows() const { return rows_; }
    [[nodiscard]] QString words() const;

   Q_SIGNALS:
    void said(const QString& text);

   private:
    void fill();
    void show_row();

    QPointer<JobSession> session_;
    std::vector<aftercare::DriftRow> rows_;
    std::string shown_;  ///< what the rows were worked out from
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* title_ = nullptr;
    PictureView* picture_ = nullptr;
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui
