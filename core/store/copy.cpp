#include "core/store/copy.h"

#include <QCryptographicHash>
#include <algorithm>
#include <array>
#include <cstring>
#include <string_view>
#include <vector>

#include "core/quantity/utf8.h"
#include "core/store/search.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

enum class Kind : char { text = 't', whole = 'i', real = 'r', bytes = 'b' };

struct Table {
    const char* name;
    const char* columns;
    const char* kinds;  ///< one letter a column
    const char* order;
    bool of_machines = false;  ///< rows tell which machine made them: two stores never have the same
};

// A row stands after those that it names. Seats stay behind: the copy may be put back where older edits of theirs are
// already known elsewhere, and would give the numbers of those a second time.
constexpr std::array<Table, 35> tables = {{
    {"job",
     "id, save_seq, number, title, client, town, state, invented, revision, changed_at, content_sha256, base_sha256, "
     "base_revision, removed_at",
     "titttttiitttit", "id"},
    {"job_revision", "job_id, revision, changed_at, content, text_sha256, changed_by", "titttt", "job_id, revision"},
    {"job_state_day", "job_id, revision, from_state, to_state, at, by_whom", "titttt", "job_id, revision"},
    {"quote_issued", "id, job_id, job_revision, number, issued_at, plan_json, sha256, gross_minor, currency",
     "ttittttit", "id"},
    {"quote_heat", "quote_id, heat_kwh", "tr", "quote_id"},
    {"quote_paper", "quote_id, sha256, kept_at, content", "tttb", "quote_id"},
    {"quote_answer", "seq, id, quote_id, answer, on_day, who, note, entered_by, entered_at", "itttttttt", "seq"},
    {"answer_signature", "answer_id, sha256, content", "ttb", "answer_id"},
    {"order_paper", "seq, id, kind, quote_id, number, sha256, kept_at, kept_by, takes_place_of, content", "ittttttttb",
     "seq"},
    {"purchase_paper", "seq, id, job_id, number, sha256, kept_at, kept_by, content", "ittttttb", "seq"},
    {"purchase_line", "paper_id, position, supplier, item_id, text, unit, thousandths, needed, service", "tittttiii",
     "paper_id, position"},
    {"purchase_supplier_paper", "paper_id, supplier, sha256, content", "tttb", "paper_id, supplier"},
    {"purchase_close", "seq, paper_id, position, closed, entered_by, entered_at", "itiitt", "seq"},
    {"stock_move",
     "seq, id, item_id, unit, move, thousandths, job_id, purchase_id, purchase_line, note, entered_by, entered_at, "
     "corrects_id",
     "ittttittitttt", "seq"},
    {"entries_kept", "book, kept_by, entry, based_on, kept_at, content, text_sha256", "tttittt",
     "book, kept_by, entry"},
    {"number_range", "kind, pattern", "tt", "kind"},
    {"number_given", "kind, series, number, text, given_to, given_at", "ttittt", "kind, series, number"},
    {"weather_year",
     "id, sha256, label, source, format, invented, latitude_deg, longitude_deg, altitude_m, utc_offset_h, "
     "global_kwh_m2, air_mean_c, imported_at, content",
     "tttttirrrrrrtb", "id"},
    {"photograph", "sha256, added_at, content", "ttb", "sha256"},
    {"unsaved", "job_id, revision, kept_at, content, text_sha256", "tittt", "job_id"},
    {"service_due", "job_id, service_id, text, due_on, last_done_on", "ttttt", "job_id, service_id"},
    {"fitted_part", "job_id, seq, reading_id, part, item_id, serial, fitted_on, replaced_on", "titttttt",
     "job_id, seq"},
    {"refrigerant_entry",
     "seq, id, on_day, refrigerant, move, kg, bottle, note, entered_by, job_id, reading_id, corrects_id, entered_at",
     "ittttrttttttt", "seq"},
    {"erasure", "seq, job_id, number, erased_at, erased_by, reason, kept_until", "itttttt", "seq"},
    {"price_list", "list_id, version, withdrawn, came, note, saved_by, saved_at, sha256, content", "tiiittttt",
     "list_id, version"},
    {"rule_set", "rule_id, version, withdrawn, came, note, saved_by, saved_at, sha256, content", "tiiittttt",
     "rule_id, version"},
    {"customer", "id, number, name, tax_id, notes, former_numbers, revision, changed_at, changed_by, name_key, words",
     "ttttttitttt", "id"},
    {"customer_address", "customer_id, seq, use, street, postcode, town", "titttt", "customer_id, seq"},
    {"customer_contact", "customer_id, seq, name, role, phone, email", "titttt", "customer_id, seq"},
    {"customer_job", "job_id, customer_id", "tt", "job_id"},
    {"customer_erasure", "seq, number, erased_at, erased_by, reason", "itttt", "seq"},
    {"setting", "key, value", "tt", "key"},
    {"equipment_version", "item_id, version, kind, content, sha256, withdrawn, came, saved_at, saved_by", "titttiitt",
     "item_id, version"},
    {"equipment_approval", "seq, item_id, version, approved_by, entered_by, approved_at", "itittt", "seq"},
    {"job_versions", "job_id, revision, content_sha256, content", "titb", "job_id", true},
}};

