#pragma once
// A paper as it will be printed, page by page; prints it or saves it as PDF.

#include <QDialog>

#include "ui/documents/documents.h"

namespace wg::ui {

class NoticeBar;

class PaperPreview : public QDialog {
    Q_OBJECT
   public:
    PaperPreview(Paper paper, PaperInput input, QWidget* parent = nullptr);

   private:
    QWidget* make_pages();
    void print();
    void save_pdf();

    Paper paper_;
    PaperInput input_;
    NoticeBar* notice_ = nullptr;
};

}  // namespace wg::ui
