// Everything against its hash, and what is kept beside the jobs against what it follows from.

#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/store/backup.h"
#include "core/store/check_records.h"
#include "core/store/equipment_book.h"
#include "core/store/order_book.h"
#include "core/store/price_book.h"
#include "core/store/purchase_book.h"
#include "core/store/quote_book.h"
#include "core/store/rule_book.h"
#include "core/store/sql_store.h"
#include "core/store/versions_kept.h"

namespace wg::store {
namespace {

struct Hashed {
    Result<std::vector<std::string>> (*damaged)(const Database&);
    const char* named;
    const char* lost;
};

constexpr const char* lost_its_hash = " no longer has its hash";
constexpr Hashed hashed[] = {
    {damaged_versions, "versions of job ", " no longer have their hash"},
    {damaged_papers, "paper of quote ", lost_its_hash},
    {damaged_price_lists, "", lost_its_hash},
    {damaged_equipment, "", lost_its_hash},
    {damaged_rule_sets, "", lost_its_hash},
    {damaged_order_papers, "paper of order ", lost_its_hash},
    {damaged_purchase_papers, "purchase list ", lost_its_hash},
    {damaged_supplier_papers, "purchase list ", " has a paper to a supplier that no longer has its hash"},
    {damaged_signatures, "signature under the acceptance of quote ", lost_its_hash}};

}  // namespace

Result<std::string> SqlStore::check() {
    Result<std::string> found = damage(*database_);
    if (!found) return found.problems();
    std::string out = found.value();
    const auto add = [&out](const std::string& line) { out += (out.empty() ? "" : "; ") + line; };
    const Result<QVariant> without = database_->value(
        "SELECT count(*) FROM job j LEFT JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
        "WHERE r.job_id IS NULL");
    if (!without) return without.problems();
    if (without.value().toLongLong() != 0) {
        add(std::to_string(without.value().toLongLong()) + " jobs lack their current content");
    }
    Result<QSqlQuery> contents =
        database_->query("SELECT job_id, revision, content, text_sha256 FROM job_revision", {}, Fetch::row_by_row);
    if (!contents) return contents.problems();
    while (contents.value().next()) {
        const QSqlQuery& row = contents.value();
        if (sha256_hex(row.value(2).toString().toStdString()) == row.value(3).toString().toStdString()) continue;
        add("revision " + std::to_string(row.value(1).toLongLong()) + " of job " +
            row.value(0).toString().toStdString() + " no longer has its hash");
    }
    const Result<std::vector<std::string>> years = damaged_weather_years();
    if (!years) return years.problems();
    for (const std::string& label : years.value())
        add("weather year '" + label + "' no longer has its hash");
    for (const Hashed& kind : hashed) {
        const Result<std::vector<std::string>> damaged = kind.damaged(*database_);
        if (!damaged) return damaged.problems();
        for (const std::string& name : damaged.value()) {
            add(kind.named);
            out.append(name).append(kind.lost);
        }
    }
    const Result<std::vector<std::string>> photographs = damaged_photographs();
    if (!photographs) return photographs.problems();
    for (const std::string& hash : photographs.value())
        add("photograph " + hash.substr(0, 12) + "... no longer has its hash");
    const Result<std::vector<std::string>> records = disagreeing_records(*database_);
    if (!records) return records.problems();
    for (const std::string& line : records.value())
        add(line);
    return out.empty() ? std::string("ok") : out;
}

}  // namespace wg::store
