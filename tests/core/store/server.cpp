#include "tests/core/store/server.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <pwd.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <unistd.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QStorageInfo>
#include <QThread>
#include <cstdio>
#include <cstdlib>

namespace wg::store::test {
namespace {

std::unique_ptr<Server>& held() {
    static std::unique_ptr<Server> server;
    return server;
}

// Debian keeps the programs of each version in a folder of its own, off the PATH.
QString newest_programs() {
    const QDir versions("/usr/lib/postgresql");
    QString newest;
    int highest = 0;
    for (const QString& name : versions.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        const QString programs = versions.filePath(name + "/bin");
        if (name.toInt() > highest && QFile::exists(programs + "/postgres") && QFile::exists(programs + "/initdb")) {
            highest = name.toInt();
            newest = programs;
        }
    }
    return newest;
}

int free_port() {
    const int probe = socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    int port = 0;
    if (bind(probe, reinterpret_cast<sockaddr*>(&address), size) == 0 &&
        getsockname(probe, reinterpret_cast<sockaddr*>(&address), &size) == 0)
        port = ntohs(address.sin_port);
    close(probe);
    return port;
}

}  // namespace

Server* Server::shared() {
    static bool tried = false;
    if (tried) return held().get();
    tried = true;
    std::unique_ptr<Server> server(new Server());
    server->programs_ = newest_programs();
    if (!QSqlDatabase::isDriverAvailable("QPSQL")) {
        std::fprintf(stderr, "SKIPPED: tests on PostgreSQL: install the Debian package libqt6sql6-psql\n");
    } else if (server->programs_.isEmpty()) {
        std::fprintf(stderr, "SKIPPED: tests on PostgreSQL: install the Debian package postgresql\n");
    } else if (server->prepare() && server->start()) {
        held() = std::move(server);
    }
    return held().get();
}

void Server::end_shared() {
    held().reset();
}

Server::~Server() {
    stop();
    if (!folder_.isEmpty()) QDir(folder_).removeRecursively();
}

std::unique_ptr<QProcess> Server::as_owner(const QString& program, const QStringList& arguments) const {
    auto process = std::make_unique<QProcess>();
    process->setProgram(programs_ + '/' + program);
    process->setArguments(arguments);
    process->setWorkingDirectory(folder_);
    process->setProcessChannelMode(QProcess::MergedChannels);
    // The server refuses to run as root. It goes with the tests, however they end.
    process->setChildProcessModifier([owner = owner_, group = group_] {
        if (geteuid() == 0 && (setgid(group) != 0 || setuid(owner) != 0)) _exit(97);
        prctl(PR_SET_PDEATHSIG, SIGQUIT);
    });
    return process;
}

bool Server::prepare() {
    owner_ = geteuid();
    group_ = getegid();
    if (owner_ == 0) {
        const passwd* other = getpwnam("postgres");
        if (other == nullptr) {
            std::fprintf(stderr, "SKIPPED: tests on PostgreSQL: there is no user postgres to run it as\n");
            return false;
        }
        owner_ = other->pw_uid;
        group_ = other->pw_gid;
    }
    // In memory where there is room: thousands of small files are made and removed.
    const QStorageInfo memory("/dev/shm");
    const bool room = memory.isValid() && !memory.isReadOnly() && memory.bytesAvailable() > (qint64{1} << 29);
    QByteArray name = room ? "/dev/shm/wg-postgresql-XXXXXX" : "/tmp/wg-postgresql-XXXXXX";
    if (mkdtemp(name.data()) == nullptr || chown(name.constData(), owner_, group_) != 0) {
        std::fprintf(stderr, "FAILED: no folder for the tests' PostgreSQL\n");
        return false;
    }
    folder_ = QString::fromLocal8Bit(name);
    const auto making = as_owner("initdb", {"-D", folder_ + "/data", "-U", "postgres", "-A", "trust", "--no-sync",
                                            "--no-instructions", "-E", "UTF8", "--locale=C.UTF-8"});
    making->start();
    if (making->waitForFinished(60000) && making->exitCode() == 0) {
        make_certificate();
        // One user has to give a password.
        allow_first("host all reed 127.0.0.1/32 scram-sha-256");
        return true;
    }
    std::fprintf(stderr, "FAILED: initdb: %s\n", making->readAll().constData());
    return false;
}

// For localhost, by its own hand: its own root.
void Server::make_certificate() {
    QProcess making;
    making.setWorkingDirectory(folder_);
    making.start("openssl", {"req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes",
                             "-keyout", "made.key", "-out", "made.crt", "-days", "30", "-subj", "/CN=localhost",
                             "-addext", "subjectAltName=DNS:localhost"});
    has_certificate_ = making.waitForFinished(20000) && making.exitCode() == 0;
    if (!has_certificate_) {
        std::fprintf(stderr, "SKIPPED: TLS to PostgreSQL: install the Debian package openssl\n");
        return;
    }
    for (const char* kind : {"key", "crt"}) {
        QFile made(folder_ + "/made." + kind);
        if (made.open(QIODevice::ReadOnly)) write_own(QString("server.") + kind, made.readAll());
    }
    settings_ << "-c"
              << "ssl=on"
              << "-c"
              << "ssl_cert_file=" + folder_ + "/server.crt"
              << "-c"
              << "ssl_key_file=" + folder_ + "/server.key";
}

// fsync: the machine goes on when the server is killed, and so does what it handed to the system.
bool Server::start() {
    QElapsedTimer clock;
    clock.start();
    QByteArray said;
    while (clock.elapsed() < 60000) {
        if (port_ == 0) port_ = free_port();
        process_ = as_owner("postgres", QStringList{"-D", folder_ + "/data",
                                                    "-k", folder_,
                                                    "-p", QString::number(port_),
                                                    "-c", "listen_addresses=127.0.0.1",
                                                    "-c", "fsync=off",
                                                    "-c", "full_page_writes=off",
                                                    "-c", "autovacuum=off",
                                                    "-c", "log_min_error_statement=panic",
                                                    "-c", "jit=off",
                                                    "-c", "shared_buffers=32MB",
                                                    "-c", "max_connections=40"} +
                                            settings_);
        // Into a file: nobody would read a pipe while tests run, and a full one stops the server.
        process_->setStandardOutputFile(folder_ + "/log");
        process_->start();
        if (!process_->waitForStarted()) break;
        while (process_->state() == QProcess::Running && clock.elapsed() < 60000) {
            if (ready()) return true;
            process_->waitForFinished(20);
        }
        // What a killed one left in shared memory takes a moment to go.
        QFile log(folder_ + "/log");
        if (log.open(QIODevice::ReadOnly)) said = log.readAll();
        stop();
        QThread::msleep(50);
    }
    std::fprintf(stderr, "FAILED: PostgreSQL does not start: %s\n", said.constData());
    return false;
}

bool Server::ready() const {
    bool open = false;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase("QPSQL", "test-ready");
        database.setHostName("127.0.0.1");
        database.setPort(port_);
        database.setDatabaseName("postgres");
        database.setUserName("postgres");
        database.setConnectOptions("sslmode=disable;connect_timeout=5");
        open = database.open();
    }
    QSqlDatabase::removeDatabase("test-ready");
    return open;
}

