#include "ui/desk/figures_page.h"

#include <QCheckBox>
#include <QDate>
#include <QFileDialog>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <algorithm>
#include <numeric>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/whole_file.h"
#include "ui/drawing/bars_painter.h"
#include "ui/drawing/picture_view.h"

namespace wg::ui {
namespace {

constexpr double mwh = 1000.0;  // kWh

MonthValues values_of(const store::MonthCounts& counts) {
    MonthValues out{};
    std::copy(counts.begin(), counts.end(), out.begin());
    return out;
}

MonthValues values_of(const std::array<double, 12>& kwh) {
    MonthValues out{};
    std::transform(kwh.begin(), kwh.end(), out.begin(), [](double value) { return value / mwh; });
    return out;
}

QLabel* heading(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setProperty("role", QStringLiteral("heading"));
    return label;
}

// Months side by side; what the pointer is over is told in words.
void show_bars(PictureView* view, std::vector<BarPart> parts, const QString& y_title, int decimals,
               const QString& nothing_words) {
    const bool nothing = std::all_of(parts.begin(), parts.end(), [](const BarPart& part) {
        return std::all_of(part.values.begin(), part.values.end(), [](double v) { return v == 0.0; });
    });
    if (nothing) {
        view->show_reason(nothing_words);
        return;
    }
    const auto picture = [parts, y_title, counts = decimals == 0](const Theme& theme) {
        BarsPicture out;
        out.parts = parts;
        out.stacked = false;
        out.y_title = y_title;
        out.counts = counts;
        const QColor colours[] = {theme.rule_line, theme.accent};
        for (std::size_t i = 0; i < out.parts.size(); ++i) {
            out.parts[i].colour = out.parts.size() == 1 ? theme.accent : colours[i % 2];
            out.parts[i].hatch = i == 0 && out.parts.size() > 1 ? BarHatch::rising : BarHatch::none;
        }
        return out;
    };
    view->show_picture([picture](QPainter& painter, const QRectF& area, const Theme& theme,
                                 double text_units) { paint_bars(painter, picture(theme), area, theme, text_units); },
                       [picture, parts, decimals, y_title](const QRectF& area, QPointF at, double text_units) {
                           const auto month = month_at(bars_frame(picture(current_theme()), area, text_units), at);
                           if (!month) return QString();
                           QStringList words;
                           for (const BarPart& part : parts)
                               words << QStringLiteral("%1 %2").arg(
                                   part.name, QString::number(part.values[*month], 'f', decimals));
                           return QLocale::c().monthName(static_cast<int>(*month) + 1) + QStringLiteral(": ") +
                                  words.join(QStringLiteral(", "));
                       });
}

}  // namespace

FiguresPage::FiguresPage(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    year_ = new QSpinBox(this);
    year_->setRange(1900, 9999);
    year_->setValue(QDate::currentDate().year());
    year_->setAccessibleName(tr("Year"));
    invented_ = new QCheckBox(tr("With demonstrations"), this);
    left_out_ = new QLabel(this);
    left_out_->setProperty("role", QStringLiteral("muted"));
    auto* save = new QPushButton(tr("Save figures CSV"), this);
    auto* head = new QHBoxLayout;
    head->addWidget(new QLabel(tr("Year"), this));
    head->addWidget(year_);
    head->addWidget(invented_);
    head->addWidget(left_out_, 1);
    head->addWidget(save);
    states_ = new QTableWidget(0, 2, this);
    states_->setHorizontalHeaderLabels({tr("State"), tr("Jobs now")});
    states_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    states_->setSelectionMode(QAbstractItemView::NoSelection);
    states_->setShowGrid(false);
    states_->setTabKeyNavigation(false);
    states_->verticalHeader()->hide();
    states_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    states_->horizontalHeaderItem(0)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    states_->horizontalHeaderItem(1)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    states_->setAccessibleName(tr("Jobs by state"));
    quotes_ = new PictureView(this);
    services_ = new PictureView(this);
    heat_ = new PictureView(this);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* grid = new QGridLayout;
    grid->setSpacing(8);
    const std::pair<QString, QWidget*> cells[] = {{tr("Jobs by state"), states_},
                                                  {tr("Quotes issued and accepted"), quotes_},
                                                  {tr("Services due"), services_},
                                                  {tr("Heat a year, offered and accepted"), heat_}};
    for (int i = 0; i < 4; ++i) {
        grid->addWidget(heading(cells[i].first, this), 2 * (i / 2), i % 2);
        grid->addWidget(cells[i].second, 2 * (i / 2) + 1, i % 2);
        grid->setRowStretch(2 * (i / 2) + 1, 1);
        grid->setColumnStretch(i % 2, 1);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addLayout(grid, 1);
    column->addWidget(words_);
    connect(year_, &QSpinBox::valueChanged, this, &FiguresPage::reload);
    connect(invented_, &QCheckBox::toggled, this, &FiguresPage::reload);
    connect(save, &QPushButton::clicked, this, &FiguresPage::save_figures);
    for (PictureView* view : {quotes_, services_, heat_}) {
        view->setMinimumSize(300, 140);
        connect(view, &PictureView::pointed_at, this,
                [this](const QString& text) { words_->setText(text.isEmpty() ? words() : text); });
    }
}

void FiguresPage::reload() {
    auto of_year = store::desk_figures(store_, year_->value(), invented_->isChecked());
    if (!of_year) {
        Q_EMIT problem(qs(text_of(of_year.problems())));
        return;
    }
    figures_ = std::move(of_year).value();
    states_->setRowCount(0);
    for (const Word<JobState>& state : wg::words<JobState>()) {
        const int row = states_->rowCount();
        states_->insertRow(row);
        const auto found = figures_.by_state.find(state.value);
        states_->setItem(row, 0, new QTableWidgetItem(QString::fromUtf8(state.text)));
        auto* count = new QTableWidgetItem(number(found == figures_.by_state.end() ? 0 : found->second));
        count->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        states_->setItem(row, 1, count);
        states_->setRowHeight(row, 28);
    }
    left_out_->setText(figures_.left_out == 0 ? QString()
                                              : counted(figures_.left_out, tr("%1 demonstration job is left out"),
                                                        tr("%1 demonstration jobs are left out")));
    show_months();
}

void FiguresPage::show_months() {
    const QString year = QString::number(year_->value());
    show_bars(quotes_,
              {{tr("issued"), {}, BarHatch::none, values_of(figures_.quotes_issued)},
               {tr("accepted"), {}, BarHatch::none, values_of(figures_.quotes_accepted)}},
              tr("quotes"), 0,
              tr("No quote was issued or accepted in %1. Those that are stand here month by month.").arg(year));
    show_bars(services_, {{tr("due"), {}, BarHatch::none, values_of(figures_.services_due)}}, tr("services"), 0,
              tr("No service falls due in %1. Those of jobs in service stand here month by month.").arg(year));
    show_bars(
        heat_,
        {{tr("offered"), {}, BarHatch::none, values_of(figures_.heat_offered_kwh)},
         {tr("accepted"), {}, BarHatch::none, values_of(figures_.heat_accepted_kwh)}},
        tr("MWh"), 2,
        tr("No quote of %1 foretells heat. What the plans of quotes offered and accepted foretell stands here month "
           "by month.")
            .arg(year));
    words_->setText(words());
}

QString FiguresPage::left_out_words() const {
    return left_out_->text();
}

QString FiguresPage::words() const {
    const auto sum = [](const store::MonthCounts& counts) { return std::accumulate(counts.begin(), counts.end(), 0); };
    QStringList parts{tr("%1: quotes issued %2, accepted %3")
                          .arg(year_->value())
                          .arg(sum(figures_.quotes_issued))
                          .arg(sum(figures_.quotes_accepted))};
    for (const auto& [currency, minor] : figures_.accepted_minor)
        parts += tr("sum accepted, with tax, %1").arg(money({minor}, qs(currency)));
    parts += tr("without an answer now %1").arg(figures_.quotes_open);
    QString text = parts.join(QStringLiteral("; ")) + QLatin1Char('.');
    text += tr(" Heat is what the plans foretell, about.");
    if (figures_.without_heat + figures_.accepted_without_heat > 0)
        text += tr(" Quotes without it: offered %1, accepted %2.")
                    .arg(figures_.without_heat)
                    .arg(figures_.accepted_without_heat);
    return text;
}

FigureTable FiguresPage::figures() const {
    FigureTable out;
    out.header = {
        QStringLiteral("month"),        QStringLiteral("quotes_issued"),    QStringLiteral("quotes_accepted"),
        QStringLiteral("services_due"), QStringLiteral("heat_offered_kwh"), QStringLiteral("heat_accepted_kwh")};
    for (std::size_t i = 0; i < 12; ++i)
        out.rows.push_back({QStringLiteral("%1-%2").arg(year_->value()).arg(i + 1, 2, 10, QLatin1Char('0')),
                            QString::number(figures_.quotes_issued[i]), QString::number(figures_.quotes_accepted[i]),
                            QString::number(figures_.services_due[i]),
                            QString::number(figures_.heat_offered_kwh[i], 'f', 1),
                            QString::number(figures_.heat_accepted_kwh[i], 'f', 1)});
    return out;
}

void FiguresPage::save_figures() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save figures"), QStringLiteral("figures %1.csv").arg(year_->value()), tr("CSV (*.csv)"));
    if (path.isEmpty()) return;
    const Result<bool> written = write_whole(path, figures().to_csv());
    if (written)
        Q_EMIT said(tr("Figures saved as %1").arg(path));
    else
        Q_EMIT problem(qs(text_of(written.problems())));
}

}  // namespace wg::ui
