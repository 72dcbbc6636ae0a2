#include "ui/common/notice_bar.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>

#include "ui/common/free_place.h"

namespace wg::ui {
namespace {

constexpr int most_lines = 12;  ///< older ones go: the strip must not eat the window
constexpr int widest_notice_px = 860;
constexpr int stay_ms = 8000;

/// What readers of the screen say at once, wherever the focus is.
QAccessibleInterface* alert_of(const QString& kind, QObject* object) {
    if (kind != QLatin1String(NoticeBar::staticMetaObject.className())) return nullptr;
    return new QAccessibleWidget(static_cast<QWidget*>(object), QAccessible::AlertMessage);
}

}  // namespace

NoticeBar::NoticeBar(QWidget* parent) : QFrame(parent) {
    static const bool known = [] {
        QAccessible::installFactory(alert_of);
        return true;
    }();
    Q_UNUSED(known);
    setProperty("role", QStringLiteral("panel"));
    setAccessibleName(tr("Notice"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 8, 8, 8);
    row->setSpacing(8);
    sign_ = new QLabel(this);
    text_ = new QLabel(this);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    step_ = new QPushButton(this);
    auto* copy = new QPushButton(tr("Copy"), this);
    copy->setAccessibleName(tr("Copy the notice"));
    close_ = new QPushButton(tr("Close"), this);
    close_->setAccessibleName(tr("Close the notice"));
    row->addWidget(sign_, 0, Qt::AlignTop);
    row->addWidget(text_, 1);
    row->addWidget(step_, 0, Qt::AlignTop);
    row->addWidget(copy, 0, Qt::AlignTop);
    row->addWidget(close_, 0, Qt::AlignTop);
    connect(copy, &QPushButton::clicked, this, [this] { QApplication::clipboard()->setText(text()); });
    connect(close_, &QPushButton::clicked, this, &NoticeBar::clear);
    connect(step_, &QPushButton::clicked, this, &NoticeBar::step_asked);
    leave_.setSingleShot(true);
    leave_.setInterval(stay_ms);
    connect(&leave_, &QTimer::timeout, this, &NoticeBar::leave_unless_read);
    step_->hide();
    hide();
}

void NoticeBar::lie_over(const QMargins& margins) {
    over_ = true;
    margins_ = margins;
    setProperty("role", QStringLiteral("notice"));
    parentWidget()->installEventFilter(this);
    reach_ = new QShortcut(Qt::Key_F6, this);
    reach_->setEnabled(false);
    close_->setToolTip(tr("Escape closes it too; F6 leads here"));
    // Where two notices are on screen, the key belongs to neither alone and leads to each in turn.
    for (const auto reached : {&QShortcut::activated, &QShortcut::activatedAmbiguously})
        connect(reach_, reached, this, [this] { close_->setFocus(Qt::ShortcutFocusReason); });
}

void NoticeBar::add(Mark mark, const QString& text) {
    if (told_) clear();  // good news is no part of what is wrong
    for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        lines_.removeAll(line);
        lines_.append(line);
    }
    while (lines_.size() > most_lines)
        lines_.removeFirst();
    show_lines(mark);
}

void NoticeBar::add_with_step(Mark mark, const QString& text, const QString& step) {
    add(mark, text);
    step_->setText(step);
    step_->show();
    place_soon();
}

void NoticeBar::tell(const QString& text) {
    clear();
    add(Mark::note, text);
    told_ = true;
    leave_.start();
}

void NoticeBar::clear() {
    lines_.clear();
    told_ = false;
    leave_.stop();
    step_->hide();
    if (reach_ != nullptr) reach_->setEnabled(false);
    hide();
}

void NoticeBar::take_away(const QStringList& lines) {
    const qsizetype before = lines_.size();
    for (const QString& line : lines)
        lines_.removeAll(line);
    if (lines_.size() == before) return;
    if (lines_.isEmpty()) {
        clear();
        return;
    }
    show_text();
    place_soon();
}

void NoticeBar::leave_unless_read() {
    const QWidget* focus = QApplication::focusWidget();
    if (underMouse() || (focus != nullptr && isAncestorOf(focus)))
        leave_.start();
    else
        clear();
}

void NoticeBar::show_text() {
    text_->setText(text());
    setAccessibleName(tr("Notice: %1").arg(text()));
}

void NoticeBar::show_lines(Mark mark) {
    sign_->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
    sign_->setToolTip(word_of(mark));
    show_text();
    if (reach_ != nullptr) reach_->setEnabled(true);
    if (over_) place();
    show();
    if (over_) {
        raise();
        place_soon();  // once the page has settled
    }
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void NoticeBar::place() {
    if (!over_) return;
    const QWidget& page = *parentWidget();
    const QRect room = page.rect().marginsRemoved(margins_);
    const int width = std::min(widest_notice_px, room.width());
    layout()->activate();
    const int height = std::max(layout()->totalHeightForWidth(width), minimumSizeHint().height());
    setGeometry(
        free_place({width, height}, room, controls_of(page, this), scroll_bars_of(page, this), texts_of(page, this)));
    // Other controls lie under it when a part of the page gives way to another.
    for (const QStackedWidget* parts : page.findChildren<QStackedWidget*>())
        connect(parts, &QStackedWidget::currentChanged, this, &NoticeBar::place_soon, Qt::UniqueConnection);
}

void NoticeBar::place_soon() {
    if (!over_ || waiting_) return;
    waiting_ = true;
    QTimer::singleShot(0, this, [this] {
        waiting_ = false;
        if (isVisible()) place();
    });
}

bool NoticeBar::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) place_soon();
    return false;
}

void NoticeBar::keyPressEvent(QKeyEvent* event) {
    if (over_ && event->key() == Qt::Key_Escape)
        clear();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace wg::ui
