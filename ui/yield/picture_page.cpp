#include "ui/yield/picture_page.h"

#include <QLabel>
#include <QVBoxLayout>
#include <cmath>

#include "core/plan/plan.h"
#include "ui/common/format.h"

namespace wg::ui {

PicturePage::PicturePage(QWidget* parent) : YieldPage(parent) {
    view_ = new PictureView(this);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(16, 8, 16, 16);
    column_->setSpacing(8);
    column_->addWidget(view_, 1);
    column_->addWidget(words_);
    connect(view_, &PictureView::pointed_at, this, &YieldPage::pointed_at);
}

bool PicturePage::save_picture(const QString& path) const {
    return view_->save(path, caption());
}

QString PicturePage::words() const {
    return words_->text();
}

void PicturePage::set_words(const QString& text) {
    const bool marked = carried_ && !text.isEmpty();
    words_->setText(marked ? tr("From before the last edit; new figures follow. ") + text : text);
    view_->setAccessibleName(words_->text());
}

void PicturePage::show_reason(const QString& reason) {
    view_->show_reason(reason);
    words_->clear();
    view_->setAccessibleName(reason);
}

QString caption_of(const QString& what, const plan::Plan& plan) {
    QString text = PicturePage::tr("%1. Job %2, %3. Choice %4.")
                       .arg(what, qs(plan.job_number), qs(plan.title), qs(plan.choice_label));
    if (!plan.weather_source.empty()) {
        text += PicturePage::tr(" Weather: %1%2.")
                    .arg(qs(plan.weather_source), plan.weather_invented ? PicturePage::tr(" (invented)") : QString());
    }
    return text;
}

QString cell_number(double value, int decimals) {
    return std::isfinite(value) ? QString::number(value, 'f', decimals) : QString();
}

}  // namespace wg::ui
