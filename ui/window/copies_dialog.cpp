#include "ui/window/copies_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/reading_table.h"

namespace wg::ui {
namespace {

constexpr int wide = 920;
constexpr int high = 560;

// "35 deg (Office, 2 Mar 2027)"
QString side_words(const merge::Side& side) {
    QString who = side.seat_name.empty() ? CopiesDialog::tr("no name") : qs(side.seat_name);
    if (side.at.unix_s > 0) who += QStringLiteral(", ") + day(iso8601(side.at));
    return QStringLiteral("%1 (%2)").arg(qs(side.words), who);
}

}  // namespace

CopiesDialog::CopiesDialog(Content content, QWidget* parent) : QDialog(parent), content_(std::move(content)) {
    setWindowTitle(tr("Copies of this job"));
    resize(wide, high);
    auto* column = new QVBoxLayout(this);
    auto* head = new QLabel(content_.headline, this);
    head->setObjectName(QStringLiteral("heading"));
    head->setWordWrap(true);
    column->addWidget(head);
    for (const QString& note : content_.notes) {
        auto* line = new QLabel(note, this);
        line->setWordWrap(true);
        line->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        column->addWidget(line);
    }
    if (!content_.open.empty()) column->addWidget(make_open(), 1);
    QWidget* taken = make_taken();
    if (taken_->rowCount() > 0) {
        column->addWidget(taken, 1);
    } else {
        taken->hide();
    }
    if (content_.open.empty() && taken_->rowCount() == 0) column->addStretch(1);

    auto* buttons = new QDialogButtonBox(this);
    if (!content_.open.empty()) {
        go_on_ = buttons->addButton(content_.go_on, QDialogButtonBox::AcceptRole);
        buttons->addButton(content_.decide_all ? tr("Cancel") : tr("Decide later"), QDialogButtonBox::RejectRole);
        connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    } else if (content_.decide_all) {
        go_on_ = buttons->addButton(content_.go_on, QDialogButtonBox::AcceptRole);
        buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
        connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    } else {
        buttons->addButton(QDialogButtonBox::Close);
    }
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    refresh_button();
}

QWidget* CopiesDialog::make_open() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("Changed on both sides"), box);
    column->addWidget(label);
    QStringList header{tr("Where")};
    if (!content_.before.isEmpty()) header << tr("Before");
    header << tr("What stands");
    open_ = reading_table(header, box);
    open_->setAccessibleName(label->text());
    for (std::size_t i = 0; i < content_.open.size(); ++i) {
        const merge::Open& field = content_.open[i];
        QString where = with_capital(qs(field.where));
        if (!field.names.empty()) where += tr(" (named by %1)").arg(qs(field.names));
        QStringList cells{where};
        if (!content_.before.isEmpty()) cells << content_.before.value(static_cast<qsizetype>(i));
        add_reading_row(*open_, cells);
        auto* sides = new QComboBox(open_);
        sides->setAccessibleName(where);
        if (!content_.decide_all) sides->addItem(tr("Decide later: %1").arg(side_words(field.sides.front())), -1);
        for (std::size_t side = 0; side < field.sides.size(); ++side)
            sides->addItem(side_words(field.sides[side]), static_cast<int>(side));
        sides->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        connect(sides, &QComboBox::currentIndexChanged, this, &CopiesDialog::refresh_button);
        open_->setCellWidget(static_cast<int>(i), static_cast<int>(header.size()) - 1, sides);
        sides_.push_back(sides);
    }
    column->addWidget(open_);
    return box;
}

QWidget* CopiesDialog::make_taken() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("Taken over"), box);
    column->addWidget(label);
    taken_ = reading_table({tr("Where"), tr("Before"), tr("Now"), tr("By"), tr("When")}, box);
    taken_->setAccessibleName(label->text());
    for (const merge::Change& change : content_.taken) {
        // What is still open stands above with both sides.
        const bool open = std::any_of(content_.open.begin(), content_.open.end(),
                                      [&change](const merge::Open& field) { return field.path == change.path; });
        if (open) continue;
        const QString now = change.kind == merge::Change::Kind::added && change.after.empty() ? tr("added")
                            : change.kind == merge::Change::Kind::removed                     ? tr("removed")
                                                                                              : qs(change.after);
        add_reading_row(*taken_, {with_capital(qs(change.where)), qs(change.before), now, qs(change.seat_name),
                                  change.at.unix_s > 0 ? day(iso8601(change.at)) : QString()});
    }
    column->addWidget(taken_);
    return box;
}

std::vector<std::pair<std::string, std::size_t>> CopiesDialog::decided() const {
    std::vector<std::pair<std::string, std::size_t>> out;
    for (std::size_t i = 0; i < sides_.size(); ++i) {
        const int side = sides_[i]->currentData().toInt();
        if (side >= 0) out.emplace_back(content_.open[i].path, static_cast<std::size_t>(side));
    }
    return out;
}

void CopiesDialog::refresh_button() {
    if (go_on_ != nullptr) go_on_->setEnabled(content_.decide_all || !decided().empty());
}

}  // namespace wg::ui
