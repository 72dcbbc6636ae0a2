#pragma once
// Blocks that flow down the pages: headings, paragraphs, tables whose header comes again after a page break, drawings,
// cautions, steps to tick and places to sign.

#include <QImage>
#include <QSizeF>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

#include "ui/documents/flow_measures.h"
#include "ui/documents/sheet.h"
#include "ui/documents/signs.h"

namespace wg::ui::paper {

/// What stands on every page round the body.
struct Furniture {
    QStringList firm;  ///< lines of the firm's block, name first
    QImage logo;    ///< in the block's upper left corner, within `measures::logo_width` by `logo_height`; may be null
    QString title;  ///< of the paper
    QString job;    ///< number and revision
    QString choice;
    QString foot;         ///< what this print was made from
    QStringList below{};  ///< the firm's numbers, over the foot of every page, as many lines as they need
    QString headline;     ///< a sentence under the head of every page; may be empty
    QString mark;         ///< "mark 3FA9-07B2": what this print is told by; may be empty
    QString code;         ///< the same to be scanned; empty: no code
    Sheet sheet;
    QStringList marks;  ///< "Not to be issued: has a stop", "Invented data": ruled, on every page
};

struct Column {
    QString title;
    double width_mm = 0.0;  ///< 0: shares what is left with the other zeros
    bool right = false;     ///< figures
    bool tick = false;      ///< holds a box to tick
};

struct Row {
    enum class Kind { plain, group, total };
    QStringList cells;
    Kind kind = Kind::plain;
    std::vector<std::size_t> struck{};  ///< columns whose words are struck through
};

struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
    double least_row_mm = 0.0;      ///< taller where something is written in by hand
    bool grid = false;              ///< upright rules too, for forms
    double size_pt = body_pt;       ///< of its rows
    bool whole = false;             ///< goes to a new page rather than be split, where it fits one
    std::size_t last_together = 0;  ///< so many last rows go to a new page rather than be parted: sums
};

class Flow {
   public:
    explicit Flow(Furniture furniture);

    [[nodiscard]] const Sheet& sheet() const { return furniture_.sheet; }
    [[nodiscard]] double body_width() const { return sheet().body_width(); }
    /// Of where the next block goes: less than the body's in one of two parts beside each other.
    [[nodiscard]] double room() const { return room_; }

    /// Headings wait for the block that follows and go to a new page together with it.
    void heading(const QString& text, double size_pt = 12.0);
    void subheading(const QString& text);
    void paragraph(const QString& text, const Style& style = {});
    void bullet(const QString& text, const Style& style = {});
    void table(const Table& table);
    /// Pairs of what and its value, in one or two pairs of columns; an empty value leaves a line to write on.
    void pairs(const std::vector<std::pair<QString, QString>>& entries, bool two_columns = true, double label_mm = 46.0,
               double size_pt = body_pt);
    /// Two parts beside each other on one page, the left one with this share of the width; below each other in large
    /// print and where they are higher than a page. A part is laid out more than once.
    using Part = std::function<void(Flow&)>;
    void side_by_side(double left_share, const Part& left, const Part& right);
    /// What a part takes across the whole width; more than a page where it does not fit one.
    [[nodiscard]] double height_of(const Part& part) const { return part_height(part, x_, room_); }
    void caution(Sign sign, const QString& title, const QString& text);
    struct Notice {
        Sign sign = Sign::caution;
        QString title;
        QString text;
        double size_pt = body_pt;
    };
    void caution(const Notice& notice);
    /// The same, two beside each other.
    void cautions(const std::vector<Notice>& notices);
    /// A step, or with number 0 the title of those that follow.
    struct Work {
        int number = 0;
        QString text;
        QString why;
        QString amount{};  ///< of something to load: stands where steps have their number
    };
    /// Number of what is ticked but not counted.
    static constexpr int unnumbered = -1;
    /// Steps in two columns, down the left one first; in large print one below the other. `amount_mm`: room for the
    /// number or amount before each.
    void work(const std::vector<Work>& steps, double amount_mm = 4.2);
    /// Work stops here until somebody has signed.
    void hold_point(const QString& title, const QString& text);
    /// Lines to sign on, one for each role.
    void sign_off(const QString& title, const QString& text, const QStringList& roles);
    /// `caption` stands below, on the same page.
    void picture(const QString& name, double height, double units_per_m,
                 std::function<void(QPainter&, const QRectF&)> paint, const QString& caption = {});
    /// An equation, its parts one below the other, set apart from the text.
    void formula(const QStringList& parts);
    /// Keeps equation, table and the words below it on one page, where they fit one.
    void keep_with(const Table& table, const QStringList& formula_parts, const QString& below, const Style& style);
    /// The print's code to scan with `words` beside it; nothing without one.
    void code(const QStringList& words);
    void gap(double height_mm);
    void page_break();
    /// Starts a new page unless this much height is left; headings that wait come first.
    void keep(double height);
    [[nodiscard]] double left() const;         ///< height left on this page, below headings that wait
    [[nodiscard]] double full_height() const;  ///< of an empty following page's body

