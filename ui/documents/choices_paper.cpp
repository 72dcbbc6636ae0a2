// The part of a quote that sets the choices on offer beside each other.

#include <algorithm>

#include "core/economy/over_years.h"
#include "ui/common/format.h"
#include "ui/documents/papers.h"
#include "ui/drawing/see_through.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui::paper {
namespace {

constexpr std::size_t most_choices = 3;
constexpr double label_mm = 44.0;
constexpr const char* left_to_pay = marked("Left for you to pay when all is granted");

std::vector<const plan::Plan*> plans_on_offer(const PaperInput& input) {
    std::vector<const plan::Plan*> out{&input.plan};
    for (const auto& other : input.beside) {
        if (other == nullptr || other->choice_id == input.plan.choice_id || out.size() == most_choices) continue;
        out.push_back(other.get());
    }
    return out;
}

/// Where a cell is too narrow the likely range goes on a line of its own, whole.
QString range_unbroken(QString cell) {
    const qsizetype open = cell.indexOf(QLatin1Char('('));
    if (open < 0) return cell;
    const QString range = cell.mid(open).replace(QLatin1Char(' '), QChar(0x00A0));
    return cell.left(open) + range;
}

QString over_range(const economy::OverYears& sums, const QString& currency) {
    return ranged({static_cast<double>(sums.low.minor) / 100.0, static_cast<double>(sums.mid.minor) / 100.0,
                   static_cast<double>(sums.high.minor) / 100.0},
                  currency);
}

QString places_of(const plan::Plan& plan) {
    QStringList names;
    for (const plan::PlacementPlan& placed : plan.placements) {
        const QString name = qs(placed.surface_label);
        if (!names.contains(name)) names += name;
    }
    return names.join(QStringLiteral(", "));
}

QPolygonF polygon_of(const PlaneView& view, const std::vector<Point2>& outline) {
    QPolygonF out;
    for (const Point2& corner : outline)
        out << view.map(corner);
    return out;
}

/// The surface and its plates alone: at this size there is no room for words.
void small_surface(QPainter& painter, const Surface& surface, const plan::Plan& plan, const QRectF& area,
                   const Theme& theme) {
    const PlaneView view = fit_surface(surface, area, 1.0 * mm);
    painter.setPen(QPen(theme.text, firm_rule));
    painter.setBrush(Qt::white);
    painter.drawPolygon(polygon_of(view, surface.outline));
    painter.setPen(QPen(theme.muted, thin_rule));
    painter.setBrush(QBrush(theme.muted, Qt::BDiagPattern));
    for (const KeepOut& kept : surface.keep_outs)
        painter.drawPolygon(polygon_of(view, kept.outline));
    painter.setPen(QPen(theme.accent, 2.0 * firm_rule));
    painter.setBrush(see_through(painter, theme.accent, 0.3, Qt::white));
    for (const plan::PlacementPlan& placed : plan.placements)
        if (placed.surface_id == surface.id) painter.drawPolygon(polygon_of(view, placed.placed.outline));
}

/// Each choice's first surface with its plates, in columns as wide as those of the table below it.
void pictures(Flow& flow, const SharedInput& input, const std::vector<const plan::Plan*>& plans) {
    if (flow.sheet().large_print) return;  // too small to tell anything beside lettering of this size
    struct Small {
        plan::Plan plan;
        std::string surface_id;
    };
    auto small = std::make_shared<std::vector<Small>>();
    for (const plan::Plan* one : plans) {
        Small next{*one, one->placements.empty() ? std::string() : one->placements.front().surface_id};
        small->push_back(std::move(next));
    }
    const Sheet sheet = flow.sheet();
    flow.picture(QStringLiteral("choices"), 30.0 * mm, 0.0,
                 [input, small, sheet](QPainter& painter, const QRectF& frame) {
                     const double column = (frame.width() - label_mm * mm) / static_cast<double>(small->size());
                     for (std::size_t i = 0; i < small->size(); ++i) {
                         const Small& one = (*small)[i];
                         const Surface* surface = find_surface(input->job.site, one.surface_id);
                         if (surface == nullptr || surface->outline.size() < 3) continue;
                         const QRectF area(frame.left() + label_mm * mm + static_cast<double>(i) * column + 1.5 * mm,
                                           frame.top(), column - 3.0 * mm, frame.height());
                         painter.save();
                         painter.setClipRect(area);
                         small_surface(painter, *surface, one.plan, area, sheet.theme());
                         painter.restore();
                     }
                 });
}

struct SideRow {
    QString what;
    QStringList cells;
    bool total = false;
    [[nodiscard]] bool differs() const {
        return std::any_of(cells.begin(), cells.end(), [this](const QString& cell) { return cell != cells.front(); });
    }
};

std::vector<SideRow> rows_of_choices(const PaperInput& input, const std::vector<const plan::Plan*>& plans) {
    const QString none = say("not worked out");
    std::vector<SideRow> rows;
    const auto add = [&](const QString& what, const auto& of, bool total = false) {
        SideRow row{what, {}, total};
        for (const plan::Plan* plan : plans)
            row.cells += range_unbroken(of(*plan));
        rows.push_back(std::move(row));
    };
    const auto in_a_year = [&](const QString& what, const plan::Ranged plan::Figures::*figure, const QString& unit) {
        add(what, [&](const plan::Plan& p) { return p.has_yield ? ranged(p.figures.*figure, unit) : none; });
    };
    add(say("Collectors"), [](const plan::Plan& p) {
        return QStringLiteral("%1 \u00d7 %2").arg(p.placements.size()).arg(qs(p.collector.name));
    });
    add(say("Where"), places_of);
    add(say("Heat pump"), [](const plan::Plan& p) { return qs(p.block.name); });
    add(say("Cylinder"), [](const plan::Plan& p) {
        return QStringLiteral("%1, %2").arg(qs(p.cylinder.name), quantity(p.cylinder.volume_l, QStringLiteral("l")));
    });
    in_a_year(say("Heat used in a year"), &plan::Figures::heat_kwh, QStringLiteral("kWh"));
    in_a_year(say("Electricity in a year"), &plan::Figures::electricity_kwh, QStringLiteral("kWh"));
    add(say("Electricity cost in a year"), [&](const plan::Plan& p) {
        const plan::Ranged& minor = p.figures.running_cost_minor;
        return p.has_yield ? ranged({minor.low / 100.0, minor.mid / 100.0, minor.high / 100.0}, qs(p.currency)) : none;
    });
    if (input.tariffs && input.tariffs->years > 0) {
        add(say("Over %1 years").arg(input.tariffs->years), [&](const plan::Plan& p) {
            const plan::Ranged& minor = p.figures.running_cost_minor;
            return p.has_yield
                       ? over_range(economy::running_over_years(minor.low, minor.mid, minor.high, *input.tariffs),
                                    qs(p.currency))
                       : none;
        });
    }
    add(
        say("Price with tax"),
        [](const plan::Plan& p) { return p.quote ? money(p.quote->gross, qs(p.currency)) : say("no price"); }, true);
    const bool granted = std::any_of(plans.begin(), plans.end(),
                                     [](const plan::Plan* p) { return p->offered && p->offered->granted.minor != 0; });
    if (granted) {
        add(
            say(left_to_pay),
            [](const plan::Plan& p) {
                return p.offered ? money(p.offered->to_bring, qs(p.currency)) : say("no price");
            },
            true);
    }
    return rows;
}

}  // namespace

