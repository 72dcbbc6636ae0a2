#include "core/weather/random.h"

#include <cmath>

namespace wg::weather {
namespace {

std::uint64_t rotated(std::uint64_t x, int k) noexcept {
    return (x << k) | (x >> (64 - k));
}

template <std::size_t N>
double polynomial(const std::array<double, N>& c, double x) noexcept {
    double sum = 0.0;
    for (std::size_t i = N; i-- > 0;)
        sum = sum * x + c[i];
    return sum;
}

}  // namespace

Random::Random(std::uint64_t seed) noexcept {
    for (std::uint64_t& word : state_) {
        seed += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = seed;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        word = z ^ (z >> 31);
    }
}

std::uint64_t Random::next() noexcept {
    const std::uint64_t result = rotated(state_[1] * 5, 7) * 9;
    const std::uint64_t t = state_[1] << 17;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= t;
    state_[3] = rotated(state_[3], 45);
    return result;
}

double Random::uniform() noexcept {
    return (static_cast<double>(next() >> 12) + 0.5) * 0x1.0p-52;
}

double Random::normal() noexcept {
    return normal_quantile(uniform());
}

double normal_quantile(double p) noexcept {
    const double q = p - 0.5;
    if (std::fabs(q) <= 0.425) {
        static constexpr std::array<double, 8> a = {
            3.3871328727963666080e0,  1.3314166789178437745e+2, 1.9715909503065514427e+3, 1.3731693765509461125e+4,
            4.5921953931549871457e+4, 6.7265770927008700853e+4, 3.3430575583588128105e+4, 2.5090809287301226727e+3};
        static constexpr std::array<double, 8> b = {1.0,
                                                    4.2313330701600911252e+1,
                                                    6.8718700749205790830e+2,
                                                    5.3941960214247511077e+3,
                                                    2.1213794301586595867e+4,
                                                    3.9307895800092710610e+4,
                                                    2.8729085735721942674e+4,
                                                    5.2264952788528545610e+3};
        const double r = 0.180625 - q * q;
        return q * polynomial(a, r) / polynomial(b, r);
    }
    const double tail = q < 0.0 ? p : 1.0 - p;
    const double r = std::sqrt(-std::log(tail));
    double z = 0.0;
    if (r <= 5.0) {
        static constexpr std::array<double, 8> c = {
            1.42343711074968357734e0, 4.63033784615654529590e0,  5.76949722146069140550e0,  3.64784832476320460504e0,
            1.27045825245236838258e0, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4};
        static constexpr std::array<double, 8> d = {1.0,
                                                    2.05319162663775882187e0,
                                                    1.67638483018380384940e0,
                                                    6.89767334985100004550e-1,
                                                    1.48103976427480074590e-1,
                                                    1.51986665636164571966e-2,
                                                    5.47593808499534494600e-4,
                                                    1.05075007164441684324e-9};
        z = polynomial(c, r - 1.6) / polynomial(d, r - 1.6);
    } else {
        static constexpr std::array<double, 8> e = {
            6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,  2.96560571828504891230e-1,
            2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7};
        static constexpr std::array<double, 8> f = {1.0,
                                                    5.99832206555887937690e-1,
                                                    1.36929880922735805310e-1,
                                                    1.48753612908506148525e-2,
                                                    7.86869131145613259100e-4,
                                                    1.84631831751005468180e-5,
                                                    1.42151175831644588870e-7,
                                                    2.04426310338993978564e-15};
        z = polynomial(e, r - 5.0) / polynomial(f, r - 5.0);
    }
    return q < 0.0 ? -z : z;
}

double normal_probability(double z) noexcept {
    return 0.5 * std::erfc(-z * 0.70710678118654752440);
}

Persistent::Persistent(double phi, Random& random) noexcept
    : phi_(phi), fresh_(std::sqrt(1.0 - phi * phi)), x_(random.normal()), random_(random) {}

double Persistent::next() noexcept {
    x_ = phi_ * x_ + fresh_ * random_.normal();
    return x_;
}

}  // namespace wg::weather
