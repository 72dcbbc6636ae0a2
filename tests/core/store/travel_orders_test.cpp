// Papers of orders travel with the quotes they came from, are handed out to the client, and are never exchanged for
// others on the way.

#include <gtest/gtest.h>

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
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

TEST_P(EachStore, AConfirmationKeepsAndTakesAlongWhatItTakesThePlaceOf) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const Job job = ordered_job(*office);
    OrderBook book(*office);
    const auto before = book.papers_of(job.id).value();
    ASSERT_EQ(before.size(), 2U);
    EXPECT_EQ(standing(before), before);
    const std::vector<std::string> replaced{before[0].id, before[1].id};
    EXPECT_FALSE(book.keep(NumberKind::order, id(0x901), printed("none"), at(6), {id(0xFFF)}).ok())
        << "a paper that is not here";
    const auto anew = book.keep(NumberKind::order, id(0x901), printed("anew"), at(6), replaced);
    ASSERT_TRUE(anew.ok()) << text_of(anew.problems());
    EXPECT_EQ(anew.value().number, "O2027-0002") << "what was refused used up none";
    EXPECT_EQ(anew.value().takes_place_of, replaced);
    take(*tablet, parcel_of(*office, job.id));
    for (Store* store : {office.get(), tablet.get()}) {
        const auto kept = OrderBook(*store).papers_of(job.id).value();
        ASSERT_EQ(kept.size(), 3U);
        ASSERT_NE(replaced_by(kept, before[0].id), nullptr);
        EXPECT_EQ(replaced_by(kept, before[0].id)->id, anew.value().id);
        EXPECT_EQ(replaced_by(kept, anew.value().id), nullptr);
        ASSERT_EQ(standing(kept).size(), 1U);
        EXPECT_EQ(standing(kept)[0].id, anew.value().id);
        EXPECT_EQ(store->check().value(), "ok");
    }
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

TEST_P(EachStore, TheClientGetsWhatWasAnsweredToTheirQuotes) {
    const auto store = Store::open_place(path(), at(0), "Ada on desk-2").value();
    const Job job = ordered_job(*store);
    QuoteBook book(*store);
    ASSERT_TRUE(
        book.issue({id(0x902), job.id, 1, "Q-2", "2027-06-22T08:00:00Z", "{}", "", 100, "EUR"}, "%PDF-1.7 2", at(2))
            .ok());
    QuoteAnswer back;
    back.id = id(0xA02);
    back.quote_id = id(0x901);
    back.answer = Answer::withdrawn;
    back.on = "2027-06-28";
    back.who = "Ada";
    back.note = "\"Zu spät\", rang Herr Lindholm\nam Abend";
    ASSERT_TRUE(book.answer(back, at(6)).ok());
    ASSERT_TRUE(PersonalData(*store).export_to({job.id}, file("handed")).ok());
    const QDir folder(QString::fromStdString(file("handed")) + "/quotes");
    const std::string stem = "Q-1-" + id(0x901).substr(0, 8);
    EXPECT_TRUE(folder.exists(QString::fromStdString(stem + ".json")));
    // One was answered.
    ASSERT_EQ(folder.entryList({"*-answers.json"}, QDir::Files),
              QStringList(QString::fromStdString(stem) + "-answers.json"));
    const QByteArray text = bytes_of(folder.filePath(QString::fromStdString(stem) + "-answers.json").toStdString());
    const QJsonObject told = QJsonDocument::fromJson(text).object();
    EXPECT_EQ(told["quote"].toString(), "Q-1");
    const QJsonArray list = told["answers"].toArray();
    ASSERT_EQ(list.size(), 2) << text.toStdString();
    const auto said = [&list](int n, const char* key) { return list[n].toObject()[key].toString().toStdString(); };
    EXPECT_EQ(said(0, "answer"), "accepted");
    EXPECT_EQ(said(0, "on"), "2027-06-25");
    EXPECT_EQ(said(0, "who"), "M. Lindholm");
    EXPECT_EQ(said(0, "entered_at"), iso8601(at(3)));
    EXPECT_EQ(said(0, "entered_by"), "Ada on desk-2");
    EXPECT_EQ(said(1, "answer"), "withdrawn");
    EXPECT_EQ(said(1, "on"), back.on);
    EXPECT_EQ(said(1, "note"), back.note);
}

TEST_P(EachStore, PapersOfOneSecondComeInTheOrderTheyWereMade) {
    const auto store = open();
    const auto other = Store::open(file("other.db"), at(0), "Other").value();
    const Job job = ordered_job(*store);
    const auto numbers = [&job](Store& of) {
        std::string out;
        const auto papers = OrderBook(of).papers_of(job.id).value();
        for (const OrderPaper& one : papers)
            out.append(one.number).append(" ");
        return out;
    };
    take(*other, parcel_of(*store, job.id));
    // All of one second, put in backwards: neither place in the table, id nor the alphabet tells the order.
    const auto put = [](Store& to, unsigned n, NumberKind kind, const std::string& number) {
        bool taken = false;
        const std::string pdf = "%PDF-1.7 " + number;
        EXPECT_TRUE(OrderBook(to).put({id(n), kind, id(0x901), number, "", iso8601(at(9)), "Ada"}, pdf, taken).value());
    };
    const std::vector<std::pair<NumberKind, std::string>> made = {
        {NumberKind::order, "O2027-0009"},        {NumberKind::order, "O2027-B001"},
        {NumberKind::order, "O2027-a001"},        {NumberKind::order, "O2027-10000"},
        {NumberKind::change_order, "C2027-0007"}, {NumberKind::change_order, "C2027-10000"}};
    for (unsigned n = 0; n < made.size(); ++n) {
        put(*store, 0xB20 - n, made[made.size() - 1 - n].first, made[made.size() - 1 - n].second);
        put(*other, 0xB20 - (static_cast<unsigned>(made.size()) - 1 - n), made[n].first, made[n].second);
    }
    const std::string expected =
        "O2027-0001 C2027-0001 O2027-0009 O2027-B001 O2027-a001 O2027-10000 C2027-0007 C2027-10000 ";
    EXPECT_EQ(numbers(*store), expected);
    EXPECT_EQ(OrderBook(*other).papers_of(job.id).value(), OrderBook(*store).papers_of(job.id).value());
}

}  // namespace
}  // namespace travel_orders_test
}  // namespace wg::store::test
