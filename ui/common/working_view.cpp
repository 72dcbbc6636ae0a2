#include "ui/common/working_view.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int group_role = Qt::UserRole;
constexpr int row_role = Qt::UserRole + 1;
constexpr int list_row_height = 28;

bool says(const NamedWorking& one, const QString& group, const QStringList& words) {
    QString all = group + u' ' + one.place + u' ' + working_text(one.working);
    return std::all_of(words.begin(), words.end(),
                       [&all](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

}  // namespace

QString working_html(const Working& working, const QString& place) {
    const Theme& theme = current_theme();
    const auto safe = [](const std::string& text) { return with_signs(text).toHtmlEscaped(); };
    const QString muted = theme.muted.name();
    QString html = QStringLiteral("<h3>%1</h3>").arg(safe(working.title));
    if (!place.isEmpty()) html += QStringLiteral("<p style='color:%1'>%2</p>").arg(muted, place.toHtmlEscaped());
    // A formula of several parts reads part by part.
    QStringList parts;
    for (const QString& part : with_signs(working.formula).split(QStringLiteral("; "), Qt::SkipEmptyParts))
        parts.append(part.toHtmlEscaped());
    html += QStringLiteral("<p style='font-size:12pt'>%1</p>").arg(parts.join(QStringLiteral("<br>")));
    html += QStringLiteral("<table cellpadding='4' cellspacing='0' width='100%' style='border-color:%1'>")
                .arg(theme.rule_line.name());
    for (const auto& [name, value] : working.inputs) {
        html += QStringLiteral("<tr><td style='color:%1'>%2</td><td align='right'>%3</td></tr>")
                    .arg(muted, safe(name), safe(value));
    }
    html += QStringLiteral("<tr><td><b>%1</b></td><td align='right'><b>%2</b></td></tr></table>")
                .arg(QObject::tr("Result"), safe(working.result));
    if (working.assumed) {
        html += QStringLiteral("<p style='color:%1'><b>\u25c6 %2</b> %3</p>")
                    .arg(theme.caution.name(), QObject::tr("Assumed."),
                         QObject::tr("At least one input is an assumption, not a measurement."));
    }
    html += QStringLiteral("<p style='color:%1'>%2 %3</p>").arg(muted, QObject::tr("Source:"), safe(working.source));
    return html;
}

QString working_text(const Working& working, const QString& place) {
    QStringList lines = {qs(working.title)};
    if (!place.isEmpty()) lines.append(place);
    lines.append(qs(working.formula));
    for (const auto& [name, value] : working.inputs)
        lines.append(qs(name) + QStringLiteral(": ") + qs(value));
    lines.append(QObject::tr("Result: %1").arg(qs(working.result)));
    if (working.assumed) lines.append(QObject::tr("Assumed: at least one input is an assumption, not a measurement."));
    lines.append(QObject::tr("Source: %1").arg(qs(working.source)));
    return with_signs(lines.join(QLatin1Char('\n')));
}

WorkingView::WorkingView(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Workings"));
    resize(1040, 620);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    search_ = new QLineEdit(this);
    search_->setAccessibleName(tr("Search the workings"));
    search_->setPlaceholderText(tr("Search: wind, cable, snow, 1991 \u2026"));
    search_->setClearButtonEnabled(true);
    column->addWidget(search_);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    list_ = new QTreeWidget(split);
    list_->setAccessibleName(tr("Workings by subject"));
    list_->setColumnCount(2);
    list_->setHeaderHidden(true);
    list_->setUniformRowHeights(true);
    list_->setIndentation(14);
    list_->setTextElideMode(Qt::ElideMiddle);  // the end tells which collector
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->header()->setStretchLastSection(false);
    list_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    text_ = new QTextBrowser(split);
    text_->setAccessibleName(tr("Working"));
    split->addWidget(list_);
    split->addWidget(text_);
    split->setSizes({500, 500});
    column->addWidget(split, 1);
    count_ = new QLabel(this);
    count_->setProperty("role", QStringLiteral("muted"));
    count_->setWordWrap(true);
    auto* copy = new QPushButton(tr("Copy"), this);
    copy->setToolTip(tr("The working shown, as text"));
    auto* copy_listed = new QPushButton(tr("Copy all listed"), this);
    copy_listed->setToolTip(tr("Every working that the search leaves, as text"));
    auto* close_button = new QPushButton(tr("Close"), this);
    for (QPushButton* button : {copy, copy_listed, close_button})
        button->setAutoDefault(false);  // Enter in the search must not copy or close
    auto* foot = new QHBoxLayout;
    foot->addWidget(count_, 1);
    foot->addWidget(copy);
    foot->addWidget(copy_listed);
    foot->addWidget(close_button);
    column->addLayout(foot);
    connect(search_, &QLineEdit::textChanged, this, &WorkingView::filter);
    connect(search_, &QLineEdit::returnPressed, list_, [this] { list_->setFocus(); });
    connect(list_, &QTreeWidget::currentItemChanged, this, &WorkingView::refresh);
    connect(close_button, &QPushButton::clicked, this, &QDialog::close);
    connect(copy, &QPushButton::clicked, this, [this] {
        if (const NamedWorking* one = shown())
            QApplication::clipboard()->setText(working_text(one->working, one->place));
    });
    connect(copy_listed, &QPushButton::clicked, this, [this] { QApplication::clipboard()->setText(listed_text()); });
    auto* find = new QShortcut(QKeySequence::Find, this);
    connect(find, &QShortcut::activated, this, [this] {
        search_->setFocus();
        search_->selectAll();
    });
}

void WorkingView::set_plan(const plan::Plan& plan) {
    const NamedWorking before = shown() != nullptr ? *shown() : NamedWorking{};
    plan_ = plan;
    groups_ = grouped_workings(plan);
    fill();
    if (before.working.key.empty()) return;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
        for (std::size_t r = 0; r < groups_[g].workings.size(); ++r) {
            const NamedWorking& one = groups_[g].workings[r];
            if (one.working.key == before.working.key && one.working.title == before.working.title &&
                one.placement_id == before.placement_id && one.point == before.point)
                return go_to(WorkingAt{g, r});
        }
    }
}

void WorkingView::fill() {
    const QSignalBlocker quiet(list_);
    list_->clear();
    const QColor caution = current_theme().caution;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
        auto* head = new QTreeWidgetItem(list_, {groups_[g].title});
        QFont strong = list_->font();
        strong.setWeight(QFont::DemiBold);
        head->setFont(0, strong);
        head->setFirstColumnSpanned(true);
        head->setFlags(Qt::ItemIsEnabled);
        head->setSizeHint(0, {0, list_row_height});
        head->setExpanded(true);
        for (std::size_t r = 0; r < groups_[g].workings.size(); ++r) {
            const NamedWorking& one = groups_[g].workings[r];
            QString words = qs(one.working.title);
            // In a group of one collector its name stands in the group's title.
            if (!one.place.isEmpty() && !groups_[g].title.endsWith(QLatin1String(": ") + one.place))
                words += QLatin1String(", ") + one.place;
            auto* item = new QTreeWidgetItem(head, {words, one.working.assumed ? tr("\u25c6 assumed") : QString()});
            item->setForeground(1, caution);
            item->setToolTip(0, words);
            item->setData(0, group_role, static_cast<int>(g));
            item->setData(0, row_role, static_cast<int>(r));
        }
    }
    filter();
}

