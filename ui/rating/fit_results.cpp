#include "ui/rating/fit_results.h"

#include <QButtonGroup>
#include <QFontInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStyle>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/format.h"
#include "ui/drawing/picture_view.h"
#include "ui/rating/declared_table.h"

namespace wg::ui {
namespace {

constexpr int row_height = 30;
constexpr int warnings_height = 118;

QTableWidgetItem* cell(const QString& text, bool figure) {
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft));
    return item;
}

QTableWidget* make_table(const QStringList& heads, const QString& name, QWidget* parent) {
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()), parent);
    for (int i = 0; i < heads.size(); ++i)
        table->setHorizontalHeaderItem(i, cell(heads[i], i > 0));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->setWordWrap(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(row_height);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->horizontalHeader()->setHighlightSections(false);
    table->setAccessibleName(name);
    return table;
}

QString figure(double value, const QString& unit = {}) {
    const double size = std::fabs(value);
    const int decimals = size < 10.0 ? 2 : size < 100.0 ? 1 : 0;
    return unit.isEmpty() ? number(value, decimals) : quantity(value, unit, decimals);
}

bool whole_percent(double share) {
    return std::fabs(100.0 * share - std::round(100.0 * share)) < 1e-6;
}

QString off_by(double share) {
    const QString text = percent(share, 1);
    return share >= 0.0005 ? QLatin1Char('+') + text : text;
}

/// Plain names for people who do not compute refrigerant circuits.
QString parameter_words(rating::Parameter parameter) {
    switch (parameter) {
        case rating::Parameter::overall_peak: return FitResults::tr("Compressor, best efficiency");
        case rating::Parameter::plate_to_refrigerant: return FitResults::tr("Plate to refrigerant");
        case rating::Parameter::condenser: return FitResults::tr("Condenser to water");
        case rating::Parameter::standing_loss: return FitResults::tr("Cylinder, standing loss");
        case rating::Parameter::volumetric_at_unity: return FitResults::tr("Compressor, filling");
        case rating::Parameter::standby_power: return FitResults::tr("Controls, power");
    }
    return {};
}

}  // namespace

