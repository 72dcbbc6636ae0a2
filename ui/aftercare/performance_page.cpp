#include "ui/aftercare/performance_page.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyle>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>

#include "core/weather/altitude.h"
#include "ui/aftercare/dates.h"
#include "ui/aftercare/quiet_table.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int result_rows = 3;

QString period_words(const aftercare::Metered& metered) {
    QString words = PerformancePage::tr("%1 to %2: %3 in %4 days")
                        .arg(date_words(metered.from), date_words(metered.to),
                             quantity(metered.electricity_kwh, QStringLiteral("kWh")), number(metered.days()));
    if (metered.heat_kwh)
        words += PerformancePage::tr(", heat metered");
    else if (metered.water_m3)
        words += PerformancePage::tr(", water metered");
    return words;
}

Mark performance_mark(aftercare::Performance verdict) {
    switch (verdict) {
        case aftercare::Performance::as_expected: return Mark::ready;
        case aftercare::Performance::more:
        case aftercare::Performance::less: return Mark::note;
        case aftercare::Performance::clearly_more:
        case aftercare::Performance::clearly_less: return Mark::caution;
        case aftercare::Performance::cannot_tell: break;
    }
    return Mark::begun;
}

}  // namespace

PerformancePage::PerformancePage(QWidget* parent) : QWidget(parent) {
    empty_ = new EmptyPane(tr("No meter readings to compare"),
                           tr("Enter the electricity meter of the block on two days, a month or more apart: with the "
                              "readings of the fitting, or of a service. A heat or water meter read on the same days "
                              "makes the comparison sharper."),
                           QString(), this);
    auto* page = new QWidget(this);
    auto* of_page = new QVBoxLayout(page);
    of_page->setContentsMargins(16, 16, 16, 16);
    of_page->setSpacing(12);
    of_page->addWidget(make_head());
    of_page->addWidget(make_result(), 1);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(page);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(stack_);
    connect(&watcher_, &QFutureWatcher<Answer>::finished, this, &PerformancePage::take);
}

PerformancePage::~PerformancePage() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

