#include "ui/desk/job_preview.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedLayout>
#include <QStyle>
#include <QVBoxLayout>

#include "core/job/words.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {
namespace {

void set_role(QLabel& label, const QString& role) {
    label.setProperty("role", role);
    label.style()->unpolish(&label);
    label.style()->polish(&label);
}

QString joined(std::initializer_list<std::string> lines) {
    QStringList kept;
    for (const std::string& line : lines) {
        if (!line.empty()) kept.append(qs(line));
    }
    return kept.join(QLatin1Char('\n'));
}

/// A line for each state that the job was in.
QString words_of_days(const std::vector<store::StateDay>& days) {
    QStringList lines;
    for (const store::StateDay& one : days) {
        const auto state = from_key<JobState>(one.to);
        const QString name = state ? QString::fromUtf8(text_of(*state)) : qs(one.to);
        lines << (one.by.empty() ? JobPreview::tr("%1 since %2").arg(name, day(one.at))
                                 : JobPreview::tr("%1 since %2, %3").arg(name, day(one.at), qs(one.by)));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace

SketchThumbnail::SketchThumbnail(QWidget* parent) : QWidget(parent) {
    setMinimumSize(200, 120);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Site sketch"));
}

void SketchThumbnail::set_job(const Job& job) {
    job_ = job;
    update();
}

void SketchThumbnail::paintEvent(QPaintEvent*) {
    const Theme& theme = current_theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.ground);
    const Site& site = job_.site;
    if (site.surfaces.empty() && site.obstacles.empty() && site.spots.empty()) {
        painter.setPen(theme.muted);
        painter.drawText(rect(), Qt::AlignCenter, tr("No sketch yet"));
        return;
    }
    SiteDrawing drawing;
    drawing.job = &job_;
    drawing.choice = chosen_choice(job_);
    drawing.grid = false;
    drawing.labels = false;
    drawing.area = QRectF(rect());
    // The north arrow stands in the upper right corner; the site keeps clear of it.
    const double arrow_px = 56.0;
    paint_site(painter, drawing, fit_site(site, QRectF(rect()).adjusted(0, 0, -arrow_px, 0), 16.0), theme);
}

JobPreview::JobPreview(QWidget* parent) : QFrame(parent) {
    setProperty("role", QStringLiteral("panel"));
    pages_ = new QStackedLayout(this);
    nothing_ = new EmptyPane({}, {}, {}, this);
    pages_->addWidget(nothing_);

    // On a low screen the words scroll rather than run into each other; the buttons stay.
    auto* whole = new QWidget(this);
    auto* page = new QWidget(whole);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(16, 16, 16, 0);
    column->setSpacing(8);
    title_ = add_line(page, QStringLiteral("title"));
    invented_ = add_line(page, QStringLiteral("caution"));
    invented_->setText(tr("Demonstration data, invented"));
    client_ = add_line(page, QString());
    client_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    customer_ = new QPushButton(page);
    customer_->setProperty("role", QStringLiteral("link"));
    column->addWidget(customer_, 0, Qt::AlignLeft);
    sketch_ = new SketchThumbnail(page);
    column->addWidget(sketch_, 1);
    state_ = add_line(page, QString());
    due_ = add_line(page, QString());
    auto* scroll = new QScrollArea(whole);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(page);
    auto* open = new QPushButton(tr("Open the job"), whole);
    open->setProperty("role", QStringLiteral("primary"));
    auto* remove = new QPushButton(tr("Remove"), whole);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(16, 0, 16, 16);
    foot->addWidget(open, 1);
    foot->addWidget(remove);
    auto* parts = new QVBoxLayout(whole);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(8);
    parts->addWidget(scroll, 1);
    parts->addLayout(foot);
    pages_->addWidget(whole);

    connect(open, &QPushButton::clicked, this, &JobPreview::open_asked);
    connect(remove, &QPushButton::clicked, this, &JobPreview::remove_asked);
    connect(customer_, &QPushButton::clicked, this, &JobPreview::customer_asked);
    connect(nothing_, &EmptyPane::step_asked, this, &JobPreview::new_asked);
    show_nothing(false);
}

QLabel* JobPreview::add_line(QWidget* page, const QString& role) {
    auto* label = new QLabel(page);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    if (!role.isEmpty()) label->setProperty("role", role);
    page->layout()->addWidget(label);
    return label;
}

void JobPreview::show_job(const Job& job, const NextDue& due, const std::vector<store::StateDay>& days,
                          const QString& customer) {
    customer_->setText(customer);
    customer_->setVisible(!customer.isEmpty());
    title_->setText(joined({job.number, job.title}));
    client_->setText(
        joined({job.client.name, job.client.street,
                job.client.postcode.empty() ? job.client.town : job.client.postcode + " " + job.client.town,
                job.client.phone, job.client.email}));
    client_->setVisible(!client_->text().isEmpty());
    invented_->setVisible(job.invented);
    sketch_->set_job(job);
    const QString state = QString::fromUtf8(text_of(job.state));
    state_->setText(days.empty() ? tr("State: %1").arg(state)
                                 : tr("State: %1 since %2").arg(state, day(days.back().at)));
    state_->setToolTip(words_of_days(days));
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);
    QString text = tr("Next: %1").arg(due.text);
    if (due.on.isValid()) {
        const QString date = english.toString(due.on, QStringLiteral("d MMMM yyyy"));
        text = due.overdue ? tr("Next: %1, overdue since %2").arg(due.text, date)
                           : tr("Next: %1, by %2").arg(due.text, date);
    }
    due_->setText(text);
    set_role(*due_, due.overdue ? QStringLiteral("caution") : QString());
    pages_->setCurrentIndex(1);
}

void JobPreview::show_nothing(bool empty_desk) {
    if (empty_desk) {
        nothing_->set_words(tr("No jobs yet"), tr("Jobs that you start or open from a file stand here, newest first."),
                            tr("Start a job"));
    } else {
        nothing_->set_words(tr("No job selected"), tr("Select a job to see its client, sketch and next step."), {});
    }
    pages_->setCurrentIndex(0);
}

}  // namespace wg::ui
