#include "core/store/connection.h"

#include <QDir>
#include <QStandardPaths>
#include <QUrl>
#include <QUrlQuery>

#include "core/quantity/utf8.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* scheme = "postgresql";
constexpr const char* address_form = "Write it as postgresql://user@host/database";

bool is_this_machine(const std::string& host) {
    return host == "localhost" || host == "::1" || host.rfind("127.", 0) == 0 || host.rfind('/', 0) == 0;
}

}  // namespace

std::string usual_backup_folder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath("backups").toStdString();
}

bool is_address(std::string_view place) {
    return place.substr(0, 13) == "postgresql://" || place.substr(0, 11) == "postgres://";
}

std::string Connection::name() const {
    return "database '" + for_message(database) + "' on " + for_message(host);
}

std::string Connection::address() const {
    QUrl url;
    url.setScheme(QString::fromLatin1(scheme));
    url.setUserName(to_qt(user), QUrl::DecodedMode);
    QUrlQuery query;
    const auto say = [&query](const char* key, const QString& value) {
        query.addQueryItem(QString::fromLatin1(key), QString::fromLatin1(QUrl::toPercentEncoding(value)));
    };
    if (host.rfind('/', 0) == 0) {
        say("host", to_qt(host));
        url.setHost(QString());
    } else {
        url.setHost(to_qt(host));
    }
    url.setPort(port);
    url.setPath('/' + to_qt(database), QUrl::DecodedMode);
    if (tls == Tls::disable) say("sslmode", "disable");
    if (!root_certificate.empty()) say("sslrootcert", to_qt(root_certificate));
    if (connect_timeout_s != Connection().connect_timeout_s) {
        say("connect_timeout", QString::number(connect_timeout_s));
    }
    url.setQuery(query);
    return url.toString(QUrl::FullyEncoded).toStdString();
}

Result<Connection> connection_from_address(const std::string& address) {
    const auto refuse = [](const std::string& what, const std::string& remedy) {
        return Problem{"server's address", what, remedy};  // the address itself may hold a password
    };
    const QUrl url(to_qt(address), QUrl::StrictMode);
    if (!is_address(address) || !url.isValid()) return refuse("cannot be read", address_form);
    if (!url.password().isEmpty()) {
        return refuse("holds a password, which others could read there",
                      "Leave it out and put it into ~/.pgpass or PGPASSWORD");
    }
    Connection out;
    out.host = url.host().toStdString();
    out.port = url.port(out.port);
    out.user = url.userName(QUrl::FullyDecoded).toStdString();
    out.database = url.path(QUrl::FullyDecoded).mid(1).toStdString();
    for (const auto& [key, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded)) {
        if (key == QLatin1String("host")) {
            out.host = value.toStdString();
        } else if (key == QLatin1String("sslmode")) {
            if (value != QLatin1String("disable") && value != QLatin1String("verify-full"))
                return refuse("sslmode is '" + for_message(value.toStdString()) + "'", "Take verify-full or disable");
            out.tls = value == QLatin1String("disable") ? Tls::disable : Tls::verify_full;
        } else if (key == QLatin1String("sslrootcert")) {
            out.root_certificate = value.toStdString();
        } else if (key == QLatin1String("connect_timeout")) {
            out.connect_timeout_s = value.toInt();
        } else {
            return refuse("has the unknown setting '" + for_message(key.toStdString()) + "'",
                          "Known are host, sslmode, sslrootcert and connect_timeout");
        }
    }
    if (std::vector<Problem> problems = problems_of(out); !problems.empty()) return problems;
    return out;
}

std::vector<Problem> problems_of(const Connection& connection) {
    std::vector<Problem> problems;
    const auto wrong = [&problems](const std::string& what, const std::string& remedy) {
        problems.push_back({"server's address", what, remedy});
    };
    if (connection.host.empty()) wrong("names no server", address_form);
    if (connection.database.empty()) wrong("names no database", address_form);
    if (connection.user.empty()) wrong("names no user", address_form);
    if (connection.port < 1 || connection.port > 65535) wrong("its port is no port", "Take 1 to 65535, usually 5432");
    if (connection.connect_timeout_s < 2 || connection.connect_timeout_s > 600)
        wrong("its connect_timeout is " + std::to_string(connection.connect_timeout_s) + " s", "Take 2 to 600 s");
    if (connection.tls == Tls::disable && !connection.host.empty() && !is_this_machine(connection.host)) {
        wrong("without TLS clients' names and addresses would travel in the open to " + for_message(connection.host),
              "Leave out sslmode=disable; it is for this machine alone");
    }
    // Qt parts the options of a connection at semicolons.
    for (const std::string* text :
         {&connection.host, &connection.database, &connection.user, &connection.root_certificate}) {
        if (text->find(';') != std::string::npos || text->find('\0') != std::string::npos || !is_utf8(*text))
            wrong("'" + for_message(*text) + "' holds a character that cannot stand there", "Choose another name");
    }
    return problems;
}

}  // namespace wg::store
