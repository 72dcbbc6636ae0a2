#include "tests/core/store/store_fixture.h"

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
    void TearDown() override { application_.reset(); }

   private:
    std::unique_ptr<QCoreApplication> application_;
};

const ::testing::Environment* const qt_environment = ::testing::AddGlobalTestEnvironment(new QtEnvironment);

}  // namespace

StoreTest::StoreTest() {
    static_cast<void>(qt_environment);
    qt_warnings().clear();
}

void StoreTest::TearDown() {
    EXPECT_TRUE(qt_warnings().isEmpty()) << qt_warnings().join('\n').toStdString();
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty()) << "a connection was left open";
}

std::string StoreTest::path(const char* name) const {
    return folder_.filePath(name).toStdString();
}

std::unique_ptr<Store> StoreTest::open(const std::string& file) {
    Result<std::unique_ptr<Store>> opened = Store::open(file, at(0));
    if (!opened) {
        ADD_FAILURE() << text_of(opened.problems());
        return nullptr;
    }
    return std::move(opened).value();
}

std::string StoreTest::refusal(const std::string& file) {
    const Result<std::unique_ptr<Store>> opened = Store::open(file, at(0));
    return opened.ok() ? "" : text_of(opened.problems());
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
