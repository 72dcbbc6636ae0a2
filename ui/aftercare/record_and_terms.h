#pragma once
// The record read backwards, what was agreed, and notes.

#include <QPointer>
#include <QWidget>

class QCheckBox;
class QLabel;
class QPlainTextEdit;
class QTableWidget;

namespace wg::ui {

class JobSession;
struct EntryBreak;
class NumberField;
class TextField;

class RecordAndTerms : public QWidget {
    Q_OBJECT
   public:
    explicit RecordAndTerms(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();

   private:
    QWidget* make_record();
    QWidget* make_terms();
    void fill_record();
    void mark_broken(int row, const EntryBreak& broken);
    void keep_terms();

    QPointer<JobSession> session_;
    QTableWidget* record_ = nullptr;
    QLabel* no_record_ = nullptr;
    NumberField* warranty_ = nullptr;
    TextField* warranty_words_ = nullptr;
    QCheckBox* contract_ = nullptr;
    TextField* contract_words_ = nullptr;
    QPlainTextEdit* notes_ = nullptr;
};

}  // namespace wg::ui
