#include "ui/aftercare/service_page.h"

#include <QDateTime>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

#include "core/aftercare/icalendar.h"
#include "ui/aftercare/dates.h"
#include "ui/aftercare/quiet_table.h"
#include "ui/aftercare/service_visit.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/common/whole_file.h"

namespace wg::ui {
namespace {

enum Column { done_column, due_column, service_column };

QString interval_words(int months) {
    if (months % 12 == 0) {
        return months == 12 ? ServicePage::tr("every year") : ServicePage::tr("every %1 years").arg(months / 12);
    }
    return ServicePage::tr("every %1 months").arg(months);
}

Mark mark_of(aftercare::ServiceState state) {
    switch (state) {
        case aftercare::ServiceState::overdue: return Mark::stop;
        case aftercare::ServiceState::due: return Mark::caution;
        case aftercare::ServiceState::soon: return Mark::note;
        case aftercare::ServiceState::later: return Mark::ready;
        case aftercare::ServiceState::not_started: break;
    }
    return Mark::empty;
}

QString state_words(const aftercare::ServiceDate& date) {
    switch (date.state) {
        case aftercare::ServiceState::overdue:
            return date.days_left == -1 ? ServicePage::tr("1 day overdue")
                                        : ServicePage::tr("%1 days overdue").arg(number(-date.days_left));
        case aftercare::ServiceState::due:
            return date.days_left == 0   ? ServicePage::tr("due today")
                   : date.days_left == 1 ? ServicePage::tr("due tomorrow")
                                         : ServicePage::tr("due in %1 days").arg(date.days_left);
        case aftercare::ServiceState::soon: return ServicePage::tr("in %1 weeks").arg((date.days_left + 3) / 7);
        case aftercare::ServiceState::later: return QString();
        case aftercare::ServiceState::not_started: break;
    }
    return ServicePage::tr("not started");
}

}  // namespace

ServicePage::ServicePage(QWidget* parent) : QWidget(parent) {
    form_ = new ServiceVisit(this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(make_list());
    split->addWidget(form_);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({580, 430});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(split);
    connect(form_, &ServiceVisit::add_asked, this, &ServicePage::add_visit);
}

QWidget* ServicePage::make_list() {
    auto* part = new QWidget(this);
    started_ = new QLabel(part);
    started_->setWordWrap(true);
    table_ = quiet_table({tr("Done"), tr("Due"), tr("Service")}, part);
    table_->horizontalHeader()->setSectionResizeMode(service_column, QHeaderView::Stretch);
    table_->setAccessibleName(tr("Services due"));
    warranty_ = new QLabel(part);
    warranty_->setWordWrap(true);
    calendar_ = new QPushButton(tr("Save as calendar"), part);
    calendar_->setToolTip(tr("Dates of all services and the warranty's end as a file that calendar programs read"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(16, 16, 8, 16);
    column->setSpacing(8);
    column->addWidget(started_);
    column->addWidget(table_, 1);
    column->addWidget(warranty_);
    column->addWidget(calendar_, 0, Qt::AlignLeft);
    connect(table_, &QTableWidget::itemChanged, this,
            [this] { form_->set_services_chosen(static_cast<int>(ticked().size())); });
    connect(table_, &QTableWidget::cellActivated, this, [this](int row) {
        QTableWidgetItem* tick = table_->item(row, done_column);
        tick->setCheckState(tick->checkState() == Qt::Checked ? Qt::Unchecked : Qt::Checked);
    });
    connect(calendar_, &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getSaveFileName(this, tr("Save as calendar"), QStringLiteral("services.ics"),
                                                          tr("Calendar (*.ics)"));
        if (!path.isEmpty()) static_cast<void>(save_calendar(path));
    });
    return part;
}

void ServicePage::set_session(JobSession* session) {
    session_ = session;
    dates_.clear();
    form_->clear_entries();
}

void ServicePage::show_plan(const plan::Plan& plan) {
    const std::vector<std::string> before = ticked();
    dates_ = aftercare::service_dates(plan.service, session_->job().record, today_civil());
    fill(plan);
    for (std::size_t i = 0; i < dates_.size(); ++i) {
        const bool again = std::find(before.begin(), before.end(), dates_[i].service.id) != before.end();
        if (again) table_->item(static_cast<int>(i), done_column)->setCheckState(Qt::Checked);
    }
    form_->set_services_chosen(static_cast<int>(ticked().size()));
    form_->set_record(session_->job().record);
    fill_terms(plan);
}

void ServicePage::fill(const plan::Plan&) {
    const QSignalBlocker quiet(table_);
    const Theme& theme = current_theme();
    table_->setRowCount(static_cast<int>(dates_.size()));
    for (std::size_t i = 0; i < dates_.size(); ++i) {
        const aftercare::ServiceDate& date = dates_[i];
        const int row = static_cast<int>(i);
        auto* tick = new QTableWidgetItem;
        tick->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        tick->setCheckState(Qt::Unchecked);
        tick->setToolTip(tr("Tick what was done on this visit"));
        table_->setItem(row, done_column, tick);
        QString due = date.due_on ? date_words(date.due_on) : QString();
        if (const QString state = state_words(date); !state.isEmpty())
            due += due.isEmpty() ? state : QLatin1Char('\n') + state;
        // When it was last done stands below: the words of the service need the width.
        due += QLatin1Char('\n') + interval_words(date.service.every_months) + QLatin1Char('\n') +
               (date.last_done_on ? tr("last %1").arg(date_words(date.last_done_on)) : tr("not done yet"));
        put_cell(*table_, row, due_column, due)->setIcon(mark_icon(mark_of(date.state), theme));
        const QString text = qs(date.service.text);
        put_cell(*table_, row, service_column, text)
            ->setToolTip(tr("%1\nWhy: %2. Source: %3").arg(text, qs(date.service.why), qs(date.service.source)));
    }
    fit_columns(*table_, {done_column, due_column});
}

void ServicePage::fill_terms(const plan::Plan& plan) {
    const std::optional<CivilDate> start = aftercare::started_on(session_->job().record);
    started_->setText(
        start ? tr("Started on %1. Intervals by the rule set: %2.").arg(date_words(start), qs(plan.rule_set_label))
              : tr("Not started yet: dates count from the first reading of the running system, entered "
                   "on the Fitting stage."));
    calendar_->setEnabled(
        std::any_of(dates_.begin(), dates_.end(), [](const auto& d) { return d.due_on.has_value(); }));
    const AftercareTerms& terms = session_->job().aftercare;
    const auto warranty = aftercare::warranty(session_->job(), today_civil());
    QString words;
    if (warranty) {
        const QString from = warranty->from_hand_over ? tr("the client's signature") : tr("the start of the system");
        words = warranty->days_left >= 0 ? tr("Warranty until %1 (counted from %2, %3).")
                                               .arg(date_words(warranty->ends_on), from, date_words(warranty->from))
                                         : tr("The warranty ended on %1.").arg(date_words(warranty->ends_on));
    } else if (terms.warranty_months) {
        words = tr("Warranty of %1: counts from the client's signature.")
                    .arg(quantity(*terms.warranty_months, tr("months")));
    } else {
        words = tr("No warranty terms in the job.");
    }
    // What was agreed follows as it was written, whether or not it begins a sentence.
    const auto with = [](QString sentence, const std::string& agreed) {
        if (agreed.empty()) return sentence;
        if (sentence.endsWith(QLatin1Char('.'))) sentence.chop(1);
        return QString(sentence + QStringLiteral(": ") + qs(agreed));
    };
    words = with(words, terms.warranty_words);
    if (terms.service_contract) words += QLatin1Char('\n') + with(tr("Service contract."), terms.contract_words);
    warranty_->setText(words);
}

QString ServicePage::warranty_words() const {
    return warranty_->text();
}

std::vector<std::string> ServicePage::ticked() const {
    std::vector<std::string> ids;
    const int rows = std::min(table_->rowCount(), static_cast<int>(dates_.size()));
    for (int row = 0; row < rows; ++row) {
        const QTableWidgetItem* tick = table_->item(row, done_column);
        if (tick != nullptr && tick->checkState() == Qt::Checked)
            ids.push_back(dates_[static_cast<std::size_t>(row)].service.id);
    }
    return ids;
}

bool ServicePage::add_visit() {
    if (session_ == nullptr) return false;
    std::optional<std::vector<Reading>> entries = form_->entries(ticked());
    if (!entries) return false;
    {
        const QSignalBlocker quiet(table_);
        for (int row = 0; row < table_->rowCount(); ++row)
            table_->item(row, done_column)->setCheckState(Qt::Unchecked);
    }
    form_->clear_entries();
    for (Reading& entry : *entries)
        append_reading(*session_, std::move(entry));
    Q_EMIT said(entries->size() == 1 ? tr("1 entry added to the record")
                                     : tr("%1 entries added to the record").arg(entries->size()));
    return true;
}

bool ServicePage::save_calendar(const QString& path) {
    const Instant now{QDateTime::currentSecsSinceEpoch()};
    const std::string text = aftercare::icalendar(aftercare::calendar_of(session_->job(), dates_, today_civil()), now);
    const Result<bool> written = write_whole(path, text);
    Q_EMIT said(written ? tr("Calendar saved: %1").arg(path) : qs(wg::text_of(written.problems())));
    return written.ok();
}

}  // namespace wg::ui
