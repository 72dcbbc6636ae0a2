#include "ui/offer/firm_dialog.h"

#include <QDate>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

#include "core/quantity/iban.h"
#include "ui/common/format.h"
#include "ui/documents/logo.h"

namespace wg::ui {
namespace {

constexpr int logo_px_w = 200;
constexpr int logo_px_h = 94;  // as papers have it, 34 by 16
constexpr int words_least_px = 140;

QFormLayout* form_in(QWidget* page) {
    auto* form = new QFormLayout(page);
    form->setContentsMargins(16, 16, 16, 16);
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    return form;
}

QString kind_name(store::NumberKind kind) {
    switch (kind) {
        case store::NumberKind::quote: return FirmDialog::tr("Quotes");
        case store::NumberKind::order: return FirmDialog::tr("Orders");
        case store::NumberKind::change_order: return FirmDialog::tr("Change orders");
        case store::NumberKind::purchase: return FirmDialog::tr("Purchases");
    }
    return {};
}

QLabel* hint(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setWordWrap(true);
    label->setProperty("role", QStringLiteral("muted"));
    return label;
}

}  // namespace

FirmDialog::FirmDialog(const Firm& firm, const QByteArray& logo, const NumberSettings& numbers, QWidget* parent)
    : QDialog(parent), before_(firm), logo_(logo) {
    setWindowTitle(tr("The firm on its papers"));
    auto* tabs = new QTabWidget(this);
    tabs->addTab(make_address(), tr("Address and logo"));
    tabs->addTab(make_bank(), tr("Register and bank"));
    tabs->addTab(make_words(), tr("Words"));
    tabs->addTab(make_numbers(numbers), tr("Numbers"));
    said_ = new QLabel(this);
    said_->setWordWrap(true);
    said_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    said_->hide();
    auto* buttons = new QDialogButtonBox(this);
    keep_ = buttons->addButton(tr("Keep"), QDialogButtonBox::AcceptRole);
    keep_->setProperty("role", QStringLiteral("primary"));
    buttons->addButton(tr("Leave as it was"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->addWidget(tabs, 1);
    column->addWidget(said_);
    column->addWidget(buttons);
    show_logo();
    show_numbers();
    judge();
}

QWidget* FirmDialog::make_address() {
    auto* page = new QWidget(this);
    auto* form = form_in(page);
    const auto field = [&](const QString& label, const QString& text) {
        auto* edit = new QLineEdit(text, page);
        edit->setMaxLength(80);  // longer lines do not fit the block on paper
        edit->setMinimumWidth(320);
        form->addRow(label, edit);
        return edit;
    };
    name_ = field(tr("&Name"), before_.name);
    street_ = field(tr("&Street"), before_.street);
    town_ = field(tr("&Town"), before_.town);
    phone_ = field(tr("Tele&phone"), before_.phone);
    email_ = field(tr("&Email"), before_.email);
    picture_ = new QLabel(page);
    picture_->setFixedSize(logo_px_w, logo_px_h);
    picture_->setAlignment(Qt::AlignCenter);
    picture_->setFrameShape(QFrame::StyledPanel);
    picture_->setAccessibleName(tr("Logo"));
    auto* choose = new QPushButton(tr("Choose a picture\u2026"), page);
    choose->setToolTip(tr("PNG, JPEG or SVG of at most 1 MiB"));
    without_ = new QPushButton(tr("Without a logo"), page);
    connect(choose, &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Choose the logo"), QString(),
                                                          tr("Pictures (*.png *.jpg *.jpeg *.svg)"));
        if (!path.isEmpty()) choose_logo(path);
    });
    connect(without_, &QPushButton::clicked, this, [this] {
        logo_.clear();
        show_logo();
    });
    auto* beside = new QVBoxLayout;
    beside->addWidget(choose);
    beside->addWidget(without_);
    beside->addStretch(1);
    auto* row = new QHBoxLayout;
    row->addWidget(picture_);
    row->addLayout(beside);
    row->addStretch(1);
    form->addRow(tr("Logo"), row);
    return page;
}

QWidget* FirmDialog::make_bank() {
    auto* page = new QWidget(this);
    auto* form = form_in(page);
    const auto field = [&](const QString& label, const QString& text) {
        auto* edit = new QLineEdit(text, page);
        edit->setMaxLength(80);
        edit->setMinimumWidth(320);
        form->addRow(label, edit);
        return edit;
    };
    vat_id_ = field(tr("&VAT number"), before_.vat_id);
    register_ = field(tr("&Register entry"), before_.register_entry);
    register_->setPlaceholderText(tr("register or court, and number"));
    bank_ = field(tr("&Bank"), before_.bank);
    iban_ = field(tr("&IBAN"), qs(iban_in_groups(before_.iban.toStdString())));
    bic_ = field(tr("BI&C"), before_.bic);
    bank_wrong_ = new QLabel(page);
    bank_wrong_->setWordWrap(true);
    form->addRow(bank_wrong_);
    form->addRow(hint(tr("They stand at the foot of quote, letter, confirmation and change order, on purchase "
                         "papers without the account; it stands below instalments, too. What is empty is left out."),
                      page));
    for (QLineEdit* edit : {iban_, bic_})
        connect(edit, &QLineEdit::textChanged, this, &FirmDialog::judge);
    return page;
}

QString FirmDialog::bank_wrong() const {
    return bank_wrong_->text();
}

void FirmDialog::judge() {
    const auto problem = refuse_bank(iban_->text(), bic_->text());
    bank_wrong_->setText(problem ? qs(problem->text()) : QString());
    if (keep_ != nullptr) keep_->setEnabled(numbers_right_ && !problem);
}

QWidget* FirmDialog::make_words() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(16, 16, 16, 16);
    const auto words = [&](const QString& label, const QString& text, const QString& placeholder) {
        auto* name = new QLabel(label, page);
        auto* edit = new QPlainTextEdit(text, page);
        edit->setPlaceholderText(placeholder);
        edit->setMinimumHeight(words_least_px);
        edit->setTabChangesFocus(true);
        name->setBuddy(edit);
        column->addWidget(name);
        column->addWidget(edit);
        return edit;
    };
    letter_ = words(tr("Words of the cover &letter"), before_.letter, tr("Empty: ours, in the paper's language"));
    column->addWidget(hint(tr("Filled in: {client}, {number}, {date}, {valid_until}, {price}, {to_bring}, {title}, "
                              "{job}, {firm}"),
                           page));
    supplier_words_ = words(tr("Words to &suppliers, below the purchase list"), before_.supplier_words, QString());
    return page;
}

