#include "ui/customers/customers_page.h"

#include <QDateTime>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "core/store/customers.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/plain_table.h"
#include "ui/common/wide_column.h"
#include "ui/customers/customer_form.h"
#include "ui/customers/customer_look.h"
#include "ui/customers/customer_table_model.h"

namespace wg::ui {
namespace {

constexpr int list_row_px = 40;

Instant this_second() {
    return {QDateTime::currentSecsSinceEpoch()};
}

}  // namespace

CustomersPage::CustomersPage(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    model_ = new CustomerTableModel(store_, this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    split->addWidget(make_list());
    split->addWidget(make_side());
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({560, 620});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->addWidget(split);
    connect(model_, &CustomerTableModel::problem, this, &CustomersPage::problem);
    connect(model_, &QAbstractItemModel::modelReset, this, &CustomersPage::refresh_count);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (!save_edited()) return;
        model_->set_query(text);
        if (model_->rowCount() > 0) table_->selectRow(0);
    });
    connect(form_, &CustomerForm::changed, this, &CustomersPage::refresh_buttons);
    connect(look_, &CustomerLook::open_asked, this, &CustomersPage::open_asked);
    connect(look_, &CustomerLook::problem, this, &CustomersPage::problem);
    connect(look_, &CustomerLook::linked, this, [this] { reload(); });
    reload();
}

QWidget* CustomersPage::make_list() {
    auto* part = new QWidget(this);
    search_ = new QLineEdit(part);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(tr("Search by name, number, place, telephone or notes"));
    search_->setAccessibleName(tr("Search customers"));
    search_->setClearButtonEnabled(true);
    auto* add = new QPushButton(tr("Add a customer"), part);
    add->setProperty("role", QStringLiteral("primary"));
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(search_, 1);
    head->addWidget(add);
    table_ = new QTableView(part);
    table_->setAccessibleName(tr("Customers"));
    table_->setModel(model_);
    make_plain(*table_, list_row_px);
    table_->setColumnWidth(CustomerTableModel::number_column, 84);
    table_->setColumnWidth(CustomerTableModel::town_column, 116);
    table_->setColumnWidth(CustomerTableModel::phone_column, 124);
    table_->setColumnWidth(CustomerTableModel::jobs_column, 52);
    keep_wide(*table_, CustomerTableModel::name_column, 170);
    count_ = new QLabel(part);
    count_->setProperty("role", QStringLiteral("muted"));
    auto* take_in = new QPushButton(tr("Take in a table"), part);
    auto* save_all = new QPushButton(tr("Save this list"), part);
    for (QPushButton* button : {take_in, save_all})
        button->setProperty("role", QStringLiteral("link"));
    auto* foot = new QHBoxLayout;
    foot->addWidget(count_, 1);
    foot->addWidget(take_in);
    foot->addWidget(save_all);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(table_, 1);
    column->addLayout(foot);
    connect(add, &QPushButton::clicked, this, &CustomersPage::start_customer);
    connect(take_in, &QPushButton::clicked, this, &CustomersPage::take_in_table);
    connect(save_all, &QPushButton::clicked, this, &CustomersPage::save_list);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) { show_row(now.row()); });
    return part;
}

