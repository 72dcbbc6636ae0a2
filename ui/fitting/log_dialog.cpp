#include "ui/fitting/log_dialog.h"

#include <QComboBox>
#include <QDateTimeEdit>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSlider>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/verdict_list.h"

namespace wg::ui {

LogDialog::LogDialog(commissioning::GaugeLog log, const QString& file_name, const InstrumentBook& book,
                     Occasion occasion, QWidget* parent)
    : QDialog(parent), log_(std::move(log)), file_name_(file_name), occasion_(occasion) {
    setWindowTitle(tr("Take in a gauge log: %1").arg(file_name_));
    auto* left = new QWidget(this);
    picture_ = new QVBoxLayout(left);
    picture_->setContentsMargins(0, 0, 0, 0);
    from_ = new QSlider(Qt::Horizontal, left);
    from_->setAccessibleName(tr("Moment from which the log counts"));
    from_->setRange(0, std::max(0, static_cast<int>(log_.points.size()) - 2));
    from_->setMinimumHeight(48);
    from_words_ = new QLabel(left);
    from_words_->setWordWrap(true);
    summary_ = new QLabel(left);
    summary_->setWordWrap(true);
    summary_->setProperty("role", QStringLiteral("muted"));
    picture_->addWidget(from_words_);
    picture_->addWidget(from_);
    picture_->addWidget(summary_);
    picture_->addStretch(1);
    auto* fields = new QScrollArea(this);
    fields->setWidgetResizable(true);
    fields->setFrameShape(QFrame::NoFrame);
    fields->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    fields->setWidget(make_fields(book));
    fields->setMinimumWidth(380);
    auto* body = new QHBoxLayout;
    body->setSpacing(16);
    body->addWidget(left, 1);
    body->addWidget(fields);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* cancel = new QPushButton(tr("Cancel"), this);
    auto* add = new QPushButton(tr("Enter into the record"), this);
    add->setProperty("role", QStringLiteral("primary"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(problem_, 1);
    buttons->addStretch(0);
    for (QPushButton* button : {cancel, add}) {
        button->setProperty("touch", QStringLiteral("large"));
        buttons->addWidget(button);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->addLayout(body, 1);
    column->addLayout(buttons);
    resize(940, 520);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(add, &QPushButton::clicked, this, [this] {
        if (!entries().empty()) accept();
    });
    connect(from_, &QSlider::valueChanged, this, &LogDialog::refresh);
    connect(started_, &QDateTimeEdit::dateTimeChanged, this, &LogDialog::refresh);
    connect(what_, &QComboBox::currentIndexChanged, this, [this] {
        from_->setValue(static_cast<int>(likely_from(log_, what_->currentData().toBool())));
        refresh();
    });
    choose_evacuation(looks_like_evacuation(log_));
    from_->setValue(static_cast<int>(likely_from(log_, what_->currentData().toBool())));
    refresh();
}

QWidget* LogDialog::make_fields(const InstrumentBook& book) {
    auto* fields = new QWidget(this);
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(0, 0, 8, 0);
    form->setVerticalSpacing(8);
    form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    what_ = new CalmCombo(fields);
    // Only what the log has pressures for.
    if (log_.has_absolute) what_->addItem(tr("Evacuation"), true);
    if (log_.has_gauge) what_->addItem(tr("Pressure hold"), false);
    started_ = new QDateTimeEdit(fields);
    started_->setDisplayFormat(QStringLiteral("yyyy-MM-dd HH:mm:ss"));
    const QDateTime start = start_of(log_, QDate::currentDate());
    // Without a clock in the log its end is taken as now: a gauge is read out when it is done.
    started_->setDateTime(start.isValid()
                              ? start.toLocalTime()
                              : QDateTime::currentDateTime().addSecs(-static_cast<qint64>(log_.points.back().seconds)));
    who_ = new CalmCombo(fields);
    who_->setEditable(true);
    who_->addItems(book.people());
    instrument_ = new CalmCombo(fields);
    instrument_->setEditable(true);
    instrument_->lineEdit()->setPlaceholderText(tr("make and number"));
    for (const Instrument& one : book.instruments())
        instrument_->addItem(one.name);
    const Instrument last =
        book.last_for(looks_like_evacuation(log_) ? ReadingKind::vacuum_level : ReadingKind::pressure_hold_start);
    instrument_->setEditText(last.name);
    calibrated_ = new QLineEdit(last.calibrated_on, fields);
    calibrated_->setPlaceholderText(QStringLiteral("2026-03-01"));
    start_c_ = new QLineEdit(fields);
    end_c_ = new QLineEdit(fields);
    indoors_c_ = new QLineEdit(fields);
    start_c_label_ = new QLabel(fields);
    end_c_label_ = new QLabel(tr("Gas outdoors at the end, \u00b0C"), fields);
    indoors_label_ = new QLabel(tr("Gas indoors, \u00b0C"), fields);
    for (QWidget* field :
         std::initializer_list<QWidget*>{what_, who_, instrument_, calibrated_, start_c_, end_c_, indoors_c_, started_})
        field->setProperty("touch", QStringLiteral("large"));
    form->addRow(tr("What it was"), what_);
    form->addRow(tr("Log began"), started_);
    form->addRow(tr("Read by"), who_);
    form->addRow(tr("Instrument"), instrument_);
    form->addRow(tr("Calibrated on"), calibrated_);
    form->addRow(start_c_label_, start_c_);
    form->addRow(end_c_label_, end_c_);
    form->addRow(indoors_label_, indoors_c_);
    what_->setObjectName(QStringLiteral("what"));
    who_->setObjectName(QStringLiteral("who"));
    instrument_->setObjectName(QStringLiteral("instrument"));
    start_c_->setObjectName(QStringLiteral("start_c"));
    for (QLineEdit* edit : {start_c_, end_c_, indoors_c_})
        edit->setPlaceholderText(tr("not read"));
    return fields;
}

void LogDialog::choose_evacuation(bool evacuation) {
    const int at = what_->findData(evacuation);
    if (at >= 0) what_->setCurrentIndex(at);
}

void LogDialog::choose_from(std::size_t point) {
    from_->setValue(static_cast<int>(point));
}

QString LogDialog::summary() const {
    return summary_->text();
}

void LogDialog::say(const QString& text) {
    problem_->setText(text);
    problem_->setVisible(!text.isEmpty());
}

void LogDialog::refresh() {
    const bool evacuation = what_->currentData().toBool();
    const auto from = static_cast<std::size_t>(from_->value());
    auto* fresh = new CurveView(curve_of_log(log_, evacuation, from), this);
    if (curve_ == nullptr) {
        picture_->insertWidget(0, fresh);
    } else {
        picture_->replaceWidget(curve_, fresh);
        delete curve_;
    }
    curve_ = fresh;
    const commissioning::GaugePoint& point = log_.points[from];
    const QString at =
        started_->dateTime().addMSecs(static_cast<qint64>(point.seconds * 1000.0)).toString(QStringLiteral("HH:mm:ss"));
    const auto value = evacuation ? point.absolute_pa : point.gauge_bar;
    const QString shown = !value       ? tr("no reading there")
                          : evacuation ? quantity(*value, QStringLiteral("Pa"), 0)
                                       : quantity(*value, QStringLiteral("bar"), 2);
    from_words_->setText(evacuation
                             ? tr("Valve shut at %1, at %2. Move the slider to where it was shut.").arg(at, shown)
                             : tr("Hold begun at %1, at %2. Move the slider to where it began.").arg(at, shown));
    start_c_label_->setText(evacuation ? tr("Coldest part, \u00b0C") : tr("Gas outdoors at the start, \u00b0C"));
    for (QWidget* part : std::initializer_list<QWidget*>{start_c_label_, start_c_})
        part->setVisible(!log_.has_temperature);
    for (QWidget* part : std::initializer_list<QWidget*>{end_c_label_, end_c_})
        part->setVisible(!log_.has_temperature && !evacuation);
    for (QWidget* part : std::initializer_list<QWidget*>{indoors_label_, indoors_c_})
        part->setVisible(!evacuation);
    LogChoice choice;
    choice.evacuation = evacuation;
    choice.from = from;
    choice.started = started_->dateTime();
    const std::size_t count = entries_of_log(log_, choice).size();
    QStringList lines{
        tr("%1 points in the log; %2 entries over %3")
            .arg(log_.points.size())
            .arg(count)
            .arg(quantity((log_.points.back().seconds - point.seconds) / 60.0, QStringLiteral("min"), 0))};
    for (const std::string& note : log_.notes)
        lines << qs(note);
    summary_->setText(lines.join(QLatin1Char('\n')));
}

bool LogDialog::by_hand(QLineEdit& edit, const QString& name, std::optional<double>& value) {
    if (edit.isHidden() || edit.text().trimmed().isEmpty()) return true;
    value = parsed_number(edit.text());
    if (value && *value >= -60.0 && *value <= 120.0) return true;
    say(tr("%1: a number between -60 and 120, or nothing.").arg(name));
    edit.setFocus();
    return false;
}

std::vector<Reading> LogDialog::entries() {
    LogChoice choice;
    choice.evacuation = what_->currentData().toBool();
    choice.from = static_cast<std::size_t>(from_->value());
    choice.started = started_->dateTime();
    choice.who = who_->currentText().trimmed();
    choice.instrument = instrument_->currentText().trimmed();
    choice.file_name = file_name_;
    choice.occasion = occasion_;
    if (choice.who.isEmpty()) return say(tr("Say who read it.")), std::vector<Reading>();
    if (choice.instrument.isEmpty()) return say(tr("Name the instrument.")), std::vector<Reading>();
    const QDate calibrated = QDate::fromString(calibrated_->text().trimmed(), Qt::ISODate);
    if (!calibrated_->text().trimmed().isEmpty() && !calibrated.isValid())
        return say(tr("Enter the day of calibration as 2026-03-01, or leave it empty.")), std::vector<Reading>();
    if (calibrated.isValid()) choice.calibrated_on = calibrated.toString(Qt::ISODate);
    if (!by_hand(*start_c_, start_c_label_->text(), choice.start_c) ||
        !by_hand(*end_c_, end_c_label_->text(), choice.end_c) ||
        !by_hand(*indoors_c_, indoors_label_->text(), choice.indoors_c))
        return {};
    // Half an hour of grace: clocks of gauges are set by hand.
    if (choice.started.addSecs(static_cast<qint64>(log_.points.back().seconds)) >
        QDateTime::currentDateTime().addSecs(1800))
        return say(tr("The log would end later than now: put its beginning right.")), std::vector<Reading>();
    std::vector<Reading> made = entries_of_log(log_, choice);
    // Refused here rather than by the store: what a gauge logs when it is opened to the air cannot be meant.
    for (const Reading& reading : made)
        if (!plausible(reading.kind, reading.value))
            return say(tr("%1 in the log cannot be meant.").arg(value_words(reading))), std::vector<Reading>();
    say(made.empty() ? tr("Fewer than two readings are left: move the slider back.") : QString());
    return made;
}

}  // namespace wg::ui
