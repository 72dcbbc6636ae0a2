#include "ui/prices/price_terms.h"

#include <QDate>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int terms_widest_px = 1080;
constexpr int first_hours_column = 1;
constexpr int rate_column = 5;
constexpr int slower_column = 6;
constexpr double most_task_hours = 1000.0;

QLabel* terms_heading(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setProperty("role", QStringLiteral("heading"));
    return label;
}

double& hours_of(parts::LabourTask& task, int column) {
    switch (column) {
        case 1: return task.hours;
        case 2: return task.hours_per_m;
        case 3: return task.hours_per_point;
        default: return task.hours_per_collector;
    }
}

QString hours_text(double hours) {
    return hours > 0.0 ? QString::number(hours, 'g', 6) : QString();
}

QString slower_text(const parts::LabourTask& task) {
    QStringList out;
    if (task.by_height) out += PriceTerms::tr("height");
    if (task.by_covering) out += PriceTerms::tr("covering");
    if (task.by_access) out += PriceTerms::tr("access");
    if (task.by_storeys) out += PriceTerms::tr("storeys");
    return out.join(QStringLiteral(", "));
}

/// False: a word that is none of the four.
bool take_slower(parts::LabourTask& task, const QString& text) {
    task.by_height = task.by_covering = task.by_access = task.by_storeys = false;
    for (const QString& part : text.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QString word = part.trimmed().toLower();
        if (word == PriceTerms::tr("height")) {
            task.by_height = true;
        } else if (word == PriceTerms::tr("covering")) {
            task.by_covering = true;
        } else if (word == PriceTerms::tr("access")) {
            task.by_access = true;
        } else if (word == PriceTerms::tr("storeys")) {
            task.by_storeys = true;
        } else if (!word.isEmpty()) {
            return false;
        }
    }
    return true;
}

QString factor_text(double factor) {
    return QString::number(factor, 'g', 4);
}

QString units_text(Money amount) {
    return number(static_cast<double>(amount.minor) / 100.0, 2);
}

}  // namespace

PriceTerms::PriceTerms(QWidget* parent) : QWidget(parent) {
    auto* inside = new QWidget(this);
    inside->setMaximumWidth(terms_widest_px);
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 16, 16, 16);
    column->setSpacing(12);
    column->addWidget(make_fields());
    column->addWidget(terms_heading(tr("Tasks"), inside));
    tasks_ = new QTableWidget(inside);
    tasks_->setColumnCount(7);
    tasks_->setHorizontalHeaderLabels({tr("Task"), tr("Hours"), tr("Per m of run"), tr("Per fixing point"),
                                       tr("Per collector"), tr("Rate"), tr("Slower by")});
    tasks_->setAccessibleName(tr("Tasks"));
    tasks_->verticalHeader()->hide();
    tasks_->setTabKeyNavigation(false);
    tasks_->setShowGrid(false);
    tasks_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    tasks_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    tasks_->horizontalHeader()->setHighlightSections(false);
    for (int at = 0; at < tasks_->columnCount(); ++at) {
        const bool figure = at >= first_hours_column && at < rate_column;
        tasks_->horizontalHeaderItem(at)->setTextAlignment((figure ? Qt::AlignRight : Qt::AlignLeft) |
                                                           Qt::AlignVCenter);
    }
    tasks_->horizontalHeaderItem(slower_column)
        ->setToolTip(tr("What stretches the hours: height, covering, access, storeys; several with commas"));
    column->addWidget(tasks_);
    others_ = new QLabel(inside);
    others_->setWordWrap(true);
    others_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column->addWidget(others_);
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(tasks_, &QTableWidget::cellChanged, this, &PriceTerms::take_task_cell);
}

