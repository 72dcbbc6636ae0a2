#pragma once
// The head of a page that shows one of the firm's lists, each kept version by version: which one, and what can be done
// with it as a whole.

#include <QStringList>
#include <QWidget>
#include <functional>
#include <vector>

class QPushButton;

namespace wg::ui {

class CalmCombo;

/// An id from a name: files and jobs name the list by it, so it stays when the name changes. `fallback`: for a name
/// without letters that an id takes.
[[nodiscard]] QString free_id(const QString& label, const QString& fallback, const QStringList& taken);

class VersionsHead : public QWidget {
    Q_OBJECT
   public:
    struct Words {
        QString one;       ///< "Price list"
        QString new_one;   ///< title where the name of a new one is asked for
        QString withdraw;  ///< title where it is asked why
        QString id;        ///< of one whose name makes none
        std::function<QString()> suggested_name;
    };
    struct Line {
        QString id, label;
        bool own = false;  ///< the firm's, not the program's
        bool withdrawn = false;
    };
    explicit VersionsHead(Words words, QWidget* parent = nullptr);
    void show_lines(const std::vector<Line>& lines, const QString& shown);
    /// Of the one that is shown.
    void allow(bool own, bool withdrawn, bool changed);
    [[nodiscard]] CalmCombo* choice() const { return choice_; }

   Q_SIGNALS:
    void chosen(const QString& id);
    void new_asked(const QString& id, const QString& label);
    void read_asked();
    void write_asked();
    void versions_asked();
    void withdraw_asked(const QString& why);
    void discard_asked();
    void save_asked(const QString& note);

   private:
    void ask_new();
    void ask_withdraw();
    void ask_save();

    Words words_;
    QStringList ids_;
    CalmCombo* choice_ = nullptr;
    QPushButton* versions_ = nullptr;
    QPushButton* withdraw_ = nullptr;
    QPushButton* discard_ = nullptr;
    QPushButton* save_ = nullptr;
};

}  // namespace wg::ui
