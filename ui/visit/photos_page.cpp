#include "ui/visit/photos_page.h"

#include <QCheckBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/photo_edits.h"
#include "ui/common/photo_shelf.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr QSize thumbnail(132, 99);

}  // namespace

PhotosPage::PhotosPage(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    auto* bar = new QHBoxLayout;
    auto* add = new QPushButton(tr("Add photographs\u2026"), this);
    remove_ = new QPushButton(tr("Remove"), this);
    bar->addWidget(add);
    bar->addWidget(remove_);
    bar->addStretch(1);
    column->addLayout(bar);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    column->addWidget(problem_);
    list_ = new QListWidget(this);
    list_->setViewMode(QListView::IconMode);
    list_->setIconSize(thumbnail);
    list_->setResizeMode(QListView::Adjust);
    list_->setMovement(QListView::Static);
    list_->setWordWrap(true);
    list_->setSpacing(4);
    list_->setAccessibleName(tr("Photographs"));
    column->addWidget(list_, 1);
    none_ = new QLabel(tr("No photographs yet. Add what the camera took: roof and eaves, the cylinder's place, the "
                          "switchboard, the way of the pipes. Arrows and words go on top; the originals stay as they "
                          "are. A plan or an aerial picture can be laid under the sketch."),
                       this);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    none_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    column->addWidget(none_, 1);
    of_chosen_ = new QWidget(this);
    auto* fields = new QVBoxLayout(of_chosen_);
    fields->setContentsMargins(0, 0, 0, 0);
    fields->addWidget(new QLabel(tr("Caption"), of_chosen_));
    caption_ = new TextField(tr("Caption"), of_chosen_);
    fields->addWidget(caption_);
    auto* place_row = new QHBoxLayout;
    place_ = new QLabel(of_chosen_);
    place_->setWordWrap(true);
    auto* mark_place = new QPushButton(tr("Mark its place"), of_chosen_);
    place_row->addWidget(place_, 1);
    place_row->addWidget(mark_place);
    fields->addLayout(place_row);
    fields->addWidget(new QLabel(tr("Looking to (true bearing)"), of_chosen_));
    looking_ = new NumberField(tr("Looking to"), tr("\u00b0"), {0.0, 360.0, 0, 5.0, true}, of_chosen_);
    fields->addWidget(looking_);
    column->addWidget(of_chosen_);
    build_underlay();
    connect(add, &QPushButton::clicked, this, [this] {
        add_files(QFileDialog::getOpenFileNames(this, tr("Add photographs"), {},
                                                tr("Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)")));
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr && photograph() != nullptr) remove_photograph_and_underlays(*session_, chosen());
    });
    connect(list_, &QListWidget::currentItemChanged, this, [this] {
        if (filling_) return;
        refresh_chosen();
        Q_EMIT photograph_chosen(qs(chosen()));
    });
    // A click on the one that is chosen already shows it again.
    connect(list_, &QListWidget::itemClicked, this, [this] { Q_EMIT photograph_chosen(qs(chosen())); });
    connect(caption_, &TextField::committed, this, [this](const QString& text) {
        if (session_ != nullptr && photograph() != nullptr)
            set_photograph_caption(*session_, chosen(), text.trimmed().toStdString());
    });
    connect(mark_place, &QPushButton::clicked, this, [this] {
        if (photograph() != nullptr) Q_EMIT place_asked(qs(chosen()));
    });
    connect(looking_, &NumberField::committed, this, [this](std::optional<double> value) {
        const Photograph* now = photograph();
        if (now == nullptr) return;
        Photograph changed = *now;
        changed.looking_azimuth_deg = value;
        set_photograph(*session_, changed);
    });
    say({});
    refresh_chosen();
}

