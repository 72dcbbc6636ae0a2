#include "ui/desk/services_page.h"

#include <QButtonGroup>
#include <QDateTime>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/aftercare/icalendar.h"
#include "ui/common/format.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/common/whole_file.h"
#include "ui/common/wrapped_cells.h"

namespace wg::ui {
namespace {

constexpr int job_role = Qt::UserRole;
constexpr int service_row_px = 40;
constexpr int most_column_px = 200;  ///< names wrap: what is to be done has the width

enum Column { day_column, what_column, who_column, where_column, last_column, column_count };

QString short_day(CivilDate date) {
    return QLocale(QLocale::English, QLocale::UnitedKingdom)
        .toString(QDate(date.year, date.month, date.day), QStringLiteral("ddd d MMM yyyy"));
}

QString week_words(const DueWeek& week) {
    const auto many = static_cast<int>(week.visits.size());
    const QString houses = many == 1 ? ServicesPage::tr("1 house") : ServicesPage::tr("%1 houses").arg(many);
    if (!week.monday) return ServicesPage::tr("Overdue: %1").arg(houses);
    return ServicesPage::tr("Week %1, from %2: %3")
        .arg(aftercare::iso_week(*week.monday))
        .arg(short_day(*week.monday), houses);
}

Mark due_mark(aftercare::ServiceState state) {
    switch (state) {
        case aftercare::ServiceState::overdue: return Mark::stop;
        case aftercare::ServiceState::due: return Mark::caution;
        case aftercare::ServiceState::soon: return Mark::note;
        default: return Mark::ready;
    }
}

QString joined_words(std::initializer_list<std::string> parts, const QString& between) {
    QStringList kept;
    for (const std::string& part : parts)
        if (!part.empty()) kept.append(qs(part));
    return kept.join(between);
}

}  // namespace

ServicesPage::ServicesPage(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    table_ = new QTableWidget(this);
    table_->setColumnCount(column_count);
    table_->setHorizontalHeaderLabels({tr("Due"), tr("Service"), tr("Job and client"), tr("Where"), tr("Last done")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->setAccessibleName(tr("Services due"));
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setMinimumSectionSize(service_row_px);
    WrappedCells::use_in(*table_);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setSectionResizeMode(what_column, QHeaderView::Stretch);
    none_ = new QLabel(this);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    none_->setAlignment(Qt::AlignCenter);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addWidget(make_head());
    column->addWidget(none_, 1);
    column->addWidget(table_, 1);
    connect(table_, &QTableWidget::cellActivated, this, [this](int row) {
        const QTableWidgetItem* item = table_->item(row, day_column);
        const QString id = item == nullptr ? QString() : item->data(job_role).toString();
        if (!id.isEmpty()) Q_EMIT open_asked(id);
    });
}

QWidget* ServicesPage::make_head() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    spans_ = new QButtonGroup(this);
    int id = 0;
    for (const QString& words : {tr("Overdue"), tr("Next 4 weeks"), tr("3 months"), tr("All")}) {
        auto* button = new QPushButton(words, head);
        button->setCheckable(true);
        spans_->addButton(button, id++);
        row->addWidget(button);
    }
    spans_->button(four_weeks)->setChecked(true);
    area_ = new QLineEdit(head);
    area_->setPlaceholderText(tr("Area: postcode or town"));
    area_->setAccessibleName(tr("Area"));
    area_->setClearButtonEnabled(true);
    area_->setMaximumWidth(260);
    calendar_ = new QPushButton(tr("Save as calendar"), head);
    list_ = new QPushButton(tr("Save as list"), head);
    list_->setToolTip(tr("Comma separated, for a spreadsheet or print"));
    row->addSpacing(8);
    row->addWidget(area_, 1);
    row->addStretch(1);
    row->addWidget(calendar_);
    row->addWidget(list_);
    connect(spans_, &QButtonGroup::idClicked, this, [this] { fill(); });
    connect(area_, &QLineEdit::textChanged, this, [this] { fill(); });
    connect(calendar_, &QPushButton::clicked, this, [this] {
        save(tr("Save as calendar"), QStringLiteral("services.ics"), tr("Calendar (*.ics)"), calendar().toUtf8());
    });
    connect(list_, &QPushButton::clicked, this, [this] {
        save(tr("Save as list"), QStringLiteral("services.csv"), tr("Comma separated (*.csv)"), list().to_csv());
    });
    return head;
}

void ServicesPage::reload(CivilDate today) {
    today_ = today;
    Result<std::vector<store::ServiceDueRow>> found = store_.services_due({});
    rows_.clear();
    if (found.ok()) {
        rows_ = std::move(found).value();
    } else {
        Q_EMIT problem(qs(text_of(found.problems())));
    }
    fill();
    Q_EMIT reloaded();
}

void ServicesPage::choose(Span span) {
    spans_->button(span)->setChecked(true);
    fill();
}

void ServicesPage::fill() {
    const int span = spans_->checkedId();
    const int days = span == overdue_only ? -1 : span == four_weeks ? aftercare::due_days : aftercare::soon_days;
    const std::string last = iso8601(aftercare::days_after(today_, days));
    std::vector<store::ServiceDueRow> kept;
    for (const store::ServiceDueRow& row : rows_)
        if (span == everything || row.due_on <= last) kept.push_back(row);
    weeks_ = due_weeks(kept, today_, area_->text().trimmed().toStdString());
    table_->clearSpans();
    table_->setRowCount(0);
    for (const DueWeek& week : weeks_) {
        add_heading(week);
        for (const DueVisit& visit : week.visits)
            add_visit(visit);
    }
    for (const int column : {day_column, who_column, where_column, last_column}) {
        table_->resizeColumnToContents(column);
        table_->setColumnWidth(column, std::min(table_->columnWidth(column) + 8, most_column_px));
    }
    none_->setText(rows_.empty() ? tr("Nothing is due. Services of a job appear here once its record holds readings of "
                                      "the running system and it is saved.")
                                 : tr("Nothing is due in this span and area."));
    none_->setVisible(weeks_.empty());
    table_->setVisible(!weeks_.empty());
    calendar_->setEnabled(!weeks_.empty());
    list_->setEnabled(!weeks_.empty());
}

void ServicesPage::add_heading(const DueWeek& week) {
    const int row = table_->rowCount();
    table_->insertRow(row);
    auto* item = new QTableWidgetItem(week_words(week));
    QFont font = table_->font();
    font.setBold(true);
    item->setFont(font);
    item->setFlags(Qt::ItemIsEnabled);
    item->setBackground(current_theme().ground);
    table_->setItem(row, 0, item);
    table_->setSpan(row, 0, 1, column_count);
}

void ServicesPage::add_visit(const DueVisit& visit) {
    const int row = table_->rowCount();
    table_->insertRow(row);
    QStringList what, last;
    for (const store::ServiceDueRow& service : visit.services) {
        what.append((visit.services.size() > 1 ? QStringLiteral("\u2013 ") : QString()) + qs(service.text));
        const Result<CivilDate> done = date_from_iso8601(service.last_done_on);
        const QString words = done ? short_day(done.value()) : tr("not yet");
        if (!last.contains(words)) last.append(words);
    }
    const store::ServiceDueRow& house = visit.house;
    const QString cells[column_count] = {
        short_day(visit.on), what.join(QLatin1Char('\n')),
        joined_words({house.number, house.client}, QStringLiteral("\n")),
        joined_words(
            {house.street, joined_words({house.postcode, house.town}, QStringLiteral(" ")).toStdString(), house.phone},
            QStringLiteral("\n")),
        last.join(QLatin1Char('\n'))};
    for (int column = 0; column < column_count; ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        item->setToolTip(cells[column]);
        item->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        if (column == day_column) {
            item->setIcon(mark_icon(due_mark(visit.state), current_theme()));
            item->setData(job_role, qs(house.job_id));
            item->setToolTip(tr("%1: %2. Enter opens the job.")
                                 .arg(QString::fromLatin1(aftercare::text_of(visit.state)), cells[column]));
        }
        table_->setItem(row, column, item);
    }
}

const store::ServiceDueRow* ServicesPage::next_of(const std::string& job_id) const {
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const store::ServiceDueRow& row) { return row.job_id == job_id; });
    return found == rows_.end() ? nullptr : &*found;
}

