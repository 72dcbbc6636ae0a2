#pragma once
// Entry of one reading by keyboard or large buttons: figures with their units, what goes with them, instrument and
// person. Nothing is clamped: a figure that cannot be meant is refused in words, with what was typed left standing.

#include <QDateTime>
#include <QWidget>
#include <functional>
#include <map>
#include <optional>
#include <vector>

#include "core/quantity/result.h"
#include "core/quantity/site_units.h"
#include "ui/fitting/instrument_book.h"
#include "ui/fitting/work_stages.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace wg::ui {

class NumberPad;
class SignaturePad;
class UnitSwitch;

/// Keeps bytes in the firm's store; their SHA-256.
using KeepBytes = std::function<Result<std::string>(const QByteArray& bytes)>;

class ReadingForm : public QWidget {
    Q_OBJECT
   public:
    explicit ReadingForm(QWidget* parent = nullptr);

    void set_source(const SettingSource& source);
    void set_keep(KeepBytes keep) { keep_ = std::move(keep); }
    void set_occasion(Occasion occasion) { occasion_ = occasion; }
    /// Readings that may be corrected; instruments and people are learned from them.
    void set_record(const std::vector<Reading>& record);
    /// What the services of the plan are called, for the entry that one is done.
    void set_services(const std::vector<plan::ServiceDue>& services);
    void choose_kind(ReadingKind kind);
    /// The entry that a part of the work wants. `expected`: shown beside the field. `any_kind`: another can be chosen.
    void choose(const Want& want, const QString& expected, bool any_kind = false);
    void correct(const Reading& reading);  ///< takes over what the entry says, to be changed
    /// What is in the form, ready to be added; nullopt when something is missing, then said in the form. `now`: ISO
    /// 8601 with offset, for an entry without a time of its own.
    [[nodiscard]] std::optional<Reading> reading(const QString& now);
    /// After an entry: keeps who and with what for the next one.
    void entered(const Reading& reading);
    void clear_figures();
    void start();  ///< puts the cursor where the first figure is typed
    void set_photograph(const QString& path);
    [[nodiscard]] InstrumentBook& book() { return book_; }
    [[nodiscard]] SignaturePad& signature() { return *signature_; }
    [[nodiscard]] ReadingKind kind() const;
    void say(const QString& text);
    [[nodiscard]] QString problem() const;

   Q_SIGNALS:
    void add_asked();
    void back_asked();

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

   private:
    struct Row {
        QWidget* label = nullptr;
        QWidget* field = nullptr;
        QWidget* unit = nullptr;
    };
    void build_fields();
    void build_kept();
    QWidget* build_answer();
    QLineEdit* line(const QString& name);
    Row add_row(const QString& label, QWidget* field, QWidget* unit = nullptr);
    void show_row(const Row& row, bool shown);
    void refresh_fields();
    void refresh_echo();
    void refresh_instrument();
    void answer(bool yes);
    void next_field();
    std::optional<double> figure_of(QLineEdit& edit, const UnitSwitch& unit, const QString& name, double least,
                                    double most, int decimals);
    bool take_attachment(Reading& reading);
    bool take_kept(Reading& reading, const QString& now);
    [[nodiscard]] QString subject_key(const QString& shown) const;

    InstrumentBook book_;
    SettingSource source_;
    KeepBytes keep_;
    Occasion occasion_ = Occasion::fitting;
    std::map<SiteQuantity, QString> units_;
    std::vector<plan::ServiceDue> services_;
    std::optional<bool> answer_;
    QString photograph_;
    QString fitter_;  ///< who enters, while a client signs

    QLabel* title_ = nullptr;
    QComboBox* kind_ = nullptr;
    QLabel* expected_ = nullptr;
    QGridLayout* grid_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    Row kind_row_, value_row_, second_row_, indoors_row_, plate_row_, subject_row_, answer_row_, signature_row_,
        photo_row_, note_row_, instrument_row_, calibrated_row_, corrects_row_;
    QLabel* who_label_ = nullptr;
    QLabel* at_label_ = nullptr;
    QLineEdit* value_ = nullptr;
    UnitSwitch* unit_ = nullptr;
    QLabel* echo_ = nullptr;
    QLineEdit* second_ = nullptr;
    UnitSwitch* second_unit_ = nullptr;
    QLineEdit* indoors_ = nullptr;
    UnitSwitch* indoors_unit_ = nullptr;
    QComboBox* plate_ = nullptr;
    QComboBox* subject_ = nullptr;
    QPushButton* yes_ = nullptr;
    QPushButton* no_ = nullptr;
    SignaturePad* signature_ = nullptr;
    QPushButton* photo_ = nullptr;
    QComboBox* instrument_ = nullptr;
    QLineEdit* calibrated_ = nullptr;
    QLabel* calibrated_words_ = nullptr;
    QComboBox* who_ = nullptr;
    QLineEdit* at_ = nullptr;
    QLineEdit* note_ = nullptr;
    QComboBox* corrects_ = nullptr;
    QLabel* problem_ = nullptr;
    NumberPad* pad_ = nullptr;
    QPushButton* add_ = nullptr;
};

/// "9:40" of today, "2026-11-28 09:40", or empty for now; nullopt: none of these, or still to come.
[[nodiscard]] std::optional<QDateTime> time_of(const QString& typed, const QDateTime& now);

}  // namespace wg::ui
