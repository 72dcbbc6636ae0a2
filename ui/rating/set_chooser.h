#pragma once
// The row on top of the rating dialog: which set is put into the chamber, and how.

#include <QWidget>
#include <memory>
#include <string>

#include "core/plan/reference.h"
#include "core/rating/rating.h"

class QDoubleSpinBox;
class QHBoxLayout;
class QSpinBox;

namespace wg::ui {

class CalmCombo;

/// What the row shows first; ids that the catalogue does not hold give its first items.
struct RatingSet {
    std::string collector_id, block_id, cylinder_id;
    int collectors = 1;
    double set_point_c = 55.0;
    double hysteresis_k = 6.0;
};

class SetChooser : public QWidget {
    Q_OBJECT
   public:
    SetChooser(std::shared_ptr<const plan::Reference> reference, const RatingSet& first, QWidget* parent = nullptr);

    /// As chosen; without refrigerant when there is no table for it. Lives no longer than reference().
    [[nodiscard]] rating::Item item() const;
    [[nodiscard]] rating::Chamber chamber() const;
    [[nodiscard]] const std::shared_ptr<const plan::Reference>& reference() const { return reference_; }
    [[nodiscard]] bool invented() const;

    void set_set_point(double set_point_c);
    void set_air_speed(double air_speed_m_s);
    /// Items of an equipment file beside the catalogue's, the first of each kind chosen. Refused whole when an id is
    /// taken.
    [[nodiscard]] Result<bool> add_equipment(const std::string& text, const std::string& file_name);

   Q_SIGNALS:
    void changed();

   private:
    void fill();
    void add_field(QHBoxLayout* row, const QString& words, QWidget* field, int stretch);

    std::shared_ptr<const plan::Reference> reference_;
    double hysteresis_k_;
    CalmCombo* collector_ = nullptr;
    QSpinBox* count_ = nullptr;
    CalmCombo* block_ = nullptr;
    CalmCombo* cylinder_ = nullptr;
    QDoubleSpinBox* set_point_ = nullptr;
    QDoubleSpinBox* air_speed_ = nullptr;
};

}  // namespace wg::ui
