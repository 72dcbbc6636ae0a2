// What was ordered and is to come, and what is promised to jobs.
#include "core/parts/stock_orders.h"

#include <gtest/gtest.h>

namespace wg::parts {
namespace stock_orders_test {
namespace {

OrderedLine line(std::int64_t ordered, std::int64_t received = 0, bool closed = false) {
    OrderedLine out;
    out.position = 1;
    out.item_id = "tube";
    out.unit = "m";
    out.thousandths = ordered;
    out.received = received;
    out.closed = closed;
    return out;
}

ListedLine listed(const char* number, const char* job, std::int64_t ordered, std::int64_t needed) {
    ListedLine out;
    out.purchase_number = number;
    out.job_id = job;
    out.job_number = std::string("2027-") + job;
    out.job_waits = true;
    out.newest = true;
    out.line = line(ordered);
    out.line.needed = needed;
    return out;
}

StockMove moved(const char* id, StockMoveKind kind, std::int64_t thousandths, const char* job = "") {
    StockMove out;
    out.id = id;
    out.item_id = "tube";
    out.unit = "m";
    out.kind = kind;
    out.thousandths = thousandths;
    out.job_id = job;
    return out;
}

TEST(StockOrders, a_line_is_open_partly_received_received_or_not_coming) {
    EXPECT_EQ(standing_of(line(15'000)), OrderStanding::open);
    EXPECT_EQ(standing_of(line(15'000, 5'000)), OrderStanding::partly);
    EXPECT_EQ(to_come(line(15'000, 5'000)), 10'000);
    EXPECT_EQ(standing_of(line(15'000, 15'000)), OrderStanding::received);
    EXPECT_EQ(standing_of(line(15'000, 16'000)), OrderStanding::received) << "more came";
    EXPECT_EQ(to_come(line(15'000, 16'000)), 0);
    EXPECT_EQ(standing_of(line(15'000, 0, true)), OrderStanding::not_coming);
    EXPECT_EQ(standing_of(line(15'000, 5'000, true)), OrderStanding::received);
    EXPECT_EQ(to_come(line(15'000, 5'000, true)), 0);
    EXPECT_EQ(standing_of(line(0)), OrderStanding::no_stock);
    OrderedLine other = line(1'000);
    other.service = true;
    EXPECT_EQ(standing_of(other), OrderStanding::no_stock);
    EXPECT_EQ(to_come(other), 0);
    other = line(1'000);
    other.unit = "h";
    EXPECT_FALSE(is_stocked(other)) << "work by the hour";
    other = line(1'000);
    other.item_id.clear();
    EXPECT_FALSE(is_stocked(other)) << "a line of the office's own";
}

TEST(StockOrders, a_supplier_is_done_when_no_line_is_to_come) {
    OrderedLine hire = line(1'000);
    hire.service = true;
    EXPECT_EQ(standing_of(std::vector<OrderedLine>{hire}), OrderStanding::no_stock);
    EXPECT_EQ(standing_of(std::vector<OrderedLine>{hire, line(5'000), line(2'000)}), OrderStanding::open);
    EXPECT_EQ(standing_of(std::vector<OrderedLine>{line(5'000), line(2'000, 2'000)}), OrderStanding::partly);
    EXPECT_EQ(standing_of(std::vector<OrderedLine>{line(5'000, 5'000), line(2'000, 0, true)}), OrderStanding::received);
    EXPECT_EQ(standing_of(std::vector<OrderedLine>{line(2'000, 0, true)}), OrderStanding::not_coming);
}

TEST(StockOrders, what_is_on_order_is_there_for_whom_it_was_ordered) {
    const std::vector<ListedLine> lists = {listed("P1", "A", 10'000, 9'000), listed("P2", "B", 5'000, 6'000)};
    const auto for_c = item_standings({}, lists, "C");
    ASSERT_EQ(for_c.size(), 1U);
    EXPECT_FALSE(for_c[0].in_stock.has_value());
    EXPECT_EQ(for_c[0].on_order, 15'000);
    EXPECT_EQ(for_c[0].reserved, 15'000);
    EXPECT_EQ(for_c[0].orders, (std::vector<Share>{{"P1", "2027-A", 10'000}, {"P2", "2027-B", 5'000}}));
    EXPECT_EQ(for_c[0].reservations, (std::vector<Share>{{"P1", "2027-A", 9'000}, {"P2", "2027-B", 6'000}}));
    EXPECT_EQ(item_standings({}, lists, "A")[0].reserved, 6'000) << "its own need is free for it";
}

TEST(StockOrders, a_job_has_reserved_what_it_needs_now_and_did_not_take) {
    std::vector<ListedLine> lists = {listed("P1", "A", 10'000, 9'000), listed("P2", "A", 0, 12'000)};
    lists[0].newest = false;
    std::vector<StockMove> book = {moved("1", StockMoveKind::received, 10'000)};
    EXPECT_EQ(item_standings(book, lists, "")[0].reserved, 12'000) << "by its newest list";
    book.push_back(moved("2", StockMoveKind::fitted, 7'000, "A"));
    ASSERT_EQ(item_standings(book, lists, "")[0].reserved, 5'000);
    EXPECT_EQ(item_standings(book, lists, "")[0].in_stock, 3'000);
    book.push_back(moved("3", StockMoveKind::returned, 1'000, "A"));
    EXPECT_EQ(item_standings(book, lists, "")[0].reserved, 6'000);
    book.push_back(moved("4", StockMoveKind::taken, 9'000, "A"));
    EXPECT_EQ(item_standings(book, lists, "")[0].reserved, 0) << "more than planned";
    lists[1].job_waits = false;
    EXPECT_EQ(item_standings({book[0]}, lists, "")[0].reserved, 0) << "fitted, or removed";
    lists[1].job_waits = true;
    lists[1].line.needed.reset();
    lists[1].line.thousandths = 4'000;
    EXPECT_EQ(item_standings({book[0]}, lists, "")[0].reserved, 4'000)
        << "an older program kept no need: what was ordered stands for it";
}

}  // namespace
}  // namespace stock_orders_test
}  // namespace wg::parts
