#include "core/store/job_list.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QVariant>
#include <algorithm>

#include "core/job/words.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/job_steps.h"
#include "core/store/search.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* views_key = "desk.views";
constexpr std::size_t most_views = 50;
constexpr int most_days = 36500;

struct OrderWord {
    JobOrder order;
    const char* word;    ///< in kept views
    const char* column;  ///< of the table
    const char* index;   ///< that holds this order and all that the list is narrowed by
};

constexpr OrderWord order_words[] = {{JobOrder::newest, "newest", "j.save_seq", "job_newest"},
                                     {JobOrder::number, "number", "j.number", "job_by_number"},
                                     {JobOrder::client, "client", "j.client", "job_by_client"},
                                     {JobOrder::title, "title", "j.title", "job_by_title"},
                                     {JobOrder::town, "town", "j.town", "job_by_town"},
                                     {JobOrder::state, "state", "j.state", "job_by_state"}};

// A word that so many jobs have is looked for among the jobs in their order; to sort what it finds takes longer.
constexpr int very_many = 2000;
// To probe the search for each job along the order is quick where so many match that a page is soon full; otherwise all
// that is found is looked up at once, and for a page deep in the list, too.
constexpr int dense = 20'000;
constexpr int deep = 1000;

const OrderWord& word_of(JobOrder order) {
    for (const OrderWord& one : order_words) {
        if (one.order == order) return one;
    }
    return order_words[0];
}

struct Where {
    QString sql;  ///< FROM and WHERE
    QVariantList values;
    bool by_words = false;  ///< the search leads, the jobs follow
};

// The index that gives the order, so that rows are read until the page is full.
const char* index_of(const JobFilter& filter) {
    const bool one_state = filter.order == JobOrder::newest && filter.states.size() == 1;
    return word_of(one_state ? JobOrder::state : filter.order).index;
}

/// What is asked of the rows: to be counted, or a page of them in order.
struct Asked {
    bool in_order = false;
    int offset = 0;
};

// Where the rows come from, without what narrows them.
Result<Where> source_of(const Database& database, const JobFilter& filter, Asked asked) {
    const Result<QString> match = match_of(filter.words, database.dialect());
    if (!match) return match.problems();
    const auto along = [&filter](const char* words) {
        return QString::fromLatin1(words).replace("%1", QLatin1String(index_of(filter)));
    };
    const QString hint = asked.in_order ? along(database.words().in_order_of) : QString();
    if (match.value().isEmpty()) return Where{"FROM job j " + hint + " WHERE j.removed_at IS NULL", {}, false};
    if (asked.in_order && filter.order != JobOrder::newest) {
        const bool two_ways = *database.words().search_all != '\0';
        const Result<QVariant> many = database.value(
            QStringLiteral("SELECT count(*) FROM (SELECT 1 %1 LIMIT %2) AS matching")
                .arg(QLatin1String(database.words().search_alone), QString::number(two_ways ? dense : very_many)),
            {match.value()});
        if (!many) return many.problems();
        const int found = many.value().toInt();
        if (two_ways && found >= very_many && (found < dense || asked.offset >= deep))
            return Where{along(database.words().search_all), {match.value()}, false};
        if (found >= very_many) return Where{along(database.words().search_walk), {match.value()}, false};
    }
    return Where{QString::fromLatin1(database.words().search_join), {match.value()}, true};
}

// With the item's id as its value.
Result<QString> condition_of_item(const Database& database, const std::string& item_id, bool in_order) {
    if (!in_order)
        return QStringLiteral(
            " AND j.id IN (SELECT f.job_id FROM fitted_part f WHERE f.item_id = ? AND f.replaced_on = '')");
    const Result<QVariant> many = database.value(
        QStringLiteral("SELECT count(*) FROM (SELECT 1 FROM fitted_part WHERE item_id = ? LIMIT %1) AS parts")
            .arg(very_many),
        {to_qt(item_id)});
    if (!many) return many.problems();
    if (many.value().toInt() == very_many)
        return QStringLiteral(
            " AND EXISTS (SELECT 1 FROM fitted_part f WHERE f.item_id = ? AND f.job_id = j.id AND f.replaced_on = '')");
    // By what the order's index holds, so that it is walked without the jobs' rows.
    return QStringLiteral(
        " AND +j.save_seq IN (SELECT w.save_seq FROM fitted_part f JOIN job w ON w.id = f.job_id WHERE f.item_id = ? "
        "AND f.replaced_on = '')");
}

