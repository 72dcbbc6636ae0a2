#include "ui/fitting/reading_form.h"

#include <QComboBox>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/whole_file.h"
#include "ui/drawing/fields.h"
#include "ui/fitting/number_pad.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/signature_pad.h"

namespace wg::ui {
namespace {

constexpr const char* units_key = "fitting.units";

QString key_of_quantity(SiteQuantity quantity) {
    return QString::number(static_cast<int>(quantity));
}

}  // namespace

std::optional<QDateTime> time_of(const QString& typed, const QDateTime& now) {
    const QString text = typed.simplified();
    if (text.isEmpty()) return now;
    QDateTime at = QDateTime::fromString(text, QStringLiteral("yyyy-MM-dd H:mm"));
    if (!at.isValid()) {
        const QTime clock =
            QTime::fromString(QString(text).replace(QLatin1Char('.'), QLatin1Char(':')), QStringLiteral("H:mm"));
        if (!clock.isValid()) return std::nullopt;
        at = QDateTime(now.toLocalTime().date(), clock);
    }
    if (at > now) return std::nullopt;
    return at.toOffsetFromUtc(at.offsetFromUtc());
}

void ReadingForm::set_source(const SettingSource& source) {
    source_ = source;
    book_.set_source(source);
    if (!source_.read) return;
    const QJsonObject kept = QJsonDocument::fromJson(source_.read(QString::fromLatin1(units_key)).toUtf8()).object();
    for (const SiteQuantity quantity : {SiteQuantity::gauge_pressure, SiteQuantity::vacuum, SiteQuantity::temperature,
                                        SiteQuantity::temperature_gap, SiteQuantity::mass}) {
        const QString unit = kept.value(key_of_quantity(quantity)).toString();
        if (!unit.isEmpty()) units_[quantity] = unit;
    }
    set_record({});
    refresh_fields();
}

void ReadingForm::set_record(const std::vector<Reading>& record) {
    book_.learn(record);
    const QString chosen = corrects_->currentData().toString();
    corrects_->clear();
    corrects_->addItem(tr("nothing: an entry of its own"), QString());
    for (auto it = record.rbegin(); it != record.rend(); ++it) {
        corrects_->addItem(QStringLiteral("%1: %2").arg(QString::fromUtf8(text_of(it->kind)), value_words(*it)),
                           qs(it->id));
    }
    corrects_->setCurrentIndex(std::max(0, corrects_->findData(chosen)));
    show_row(corrects_row_, !record.empty());
    const auto refill = [](QComboBox& combo, const QStringList& items) {
        const QString typed = combo.currentText();
        const QSignalBlocker quiet(combo);
        combo.clear();
        combo.addItems(items);
        combo.setEditText(typed);
    };
    QStringList names;
    for (const Instrument& one : book_.instruments())
        names << one.name;
    refill(*instrument_, names);
    refill(*who_, book_.people());
    if (who_->currentText().isEmpty() && !book_.people().isEmpty() && kind() != ReadingKind::signature)
        who_->setEditText(book_.people().front());
}

void ReadingForm::set_services(const std::vector<plan::ServiceDue>& services) {
    services_ = services;
}

ReadingKind ReadingForm::kind() const {
    return static_cast<ReadingKind>(kind_->currentData().toInt());
}

void ReadingForm::choose_kind(ReadingKind kind) {
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
}

void ReadingForm::choose(const Want& want, const QString& expected, bool any_kind) {
    if (kind() != ReadingKind::signature && !who_->currentText().trimmed().isEmpty()) fitter_ = who_->currentText();
    choose_kind(want.kind);
    clear_figures();
    refresh_fields();
    title_->setText(want.name);
    show_row(kind_row_, any_kind);
    if (!want.subject.empty()) {
        if (subject_->findData(qs(want.subject)) < 0) subject_->addItem(qs(want.subject), qs(want.subject));
        subject_->setCurrentIndex(subject_->findData(qs(want.subject)));
    }
    // What is asked for already is not asked for again; the way to it stays on the list.
    show_row(subject_row_, !words_of(want.kind).subject_name.isEmpty() && want.subject.empty());
    // A client's name is not the fitter's; the next entry has the fitter's again.
    const bool other_signs = want.kind == ReadingKind::signature && want.subject != "installer";
    who_->setEditText(other_signs ? QString() : fitter_);
    const QString text =
        want.note.isEmpty() ? (expected.isEmpty() ? QString() : tr("Expected: %1").arg(expected)) : want.note;
    expected_->setText(text);
    expected_->setVisible(!text.isEmpty());
}

void ReadingForm::correct(const Reading& reading) {
    choose_kind(reading.kind);
    refresh_fields();
    const ReadingWords& w = words_of(reading.kind);
    const auto typed = [](const UnitSwitch& unit, double kept, int decimals) {
        return QString::number(unit.shown(kept), 'f', unit.decimals(decimals));
    };
    value_->setText(w.manner == EntryManner::figure ? typed(*unit_, reading.value, w.decimals) : QString());
    second_->setText(reading.second_value ? typed(*second_unit_, *reading.second_value, 1) : QString());
    indoors_->setText(reading.indoors_c ? typed(*indoors_unit_, *reading.indoors_c, 1) : QString());
    plate_->setCurrentIndex(plate_->findData(static_cast<int>(reading.plate)));
    const QString subject = qs(reading.subject);
    if (!subject.isEmpty() && subject_->findData(subject) < 0) subject_->addItem(subject, subject);
    subject_->setCurrentIndex(subject_->findData(subject));
    if (w.manner == EntryManner::yes_no) answer(reading.value > 0.5);
    instrument_->setEditText(qs(reading.instrument));
    calibrated_->setText(qs(reading.calibrated_on));
    note_->setText(qs(reading.note));
    // When it was read stays what it was: only what was written down is put right.
    const QDateTime at = QDateTime::fromString(qs(reading.taken_at), Qt::ISODate);
    at_->setText(at.isValid() ? at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : QString());
    corrects_->setCurrentIndex(std::max(0, corrects_->findData(qs(reading.id))));
    title_->setText(tr("Correction: %1").arg(title_->text()));
    start();
}

void ReadingForm::start() {
    QLineEdit* first = words_of(kind()).manner == EntryManner::figure ? value_ : note_;
    first->setFocus();
    first->selectAll();
    pad_->type_into(first);
}

void ReadingForm::clear_figures() {
    for (QLineEdit* edit : {value_, second_, indoors_, note_, at_})
        edit->clear();
    plate_->setCurrentIndex(0);
    signature_->clear();
    set_photograph(QString());
    answer_.reset();
    yes_->setChecked(false);
    no_->setChecked(false);
    corrects_->setCurrentIndex(0);
    say(QString());
}

void ReadingForm::answer(bool yes) {
    answer_ = yes;
    yes_->setChecked(yes);
    no_->setChecked(!yes);
    say(QString());
}

void ReadingForm::set_photograph(const QString& path) {
    photograph_ = path;
    photo_->setText(path.isEmpty() ? tr("Choose the photograph\u2026") : QFileInfo(path).fileName());
}

void ReadingForm::say(const QString& text) {
    problem_->setText(text);
    problem_->setVisible(!text.isEmpty());
}

QString ReadingForm::problem() const {
    return problem_->text();
}

std::optional<double> ReadingForm::figure_of(QLineEdit& edit, const UnitSwitch& unit, const QString& name, double least,
                                             double most, int decimals) {
    const QString shown_unit = unit.unit();
    const auto typed = parsed_number(edit.text());
    const double value = typed ? unit.kept(*typed) : 0.0;
    const int places = unit.decimals(decimals);
    if (!typed) {
        say(tr("Enter as a number, in %2: %1.").arg(name.toLower(), shown_unit));
    } else if (!(value >= least && value <= most)) {
        say(tr("%1 cannot be meant: between %2 and %3.")
                .arg(quantity(*typed, shown_unit, places), number(unit.shown(least), places),
                     quantity(unit.shown(most), shown_unit, places)));
    } else {
        return value;
    }
    edit.setFocus();
    edit.selectAll();
    return std::nullopt;
}

bool ReadingForm::take_attachment(Reading& reading) {
    const ReadingWords& w = words_of(reading.kind);
    QByteArray bytes;
    if (w.manner == EntryManner::signature) {
        bytes = signature_->png();
        if (bytes.isEmpty()) return say(tr("Sign in the field.")), false;
    } else if (w.manner == EntryManner::photograph) {
        if (photograph_.isEmpty()) return say(tr("Choose the photograph.")), false;
        const Result<std::string> picture = read_whole(photograph_);
        if (!picture) return say(qs(picture.problems().front().text())), false;
        bytes = QByteArray::fromStdString(picture.value());
    } else {
        return true;
    }
    if (!keep_) return say(tr("Pictures can be kept once the job is on the desk.")), false;
    const Result<std::string> kept = keep_(bytes);
    if (!kept) return say(qs(kept.problems().front().text())), false;
    reading.attachment_sha256 = kept.value();
    return true;
}

QString ReadingForm::subject_key(const QString& shown) const {
    const int known = subject_->findText(shown);
    return known >= 0 ? subject_->itemData(known).toString() : shown;
}

bool ReadingForm::take_kept(Reading& reading, const QString& now) {
    const ReadingWords& w = words_of(reading.kind);
    reading.taken_by = who_->currentText().trimmed().toStdString();
    if (reading.taken_by.empty()) {
        say(w.manner == EntryManner::signature ? tr("Say who signs.") : tr("Say who read it."));
        who_->setFocus();
        return false;
    }
    if (w.instrument) {
        reading.instrument = instrument_->currentText().trimmed().toStdString();
        const QString date = calibrated_->text().trimmed();
        const QDate calibrated = QDate::fromString(date, Qt::ISODate);
        if (!date.isEmpty() && (!calibrated.isValid() || calibrated > QDate::currentDate())) {
            say(tr("Enter the day of calibration as 2026-03-01, or leave it empty."));
            calibrated_->setFocus();
            return false;
        }
        if (!reading.instrument.empty() && calibrated.isValid())
            reading.calibrated_on = calibrated.toString(Qt::ISODate).toStdString();
    }
    const QDateTime moment = QDateTime::fromString(now, Qt::ISODate);
    if (at_->text().trimmed().isEmpty()) {
        reading.taken_at = now.toStdString();
    } else if (const auto at = time_of(at_->text(), moment)) {
        reading.taken_at = at->toString(Qt::ISODate).toStdString();
    } else {
        say(tr("Enter the time as 9:40 or 2026-11-28 09:40, not later than now."));
        at_->setFocus();
        return false;
    }
    return true;
}

std::optional<Reading> ReadingForm::reading(const QString& now) {
    Reading reading;
    reading.kind = kind();
    reading.occasion = occasion_;
    const ReadingWords& w = words_of(reading.kind);
    if (w.manner == EntryManner::figure) {
        const auto value = figure_of(*value_, *unit_, w.value_name, w.least, w.most, w.decimals);
        if (!value) return std::nullopt;
        reading.value = *value;
    }
    if (!w.second_name.isEmpty() && !second_->text().trimmed().isEmpty()) {
        reading.second_value = figure_of(*second_, *second_unit_, w.second_name, w.second_least, w.second_most, 1);
        if (!reading.second_value) return std::nullopt;
    }
    if (w.indoors && !indoors_->text().trimmed().isEmpty()) {
        reading.indoors_c = figure_of(*indoors_, *indoors_unit_, tr("Gas indoors"), -60.0, 120.0, 1);
        if (!reading.indoors_c) return std::nullopt;
    }
    if (w.plate) reading.plate = static_cast<PlateState>(plate_->currentData().toInt());
    if (!w.subject_name.isEmpty()) reading.subject = subject_key(subject_->currentText().trimmed()).toStdString();
    if (w.manner == EntryManner::yes_no) {
        if (!answer_) {
            say(tr("Press '%1' or '%2'.").arg(w.yes, w.no));
            return std::nullopt;
        }
        reading.value = *answer_ ? 1.0 : 0.0;
    }
    reading.note = note_->text().trimmed().toStdString();
    if (w.manner == EntryManner::words && reading.note.empty() && reading.kind != ReadingKind::service_done) {
        say(reading.kind == ReadingKind::serial_number ? tr("Type or scan the number.")
                                                       : tr("Write the remark into the note."));
        note_->setFocus();
        return std::nullopt;
    }
    reading.corrects_id = corrects_->currentData().toString().toStdString();
    if (!take_kept(reading, now) || !take_attachment(reading)) return std::nullopt;
    say(QString());
    return reading;
}

void ReadingForm::entered(const Reading& reading) {
    book_.note(reading);
    const ReadingWords& w = words_of(reading.kind);
    const auto remember = [this](SiteQuantity quantity, const UnitSwitch& unit) {
        if (quantity != SiteQuantity::none) units_[quantity] = unit.unit();
    };
    remember(w.quantity, *unit_);
    if (w.second_unit == QStringLiteral("°C")) remember(SiteQuantity::temperature, *second_unit_);
    if (source_.write) {
        QJsonObject kept;
        for (const auto& [quantity, unit] : units_)
            kept.insert(key_of_quantity(quantity), unit);
        source_.write(QString::fromLatin1(units_key),
                      QString::fromUtf8(QJsonDocument(kept).toJson(QJsonDocument::Compact)));
    }
    clear_figures();
}

}  // namespace wg::ui
