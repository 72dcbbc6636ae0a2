// The fields of the entry form and how they look for each kind.

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFocusEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/fitting/number_pad.h"
#include "ui/fitting/reading_form.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/signature_pad.h"

namespace wg::ui {
namespace {

/// What a field is called by tests and by those who read the screen aloud.
void name_field(QWidget* field, const char* object_name, const QString& name) {
    field->setObjectName(QString::fromLatin1(object_name));
    field->setAccessibleName(name);
}

}  // namespace

ReadingForm::ReadingForm(QWidget* parent) : QWidget(parent) {
    title_ = new QLabel(this);
    title_->setProperty("role", QStringLiteral("title"));
    title_->setWordWrap(true);
    auto* back = new QPushButton(tr("Back to the list"), this);
    back->setProperty("touch", QStringLiteral("large"));
    connect(back, &QPushButton::clicked, this, &ReadingForm::back_asked);
    auto* head = new QHBoxLayout;
    head->setSpacing(12);
    head->addWidget(back);
    expected_ = new QLabel(this);
    expected_->setWordWrap(true);
    auto* asked = new QVBoxLayout;
    asked->setSpacing(2);
    asked->addWidget(title_);
    asked->addWidget(expected_);
    head->addLayout(asked, 1);
    auto* fields = new QWidget(this);
    grid_ = new QGridLayout(fields);
    grid_->setContentsMargins(0, 0, 8, 0);
    grid_->setHorizontalSpacing(12);
    grid_->setVerticalSpacing(8);
    grid_->setColumnStretch(1, 1);
    build_fields();
    build_kept();
    auto* down = new QVBoxLayout;
    down->addStretch(1);
    grid_->addLayout(down, grid_->rowCount(), 0, 1, 3);
    grid_->setRowStretch(grid_->rowCount() - 1, 1);
    scroll_ = new QScrollArea(this);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setWidget(fields);
    pad_ = new NumberPad(this);
    add_ = new QPushButton(tr("Enter"), this);
    add_->setProperty("role", QStringLiteral("primary"));
    add_->setProperty("touch", QStringLiteral("large"));
    name_field(add_, "enter", tr("Enter into the record"));
    auto* side = new QVBoxLayout;
    side->setSpacing(8);
    side->addWidget(pad_);
    side->addWidget(add_);
    side->addStretch(1);
    problem_ = new QLabel(this);
    problem_->setProperty("role", QStringLiteral("stop"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* body = new QHBoxLayout;
    body->setSpacing(16);
    body->addWidget(scroll_, 1);
    body->addLayout(side);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(problem_);
    column->addLayout(body, 1);
    connect(kind_, &QComboBox::currentIndexChanged, this, &ReadingForm::refresh_fields);
    connect(add_, &QPushButton::clicked, this, &ReadingForm::add_asked);
    connect(pad_, &NumberPad::next_asked, this, &ReadingForm::next_field);
    for (QLineEdit* edit : {value_, second_, indoors_, note_, at_, calibrated_}) {
        connect(edit, &QLineEdit::returnPressed, this, &ReadingForm::add_asked);
        edit->installEventFilter(this);
    }
    for (QComboBox* combo : {subject_, instrument_, who_})
        combo->lineEdit()->installEventFilter(this);
    connect(value_, &QLineEdit::textChanged, this, &ReadingForm::refresh_echo);
    connect(unit_, &UnitSwitch::changed, this, &ReadingForm::refresh_echo);
    connect(instrument_, &QComboBox::currentTextChanged, this, &ReadingForm::refresh_instrument);
    connect(calibrated_, &QLineEdit::textChanged, this, [this](const QString& text) {
        calibrated_words_->setText(calibration_words(text.trimmed(), QDate::currentDate()));
    });
    pad_->type_into(value_);
    refresh_fields();
}

QLineEdit* ReadingForm::line(const QString& name) {
    auto* edit = new QLineEdit(this);
    edit->setObjectName(name);
    edit->setProperty("touch", QStringLiteral("large"));
    return edit;
}

ReadingForm::Row ReadingForm::add_row(const QString& label, QWidget* field, QWidget* unit) {
    const int row = grid_->rowCount();
    auto* words = new QLabel(label, this);
    words->setBuddy(field);
    words->setWordWrap(true);
    if (field->accessibleName().isEmpty()) field->setAccessibleName(label);
    grid_->addWidget(words, row, 0);
    grid_->addWidget(field, row, 1, 1, unit == nullptr ? 2 : 1);
    if (unit != nullptr) grid_->addWidget(unit, row, 2);
    return {words, field, unit};
}

void ReadingForm::show_row(const Row& row, bool shown) {
    for (QWidget* part : {row.label, row.field, row.unit})
        if (part != nullptr) part->setVisible(shown);
}

void ReadingForm::build_fields() {
    kind_ = new CalmCombo(this);
    kind_->setObjectName(QStringLiteral("kind"));
    for (const Word<ReadingKind>& word : words<ReadingKind>())
        kind_->addItem(QString::fromUtf8(word.text), static_cast<int>(word.value));
    value_ = line(QStringLiteral("value"));
    second_ = line(QStringLiteral("second"));
    indoors_ = line(QStringLiteral("indoors"));
    for (QLineEdit* figure : {value_, second_, indoors_})
        figure->setMinimumWidth(96);
    unit_ = new UnitSwitch(this);
    second_unit_ = new UnitSwitch(this);
    indoors_unit_ = new UnitSwitch(this);
    echo_ = new QLabel(this);
    echo_->setProperty("role", QStringLiteral("muted"));
    plate_ = new CalmCombo(this);
    plate_->setObjectName(QStringLiteral("plate"));
    for (const Word<PlateState>& word : words<PlateState>())
        plate_->addItem(QString::fromUtf8(word.text), static_cast<int>(word.value));
    subject_ = new CalmCombo(this);
    subject_->setEditable(true);
    subject_->setObjectName(QStringLiteral("subject"));
    signature_ = new SignaturePad(this);
    photo_ = new QPushButton(tr("Choose the photograph\u2026"), this);
    photo_->setProperty("touch", QStringLiteral("large"));
    note_ = line(QStringLiteral("note"));
    kind_row_ = add_row(tr("Reading"), kind_);
    value_row_ = add_row(QString(), value_, unit_);
    grid_->addWidget(echo_, grid_->rowCount(), 1, 1, 2);
    second_row_ = add_row(QString(), second_, second_unit_);
    indoors_row_ = add_row(tr("Gas indoors"), indoors_, indoors_unit_);
    plate_row_ = add_row(tr("Plate lies"), plate_);
    subject_row_ = add_row(QString(), subject_);
    answer_row_ = add_row(QString(), build_answer());
    auto* again = new QPushButton(tr("Clear"), this);
    again->setProperty("touch", QStringLiteral("large"));
    connect(again, &QPushButton::clicked, signature_, &SignaturePad::clear);
    signature_row_ = add_row(tr("Signature"), signature_, again);
    photo_row_ = add_row(tr("Photograph"), photo_);
    note_row_ = add_row(tr("Note"), note_);
    connect(photo_, &QPushButton::clicked, this, [this] {
        set_photograph(QFileDialog::getOpenFileName(this, tr("Photograph for the record"), {},
                                                    tr("Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)")));
    });
}

QWidget* ReadingForm::build_answer() {
    auto* both = new QWidget(this);
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    yes_ = new QPushButton(both);
    no_ = new QPushButton(both);
    for (QPushButton* button : {yes_, no_}) {
        button->setCheckable(true);
        button->setProperty("touch", QStringLiteral("large"));
        row->addWidget(button, 1);
        connect(button, &QPushButton::clicked, this, [this, button] { answer(button == yes_); });
    }
    yes_->setObjectName(QStringLiteral("yes"));
    no_->setObjectName(QStringLiteral("no"));
    return both;
}

void ReadingForm::build_kept() {
    instrument_ = new CalmCombo(this);
    instrument_->setEditable(true);
    instrument_->setObjectName(QStringLiteral("instrument"));
    instrument_->lineEdit()->setPlaceholderText(tr("make and number"));
    calibrated_ = line(QStringLiteral("calibrated"));
    calibrated_->setPlaceholderText(QStringLiteral("2026-03-01"));
    calibrated_words_ = new QLabel(this);
    calibrated_words_->setProperty("role", QStringLiteral("muted"));
    who_ = new CalmCombo(this);
    who_->setEditable(true);
    who_->setObjectName(QStringLiteral("who"));
    at_ = line(QStringLiteral("at"));
    at_->setPlaceholderText(tr("now; or 9:40, or 2026-11-28 09:40"));
    corrects_ = new CalmCombo(this);
    corrects_->setObjectName(QStringLiteral("corrects"));
    for (QComboBox* combo : {kind_, plate_, subject_, instrument_, who_, corrects_}) {
        combo->setProperty("touch", QStringLiteral("large"));
        combo->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(10);  // long entries must not widen the form
        combo->setInsertPolicy(QComboBox::NoInsert);
    }
    const Row who = add_row(tr("Read by"), who_);
    who_label_ = static_cast<QLabel*>(who.label);
    instrument_row_ = add_row(tr("Instrument"), instrument_);
    calibrated_row_ = add_row(tr("Calibrated on"), calibrated_, calibrated_words_);
    at_label_ = static_cast<QLabel*>(add_row(tr("Read at"), at_).label);
    corrects_row_ = add_row(tr("Corrects"), corrects_);
    corrects_->addItem(tr("nothing: an entry of its own"), QString());
}

void ReadingForm::refresh_fields() {
    const ReadingWords& w = words_of(kind());
    const bool figure = w.manner == EntryManner::figure;
    const auto set_label = [](const Row& row, const QString& text) { static_cast<QLabel*>(row.label)->setText(text); };
    const auto chosen_unit = [this](SiteQuantity quantity) {
        const auto known = units_.find(quantity);
        return known == units_.end() ? QString() : known->second;
    };
    const SiteQuantity of_second =
        w.second_unit == QStringLiteral("°C") ? SiteQuantity::temperature : SiteQuantity::none;
    set_label(value_row_, w.value_name);
    set_label(answer_row_, w.value_name);
    set_label(second_row_, w.second_name);
    set_label(subject_row_, w.subject_name);
    set_label(note_row_, w.kind == ReadingKind::serial_number ? tr("Number, typed or scanned")
                         : w.kind == ReadingKind::photograph  ? tr("What it shows")
                                                              : tr("Note"));
    unit_->set_quantity(w.quantity, w.unit, chosen_unit(w.quantity));
    second_unit_->set_quantity(of_second, w.second_unit, chosen_unit(of_second));
    indoors_unit_->set_quantity(SiteQuantity::temperature, {}, chosen_unit(SiteQuantity::temperature));
    show_row(value_row_, figure);
    show_row(second_row_, !w.second_name.isEmpty());
    show_row(indoors_row_, w.indoors);
    show_row(plate_row_, w.plate);
    show_row(subject_row_, !w.subject_name.isEmpty());
    show_row(answer_row_, w.manner == EntryManner::yes_no);
    show_row(signature_row_, w.manner == EntryManner::signature);
    show_row(photo_row_, w.manner == EntryManner::photograph);
    show_row(instrument_row_, w.instrument);
    show_row(calibrated_row_, w.instrument);
    pad_->setVisible(figure);
    yes_->setText(w.yes);
    no_->setText(w.no);
    who_label_->setText(w.manner == EntryManner::signature ? tr("Name of who signs")
                        : figure                           ? tr("Read by")
                                                           : tr("Entered by"));
    at_label_->setText(w.manner == EntryManner::signature ? tr("Signed at") : figure ? tr("Read at") : tr("When"));
    subject_->clear();
    if (w.kind == ReadingKind::service_done) {
        for (const plan::ServiceDue& service : services_)
            subject_->addItem(qs(service.text), qs(service.id));
    } else {
        for (const QString& subject : w.subjects)
            subject_->addItem(subject, subject);
    }
    answer_.reset();
    yes_->setChecked(false);
    no_->setChecked(false);
    const Instrument last = book_.last_for(kind());
    instrument_->setEditText(last.name);
    calibrated_->setText(last.calibrated_on);
    QString name = QString::fromUtf8(text_of(kind()));
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    title_->setText(name);
    expected_->clear();
    expected_->hide();
    refresh_echo();
    say(QString());
}

void ReadingForm::refresh_echo() {
    const ReadingWords& w = words_of(kind());
    const auto typed = parsed_number(value_->text());
    const bool other = w.manner == EntryManner::figure && !unit_->is_of_record();
    echo_->setVisible(other);
    if (other)
        echo_->setText(typed ? tr("%1 in the record").arg(quantity(unit_->kept(*typed), w.unit, w.decimals))
                             : tr("The record is kept in %1").arg(w.unit));
}

void ReadingForm::refresh_instrument() {
    const Instrument known = book_.named(instrument_->currentText().trimmed());
    if (!known.calibrated_on.isEmpty()) calibrated_->setText(known.calibrated_on);
}

bool ReadingForm::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) {
        auto* edit = qobject_cast<QLineEdit*>(watched);
        pad_->type_into(edit);
        if (edit != nullptr) scroll_->ensureWidgetVisible(edit);
    }
    return QWidget::eventFilter(watched, event);
}

void ReadingForm::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // On a narrow screen the buttons keep their size and the fields scroll.
    scroll_->setMinimumWidth(std::min(300, width() / 2));
}

void ReadingForm::next_field() {
    const std::vector<QLineEdit*> order = {value_, second_, indoors_, note_};
    std::vector<QLineEdit*> shown;
    for (QLineEdit* edit : order)
        if (edit->isVisible()) shown.push_back(edit);
    if (shown.empty()) return;
    std::size_t at = shown.size() - 1;
    for (std::size_t i = 0; i < shown.size(); ++i)
        if (shown[i]->hasFocus()) at = i;
    QLineEdit* next = shown[(at + 1) % shown.size()];
    next->setFocus();
    next->selectAll();
    scroll_->ensureWidgetVisible(next);
}

}  // namespace wg::ui
