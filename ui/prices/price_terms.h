#pragma once
// What a price list holds beside its items: days, labour, what makes it slower, travel, discounts, taxes, energy.

#include <QObject>
#include <QPair>
#include <QVector>
#include <functional>
#include <vector>

#include "core/parts/prices.h"
#include "ui/prices/terms_table.h"

class QPushButton;

namespace wg::ui {

class NumberField;
class TextField;

/// The parts of the page that show terms, and the list as it stands in them.
class PriceTerms : public QObject {
    Q_OBJECT
   public:
    /// `parent`: of the pages. `items`: those of the list on screen, which rates, groups and ids are checked with.
    PriceTerms(QWidget* parent, std::function<const std::vector<parts::PriceItem>&()> items);
    void set_list(const parts::PriceList& list, bool editable);
    /// What a row that was begun still needs, in words; empty: every row is part of the list.
    [[nodiscard]] QString unfinished() const;
    /// Takes the mark of invented prices away.
    void set_checked();
    /// Puts what stands in the fields into the list; the items stay, their costs follow the discount groups.
    void write_to(parts::PriceList& list) const;
    /// What the list calls them.
    [[nodiscard]] const std::vector<parts::DiscountGroup>& discount_groups() const { return list_.discount_groups; }

    [[nodiscard]] const QVector<QPair<QString, QWidget*>>& pages() const { return pages_; }
    [[nodiscard]] TextField* label_field() const { return label_; }
    [[nodiscard]] TextField* from_field() const { return from_; }
    [[nodiscard]] TextField* to_field() const { return to_; }
    [[nodiscard]] NumberField* labour_field() const { return labour_; }
    [[nodiscard]] NumberField* labour_cost_field() const { return labour_cost_; }
    [[nodiscard]] QPushButton* travel_button() const { return travel_button_; }
    [[nodiscard]] QTableWidget* tasks() const { return table(0)->table(); }
    enum Table {
        task_table,
        rate_table,
        height_table,
        covering_table,
        access_table,
        group_table,
        tax_table,
        tariff_table
    };
    [[nodiscard]] TermsTable* table(int which) const { return tables_[static_cast<std::size_t>(which)]; }
    /// Of one of the fields that have no access of their own, by its name.
    [[nodiscard]] QObject* field(const QString& name) const;

   Q_SIGNALS:
    void edited();
    void refused(const QString& text);

   private:
    /// A field of the pages: shows what the list has.
    struct Shown {
        QWidget* widget;
        std::function<void(const parts::PriceList&)> show;
    };
    using Change = TermsTable::Change;
    using TextOf = std::function<std::string*(parts::PriceList&)>;  ///< null: the list has no such thing
    using NumberOf = std::function<double(const parts::PriceList&)>;
    using TakeNumber = std::function<void(parts::PriceList&, double)>;
    void make_labour_page(QWidget* parent);
    void make_travel_page(QWidget* parent);
    void make_tax_page(QWidget* parent);
    TextField* add_text(QWidget* box, const QString& words, const TextOf& of);
    NumberField* add_amount(QWidget* box, const QString& words,
                            std::function<std::optional<Money>(const parts::PriceList&)> of,
                            std::function<void(parts::PriceList&, std::optional<Money>)> take, bool optional = false);
    NumberField* add_number(QWidget* box, const QString& words, const QString& unit, double least, double most,
                            int decimals, const NumberOf& of, const TakeNumber& take);
    TermsTable* add_table(TermsRows rows, QWidget* parent);
    bool offer(const Change& change);
    void refresh();

    std::function<const std::vector<parts::PriceItem>&()> items_;
    parts::PriceList list_;  ///< without the items
    bool editable_ = false;
    QVector<QPair<QString, QWidget*>> pages_;
    std::vector<Shown> shown_;
    std::vector<TermsTable*> tables_;
    std::vector<NumberField*> amounts_;  ///< in the list's currency
    std::vector<QWidget*> of_travel_;
    TextField* label_ = nullptr;
    TextField* from_ = nullptr;
    TextField* to_ = nullptr;
    NumberField* labour_ = nullptr;
    NumberField* labour_cost_ = nullptr;
    QPushButton* travel_button_ = nullptr;
};

}  // namespace wg::ui