void Server::kill_hard() {
    ::kill(static_cast<pid_t>(process_->processId()), SIGKILL);
    process_->waitForFinished(20000);
    process_.reset();
}

void Server::fall_silent() const {
    ::kill(static_cast<pid_t>(process_->processId()), SIGSTOP);
}

void Server::wake() const {
    ::kill(static_cast<pid_t>(process_->processId()), SIGCONT);
}

void Server::stop() {
    if (process_ == nullptr) return;
    if (process_->state() == QProcess::Running) {
        ::kill(static_cast<pid_t>(process_->processId()), SIGINT);
        if (!process_->waitForFinished(10000)) process_->kill();
        process_->waitForFinished(10000);
    }
    process_.reset();
}

std::string Server::address(const QString& database) const {
    return QStringLiteral("postgresql://postgres@127.0.0.1:%1/%2?sslmode=disable")
        .arg(port_)
        .arg(database)
        .toStdString();
}

std::string Server::sql(const QString& database_name, const QString& statement) const {
    std::string error;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase("QPSQL", "test-server-sql");
        database.setHostName("127.0.0.1");
        database.setPort(port_);
        database.setDatabaseName(database_name);
        database.setUserName("postgres");
        database.setConnectOptions("sslmode=disable");
        if (!database.open()) error = database.lastError().text().toStdString();
        QSqlQuery query(database);
        if (!query.exec(statement))
            error = query.lastError().databaseText().section('\n', 0, 0).remove("ERROR:").trimmed().toStdString();
    }
    QSqlDatabase::removeDatabase("test-server-sql");
    return error;
}

void Server::have_database(const QString& database) {
    if (!databases_.insert(database).second) return;
    const std::string error =
        sql("postgres", QStringLiteral("CREATE DATABASE \"%1\" TEMPLATE template0 ENCODING 'UTF8'").arg(database));
    if (!error.empty()) std::fprintf(stderr, "FAILED: %s\n", error.c_str());
}

void Server::empty_database(const QString& database) const {
    const std::string error = sql(database,
                                  "SET client_min_messages = warning; DROP SCHEMA public CASCADE; CREATE SCHEMA "
                                  "public; GRANT USAGE ON SCHEMA public TO PUBLIC");
    if (!error.empty()) std::fprintf(stderr, "FAILED: %s\n", error.c_str());
}

void Server::allow_first(const QString& line) const {
    QFile file(folder_ + "/data/pg_hba.conf");
    if (!file.open(QIODevice::ReadOnly)) return;
    const QByteArray rest = file.readAll();
    file.close();
    if (file.open(QIODevice::WriteOnly | QIODevice::Truncate)) file.write(line.toUtf8() + '\n' + rest);
}

void Server::write_own(const QString& name, const QByteArray& content) const {
    QFile file(folder_ + '/' + name);
    if (file.open(QIODevice::WriteOnly)) file.write(content);
    file.close();
    file.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    if (chown(file.fileName().toLocal8Bit().constData(), owner_, group_) != 0) std::perror("chown");
}

}  // namespace wg::store::test
