#include "ui/documents/paper_pane.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardPaths>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/documents/page_view.h"
#include "ui/documents/papers.h"

namespace wg::ui {

PaperPane::PaperPane(Paper paper, QWidget* parent) : QWidget(parent), paper_(paper), shown_(paper) {
    view_ = new PageView(this);
    page_words_ = new QLabel(this);
    page_words_->setMinimumWidth(96);
    zoom_words_ = new QLabel(this);
    zoom_words_->setMinimumWidth(48);
    const auto tool = [this](const QString& words, const QString& tip) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setToolTip(tip);
        return button;
    };
    QToolButton* back = tool(tr("Back"), tr("Page before (Page up)"));
    QToolButton* next = tool(tr("Next"), tr("Page after (Page down)"));
    QToolButton* smaller = tool(tr("Smaller"), tr("Zoom out (minus, or Ctrl and wheel)"));
    QToolButton* larger = tool(tr("Larger"), tr("Zoom in (plus, or Ctrl and wheel)"));
    QToolButton* fit = tool(tr("Fit width"), tr("Whole width of the page (0)"));
    save_ = new QPushButton(tr("Save %1 PDF").arg(title_of(paper).toLower()), this);
    print_ = new QPushButton(tr("Print"), this);
    // Wide words go on in a further line.
    tools_ = new FlowLayout;
    tools_->setContentsMargins(8, 8, 8, 8);
    tools_->setSpacing(8);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{back, next, page_words_, smaller, larger, fit, zoom_words_}) {
        tools_->addWidget(widget);
    }
    tools_->addWidget(save_);
    tools_->addWidget(print_);
    add_look_choosers();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(tools_);
    column->addWidget(view_, 1);

    connect(back, &QToolButton::clicked, this, [this] { view_->go_to_page(view_->current_page() - 1); });
    connect(next, &QToolButton::clicked, this, [this] { view_->go_to_page(view_->current_page() + 1); });
    connect(smaller, &QToolButton::clicked, this, [this] { view_->set_zoom(view_->zoom() / 1.25); });
    connect(larger, &QToolButton::clicked, this, [this] { view_->set_zoom(view_->zoom() * 1.25); });
    connect(fit, &QToolButton::clicked, view_, &PageView::fit_width);
    connect(view_, &PageView::view_changed, this, &PaperPane::refresh_words);
    connect(save_, &QPushButton::clicked, this, &PaperPane::ask_and_save);
    connect(print_, &QPushButton::clicked, this, &PaperPane::ask_and_print);
    refresh_words();
}

void PaperPane::add_look_choosers() {
    form_ = new QComboBox(this);
    form_->addItem(tr("A4"), static_cast<int>(PageForm::a4));
    form_->addItem(tr("Letter"), static_cast<int>(PageForm::letter));
    form_->setToolTip(tr("Paper size"));
    form_->setAccessibleName(tr("Paper size"));
    language_ = new QComboBox(this);
    // Each by its own name, whatever the window speaks.
    language_->addItem(QStringLiteral("English"), static_cast<int>(Language::english));
    language_->addItem(QStringLiteral("Español"), static_cast<int>(Language::spanish));
    language_->addItem(QStringLiteral("Deutsch"), static_cast<int>(Language::german));
    language_->setToolTip(tr("Language of the paper"));
    language_->setAccessibleName(tr("Language of the paper"));
    const auto toggle = [this](const QString& words, const QString& tip) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setToolTip(tip);
        button->setCheckable(true);
        connect(button, &QToolButton::toggled, this, &PaperPane::take_look);
        return button;
    };
    large_ = toggle(tr("Large print"), tr("Nothing lettered below 14 pt"));
    plain_ = toggle(tr("Black and white"), tr("No tints and no colours"));
    for (QComboBox* box : {form_, language_})
        connect(box, &QComboBox::currentIndexChanged, this, &PaperPane::take_look);
    for (QWidget* widget : std::initializer_list<QWidget*>{form_, large_, plain_, language_})
        tools_->addWidget(widget);
}

void PaperPane::take_look() {
    PaperLook look;
    look.form = static_cast<PageForm>(form_->currentData().toInt());
    look.language = static_cast<Language>(language_->currentData().toInt());
    look.large_print = large_->isChecked();
    look.black_and_white = plain_->isChecked();
    if (look == look_) return;
    look_ = look;
    set_input(input_);
    Q_EMIT look_changed(look_);
}

