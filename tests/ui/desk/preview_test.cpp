// The desk's preview in the room that a small notebook leaves it at large type: its lines do not run into each other.

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include "tests/ui/common/sample.h"
#include "ui/common/theme.h"
#include "ui/desk/job_preview.h"

namespace wg::ui {
namespace preview_test {

TEST(JobPreviewTest, lines_and_sketch_stand_one_below_the_other_however_low_it_is) {
    apply_theme(*qApp, ThemeKind::light);
    Job job = sample::job();
    job.title = "Hot water from the south-west roof for the house, the wash house and the flat above the workshop";
    NextDue due;
    due.text = "Look over plate, fixings, roof passage, insulation and the block";
    JobPreview preview;
    preview.show_job(job, due);
    preview.show();
    for (const int height : {700, 440, 260}) {
        preview.resize(300, height);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        std::vector<QRect> parts;
        for (const QWidget* part : preview.findChildren<QWidget*>()) {
            const bool line = qobject_cast<const QLabel*>(part) != nullptr;
            if (!part->isVisible() || !(line || qobject_cast<const SketchThumbnail*>(part) != nullptr)) continue;
            parts.emplace_back(part->mapTo(&preview, QPoint(0, 0)), part->size());
            if (line && part->hasHeightForWidth())
                EXPECT_GE(part->height(), part->heightForWidth(part->width())) << "cut at " << height;
        }
        ASSERT_GE(parts.size(), 5U);
        std::sort(parts.begin(), parts.end(), [](const QRect& a, const QRect& b) { return a.top() < b.top(); });
        for (std::size_t i = 1; i < parts.size(); ++i)
            EXPECT_LE(parts[i - 1].bottom(), parts[i].top()) << "overlap at " << height;
        for (const QPushButton* button : preview.findChildren<QPushButton*>())
            if (button->isVisible())
                EXPECT_TRUE(preview.rect().contains(QRect(button->mapTo(&preview, QPoint(0, 0)), button->size())))
                    << "button out of sight at " << height;
    }
    qApp->setStyleSheet(QString());
}

}  // namespace preview_test
}  // namespace wg::ui
