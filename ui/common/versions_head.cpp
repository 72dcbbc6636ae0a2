#include "ui/common/versions_head.h"

#include <QInputDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include "ui/common/calm_combo.h"
#include "ui/common/flow_layout.h"

namespace wg::ui {
namespace {

constexpr int longest_id = 80;  // as the books take it

}  // namespace

QString free_id(const QString& label, const QString& fallback, const QStringList& taken) {
    QString id;
    for (const QChar c : label.trimmed().toLower().normalized(QString::NormalizationForm_D)) {
        if (c.isLetterOrNumber() && c.unicode() < 128) id += c;
        if (c.isSpace() && !id.endsWith(QLatin1Char('-'))) id += QLatin1Char('-');
    }
    id.truncate(longest_id);
    if (id.isEmpty()) id = fallback;
    QString free = id;
    for (int n = 2; taken.contains(free); ++n)
        free = QStringLiteral("%1-%2").arg(id).arg(n);
    return free;
}

VersionsHead::VersionsHead(Words words, QWidget* parent) : QWidget(parent), words_(std::move(words)) {
    // In a second line where the window is too narrow for all of them.
    auto* row = new FlowLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    choice_ = new CalmCombo(this);
    choice_->setAccessibleName(words_.one);
    choice_->setMinimumWidth(340);
    choice_->setMaximumWidth(460);
    row->addWidget(choice_);
    const auto button = [this, row](const QString& text, void (VersionsHead::*then)()) {
        auto* made = new QPushButton(text, this);
        connect(made, &QPushButton::clicked, this, then);
        row->addWidget(made);
        return made;
    };
    button(tr("New from this one"), &VersionsHead::ask_new);
    button(tr("Read a file"), &VersionsHead::read_asked);
    button(tr("Write a file"), &VersionsHead::write_asked);
    versions_ = button(tr("Versions"), &VersionsHead::versions_asked);
    withdraw_ = button(tr("Withdraw"), &VersionsHead::ask_withdraw);
    discard_ = button(tr("Discard changes"), &VersionsHead::discard_asked);
    save_ = button(tr("Save as a version"), &VersionsHead::ask_save);
    save_->setProperty("role", QStringLiteral("primary"));
    connect(choice_, &QComboBox::activated, this, [this] { Q_EMIT chosen(choice_->currentData().toString()); });
}

void VersionsHead::show_lines(const std::vector<Line>& lines, const QString& shown) {
    const QSignalBlocker quiet(choice_);
    choice_->clear();
    ids_.clear();
    for (const Line& line : lines) {
        const QString mark = !line.own        ? tr(" (comes with the program)")
                             : line.withdrawn ? tr(" (withdrawn)")
                                              : QString();
        choice_->addItem(line.label + mark, line.id);
        ids_ << line.id;
    }
    choice_->show_data(shown);
}

void VersionsHead::allow(bool own, bool withdrawn, bool changed) {
    save_->setEnabled(own && (changed || withdrawn));
    discard_->setEnabled(changed);
    versions_->setEnabled(own);
    withdraw_->setEnabled(own && !withdrawn && !changed);
}

void VersionsHead::ask_new() {
    if (ids_.isEmpty()) return;
    bool ok = false;
    const QString label =
        QInputDialog::getText(this, words_.new_one, tr("Name"), QLineEdit::Normal, words_.suggested_name(), &ok);
    if (ok && !label.trimmed().isEmpty()) Q_EMIT new_asked(free_id(label, words_.id, ids_), label.trimmed());
}

void VersionsHead::ask_save() {
    bool ok = false;
    const QString note = QInputDialog::getText(this, tr("Save as a version"), tr("What changed (may stay empty)"),
                                               QLineEdit::Normal, {}, &ok);
    if (ok) Q_EMIT save_asked(note);
}

void VersionsHead::ask_withdraw() {
    bool ok = false;
    const QString why = QInputDialog::getText(
        this, words_.withdraw,
        tr("It is no longer offered for jobs; its versions stay, and saving brings it back.\nWhy (may stay empty)"),
        QLineEdit::Normal, {}, &ok);
    if (ok) Q_EMIT withdraw_asked(why);
}

}  // namespace wg::ui
