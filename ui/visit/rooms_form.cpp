#include "ui/visit/rooms_form.h"

#include <QListWidget>
#include <QPushButton>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int room_row_px = 36;

}  // namespace

RoomsForm::RoomsForm(QWidget* parent) : SiteForm({}, parent) {
    words(
        tr("Draw a room in the plan where no pipe may go, such as a bedroom or a neighbour's flat. Click its edge in "
           "the plan, or its line here, to change it."));
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Rooms"));
    list_->setSelectionMode(QAbstractItemView::SingleSelection);
    add(list_);
    auto* draw = new QPushButton(tr("Draw room"), this);
    add(draw);
    fields_.insert(QStringLiteral("room_list"), list_);
    fields_.insert(QStringLiteral("draw_room"), draw);
    connect(draw, &QPushButton::clicked, this, &RoomsForm::draw_wanted);
    const auto ask = [this](const QListWidgetItem* item) { Q_EMIT room_wanted(item->data(Qt::UserRole).toString()); };
    connect(list_, &QListWidget::itemActivated, this, ask);
    connect(list_, &QListWidget::itemClicked, this, ask);
    shows_.push_back([this](const Job& job) {
        const QSignalBlocker quiet(list_);
        list_->clear();
        for (const Room& room : job.site.rooms) {
            const QString words = tr("%1, %2 to %3%4")
                                      .arg(qs(room.label), length_m(room.from_z_m), length_m(room.to_z_m),
                                           room.no_pipe ? tr(", no pipe") : QString());
            auto* item = new QListWidgetItem(words, list_);
            item->setData(Qt::UserRole, qs(room.id));
            item->setSizeHint({0, room_row_px});
        }
        list_->setVisible(!job.site.rooms.empty());
        list_->setFixedHeight(static_cast<int>(std::min<std::size_t>(job.site.rooms.size(), 5)) * room_row_px + 6);
    });
}

}  // namespace wg::ui
