#include "core/rating/least_squares.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

#include "core/rating/parallel.h"

namespace wg::rating {

namespace {

using Vector = std::vector<double>;

double sum_of_squares(const Vector& r) {
    double sum = 0.0;
    for (const double v : r)
        sum += v * v;
    return sum;
}

/// Solves the symmetric system in place by Gaussian elimination with pivots; false when singular.
bool solve(std::vector<Vector>& a, Vector& b) {
    const std::size_t n = b.size();
    for (std::size_t k = 0; k < n; ++k) {
        std::size_t pivot = k;
        for (std::size_t i = k + 1; i < n; ++i)
            if (std::abs(a[i][k]) > std::abs(a[pivot][k])) pivot = i;
        if (!(std::abs(a[pivot][k]) > 1e-14)) return false;
        std::swap(a[k], a[pivot]);
        std::swap(b[k], b[pivot]);
        for (std::size_t i = k + 1; i < n; ++i) {
            const double factor = a[i][k] / a[k][k];
            for (std::size_t j = k; j < n; ++j)
                a[i][j] -= factor * a[k][j];
            b[i] -= factor * b[k];
        }
    }
    for (std::size_t k = n; k-- > 0;) {
        for (std::size_t j = k + 1; j < n; ++j)
            b[k] -= a[k][j] * b[j];
        b[k] /= a[k][k];
    }
    return true;
}

class Search {
   public:
    Search(const Residuals& residuals, Vector start, int most, const GoOn& go_on)
        : residuals_(residuals), most_(most), go_on_(go_on) {
        for (double& v : start)
            v = std::clamp(v, 0.0, 1.0);
        best.x = std::move(start);
        best.residuals = residuals_(best.x);
        best.evaluations = 1;
        best.cost = sum_of_squares(best.residuals);
    }

    void descend(double difference) {
        double damping = 1e-3;
        int idle = 0;
        while (may_go_on() && idle < 2) {
            const double before = best.cost;
            const std::vector<Vector> columns = slopes(difference);
            bool moved = false;
            while (!moved && damping < 1e6 && may_go_on()) {
                moved = take_step(columns, damping);
                damping = moved ? std::max(damping * 0.2, 1e-9) : damping * 5.0;
            }
            if (!moved) return;
            idle = best.cost > 0.999 * before ? idle + 1 : 0;
        }
    }

    void compass(double step, double least) {
        while (step > least && may_go_on()) {
            bool moved = false;
            for (std::size_t i = 0; i < best.x.size() && may_go_on(); ++i) {
                std::vector<Vector> ways;
                for (const double way : {step, -step}) {
                    Vector x = best.x;
                    x[i] = std::clamp(x[i] + way, 0.0, 1.0);
                    if (x[i] != best.x[i]) ways.push_back(std::move(x));
                }
                // Both ways at once, though the second counts only where the first does not help.
                std::vector<Vector> found = evaluate(ways);
                for (std::size_t k = 0; k < found.size(); ++k)
                    if (keep(std::move(ways[k]), std::move(found[k]))) {
                        moved = true;
                        break;
                    }
            }
            if (!moved) step *= 0.5;
        }
    }

    Minimum best;

   private:
    static constexpr double negligible = 1e-8;

    bool may_go_on() {
        if (!best.stopped && go_on_ && !go_on_(best)) best.stopped = true;
        return !best.stopped && best.evaluations < most_ && best.cost > negligible;
    }

    /// At all points at once; nothing when stopped meanwhile.
    std::vector<Vector> evaluate(const std::vector<Vector>& points) {
        std::vector<Vector> out(points.size());
        const bool all = for_each_index(
            points.size(), [&](std::size_t i) { out[i] = residuals_(points[i]); },
            [&] { return !go_on_ || go_on_(best); });
        best.evaluations += static_cast<int>(points.size());
        if (!all) {
            best.stopped = true;
            out.clear();
        }
        return out;
    }

    bool keep(Vector x, Vector r) {
        const double cost = sum_of_squares(r);
        if (!(cost < best.cost)) return false;
        best.x = std::move(x);
        best.residuals = std::move(r);
        best.cost = cost;
        return true;
    }

    std::vector<Vector> slopes(double difference) {
        std::vector<Vector> points;
        for (std::size_t i = 0; i < best.x.size(); ++i) {
            Vector low = best.x;
            Vector high = best.x;
            low[i] = std::max(0.0, low[i] - difference);
            high[i] = std::min(1.0, high[i] + difference);
            points.push_back(std::move(low));
            points.push_back(std::move(high));
        }
        const std::vector<Vector> found = evaluate(points);
        std::vector<Vector> columns;
        for (std::size_t i = 0; 2 * i + 1 < found.size(); ++i) {
            const double span = points[2 * i + 1][i] - points[2 * i][i];
            Vector column = found[2 * i + 1];
            for (std::size_t k = 0; k < column.size(); ++k)
                column[k] = (column[k] - found[2 * i][k]) / span;
            columns.push_back(std::move(column));
        }
        return columns;
    }

    bool take_step(const std::vector<Vector>& columns, double damping) {
        const std::size_t n = columns.size();  // none when stopped
        const auto product = [](const Vector& a, const Vector& b) {
            double sum = 0.0;
            for (std::size_t k = 0; k < a.size(); ++k)
                sum += a[k] * b[k];
            return sum;
        };
        // A variable on a face that wants to leave the cube stays.
        std::vector<std::size_t> free;
        for (std::size_t i = 0; i < n; ++i) {
            const double uphill = product(columns[i], best.residuals);
            const bool held = (best.x[i] <= 0.0 && uphill > 0.0) || (best.x[i] >= 1.0 && uphill < 0.0);
            if (!held) free.push_back(i);
        }
        if (free.empty()) return false;
        std::vector<Vector> a(free.size(), Vector(free.size()));
        Vector b(free.size());
        for (std::size_t i = 0; i < free.size(); ++i) {
            for (std::size_t j = 0; j < free.size(); ++j)
                a[i][j] = product(columns[free[i]], columns[free[j]]);
            a[i][i] += damping * (a[i][i] + 1e-3);
            b[i] = -product(columns[free[i]], best.residuals);
        }
        if (!solve(a, b)) return false;
        Vector x = best.x;
        for (std::size_t i = 0; i < free.size(); ++i)
            x[free[i]] = std::clamp(x[free[i]] + b[i], 0.0, 1.0);
        if (x == best.x) return false;
        std::vector<Vector> found = evaluate({x});
        return !found.empty() && keep(std::move(x), std::move(found.front()));
    }

    const Residuals& residuals_;
    int most_;
    const GoOn& go_on_;
};

}  // namespace

Minimum least_squares(const Residuals& residuals, std::vector<double> start, int most_evaluations, const GoOn& go_on) {
    Search search(residuals, std::move(start), most_evaluations, go_on);
    search.descend(0.02);
    search.descend(0.004);
    search.compass(0.01, 1e-4);
    return std::move(search.best);
}

}  // namespace wg::rating
