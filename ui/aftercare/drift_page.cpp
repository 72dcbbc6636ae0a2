#include "ui/aftercare/drift_page.h"

#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/job/words.h"
#include "ui/aftercare/dates.h"
#include "ui/aftercare/quiet_table.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"
#include "ui/drawing/drift_painter.h"
#include "ui/drawing/picture_view.h"

namespace wg::ui {
namespace {

Mark drift_mark(aftercare::Drift drift) {
    switch (drift) {
        case aftercare::Drift::steady: return Mark::ready;
        case aftercare::Drift::moved: return Mark::caution;
        case aftercare::Drift::cannot_tell: return Mark::begun;
        case aftercare::Drift::condition: return Mark::note;
        case aftercare::Drift::single: break;
    }
    return Mark::empty;
}

QString figure_words(const aftercare::DriftRow& row, const aftercare::DriftPoint& point) {
    QString words = quantity(point.read, qs(row.unit), row.decimals);
    if (point.model) {
        words += DriftPage::tr(" (model %1 to %2)")
                     .arg(number(point.model->low, row.decimals), number(point.model->high, row.decimals));
    }
    return words;
}

}  // namespace

DriftPage::DriftPage(QWidget* parent) : QWidget(parent) {
    empty_ = new EmptyPane(tr("No readings to compare"),
                           tr("What is read at the fitting and again at services stands here side by side: currents, "
                              "temperatures, pressures, resistances."),
                           QString(), this);
    auto* split = new QSplitter(Qt::Vertical, this);
    auto* left = new QWidget(split);
    table_ = quiet_table({tr("Reading"), tr("First"), tr("Newest"), tr("Change"), tr("State")}, left);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->setAccessibleName(tr("Readings over the visits"));
    auto* of_left = new QVBoxLayout(left);
    of_left->setContentsMargins(16, 16, 16, 8);
    of_left->addWidget(table_);
    auto* right = new QWidget(split);
    title_ = new QLabel(right);
    title_->setProperty("role", QStringLiteral("title"));
    title_->setWordWrap(true);
    picture_ = new PictureView(right);
    words_ = new QLabel(right);
    words_->setWordWrap(true);
    auto* of_right = new QVBoxLayout(right);
    of_right->setContentsMargins(16, 8, 16, 16);
    of_right->setSpacing(4);
    of_right->addWidget(title_);
    of_right->addWidget(picture_, 1);
    of_right->addWidget(words_);
    split->addWidget(left);
    split->addWidget(right);
    split->setSizes({280, 340});
    split->setChildrenCollapsible(false);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(split);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(stack_);
    connect(table_, &QTableWidget::currentCellChanged, this, [this] { show_row(); });
    connect(picture_, &PictureView::pointed_at, this, &DriftPage::said);
}

void DriftPage::set_session(JobSession* session) {
    session_ = session;
    rows_.clear();
    shown_.clear();
}

void DriftPage::show_plan(const plan::Plan& plan) {
    // Typing elsewhere brings the same plan and record again: the model of the pump is not made anew for that.
    const std::string now = plan.plan_mark + plan.choice_id + plan.block.id + " " +
                            std::to_string(session_->job().record.size()) + " " +
                            std::to_string(static_cast<int>(current_theme().kind));
    if (now == shown_) return;
    shown_ = now;
    const auto reference = session_->shared_reference();
    const auto properties = reference->refrigerants.find(plan.block.refrigerant);
    aftercare::ModelAtDay model;
    if (properties != reference->refrigerants.end() && properties->second != nullptr)
        model = aftercare::model_of(plan, *properties->second);
    rows_ = aftercare::drift(session_->job().record, model);
    fill();
    stack_->setCurrentIndex(rows_.empty() ? 0 : 1);
}

void DriftPage::fill() {
    const int selected = table_->currentRow();
    {
        const QSignalBlocker quiet(table_);
        table_->setRowCount(static_cast<int>(rows_.size()));
        for (int i = 0; i < table_->rowCount(); ++i) {
            const aftercare::DriftRow& row = rows_[static_cast<std::size_t>(i)];
            const auto change = [&](const std::optional<double>& value) {
                if (!value) return QString();
                const QString words = difference(*value, qs(row.unit), row.decimals);
                return words.isEmpty() ? tr("none") : words;
            };
            QString name = QString::fromUtf8(text_of(row.kind));
            name[0] = name[0].toUpper();
            put_cell(*table_, i, 0, name);
            put_cell(*table_, i, 1, figure_words(row, row.points.front()), true);
            put_cell(*table_, i, 2, row.points.size() > 1 ? figure_words(row, row.points.back()) : QString(), true);
            QString moved = change(row.change);
            if (row.beyond_model) moved += QStringLiteral(", ") + tr("%1 beyond weather").arg(change(row.beyond_model));
            put_cell(*table_, i, 3, moved, true);
            auto* state = put_cell(*table_, i, 4, QString::fromLatin1(aftercare::text_of(row.drift)));
            state->setIcon(mark_icon(drift_mark(row.drift), current_theme()));
            state->setToolTip(qs(row.words));
        }
        fit_columns(*table_, {1, 2, 3, 4}, 280);
        // At first what moved, which is what somebody looks for.
        int shown = selected;
        const auto first_moved = std::find_if(rows_.begin(), rows_.end(), [](const aftercare::DriftRow& row) {
            return row.drift == aftercare::Drift::moved;
        });
        if (shown < 0) shown = first_moved == rows_.end() ? 0 : static_cast<int>(first_moved - rows_.begin());
        if (!rows_.empty()) table_->setCurrentCell(std::min(shown, table_->rowCount() - 1), 0);
    }
    show_row();
}

void DriftPage::show_row() {
    const int at = table_->currentRow();
    if (at < 0 || at >= static_cast<int>(rows_.size())) {
        title_->clear();
        words_->clear();
        picture_->show_reason(QString());
        return;
    }
    const aftercare::DriftRow row = rows_[static_cast<std::size_t>(at)];
    const QString name = table_->item(at, 0)->text();
    const QString first = date_words(row.points.front().on);
    const QString last = date_words(row.points.back().on);
    title_->setText(first == last ? tr("%1, %2").arg(name, first) : tr("%1, %2 to %3").arg(name, first, last));
    // What was read once has no more to say than that.
    const QString state = QString::fromLatin1(aftercare::text_of(row.drift));
    const QString more = qs(row.words);
    words_->setText(more.isEmpty() || more == state ? state : state + QStringLiteral(": ") + more);
    picture_->show_picture(
        [row](QPainter& painter, const QRectF& area, const Theme& theme, double units) {
            paint_drift(painter, row, area, theme, units);
        },
        [row](const QRectF& area, QPointF point, double units) { return drift_words(row, area, point, units); });
}

QString DriftPage::words() const {
    return words_->text();
}

}  // namespace wg::ui