QString ServicesPage::count_words() const {
    const int week = due_this_week(rows_, today_);
    const int late = overdue(rows_, today_);
    QStringList parts;
    if (week > 0) parts += week == 1 ? tr("1 service due this week") : tr("%1 services due this week").arg(week);
    if (late > 0) parts += late == 1 ? tr("1 service overdue") : tr("%1 services overdue").arg(late);
    return parts.join(QStringLiteral(", "));
}

QString ServicesPage::calendar() const {
    std::vector<aftercare::CalendarEntry> entries;
    for (const DueWeek& week : weeks_) {
        for (const DueVisit& visit : week.visits) {
            for (const store::ServiceDueRow& service : visit.services) {
                const Result<CivilDate> on = date_from_iso8601(service.due_on);
                if (!on) continue;
                aftercare::CalendarEntry entry;
                entry.uid = aftercare::uid_of(service.job_id, service.service_id);
                entry.on = on.value();
                entry.summary =
                    joined_words({joined_words({service.number, service.client}, QStringLiteral(" ")).toStdString(),
                                  service.text},
                                 QStringLiteral(": "))
                        .toStdString();
                entry.description =
                    joined_words({service.text,
                                  service.last_done_on.empty() ? std::string() : "Last done on " + service.last_done_on,
                                  service.phone.empty() ? std::string() : "Telephone: " + service.phone},
                                 QStringLiteral("\n"))
                        .toStdString();
                entry.location =
                    joined_words({service.street,
                                  joined_words({service.postcode, service.town}, QStringLiteral(" ")).toStdString()},
                                 QStringLiteral(", "))
                        .toStdString();
                entries.push_back(std::move(entry));
            }
        }
    }
    return qs(aftercare::icalendar(entries, Instant{QDateTime::currentSecsSinceEpoch()}));
}

FigureTable ServicesPage::list() const {
    FigureTable out;
    out.header = {tr("Due"),    tr("State"),    tr("Service"), tr("Job"),       tr("Client"),
                  tr("Street"), tr("Postcode"), tr("Town"),    tr("Telephone"), tr("Last done")};
    for (const DueWeek& week : weeks_) {
        for (const DueVisit& visit : week.visits) {
            for (const store::ServiceDueRow& s : visit.services) {
                const Result<CivilDate> on = date_from_iso8601(s.due_on);
                if (!on) continue;
                out.rows.push_back({qs(s.due_on),
                                    QString::fromLatin1(aftercare::text_of(aftercare::state_of(on.value(), today_))),
                                    qs(s.text), qs(s.number), qs(s.client), qs(s.street), qs(s.postcode), qs(s.town),
                                    qs(s.phone), qs(s.last_done_on)});
            }
        }
    }
    return out;
}

void ServicesPage::save(const QString& title, const QString& name, const QString& filter, const QByteArray& bytes) {
    const QString path = QFileDialog::getSaveFileName(this, title, name, filter);
    if (path.isEmpty()) return;
    const Result<bool> written = write_whole(path, bytes);
    if (written)
        Q_EMIT said(tr("Saved: %1").arg(path));
    else
        Q_EMIT problem(qs(wg::text_of(written.problems())));
}

}  // namespace wg::ui
