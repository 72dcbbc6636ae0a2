// The visit's photographs on the stage: at large in place of the sketch, on the sketch, under it.

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabWidget>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/photo_edits.h"
#include "ui/common/photo_shelf.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/photo_view.h"
#include "ui/visit/photos_page.h"
#include "ui/visit/underlay_tool.h"
#include "ui/visit/visit_stage.h"

namespace wg::ui {
namespace {

constexpr double first_width_m = 30.0;  ///< of a picture that nobody has scaled yet: a plot, roughly

}  // namespace

QWidget* VisitStage::build_photo_page(QWidget* parent) {
    auto* page = new QWidget(parent);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* bar = new QHBoxLayout;
    auto* back = new QPushButton(tr("Back to the sketch"), page);
    auto* arrow = new QPushButton(tr("Arrow"), page);
    auto* text = new QPushButton(tr("Text"), page);
    for (QPushButton* hand : {arrow, text})
        hand->setCheckable(true);
    auto* words = new QLineEdit(page);
    words->setPlaceholderText(tr("What the text says"));
    words->setAccessibleName(tr("What the text says"));
    bar->addWidget(back);
    bar->addWidget(arrow);
    bar->addWidget(text);
    bar->addWidget(words, 1);
    column->addLayout(bar);
    photo_view_ = new PhotoView(page);
    column->addWidget(photo_view_, 1);
    const auto take = [this, arrow, text] {
        photo_view_->set_hand(arrow->isChecked()  ? PhotoView::Hand::arrow
                              : text->isChecked() ? PhotoView::Hand::text
                                                  : PhotoView::Hand::choose);
    };
    connect(arrow, &QPushButton::clicked, this, [=] {
        text->setChecked(false);
        take();
    });
    connect(text, &QPushButton::clicked, this, [=] {
        arrow->setChecked(false);
        take();
        if (text->isChecked() && words->text().trimmed().isEmpty()) words->setFocus();
    });
    connect(words, &QLineEdit::textChanged, photo_view_, &PhotoView::set_words);
    connect(photo_view_, &PhotoView::words_wanted, words, qOverload<>(&QWidget::setFocus));
    connect(photo_view_, &PhotoView::status, this, &StageWidget::status_text);
    connect(back, &QPushButton::clicked, this, [this] { views_->setCurrentIndex(0); });
    return page;
}

void VisitStage::connect_photos() {
    connect(photos_, &PhotosPage::photograph_chosen, this, &VisitStage::show_photograph);
    connect(photos_, &PhotosPage::place_asked, this, [this](const QString& id) {
        views_->setCurrentIndex(0);
        canvas_->ask_point(tr("Click where the photograph was taken from."), [this, id](Point2 at) {
            const Photograph* now = find_photograph(session_->job(), id.toStdString());
            if (now == nullptr) return;
            Photograph changed = *now;
            changed.taken_from = at;
            set_photograph(*session_, changed);
        });
    });
    connect(photos_, &PhotosPage::underlay_asked, this,
            [this](const QString& id) { start_underlay(id.toStdString()); });
    connect(photos_, &PhotosPage::underlay_task, this, [this](const QString& id, const QString& task) {
        views_->setCurrentIndex(0);
        select({}, false);
        const auto what = task == QStringLiteral("scale")  ? UnderlayTool::Task::scale
                          : task == QStringLiteral("turn") ? UnderlayTool::Task::turn
                                                           : UnderlayTool::Task::move;
        canvas_->set_tool(std::make_unique<UnderlayTool>(*session_, id.toStdString(), what));
    });
    canvas_->set_underlays([this] {
        std::vector<UnderlayImage> out;
        if (session_ == nullptr || shelf_ == nullptr) return out;
        for (const UnderlayPicture& picture : session_->job().site.underlays) {
            const Photograph* photograph = find_photograph(session_->job(), picture.photograph_id);
            if (!picture.shown || photograph == nullptr) continue;
            UnderlayImage one;
            one.image = shelf_->picture(photograph->sha256);
            const QSize original = shelf_->size_of(photograph->sha256);
            if (one.image.isNull() || original.isEmpty()) continue;
            one.shrink = static_cast<double>(one.image.width()) / static_cast<double>(original.width());
            one.metres_per_pixel = picture.metres_per_pixel;
            one.turn_deg = picture.turn_deg;
            one.origin = picture.origin;
            one.opacity = picture.opacity;
            out.push_back(std::move(one));
        }
        return out;
    });
}

void VisitStage::set_shelf(PhotoShelf* shelf) {
    shelf_ = shelf;
    photos_->set_shelf(shelf);
    photo_view_->set_shelf(shelf);
    if (shelf_ != nullptr) connect(shelf_, &PhotoShelf::loaded, canvas_, qOverload<>(&QWidget::update));
}

void VisitStage::show_photograph(const QString& id) {
    if (session_ == nullptr || id.isEmpty()) {
        views_->setCurrentIndex(0);
        return;
    }
    photo_view_->show_photograph(session_, id.toStdString());
    views_->setCurrentIndex(1);
}

void VisitStage::start_underlay(const std::string& photograph_id) {
    const Photograph* photograph = session_ != nullptr ? find_photograph(session_->job(), photograph_id) : nullptr;
    if (photograph == nullptr || shelf_ == nullptr) return;
    const QSize size = shelf_->size_of(photograph->sha256);
    if (size.isEmpty()) return say(tr("The picture is not read yet, or cannot be."));
    views_->setCurrentIndex(0);
    const Point2 middle = canvas_->view().unmap(QRectF(canvas_->rect()).center());
    const std::string id = add_underlay(*session_, photograph_id, middle, first_width_m, size.width(), size.height());
    canvas_->fit();
    select({}, false);
    canvas_->set_tool(std::make_unique<UnderlayTool>(*session_, id, UnderlayTool::Task::scale));
}

}  // namespace wg::ui
