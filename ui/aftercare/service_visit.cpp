#include "ui/aftercare/service_visit.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDateTime>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "core/aftercare/drift.h"
#include "core/aftercare/service.h"
#include "core/commissioning/commissioning.h"
#include "core/job/words.h"
#include "ui/aftercare/dates.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int figure_px = 96;
constexpr int note_px = 64;

QString capital(const char* text) {
    QString words = QString::fromUtf8(text);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

/// Scrolling past the day must not change it.
class CalmDate : public QDateEdit {
   public:
    using QDateEdit::QDateEdit;

   protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace

ServiceVisit::ServiceVisit(QWidget* parent) : QWidget(parent) {
    auto* title = new QLabel(tr("This visit"), this);
    title->setProperty("role", QStringLiteral("title"));
    date_ = new CalmDate(QDate::currentDate(), this);
    date_->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    date_->setCalendarPopup(true);
    date_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    date_->setMaximumDate(QDate::currentDate());
    by_ = new QLineEdit(this);
    instrument_ = new QLineEdit(this);
    instrument_->setPlaceholderText(tr("make and number"));
    auto* form = new QFormLayout;
    form->setVerticalSpacing(4);
    form->setHorizontalSpacing(16);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Day"), date_);
    form->addRow(tr("Done &by"), by_);
    form->addRow(tr("&Instruments"), instrument_);
    note_ = new QPlainTextEdit(this);
    note_->setPlaceholderText(tr("What was found and done"));
    note_->setAccessibleName(tr("What was found and done"));
    note_->setTabChangesFocus(true);
    note_->setFixedHeight(note_px);
    chosen_ = new QLabel(this);
    chosen_->setProperty("role", QStringLiteral("muted"));
    chosen_->setWordWrap(true);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    add_ = new QPushButton(tr("Add the visit to the record"), this);
    add_->setProperty("role", QStringLiteral("primary"));
    // All that is filled in scrolls together: on a low screen the readings have the whole height.
    auto* inside = new QWidget(this);
    auto* filled_in = new QVBoxLayout(inside);
    filled_in->setContentsMargins(0, 0, 8, 0);
    filled_in->setSpacing(8);
    filled_in->addLayout(form);
    filled_in->addWidget(make_rows());
    filled_in->addWidget(note_);
    filled_in->addStretch(1);
    scroll_ = new QScrollArea(this);
    scroll_->setWidget(inside);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 16, 8, 16);
    column->setSpacing(8);
    column->addWidget(title);
    column->addWidget(scroll_, 1);
    column->addWidget(chosen_);
    column->addWidget(problem_);
    column->addWidget(add_, 0, Qt::AlignLeft);
    connect(add_, &QPushButton::clicked, this, &ServiceVisit::add_asked);
    set_services_chosen(0);
}

QWidget* ServiceVisit::make_rows() {
    using K = ReadingKind;
    for (const aftercare::Measured& kind : aftercare::measured_kinds())
        rows_.push_back({kind.kind, QString::fromUtf8(kind.unit), kind.decimals, kind.least, kind.most});
    const auto further = [&](ReadingKind kind, const char* unit, int decimals, double most) {
        rows_.push_back({kind, QString::fromUtf8(unit), decimals, 0.0, most});
    };
    further(K::refrigerant_lost, "kg", 3, 20.0);
    further(K::refrigerant_recovered, "kg", 3, 20.0);
    further(K::charge_added, "kg", 3, 20.0);
    further(K::electricity_meter, "kWh", 1, 1e8);
    further(K::heat_meter, "kWh", 1, 1e8);
    further(K::water_meter, "m\u00b3", 3, 1e8);
    auto* part = new QWidget(this);
    auto* grid = new QGridLayout(part);
    grid->setContentsMargins(0, 8, 0, 8);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(0, 1);
    int line = 0;
    valve_ = new CalmCombo(part);
    valve_->addItem(tr("not tried"), -1);
    valve_->addItem(tr("lifts and closes"), 1);
    valve_->addItem(tr("does not"), 0);
    auto* valve_label = new QLabel(capital(text_of(K::safety_valve_lift)), part);
    valve_label->setBuddy(valve_);
    valve_label->setWordWrap(true);
    grid->addWidget(valve_label, line, 0);
    grid->addWidget(valve_, line, 1, 1, 2);
    for (Row& row : rows_) {
        ++line;
        const QString name = capital(text_of(row.kind));
        auto* label = new QLabel(name, part);
        label->setWordWrap(true);
        row.edit = new QLineEdit(part);
        row.edit->setFixedWidth(figure_px);
        row.edit->setAlignment(Qt::AlignRight);
        row.edit->setAccessibleName(QStringLiteral("%1, %2").arg(name, row.unit));
        label->setBuddy(row.edit);
        row.before = new QLabel(row.unit, part);
        row.before->setProperty("role", QStringLiteral("muted"));
        grid->addWidget(label, line, 0);
        grid->addWidget(row.edit, line, 1);
        grid->addWidget(row.before, line, 2);
        connect(row.edit, &QLineEdit::returnPressed, this, &ServiceVisit::add_asked);
    }
    return part;
}

void ServiceVisit::set_record(const std::vector<Reading>& record) {
    const std::vector<Reading> standing = commissioning::standing(record);
    for (Row& row : rows_) {
        const auto last = std::find_if(standing.rbegin(), standing.rend(),
                                       [&](const Reading& reading) { return reading.kind == row.kind; });
        row.before->setText(last == standing.rend()
                                ? row.unit
                                : row.unit + QLatin1Char('\n') + tr("was %1").arg(number(last->value, row.decimals)));
        row.before->setToolTip(last == standing.rend() ? QString() : date_words(aftercare::day_of(*last)));
    }
}

void ServiceVisit::set_services_chosen(int count) {
    chosen_->setText(count == 0   ? tr("No service ticked in the list: only readings and the note go in.")
                     : count == 1 ? tr("1 service ticked in the list")
                                  : tr("%1 services ticked in the list").arg(count));
}

QLineEdit* ServiceVisit::field(ReadingKind kind) const {
    const auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.kind == kind; });
    return row == rows_.end() ? nullptr : row->edit;
}

