#include "ui/rating/fit_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "core/rating/calibrated.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/common/whole_file.h"
#include "ui/rating/fit_results.h"
#include "ui/rating/set_chooser.h"

namespace wg::ui {
namespace {

constexpr int left_width = 560;
constexpr int row_height = 34;
constexpr int typical_evaluations = 400;  ///< progress only: a fit to half a dozen values

QString sheet_filter() {
    return FitPage::tr("Declared values (*.json);;All files (*)");
}

}  // namespace

FitPage::FitPage(SetChooser& chooser, QWidget* parent)
    : QWidget(parent), chooser_(chooser), model_(new DeclaredModel(this)), run_(new FitRun(this)) {
    results_ = new FitResults(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 12, 12, 12);
    row->setSpacing(16);
    row->addWidget(make_left());
    row->addWidget(results_, 1);
    connect(model_, &DeclaredModel::refused, this, &FitPage::failed);
    connect(model_, &DeclaredModel::edited, this, [this] {
        Q_EMIT settled();
        outdated_ = run_->fit().has_value();
        refresh();
    });
    connect(run_, &FitRun::progressed, this, [this](int evaluations, double worst) {
        progress_->setValue(std::min(evaluations, typical_evaluations - 1));
        words_->setText(tr("%1 tests computed; the worst value is off by %2 times its tolerance.")
                            .arg(evaluations)
                            .arg(number(worst, 1)));
    });
    connect(run_, &FitRun::finished, this, &FitPage::show_found);
    refresh();
    show_found();
}

QWidget* FitPage::make_left() {
    auto* left = new QWidget(this);
    left->setFixedWidth(left_width);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    make_table(column);
    make_buttons(column);
    return left;
}

void FitPage::make_table(QVBoxLayout* column) {
    auto* heading = heading_label(tr("Declared by the data s&heet"), this);
    view_ = new QTableView(this);
    heading->setBuddy(view_);
    view_->setModel(model_);
    view_->setItemDelegate(new DeclaredDelegate(view_));
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked |
                           QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
    view_->setTabKeyNavigation(false);
    view_->setAccessibleName(tr("Declared values"));
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(row_height);
    QHeaderView* heads = view_->horizontalHeader();
    heads->setHighlightSections(false);
    heads->setSectionResizeMode(DeclaredModel::what, QHeaderView::Stretch);
    for (const auto& [section, width] :
         {std::pair{DeclaredModel::value, 88}, std::pair{DeclaredModel::tolerance, 52},
          std::pair{DeclaredModel::air, 80}, std::pair{DeclaredModel::cycle, 62}, std::pair{DeclaredModel::water, 86}})
        heads->resizeSection(section, width);
    view_->setCurrentIndex(model_->index(0, DeclaredModel::value));
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &FitPage::refresh);
    auto* remove_key = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_Delete), view_);
    remove_key->setContext(Qt::WidgetShortcut);
    connect(remove_key, &QShortcut::activated, this, &FitPage::remove);
    column->addWidget(heading);
    column->addWidget(view_, 1);
}

void FitPage::make_buttons(QVBoxLayout* column) {
    const auto button = [this](const QString& words, auto slot) {
        auto* made = new QPushButton(words, this);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, slot);
        return made;
    };
    auto* edit = new QHBoxLayout;
    edit->setSpacing(8);
    remove_ = button(tr("&Remove"), [this] { remove(); });
    remove_->setToolTip(tr("Removes the line (Ctrl+Delete)"));
    save_ = button(tr("&Save values\u2026"), [this] { ask_save(); });
    edit->addWidget(button(tr("&Add a value"), [this] { add(); }));
    edit->addWidget(remove_);
    edit->addStretch(1);
    edit->addWidget(button(tr("&Load values\u2026"), [this] { ask_load(); }));
    edit->addWidget(save_);
    column->addLayout(edit);
    auto* from = new QHBoxLayout;
    auto* label = new QLabel(tr("Fr&om"), this);
    source_ = new QLineEdit(this);
    source_->setMaxLength(200);
    source_->setPlaceholderText(tr("Which sheet, which page"));
    source_->setAccessibleName(tr("Where the values are from"));
    label->setBuddy(source_);
    from->setSpacing(8);
    from->addWidget(label);
    from->addWidget(source_, 1);
    column->addLayout(from);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setProperty("role", QStringLiteral("muted"));
    column->addWidget(words_);
    progress_ = new QProgressBar(this);
    progress_->setRange(0, typical_evaluations);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(6);
    progress_->setAccessibleName(tr("Progress of the fit"));
    QSizePolicy keeps = progress_->sizePolicy();
    keeps.setRetainSizeWhenHidden(true);
    progress_->setSizePolicy(keeps);
    column->addWidget(progress_);
    auto* act = new QHBoxLayout;
    act->setSpacing(8);
    go_ = button({}, [this] { start_or_stop(); });
    go_->setProperty("role", QStringLiteral("primary"));
    equipment_ = button(tr("Save e&quipment file\u2026"), [this] { ask_save_equipment(); });
    equipment_->setToolTip(tr("The calibrated set as an equipment file, with a note on how it was calibrated"));
    act->addWidget(go_);
    act->addWidget(equipment_);
    act->addStretch(1);
    column->addLayout(act);
}

