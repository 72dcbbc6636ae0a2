// Papers of orders travel with the quotes they came from, are handed out to the client, and are never exchanged for
// others on the way.

#include <gtest/gtest.h>

#include <QDir>
#include <algorithm>

#include "core/quantity/sha256.h"
#include "core/store/personal.h"
#include "core/store/quote_book.h"
#include "core/store/travel.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace travel_orders_test {
namespace {

const std::string png = std::string("\x89PNG\r\n\x1A\n", 8) + "signature";

PrintNumbered printed(const std::string& words) {
    return [words](const std::string& number) -> Result<std::string> { return "%PDF-1.7 " + words + ' ' + number; };
}

exchange::Parcel parcel_of(Store& from, const std::string& job_id) {
    const auto parcel = Travel(from).parcel_of(job_id, "test", at(60));
    EXPECT_TRUE(parcel.ok()) << (parcel.ok() ? "" : text_of(parcel.problems()));
    EXPECT_TRUE(parcel.value().missing.empty());
    // Through the bytes of a file, as it really goes.
    const auto bytes = exchange::pack(parcel.value().parcel);
    EXPECT_TRUE(bytes.ok()) << (bytes.ok() ? "" : text_of(bytes.problems()));
    return exchange::unpack(bytes.value(), "sent.warmgable").value();
}

Taken take(Store& to, const exchange::Parcel& parcel) {
    const auto taken = Travel(to).take(parcel, at(61));
    EXPECT_TRUE(taken.ok()) << (taken.ok() ? "" : text_of(taken.problems()));
    return taken ? taken.value() : Taken{};
}

/// A job with an accepted quote and the paper of its order.
Job ordered_job(Store& store) {
    Job job = sample_job();
    job.photographs.clear();
    job.site.underlays.clear();
    job.record.clear();
    job = store.save(job, at(1)).value();
    QuoteBook book(store);
    EXPECT_TRUE(
        book.issue({id(0x901), job.id, 1, "Q-1", "2027-06-22T08:00:00Z", "{}", "", 100, "EUR"}, "%PDF-1.7 quote", at(2))
            .ok());
    QuoteAnswer yes;
    yes.id = id(0xA01);
    yes.quote_id = id(0x901);
    yes.on = "2027-06-25";
    yes.who = "M. Lindholm";
    EXPECT_TRUE(book.answer(yes, at(3), png).ok());
    EXPECT_TRUE(OrderBook(store).keep(NumberKind::order, id(0x901), printed("order"), at(4)).ok());
    EXPECT_TRUE(OrderBook(store).keep(NumberKind::change_order, id(0x901), printed("change"), at(5)).ok());
    return job;
}

TEST_P(EachStore, PapersOfOrdersTravelOnceAndAreTheSameEverywhere) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const auto van = Store::open(file("van.db"), at(0), "Van").value();
    const Job job = ordered_job(*office);
    EXPECT_EQ(take(*tablet, parcel_of(*office, job.id)).orders, 2);
    EXPECT_EQ(take(*tablet, parcel_of(*office, job.id)).orders, 0) << "twice is once";
    const auto kept = OrderBook(*office).papers_of(job.id).value();
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(OrderBook(*tablet).papers_of(job.id).value(), kept);
    for (const OrderPaper& one : kept)
        EXPECT_EQ(OrderBook(*tablet).paper(one.id).value(), OrderBook(*office).paper(one.id).value());

