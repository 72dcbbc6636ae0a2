#include "ui/common/flow_layout.h"

#include <gtest/gtest.h>

#include <QWidget>

namespace wg::ui {
namespace flow_layout_test {

struct Flow : testing::Test {
    QWidget holder;
    FlowLayout* flow = new FlowLayout(&holder);
    Flow() {
        flow->setContentsMargins(0, 0, 0, 0);
        flow->setSpacing(8);
        for (int i = 0; i < 4; ++i) {
            auto* tool = new QWidget(&holder);
            tool->setFixedSize(100, 36);
            flow->addWidget(tool);
        }
    }
    [[nodiscard]] QRect at(int i) const { return flow->itemAt(i)->geometry(); }
};

TEST_F(Flow, KeepsOneLineWhereItFits) {
    EXPECT_EQ(flow->sizeHint(), QSize(424, 36));  // 4 x 100 and 3 x 8
    EXPECT_EQ(flow->heightForWidth(424), 36);
    flow->setGeometry(QRect(0, 0, 424, 36));
    EXPECT_EQ(at(3), QRect(324, 0, 100, 36));
}

TEST_F(Flow, GoesOnInTheNextLine) {
    EXPECT_EQ(flow->heightForWidth(423), 80);
    EXPECT_EQ(flow->heightForWidth(210), 80);
    EXPECT_EQ(flow->heightForWidth(100), 4 * 36 + 3 * 8);
    flow->setGeometry(QRect(10, 20, 330, 80));
    EXPECT_EQ(at(2), QRect(226, 20, 100, 36));
    EXPECT_EQ(at(3), QRect(10, 64, 100, 36));
}

TEST_F(Flow, LowToolsStandLevelWithHighOnes) {
    flow->itemAt(1)->widget()->setFixedSize(100, 20);
    flow->setGeometry(QRect(0, 0, 424, 36));
    EXPECT_EQ(at(1), QRect(108, 8, 100, 20));
}

TEST_F(Flow, HiddenToolsTakeNoPlace) {
    holder.show();
    flow->itemAt(1)->widget()->hide();
    EXPECT_EQ(flow->sizeHint(), QSize(316, 36));
    flow->setGeometry(QRect(0, 0, 424, 36));
    EXPECT_EQ(at(2), QRect(108, 0, 100, 36));
}

TEST_F(Flow, NoToolIsCutWhateverTheWidth) {
    for (int width = 100; width < 500; width += 7) {
        flow->setGeometry(QRect(0, 0, width, flow->heightForWidth(width)));
        for (int i = 0; i < 4; ++i) {
            EXPECT_EQ(at(i).size(), QSize(100, 36));
            EXPECT_LE(at(i).right(), width);
            EXPECT_LE(at(i).bottom(), flow->heightForWidth(width));
        }
    }
}

}  // namespace flow_layout_test
}  // namespace wg::ui
