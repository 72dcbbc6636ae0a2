#pragma once
// Tools side by side that go on in the next line where the window is too narrow for their words.

#include <QLayout>
#include <QList>

namespace wg::ui {

class FlowLayout : public QLayout {
   public:
    explicit FlowLayout(QWidget* parent = nullptr) : QLayout(parent) {}
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { items_.append(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& area) override;

   private:
    /// Places what is shown, or only finds out how high it gets.
    int arrange(const QRect& area, bool place) const;

    QList<QLayoutItem*> items_;
};

}  // namespace wg::ui
