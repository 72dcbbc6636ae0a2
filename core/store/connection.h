#pragma once
// How the firm's PostgreSQL server is reached. Holds no password: see docs/store.md.

#include <functional>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg::store {

enum class Tls {
    verify_full,  ///< the server proves by its certificate that it is the one of that name
    disable,      ///< only to the machine itself
};

struct Connection {
    std::string host;  ///< name or address, or the folder of a local socket
    int port = 5432;
    std::string database;
    std::string user;
    Tls tls = Tls::verify_full;
    std::string root_certificate;  ///< file; empty: ~/.postgresql/root.crt
    int connect_timeout_s = 8;
    int turn_timeout_ms = 5000;  ///< how long a save waits for those of other seats; as with a file
    /// A server that lets one wait in vain is left alone for so long; statements fail at once meanwhile.
    int rest_ms = 20000;
    /// Where an older database is written to as a file before it is brought up to date; empty: the program's own folder
    /// for data on this machine (`usual_backup_folder`).
    std::string backup_folder{};
    /// Asked at each connecting, in the thread that connects. None, or an empty answer: PGPASSWORD, then the file that
    /// PGPASSFILE names, then ~/.pgpass.
    std::function<std::string(const Connection&)> password;

    /// postgresql://user@host:port/database?sslmode=disable&sslrootcert=FILE&connect_timeout=S; without the password.
    [[nodiscard]] std::string address() const;
    /// For messages: database 'firm' on host.
    [[nodiscard]] std::string name() const;
};

[[nodiscard]] std::string usual_backup_folder();

/// Whether a place of a store is a server's address and no file.
[[nodiscard]] bool is_address(std::string_view place);
/// Refused: what is no such address, one with a password in it, unknown settings.
[[nodiscard]] Result<Connection> connection_from_address(const std::string& address);
/// What cannot be connected with as it stands: names missing, no TLS to another machine.
[[nodiscard]] std::vector<Problem> problems_of(const Connection& connection);

}  // namespace wg::store