void PaperPane::set_look(const PaperLook& look) {
    if (look == look_) return;
    look_ = look;
    const QSignalBlocker blocked[] = {QSignalBlocker(form_), QSignalBlocker(language_), QSignalBlocker(large_),
                                      QSignalBlocker(plain_)};
    form_->setCurrentIndex(form_->findData(static_cast<int>(look.form)));
    language_->setCurrentIndex(language_->findData(static_cast<int>(look.language)));
    large_->setChecked(look.large_print);
    plain_->setChecked(look.black_and_white);
    set_input(input_);
}

void PaperPane::offer_also(Paper other) {
    auto* button = new QToolButton(this);
    button->setText(title_of(other));
    button->setCheckable(true);
    button->setToolTip(
        tr("%1 instead of the %2, to read, save and print").arg(title_of(other), title_of(paper_).toLower()));
    tools_->addWidget(button);
    connect(button, &QToolButton::toggled, this, [this, other, button](bool on) {
        // One at a time: another's button comes up when this one goes down.
        for (QToolButton* also : others_) {
            const QSignalBlocker quiet(also);
            if (on && also != button) also->setChecked(false);
        }
        show_paper(on ? other : paper_);
    });
    others_.push_back(button);
}

void PaperPane::show_paper(Paper paper) {
    shown_ = paper;
    save_->setText(tr("Save %1 PDF").arg(title_of(shown_).toLower()));
    set_input(input_);
    view_->go_to_page(1);
}

void PaperPane::add_button(QPushButton* button) {
    tools_->addWidget(button);
}

void PaperPane::set_input(std::shared_ptr<const PaperInput> input) {
    if (input != nullptr && input->look != look_) {
        auto looked = std::make_shared<PaperInput>(*input);
        looked->look = look_;
        input = std::move(looked);
    }
    input_ = std::move(input);
    view_->set_pages(input_ == nullptr ? std::vector<paper::Page>() : paper::lay_out(shown_, input_));
    refresh_words();
}

void PaperPane::set_ready(bool ready, const QString& why_not) {
    ready_ = ready;
    for (QPushButton* button : {save_, print_}) {
        button->setToolTip(ready ? QString() : why_not);
    }
    refresh_words();
}

void PaperPane::refresh_words() {
    page_words_->setText(
        view_->page_count() == 0 ? QString() : tr("Page %1 of %2").arg(view_->current_page()).arg(view_->page_count()));
    zoom_words_->setText(percent(view_->zoom()));
    const bool possible = ready_ && input_ != nullptr;
    save_->setEnabled(possible);
    print_->setEnabled(possible);
}

bool PaperPane::save_to(const QString& path) {
    if (input_ == nullptr || !ready_) return false;
    const auto written = write_pdf(shown_, *input_, path);
    if (!written.ok()) {
        Q_EMIT failed(qs(text_of(written.problems())));
        return false;
    }
    Q_EMIT saved(path);
    return true;
}

void PaperPane::ask_and_save() {
    if (input_ == nullptr) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString number = qs(input_->job.number);
    QString name = number.isEmpty() ? file_name_of(shown_) : number + QLatin1Char(' ') + file_name_of(shown_);
    name.replace(QLatin1Char('/'), QLatin1Char('-'));
    const QString path = QFileDialog::getSaveFileName(this, tr("Save %1").arg(title_of(shown_).toLower()),
                                                      folder + QLatin1Char('/') + name, tr("PDF (*.pdf)"));
    if (!path.isEmpty())
        save_to(path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive) ? path : path + QStringLiteral(".pdf"));
}

void PaperPane::ask_and_print() {
    if (input_ == nullptr) return;
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(look_.form == PageForm::letter ? QPageSize::Letter : QPageSize::A4));
    printer.setDocName(title_of(shown_) + QLatin1Char(' ') + qs(input_->job.number));
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print %1").arg(title_of(shown_).toLower()));
    if (dialog.exec() != QDialog::Accepted) return;
    if (compose(shown_, *input_, printer).pages.empty()) {
        Q_EMIT failed(tr("The printer did not take the paper. Check that it is on, or save the PDF and print that."));
    }
}

}  // namespace wg::ui