Result<Where> where_of(const Database& database, const JobFilter& filter, Asked asked) {
    Result<Where> source = source_of(database, filter, asked);
    if (!source) return source;
    Where& out = source.value();
    if (!filter.states.empty()) {
        QStringList places;
        for (const JobState state : filter.states) {
            places << QStringLiteral("?");
            out.values << QString(key_of(state));
        }
        out.sql += QStringLiteral(" AND j.state IN (%1)").arg(places.join(QStringLiteral(", ")));
    }
    if (filter.without_invented) out.sql += QStringLiteral(" AND j.invented = 0");
    for (const std::string* day : {&filter.due_until, &filter.changed_until}) {
        if (!day->empty() && !date_from_iso8601(*day))
            return Problem{"list", "'" + for_message(*day) + "' is no day", "Write it as 2027-06-21"};
    }
    if (!filter.due_until.empty()) {
        out.sql += QStringLiteral(" AND j.state <> 'closed' AND j.service_due_on <= ?");
        out.values << to_qt(filter.due_until);
    }
    if (!filter.changed_until.empty()) {
        // Of the whole day.
        out.sql += QStringLiteral(" AND j.changed_at <= ?");
        out.values << to_qt(filter.changed_until + "T23:59:59Z");
    }
    if (!filter.steps.empty()) {
        if (!date_from_iso8601(filter.today))
            return Problem{"list", "'" + for_message(filter.today) + "' is no day", "Write it as 2027-06-21"};
        out.sql += QStringLiteral(" AND ") + condition_of_steps(filter.steps, filter.today, out.values);
    }
    if (!filter.item_id.empty()) {
        const Result<QString> fitted = condition_of_item(database, filter.item_id, asked.in_order);
        if (!fitted) return fitted.problems();
        out.sql += fitted.value();
        out.values << to_qt(filter.item_id);
    }
    return source;
}

constexpr std::pair<NextStep, const char*> step_words[] = {{NextStep::survey, "survey"},
                                                           {NextStep::plan, "plan"},
                                                           {NextStep::send_quote, "send_quote"},
                                                           {NextStep::await_answer, "await_answer"},
                                                           {NextStep::after_refusal, "after_refusal"},
                                                           {NextStep::fit, "fit"},
                                                           {NextStep::hand_over, "hand_over"},
                                                           {NextStep::service, "service"},
                                                           {NextStep::nothing, "nothing"}};

const char* word_of_step(NextStep step) {
    for (const auto& [value, word] : step_words) {
        if (value == step) return word;
    }
    return "";
}

QString order_of(const Database& database, const JobFilter& filter, bool by_words) {
    const OrderWord& by = word_of(filter.order);
    const QString column =
        QString::fromLatin1(by_words && filter.order == JobOrder::newest ? database.words().search_newest : by.column);
    if (filter.order == JobOrder::newest)
        return QStringLiteral(" ORDER BY %1 %2")
            .arg(column, filter.backwards ? QStringLiteral("ASC") : QStringLiteral("DESC"));
    const QString sorted =
        filter.order == JobOrder::state ? column : QString::fromLatin1(database.words().folded).arg(column);
    const QString way = filter.backwards ? QStringLiteral("DESC") : QStringLiteral("ASC");
    // The same way for both, so that an index serves.
    return QStringLiteral(" ORDER BY %1 %2, j.save_seq %2").arg(sorted, way);
}

QJsonObject to_json(const JobView& view) {
    QJsonArray states;
    for (const JobState state : view.states)
        states.append(QString(key_of(state)));
    QJsonArray steps;
    for (const NextStep step : view.steps)
        steps.append(QString::fromLatin1(word_of_step(step)));
    return {{"name", to_qt(view.name)},
            {"states", states},
            {"without_invented", view.without_invented},
            {"due_within_days", view.due_within_days},
            {"quiet_for_days", view.quiet_for_days},
            {"steps", steps},
            {"item", to_qt(view.item_id)},
            {"order", QString::fromLatin1(word_of(view.order).word)},
            {"backwards", view.backwards}};
}

std::optional<JobView> from_json(const QJsonObject& object) {
    JobView view;
    view.name = object["name"].toString().toStdString();
    if (view.name.empty()) return std::nullopt;
    for (const auto& one : object["states"].toArray()) {
        const auto state = from_key<JobState>(one.toString().toStdString());
        if (!state) return std::nullopt;
        view.states.push_back(*state);
    }
    view.without_invented = object["without_invented"].toBool();
    view.due_within_days = std::clamp(object["due_within_days"].toInt(-1), -1, most_days);
    view.quiet_for_days = std::clamp(object["quiet_for_days"].toInt(-1), -1, most_days);
    for (const auto& one : object["steps"].toArray()) {
        const auto* step = std::find_if(std::begin(step_words), std::end(step_words), [&one](const auto& pair) {
            return one.toString() == QString::fromLatin1(pair.second);
        });
        if (step == std::end(step_words)) return std::nullopt;
        view.steps.push_back(step->first);
    }
    view.item_id = object["item"].toString().toStdString();
    const QString order = object["order"].toString();
    const auto* found = std::find_if(std::begin(order_words), std::end(order_words),
                                     [&order](const OrderWord& one) { return order == QString::fromLatin1(one.word); });
    if (found == std::end(order_words)) return std::nullopt;
    view.order = found->order;
    view.backwards = object["backwards"].toBool();
    return view;
}

}  // namespace

