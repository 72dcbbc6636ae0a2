#include "ui/desk/desk_page.h"

#include <QDateTime>
#include <QFileDialog>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

#include "core/store/state_days.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/plain_table.h"
#include "ui/common/wide_column.h"
#include "ui/customers/customer_of_job.h"
#include "ui/customers/customers_page.h"
#include "ui/customers/files.h"
#include "ui/desk/figures_page.h"
#include "ui/desk/job_preview.h"
#include "ui/desk/job_table_model.h"
#include "ui/desk/list_filter.h"
#include "ui/desk/register_page.h"
#include "ui/desk/services_page.h"

namespace wg::ui {
namespace {

constexpr int preview_delay_ms = 60;  ///< holding the arrow key down must not load every job on the way
constexpr int row_height = 40;

QString item_name(const Catalogue& catalogue, const std::string& id) {
    if (const CollectorModel* item = find_collector(catalogue, id)) return qs(item->name);
    if (const BlockModel* item = find_block(catalogue, id)) return qs(item->name);
    const CylinderModel* item = find_cylinder(catalogue, id);
    return item == nullptr ? QString() : qs(item->name);
}

}  // namespace

DeskPage::DeskPage(store::Store& store, std::shared_ptr<const plan::Reference> program, QWidget* parent)
    : QWidget(parent), store_(store), program_(std::move(program)), reference_(program_) {
    setObjectName(QStringLiteral("page"));
    model_ = new JobTableModel(store_, this);
    notice_ = new NoticeBar(this);
    preview_ = new JobPreview(this);
    make_tabs();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 8, 24, 16);
    column->setSpacing(8);
    column->addWidget(tabs_, 1);
    notice_->lie_over({24, 8, 24, 16});

    preview_delay_.setSingleShot(true);
    preview_delay_.setInterval(preview_delay_ms);
    connect(&preview_delay_, &QTimer::timeout, this, &DeskPage::preview_selected);
    connect(model_, &JobTableModel::problem, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    connect(model_, &QAbstractItemModel::modelReset, this, &DeskPage::refresh_count);
    connect(preview_, &JobPreview::open_asked, this, [this] { Q_EMIT open_asked(qs(selected_id())); });
    connect(preview_, &JobPreview::remove_asked, this, &DeskPage::remove_selected);
    connect(preview_, &JobPreview::new_asked, this, &DeskPage::new_asked);
    connect(preview_, &JobPreview::customer_asked, this, [this] { show_customer_of(selected_id()); });
    connect(notice_, &NoticeBar::step_asked, this, &DeskPage::restore_removed);
    reload();
}

QWidget* DeskPage::make_jobs() {
    auto* jobs = new QWidget(this);
    filter_ = new ListFilter(store_, jobs);
    filter_->set_item_names([this](const std::string& id) { return item_name(reference_->catalogue, id); });
    connect(filter_, &ListFilter::changed, this, &DeskPage::narrow);
    connect(filter_, &ListFilter::view_chosen, this, &DeskPage::narrow);
    connect(filter_, &ListFilter::problem, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    auto* splitter = new QSplitter(Qt::Horizontal, jobs);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(make_table());
    splitter->addWidget(preview_);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 1);
    preview_->setMinimumWidth(300);
    auto* column = new QVBoxLayout(jobs);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    column->addWidget(make_head());
    column->addWidget(filter_);
    column->addWidget(splitter, 1);
    return jobs;
}

void DeskPage::refresh_due() {
    const QString words = services_->count_words();
    due_->setText(words);
    due_->setVisible(!words.isEmpty());
    preview_selected();
}

QWidget* DeskPage::make_head() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    search_ = new QLineEdit(head);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(
        tr("Search by number, client, address, telephone, title, quote, serial number or notes"));
    search_->setAccessibleName(tr("Search jobs"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    auto* start = new QPushButton(tr("Start a job"), head);
    start->setProperty("role", QStringLiteral("primary"));
    auto* import = new QPushButton(tr("Open a job file"), head);
    row->addWidget(search_, 1);
    row->addSpacing(8);
    row->addWidget(start);
    row->addWidget(import);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) {
        model_->set_query(text);
        if (model_->rowCount() > 0) table_->selectRow(0);
        preview_delay_.start();
    });
    connect(start, &QPushButton::clicked, this, &DeskPage::new_asked);
    connect(import, &QPushButton::clicked, this, &DeskPage::import_asked);
    return head;
}

