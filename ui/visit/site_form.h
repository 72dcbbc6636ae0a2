#pragma once
// A part of the visit's form about members of the site: each field is bound to its member, tried against the job's own
// rules and put into the job by one verb.

#include <cmath>
#include <type_traits>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

namespace wg::ui {

class JobSession;

class SiteForm : public FormColumn {
    Q_OBJECT
   public:
    /// Puts the part of the changed site that this form is about into the job.
    using Verb = std::function<void(JobSession&, const Site&)>;
    SiteForm(Verb verb, QWidget* parent);
    virtual void set_session(JobSession* session) { session_ = session; }
    void show_job(const Job& job);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }
    [[nodiscard]] const QHash<QString, QWidget*>& fields() const { return fields_; }

   protected:
    using Take = std::function<void(Site&)>;

    /// Puts a change into the job; the reason in words when the job's rules refuse it.
    QString change(const Take& take);

    // `of` gives the member of a site, const or not: a double, an int or an optional double.
    template <class Of>
    NumberField* bound_number(const QString& key, const QString& label, const QString& unit,
                              const NumberField::Range& range, const QString& tip, Of of) {
        NumberField* field = number(label, unit, range, [this, key, of](std::optional<double> value) {
            const QString why = change([&](Site& site) {
                using Value = std::remove_reference_t<decltype(of(site))>;
                if constexpr (std::is_same_v<Value, std::optional<double>>)
                    of(site) = value;
                else if constexpr (std::is_integral_v<Value>)
                    of(site) = value ? static_cast<Value>(std::lround(*value)) : of(site);
                else
                    of(site) = value.value_or(of(site));
            });
            if (auto* refused = qobject_cast<NumberField*>(fields_.value(key)); refused != nullptr && !why.isEmpty())
                refused->show_problem(why);
        });
        field->setToolTip(tip);
        fields_.insert(key, field);
        shows_.push_back([field, of](const Job& job) {
            using Value = std::remove_cvref_t<decltype(of(job.site))>;
            if constexpr (std::is_same_v<Value, std::optional<double>>)
                field->set_value(of(job.site));
            else
                field->set_value(static_cast<double>(of(job.site)));
        });
        return field;
    }
    template <class E, class Of>
    CalmCombo* bound_word(const QString& key, const QString& label, const QString& tip, Of of) {
        CalmCombo* combo = words_of<E>(label, [this, of](E value) { change([&](Site& site) { of(site) = value; }); });
        combo->setToolTip(tip);
        fields_.insert(key, combo);
        shows_.push_back([combo, of](const Job& job) { combo->show_data(QString::fromLatin1(key_of(of(job.site)))); });
        return combo;
    }
    template <class Of>
    QCheckBox* bound_check(const QString& key, const QString& label, const QString& tip, Of of) {
        QCheckBox* box = check(label, [this, of](bool on) { change([&](Site& site) { of(site) = on; }); });
        box->setToolTip(tip);
        fields_.insert(key, box);
        shows_.push_back([box, of](const Job& job) { show_checked(box, of(job.site)); });
        return box;
    }

    JobSession* session_ = nullptr;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const Job&)>> shows_;  ///< each brings one field up to date

   private:
    Verb verb_;
};

}  // namespace wg::ui
