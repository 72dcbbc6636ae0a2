#include "ui/common/working_view.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

/// How the price adds up. Sums of the quote only: nothing is priced here.
Working price_working(const quote::Quote& quote, const plan::Plan& plan) {
    Money labour;
    Money goods;
    for (const parts::Line& line : quote.lines)
        (line.labour ? labour : goods) += line.net;
    const auto text = [&quote](Money amount) { return money(amount, qs(quote.currency)).toStdString(); };
    Working working;
    working.key = "quote.price";
    working.title = "Price with tax";
    working.formula = "equipment and material + labour + tax";
    working.inputs = {{"equipment and material", text(goods)}, {"labour", text(labour)}, {"net", text(quote.net)}};
    for (const quote::TaxSum& tax : quote.taxes) {
        working.inputs.emplace_back(
            tax.rate.label + ", " + percent(tax.rate.rate, 1).toStdString() + " of " + text(tax.net), text(tax.tax));
    }
    working.result = text(quote.gross);
    working.source = "Price list: " + plan.price_list_label + "; rule set: " + plan.rule_set_label;
    return working;
}

}  // namespace

QString working_html(const Working& working) {
    const Theme& theme = current_theme();
    const auto safe = [](const std::string& text) { return qs(text).toHtmlEscaped(); };
    const QString muted = theme.muted.name();
    QString html = QStringLiteral("<h3>%1</h3><p style='font-size:12pt'>%2</p><table cellpadding='4' width='100%'>")
                       .arg(safe(working.title), safe(working.formula));
    for (const auto& [name, value] : working.inputs) {
        html += QStringLiteral("<tr><td style='color:%1'>%2</td><td align='right'>%3</td></tr>")
                    .arg(muted, safe(name), safe(value));
    }
    html += QStringLiteral("<tr><td><b>%1</b></td><td align='right'><b>%2</b></td></tr></table>")
                .arg(QObject::tr("Result"), safe(working.result));
    if (working.assumed) {
        html += QStringLiteral("<p style='color:%1'><b>%2</b> %3</p>")
                    .arg(theme.caution.name(), QObject::tr("Assumed."),
                         QObject::tr("At least one input is an assumption, not a measurement."));
    }
    html += QStringLiteral("<p style='color:%1'>%2 %3</p>").arg(muted, QObject::tr("Source:"), safe(working.source));
    return html;
}

QString working_text(const Working& working) {
    QStringList lines = {qs(working.title), qs(working.formula)};
    for (const auto& [name, value] : working.inputs)
        lines.append(qs(name) + QStringLiteral(": ") + qs(value));
    lines.append(QObject::tr("Result: %1").arg(qs(working.result)));
    if (working.assumed) lines.append(QObject::tr("Assumed: at least one input is an assumption, not a measurement."));
    lines.append(QObject::tr("Source: %1").arg(qs(working.source)));
    return lines.join(QLatin1Char('\n'));
}

std::vector<Working> workings_to_show(const plan::Plan& plan) {
    std::vector<Working> workings = plan.workings;
    const auto is_worst_fixing = [](const Working& w) { return w.key == "fixing.worst"; };
    const auto first = std::find_if(workings.begin(), workings.end(), is_worst_fixing);
    const auto worst = std::max_element(plan.placements.begin(), plan.placements.end(),
                                        [](const plan::PlacementPlan& a, const plan::PlacementPlan& b) {
                                            return a.fixing.worst_utilisation < b.fixing.worst_utilisation;
                                        });
    if (first != workings.end() && worst != plan.placements.end()) {
        const std::vector<Working>& own = worst->fixing.workings;
        const auto of_worst = std::find_if(own.begin(), own.end(), is_worst_fixing);
        const auto there = of_worst != own.end() ? std::find(first, workings.end(), *of_worst) : workings.end();
        if (there != workings.end()) std::iter_swap(first, there);
    }
    if (plan.quote) workings.push_back(price_working(*plan.quote, plan));
    return workings;
}

WorkingView::WorkingView(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Working"));
    resize(520, 460);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    choice_ = new QComboBox(this);
    choice_->setAccessibleName(tr("Working to show"));
    text_ = new QTextBrowser(this);
    text_->setAccessibleName(tr("Working"));
    auto* copy = new QPushButton(tr("Copy"), this);
    auto* close_button = new QPushButton(tr("Close"), this);
    auto* foot = new QHBoxLayout;
    foot->addStretch();
    foot->addWidget(copy);
    foot->addWidget(close_button);
    column->addWidget(choice_);
    column->addWidget(text_, 1);
    column->addLayout(foot);
    connect(choice_, &QComboBox::currentIndexChanged, this, &WorkingView::refresh);
    connect(close_button, &QPushButton::clicked, this, &QDialog::close);
    connect(copy, &QPushButton::clicked, this, [this] {
        if (const Working* working = shown()) QApplication::clipboard()->setText(working_text(*working));
    });
}

void WorkingView::set_plan(const plan::Plan& plan) {
    workings_ = workings_to_show(plan);
    const QString key = choice_->currentData().toString();
    {
        const QSignalBlocker quiet(choice_);
        choice_->clear();
        for (const Working& working : workings_)
            choice_->addItem(qs(working.title), qs(working.key));
    }
    show_key(key);
}

void WorkingView::show_key(const QString& key) {
    const int at = choice_->findData(key);
    if (at >= 0) {
        const QSignalBlocker quiet(choice_);
        choice_->setCurrentIndex(at);
    }
    refresh();
}

const Working* WorkingView::shown() const {
    const int at = choice_->currentIndex();
    if (at < 0 || at >= static_cast<int>(workings_.size())) return nullptr;
    return &workings_[static_cast<std::size_t>(at)];
}

void WorkingView::refresh() {
    const Working* working = shown();
    const QString html = working != nullptr ? working_html(*working) : QString();
    // Setting equal text would throw the reader back to the top at every plan of a drag.
    if (text_->property("shown_html").toString() == html) return;
    text_->setProperty("shown_html", html);
    text_->setHtml(html);
}

}  // namespace wg::ui
