// The part of a connection that speaks to a PostgreSQL server.

#include <QElapsedTimer>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlField>
#include <QSqlQuery>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// An acknowledged save is on the server's disk whatever the server's own setting.
constexpr const char* session_settings =
    "SET lock_timeout = %1; SET synchronous_commit = on; SET bytea_output = hex; SET client_min_messages = warning; "
    "SET extra_float_digits = 1; SET DateStyle = ISO; SET work_mem = '16MB'";

QString quoted_option(const std::string& text) {
    return '\'' + to_qt(text).replace('\\', "\\\\").replace('\'', "\\'") + '\'';
}

// Somebody sits before the window: who was connected once is not kept waiting longer than this, the least that the
// driver knows.
constexpr int reconnect_timeout_s = 2;
constexpr qint64 long_wait_ms = 1000;

// keepalives: a network that went silent is noticed within some ten seconds.
QString options_of(const Connection& connection, int timeout_s) {
    QString options = QStringLiteral("connect_timeout=%1;application_name=warmgable;").arg(timeout_s) +
                      "keepalives_idle=5;keepalives_interval=2;keepalives_count=3;tcp_user_timeout=10000;";
    options += connection.tls == Tls::disable ? "sslmode=disable" : "sslmode=verify-full";
    if (!connection.root_certificate.empty()) options += ";sslrootcert=" + quoted_option(connection.root_certificate);
    return options;
}

// No SQLSTATE: the connection went while the statement ran. Class 57P: the server is going down, and said so.
bool lost(const QSqlError& error) {
    const QString state = error.nativeErrorCode();
    return state.isEmpty() || state.startsWith("08") || state.startsWith("57P");
}

}  // namespace

Result<std::unique_ptr<Database>> Database::connect(const Connection& connection) {
    if (std::vector<Problem> problems = problems_of(connection); !problems.empty()) return problems;
    if (!QSqlDatabase::isDriverAvailable("QPSQL"))
        return Problem{connection.name(), "Qt's PostgreSQL driver is not installed",
                       "Install the package libqt6sql6-psql"};
    std::unique_ptr<Database> opened(new Database(connection.address()));
    opened->connection_ = connection;
    QSqlDatabase& database = opened->database_;
    database = QSqlDatabase::addDatabase("QPSQL", opened->id_);
    database.setHostName(to_qt(connection.host));
    database.setPort(connection.port);
    database.setDatabaseName(to_qt(connection.database));
    database.setConnectOptions(options_of(connection, connection.connect_timeout_s));
    if (std::optional<Problem> failed = opened->log_in()) return *failed;
    database.setConnectOptions(options_of(connection, reconnect_timeout_s));
    const Result<QVariant> encoding = opened->value("SHOW server_encoding");
    if (!encoding) return encoding.problems();
    if (encoding.value().toString() == "UTF8") return opened;
    return Problem{connection.name(), "its encoding is " + encoding.value().toString().toStdString() + " and not UTF8",
                   "Make the database with the encoding UTF8"};
}

std::optional<Problem> Database::log_in() const {
    if (out_of_reach_ && !rest_.hasExpired()) return out_of_reach_;
    out_of_reach_.reset();
    QElapsedTimer clock;
    clock.start();
    const QString password = connection_->password ? to_qt(connection_->password(*connection_)) : QString();
    if (!database_.open(to_qt(connection_->user), password)) {
        Problem failed = problem(database_.lastError());
        if (clock.elapsed() > long_wait_ms) {
            out_of_reach_ = failed;
            rest_ = QDeadlineTimer(connection_->rest_ms);
        }
        return failed;
    }
    QSqlQuery query(database_);
    if (!query.exec(QString::fromLatin1(session_settings).arg(connection_->turn_timeout_ms)))
        return problem(query.lastError());
    return std::nullopt;
}

// Values go as literals that the driver quotes, in one message: a statement prepared on the server would take three,
// and could not be given back after an error in a transaction.
Result<QString> Database::filled(const QString& sql, const QVariantList& values) const {
    QString out;
    qsizetype next = 0;
    bool quoted = false;
    for (const QChar c : sql) {
        if (c == '\'') quoted = !quoted;
        if (c != '?' || quoted) {
            out += c;
            continue;
        }
        const QVariant& value = values.at(next++);
        if (value.isNull()) {
            out += "NULL";
        } else if (value.typeId() == QMetaType::Double) {
            // As text: a plain number would be a decimal one, and lose the sign of nought.
            out += '\'' + QString::number(value.toDouble(), 'g', QLocale::FloatingPointShortest) + "'::float8";
        } else if (value.typeId() == QMetaType::QByteArray) {
            // The shortest form that a statement can carry.
            const QByteArray coded = value.toByteArray().toBase64();
            out.reserve(out.size() + coded.size() + sql.size());
            out += QLatin1String("decode('");
            out += QLatin1String(coded);
            out += QLatin1String("', 'base64')");
        } else if (value.typeId() == QMetaType::QString && value.toString().contains(QChar(u'\0'))) {
            return Problem{name(),
                           "the text '" + for_message(value.toString().toStdString(), 40) +
                               "' holds the character 0, which the server does not take",
                           "Take the character out"};
        } else {
            QSqlField field(QString(), value.metaType());
            field.setValue(value);
            out += database_.driver()->formatValue(field);
        }
    }
    Q_ASSERT(next == values.size());
    return out;
}

Result<QSqlQuery> Database::query_server(const QString& sql, const QVariantList& values, Fetch fetch) const {
    const bool open = database_.isOpen();
    if (!open) {
        if (std::optional<Problem> failed = log_in()) return *failed;
    }
    const Result<QString> text = filled(sql, values);
    if (!text) return text.problems();
    {
        QSqlQuery query(database_);
        query.setForwardOnly(fetch == Fetch::row_by_row);
        if (query.exec(text.value())) return query;
        if (!open || in_transaction_ || !lost(query.lastError())) return problem(query.lastError());
    }
    // The server was started anew, or the network is back. Statements outside a transaction may run twice.
    database_.close();
    if (std::optional<Problem> failed = log_in()) return *failed;
    QSqlQuery query(database_);
    query.setForwardOnly(fetch == Fetch::row_by_row);
    if (!query.exec(text.value())) return problem(query.lastError());
    return query;
}

}  // namespace wg::store