QWidget* PerformancePage::make_head() {
    auto* head = new QWidget(this);
    period_ = new CalmCombo(head);
    weather_ = new CalmCombo(head);
    for (QComboBox* box : {period_, weather_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(20);
        box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    auto* of_period = new QLabel(tr("&Period"), head);
    of_period->setBuddy(period_);
    auto* of_weather = new QLabel(tr("&Weather"), head);
    of_weather->setBuddy(weather_);
    compare_ = new QPushButton(tr("Compare"), head);
    compare_->setProperty("role", QStringLiteral("primary"));
    progress_ = new QProgressBar(head);
    progress_->setRange(0, 0);
    progress_->setTextVisible(false);
    progress_->setFixedWidth(90);
    progress_->hide();
    // One below the other: both say a whole line.
    auto* grid = new QGridLayout(head);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(1, 1);
    grid->addWidget(of_period, 0, 0);
    grid->addWidget(period_, 0, 1);
    grid->addWidget(of_weather, 1, 0);
    grid->addWidget(weather_, 1, 1);
    grid->addWidget(compare_, 1, 2);
    grid->addWidget(progress_, 1, 3);
    connect(compare_, &QPushButton::clicked, this, &PerformancePage::compare);
    const auto outdated = [this] {
        check_.reset();
        show_check();
    };
    connect(period_, &QComboBox::currentIndexChanged, this, outdated);
    connect(weather_, &QComboBox::currentIndexChanged, this, outdated);
    return head;
}

QWidget* PerformancePage::make_result() {
    auto* part = new QWidget(this);
    mark_ = new QLabel(part);
    verdict_ = new QLabel(part);
    verdict_->setProperty("role", QStringLiteral("title"));
    verdict_->setWordWrap(true);
    verdict_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(mark_, 0, Qt::AlignTop);
    head->addWidget(verdict_, 1);
    table_ = quiet_table({QString(), tr("Metered"), tr("Expected"), tr("Likely range")}, part);
    table_->setRowCount(result_rows);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setAccessibleName(tr("Metered and expected"));
    table_->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    look_ = new QLabel(part);
    look_->setWordWrap(true);
    look_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    basis_ = new QLabel(part);
    basis_->setProperty("role", QStringLiteral("muted"));
    basis_->setWordWrap(true);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(table_);
    column->addWidget(look_);
    column->addWidget(basis_);
    column->addStretch(1);
    return part;
}

void PerformancePage::set_library(LibraryYears library) {
    library_ = std::move(library);
}

void PerformancePage::set_session(JobSession* session) {
    session_ = session;
    periods_.clear();
    check_.reset();
}

void PerformancePage::refresh() {
    if (session_ == nullptr) return;
    std::vector<aftercare::Metered> now = aftercare::metered_periods(session_->job().record);
    QStringList words;
    for (const aftercare::Metered& metered : now)
        words.append(period_words(metered));
    QStringList shown;
    for (int i = 0; i < period_->count(); ++i)
        shown.append(period_->itemText(i));
    periods_ = std::move(now);
    if (words != shown) {
        period_->clear();
        period_->addItems(words);
        period_->setCurrentIndex(static_cast<int>(words.size()) - 1);
    }
    fill_weather();
    stack_->setCurrentIndex(periods_.empty() ? 0 : 1);
    if (!busy()) show_check();
}

void PerformancePage::fill_weather() {
    const QString chosen = weather_->currentData().toString();
    const QSignalBlocker quiet(weather_);
    weather_->clear();
    const auto& in_use = session_->reference().weather;
    weather_->addItem(in_use == nullptr ? tr("As planned") : tr("As planned: %1").arg(qs(in_use->year.source)),
                      QString());
    if (library_.list) {
        for (const store::WeatherYearRow& row : library_.list())
            weather_->addItem(qs(row.label.empty() ? row.source : row.label), qs(row.id));
    }
    weather_->setCurrentIndex(std::max(0, weather_->findData(chosen)));
}

void PerformancePage::say(const QString& text) {
    mark_->clear();
    verdict_->setText(text);
    verdict_->setVisible(!text.isEmpty());
    table_->hide();
    look_->hide();
    basis_->clear();
}

void PerformancePage::compare() {
    const int at = period_->currentIndex();
    if (session_ == nullptr || busy() || at < 0 || at >= static_cast<int>(periods_.size())) return;
    auto reference = session_->shared_reference();
    std::string text = reference->weather == nullptr ? std::string() : reference->weather->year.source;
    std::optional<weather::Year> other;
    const std::string id = weather_->currentData().toString().toStdString();
    if (!id.empty()) {
        Result<weather::Year> read = library_.read(id);
        if (!read.ok()) {
            say(qs(text_of(read.problems())));
            return;
        }
        text = weather_->currentText().toStdString() + " " + read.value().source;
        other = std::move(read).value();
    }
    check_.reset();
    compare_->setEnabled(false);
    progress_->show();
    say(tr("Working out the year of operation under this weather\u2026"));
    const Job job = session_->job();
    const aftercare::Metered metered = periods_[static_cast<std::size_t>(at)];
    watcher_.setFuture(QtConcurrent::run([job, metered, text, reference, other]() -> Answer {
        plan::Reference with = *reference;
        if (other) {
            const Result<weather::MovedYear> moved = weather::at_altitude(*other, job.site.location.altitude_m);
            if (!moved.ok()) return std::make_shared<Result<aftercare::PerformanceCheck>>(moved.problems());
            with.weather = plan::prepared(moved.value().year);
            with.further_years.reset();  // one year that was: no other years stand for it
        }
        return std::make_shared<Result<aftercare::PerformanceCheck>>(
            aftercare::performance_of(job, with, metered, text));
    }));
}

void PerformancePage::take() {
    compare_->setEnabled(true);
    progress_->hide();
    const Answer answer = watcher_.result();
    if (!answer->ok()) {
        say(qs(text_of(answer->problems())));
        return;
    }
    check_ = answer->value();
    show_check();
}

void PerformancePage::show_check() {
    if (!check_) {
        say(QString());
        basis_->setText(periods_.empty()
                            ? QString()
                            : tr("Choose period and weather, then compare. Weather of the very period says most: read "
                                 "its file into the library first (Weather menu of the job)."));
        return;
    }
    const aftercare::PerformanceCheck& c = *check_;
    mark_->setPixmap(mark_icon(performance_mark(c.verdict), current_theme(), 20).pixmap(20, 20));
    QString words = qs(c.words);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    verdict_->setText(words);
    verdict_->show();
    const QString kwh = QStringLiteral("kWh");
    const QString none = tr("not metered");
    put_cell(*table_, 0, 0, tr("Electricity"));
    put_cell(*table_, 0, 1, quantity(c.metered.electricity_kwh, kwh), true);
    put_cell(*table_, 0, 2, tr("about %1").arg(quantity(c.mid_kwh, kwh)), true);
    put_cell(*table_, 0, 3, tr("%1 to %2").arg(number(c.low_kwh), quantity(c.high_kwh, kwh)), true);
    put_cell(*table_, 1, 0,
             c.heat_kwh && !c.metered.heat_kwh ? tr("Heat in hot water, from its volume") : tr("Heat in hot water"));
    put_cell(*table_, 1, 1, c.heat_kwh ? quantity(*c.heat_kwh, kwh) : none, true);
    put_cell(*table_, 1, 2, tr("about %1").arg(quantity(c.drawn_expected_kwh, kwh)), true);
    put_cell(*table_, 1, 3, c.use_metered ? tr("as metered") : tr("as planned"), true);
    put_cell(*table_, 2, 0, tr("Heat drawn for each kWh of electricity"));
    put_cell(*table_, 2, 1, c.factor_read ? number(*c.factor_read, 2) : none, true);
    put_cell(*table_, 2, 2, tr("about %1").arg(number(c.factor_expected, 2)), true);
    put_cell(*table_, 2, 3, QString(), true);
    fit_columns(*table_, {1, 2, 3});
    table_->resizeRowsToContents();
    table_->show();
    QStringList look;
    for (const std::string& line : c.look_at)
        look.append(QStringLiteral("\u2013 ") + qs(line));
    look_->setVisible(!look.isEmpty());
    look_->setText(look.isEmpty() ? QString() : tr("Look at:") + QLatin1Char('\n') + look.join(QLatin1Char('\n')));
    QString basis = qs(c.weather_words);
    basis += QLatin1Char('\n') + (c.use_metered ? tr("Hot water is drawn in the model as the meter shows.")
                                                : tr("Hot water is drawn in the model as planned: what the house "
                                                     "really uses may differ by 15 % and is part of the range."));
    basis_->setText(basis);
}

QString PerformancePage::verdict_words() const {
    return verdict_->text();
}

}  // namespace wg::ui
