#include "ui/customers/customer_of_job.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int least_width_px = 520;
constexpr int list_px = 180;

/// "a, b, c" of those that say something.
QString with_commas(std::initializer_list<std::string> texts) {
    QStringList kept;
    for (const std::string& one : texts) {
        if (!one.empty()) kept << qs(one);
    }
    return kept.join(QStringLiteral(", "));
}

}  // namespace

CustomerOfJobDialog::CustomerOfJobDialog(const Job& job, const std::vector<store::CustomerRow>& likely, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Customer of the job"));
    setMinimumWidth(least_width_px);
    auto* title = new QLabel(tr("Whose job is %1?").arg(qs(job.number.empty() ? job.title : job.number)), this);
    title->setProperty("role", QStringLiteral("title"));
    title->setTextFormat(Qt::PlainText);
    const Client& client = job.client;
    auto* words = new QLabel(
        tr("The job names %1 and is linked with no customer.")
                .arg(with_commas({client.name, client.street, client.postcode, client.town, client.phone})) +
            QLatin1Char(' ') +
            (likely.empty() ? tr("No customer has this name with the same postcode, telephone or e-mail.")
                            : tr("Customers of this name with the same postcode, telephone or e-mail stand first.")),
        this);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Customers the client may be"));
    list_->setFixedHeight(list_px);
    for (const store::CustomerRow& row : likely) {
        auto* item = new QListWidgetItem(with_commas({row.number, row.name, row.town, row.phone}), list_);
        item->setData(Qt::UserRole, qs(row.id));
    }
    auto* fresh = new QListWidgetItem(tr("A new customer, with what the job says of the client"), list_);
    fresh->setData(Qt::UserRole, QString());
    list_->setCurrentRow(0);
    link_ = new QPushButton(tr("Link and show"), this);
    link_->setProperty("role", QStringLiteral("primary"));
    link_->setDefault(true);
    auto* leave = new QPushButton(tr("Leave it as it is"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(leave);
    buttons->addWidget(link_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 24, 24, 16);
    column->setSpacing(12);
    column->addWidget(title);
    column->addWidget(words);
    column->addWidget(list_);
    column->addLayout(buttons);
    connect(link_, &QPushButton::clicked, this, &QDialog::accept);
    connect(list_, &QListWidget::itemActivated, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    list_->setFocus();
}

std::string CustomerOfJobDialog::chosen() const {
    const QListWidgetItem* item = list_->currentItem();
    return item == nullptr ? std::string() : item->data(Qt::UserRole).toString().toStdString();
}

Result<std::string> link_with_customer(store::Store& store, const Job& job, const std::string& customer_id,
                                       Instant now) {
    store::CustomerBook book(store);
    std::string id = customer_id;
    if (id.empty()) {
        const Result<customers::Customer> made = book.save(store::CustomerBook::of_client(job.client), now);
        if (!made) return made.problems();
        id = made.value().id;
    }
    const Result<bool> linked = book.link(job.id, id);
    if (!linked) return linked.problems();
    return id;
}

Result<std::string> customer_for(store::Store& store, const std::string& job_id, Instant now, QWidget* parent) {
    const store::CustomerBook book(store);
    const Result<std::string> linked = book.customer_of(job_id);
    if (!linked || !linked.value().empty()) return linked;
    const Result<Job> job = store.load(job_id);
    if (!job) return job.problems();
    if (job.value().client.name.empty())
        return Problem{"job " + job.value().number, "names no client", "Enter the client's name under Visit"};
    const auto likely = book.likely_of(job.value().client);
    if (!likely) return likely.problems();
    CustomerOfJobDialog dialog(job.value(), likely.value(), parent);
    if (dialog.exec() != QDialog::Accepted) return std::string();
    return link_with_customer(store, job.value(), dialog.chosen(), now);
}

QString words_of_customer_step(store::Store& store, const Job& job) {
    if (job.client.name.empty()) return {};
    const store::CustomerBook book(store);
    const Result<std::string> linked = book.customer_of(job.id);
    if (linked && !linked.value().empty()) {
        const Result<customers::Customer> customer = book.load(linked.value());
        if (customer) return CustomerOfJobDialog::tr("Customer %1").arg(qs(customer.value().number));
    }
    const auto likely = book.likely_of(job.client);
    return likely && !likely.value().empty()
               ? CustomerOfJobDialog::tr("May be customer %1").arg(qs(likely.value().front().number))
               : CustomerOfJobDialog::tr("Make a customer of this client");
}

}  // namespace wg::ui
