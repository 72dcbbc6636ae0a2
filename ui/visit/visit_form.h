#pragma once
// The survey's form: client, visit, place, demand.

#include <QHash>
#include <functional>

#include "ui/visit/form_builder.h"

namespace wg::ui {

class HouseholdForm;
class JobSession;

class VisitForm : public FormColumn {
    Q_OBJECT
   public:
    explicit VisitForm(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// Puts the cursor into a field by its key (see missing.h); false: no such field.
    bool go_to(const QString& key);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }
    [[nodiscard]] const HouseholdForm* household() const { return household_; }

   private:
    void build_client();
    void build_visit();
    void build_place();
    void build_horizon();
    void take_horizon(const QByteArray& text, QLabel* problem);
    void build_demand();
    void build_household();
    void refresh();

    /// Number of a value struct of the job, refused when the job's rules say so.
    template <class T>
    NumberField* bound_number(const QString& key, const QString& label, const QString& unit,
                              const NumberField::Range& range, T Job::*part, double T::*member,
                              void (*verb)(JobSession&, const T&, const QString&));
    template <class T>
    TextField* bound_text(const QString& key, const QString& label, T Job::*part, std::string T::*member,
                          void (*verb)(JobSession&, const T&, const QString&));
    void survey_note(const QString& key, const QString& label, std::string Survey::*member);
    NumberField* location_number(const QString& key, const QString& label, const QString& unit,
                                 const NumberField::Range& range, double Location::*member);

    JobSession* session_ = nullptr;
    HouseholdForm* household_ = nullptr;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const Job&)>> shows_;  ///< each brings one field up to date
};

}  // namespace wg::ui
