#include "ui/aftercare/aftercare_stage.h"

#include <QDateTime>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "core/commissioning/commissioning.h"
#include "core/job/words.h"
#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int refresh_delay_ms = 150;
constexpr int row_px = 36;

QLabel* titled(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("title"));
    return label;
}

QString interval_words(int months) {
    if (months % 12 == 0) {
        return months == 12 ? AftercareStage::tr("every year") : AftercareStage::tr("every %1 years").arg(months / 12);
    }
    return AftercareStage::tr("every %1 months").arg(months);
}

QTableWidget* quiet_table(const QStringList& heads, QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setColumnCount(static_cast<int>(heads.size()));
    table->setHorizontalHeaderLabels(heads);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setWordWrap(true);
    table->verticalHeader()->hide();
    table->verticalHeader()->setMinimumSectionSize(row_px);
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return table;
}

}  // namespace

AftercareStage::AftercareStage(QWidget* parent) : StageWidget(parent) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &AftercareStage::refresh);
    empty_ = new EmptyPane(QString(), QString(), QString(), this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(make_services());
    split->addWidget(make_side());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({660, 320});
    split->setChildrenCollapsible(false);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(split);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(stack_);
    connect(empty_, &EmptyPane::step_asked, this, [this] {
        if (session_ != nullptr && session_->job().choices.empty()) add_choice(*session_);
    });
}

QWidget* AftercareStage::make_services() {
    auto* part = new QWidget(this);
    started_ = new QLabel(part);
    started_->setWordWrap(true);
    services_ = quiet_table({tr("Due"), tr("Service"), tr("How often"), tr("Counted from")}, part);
    services_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    services_->setAccessibleName(tr("Services due"));
    by_ = new QLineEdit(part);
    note_ = new QLineEdit(part);
    done_ = new QPushButton(tr("Note as done today"), part);
    done_->setProperty("role", QStringLiteral("primary"));
    problem_ = new QLabel(part);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    form->addRow(tr("Done &by"), by_);
    form->addRow(tr("What was &found"), note_);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(16, 16, 8, 16);
    column->setSpacing(8);
    column->addWidget(titled(tr("Services"), part));
    column->addWidget(started_);
    column->addWidget(services_, 2);
    column->addLayout(form);
    column->addWidget(problem_);
    column->addWidget(done_, 0, Qt::AlignLeft);
    column->addSpacing(8);
    column->addWidget(titled(tr("Record"), part));
    record_ = quiet_table({tr("When"), tr("Entry"), tr("By"), tr("Note")}, part);
    record_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    record_->setAccessibleName(tr("Record, newest first"));
    no_record_ = new QLabel(
        tr("Nothing yet. Readings are entered on the Fitting stage; services noted as done come here too."), part);
    no_record_->setProperty("role", QStringLiteral("muted"));
    no_record_->setWordWrap(true);
    column->addWidget(no_record_);
    column->addWidget(record_, 2);
    connect(done_, &QPushButton::clicked, this, [this] {
        const QDateTime now = QDateTime::currentDateTime();
        note_service_done(now.toOffsetFromUtc(now.offsetFromUtc()).toString(Qt::ISODate));
    });
    connect(services_, &QTableWidget::itemSelectionChanged, this,
            [this] { done_->setEnabled(services_->currentRow() >= 0); });
    return part;
}

QWidget* AftercareStage::make_side() {
    auto* part = new QWidget(this);
    register_ = new QLabel(part);
    register_->setWordWrap(true);
    register_->setTextFormat(Qt::PlainText);
    register_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    notes_ = new QPlainTextEdit(part);
    notes_->setPlaceholderText(
        tr("What the client was told and given: switch-off, mixing valve, whom to call, where the papers are"));
    notes_->setTabChangesFocus(true);
    notes_->setAccessibleName(tr("Notes for the hand-over and later"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(8, 16, 16, 16);
    column->setSpacing(8);
    column->addWidget(titled(tr("Refrigerant register"), part));
    column->addWidget(register_);
    column->addSpacing(8);
    column->addWidget(titled(tr("Notes of the job"), part));
    column->addWidget(notes_, 1);
    connect(notes_, &QPlainTextEdit::textChanged, this, &AftercareStage::keep_notes);
    return part;
}

void AftercareStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    if (session != nullptr) {
        connect(session, &JobSession::plan_changed, this, &AftercareStage::refresh_soon);
        connect(session, &JobSession::job_changed, this, &AftercareStage::refresh_soon);
    }
    refresh();
}

void AftercareStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    refresh();
}

void AftercareStage::hideEvent(QHideEvent* event) {
    // Typing merges into one step only while the stage is looked at.
    if (session_ != nullptr) session_->end_merge();
    StageWidget::hideEvent(event);
}

void AftercareStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void AftercareStage::refresh() {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    if (plan == nullptr) {
        if (session_ == nullptr) {
            empty_->set_words(tr("No job open"), tr("Open a job from the desk."), QString());
        } else if (session_->job().choices.empty()) {
            empty_->set_words(tr("Nothing to look after yet"),
                              tr("Services, register and record follow from the choice that is fitted."),
                              tr("Propose a choice"));
        } else if (session_->planning()) {
            empty_->set_words(tr("Working out the plan"), tr("Services appear as soon as it is there."), QString());
        } else {
            empty_->set_words(tr("There is no plan"), session_->plan_problem(), QString());
        }
        dates_.clear();
        stack_->setCurrentIndex(0);
        return;
    }
    fill_services(*plan);
    fill_register(*plan);
    fill_record();
    const QString notes = qs(session_->job().notes);
    if (notes != notes_->toPlainText()) {
        const QSignalBlocker quiet(notes_);
        notes_->setPlainText(notes);
    }
    stack_->setCurrentIndex(1);
}