QWidget* DeskPage::make_table() {
    auto* left = new QWidget(this);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 4, 0);
    column->setSpacing(4);
    table_ = new QTableView(left);
    table_->setAccessibleName(tr("Jobs"));
    table_->setModel(model_);
    make_plain(*table_, row_height);
    table_->installEventFilter(this);
    QHeaderView* header = table_->horizontalHeader();
    header->setSortIndicatorShown(true);
    // The arrow stands in the words: the style's own lies on them where they are set to the right.
    header->setStyleSheet(
        QStringLiteral("QHeaderView::up-arrow, QHeaderView::down-arrow { image: none; width: 0px; height: 0px; }"));
    header->setSectionsClickable(true);
    show_order();
    connect(header, &QHeaderView::sortIndicatorChanged, this, [this](int by, Qt::SortOrder order) {
        model_->sort(by, order);
        filter_->set_order(model_->view().order, model_->view().backwards);
        if (model_->rowCount() > 0) table_->selectRow(0);
    });
    header->setSectionResizeMode(QHeaderView::Interactive);
    header->setMinimumSectionSize(60);
    table_->setColumnWidth(JobTableModel::number_column, 92);
    table_->setColumnWidth(JobTableModel::client_column, 160);
    table_->setColumnWidth(JobTableModel::town_column, 112);
    table_->setColumnWidth(JobTableModel::state_column, 96);  // "in service" whole
    table_->setColumnWidth(JobTableModel::next_column, 176);
    table_->setColumnWidth(JobTableModel::changed_column, 112);
    keep_wide(*table_, JobTableModel::title_column, 150);
    count_ = new QLabel(left);
    count_->setProperty("role", QStringLiteral("muted"));
    due_ = new QPushButton(left);
    due_->setProperty("role", QStringLiteral("link"));
    due_->hide();
    connect(due_, &QPushButton::clicked, this, [this] { tabs_->setCurrentWidget(services_); });
    auto* foot = new QHBoxLayout;
    auto* save = new QPushButton(tr("Save this list"), left);
    save->setProperty("role", QStringLiteral("link"));
    connect(save, &QPushButton::clicked, this, &DeskPage::save_list);
    foot->addWidget(count_, 1);
    foot->addWidget(due_);
    foot->addWidget(save);
    column->addWidget(table_, 1);
    column->addLayout(foot);
    connect(table_, &QTableView::activated, this, [this] { Q_EMIT open_asked(qs(selected_id())); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { preview_delay_.start(); });
    return left;
}

void DeskPage::reload_jobs(const std::string& job_id) {
    const std::string wanted = job_id.empty() ? selected_id() : job_id;
    model_->reload();
    const int row = model_->row_of(wanted);
    if (row >= 0) {
        table_->selectRow(row);
    } else if (model_->rowCount() > 0) {
        table_->selectRow(0);
    }
    preview_selected();
}

void DeskPage::reload(const std::string& job_id) {
    reload_jobs(job_id);
    QTimer::singleShot(0, this, [this] {  // after the jobs have been painted
        const QDate today = QDate::currentDate();
        services_->reload({today.year(), today.month(), today.day()});
        if (tabs_->currentWidget() == register_place_) register_->reload();
        if (tabs_->currentWidget() == customers_place_) customers_->reload();
    });
}

void DeskPage::narrow() {
    const std::string wanted = selected_id();
    model_->set_view(filter_->chosen());
    show_order();
    const int row = std::max(0, model_->row_of(wanted));
    if (model_->rowCount() > 0) table_->selectRow(row);
    preview_delay_.start();
}

void DeskPage::save_list() {
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save this list"), QStringLiteral("jobs.xlsx"), table_files());
    if (path.isEmpty()) return;
    const Result<FigureTable> list = model_->whole_list();
    std::vector<std::vector<std::string>> rows;
    if (list) {
        const auto add = [&rows](const QStringList& cells) {
            rows.emplace_back();
            for (const QString& cell : cells)
                rows.back().push_back(cell.toStdString());
        };
        add(list.value().header);
        for (const QStringList& cells : list.value().rows)
            add(cells);
    }
    const Result<bool> written = list ? write_table(path, tr("Jobs"), rows, JobTableModel::date_columns_of_list())
                                      : Result<bool>(list.problems());
    notice_->clear();
    if (written)
        notice_->add(Mark::note, counted(static_cast<int>(list.value().rows.size()), tr("%1 job saved as %2"),
                                         tr("%1 jobs saved as %2"))
                                     .arg(path));
    else
        notice_->add(Mark::stop, qs(text_of(written.problems())));
}

