#pragma once
// A PostgreSQL server of the tests' own: from Debian's package, on loopback, in a temporary folder, never as root.

#include <QProcess>
#include <QString>
#include <QStringList>
#include <memory>
#include <set>
#include <string>

namespace wg::store::test {

class Server {
   public:
    /// The program's one server, started at the first call; null when there is none to be had, which is said once.
    [[nodiscard]] static Server* shared();
    /// Ends the shared one.
    static void end_shared();

    ~Server();
    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;

    /// False, and said, when it does not come up.
    bool start();
    /// kill -9 of the postmaster, as a machine that loses its power has it.
    void kill_hard();
    void stop();
    /// The postmaster answers nobody until it is woken.
    void fall_silent() const;
    void wake() const;

    /// postgresql://postgres@127.0.0.1:PORT/database?sslmode=disable
    [[nodiscard]] std::string address(const QString& database) const;
    [[nodiscard]] int port() const { return port_; }
    [[nodiscard]] QString folder() const { return folder_; }
    /// Runs SQL on a connection of its own; returns the error's text.
    std::string sql(const QString& database, const QString& statement) const;
    /// An empty database of that name. Kept for the next test that wants it: making one costs half a second.
    void have_database(const QString& database);
    void empty_database(const QString& database) const;
    [[nodiscard]] bool has_certificate() const { return has_certificate_; }  ///< for localhost: server.crt in folder()

   private:
    Server() = default;
    [[nodiscard]] bool prepare();
    void make_certificate();
    /// A line before the others of pg_hba.conf; the next start() counts.
    void allow_first(const QString& line) const;
    /// Writes the file as the server's own, readable by it alone.
    void write_own(const QString& name, const QByteArray& content) const;
    [[nodiscard]] bool ready() const;
    [[nodiscard]] std::unique_ptr<QProcess> as_owner(const QString& program, const QStringList& arguments) const;

    QString programs_;
    QString folder_;
    QStringList settings_;
    std::set<QString> databases_;
    int port_ = 0;
    bool has_certificate_ = false;
    unsigned owner_ = 0;
    unsigned group_ = 0;
    std::unique_ptr<QProcess> process_;
};

}  // namespace wg::store::test
