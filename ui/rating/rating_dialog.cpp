#include "ui/rating/rating_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QTabWidget>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/whole_file.h"
#include "ui/rating/fit_page.h"
#include "ui/rating/test_page.h"

namespace wg::ui {

RatingDialog::RatingDialog(std::shared_ptr<const plan::Reference> reference, const RatingSet& first, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Rating test"));
    // On a small screen, or with large letters, no larger than what there is.
    resize(QSize(1300, 700).boundedTo(screen()->availableSize()));
    chooser_ = new SetChooser(std::move(reference), first, this);
    notice_ = new NoticeBar(this);
    test_ = new TestPage(*chooser_, this);
    fit_ = new FitPage(*chooser_, this);
    pages_ = new QTabWidget(this);
    pages_->addTab(test_, tr("&Test"));
    pages_->addTab(fit_, tr("&Fit to data sheet"));
    invented_ = new QLabel(tr("Invented equipment, for demonstration"), this);
    invented_->setProperty("role", QStringLiteral("caution"));
    auto* add = new QPushButton(tr("Add equip&ment file\u2026"), this);
    auto* close_button = new QPushButton(tr("Close"), this);
    for (QPushButton* button : {add, close_button})
        button->setAutoDefault(false);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(12);
    foot->addWidget(add);
    foot->addWidget(invented_);
    foot->addStretch(1);
    foot->addWidget(close_button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(10);
    column->addWidget(chooser_);
    column->addWidget(notice_);
    column->addWidget(pages_, 1);
    column->addLayout(foot);
    connect(add, &QPushButton::clicked, this, &RatingDialog::ask_equipment);
    connect(close_button, &QPushButton::clicked, this, &QDialog::reject);
    connect(chooser_, &SetChooser::changed, this, &RatingDialog::set_changed);
    connect(test_, &TestPage::failed, this, [this](const QString& words) { say(false, words); });
    connect(fit_, &FitPage::failed, this, [this](const QString& words) { say(false, words); });
    connect(fit_, &FitPage::done_well, this, [this](const QString& words) { say(true, words); });
    connect(fit_, &FitPage::settled, notice_, &NoticeBar::clear);
    set_changed();
}

void RatingDialog::say(bool well, const QString& words) {
    notice_->clear();
    notice_->add(well ? Mark::ready : Mark::stop, words);
}

void RatingDialog::set_changed() {
    notice_->clear();
    invented_->setVisible(chooser_->invented());
    test_->run();
    fit_->set_changed();
}

bool RatingDialog::add_equipment(const QString& path) {
    const Result<std::string> text = read_whole(path, 16 * mebibyte);
    const Result<bool> added = text.ok()
                                   ? chooser_->add_equipment(text.value(), QFileInfo(path).fileName().toStdString())
                                   : Result<bool>(text.problems());
    if (!added.ok()) {
        say(false, tr("This equipment file cannot be used. %1").arg(qs(text_of(added.problems()))));
        return false;
    }
    say(true, tr("The items of %1 are in the lists while this dialog is open.").arg(QFileInfo(path).fileName()));
    return true;
}

void RatingDialog::ask_equipment() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Add an equipment file"), QString(),
                                                      tr("Equipment files (*.json);;All files (*)"));
    if (!path.isEmpty()) add_equipment(path);
}

}  // namespace wg::ui