void DeskPage::show_order() {
    using Model = JobTableModel;
    const auto columns = {std::pair{store::JobOrder::number, Model::number_column},
                          std::pair{store::JobOrder::client, Model::client_column},
                          std::pair{store::JobOrder::title, Model::title_column},
                          std::pair{store::JobOrder::town, Model::town_column},
                          std::pair{store::JobOrder::state, Model::state_column},
                          std::pair{store::JobOrder::newest, Model::changed_column}};
    const store::JobView& view = model_->view();
    QHeaderView* header = table_->horizontalHeader();
    const QSignalBlocker quiet(header);
    for (const auto& [order, column] : columns) {
        const bool down = order == store::JobOrder::newest ? !view.backwards : view.backwards;
        if (order == view.order) header->setSortIndicator(column, down ? Qt::DescendingOrder : Qt::AscendingOrder);
    }
}

void DeskPage::refresh_count() {
    const int total = model_->total();
    if (total < 0) {
        count_->clear();
    } else if (!search_->text().trimmed().isEmpty() || !(model_->view() == store::JobView{})) {
        count_->setText(total == 0   ? tr("No job matches")
                        : total == 1 ? tr("1 job matches")
                        : total > JobTableModel::most_counted && !(model_->view() == store::JobView{})
                            ? tr("More than %1 jobs match").arg(number(JobTableModel::most_counted))
                            : tr("%1 jobs match").arg(number(total)));
    } else {
        count_->setText(total == 1 ? tr("1 job") : tr("%1 jobs").arg(number(total)));
    }
}

std::string DeskPage::selected_id() const {
    if (table_ == nullptr || table_->selectionModel() == nullptr) return {};
    const store::JobRow* row = model_->row(table_->currentIndex().row());
    return row != nullptr ? row->id : std::string();
}

void DeskPage::preview_selected() {
    const std::string id = selected_id();
    if (id.empty()) {
        preview_->show_nothing(model_->rowCount() == 0 && search_->text().trimmed().isEmpty() &&
                               model_->view() == store::JobView{});
        return;
    }
    const Result<Job> job = store_.load(id);
    if (!job.ok()) {
        preview_->show_nothing(false);
        notice_->add(Mark::stop, qs(text_of(job.problems())));
        return;
    }
    const Result<std::vector<store::IssuedQuote>> quotes = store_.quotes(id);
    NextDue due = next_due(job.value(), quotes.ok() ? quotes.value() : std::vector<store::IssuedQuote>(), *reference_,
                           QDate::currentDate());
    // The plan knows which services apply; without it the record's last reading stands in.
    const store::ServiceDueRow* service = services_->next_of(id);
    if (job.value().state == JobState::in_service && service != nullptr) {
        due.on = QDate::fromString(qs(service->due_on), Qt::ISODate);
        due.overdue = due.on < QDate::currentDate();
    }
    const Result<std::vector<store::StateDay>> days = store::StateDays(store_).of(id);
    preview_->show_job(job.value(), due, days.ok() ? days.value() : std::vector<store::StateDay>(),
                       words_of_customer_step(store_, job.value()));
}

void DeskPage::remove_selected() {
    const store::JobRow* row = model_->row(table_->currentIndex().row());
    if (row == nullptr) return;
    const QString name = qs(row->number.empty() ? row->title : row->number);
    const std::string id = row->id;
    const Result<bool> removed = store_.remove(id, Instant{QDateTime::currentSecsSinceEpoch()});
    if (!removed.ok()) {
        notice_->add(Mark::stop, qs(text_of(removed.problems())));
        return;
    }
    removed_id_ = id;
    notice_->clear();
    notice_->add_with_step(Mark::note, tr("Job %1 is removed from the desk.").arg(name), tr("Bring it back"));
    reload();
}

void DeskPage::restore_removed() {
    const Result<bool> restored = store_.restore(removed_id_);
    notice_->clear();
    if (!restored.ok()) notice_->add(Mark::stop, qs(text_of(restored.problems())));
    reload(removed_id_);
}

void DeskPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (tabs_->currentIndex() == 0) search_->setFocus();
}

bool DeskPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    // From the search box the arrows walk the list and Enter opens: no need to leave it.
    if (watched == search_ && (key->key() == Qt::Key_Down || key->key() == Qt::Key_Up)) {
        const int step = key->key() == Qt::Key_Down ? 1 : -1;
        const int row = std::clamp(table_->currentIndex().row() + step, 0, std::max(0, model_->rowCount() - 1));
        if (model_->rowCount() > 0) table_->selectRow(row);
        return true;
    }
    if (enter && (watched == search_ || watched == table_) && !selected_id().empty()) {
        Q_EMIT open_asked(qs(selected_id()));
        return true;
    }
    if (watched == table_ && key->key() == Qt::Key_Delete) {
        remove_selected();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace wg::ui
