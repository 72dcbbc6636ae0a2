#pragma once
// A folder or a server, a clock and a way to open stores; every test fails when Qt warns.

#include <gtest/gtest.h>

#include <QByteArray>
#include <QString>
#include <QTemporaryDir>
#include <memory>
#include <ostream>
#include <set>
#include <string>

#include "core/job/codec.h"
#include "core/store/dialect.h"
#include "core/store/store.h"
#include "tests/core/job/sample_job.h"

namespace wg::store {

/// Names the kind in the tests' names.
inline void PrintTo(Dialect dialect, std::ostream* out) {
    *out << (dialect == Dialect::sqlite ? "file" : "server");
}

}  // namespace wg::store

namespace wg::store::test {

using wg::test::id;
using wg::test::sample_job;

inline Instant at(int minute) {
    return {instant_from_iso8601("2027-06-21T12:00:00Z").value().unix_s + 60 * minute};
}

class StoreTest : public ::testing::Test {
   protected:
    explicit StoreTest(Dialect dialect = Dialect::sqlite);
    void SetUp() override;
    void TearDown() override;

    /// A file in the test's folder, or the address of a database of that name on the server.
    [[nodiscard]] std::string path(const char* name = "jobs.db");
    /// In the folder, on either.
    [[nodiscard]] std::string file(const char* name) const;
    /// Opens a store, or fails the test and returns null.
    [[nodiscard]] std::unique_ptr<Store> open(const std::string& place, const std::string& by = {});
    [[nodiscard]] std::unique_ptr<Store> open() { return open(path()); }
    /// What opening says; empty when it succeeds.
    [[nodiscard]] static std::string refusal(const std::string& file);

    [[nodiscard]] static QByteArray bytes_of(const std::string& file);
    static void write(const std::string& file, const QByteArray& bytes);
    /// Runs SQL on a connection of its own; returns the error's text.
    static std::string sql(const std::string& file, const QString& statement);
    [[nodiscard]] QStringList files() const;

    /// The literal of bytes written as hexadecimal digits.
    [[nodiscard]] QString bytes_literal(const QString& hex) const;

    QTemporaryDir folder_;
    Dialect dialect_;

   private:
    [[nodiscard]] std::string on_server(const std::string& name);
    std::set<std::string> made_;  ///< databases on the server
    int in_memory_ = 0;
};

/// Runs on a file and on a server.
class EachStore : public StoreTest, public ::testing::WithParamInterface<Dialect> {
   protected:
    EachStore() : StoreTest(GetParam()) {}
};

/// Runs on a server alone.
class ServerStore : public StoreTest {
   protected:
    ServerStore() : StoreTest(Dialect::postgresql) {}
};

/// The sample job under other ids, number and title, so that a store can hold many.
[[nodiscard]] Job numbered_job(unsigned n);

}  // namespace wg::store::test