void PhotosPage::build_underlay() {
    auto* column = static_cast<QVBoxLayout*>(layout());
    lay_ = new QPushButton(tr("Lay under the sketch"), this);
    lay_->setToolTip(tr("A plan, scan or aerial picture to draw over"));
    column->addWidget(lay_);
    of_underlay_ = new QWidget(this);
    auto* rows = new QVBoxLayout(of_underlay_);
    rows->setContentsMargins(0, 0, 0, 0);
    fit_words_ = new QLabel(of_underlay_);
    fit_words_->setWordWrap(true);
    fit_words_->setProperty("role", QStringLiteral("muted"));
    rows->addWidget(fit_words_);
    auto* tasks = new QHBoxLayout;
    const std::pair<QString, const char*> all[] = {
        {tr("Scale it"), "scale"}, {tr("Turn it"), "turn"}, {tr("Move it"), "move"}};
    for (const auto& [words, task] : all) {
        auto* button = new QPushButton(words, of_underlay_);
        const QString name = QString::fromLatin1(task);
        connect(button, &QPushButton::clicked, this, [this, name] {
            if (const UnderlayPicture* now = underlay()) Q_EMIT underlay_task(qs(now->id), name);
        });
        tasks->addWidget(button);
    }
    rows->addLayout(tasks);
    auto* look = new QHBoxLayout;
    shown_ = new QCheckBox(tr("Shown"), of_underlay_);
    opacity_ = new QSlider(Qt::Horizontal, of_underlay_);
    opacity_->setRange(5, 100);
    opacity_->setAccessibleName(tr("How strongly the picture shows"));
    auto* off = new QPushButton(tr("Take it away"), of_underlay_);
    look->addWidget(shown_);
    look->addWidget(opacity_, 1);
    look->addWidget(off);
    rows->addLayout(look);
    column->addWidget(of_underlay_);
    connect(lay_, &QPushButton::clicked, this, [this] {
        if (photograph() != nullptr) Q_EMIT underlay_asked(qs(chosen()));
    });
    connect(shown_, &QCheckBox::toggled, this,
            [this](bool on) { change_underlay([on](UnderlayPicture& u) { u.shown = on; }, {}); });
    connect(opacity_, &QSlider::valueChanged, this, [this](int percent) {
        change_underlay([percent](UnderlayPicture& u) { u.opacity = percent / 100.0; }, QStringLiteral("opacity"));
    });
    connect(opacity_, &QSlider::sliderReleased, this, [this] {
        if (session_ != nullptr) session_->end_merge();
    });
    connect(off, &QPushButton::clicked, this, [this] {
        if (const UnderlayPicture* now = underlay()) remove_underlay(*session_, now->id);
    });
}

void PhotosPage::say(const QString& problem) {
    problem_->setText(problem.isEmpty() ? problem : QStringLiteral("\u25b2 ") + problem);
    problem_->setVisible(!problem.isEmpty());
}

void PhotosPage::set_shelf(PhotoShelf* shelf) {
    shelf_ = shelf;
    if (shelf_ != nullptr) connect(shelf_, &PhotoShelf::loaded, this, &PhotosPage::refresh);
}

void PhotosPage::set_session(JobSession* session) {
    session_ = session;
    say({});
    refresh();
}

std::string PhotosPage::chosen() const {
    const QListWidgetItem* item = list_->currentItem();
    return item != nullptr ? item->data(Qt::UserRole).toString().toStdString() : std::string();
}

void PhotosPage::choose(const std::string& photograph_id) {
    for (int row = 0; row < list_->count(); ++row)
        if (list_->item(row)->data(Qt::UserRole).toString() == qs(photograph_id)) list_->setCurrentRow(row);
}

const Photograph* PhotosPage::photograph() const {
    return session_ != nullptr ? find_photograph(session_->job(), chosen()) : nullptr;
}

const UnderlayPicture* PhotosPage::underlay() const {
    const Photograph* photo = photograph();
    if (photo == nullptr) return nullptr;
    for (const UnderlayPicture& one : session_->job().site.underlays)
        if (one.photograph_id == photo->id) return &one;
    return nullptr;
}