QWidget* PriceTerms::make_fields() {
    auto* box = new QWidget(this);
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    label_ = new TextField(tr("Name of the list"), box);
    from_ = new TextField(tr("Holds from"), box);
    to_ = new TextField(tr("Holds until"), box);
    labour_ = new NumberField(tr("An hour of work"), {}, {0.0, 1e7, 2, 1.0, false, true}, box);
    labour_tax_ = new TextField(tr("Tax class of work"), box);
    const std::pair<QString, QWidget*> rows[] = {{tr("Name of the list"), label_},
                                                 {tr("Holds from (year-month-day)"), from_},
                                                 {tr("Holds until"), to_},
                                                 {tr("An hour of work, net"), labour_},
                                                 {tr("Tax class of work"), labour_tax_}};
    int row = 0;
    for (const auto& [words, field] : rows) {
        auto* label = new QLabel(words, box);
        label->setBuddy(field);
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row++, 1);
    }
    grid->setColumnStretch(2, 1);
    grid->setColumnMinimumWidth(1, 320);
    connect(label_, &TextField::committed, this, [this](const QString& words) {
        if (words.trimmed().isEmpty()) {
            Q_EMIT refused(tr("A list needs a name."));
            label_->set_value(qs(list_.label));
            return;
        }
        list_.label = words.trimmed().toStdString();
        Q_EMIT edited();
    });
    for (TextField* field : {from_, to_}) {
        connect(field, &TextField::committed, this, [this, field](const QString& words) {
            std::string& target = field == from_ ? list_.valid_from : list_.valid_to;
            const QDate day = QDate::fromString(words.trimmed(), Qt::ISODate);
            const std::string text = words.trimmed().toStdString();
            const bool turned = field == from_ ? text > list_.valid_to : text < list_.valid_from;
            if (!day.isValid() || day.year() < 1900 || words.trimmed().size() != 10 || turned) {
                Q_EMIT refused(turned && day.isValid()
                                   ? tr("The list would hold until a day before the one it holds from.")
                                   : tr("'%1' is no day. Write it as 2027-01-31.").arg(words.trimmed()));
                field->set_value(qs(target));
                return;
            }
            target = text;
            Q_EMIT edited();
        });
    }
    connect(labour_, &NumberField::committed, this, [this](std::optional<double> value) {
        if (!value) return;
        list_.labour_hour = {std::llround(*value * 100.0)};
        Q_EMIT edited();
    });
    connect(labour_tax_, &TextField::committed, this, [this](const QString& words) {
        if (words.trimmed().isEmpty()) {
            Q_EMIT refused(tr("Work needs a tax class, or no quote can be priced."));
            labour_tax_->set_value(qs(list_.labour_tax_class));
            return;
        }
        list_.labour_tax_class = words.trimmed().toStdString();
        Q_EMIT edited();
    });
    return box;
}

void PriceTerms::set_list(const parts::PriceList& list, bool editable) {
    list_ = list;
    editable_ = editable;
    for (QWidget* field : {static_cast<QWidget*>(label_), static_cast<QWidget*>(from_), static_cast<QWidget*>(to_),
                           static_cast<QWidget*>(labour_), static_cast<QWidget*>(labour_tax_)})
        field->setEnabled(editable);
    label_->set_value(qs(list.label));
    from_->set_value(qs(list.valid_from));
    to_->set_value(qs(list.valid_to));
    labour_->set_unit(qs(list.currency));
    labour_->set_value(static_cast<double>(list.labour_hour.minor) / 100.0);
    labour_tax_->set_value(qs(list.labour_tax_class));
    fill_tasks();
    // What is entered in the list's file alone is told here, so that nobody has to guess what stretches the hours.
    QStringList words;
    for (const parts::LabourRate& rate : list.labour_rates)
        words += tr("Rate %1: %2, %3 an hour.").arg(qs(rate.id), qs(rate.text), money(rate.hour, qs(list.currency)));
    for (const parts::Difficulty::Height& one : list.difficulty.heights)
        words += tr("Over %1: hours x %2.").arg(length_m(one.over_m), factor_text(one.factor));
    for (const parts::Difficulty::OfCovering& one : list.difficulty.coverings)
        words += tr("On %1: hours x %2.").arg(QString::fromUtf8(text_of(one.covering)), factor_text(one.factor));
    for (const parts::Difficulty::Access& one : list.difficulty.access)
        words += tr("By %1: hours x %2.").arg(qs(one.text), factor_text(one.factor));
    if (list.difficulty.each_storey > 0.0)
        words += tr("Each storey to carry: %1 more.").arg(percent(list.difficulty.each_storey));
    if (list.travel) {
        words += tr("Travel: %1 a km and %2 an hour at %3 km/h, %4 trips.")
                     .arg(units_text(list.travel->km), units_text(list.travel->hour), number(list.travel->km_h),
                          number(list.travel->trips));
    }
    for (const parts::DatedTaxRate& rate : list.tax_rates)
        words += tr("Tax %1 (%2): %3 from %4.")
                     .arg(qs(rate.tax_class), qs(rate.label), percent(rate.rate, 1), day(rate.valid_from));
    if (words.isEmpty()) words += tr("The list tells no difficulty, no travel and no tax rates of its own.");
    others_->setText(words.join(QLatin1Char('\n')));
}