void choices_beside(Flow& flow, const SharedInput& input) {
    const std::vector<const plan::Plan*> plans = plans_on_offer(*input);
    if (plans.size() < 2) return;
    flow.heading(say("Your choices beside each other"));
    Table table;
    table.whole = true;
    table.columns = {{QString(), label_mm}};
    for (const plan::Plan* plan : plans)
        table.columns.push_back({qs(plan->choice_label), 0.0});
    QStringList differing;
    for (const SideRow& row : rows_of_choices(*input, plans)) {
        // What differs is what there is to decide: it stands out in bold.
        const bool differs = row.differs();
        // What is left to pay follows the price.
        if (differs && row.what != say(left_to_pay)) differing += inside_a_sentence(row.what);
        table.rows.push_back(
            {QStringList{row.what} + row.cells, row.total || differs ? Row::Kind::total : Row::Kind::plain});
    }
    const auto whole = [&](Flow& part) {
        pictures(part, input, plans);
        part.table(table);
    };
    flow.keep(std::min(flow.height_of(whole), flow.full_height()));
    whole(flow);
    flow.paragraph(differing.isEmpty() ? say("They do not differ in any of this.")
                                       : say("They differ in: %1.").arg(differing.join(QStringLiteral(", "))));
    flow.paragraph(say("This quote is for “%1”. For another one, tell us: you get the same in writing.")
                       .arg(qs(input->plan.choice_label)));
    for (const plan::Plan* plan : plans) {
        if (plan->stopped())
            flow.caution(Sign::stop, say("Not to be issued: %1 has a stop").arg(qs(plan->choice_label)),
                         say("Something in this choice must be changed before it is offered."));
    }
}

}  // namespace wg::ui::paper
