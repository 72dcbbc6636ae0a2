#include "ui/aftercare/record_and_terms.h"

#include <QCheckBox>
#include <QDateTime>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/aftercare/drift.h"
#include "core/job/words.h"
#include "ui/aftercare/quiet_table.h"
#include "ui/common/edits.h"
#include "ui/common/entry_breaks.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

QLabel* record_title(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("title"));
    return label;
}

QString figure_of(const Reading& reading) {
    switch (reading.kind) {
        case ReadingKind::charge_added:
        case ReadingKind::refrigerant_recovered:
        case ReadingKind::refrigerant_lost: return quantity(reading.value, QStringLiteral("kg"), 3);
        case ReadingKind::electricity_meter:
        case ReadingKind::heat_meter: return quantity(reading.value, QStringLiteral("kWh"), 1);
        case ReadingKind::water_meter: return quantity(reading.value, QStringLiteral("m\u00b3"), 3);
        case ReadingKind::safety_valve_lift:
        case ReadingKind::water_vented:
            return reading.value > 0.0 ? RecordAndTerms::tr("yes") : RecordAndTerms::tr("no");
        case ReadingKind::pressure_hold_start:
        case ReadingKind::pressure_hold_end: return quantity(reading.value, QStringLiteral("bar"), 2);
        case ReadingKind::vacuum_level:
        case ReadingKind::vacuum_after_rise: return quantity(reading.value, QStringLiteral("Pa"), 0);
        case ReadingKind::heating_start:
        case ReadingKind::heating_end:
        case ReadingKind::set_point:
        case ReadingKind::hygiene_setting: return quantity(reading.value, QStringLiteral("\u00b0C"), 1);
        case ReadingKind::wall_contact: return quantity(reading.value, QStringLiteral("k\u03a9"), 1);
        case ReadingKind::hold_point:
            return reading.value > 0.0 ? RecordAndTerms::tr("released") : RecordAndTerms::tr("held");
        default: break;
    }
    const aftercare::Measured* kind = aftercare::measured(reading.kind);
    return kind == nullptr ? QString() : quantity(reading.value, QString::fromUtf8(kind->unit), kind->decimals);
}

}  // namespace

RecordAndTerms::RecordAndTerms(QWidget* parent) : QWidget(parent) {
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(make_record());
    split->addWidget(make_terms());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({640, 360});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(split);
}

QWidget* RecordAndTerms::make_record() {
    auto* part = new QWidget(this);
    record_ = quiet_table({tr("When"), tr("Entry"), tr("Figure"), tr("By")}, part);
    record_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    record_->setAccessibleName(tr("Record, newest first"));
    no_record_ = new QLabel(tr("Nothing yet. Readings of the day are entered on the Fitting stage, those of services "
                               "under Services."),
                            part);
    no_record_->setProperty("role", QStringLiteral("muted"));
    no_record_->setWordWrap(true);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(16, 16, 8, 16);
    column->setSpacing(8);
    column->addWidget(record_title(tr("Record"), part));
    column->addWidget(no_record_);
    column->addWidget(record_, 1);
    column->addStretch(0);
    return part;
}