JobFilter filter_of(const JobView& view, const std::string& words, CivilDate today) {
    JobFilter filter;
    filter.words = words;
    filter.states = view.states;
    filter.without_invented = view.without_invented;
    const std::int64_t day = days_from_civil(today);
    if (view.due_within_days >= 0) filter.due_until = iso8601(civil_from_days(day + view.due_within_days));
    if (view.quiet_for_days >= 0) filter.changed_until = iso8601(civil_from_days(day - view.quiet_for_days));
    filter.steps = view.steps;
    filter.today = iso8601(today);
    filter.item_id = view.item_id;
    filter.order = view.order;
    filter.backwards = view.backwards;
    return filter;
}

Result<std::vector<JobRow>> JobList::page(const JobFilter& filter, int limit, int offset) const {
    if (limit < 0 || offset < 0) return Problem{"list", "limit and offset must not be negative", "Start from 0"};
    Result<Where> where = where_of(database_, filter, {true, offset});
    if (!where) return where.problems();
    where.value().values << limit << offset;
    const QString order = order_of(database_, filter, where.value().by_words);
    Result<QSqlQuery> found = database_.query(
        QString::fromLatin1(list_columns) + QString::fromLatin1(database_.words().page).arg(where.value().sql, order),
        where.value().values);
    if (!found) return found.problems();
    return rows_of_list(database_, found.value());
}

Result<int> JobList::count(const JobFilter& filter, int most) const {
    Result<Where> where = where_of(database_, filter, {});
    if (!where) return where.problems();
    // The search alone knows what matches: no need to look at each job.
    const bool words_only = filter.states.empty() && !filter.without_invented && filter.due_until.empty() &&
                            filter.changed_until.empty() && filter.steps.empty() && filter.item_id.empty() &&
                            where.value().by_words;
    const QString from = words_only ? QString::fromLatin1(database_.words().search_alone) : where.value().sql;
    where.value().values << most + 1;
    const Result<QVariant> found = database_.value(
        QStringLiteral("SELECT count(*) FROM (SELECT 1 %1 LIMIT ?) AS matching").arg(from), where.value().values);
    if (!found) return found.problems();
    return found.value().toInt();
}

Result<std::vector<JobView>> JobList::views() const {
    const Result<std::string> kept = store_.setting(views_key, "[]");
    if (!kept) return kept.problems();
    const QJsonDocument document = QJsonDocument::fromJson(QByteArray::fromStdString(kept.value()));
    const Problem unreadable{"views of the desk", "cannot be read", "Remove them and make them anew"};
    if (!document.isArray()) return unreadable;
    std::vector<JobView> out;
    for (const auto& one : document.array()) {
        const std::optional<JobView> view = from_json(one.toObject());
        if (!view) return unreadable;
        out.push_back(*view);
    }
    std::sort(out.begin(), out.end(), [](const JobView& a, const JobView& b) { return a.name < b.name; });
    return out;
}

Result<bool> JobList::keep_view(const JobView& view) {
    if (view.name.empty() || view.name.size() > 100 || !is_utf8(view.name))
        return Problem{"view of the desk", "has no name, or more than 100 bytes", "Give it a short name"};
    Result<std::vector<JobView>> kept = views();
    if (!kept) return kept.problems();
    std::vector<JobView>& all = kept.value();
    std::erase_if(all, [&view](const JobView& one) { return one.name == view.name; });
    all.push_back(view);
    if (all.size() > most_views) return Problem{"views of the desk", "there are 50 already", "Remove one first"};
    QJsonArray array;
    for (const JobView& one : all)
        array.append(to_json(one));
    return store_.set_setting(views_key, QJsonDocument(array).toJson(QJsonDocument::Compact).toStdString());
}

Result<bool> JobList::drop_view(const std::string& name) {
    const Result<std::vector<JobView>> kept = views();
    if (!kept) return kept.problems();
    QJsonArray array;
    for (const JobView& one : kept.value()) {
        if (one.name != name) array.append(to_json(one));
    }
    return store_.set_setting(views_key, QJsonDocument(array).toJson(QJsonDocument::Compact).toStdString());
}

Result<bool> JobList::drop_all_views() {
    return store_.set_setting(views_key, "[]");
}

}  // namespace wg::store