QString ServiceVisit::problem() const {
    return problem_->text();
}

void ServiceVisit::say(const QString& text, QWidget* where) {
    problem_->setText(text);
    problem_->setVisible(!text.isEmpty());
    if (where == nullptr) return;
    where->setFocus();
    scroll_->ensureWidgetVisible(where);
}

std::string ServiceVisit::taken_at() const {
    // A visit entered in the evening or next day: noon stands for an hour that nobody told.
    const QDateTime now = QDateTime::currentDateTime();
    const QDateTime at = date_->date() == now.date() ? now : QDateTime(date_->date(), QTime(12, 0));
    return at.toOffsetFromUtc(at.offsetFromUtc()).toString(Qt::ISODate).toStdString();
}

std::optional<std::vector<Reading>> ServiceVisit::entries(const std::vector<std::string>& service_ids) {
    const std::string by = by_->text().trimmed().toStdString();
    if (by.empty()) {
        say(tr("Say who did it."), by_);
        return std::nullopt;
    }
    const std::string at = taken_at();
    std::vector<Reading> out;
    out.reserve(service_ids.size() + rows_.size() + 2);
    for (const std::string& id : service_ids)
        out.push_back(aftercare::service_done(id, at, by, std::string()));
    const auto add = [&](ReadingKind kind, double value) {
        Reading reading;
        reading.kind = kind;
        reading.occasion = Occasion::service;
        reading.taken_at = at;
        reading.taken_by = by;
        reading.instrument = instrument_->text().trimmed().toStdString();
        reading.value = value;
        out.push_back(std::move(reading));
    };
    if (const int lifts = valve_->currentData().toInt(); lifts >= 0) add(ReadingKind::safety_valve_lift, lifts);
    for (const Row& row : rows_) {
        if (row.edit->text().trimmed().isEmpty()) continue;
        const std::optional<double> value = parsed_number(row.edit->text());
        if (!value || *value < row.least || *value > row.most) {
            say(tr("%1: enter a number between %2 and %3, or leave it empty.")
                    .arg(capital(text_of(row.kind)), number(row.least), quantity(row.most, row.unit)),
                row.edit);
            row.edit->selectAll();
            return std::nullopt;
        }
        add(row.kind, *value);
    }
    const QString note = note_->toPlainText().trimmed();
    if (!note.isEmpty()) {
        add(ReadingKind::remark, 0.0);
        out.back().note = note.toStdString();
    }
    if (out.empty()) {
        say(tr("Tick a service, enter a reading or write what was found."), note_);
        return std::nullopt;
    }
    say(QString(), nullptr);
    return out;
}

void ServiceVisit::clear_entries() {
    for (const Row& row : rows_)
        row.edit->clear();
    valve_->setCurrentIndex(0);
    note_->clear();
    say(QString(), nullptr);
}

}  // namespace wg::ui
