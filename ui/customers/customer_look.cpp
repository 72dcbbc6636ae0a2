#include "ui/customers/customer_look.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/plain_table.h"

namespace wg::ui {
namespace {

constexpr int look_row_px = 36;
constexpr int most_rows_high = 6;
constexpr int job_id_role = Qt::UserRole;

QTableWidget* look_table(const QStringList& heads, const QString& name, QWidget* parent) {
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()), parent);
    table->setHorizontalHeaderLabels(heads);
    table->setAccessibleName(name);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    make_plain(*table, look_row_px);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    return table;
}

// Rows of words; the table as high as they need, up to a few.
void fill_table(QTableWidget& table, const std::vector<QStringList>& rows) {
    table.setRowCount(static_cast<int>(rows.size()));
    for (int row = 0; row < table.rowCount(); ++row) {
        const QStringList& cells = rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < table.columnCount(); ++column) {
            auto* item = new QTableWidgetItem(cells.value(column));
            item->setToolTip(item->text());
            table.setItem(row, column, item);
        }
    }
    table.setFixedHeight((std::min(table.rowCount(), most_rows_high) + 1) * look_row_px + 4);
}

QPushButton* link_button(const QString& text, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setProperty("role", QStringLiteral("link"));
    return button;
}

// A title with buttons beside it, words where there are any, and the table below.
QWidget* part_of(const QString& title, const QString& words, QTableWidget* table,
                 std::initializer_list<QPushButton*> buttons, QWidget* parent) {
    auto* part = new QWidget(parent);
    auto* head = new QHBoxLayout;
    auto* label = new QLabel(title, part);
    label->setProperty("role", QStringLiteral("title"));
    head->addWidget(label, 1);
    for (QPushButton* button : buttons)
        head->addWidget(button);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    column->addLayout(head);
    if (!words.isEmpty()) {
        auto* below = new QLabel(words, part);
        below->setProperty("role", QStringLiteral("muted"));
        below->setWordWrap(true);
        column->addWidget(below);
    }
    column->addWidget(table);
    return part;
}

QString answer_text(const std::string& answer) {
    if (answer == "accepted") return CustomerLook::tr("accepted");
    if (answer == "declined") return CustomerLook::tr("declined");
    if (answer == "withdrawn") return CustomerLook::tr("withdrawn");
    return CustomerLook::tr("no answer yet");
}

QString selected_job(const QTableWidget& table) {
    const QTableWidgetItem* item = table.item(table.currentRow(), 0);
    return item == nullptr ? QString() : item->data(job_id_role).toString();
}

}  // namespace