void PhotosPage::change_underlay(const std::function<void(UnderlayPicture&)>& change, const QString& merge_key) {
    const UnderlayPicture* now = filling_ ? nullptr : underlay();
    if (now == nullptr) return;
    UnderlayPicture changed = *now;
    change(changed);
    set_underlay(*session_, changed, merge_key);
}

void PhotosPage::add_files(const QStringList& paths) {
    if (session_ == nullptr || paths.isEmpty()) return;
    say({});
    if (shelf_ == nullptr) return say(tr("Photographs can be kept once the job is on the desk."));
    std::string last;
    QStringList refused;
    for (const QString& path : paths) {
        const auto kept = shelf_->keep_file(path);
        if (!kept) {
            refused << QFileInfo(path).fileName() + QStringLiteral(": ") + qs(kept.problems().front().text());
            continue;
        }
        Photograph photograph;
        photograph.sha256 = kept.value();
        photograph.file_name = QFileInfo(path).fileName().toStdString();
        last = add_photograph(*session_, photograph);
    }
    refresh();
    if (!last.empty()) choose(last);
    if (!refused.isEmpty()) say(refused.join(QStringLiteral("\n")));
}

QIcon PhotosPage::icon_of(const Photograph& photograph) {
    // Every edit of the job comes by here: each picture is made small once.
    const auto known = icons_.constFind(qs(photograph.sha256));
    if (known != icons_.constEnd()) return *known;
    const QImage image = shelf_ != nullptr ? shelf_->picture(photograph.sha256) : QImage();
    QPixmap icon(thumbnail);
    icon.fill(palette().color(QPalette::Midlight));
    if (image.isNull()) return QIcon(icon);
    icon = QPixmap::fromImage(image.scaled(thumbnail, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    return *icons_.insert(qs(photograph.sha256), QIcon(icon));
}

void PhotosPage::refresh() {
    const std::string kept = chosen();
    filling_ = true;
    list_->clear();
    if (session_ != nullptr) {
        for (const Photograph& photograph : session_->job().photographs) {
            auto* item =
                new QListWidgetItem(qs(photograph.caption.empty() ? photograph.file_name : photograph.caption), list_);
            item->setData(Qt::UserRole, qs(photograph.id));
            item->setIcon(icon_of(photograph));
            if (photograph.id == kept) list_->setCurrentItem(item);
        }
    }
    filling_ = false;
    refresh_chosen();
}

void PhotosPage::refresh_chosen() {
    const Photograph* now = photograph();
    const UnderlayPicture* under = underlay();
    filling_ = true;
    list_->setVisible(list_->count() > 0);
    none_->setVisible(list_->count() == 0);
    of_chosen_->setVisible(now != nullptr);
    remove_->setEnabled(now != nullptr);
    lay_->setVisible(now != nullptr && under == nullptr);
    of_underlay_->setVisible(under != nullptr);
    if (now != nullptr) {
        caption_->set_value(qs(now->caption));
        looking_->set_value(now->looking_azimuth_deg);
        place_->setText(
            now->taken_from
                ? tr("Taken at %1 right, %2 up.").arg(length_m(now->taken_from->x_m), length_m(now->taken_from->y_m))
                : tr("Not on the sketch yet."));
    }
    if (under != nullptr) {
        shown_->setChecked(under->shown);
        opacity_->setValue(static_cast<int>(under->opacity * 100.0 + 0.5));
        fit_words_->setText((under->scaled
                                 ? tr("Scaled: %1 mm a pixel.").arg(under->metres_per_pixel * 1000.0, 0, 'f', 1)
                                 : tr("Scale guessed: mark a length you know.")) +
                            QStringLiteral(" ") +
                            (under->turned ? tr("Turned by %1\u00b0.").arg(under->turn_deg, 0, 'f', 1)
                                           : tr("Turn not checked: mark a line of known bearing.")));
    }
    filling_ = false;
}

}  // namespace wg::ui