void WorkingView::filter() {
    const QStringList words = search_->text().split(u' ', Qt::SkipEmptyParts);
    int listed = 0;
    int assumed = 0;
    QTreeWidgetItem* first = nullptr;
    for (int g = 0; g < list_->topLevelItemCount(); ++g) {
        QTreeWidgetItem* head = list_->topLevelItem(g);
        bool any = false;
        for (int r = 0; r < head->childCount(); ++r) {
            const auto where = where_of(head->child(r));
            const NamedWorking& one = at(groups_, *where);
            const bool fits = says(one, groups_[where->group].title, words);
            head->child(r)->setHidden(!fits);
            if (!fits) continue;
            any = true;
            ++listed;
            assumed += one.working.assumed ? 1 : 0;
            if (first == nullptr) first = head->child(r);
        }
        head->setHidden(!any);
    }
    if (groups_.empty())
        count_->setText(tr("This plan has no working yet."));
    else if (listed == 0)
        count_->setText(tr("Nothing with these words. Clear the search to see all."));
    else
        count_->setText(tr("%1 listed, %2 with an assumed input").arg(listed).arg(assumed));
    const QTreeWidgetItem* current = list_->currentItem();
    if (current == nullptr || current->isHidden() || !where_of(current)) list_->setCurrentItem(first);
    refresh();
}

QString WorkingView::listed_text() const {
    QStringList blocks;
    for (int g = 0; g < list_->topLevelItemCount(); ++g) {
        const QTreeWidgetItem* head = list_->topLevelItem(g);
        if (head->isHidden()) continue;
        blocks.append(head->text(0).toUpper());
        for (int r = 0; r < head->childCount(); ++r) {
            if (head->child(r)->isHidden()) continue;
            const NamedWorking& one = at(groups_, *where_of(head->child(r)));
            blocks.append(working_text(one.working, one.place));
        }
    }
    return blocks.join(QStringLiteral("\n\n"));
}

std::optional<WorkingAt> WorkingView::where_of(const QTreeWidgetItem* item) const {
    if (item == nullptr || !item->data(0, group_role).isValid()) return std::nullopt;
    const WorkingAt where{static_cast<std::size_t>(item->data(0, group_role).toInt()),
                          static_cast<std::size_t>(item->data(0, row_role).toInt())};
    if (where.group >= groups_.size() || where.row >= groups_[where.group].workings.size()) return std::nullopt;
    return where;
}

QTreeWidgetItem* WorkingView::item_of(const WorkingAt& where) const {
    const QTreeWidgetItem* head = list_->topLevelItem(static_cast<int>(where.group));
    return head != nullptr ? head->child(static_cast<int>(where.row)) : nullptr;
}

void WorkingView::go_to(const std::optional<WorkingAt>& where) {
    QTreeWidgetItem* item = where ? item_of(*where) : nullptr;
    if (item == nullptr) return;
    // What was asked for comes in sight whatever was searched before.
    if (item->isHidden()) search_->clear();
    list_->setCurrentItem(item);
    list_->scrollToItem(item);
    refresh();
}

void WorkingView::show_key(const QString& key, const std::string& placement_id) {
    go_to(find_working(groups_, plan_, key.toStdString(), placement_id));
}

void WorkingView::show_point(const std::string& placement_id, int point) {
    go_to(working_of_point(groups_, placement_id, point));
}

void WorkingView::show_finding(const Finding& finding) {
    go_to(working_of(groups_, finding));
}

const NamedWorking* WorkingView::shown() const {
    const auto where = where_of(list_->currentItem());
    return where ? &at(groups_, *where) : nullptr;
}

void WorkingView::refresh() {
    const NamedWorking* one = shown();
    const QString html = one != nullptr ? working_html(one->working, one->place) : QString();
    // Setting equal text would throw the reader back to the top at every plan of a drag.
    if (text_->property("shown_html").toString() == html) return;
    text_->setProperty("shown_html", html);
    text_->setHtml(html);
}

}  // namespace wg::ui