    // Tablet and office each make another one; whoever hears of what first, all come to the same.
    ASSERT_TRUE(NumberRanges(*tablet).set_suffix("T").ok());
    ASSERT_TRUE(OrderBook(*tablet).keep(NumberKind::change_order, id(0x901), printed("of the tablet"), at(7)).ok());
    ASSERT_TRUE(OrderBook(*office).keep(NumberKind::change_order, id(0x901), printed("of the office"), at(6)).ok());
    const auto from_tablet = parcel_of(*tablet, job.id), from_office = parcel_of(*office, job.id);
    take(*van, from_tablet);
    take(*van, from_office);
    take(*office, from_tablet);
    take(*tablet, from_office);
    const auto all = OrderBook(*office).papers_of(job.id).value();
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(OrderBook(*tablet).papers_of(job.id).value(), all);
    EXPECT_EQ(OrderBook(*van).papers_of(job.id).value(), all);
    for (Store* store : {office.get(), tablet.get(), van.get()})
        EXPECT_EQ(store->check().value(), "ok");
    EXPECT_EQ(NumberRanges(*van).next(NumberKind::order, 2027).value(), "O2027-0002") << "what came is passed over";
}

TEST_P(EachStore, APaperOfAnOrderThatIsAnotherOneIsRefusedAndANumberTwiceIsTold) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const Job job = ordered_job(*office);
    take(*tablet, parcel_of(*office, job.id));
    const exchange::Parcel good = parcel_of(*office, job.id);
    const auto refused = [&](const std::function<void(exchange::SentOrder&)>& alter) {
        exchange::Parcel parcel = good;
        parcel.job.notes += "!";
        parcel.versions_json.clear();
        alter(parcel.quotes.at(0).orders.at(0));
        const Job before = tablet->load(job.id).value();
        const auto taken = Travel(*tablet).take(parcel, at(62));
        EXPECT_EQ(tablet->load(job.id).value(), before) << "all or nothing";
        return taken ? std::string() : text_of(taken.problems());
    };
    const std::string other = "another content";
    EXPECT_NE(refused([](exchange::SentOrder& one) { one.paper += " and more"; }).find(other), std::string::npos);
    EXPECT_NE(refused([](exchange::SentOrder& one) { one.number = "O-9"; }).find(other), std::string::npos);
    EXPECT_NE(refused([](exchange::SentOrder& one) { one.kind = "change-order"; }).find(other), std::string::npos);
    EXPECT_NE(refused([](exchange::SentOrder& one) {
                  one.id = id(0xB01);
                  one.number = "O-7";
                  one.paper = "no paper";
              }).find("no PDF"),
              std::string::npos);

    exchange::Parcel twice = good;
    twice.quotes.at(0).orders.at(0).id = id(0xB02);
    const Taken taken = take(*tablet, twice);
    EXPECT_EQ(taken.orders, 0);
    ASSERT_EQ(taken.left_out.size(), 1U);
    EXPECT_NE(taken.left_out[0].find("O2027-0001"), std::string::npos);
    EXPECT_EQ(OrderBook(*tablet).papers_of(job.id).value().size(), 2U);
    EXPECT_EQ(tablet->check().value(), "ok");
}

TEST_P(EachStore, TheClientGetsTheirPapersAndSignatures) {
    const auto store = open();
    const Job job = ordered_job(*store);
    const auto handed = PersonalData(*store).export_to({job.id}, file("handed"));
    ASSERT_TRUE(handed.ok()) << text_of(handed.problems());
    EXPECT_EQ(handed.value().papers, 4);
    EXPECT_TRUE(handed.value().missing.empty());
    const QDir folder(QString::fromStdString(file("handed")) + "/papers");
    const QStringList names = folder.entryList(QDir::Files, QDir::Name);
    ASSERT_EQ(names.size(), 4) << names.join(' ').toStdString();
    EXPECT_TRUE(names[0].startsWith("C2027-0001-"));
    EXPECT_TRUE(names[1].startsWith("O2027-0001-"));
    EXPECT_TRUE(names[2].startsWith("Q-1-"));
    EXPECT_EQ(bytes_of(folder.filePath(names[1]).toStdString()), QByteArray("%PDF-1.7 order O2027-0001"));
    EXPECT_TRUE(names[3].endsWith(".png")) << names[3].toStdString();
    EXPECT_EQ(bytes_of(folder.filePath(names[3]).toStdString()).toStdString(), png);
}

}  // namespace
}  // namespace travel_orders_test
}  // namespace wg::store::test