CustomerLook::CustomerLook(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    words_ = new QLabel(this);
    words_->setProperty("role", QStringLiteral("muted"));
    words_->setWordWrap(true);
    jobs_ = look_table({tr("Job"), tr("Title"), tr("Town"), tr("State")}, tr("Jobs of the customer"), this);
    quotes_ = look_table({tr("Quote"), tr("Issued"), tr("With tax"), tr("Answer")}, tr("Quotes of the customer"), this);
    fitted_ =
        look_table({tr("Part"), tr("Serial number"), tr("Read on"), tr("Job")}, tr("Parts fitted, with numbers"), this);
    likely_ = look_table({tr("Job"), tr("Client"), tr("Town"), tr("State")}, tr("Jobs that may be theirs"), this);
    auto* open = link_button(tr("Open the job"), this);
    auto* apart = link_button(tr("Part the job from the customer"), this);
    auto* look_at = link_button(tr("Open the job"), this);
    auto* join = link_button(tr("Link the job with the customer"), this);
    jobs_part_ = part_of(tr("Jobs"), {}, jobs_, {open, apart}, this);
    quotes_part_ = part_of(tr("Quotes"), {}, quotes_, {}, this);
    fitted_part_ = part_of(tr("Fitted"), {}, fitted_, {}, this);
    likely_part_ =
        part_of(tr("May be theirs"), tr("The client's name is the same, and postcode, telephone or e-mail, too."),
                likely_, {look_at, join}, this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(words_);
    for (QWidget* part : {likely_part_, jobs_part_, quotes_part_, fitted_part_})
        column->addWidget(part);
    connect(apart, &QPushButton::clicked, this, &CustomerLook::part_selected);
    connect(join, &QPushButton::clicked, this, &CustomerLook::link_selected);
    for (const auto& [table, button] : {std::pair{jobs_, open}, std::pair{likely_, look_at}}) {
        const auto open_selected = [this, from = table] {
            if (const QString id = selected_job(*from); !id.isEmpty()) Q_EMIT open_asked(id);
        };
        connect(table, &QTableWidget::cellActivated, this, open_selected);
        connect(button, &QPushButton::clicked, this, open_selected);
    }
    show_customer({});
}

void CustomerLook::show_customer(const std::string& customer_id) {
    customer_id_ = customer_id;
    store::CustomerAtOneLook look;
    if (!customer_id_.empty()) {
        Result<store::CustomerAtOneLook> found = store::CustomerBook(store_).at_one_look(customer_id_);
        if (found.ok())
            look = std::move(found).value();
        else
            Q_EMIT problem(qs(text_of(found.problems())));
    }
    fill(look);
    fill_likely();
}

void CustomerLook::fill(const store::CustomerAtOneLook& look) {
    std::vector<QStringList> rows;
    for (const store::JobRow& job : look.jobs)
        rows.push_back({qs(job.number), qs(job.title), qs(job.town), QString::fromUtf8(text_of(job.state))});
    fill_table(*jobs_, rows);
    for (int row = 0; row < jobs_->rowCount(); ++row)
        jobs_->item(row, 0)->setData(job_id_role, qs(look.jobs[static_cast<std::size_t>(row)].id));
    if (!rows.empty()) jobs_->selectRow(0);
    rows.clear();
    for (const store::CustomerQuote& quote : look.quotes)
        rows.push_back({qs(quote.number), day(quote.issued_at), money(Money{quote.gross_minor}, qs(quote.currency)),
                        answer_text(quote.answer)});
    fill_table(*quotes_, rows);
    rows.clear();
    for (const store::FittedRow& row : look.fitted) {
        const FittedPart& part = row.part;
        rows.push_back({part.part.empty() ? tr("part not named") : qs(part.part), qs(part.serial),
                        part.replaced_on.empty()
                            ? day(part.fitted_on)
                            : tr("%1, replaced %2").arg(day(part.fitted_on), day(part.replaced_on)),
                        qs(row.job_number)});
    }
    fill_table(*fitted_, rows);
    jobs_part_->setVisible(!look.jobs.empty());
    quotes_part_->setVisible(!look.quotes.empty());
    fitted_part_->setVisible(!look.fitted.empty());
    words_->setVisible(!customer_id_.empty() && look.jobs.empty());
    words_->setText(
        tr("No job is linked with this customer. Start one above; jobs that may be theirs are offered here "
           "when the name is the same, and postcode, telephone or e-mail, too."));
}

void CustomerLook::fill_likely() {
    std::vector<store::JobRow> jobs;
    if (!customer_id_.empty()) {
        Result<std::vector<store::JobRow>> found = store::CustomerBook(store_).likely_jobs(customer_id_);
        if (found.ok())
            jobs = std::move(found).value();
        else
            Q_EMIT problem(qs(text_of(found.problems())));
    }
    std::vector<QStringList> rows;
    rows.reserve(jobs.size());
    for (const store::JobRow& job : jobs)
        rows.push_back({qs(job.number), qs(job.client), qs(job.town), QString::fromUtf8(text_of(job.state))});
    fill_table(*likely_, rows);
    for (int row = 0; row < likely_->rowCount(); ++row)
        likely_->item(row, 0)->setData(job_id_role, qs(jobs[static_cast<std::size_t>(row)].id));
    if (!jobs.empty()) likely_->selectRow(0);
    likely_part_->setVisible(!jobs.empty());
}

void CustomerLook::part_selected() {
    const QString id = selected_job(*jobs_);
    if (id.isEmpty()) return;
    const Result<bool> done = store::CustomerBook(store_).unlink(id.toStdString());
    if (!done) Q_EMIT problem(qs(text_of(done.problems())));
    Q_EMIT linked();
}

void CustomerLook::link_selected() {
    const QString id = selected_job(*likely_);
    if (id.isEmpty()) return;
    const Result<bool> done = store::CustomerBook(store_).link(id.toStdString(), customer_id_);
    if (!done) Q_EMIT problem(qs(text_of(done.problems())));
    Q_EMIT linked();
}

}  // namespace wg::ui
