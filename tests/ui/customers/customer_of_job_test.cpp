// From a job to its customer: linked, likely, or made of the client.

#include <gtest/gtest.h>

#include <QListWidget>
#include <QPushButton>

#include "core/job/codec.h"
#include "core/store/customers.h"
#include "tests/ui/common/sample.h"
#include "ui/customers/customer_of_job.h"

namespace wg::ui {
namespace customer_of_job_test {

const Instant now{1'900'000'000};

Job job_of(store::Store& store, const std::string& client) {
    Job job = sample::job();
    job.client = {};
    job.client.name = client;
    job.client.street = "Invented Lane 3";
    job.client.postcode = "47100";
    job.client.town = "Springholm";
    job.client.phone = "0555 0101 22";
    job.revision = 0;
    const auto saved = store.save(job, now);
    EXPECT_TRUE(saved.ok()) << (saved ? std::string() : text_of(saved.problems()));
    return saved.value();
}

TEST(CustomerOfJob, ACustomerIsMadeOfTheClientAndLinked) {
    const auto store = store::Store::open(":memory:", now, "Ada").value();
    const Job job = job_of(*store, "Alder");
    EXPECT_EQ(words_of_customer_step(*store, job), QStringLiteral("Make a customer of this client"));
    CustomerOfJobDialog dialog(job, {});
    EXPECT_EQ(dialog.list()->count(), 1);
    EXPECT_EQ(dialog.chosen(), "");
    const auto made = link_with_customer(*store, job, dialog.chosen(), now);
    ASSERT_TRUE(made.ok()) << text_of(made.problems());
    const store::CustomerBook book(*store);
    EXPECT_EQ(book.customer_of(job.id).value(), made.value());
    const auto customer = book.load(made.value()).value();
    EXPECT_EQ(customer.name, "Alder");
    ASSERT_EQ(customer.addresses.size(), 1U);
    EXPECT_EQ(customer.addresses[0].town, "Springholm");
    EXPECT_EQ(customer.contacts.at(0).phone, "0555 0101 22");
    EXPECT_EQ(words_of_customer_step(*store, job), QStringLiteral("Customer C-0001"));
    EXPECT_EQ(customer_for(*store, job.id, now, nullptr).value(), made.value()) << "nothing is asked";
}

TEST(CustomerOfJob, LikelyOnesStandFirstAndTheChosenOneIsLinked) {
    const auto store = store::Store::open(":memory:", now, "Ada").value();
    const Job job = job_of(*store, "Alder");
    store::CustomerBook book(*store);
    auto known = store::CustomerBook::of_client(job.client);
    known.name = "ALDER";
    const auto kept = book.save(known, now).value();
    EXPECT_EQ(words_of_customer_step(*store, job), QStringLiteral("May be customer C-0001"));
    CustomerOfJobDialog dialog(job, book.likely_of(job.client).value());
    ASSERT_EQ(dialog.list()->count(), 2);
    EXPECT_EQ(dialog.list()->item(0)->text(), QStringLiteral("C-0001, ALDER, Springholm, 0555 0101 22"));
    EXPECT_EQ(dialog.chosen(), kept.id);
    ASSERT_TRUE(link_with_customer(*store, job, dialog.chosen(), now).ok());
    EXPECT_EQ(book.customer_of(job.id).value(), kept.id);
    EXPECT_EQ(book.count("").value(), 1) << "none was made";
    dialog.list()->setCurrentRow(1);
    EXPECT_EQ(dialog.chosen(), "") << "or a new one";
}

TEST(CustomerOfJob, AJobWithoutAClientSaysWhatIsMissing) {
    const auto store = store::Store::open(":memory:", now, "Ada").value();
    const Job job = job_of(*store, "");
    EXPECT_EQ(words_of_customer_step(*store, job), QString());
    const auto none = customer_for(*store, job.id, now, nullptr);
    ASSERT_FALSE(none.ok());
    EXPECT_NE(text_of(none.problems()).find("names no client"), std::string::npos);
    EXPECT_FALSE(customer_for(*store, "00000000-0000-4000-8000-0000000000ff", now, nullptr).ok());
}

}  // namespace customer_of_job_test
}  // namespace wg::ui