constexpr bool every_column_has_its_kind() {
    for (const Table& table : tables) {
        const std::string_view columns(table.columns);
        const auto commas = std::count(columns.begin(), columns.end(), ',');
        if (std::string_view(table.kinds).size() != static_cast<std::size_t>(commas) + 1) return false;
    }
    return true;
}
static_assert(every_column_has_its_kind());

// A table as one version of the store has it.
struct Shape {
    QString name;
    QString columns;
    std::string kinds;
    QString order;
};

Shape shape_of(const Table& table) {
    return {QString::fromLatin1(table.name), QString::fromLatin1(table.columns), table.kinds,
            QString::fromLatin1(table.order)};
}

// Nothing: that version has no such table.
Result<std::optional<Shape>> shape_in_file(const Database& file, const Table& table) {
    Result<QSqlQuery> found = file.query(QStringLiteral("PRAGMA table_info(%1)").arg(QLatin1String(table.name)));
    if (!found) return found.problems();
    QStringList there;
    while (found.value().next())
        there << found.value().value(1).toString();
    if (there.isEmpty()) return std::optional<Shape>();
    Shape out{QString::fromLatin1(table.name), {}, {}, QString::fromLatin1(table.order)};
    const QStringList all = QString::fromLatin1(table.columns).split(QStringLiteral(", "));
    QStringList kept;
    for (qsizetype i = 0; i < all.size(); ++i) {
        if (!there.contains(all[i])) continue;
        kept << all[i];
        out.kinds += table.kinds[i];
    }
    out.columns = kept.join(QStringLiteral(", "));
    return std::optional<Shape>(out);
}

QString rows_of(const Shape& table) {
    return QStringLiteral("SELECT %1 FROM %2 ORDER BY %3").arg(table.columns, table.name, table.order);
}

// A column's value as its kind has it, whatever the driver made of it. Empty is not the same as none.
QVariant value_of(const QSqlQuery& row, int column, Kind kind) {
    if (row.isNull(column)) return {};
    const QVariant value = row.value(column);
    switch (kind) {
        case Kind::whole: return QVariant::fromValue(value.toLongLong());
        case Kind::real: return value.toDouble();
        case Kind::bytes: return value.toByteArray().isNull() ? QByteArray("") : value.toByteArray();
        case Kind::text: break;
    }
    return value.toString().isNull() ? QString("") : value.toString();
}

QByteArray bytes_for_digest(const QVariant& value, Kind kind) {
    if (!value.isValid()) return {};
    if (kind == Kind::text) return value.toString().toUtf8();
    if (kind == Kind::bytes) return value.toByteArray();
    QByteArray out(8, '\0');
    const double real = value.toDouble();
    const qlonglong whole = value.toLongLong();
    if (kind == Kind::real)
        std::memcpy(out.data(), &real, sizeof real);
    else
        std::memcpy(out.data(), &whole, sizeof whole);
    return out;
}

Result<QByteArray> digest_of(const Database& database, const Shape& table) {
    Result<QSqlQuery> found = database.query(rows_of(table), {}, Fetch::row_by_row);
    if (!found) return found.problems();
    QCryptographicHash hash(QCryptographicHash::Sha256);
    const auto columns = static_cast<int>(table.kinds.size());
    while (found.value().next()) {
        for (int i = 0; i < columns; ++i) {
            const auto kind = static_cast<Kind>(table.kinds[static_cast<std::size_t>(i)]);
            const QVariant value = value_of(found.value(), i, kind);
            const QByteArray bytes = bytes_for_digest(value, kind);
            hash.addData(QByteArray::number(value.isValid() ? bytes.size() : -1) + static_cast<char>(kind));
            hash.addData(bytes);
        }
    }
    return hash.result();
}

