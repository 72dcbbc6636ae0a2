#include "ui/visit/horizon_picture.h"

namespace wg::ui {

HorizonPicture::HorizonPicture(QWidget* parent) : PictureView(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    source_.show_few_lines(true);
}

void HorizonPicture::show_site(const Site& site) {
    const bool same = site.horizon == horizon_ && site.location == place_ && has_picture();
    horizon_ = site.horizon;
    place_ = site.location;
    if (!same && isVisible()) refresh();
}

void HorizonPicture::mark_row(int row) {
    row_ = row;
    if (isVisible()) refresh();
}

void HorizonPicture::refresh() {
    Site site;
    site.location = place_;
    site.horizon = horizon_;
    source_.show_site(site);
    const bool known = row_ >= 0 && static_cast<std::size_t>(row_) < horizon_.size();
    source_.mark_horizon(known ? std::optional(horizon_[static_cast<std::size_t>(row_)]) : std::nullopt);
    source_.put_into(*this);
    setAccessibleName(tr("Horizon with the sun's way on 21 June, at the equinox and on 21 December"));
    setAccessibleDescription(sun_path_words(source_.picture()));
}

void HorizonPicture::showEvent(QShowEvent* event) {
    PictureView::showEvent(event);
    refresh();  // a table of the sun is made only for who looks at it
}

}  // namespace wg::ui