    /// The pages with header, marks, foot and "page n of m". The flow is used up.
    [[nodiscard]] std::vector<Page> finish();

   private:
    struct Cell {
        QStringList lines;
        Style style;
    };
    [[nodiscard]] double body_top(std::size_t page_index) const;
    [[nodiscard]] double body_bottom() const;
    Page& page() { return pages_.back(); }
    struct Waiting {
        QStringList lines;
        QString text;
        bool sub = false;
        Style style{};
    };
    [[nodiscard]] bool at_top() const;
    [[nodiscard]] double height_of(const Waiting& heading) const;
    void set_headings();
    void new_page();
    void letter(double x, double top, const QString& text, const Style& style, double width = 0.0, bool right = false);
    void lines_at(double x, double& top, const QStringList& lines, const Style& style);
    void header_row(const Table& table, const std::vector<double>& widths);
    [[nodiscard]] std::vector<Cell> cells_of(const Table& table, const std::vector<double>& widths,
                                             const Row& row) const;
    [[nodiscard]] double height_of(const Table& table, const std::vector<double>& widths, const Row& row) const;
    void body_row(const Table& table, const std::vector<double>& widths, const Row& row, bool ruled = true);
    void notice_at(double x, double width, double height, const Notice& notice);
    [[nodiscard]] double notice_height(double width, const Notice& notice) const;
    void dress(Page& page, std::size_t index, std::size_t count) const;

    struct WorkRoom {
        double width = 0.0;
        double amount = 0.0;
    };
    [[nodiscard]] RunOn work_words(const WorkRoom& room, const Work& work) const;
    [[nodiscard]] double work_height(const WorkRoom& room, const Work& work) const;
    void work_at(double x, const WorkRoom& room, const Work& work);
    void work_columns(const std::vector<Work>& steps, double amount_mm);
    [[nodiscard]] double part_height(const Part& part, double x, double width) const;
    void banded_table(const std::vector<Table>& bands);
    [[nodiscard]] double header_height(const Table& table, const std::vector<double>& widths) const;

    [[nodiscard]] double mark_room() const;
    /// Of the logo as it is drawn; none: an empty size.
    [[nodiscard]] QSizeF logo_size() const;
    /// In large print the lines stand below the logo: this much lower.
    [[nodiscard]] double logo_over_lines() const;
    [[nodiscard]] double logo_room() const;  ///< that the firm's lines and marks keep free on the first page
    /// The marks stand in the head's first line, where firm and number leave them room.
    [[nodiscard]] bool marks_in_head() const;
    [[nodiscard]] Style bold_small() const;
    void code_at_foot(Page& page, double body_end);

    Furniture furniture_;
    measures::Type type_;
    QStringList below_;  ///< lines over the foot
    std::vector<Page> pages_;
    std::vector<double> ends_;  ///< of the bodies of finished pages
    std::size_t code_page_ = static_cast<std::size_t>(-1);
    std::vector<Waiting> waiting_;
    double y_ = 0.0;
    // Where blocks go: the whole body, or one of two parts beside each other.
    double x_ = margin;
    double room_ = 0.0;
};

}  // namespace wg::ui::paper
