#include "ui/documents/paper_pane.h"

#include <QActionGroup>
#include <QFileDialog>
#include <QLabel>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardPaths>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/documents/look_button.h"
#include "ui/documents/page_view.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace {

constexpr int sign_px = 36;

}  // namespace

PaperPane::PaperPane(Paper paper, QWidget* parent) : QWidget(parent), paper_(paper), shown_(paper) {
    view_ = new PageView(this);
    page_words_ = new QLabel(this);
    zoom_words_ = new QLabel(this);
    zoom_words_->setAlignment(Qt::AlignCenter);
    zoom_words_->setMinimumWidth(fontMetrics().horizontalAdvance(percent(1.0)) + 4);
    const auto tool = [this](const QString& words, const QString& tip) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setToolTip(tip);
        return button;
    };
    // Signs rather than words, on both sides of what they change: all tools stand in one row.
    QToolButton* back = tool(QStringLiteral("\u2039"), tr("Page before (Page up)"));
    QToolButton* next = tool(QStringLiteral("\u203a"), tr("Page after (Page down)"));
    back->setAccessibleName(tr("Page before"));
    next->setAccessibleName(tr("Page after"));
    QToolButton* smaller = tool(QStringLiteral("\u2212"), tr("Zoom out (minus, or Ctrl and wheel)"));
    QToolButton* larger = tool(QStringLiteral("+"), tr("Zoom in (plus, or Ctrl and wheel)"));
    smaller->setAccessibleName(tr("Zoom out"));
    larger->setAccessibleName(tr("Zoom in"));
    for (QToolButton* sign : {back, next, smaller, larger})
        sign->setFixedWidth(sign_px);
    QToolButton* fit = tool(tr("Fit"), tr("Whole width of the page (0)"));
    save_ = new QPushButton(tr("Save PDF"), this);
    print_ = new QPushButton(tr("Print"), this);
    look_ = new LookButton(this);
    // Wide words go on in a further line.
    tools_ = new FlowLayout;
    tools_->setContentsMargins(8, 8, 8, 8);
    tools_->setSpacing(4);
    for (QWidget* widget : std::initializer_list<QWidget*>{back, page_words_, next, smaller, zoom_words_, larger, fit,
                                                           save_, print_, look_})
        tools_->addWidget(widget);
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
    connect(look_, &LookButton::look_chosen, this, [this](const PaperLook& look) {
        set_input(input_);
        Q_EMIT look_changed(look);
    });
    refresh_words();
}

void PaperPane::set_look(const PaperLook& look) {
    if (look == look_->look()) return;
    look_->set_look(look);
    set_input(input_);
}

const PaperLook& PaperPane::look() const {
    return look_->look();
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

void PaperPane::offer_in_list(const std::vector<Paper>& others) {
    list_ = new QToolButton(this);
    list_->setText(title_of(paper_));
    list_->setToolTip(tr("Another paper of this job, to read, save and print"));
    list_->setPopupMode(QToolButton::InstantPopup);
    list_->setToolButtonStyle(Qt::ToolButtonTextOnly);
    auto* menu = new QMenu(list_);
    auto* one = new QActionGroup(menu);
    const auto add = [&](Paper paper) {
        QAction* entry = menu->addAction(title_of(paper));
        entry->setCheckable(true);
        entry->setChecked(paper == paper_);
        one->addAction(entry);
        connect(entry, &QAction::triggered, this, [this, paper] {
            list_->setText(title_of(paper));
            show_paper(paper);
        });
    };
    add(paper_);
    for (const Paper other : others)
        add(other);
    list_->setMenu(menu);
    tools_->addWidget(list_);
}

void PaperPane::show_paper(Paper paper) {
    shown_ = paper;
    set_input(input_);
    view_->go_to_page(1);
}

void PaperPane::add_button(QPushButton* button) {
    tools_->addWidget(button);
}

void PaperPane::set_input(std::shared_ptr<const PaperInput> input) {
    if (input != nullptr && input->look != look()) {
        auto looked = std::make_shared<PaperInput>(*input);
        looked->look = look();
        input = std::move(looked);
    }
    input_ = std::move(input);
    view_->set_pages(input_ == nullptr ? std::vector<paper::Page>() : paper::lay_out(shown_, input_));
    refresh_words();
}

void PaperPane::set_ready(bool ready, const QString& why_not) {
    ready_ = ready;
    why_not_ = ready ? QString() : why_not;
    refresh_words();
}

void PaperPane::refresh_words() {
    page_words_->setText(
        view_->page_count() == 0 ? QString() : tr("Page %1 of %2").arg(view_->current_page()).arg(view_->page_count()));
    zoom_words_->setText(percent(view_->zoom()));
    const bool possible = ready_ && input_ != nullptr;
    save_->setEnabled(possible);
    print_->setEnabled(possible);
    const QString paper = title_of(shown_).toLower();
    save_->setToolTip(ready_ ? tr("Save the %1 as PDF").arg(paper) : why_not_);
    print_->setToolTip(ready_ ? tr("Print the %1").arg(paper) : why_not_);
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
    printer.setPageSize(QPageSize(look().form == PageForm::letter ? QPageSize::Letter : QPageSize::A4));
    printer.setDocName(title_of(shown_) + QLatin1Char(' ') + qs(input_->job.number));
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print %1").arg(title_of(shown_).toLower()));
    if (dialog.exec() != QDialog::Accepted) return;
    if (compose(shown_, *input_, printer).pages.empty()) {
        Q_EMIT failed(tr("The printer did not take the paper. Check that it is on, or save the PDF and print that."));
    }
}

}  // namespace wg::ui
