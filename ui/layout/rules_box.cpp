#include "ui/layout/rules_box.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/fixing/mounting_rules.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"

namespace wg::ui {
namespace {

constexpr int mark_px = 16;

/// The core writes "38.0 deg".
QString with_degree_signs(const std::string& text) {
    return qs(text).replace(QStringLiteral(" deg"), QStringLiteral("\u00b0"));
}

}  // namespace

RulesBox::RulesBox(QWidget* parent) : QWidget(parent) {
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(4);
    heading_ = new QLabel(this);
    heading_->setProperty("role", QStringLiteral("heading"));
    heading_->setWordWrap(true);
    column_->addWidget(heading_);
}

RulesBox::Line& RulesBox::line(std::size_t index) {
    while (lines_.size() <= index) {
        Line made;
        made.row = new QWidget(this);
        auto* row = new QHBoxLayout(made.row);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(8);
        made.mark = new QLabel(made.row);
        made.mark->setFixedWidth(mark_px + 2);
        made.mark->setAlignment(Qt::AlignTop);
        made.words = new QLabel(made.row);
        made.words->setWordWrap(true);
        made.words->setTextFormat(Qt::RichText);
        row->addWidget(made.mark, 0, Qt::AlignTop);
        row->addWidget(made.words, 1);
        column_->addWidget(made.row);
        lines_.push_back(made);
    }
    return lines_[index];
}

void RulesBox::show_rules(const JobSession* session, const std::string& placement_id) {
    const Choice* choice = session != nullptr ? session->current_choice() : nullptr;
    const CollectorModel* model =
        choice != nullptr ? find_collector(session->reference().catalogue, choice->collector_model) : nullptr;
    std::vector<fixing::MountingRule> rules;
    if (model != nullptr) {
        for (const Placement& one : choice->placements) {
            if (one.id == placement_id) rules = fixing::mounting_rules(session->job().site, *choice, *model, one);
        }
        heading_->setText(tr("What %1 asks").arg(qs(model->name)));
    }
    setVisible(!rules.empty());
    const Theme& theme = current_theme();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        const fixing::MountingRule& rule = rules[i];
        const Mark mark = rule.broken ? mark_of(*rule.broken) : Mark::ready;
        const QString word = rule.broken ? word_of(mark) : tr("kept");
        Line& at = line(i);
        at.row->setVisible(true);
        const QString text = QStringLiteral("%1<br><span style=\"color:%2\">%3: %4</span>")
                                 .arg(with_degree_signs(rule.rule).toHtmlEscaped(), colour_of(mark, theme).name(), word,
                                      with_degree_signs(rule.now).toHtmlEscaped());
        // A drag comes by here with every move of the hand, and most rules stay as they are.
        if (at.words->text() == text) continue;
        at.mark->setPixmap(mark_icon(mark, theme, mark_px).pixmap(mark_px, mark_px));
        at.words->setText(text);
        at.words->setAccessibleName(
            QStringLiteral("%1, %2: %3").arg(with_degree_signs(rule.rule), word, with_degree_signs(rule.now)));
    }
    for (std::size_t i = rules.size(); i < lines_.size(); ++i)
        lines_[i].row->setVisible(false);
}

QStringList RulesBox::lines() const {
    QStringList out;
    for (const Line& one : lines_) {
        if (!one.row->isHidden()) out << one.words->accessibleName();
    }
    return out;
}

}  // namespace wg::ui
