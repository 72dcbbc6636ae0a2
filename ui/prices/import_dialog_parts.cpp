// The parts of the dialog: what the columns hold, what would change, and the choices below.

#include <QCheckBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/wrapped_cells.h"
#include "ui/drawing/fields.h"
#include "ui/prices/import_dialog.h"
#include "ui/prices/import_model.h"

namespace wg::ui {
namespace {

constexpr int import_columns_wide = 348;
constexpr int import_row_px = 30;

QTableView* import_table(QAbstractItemModel* model, const QString& name, QWidget* parent) {
    auto* out = new QTableView(parent);
    out->setModel(model);
    out->setAccessibleName(name);
    out->setSelectionBehavior(QAbstractItemView::SelectRows);
    out->setEditTriggers(QAbstractItemView::NoEditTriggers);
    out->setShowGrid(false);
    out->setWordWrap(false);
    out->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    out->verticalHeader()->hide();
    out->verticalHeader()->setDefaultSectionSize(import_row_px);
    out->horizontalHeader()->setHighlightSections(false);
    return out;
}

}  // namespace

QWidget* PriceImportDialog::make_columns() {
    auto* part = new QWidget;
    auto* grid = new QGridLayout(part);
    grid->setContentsMargins(0, 0, 8, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(1, 1);
    const auto combo = [&](const QString& words) {
        auto* made = new CalmCombo(part);
        made->setAccessibleName(words);
        made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        made->setMinimumContentsLength(12);
        auto* label = new QLabel(words, part);
        label->setBuddy(made);
        const int row = grid->rowCount();
        grid->addWidget(label, row, 0);
        grid->addWidget(made, row, 1);
        connect(made, &QComboBox::activated, this, &PriceImportDialog::take_choices);
        return made;
    };
    auto* heading = heading_label(tr("What the columns hold"), part);
    grid->addWidget(heading, 0, 0, 1, 2);
    names_row_ = combo(tr("Named in"));
    decimal_ = combo(tr("Decimals"));
    decimal_->addItem(tr("Each figure by itself"), static_cast<int>(parts::DecimalSign::undecided));
    decimal_->addItem(tr("Point: 1,234.50"), static_cast<int>(parts::DecimalSign::point));
    decimal_->addItem(tr("Comma: 1.234,50"), static_cast<int>(parts::DecimalSign::comma));
    for (std::size_t i = 0; i < parts::import_field_count; ++i)
        columns_[i] = combo(ImportChangesModel::field_words(static_cast<parts::ImportField>(i)));
    grid->setRowStretch(grid->rowCount(), 1);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(part);
    scroll->setFixedWidth(import_columns_wide);
    return scroll;
}

QWidget* PriceImportDialog::make_preview() {
    auto* part = new QWidget(this);
    auto* title = new QLabel(tr("%1 into '%2'").arg(file_name_, qs(into_.label)), part);
    title->setProperty("role", QStringLiteral("title"));
    title->setTextFormat(Qt::PlainText);
    title->setWordWrap(true);
    notes_ = new QLabel(part);
    notes_->setTextFormat(Qt::PlainText);
    notes_->setProperty("role", QStringLiteral("muted"));
    notes_->setWordWrap(true);
    notes_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    counts_ = new QLabel(part);
    counts_->setProperty("role", QStringLiteral("heading"));
    counts_->setWordWrap(true);
    changes_ = new ImportChangesModel(this);
    problems_ = new ImportProblemsModel(this);
    tabs_ = new QTabWidget(part);
    QTableView* changes = import_table(changes_, tr("What would change"), tabs_);
    const std::pair<int, int> widths[] = {
        {ImportChangesModel::column_line, 48},  {ImportChangesModel::column_what, 136},
        {ImportChangesModel::column_id, 120},   {ImportChangesModel::column_old, 100},
        {ImportChangesModel::column_new, 88},   {ImportChangesModel::column_percent, 96},
        {ImportChangesModel::column_also, 130}, {ImportChangesModel::column_item, 150}};
    for (const auto& [column, width] : widths)
        changes->setColumnWidth(column, width);
    changes->horizontalHeader()->setSectionResizeMode(ImportChangesModel::column_item, QHeaderView::Stretch);
    tabs_->addTab(changes, QString());
    QTableView* problems = import_table(problems_, tr("Problems"), tabs_);
    problems->setWordWrap(true);
    problems->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    WrappedCells::use_in(*problems);
    tabs_->addTab(problems, QString());
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(title);
    column->addWidget(notes_);
    column->addWidget(counts_);
    column->addWidget(tabs_, 1);
    return part;
}

QWidget* PriceImportDialog::make_foot() {
    auto* foot = new QWidget(this);
    add_new_ = new QCheckBox(foot);
    add_new_->setChecked(true);
    remove_gone_ = new QCheckBox(foot);
    leave_out_ = new QCheckBox(foot);
    why_not_ = new QLabel(foot);
    why_not_->setProperty("role", QStringLiteral("caution"));
    why_not_->setTextFormat(Qt::PlainText);
    why_not_->setWordWrap(true);
    take_ = new QPushButton(tr("Take into the list"), foot);
    take_->setProperty("role", QStringLiteral("primary"));
    auto* cancel = new QPushButton(tr("Leave the list as it is"), foot);
    auto* choices = new QHBoxLayout;
    choices->setSpacing(16);
    for (QCheckBox* box : {add_new_, remove_gone_, leave_out_}) {
        choices->addWidget(box);
        connect(box, &QCheckBox::toggled, this, &PriceImportDialog::refresh_foot);
    }
    choices->addStretch(1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(why_not_, 1);
    buttons->addWidget(cancel);
    buttons->addWidget(take_);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(choices);
    column->addLayout(buttons);
    connect(take_, &QPushButton::clicked, this, &PriceImportDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    return foot;
}

}  // namespace wg::ui