void AftercareStage::fill_services(const plan::Plan& plan) {
    const QDate start = started_on(session_->job().record);
    started_->setText(
        start.isValid()
            ? tr("Started on %1. Intervals by the rule set: %2.")
                  .arg(start.toString(Qt::ISODate), qs(plan.rule_set_label))
            : tr("Not started yet: dates count from the first reading of the running system, entered on the "
                 "Fitting stage."));
    const int selected = services_->currentRow();
    dates_ = service_dates(plan.service, session_->job().record, QDate::currentDate());
    services_->setRowCount(static_cast<int>(dates_.size()));
    const Theme& theme = current_theme();
    for (std::size_t i = 0; i < dates_.size(); ++i) {
        const ServiceDate& date = dates_[i];
        const Mark mark = !date.due.isValid() ? Mark::empty : (date.overdue ? Mark::stop : Mark::ready);
        QString due = date.due.isValid() ? date.due.toString(Qt::ISODate) : tr("not started");
        if (date.overdue) due += tr(", overdue");
        QString from = date.counted_from.isValid() ? date.counted_from.toString(Qt::ISODate) : QString();
        if (date.was_done) from += tr(", last done");
        const QString cells[] = {due, qs(date.service.text), interval_words(date.service.every_months), from};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column == 0) item->setIcon(mark_icon(mark, theme));
            item->setToolTip(
                column == 1
                    ? tr("%1\nWhy: %2. Source: %3").arg(cells[column], qs(date.service.why), qs(date.service.source))
                    : cells[column]);
            services_->setItem(static_cast<int>(i), column, item);
        }
    }
    for (const int column : {0, 2, 3})
        services_->resizeColumnToContents(column);

    if (selected >= 0 && selected < services_->rowCount()) services_->selectRow(selected);
    done_->setEnabled(services_->currentRow() >= 0);
    done_->setToolTip(tr("Select a service first"));
}

void AftercareStage::fill_register(const plan::Plan& plan) {
    double added_kg = 0.0;
    int entries = 0;
    for (const Reading& reading : commissioning::standing(session_->job().record)) {
        if (reading.kind != ReadingKind::charge_added) continue;
        added_kg += reading.value;
        ++entries;
    }
    QStringList lines;
    lines += tr("Refrigerant: %1").arg(QString::fromLatin1(name_of(plan.block.refrigerant)));
    lines += tr("Factory charge: %1").arg(quantity(plan.block.charge_kg, QStringLiteral("kg"), 3));
    lines += tr("Extra charge planned: %1").arg(quantity(plan.run.extra_charge_kg, QStringLiteral("kg"), 3));
    lines +=
        entries == 0
            ? tr("Weighed in: no entry yet")
            : tr("Weighed in: %1 in %n entry(ies)", nullptr, entries).arg(quantity(added_kg, QStringLiteral("kg"), 3));
    lines += tr("In the system: %1%2")
                 .arg(quantity(plan.block.charge_kg + added_kg, QStringLiteral("kg"), 3),
                      entries == 0 ? tr(" before any extra charge") : QString());
    lines += tr("Planned total: %1, as carbon dioxide %2")
                 .arg(quantity(plan.run.total_charge_kg, QStringLiteral("kg"), 3),
                      quantity(plan.run.total_charge_t_co2e, QStringLiteral("t"), 3));
    lines += tr("What is taken out at a service is entered as a remark with its weight.");
    register_->setText(lines.join(QLatin1Char('\n')));
}

QString AftercareStage::register_words() const {
    return register_->text();
}

void AftercareStage::fill_record() {
    const std::vector<Reading>& record = session_->job().record;
    no_record_->setVisible(record.empty());
    record_->setVisible(!record.empty());
    record_->setRowCount(static_cast<int>(record.size()));
    for (std::size_t i = 0; i < record.size(); ++i) {
        const Reading& reading = record[record.size() - 1 - i];
        const QDateTime at = QDateTime::fromString(qs(reading.taken_at), Qt::ISODate);
        const QString when =
            at.isValid() ? at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(reading.taken_at);
        QString note = qs(reading.note);
        if (!reading.corrects_id.empty()) note.prepend(tr("(correction) "));
        const QString cells[] = {when, QString::fromUtf8(text_of(reading.kind)), qs(reading.taken_by), note};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(cells[column]);
            record_->setItem(static_cast<int>(i), column, item);
        }
    }
    for (const int column : {0, 1, 2})
        record_->resizeColumnToContents(column);
}

bool AftercareStage::note_service_done(const QString& taken_at) {
    const int row = services_->currentRow();
    const auto refuse = [this](const QString& text) {
        problem_->setText(text);
        problem_->show();
        return false;
    };
    if (session_ == nullptr || row < 0 || row >= static_cast<int>(dates_.size()))
        return refuse(tr("Select a service first."));
    if (by_->text().trimmed().isEmpty()) {
        by_->setFocus();
        return refuse(tr("Say who did it."));
    }
    problem_->hide();
    append_reading(*session_, service_done(dates_[static_cast<std::size_t>(row)].service, taken_at,
                                           by_->text().trimmed(), note_->text().trimmed()));
    note_->clear();
    refresh();
    Q_EMIT status_text(tr("Service added to the record"));
    return true;
}

void AftercareStage::keep_notes() {
    if (session_ != nullptr)
        set_notes(*session_, notes_->toPlainText().toStdString(), QStringLiteral("aftercare-notes"));
}

}  // namespace wg::ui
