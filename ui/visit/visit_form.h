#pragma once
// The survey's form: client, visit, place, demand.

#include <QHash>
#include <functional>
#include <utility>

#include "ui/visit/form_builder.h"

class QPushButton;

namespace wg::ui {

class HouseholdForm;
class JobSession;
class RoomsForm;
class SiteForm;
class WaterForm;

class VisitForm : public FormColumn {
    Q_OBJECT
   public:
    explicit VisitForm(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// Puts the cursor into a field by its key (see missing.h); false: no such field.
    bool go_to(const QString& key);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }
    [[nodiscard]] const HouseholdForm* household() const { return household_; }
    [[nodiscard]] WaterForm* water() const { return water_; }

   Q_SIGNALS:
    void draw_room_wanted();
    void customer_asked();
    void room_wanted(const QString& room_id);

   private:
    void build_client();
    void build_visit();
    void build_place();
    void build_horizon();
    void take_horizon(const QByteArray& text, QLabel* problem);
    void build_demand();
    void build_household();
    void build_house();
    void refresh();
    /// Puts a part of the form under a button that folds it away.
    void fold(const QString& key, const QString& title, QWidget* part);
    void take_in(SiteForm* part);

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
    WaterForm* water_ = nullptr;
    std::vector<SiteForm*> parts_;
    std::vector<std::pair<QPushButton*, QWidget*>> folds_;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const Job&)>> shows_;  ///< each brings one field up to date
};

}  // namespace wg::ui
