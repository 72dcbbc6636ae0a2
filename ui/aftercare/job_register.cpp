#include "ui/aftercare/job_register.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/aftercare/register.h"
#include "ui/aftercare/quiet_table.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {

JobRegister::JobRegister(QWidget* parent) : QWidget(parent) {
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    none_ = new QLabel(tr("No move yet. What is weighed in or taken out is entered with the readings, on the Fitting "
                          "stage and under Services."),
                       this);
    none_->setProperty("role", QStringLiteral("muted"));
    none_->setWordWrap(true);
    table_ = quiet_table({tr("Day"), tr("Move"), tr("Mass"), tr("By"), tr("Note")}, this);
    table_->horizontalHeader()->setSectionResizeMode(4, QHeaderView::Stretch);
    table_->setAccessibleName(tr("Moves of refrigerant in this job"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    column->addWidget(words_);
    column->addWidget(none_);
    column->addWidget(table_, 1);
    column->addStretch(0);
}

void JobRegister::set_session(JobSession* session) {
    session_ = session;
}

void JobRegister::show_plan(const plan::Plan& plan) {
    Job job = session_->job();
    job.invented = false;  // shown here in any case; the firm's register leaves demonstrations out
    const QString name = QString::fromLatin1(name_of(plan.block.refrigerant));
    const std::vector<RefrigerantEntry> entries = aftercare::standing(aftercare::entries_of(job, name.toStdString()));
    double added_kg = 0.0, out_kg = 0.0, lost_kg = 0.0;
    for (const RefrigerantEntry& entry : entries) {
        if (entry.move == RefrigerantMove::used) added_kg += entry.kg;
        if (entry.move == RefrigerantMove::recovered) out_kg += entry.kg;
        if (entry.move == RefrigerantMove::leaked) lost_kg += entry.kg;
    }
    const QString kg = QStringLiteral("kg");
    const double in_system_kg = plan.block.charge_kg + added_kg - out_kg - lost_kg;
    QStringList lines;
    lines += tr("Refrigerant: %1").arg(name);
    lines += tr("Factory charge: %1").arg(quantity(plan.block.charge_kg, kg, 3));
    lines += tr("Extra charge planned: %1").arg(quantity(plan.run.extra_charge_kg, kg, 3));
    lines += tr("Weighed in: %1").arg(quantity(added_kg, kg, 3));
    if (out_kg > 0.0) lines += tr("Taken out: %1").arg(quantity(out_kg, kg, 3));
    if (lost_kg > 0.0) lines += tr("Leaked, as far as known: %1").arg(quantity(lost_kg, kg, 3));
    lines += tr("In the system: %1%2")
                 .arg(quantity(in_system_kg, kg, 3), added_kg > 0.0 ? QString() : tr(" before any extra charge"));
    if (in_system_kg < 0.0) lines += tr("More was taken out than went in: an entry is missing or wrong.");
    lines += tr("Planned total: %1, as carbon dioxide %2")
                 .arg(quantity(plan.run.total_charge_kg, kg, 3),
                      quantity(plan.run.total_charge_t_co2e, QStringLiteral("t"), 3));
    if (session_->job().invented)
        lines += tr("A job of demonstration data: its moves stay out of the firm's register.");
    else
        lines += tr("Moves go into the firm's register when the job is saved.");
    words_->setText(lines.join(QLatin1Char('\n')));
    none_->setVisible(entries.empty());
    table_->setVisible(!entries.empty());
    table_->setRowCount(static_cast<int>(entries.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const RefrigerantEntry& entry = entries[static_cast<std::size_t>(row)];
        put_cell(*table_, row, 0, qs(entry.on));
        put_cell(*table_, row, 1, QString::fromUtf8(text_of(entry.move)));
        put_cell(*table_, row, 2, quantity(entry.kg, kg, 3), true);
        put_cell(*table_, row, 3, qs(entry.by));
        QString note = qs(entry.note);
        if (!entry.corrects_id.empty()) note.prepend(tr("(correction) "));
        put_cell(*table_, row, 4, note);
    }
    fit_columns(*table_, {0, 1, 2, 3});
}

QString JobRegister::words() const {
    return words_->text();
}

}  // namespace wg::ui
