#pragma once
// How the household draws and what the set is asked to do by clock, tariff, sun, holidays and against legionella.

#include "ui/visit/form_builder.h"

namespace wg::ui {

class JobSession;

class HouseholdForm : public FormColumn {
    Q_OBJECT
   public:
    explicit HouseholdForm(QWidget* parent = nullptr);
    void set_session(JobSession* session) { session_ = session; }
    void show_job(const Job& job);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }

   private:
    using Take = std::function<void(Demand&)>;

    void build_draws();
    void build_hygiene();
    void build_loop();
    void build_clock();
    void build_prices();
    void build_sun();
    void build_holidays();
    /// Puts a change into the job; the reason in words when the job's rules refuse it.
    QString change(const Take& take);
    template <class E, class Of>
    CalmCombo* bound_word(const QString& key, const QString& label, Of of);
    template <class Of>
    NumberField* bound_number(const QString& key, const QString& label, const QString& unit,
                              const NumberField::Range& range, Of of, double shown = 1.0);
    /// A kWh in the currency of the job's price list; kept in hundredths of it.
    template <class Of>
    NumberField* bound_price(const QString& key, const QString& label, Of of);
    template <class Of>
    QCheckBox* bound_check(const QString& key, const QString& label, Of of);
    /// Text read by `read` and written by text_of; what is not understood is said below the field.
    template <class Of, class Read>
    TextField* bound_list(const QString& key, const QString& label, const QString& example, Of of, Read read);

    JobSession* session_ = nullptr;
    QHash<QString, QWidget*> fields_;
    std::vector<NumberField*> prices_;
    std::vector<std::function<void(const Demand&)>> shows_;
};

}  // namespace wg::ui