QWidget* FirmDialog::make_numbers(const NumberSettings& numbers) {
    auto* page = new QWidget(this);
    auto* form = form_in(page);
    for (const store::NumberKind kind : store::number_kinds) {
        const auto known = numbers.patterns.find(kind);
        auto* edit = new QLineEdit(known == numbers.patterns.end() ? QString() : qs(known->second), page);
        edit->setMaxLength(40);
        connect(edit, &QLineEdit::textChanged, this, &FirmDialog::show_numbers);
        form->addRow(kind_name(kind), edit);
        patterns_[kind] = edit;
    }
    suffix_ = new QLineEdit(qs(numbers.suffix), page);
    suffix_->setMaxLength(8);
    suffix_->setPlaceholderText(tr("none"));
    connect(suffix_, &QLineEdit::textChanged, this, &FirmDialog::show_numbers);
    form->addRow(tr("Suffix of this seat"), suffix_);
    examples_ = new QLabel(page);
    examples_->setWordWrap(true);
    form->addRow(examples_);
    form->addRow(
        hint(tr("{number:4} counts with four digits, anew each year where {year} stands. {seat} is where the suffix "
                "goes; without it, at the end. A seat that keeps jobs of its own and travels needs a suffix, so "
                "that no two papers bear one number. Numbers that went out stay."),
             page));
    return page;
}

void FirmDialog::show_logo() {
    without_->setEnabled(!logo_.isEmpty());
    picture_->clear();
    if (logo_.isEmpty()) {
        picture_->setText(tr("No logo"));
        return;
    }
    const auto logo = logo_from_bytes(logo_);
    if (!logo.ok()) {
        picture_->setText(tr("Cannot be drawn"));
        return;
    }
    picture_->setPixmap(QPixmap::fromImage(
        logo.value().scaled(logo_px_w - 4, logo_px_h - 4, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

bool FirmDialog::choose_logo(const QString& path) {
    QFile file(path);
    const auto refuse = [this](const QString& words) {
        said_->setText(words);
        said_->show();
        return false;
    };
    if (!file.open(QIODevice::ReadOnly)) return refuse(tr("%1 cannot be read: %2").arg(path, file.errorString()));
    // One byte more than is allowed tells a larger file without reading it whole.
    const QByteArray bytes = file.read(max_logo_bytes + 1);
    const auto logo = logo_from_bytes(bytes);
    if (!logo.ok()) return refuse(tr("The logo stays as it is. %1").arg(qs(text_of(logo.problems()))));
    logo_ = bytes;
    said_->hide();
    show_logo();
    return true;
}

QString FirmDialog::said() const {
    return said_->isHidden() ? QString() : said_->text();
}

void FirmDialog::show_numbers() {
    QStringList examples;
    QString wrong;
    const int year = QDate::currentDate().year();
    if (const auto problem = store::refuse_suffix(suffix_->text().toStdString())) wrong = qs(problem->text());
    for (const store::NumberKind kind : store::number_kinds) {
        const std::string pattern = patterns_.at(kind)->text().toStdString();
        if (const auto problem = store::refuse_pattern(pattern)) {
            if (wrong.isEmpty()) wrong = kind_name(kind) + QStringLiteral(": ") + qs(problem->text());
            continue;
        }
        examples += qs(store::number_text(pattern, year, suffix_->text().toStdString(), 1));
    }
    examples_->setText(wrong.isEmpty() ? tr("The first of a year: %1").arg(examples.join(QStringLiteral(", ")))
                                       : wrong);
    numbers_right_ = wrong.isEmpty();
    judge();
}

Firm FirmDialog::firm() const {
    Firm firm = before_;
    firm.name = name_->text().trimmed();
    firm.street = street_->text().trimmed();
    firm.town = town_->text().trimmed();
    firm.phone = phone_->text().trimmed();
    firm.email = email_->text().trimmed();
    firm.vat_id = vat_id_->text().trimmed();
    firm.register_entry = register_->text().trimmed();
    firm.bank = bank_->text().trimmed();
    firm.iban = qs(bare_bank_number(iban_->text().toStdString()));
    firm.bic = qs(bare_bank_number(bic_->text().toStdString()));
    firm.letter = letter_->toPlainText().trimmed();
    firm.supplier_words = supplier_words_->toPlainText().trimmed();
    return firm;
}

NumberSettings FirmDialog::numbers() const {
    NumberSettings out;
    for (const auto& [kind, edit] : patterns_)
        out.patterns[kind] = edit->text().toStdString();
    out.suffix = suffix_->text().toStdString();
    return out;
}

}  // namespace wg::ui