QWidget* CustomersPage::make_side() {
    auto* place = new QWidget(this);
    none_ = new QLabel(tr("Customers have their addresses, contacts, jobs, quotes and fitted parts here. Add one, or "
                          "take in a table that another program saved as CSV."),
                       place);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    none_->setContentsMargins(16, 8, 16, 0);
    side_ = new QWidget(place);
    form_ = new CustomerForm(side_);
    look_ = new CustomerLook(store_, side_);
    save_ = new QPushButton(tr("Save"), side_);
    save_->setProperty("role", QStringLiteral("primary"));
    undo_ = new QPushButton(tr("Undo"), side_);
    job_ = new QPushButton(tr("Start a job for this customer"), side_);
    join_ = new QPushButton(tr("Bring another one into this"), side_);
    hand_out_ = new QPushButton(tr("Hand out their data"), side_);
    erase_ = new QPushButton(tr("Erase their data"), side_);
    remove_ = new QPushButton(tr("Remove"), side_);
    for (QPushButton* button : {join_, hand_out_, erase_, remove_})
        button->setProperty("role", QStringLiteral("link"));
    auto* keep = new QHBoxLayout;
    keep->setSpacing(8);
    keep->addWidget(save_);
    keep->addWidget(undo_);
    keep->addStretch(1);
    keep->addWidget(job_);
    auto* more = new FlowLayout;
    for (QPushButton* button : {join_, hand_out_, erase_, remove_})
        more->addWidget(button);
    auto* column = new QVBoxLayout(side_);
    column->setContentsMargins(8, 0, 8, 0);
    column->setSpacing(8);
    column->addWidget(form_);
    column->addLayout(keep);
    column->addWidget(look_);
    column->addLayout(more);
    column->addStretch(1);
    scroll_ = new QScrollArea(place);
    scroll_->setWidget(side_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* whole = new QVBoxLayout(place);
    whole->setContentsMargins(0, 0, 0, 0);
    none_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    none_->setContentsMargins(16, 8, 16, 8);
    whole->addWidget(none_);
    whole->addWidget(scroll_, 1);
    connect(save_, &QPushButton::clicked, this, [this] {
        // Saving disables the button: the focus would go on to the next one, which starts a job.
        if (save_edited()) form_->focus_name();
    });
    connect(undo_, &QPushButton::clicked, this, [this] {
        new_ = false;
        show_id(shown_id_);
        mark_shown();
        form_->focus_name();
        Q_EMIT taken_back();
    });
    connect(job_, &QPushButton::clicked, this, [this] {
        if (save_edited() && !shown_id_.empty()) Q_EMIT new_job_asked(qs(shown_id_));
    });
    connect(join_, &QPushButton::clicked, this, &CustomersPage::choose_other);
    connect(hand_out_, &QPushButton::clicked, this, &CustomersPage::hand_out);
    connect(erase_, &QPushButton::clicked, this, &CustomersPage::erase);
    connect(remove_, &QPushButton::clicked, this, &CustomersPage::remove);
    return place;
}

void CustomersPage::reload(const std::string& customer_id) {
    const std::string wanted = customer_id.empty() ? shown_id_ : customer_id;
    // What is being typed stays; the list alone is read anew.
    const bool typing = new_ || form_->edited();
    settling_ = true;
    model_->reload();
    const int row = model_->row_of(wanted);
    if (row >= 0)
        table_->selectRow(row);
    else if (model_->rowCount() > 0 && customer_id.empty() && !typing)
        table_->selectRow(0);
    settling_ = false;
    if (typing && customer_id.empty()) return;
    const store::CustomerRow* at = model_->row(table_->currentIndex().row());
    // One that the search does not show is shown all the same when it was asked for.
    show_id(!customer_id.empty() ? customer_id : at == nullptr ? std::string() : at->id);
}

void CustomersPage::show_row(int row) {
    if (settling_) return;
    const store::CustomerRow* at = model_->row(row);
    if (at == nullptr || (at->id == shown_id_ && !new_)) return;
    const std::string id = at->id;
    if (!save_edited()) {
        mark_shown();
        return;
    }
    // Saving read the list anew and went back to the one that was saved.
    settling_ = true;
    if (const int there = model_->row_of(id); there >= 0) table_->selectRow(there);
    settling_ = false;
    show_id(id);
}

// The row of the one that the form holds; none while it holds a new one.
void CustomersPage::mark_shown() {
    settling_ = true;
    const int row = new_ ? -1 : model_->row_of(shown_id_);
    if (row >= 0)
        table_->selectRow(row);
    else
        table_->setCurrentIndex({});
    settling_ = false;
}

void CustomersPage::show_id(const std::string& id) {
    new_ = false;
    if (id != shown_id_) scroll_->ensureVisible(0, 0);  // from the name on
    shown_id_ = id;
    customers::Customer customer;
    if (!id.empty()) {
        const Result<customers::Customer> found = store::CustomerBook(store_).load(id);
        if (!found.ok()) {
            Q_EMIT problem(qs(text_of(found.problems())));
            shown_id_.clear();
        } else {
            customer = found.value();
        }
    }
    form_->show_customer(customer);
    look_->show_customer(shown_id_);
    refresh_buttons();
}

void CustomersPage::start_customer() {
    if (!save_edited()) return;
    new_ = true;
    form_->show_customer({});
    look_->show_customer({});
    mark_shown();
    refresh_buttons();
    scroll_->ensureVisible(0, 0);
    form_->focus_name();
}

bool CustomersPage::save_edited() {
    if (!form_->edited()) {
        if (new_) {
            new_ = false;
            show_id(shown_id_);
            mark_shown();
        }
        return true;
    }
    const Result<customers::Customer> kept = store::CustomerBook(store_).save(form_->customer(), this_second());
    if (!kept.ok()) {
        Q_EMIT problem(tr("The customer was not saved. %1").arg(qs(text_of(kept.problems()))));
        return false;
    }
    new_ = false;
    shown_id_ = kept.value().id;
    form_->show_customer(kept.value());
    reload(shown_id_);
    Q_EMIT said(tr("%1 saved").arg(qs(kept.value().number)));
    return true;
}

void CustomersPage::refresh_buttons() {
    const bool any = new_ || !shown_id_.empty();
    const bool typed = form_->edited();
    none_->setVisible(!any);
    scroll_->setVisible(any);
    save_->setEnabled(typed);
    undo_->setEnabled(typed || new_);
    for (QPushButton* button : {job_, join_, hand_out_, erase_, remove_})
        button->setEnabled(!new_ && !shown_id_.empty());
    // Where there are jobs only erasing takes a customer away.
    remove_->setVisible(look_->jobs()->rowCount() == 0);
}

void CustomersPage::refresh_count() {
    const int total = model_->total();
    const bool narrowed = !model_->query().isEmpty();
    count_->setText(total < 0    ? QString()
                    : total == 0 ? (narrowed ? tr("No customer matches") : tr("No customer yet"))
                    : total == 1 ? (narrowed ? tr("1 customer matches") : tr("1 customer"))
                    : narrowed   ? tr("%1 customers match").arg(number(total))
                                 : tr("%1 customers").arg(number(total)));
}

QString CustomersPage::count_words() const {
    return count_->text();
}

void CustomersPage::hideEvent(QHideEvent* event) {
    // Another tab or a job: what was typed is kept, or it is said why not.
    save_edited();
    QWidget::hideEvent(event);
}

}  // namespace wg::ui