QWidget* RecordAndTerms::make_terms() {
    auto* part = new QWidget(this);
    NumberField::Range range;
    range.most = 600.0;
    range.decimals = 0;
    range.optional = true;
    warranty_ = new NumberField(tr("Warranty"), tr("months"), range, part);
    warranty_words_ = new TextField(tr("By whom, on what"), part);
    contract_ = new QCheckBox(tr("Service contract"), part);
    contract_words_ = new TextField(tr("What it holds"), part);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("Warranty"), warranty_);
    form->addRow(tr("By whom, on what"), warranty_words_);
    form->addRow(QString(), contract_);
    form->addRow(tr("What it holds"), contract_words_);
    notes_ = new QPlainTextEdit(part);
    notes_->setPlaceholderText(
        tr("What the client was told and given: switch-off, mixing valve, whom to call, where the papers are"));
    notes_->setTabChangesFocus(true);
    notes_->setAccessibleName(tr("Notes for the hand-over and later"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(8, 16, 16, 16);
    column->setSpacing(8);
    column->addWidget(record_title(tr("Agreed for the time after"), part));
    column->addLayout(form);
    column->addSpacing(8);
    column->addWidget(record_title(tr("Notes of the job"), part));
    column->addWidget(notes_, 1);
    connect(warranty_, &NumberField::committed, this, &RecordAndTerms::keep_terms);
    connect(warranty_words_, &TextField::committed, this, &RecordAndTerms::keep_terms);
    connect(contract_, &QCheckBox::clicked, this, &RecordAndTerms::keep_terms);
    connect(contract_words_, &TextField::committed, this, &RecordAndTerms::keep_terms);
    connect(notes_, &QPlainTextEdit::textChanged, this, [this] {
        if (session_ != nullptr)
            set_notes(*session_, notes_->toPlainText().toStdString(), QStringLiteral("aftercare-notes"));
    });
    return part;
}

void RecordAndTerms::set_session(JobSession* session) {
    session_ = session;
}

void RecordAndTerms::refresh() {
    if (session_ == nullptr) return;
    fill_record();
    const AftercareTerms& terms = session_->job().aftercare;
    warranty_->set_value(terms.warranty_months);
    warranty_words_->set_value(qs(terms.warranty_words));
    contract_->setChecked(terms.service_contract);
    contract_words_->set_value(qs(terms.contract_words));
    contract_words_->setEnabled(terms.service_contract);
    const QString notes = qs(session_->job().notes);
    if (notes != notes_->toPlainText()) {
        const QSignalBlocker quiet(notes_);
        notes_->setPlainText(notes);
    }
}

void RecordAndTerms::fill_record() {
    const std::vector<Reading>& record = session_->job().record;
    const EntryBreaks breaks = entry_breaks(record);
    no_record_->setVisible(record.empty());
    record_->setVisible(!record.empty());
    record_->setRowCount(static_cast<int>(record.size()));
    for (std::size_t i = 0; i < record.size(); ++i) {
        const Reading& reading = record[record.size() - 1 - i];
        const int row = static_cast<int>(i);
        const QDateTime at = QDateTime::fromString(qs(reading.taken_at), Qt::ISODate);
        put_cell(*record_, row, 0,
                 at.isValid() ? at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(reading.taken_at));
        QString entry = QString::fromUtf8(text_of(reading.kind));
        if (!reading.subject.empty()) entry += QStringLiteral(": ") + qs(reading.subject);
        if (!reading.corrects_id.empty()) entry += tr(" (correction)");
        // Below: a column of its own would leave it a few words' width.
        if (!reading.note.empty()) entry += QLatin1Char('\n') + qs(reading.note);
        put_cell(*record_, row, 1, entry);
        put_cell(*record_, row, 2, figure_of(reading), true);
        put_cell(*record_, row, 3, qs(reading.taken_by));
        if (const auto broken = breaks.find(reading.id); broken != breaks.end()) mark_broken(row, broken->second);
    }
    fit_columns(*record_, {0, 2, 3}, 220);
}

void RecordAndTerms::mark_broken(int row, const EntryBreak& broken) {
    QTableWidgetItem* entry = record_->item(row, 1);
    entry->setIcon(mark_icon(Mark::stop, current_theme()));
    entry->setText(tr("%1: %2").arg(broken.word, entry->text()));
    for (int column = 0; column < record_->columnCount(); ++column) {
        record_->item(row, column)->setForeground(current_theme().stop);
        record_->item(row, column)->setToolTip(broken.meaning);
    }
}

void RecordAndTerms::keep_terms() {
    if (session_ == nullptr) return;
    AftercareTerms terms = session_->job().aftercare;
    terms.warranty_months = warranty_->value();
    terms.warranty_words = warranty_words_->text().trimmed().toStdString();
    terms.service_contract = contract_->isChecked();
    terms.contract_words = contract_words_->text().trimmed().toStdString();
    set_aftercare_terms(*session_, terms);
}

}  // namespace wg::ui
