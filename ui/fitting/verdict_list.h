#pragma once
// What the readings say: each verdict with shape, word and figures, what to do now, the course, what was expected, and
// likely causes.

#include <QScrollArea>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "ui/common/entry_breaks.h"
#include "ui/common/mark.h"

class QVBoxLayout;

namespace wg::ui {

/// Words of the core as people write them: signs of units, and stamps as day and time.
[[nodiscard]] QString on_screen(const std::string& core_words);
/// A band with its unit as people write it, and with as many more decimals as it takes to see that a reading is
/// outside.
[[nodiscard]] commissioning::Band on_screen(commissioning::Band band);
[[nodiscard]] Mark mark_of(commissioning::Verdict verdict);

/// The course of the readings of one assessment.
class CurveView : public QWidget {
    Q_OBJECT
   public:
    explicit CurveView(commissioning::Curve curve, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

   protected:
    void paintEvent(QPaintEvent* event) override;

   private:
    commissioning::Curve curve_;
};

/// What readings should be, each with a mark for what it was.
class BandsView : public QWidget {
    Q_OBJECT
   public:
    explicit BandsView(std::vector<commissioning::Band> bands, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

   protected:
    void paintEvent(QPaintEvent* event) override;

   private:
    std::vector<commissioning::Band> bands_;
};

/// The verdicts one below the other, without a scroll bar of their own.
class VerdictColumn : public QWidget {
    Q_OBJECT
   public:
    explicit VerdictColumn(QWidget* parent = nullptr);
    /// `none`: what to say when there are none. What rests on one of the entries in `breaks` says so.
    void set_assessments(const std::vector<commissioning::Assessment>& assessments, const QString& none,
                         const EntryBreaks& breaks = {});
    /// All words shown, for tests and for copying.
    [[nodiscard]] QString text() const { return lines_.join(QLatin1Char('\n')); }

   Q_SIGNALS:
    void working_asked(const QString& key);

   private:
    QWidget* label(const QString& text, const QString& role);
    void add(const commissioning::Assessment& assessment, const EntryBreaks& breaks);

    QVBoxLayout* outer_ = nullptr;
    QWidget* inside_ = nullptr;
    QVBoxLayout* column_ = nullptr;
    QStringList lines_;
};

class VerdictList : public QScrollArea {
    Q_OBJECT
   public:
    explicit VerdictList(QWidget* parent = nullptr);
    void set_assessments(const std::vector<commissioning::Assessment>& assessments, const EntryBreaks& breaks = {});
    [[nodiscard]] QString text() const { return column_->text(); }

   Q_SIGNALS:
    void working_asked(const QString& key);

   private:
    VerdictColumn* column_ = nullptr;
};

}  // namespace wg::ui
