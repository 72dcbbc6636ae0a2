// The form's part about the horizon: readings of the compass as a table, pasted or from a file.

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QPushButton>
#include <QTableWidget>

#include "core/quantity/angle.h"
#include "core/site/horizon_text.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/whole_file.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"
#include "ui/visit/horizon_picture.h"
#include "ui/visit/visit_form.h"

namespace wg::ui {

void VisitForm::build_horizon() {
    heading(tr("Horizon"));
    words(
        tr("Hills, woods and rows of houses far off: bearing as the compass shows it and how high they rise. None: the "
           "view is free."));
    NumberField* declination = number(tr("Declination, east +; 0: bearings are true"), tr("\u00b0"),
                                      {-180.0, 180.0, 1, 0.5, false}, [this](std::optional<double> value) {
                                          if (session_ != nullptr && value) set_declination(*session_, *value);
                                      });
    fields_.insert(QStringLiteral("declination"), declination);
    shows_.push_back([declination](const Job& job) { declination->set_value(job.site.declination_deg); });
    auto* table = new CornerTable(this);
    table->set_meaning(tr("Bearing, \u00b0"), tr("Rises, \u00b0"), {90.0, 5.0});
    table->set_taker([this](const std::vector<Point2>& rows) {
        if (session_ == nullptr) return QString();
        std::vector<HorizonPoint> horizon;
        for (Point2 row : rows) {
            if (!(row.x_m >= 0.0 && row.x_m <= 360.0)) return tr("A bearing lies between 0 and 360\u00b0.");
            horizon.push_back({wrap_360(row.x_m + session_->job().site.declination_deg), row.y_m, {}});
        }
        const QString why = refusal(session_->job(), [&](Job& job) { job.site.horizon = horizon; });
        if (why.isEmpty()) set_horizon(*session_, horizon);
        return why;
    });
    add(table);
    fields_.insert(QStringLiteral("horizon"), table->table());
    auto* picture = new HorizonPicture(this);
    add(picture);
    fields_.insert(QStringLiteral("horizon_picture"), picture);
    shows_.push_back([picture](const Job& job) { picture->show_site(job.site); });
    connect(table->table(), &QTableWidget::currentCellChanged, this, [picture](int row) { picture->mark_row(row); });
    shows_.push_back([table](const Job& job) {
        std::vector<Point2> rows;
        for (const HorizonPoint& point : job.site.horizon)
            rows.push_back({wrap_360(point.azimuth_deg - job.site.declination_deg), point.elevation_deg});
        table->set_outline(rows);
    });
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("stop"));
    problem->setWordWrap(true);
    problem->hide();
    auto* paste = new QPushButton(tr("Paste readings"), this);
    paste->setToolTip(tr("Lines such as 170;12.5 from the clipboard take the place of the table."));
    auto* import = new QPushButton(tr("Read a CSV file\u2026"), this);
    add(paste);
    add(import);
    add(problem);
    fields_.insert(QStringLiteral("horizon_paste"), paste);
    fields_.insert(QStringLiteral("horizon_problem"), problem);
    connect(paste, &QPushButton::clicked, this,
            [this, problem] { take_horizon(QGuiApplication::clipboard()->text().toUtf8(), problem); });
    connect(import, &QPushButton::clicked, this, [this, problem] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Read a horizon"), {},
                                                          tr("Text and CSV (*.csv *.txt);;All files (*)"));
        if (path.isEmpty()) return;
        // No horizon comes near this; more is another kind of file.
        const Result<std::string> text = read_whole(path, mebibyte);
        if (!text) {
            problem->setText(QStringLiteral("\u25b2 ") + qs(text.problems().front().text()));
            problem->show();
            return;
        }
        take_horizon(QByteArray::fromStdString(text.value()), problem);
    });
}

void VisitForm::take_horizon(const QByteArray& text, QLabel* problem) {
    if (session_ == nullptr) return;
    const auto read = site::horizon_from_text(std::string_view(text.constData(), static_cast<std::size_t>(text.size())),
                                              session_->job().site.declination_deg);
    problem->setVisible(!read);
    if (!read)
        problem->setText(QStringLiteral("\u25b2 ") + qs(read.problems().front().text()));
    else
        set_horizon(*session_, read.value());
}

}  // namespace wg::ui