std::optional<Problem> refuse_if_used(const Database& to) {
    for (const Table& table : tables) {
        const Result<QVariant> one = to.value(QStringLiteral("SELECT 1 FROM %1 LIMIT 1").arg(table.name));
        if (!one) return one.problems().front();
        if (one.value().isValid())
            return Problem{to.name(), "is not empty", "Copy into a new file or an empty database"};
    }
    return std::nullopt;
}

std::optional<Problem> copy_rows(const Database& from, const Database& to, const Shape& table) {
    Result<QSqlQuery> found = from.query(rows_of(table), {}, Fetch::row_by_row);
    if (!found) return found.problems().front();
    const auto columns = static_cast<int>(table.kinds.size());
    QString places("?");
    for (int i = 1; i < columns; ++i)
        places += ", ?";
    const QString insert = QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)").arg(table.name, table.columns, places);
    while (found.value().next()) {
        QVariantList values;
        for (int i = 0; i < columns; ++i)
            values << value_of(found.value(), i, static_cast<Kind>(table.kinds[static_cast<std::size_t>(i)]));
        if (std::optional<Problem> problem = to.run(insert, values)) return problem;
    }
    return std::nullopt;
}

std::optional<Problem> compare(const Database& from, const Database& to, const Shape& table) {
    const Result<QByteArray> there = digest_of(from, table);
    if (!there) return there.problems().front();
    const Result<QByteArray> here = digest_of(to, table);
    if (!here) return here.problems().front();
    if (there.value() == here.value()) return std::nullopt;
    return Problem{to.name(), "the copy of " + table.name.toStdString() + " is not the same",
                   "Check both stores, then try again"};
}

}  // namespace

std::optional<Problem> copy_everything(const Database& from, const Database& to) {
    Transaction reading(from);
    if (auto problem = reading.begin_reading()) return problem;
    Transaction writing(to);
    if (auto problem = writing.begin()) return problem;
    if (auto problem = refuse_if_used(to)) return problem;
    for (const Table& table : tables) {
        if (auto problem = copy_rows(from, to, shape_of(table))) return problem;
    }
    // One that was emptied for this copy.
    if (auto problem = to.run("DELETE FROM seat")) return problem;
    if (auto problem = index_all_jobs(to)) return problem;
    for (const Table& table : tables) {
        if (auto problem = compare(from, to, shape_of(table))) return problem;
    }
    return writing.commit();
}

std::optional<Problem> copy_of_older(const Database& from, const Database& to) {
    Transaction writing(to);
    if (auto problem = writing.begin()) return problem;
    std::vector<Shape> shapes;
    for (const Table& table : tables) {
        const Result<std::optional<Shape>> shape = shape_in_file(to, table);
        if (!shape) return shape.problems().front();
        if (shape.value()) shapes.push_back(*shape.value());
    }
    // Single statements take no turn (edits kept between saves, settings): they wait until the steps are taken.
    QString names;
    for (const Shape& shape : shapes)
        names += (names.isEmpty() ? "" : ", ") + shape.name;
    if (!names.isEmpty()) {
        if (auto problem = from.run("LOCK TABLE " + names + " IN SHARE MODE")) return problem;
    }
    for (const Shape& shape : shapes) {
        if (auto problem = copy_rows(from, to, shape)) return problem;
    }
    // The search as it has been since it holds quotes; before, the step that made it so fills it.
    const Result<QVariant> search = to.value("SELECT 1 FROM pragma_table_info('job_search') WHERE name = 'quotes'");
    if (!search) return search.problems().front();
    if (search.value().isValid()) {
        if (auto problem = index_all_jobs(to)) return problem;
    }
    for (const Shape& shape : shapes) {
        if (auto problem = compare(from, to, shape)) return problem;
    }
    return writing.commit();
}

Result<std::string> digest_of_everything(const Database& database) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const Table& table : tables) {
        if (table.of_machines) continue;
        const Result<QByteArray> one = digest_of(database, shape_of(table));
        if (!one) return one.problems();
        hash.addData(one.value());
    }
    return hash.result().toHex().toStdString();
}

}  // namespace wg::store
