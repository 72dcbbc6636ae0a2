// Tasks: how many hours, at which rate, and what makes them slower.

#include <QCoreApplication>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/prices/terms_rows.h"

namespace wg::ui {
namespace {

constexpr int rate_column = 5;

class TaskWords {
    Q_DECLARE_TR_FUNCTIONS(PriceTerms)
};

double parts::LabourTask::*hours_in(int column) {
    switch (column) {
        case 1: return &parts::LabourTask::hours;
        case 2: return &parts::LabourTask::hours_per_m;
        case 3: return &parts::LabourTask::hours_per_point;
        default: return &parts::LabourTask::hours_per_collector;
    }
}

QString hours_text(double hours) {
    return hours > 0.0 ? QString::number(hours, 'g', 6) : QString();
}

QString slower_text(const parts::LabourTask& task) {
    QStringList out;
    if (task.by_height) out += TaskWords::tr("height");
    if (task.by_covering) out += TaskWords::tr("covering");
    if (task.by_access) out += TaskWords::tr("access");
    if (task.by_storeys) out += TaskWords::tr("storeys");
    return out.join(QStringLiteral(", "));
}

/// False: a word that is none of the four.
bool take_slower(parts::LabourTask& task, const QString& text) {
    task.by_height = task.by_covering = task.by_access = task.by_storeys = false;
    for (const QString& part : text.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QString word = part.trimmed().toLower();
        if (word == TaskWords::tr("height")) {
            task.by_height = true;
        } else if (word == TaskWords::tr("covering")) {
            task.by_covering = true;
        } else if (word == TaskWords::tr("access")) {
            task.by_access = true;
        } else if (word == TaskWords::tr("storeys")) {
            task.by_storeys = true;
        } else if (!word.isEmpty()) {
            return false;
        }
    }
    return true;
}

QString task_cell(const parts::LabourTask& task, int column) {
    if (column == 0) return qs(task.text);
    if (column < rate_column) return hours_text(task.*hours_in(column));
    return column == rate_column ? qs(task.rate) : slower_text(task);
}

QString put_task_cell(parts::LabourTask& task, int column, const QString& entry) {
    if (column == 0) {
        task.text = entry.toStdString();
    } else if (column < rate_column) {
        const std::optional<double> hours = entry.isEmpty() ? 0.0 : parsed_number(entry);
        // What is below 0 the file would leave out, and its reader could not refuse it.
        if (!hours || *hours < 0.0) return TaskWords::tr("'%1' is no number of hours from 0 on.").arg(entry);
        task.*hours_in(column) = *hours;
    } else if (column == rate_column) {
        task.rate = entry.toStdString();
    } else if (!take_slower(task, entry)) {
        return TaskWords::tr("Tasks are made slower by height, covering, access or storeys.");
    }
    return {};
}

}  // namespace

TermsRows task_rows() {
    TermsRows out;
    out.title = TaskWords::tr("Tasks");
    out.none = TaskWords::tr("No work stands in quotes with this list.");
    const auto rates = [](const parts::PriceList& list) {
        QStringList ids{QString()};  // the list's own hour
        for (const parts::LabourRate& rate : list.labour_rates)
            ids += qs(rate.id);
        return ids;
    };
    out.columns = {
        {TaskWords::tr("Task")},
        {TaskWords::tr("Hours"), true, {}, 70},
        {TaskWords::tr("Per m of run"), true, {}, 110},
        {TaskWords::tr("Per fixing point"), true, {}, 130},
        {TaskWords::tr("Per collector"), true, {}, 110},
        {TaskWords::tr("Rate"), false, TaskWords::tr("Of the labour rates; empty: an hour of work"), 130, rates},
        {TaskWords::tr("Slower by"), false,
         TaskWords::tr("What stretches the hours: height, covering, access, storeys; several with commas"), 170}};
    out.count = [](const parts::PriceList& list) { return static_cast<int>(list.tasks.size()); };
    out.text = [](const parts::PriceList& list, int row, int column) {
        return task_cell(list.tasks[static_cast<std::size_t>(row)], column);
    };
    out.put = [](parts::PriceList& list, int row, int column, const QString& entry) {
        return put_task_cell(list.tasks[static_cast<std::size_t>(row)], column, entry);
    };
    out.add = [](parts::PriceList& list) {
        parts::LabourTask task;
        const auto taken = [&](const std::string& id) {
            return std::any_of(list.tasks.begin(), list.tasks.end(), [&](const auto& one) { return one.id == id; }) ||
                   parts::find_item(list, id) != nullptr;
        };
        int count = 1;
        do {
            task.id = "task-" + std::to_string(count++);
        } while (taken(task.id));
        task.text = TaskWords::tr("New task").toStdString();
        task.hours = 1.0;
        list.tasks.push_back(std::move(task));
        return QString();
    };
    out.remove = [](parts::PriceList& list, int row) { list.tasks.erase(list.tasks.begin() + row); };
    return out;
}

}  // namespace wg::ui
