#pragma once
// A folder, a clock and a way to open stores; every test fails when Qt warns.

#include <gtest/gtest.h>

#include <QByteArray>
#include <QString>
#include <QTemporaryDir>
#include <memory>
#include <string>

#include "core/job/codec.h"
#include "core/store/store.h"
#include "tests/core/job/sample_job.h"

namespace wg::store::test {

using wg::test::id;
using wg::test::sample_job;

inline Instant at(int minute) {
    return {instant_from_iso8601("2027-06-21T12:00:00Z").value().unix_s + 60 * minute};
}

class StoreTest : public ::testing::Test {
   protected:
    StoreTest();
    void TearDown() override;

    [[nodiscard]] std::string path(const char* name = "jobs.db") const;
    /// Opens a store, or fails the test and returns null.
    [[nodiscard]] std::unique_ptr<Store> open(const std::string& file);
    [[nodiscard]] std::unique_ptr<Store> open() { return open(path()); }
    /// What opening says; empty when it succeeds.
    [[nodiscard]] static std::string refusal(const std::string& file);

    [[nodiscard]] static QByteArray bytes_of(const std::string& file);
    static void write(const std::string& file, const QByteArray& bytes);
    /// Runs SQL on a connection of its own; returns the error's text.
    static std::string sql(const std::string& file, const QString& statement);
    [[nodiscard]] QStringList files() const;

    QTemporaryDir folder_;
};

/// The sample job under other ids, number and title, so that a store can hold many.
[[nodiscard]] Job numbered_job(unsigned n);

}  // namespace wg::store::test