void PriceTerms::write_to(parts::PriceList& list) const {
    list.label = list_.label;
    list.valid_from = list_.valid_from;
    list.valid_to = list_.valid_to;
    list.labour_hour = list_.labour_hour;
    list.labour_tax_class = list_.labour_tax_class;
    list.tasks = list_.tasks;
}

void PriceTerms::fill_tasks() {
    filling_ = true;
    tasks_->setRowCount(static_cast<int>(list_.tasks.size()));
    for (int row = 0; row < tasks_->rowCount(); ++row) {
        parts::LabourTask& task = list_.tasks[static_cast<std::size_t>(row)];
        for (int column = 0; column < tasks_->columnCount(); ++column) {
            QString text;
            if (column == 0)
                text = qs(task.text);
            else if (column < rate_column)
                text = hours_text(hours_of(task, column));
            else
                text = column == rate_column ? qs(task.rate) : slower_text(task);
            auto* item = new QTableWidgetItem(text);
            if (!editable_) item->setFlags(item->flags() & ~Qt::ItemIsEditable);
            if (column >= first_hours_column && column < rate_column)
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            item->setToolTip(text);
            tasks_->setItem(row, column, item);
        }
    }
    int height = tasks_->horizontalHeader()->sizeHint().height() + 2 * tasks_->frameWidth();
    for (int row = 0; row < tasks_->rowCount(); ++row)
        height += tasks_->rowHeight(row);
    tasks_->setFixedHeight(height + 4);
    filling_ = false;
}

void PriceTerms::take_task_cell(int row, int column) {
    if (filling_ || row < 0 || row >= static_cast<int>(list_.tasks.size())) return;
    parts::LabourTask task = list_.tasks[static_cast<std::size_t>(row)];
    const QString text = tasks_->item(row, column)->text().trimmed();
    QString wrong;
    if (column == 0) {
        if (text.isEmpty()) wrong = tr("A task needs a text.");
        task.text = text.toStdString();
    } else if (column < rate_column) {
        const std::optional<double> hours = text.isEmpty() ? 0.0 : parsed_number(text);
        if (!hours || *hours < 0.0 || *hours > most_task_hours) {
            wrong = tr("'%1' is no number of hours from 0 to 1 000.").arg(text);
        } else {
            hours_of(task, column) = *hours;
            if (task.hours + task.hours_per_m + task.hours_per_point + task.hours_per_collector <= 0.0)
                wrong = tr("A task takes some time, or it would stand in no quote.");
        }
    } else if (column == rate_column) {
        task.rate = text.toStdString();
        const auto& rates = list_.labour_rates;
        if (!text.isEmpty() &&
            std::none_of(rates.begin(), rates.end(), [&](const auto& r) { return r.id == task.rate; }))
            wrong = tr("'%1' is none of the list's labour rates.").arg(text);
    } else if (!take_slower(task, text)) {
        wrong = tr("Tasks are made slower by height, covering, access or storeys.");
    }
    if (wrong.isEmpty() && !(task == list_.tasks[static_cast<std::size_t>(row)])) {
        list_.tasks[static_cast<std::size_t>(row)] = task;
        Q_EMIT edited();
    }
    if (!wrong.isEmpty()) Q_EMIT refused(wrong);
    // Later: the cell that was just entered must not go while its table still tells of it.
    QMetaObject::invokeMethod(
        this, [this] { fill_tasks(); }, Qt::QueuedConnection);
}

}  // namespace wg::ui