void FitPage::refresh() {
    const bool running = run_->running();
    const QString trouble = model_->trouble();
    go_->setText(running ? tr("Stop") : tr("&Calibrate"));
    go_->setEnabled(running || trouble.isEmpty());
    progress_->setVisible(running);
    view_->setEnabled(!running);
    remove_->setEnabled(!running && view_->currentIndex().isValid());
    save_->setEnabled(trouble.isEmpty());
    equipment_->setEnabled(!running && run_->fit().has_value() && !outdated_);
    if (running) return;
    if (!trouble.isEmpty())
        words_->setText(trouble);
    else if (outdated_)
        words_->setText(tr("What is shown was found before the last change. Calibrate again."));
    else
        words_->setText(static_cast<int>(model_->values().size()) < model_->rowCount()
                            ? tr("Lines without a figure count for nothing.")
                            : QString());
}

void FitPage::start_or_stop() {
    if (run_->running()) {
        run_->stop();
        words_->setText(tr("Stopping."));
        return;
    }
    const QString trouble = model_->trouble();
    const rating::Item item = chooser_.item();
    if (!trouble.isEmpty() || item.refrigerant == nullptr) {
        Q_EMIT failed(trouble.isEmpty() ? tr("There is no table of this block's refrigerant.") : trouble);
        return;
    }
    Q_EMIT settled();
    outdated_ = false;
    progress_->setValue(0);
    words_->setText(tr("Starting."));
    run_->start(item, chooser_.chamber(), model_->values(), chooser_.reference());
    results_->show_fit(nullptr, tr("Calibrating."));
    refresh();
}

void FitPage::set_changed() {
    if (run_->running()) run_->stop();
    outdated_ = run_->fit().has_value() || run_->running();
    refresh();
}

void FitPage::show_found() {
    const auto& fit = run_->fit();
    results_->show_fit(
        fit ? &*fit : nullptr,
        tr("Enter what the data sheet declares, then calibrate: figures that sheets leave open (compressor "
           "efficiencies, heat transfer, standing loss) are moved within believed ranges until the "
           "computed test gives the declared values."));
    if (!run_->problems().empty()) Q_EMIT failed(qs(text_of(run_->problems())));
    refresh();
}

void FitPage::add() {
    const int row = model_->add_like(view_->currentIndex().row());
    const QModelIndex at = model_->index(row, DeclaredModel::value);
    view_->setCurrentIndex(at);
    view_->scrollTo(at);
    view_->setFocus();
}

void FitPage::remove() {
    const QModelIndex at = view_->currentIndex();
    if (!at.isValid()) return;
    model_->remove(at.row());
    const int next = std::min(at.row(), model_->rowCount() - 1);
    if (next >= 0) view_->setCurrentIndex(model_->index(next, DeclaredModel::value));
    refresh();
}

bool FitPage::load_sheet(const QString& path) {
    const auto refuse = [this](const std::vector<Problem>& problems) {
        Q_EMIT failed(tr("These values cannot be used; the table stands as it was. %1").arg(qs(text_of(problems))));
        return false;
    };
    const Result<std::string> text = read_whole(path, 16 * mebibyte);
    if (!text.ok()) return refuse(text.problems());
    const Result<rating::DeclaredSheet> sheet =
        rating::sheet_from_json(text.value(), QFileInfo(path).fileName().toStdString());
    if (!sheet.ok()) return refuse(sheet.problems());
    model_->set_values(sheet.value().values);
    source_->setText(qs(sheet.value().source));
    if (sheet.value().set_point_c) chooser_.set_set_point(*sheet.value().set_point_c);
    if (sheet.value().air_speed_m_s) chooser_.set_air_speed(*sheet.value().air_speed_m_s);
    view_->setCurrentIndex(model_->index(0, DeclaredModel::value));
    refresh();
    return true;
}

bool FitPage::save_sheet(const QString& path) {
    rating::DeclaredSheet sheet;
    sheet.source = source_->text().trimmed().toStdString();
    sheet.set_point_c = chooser_.item().set_point_c;
    sheet.air_speed_m_s = chooser_.chamber().air_speed_m_s;
    sheet.values = model_->values();
    const Result<bool> written = write_whole(path, rating::sheet_to_json(sheet));
    if (!written.ok()) {
        Q_EMIT failed(tr("The values were not saved. %1").arg(qs(text_of(written.problems()))));
        return false;
    }
    Q_EMIT done_well(tr("Values saved to %1.").arg(path));
    return true;
}

bool FitPage::save_equipment(const QString& path) {
    if (!run_->fit() || outdated_) return false;
    const Result<std::string> text =
        rating::calibrated_equipment(*run_->fit(), source_->text().trimmed().toStdString());
    const Result<bool> written = text.ok() ? write_whole(path, text.value()) : Result<bool>(text.problems());
    if (!written.ok()) {
        Q_EMIT failed(tr("The equipment file was not saved. %1").arg(qs(text_of(written.problems()))));
        return false;
    }
    Q_EMIT done_well(tr("Calibrated set saved to %1. 'Add equipment file' reads it again.").arg(path));
    return true;
}

void FitPage::ask_load() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Load declared values"), QString(), sheet_filter());
    if (!path.isEmpty()) load_sheet(path);
}

void FitPage::ask_save() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save declared values"),
                                                      QStringLiteral("declared-values.json"), sheet_filter());
    if (!path.isEmpty()) save_sheet(path);
}

void FitPage::ask_save_equipment() {
    if (!run_->fit()) return;
    const QString name = qs(run_->fit()->item.block.id) + QStringLiteral("-calibrated.json");
    const QString path = QFileDialog::getSaveFileName(this, tr("Save equipment file"), name,
                                                      tr("Equipment files (*.json);;All files (*)"));
    if (!path.isEmpty()) save_equipment(path);
}

}  // namespace wg::ui