FitResults::FitResults(QWidget* parent) : QWidget(parent) {
    views_ = new QButtonGroup(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    int id = 0;
    for (const QString& words : {tr("Picture"), tr("Table"), tr("Calibrated figures")}) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setCheckable(true);
        views_->addButton(button, id++);
        row->addWidget(button);
    }
    row->addStretch(1);
    view_ = new PictureView(this);
    scroll_ = new QScrollArea(this);
    scroll_->setWidgetResizable(true);
    scroll_->setWidget(view_);
    scroll_->setFocusPolicy(Qt::NoFocus);
    values_ =
        make_table({tr("Value"), tr("Declared"), tr("Before"), tr("After"), tr("Off by"), tr("Allowed"), tr("Met")},
                   tr("Declared and computed values"), this);
    figures_ = make_table({tr("Figure"), tr("Before"), tr("After"), tr("Believed range"), tr("At bound")},
                          tr("Calibrated figures"), this);
    stack_ = new QStackedWidget(this);
    hint_ = new QLabel(this);
    hint_->setWordWrap(true);
    hint_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    hint_->setProperty("role", QStringLiteral("muted"));
    for (QWidget* page : {static_cast<QWidget*>(scroll_), static_cast<QWidget*>(values_),
                          static_cast<QWidget*>(figures_), static_cast<QWidget*>(hint_)})
        stack_->addWidget(page);
    verdict_ = new QLabel(this);
    verdict_->setWordWrap(true);
    warnings_ = new QPlainTextEdit(this);
    warnings_->setReadOnly(true);
    warnings_->setFixedHeight(warnings_height);
    warnings_->setTabChangesFocus(true);
    warnings_->setAccessibleName(tr("Warnings of the fit"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(row);
    column->addWidget(stack_, 1);
    column->addWidget(verdict_);
    column->addWidget(warnings_);
    connect(views_, &QButtonGroup::idClicked, this, [this](int view) { show_view(static_cast<View>(view)); });
    show_view(View::picture);
    show_fit(nullptr, {});
}

void FitResults::show_view(View view) {
    views_->button(static_cast<int>(view))->setChecked(true);
    stack_->setCurrentIndex(static_cast<int>(view));
    shown_ = view;
}

void FitResults::fill_values(const rating::Fit& fit) {
    rows_.clear();
    values_->setRowCount(static_cast<int>(fit.residuals.size()));
    int row = 0;
    for (const rating::Residual& r : fit.residuals) {
        const QString unit = QString::fromLatin1(rating::unit_of(r.declared.quantity));
        rows_.push_back({declared_words(r.declared), r.before / r.declared.value - 1.0, r.share, r.declared.tolerance});
        values_->setItem(row, 0, cell(declared_words(r.declared), false));
        values_->setItem(row, 1, cell(figure(r.declared.value, unit), true));
        values_->setItem(row, 2, cell(figure(r.before), true));
        values_->setItem(row, 3, cell(figure(r.after), true));
        values_->setItem(row, 4, cell(off_by(r.share), true));
        values_->setItem(
            row, 5,
            cell(QStringLiteral("±") + percent(r.declared.tolerance, whole_percent(r.declared.tolerance) ? 0 : 1),
                 true));
        values_->setItem(row, 6, cell(r.met ? tr("yes") : tr("no"), true));
        if (!r.met)
            for (const int column : {4, 6})
                values_->item(row, column)->setForeground(current_theme().stop);
        ++row;
    }
}

void FitResults::fill_figures(const rating::Fit& fit) {
    figures_->setRowCount(static_cast<int>(fit.parameters.size()));
    int row = 0;
    for (const rating::Calibrated& c : fit.parameters) {
        const QString unit = with_signs(QString::fromUtf8(rating::unit_of(c.parameter))).trimmed();
        figures_->setItem(row, 0, cell(parameter_words(c.parameter), false));
        figures_->item(row, 0)->setToolTip(qs(c.name));
        figures_->setItem(row, 1, cell(figure(c.before), true));
        figures_->setItem(row, 2, cell(figure(c.after, unit), true));
        figures_->setItem(row, 3, cell(tr("%1 to %2").arg(figure(c.range.low), figure(c.range.high)), true));
        figures_->setItem(row, 4, cell(c.at_bound ? tr("yes") : tr("no"), true));
        if (c.at_bound) figures_->item(row, 4)->setForeground(current_theme().caution);
        ++row;
    }
}

void FitResults::show_fit(const rating::Fit* fit, const QString& words) {
    rows_.clear();
    values_->setRowCount(0);
    figures_->setRowCount(0);
    const bool there = fit != nullptr;
    for (QAbstractButton* button : views_->buttons())
        button->setVisible(there);
    warnings_->setVisible(there);
    verdict_->setVisible(there);
    hint_->setText(words);
    if (there) {
        fill_values(*fit);
        fill_figures(*fit);
        QStringList lines;
        for (const std::string& warning : fit->warnings)
            lines += with_signs(warning);
        warnings_->setPlainText(lines.isEmpty() ? tr("No warnings.") : lines.join(QLatin1Char('\n')));
        long missed = 0;
        for (const rating::Residual& r : fit->residuals)
            missed += r.met ? 0 : 1;
        verdict_->setProperty("role", fit->met ? QStringLiteral("ready") : QStringLiteral("stop"));
        verdict_->style()->unpolish(verdict_);
        verdict_->style()->polish(verdict_);
        verdict_->setText(
            fit->met ? tr("All %1 values are met within their tolerances.").arg(fit->residuals.size())
                     : tr("%1 of %2 values are missed: they pull against each other, or this set cannot give them. "
                          "Correct or take out what cannot be right, and calibrate again.")
                           .arg(missed)
                           .arg(fit->residuals.size()));
        view_->show_picture([this](QPainter& painter, const QRectF& area, const Theme& theme,
                                   double text_units) { paint_off_by(painter, rows_, area, theme, text_units); },
                            {});
        show_view(shown_);
        const double units = QFontInfo(base_font(10.0)).pixelSize();
        view_->setMinimumHeight(static_cast<int>(off_by_height(rows_.size(), units)));
    } else {
        view_->show_picture({}, {});
        view_->setMinimumHeight(0);
        verdict_->clear();
        warnings_->clear();
        stack_->setCurrentWidget(hint_);
    }
}

QString FitResults::verdict() const {
    return verdict_->text();
}
QString FitResults::warnings() const {
    return warnings_->toPlainText();
}

}  // namespace wg::ui
