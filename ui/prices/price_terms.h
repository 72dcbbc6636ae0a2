#pragma once
// What a price list holds beside its items: days of validity, labour and tasks.

#include <QWidget>

#include "core/parts/prices.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class NumberField;
class TextField;

class PriceTerms : public QWidget {
    Q_OBJECT
   public:
    explicit PriceTerms(QWidget* parent = nullptr);
    void set_list(const parts::PriceList& list, bool editable);
    /// Puts what stands in the fields into the list; the items stay.
    void write_to(parts::PriceList& list) const;

    [[nodiscard]] TextField* label_field() const { return label_; }
    [[nodiscard]] TextField* from_field() const { return from_; }
    [[nodiscard]] TextField* to_field() const { return to_; }
    [[nodiscard]] NumberField* labour_field() const { return labour_; }
    [[nodiscard]] QTableWidget* tasks() const { return tasks_; }

   Q_SIGNALS:
    void edited();
    void refused(const QString& text);

   private:
    QWidget* make_fields();
    void fill_tasks();
    void take_task_cell(int row, int column);

    parts::PriceList list_;
    bool editable_ = false;
    bool filling_ = false;
    TextField* label_ = nullptr;
    TextField* from_ = nullptr;
    TextField* to_ = nullptr;
    NumberField* labour_ = nullptr;
    TextField* labour_tax_ = nullptr;
    QTableWidget* tasks_ = nullptr;
    QLabel* others_ = nullptr;
};

}  // namespace wg::ui
