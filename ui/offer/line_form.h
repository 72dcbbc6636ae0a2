#pragma once
// One line of the offer: what the office may say of it.

#include <QPointer>
#include <QWidget>

#include "ui/common/job_session.h"
#include "ui/offer/offer_model.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace wg::ui {

class CalmCombo;
class NumberField;
class TextField;

class LineForm : public QWidget {
    Q_OBJECT
   public:
    explicit LineForm(QWidget* parent = nullptr);
    /// null: no line is selected.
    void show_row(JobSession* session, const OfferRow* row);
    void focus_first();

    [[nodiscard]] NumberField* quantity_field() const { return quantity_; }
    [[nodiscard]] NumberField* price_field() const { return price_; }
    [[nodiscard]] TextField* text_field() const { return text_; }
    [[nodiscard]] TextField* reason_field() const { return reason_; }
    [[nodiscard]] QCheckBox* left_out_box() const { return left_out_; }
    [[nodiscard]] QCheckBox* option_box() const { return option_; }
    [[nodiscard]] QPushButton* back_button() const { return back_; }

   private:
    void make_fields();
    void add_row(const QString& words, QWidget* field);  ///< label above its field; no words: none
    void show_row_of(QWidget* field, bool shown);
    void connect_fields();
    void change(const std::function<void(LineChange&)>& edit);
    void change_own(const std::function<void(OfferLine&)>& edit);
    void show_own(const OfferLine& line);
    void show_planned();
    void go_back();
    /// What the plan asks for now was looked at, and the change stays.
    void keep_overtaken();
    [[nodiscard]] bool own() const;
    [[nodiscard]] const OfferLine* own_line() const;

    QPointer<JobSession> session_;
    OfferRow row_;
    bool shown_ = false;
    QLabel* head_ = nullptr;
    QLabel* planned_ = nullptr;
    QWidget* fields_ = nullptr;
    QVBoxLayout* rows_ = nullptr;
    TextField* text_ = nullptr;
    NumberField* quantity_ = nullptr;
    TextField* unit_ = nullptr;
    NumberField* price_ = nullptr;
    CalmCombo* tax_ = nullptr;
    TextField* supplier_ = nullptr;
    QCheckBox* option_ = nullptr;
    QCheckBox* ticked_ = nullptr;
    TextField* note_ = nullptr;
    TextField* reason_ = nullptr;
    QCheckBox* left_out_ = nullptr;
    QCheckBox* everywhere_ = nullptr;
    QPushButton* keep_ = nullptr;  ///< the quantity of a change that the plan has overtaken
    QPushButton* back_ = nullptr;
};

}  // namespace wg::ui
