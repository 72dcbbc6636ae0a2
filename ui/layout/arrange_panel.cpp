#include "ui/layout/arrange_panel.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QKeySequence>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/arrange_edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr double most_in_row = 20.0;
constexpr double widest_gap_m = 5.0;

QLabel* words_label(const char* role, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setProperty("role", QLatin1String(role));
    label->setWordWrap(true);
    return label;
}

void show_words(QLabel* label, const QString& words) {
    label->setText(words);
    label->setVisible(!words.isEmpty());
}

}  // namespace

ArrangePanel::ArrangePanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    heading_ = words_label("heading", this);
    column->addWidget(heading_);
    column->addWidget(new QLabel(tr("Bring into line"), this));
    auto* lines = new QGridLayout;
    lines->setSpacing(8);
    build_lines(lines);
    column->addLayout(lines);
    column->addWidget(new QLabel(tr("Equal gaps, the outer two stay"), this));
    auto* gaps = new QGridLayout;
    gaps->setSpacing(8);
    build_gaps(gaps);
    column->addLayout(gaps);
    problem_ = words_label("stop", this);
    problem_->setVisible(false);
    column->addWidget(problem_);
}

QPushButton* ArrangePanel::add_button(QGridLayout* grid, int row, int column, const QString& words, const QString& tip,
                                      const QString& keys) {
    auto* button = new QPushButton(words, this);
    const QKeySequence shortcut(keys);
    button->setShortcut(shortcut);
    button->setToolTip(tr("%1 (%2)").arg(tip, shortcut.toString(QKeySequence::NativeText)));
    button->setAccessibleName(tip);
    grid->addWidget(button, row, column);
    return button;
}

void ArrangePanel::build_lines(QGridLayout* grid) {
    using fixing::Align;
    const struct {
        Align to;
        int row, column;
        QString words, tip, keys;
    } buttons[] = {
        {Align::left, 0, 0, tr("Left edges"), tr("Left edges in line with the outermost"),
         QStringLiteral("Ctrl+Shift+Left")},
        {Align::right, 0, 1, tr("Right edges"), tr("Right edges in line with the outermost"),
         QStringLiteral("Ctrl+Shift+Right")},
        {Align::upper, 1, 0, tr("Upper edges"), tr("Upper edges in line with the uppermost"),
         QStringLiteral("Ctrl+Shift+Up")},
        {Align::lower, 1, 1, tr("Lower edges"), tr("Lower edges in line with the lowest"),
         QStringLiteral("Ctrl+Shift+Down")},
        {Align::middles_upright, 2, 0, tr("Middles upright"), tr("Middles on one line up the surface"),
         QStringLiteral("Ctrl+Shift+U")},
        {Align::middles_level, 2, 1, tr("Middles level"), tr("Middles on one level line"),
         QStringLiteral("Ctrl+Shift+L")},
    };
    for (const auto& one : buttons) {
        QPushButton* button = add_button(grid, one.row, one.column, one.words, one.tip, one.keys);
        connect(button, &QPushButton::clicked, this, [this, to = one.to] {
            show_words(problem_, {});
            if (session_ != nullptr) align_collectors(*session_, ids_, to);
        });
    }
}

void ArrangePanel::build_gaps(QGridLayout* grid) {
    using fixing::Along;
    const struct {
        Along along;
        int column;
        QString words, tip, keys;
    } buttons[] = {
        {Along::level, 0, tr("Sideways"), tr("Equal gaps from left to right"), QStringLiteral("Ctrl+Shift+G")},
        {Along::slope, 1, tr("Up the surface"), tr("Equal gaps from below to above"), QStringLiteral("Ctrl+Shift+J")},
    };
    for (const auto& one : buttons) {
        QPushButton* button = add_button(grid, 0, one.column, one.words, one.tip, one.keys);
        gaps_.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, along = one.along] {
            if (session_ == nullptr) return;
            const QString refusal = distribute_collectors(*session_, ids_, along);
            show_words(problem_, refusal);
            if (!refusal.isEmpty()) Q_EMIT said(refusal);
        });
    }
}

void ArrangePanel::show_selection(const std::vector<std::string>& placement_ids) {
    if (ids_ != placement_ids) show_words(problem_, {});
    ids_ = placement_ids;
    heading_->setText(tr("%1 collectors selected").arg(ids_.size()));
    for (QPushButton* button : gaps_)
        button->setEnabled(ids_.size() > 2);
}

RowPanel::RowPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    QLabel* heading = words_label("heading", this);
    heading->setText(tr("Row"));
    column->addWidget(heading);
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    form->setVerticalSpacing(8);
    count_ = new NumberField(tr("Collectors to put beside it"), {}, {1.0, most_in_row, 0, 1.0, false}, this);
    gap_ = new NumberField(tr("Gap between collectors"), tr("m"), {0.0, widest_gap_m, 2, 0.05, false}, this);
    form->addRow(tr("More beside it"), count_);
    form->addRow(tr("Gap"), gap_);
    column->addLayout(form);
    put_ = new QPushButton(tr("Put in a row"), this);
    put_->setShortcut(QKeySequence(QStringLiteral("Ctrl+Shift+R")));
    put_->setToolTip(tr("So many more on the same level, to the right where they fit, else to the left (%1)")
                         .arg(put_->shortcut().toString(QKeySequence::NativeText)));
    column->addWidget(put_);
    problem_ = words_label("stop", this);
    problem_->setVisible(false);
    column->addWidget(problem_);
    count_->set_value(1.0);
    connect(put_, &QPushButton::clicked, this, &RowPanel::put);
}

void RowPanel::set_session(JobSession* session) {
    session_ = session;
    model_id_.clear();
    show_words(problem_, {});
}

void RowPanel::show_placement(const std::string& placement_id) {
    if (placement_id_ != placement_id) show_words(problem_, {});
    placement_id_ = placement_id;
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr || choice->collector_model == model_id_) return;
    const CollectorModel* model = find_collector(session_->reference().catalogue, choice->collector_model);
    if (model == nullptr) return;
    // Until another model comes the gap stays what was typed.
    model_id_ = choice->collector_model;
    gap_->set_value(model->clearance_m);
}

QString RowPanel::problem() const {
    return problem_->text();
}

void RowPanel::put() {
    if (session_ == nullptr || placement_id_.empty()) return;
    const int more = static_cast<int>(std::lround(count_->value().value_or(1.0)));
    const std::string first = placement_id_;
    const RowAdded added = add_row(*session_, first, more, gap_->value().value_or(0.0));
    show_words(problem_, added.refusal);
    // Pressed by its keys the panel may be out of sight: the bottom line says it too.
    if (!added.refusal.isEmpty()) Q_EMIT said(added.refusal);
    if (added.ids.empty()) return;
    QStringList ids;
    for (const std::string& id : added.ids)
        ids << qs(id);
    ids << qs(first);
    Q_EMIT row_put(ids);
}

}  // namespace wg::ui
