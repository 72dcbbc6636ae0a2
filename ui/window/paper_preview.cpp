#include "ui/window/paper_preview.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int preview_dpi = 96;

}  // namespace

PaperPreview::PaperPreview(Paper paper, PaperInput input, QWidget* parent)
    : QDialog(parent), paper_(paper), input_(std::move(input)) {
    setWindowTitle(title_of(paper));
    resize(900, 720);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    notice_ = new NoticeBar(this);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel(title_of(paper), this);
    title->setProperty("role", QStringLiteral("title"));
    auto* print_button = new QPushButton(tr("Print"), this);
    auto* save_button = new QPushButton(tr("Save as PDF"), this);
    save_button->setProperty("role", QStringLiteral("primary"));
    auto* close_button = new QPushButton(tr("Close"), this);
    head->addWidget(title, 1);
    head->addWidget(save_button);
    head->addWidget(print_button);
    head->addWidget(close_button);
    column->addLayout(head);
    column->addWidget(notice_);
    column->addWidget(make_pages(), 1);
    connect(print_button, &QPushButton::clicked, this, &PaperPreview::print);
    connect(save_button, &QPushButton::clicked, this, &PaperPreview::save_pdf);
    connect(close_button, &QPushButton::clicked, this, &QDialog::accept);
    if (paper_ != Paper::survey_sheet && paper_ != Paper::record && input_.plan.stopped()) {
        notice_->add(Mark::stop, tr("This plan has a stop. The paper is marked as not to be issued."));
    }
}

QWidget* PaperPreview::make_pages() {
    auto* area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setAccessibleName(tr("Pages"));
    auto* sheet = new QWidget(area);
    auto* column = new QVBoxLayout(sheet);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(16);
    for (const QImage& image : preview(paper_, input_, preview_dpi)) {
        auto* page = new QLabel(sheet);
        page->setPixmap(QPixmap::fromImage(image));
        page->setFrameShape(QFrame::Box);
        column->addWidget(page, 0, Qt::AlignHCenter);
    }
    column->addStretch();
    area->setWidget(sheet);
    return area;
}

void PaperPreview::print() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(QPageSize::A4));
    printer.setFullPage(true);
    printer.setDocName(title_of(paper_));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    compose(paper_, input_, printer);
    if (printer.printerState() == QPrinter::Error) notice_->add(Mark::stop, tr("The printer reported an error."));
}

void PaperPreview::save_pdf() {
    const QString start = qs(input_.job.number).remove(QLatin1Char('/')) + QLatin1Char(' ') + file_name_of(paper_);
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save as PDF"), start.trimmed(), tr("PDF files (*.pdf)"));
    if (path.isEmpty()) return;
    const Result<Composition> written = write_pdf(paper_, input_, path);
    if (!written.ok()) {
        notice_->add(Mark::stop, qs(text_of(written.problems())));
        return;
    }
    notice_->clear();
    notice_->add(Mark::ready, tr("Saved as %1.").arg(QDir::toNativeSeparators(path)));
}

}  // namespace wg::ui
