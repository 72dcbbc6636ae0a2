#include "tests/core/store/store_fixture.h"

#include "core/store/connection.h"
#include "tests/core/store/server.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QStringList>

namespace wg::store::test {
namespace {

// Qt hands warnings to a plain function; this is where it leaves them.
QStringList& qt_warnings() {
    static QStringList list;
    return list;
}

void keep_warning(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type != QtDebugMsg && type != QtInfoMsg) qt_warnings() << text;
}

// QtSql finds its drivers through the application object.
class QtEnvironment : public ::testing::Environment {
   public:
    void SetUp() override {
        qInstallMessageHandler(keep_warning);
        static int argc = 1;
        static char name[] = "test_core_store";
        static char* argv[] = {name, nullptr};
        application_ = std::make_unique<QCoreApplication>(argc, argv);
    }
    void TearDown() override {
        Server::end_shared();
        application_.reset();
    }

   private:
    std::unique_ptr<QCoreApplication> application_;
};

const ::testing::Environment* const qt_environment = ::testing::AddGlobalTestEnvironment(new QtEnvironment);

}  // namespace

INSTANTIATE_TEST_SUITE_P(File, EachStore, ::testing::Values(Dialect::sqlite));
INSTANTIATE_TEST_SUITE_P(Server, EachStore, ::testing::Values(Dialect::postgresql));

StoreTest::StoreTest(Dialect dialect) : dialect_(dialect) {
    static_cast<void>(qt_environment);
    // What an older database on a server is written to before a step.
    qputenv("XDG_DATA_HOME", folder_.filePath("data").toLocal8Bit());
    qt_warnings().clear();
}

void StoreTest::SetUp() {
    if (dialect_ == Dialect::postgresql && Server::shared() == nullptr) GTEST_SKIP() << "there is no PostgreSQL here";
}

void StoreTest::TearDown() {
    EXPECT_TRUE(qt_warnings().isEmpty()) << qt_warnings().join('\n').toStdString();
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty()) << "a connection was left open";
    for (const std::string& name : made_)
        Server::shared()->empty_database(QString::fromStdString(name));
}

std::string StoreTest::file(const char* name) const {
    return folder_.filePath(name).toStdString();
}

std::string StoreTest::path(const char* name) {
    return dialect_ == Dialect::sqlite ? file(name) : on_server(name);
}

std::string StoreTest::on_server(const std::string& name) {
    const QString database = QString::fromStdString(name);
    if (made_.insert(name).second) Server::shared()->have_database(database);
    return Server::shared()->address(database);
}

std::unique_ptr<Store> StoreTest::open(const std::string& place, const std::string& by) {
    const bool memory = place == ":memory:" && dialect_ == Dialect::postgresql;
    const std::string where = memory ? on_server("memory" + std::to_string(++in_memory_)) : place;
    Result<std::unique_ptr<Store>> opened = Store::open_place(where, at(0), by);
    if (!opened) {
        ADD_FAILURE() << text_of(opened.problems());
        return nullptr;
    }
    return std::move(opened).value();
}

std::string StoreTest::refusal(const std::string& place) {
    const Result<std::unique_ptr<Store>> opened = Store::open_place(place, at(0));
    return opened.ok() ? "" : text_of(opened.problems());
}

QString StoreTest::bytes_literal(const QString& hex) const {
    return (dialect_ == Dialect::sqlite ? QStringLiteral("x'%1'") : QStringLiteral("'\\x%1'::bytea")).arg(hex);
}

QByteArray StoreTest::bytes_of(const std::string& file) {
    QFile in(QString::fromStdString(file));
    EXPECT_TRUE(in.open(QIODevice::ReadOnly)) << file;
    return in.readAll();
}

void StoreTest::write(const std::string& file, const QByteArray& bytes) {
    QFile out(QString::fromStdString(file));
    ASSERT_TRUE(out.open(QIODevice::WriteOnly | QIODevice::Truncate)) << file;
    ASSERT_EQ(out.write(bytes), bytes.size());
}

std::string StoreTest::sql(const std::string& file, const QString& statement) {
    std::string error;
    if (is_address(file)) {
        const QString name = QString::fromStdString(connection_from_address(file).value().database);
        return Server::shared()->sql(name, statement);
    }
    {
        QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", "test-sql");
        database.setDatabaseName(QString::fromStdString(file));
        if (!database.open()) error = database.lastError().text().toStdString();
        QSqlQuery query(database);
        if (!query.exec(statement)) error = query.lastError().databaseText().toStdString();
    }
    QSqlDatabase::removeDatabase("test-sql");
    return error;
}

QStringList StoreTest::files() const {
    return QDir(folder_.path()).entryList(QDir::Files, QDir::Name);
}

Job numbered_job(unsigned n) {
    Job job = sample_job();
    job.id = id(0x100000 + n);
    job.number = "2027-" + std::string(n < 1000 ? (n < 100 ? (n < 10 ? "000" : "00") : "0") : "") + std::to_string(n);
    job.title = "Job " + std::to_string(n);
    job.revision = 0;
    return job;
}

}  // namespace wg::store::test
