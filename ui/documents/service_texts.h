#pragma once
// The service sheet's steps and parts, as data. What stands in the braces: service_paper.cpp.

#include <vector>

#include "ui/documents/install_steps.h"

namespace wg::ui::paper {

/// What decides whether a line of the service applies.
struct ServiceFacts {
    StepFacts place;
    bool sacrificial_anode = false;  ///< eaten up in time
    bool powered_anode = false;      ///< fed with current
    bool torque_told = false;        ///< of the fixings
    bool reducing_valve = false;
    bool mixing_valve = true;
    bool recirculation = false;
    bool hygiene = false;
    bool leak_duty = false;  ///< regular leak checks are asked for by the rule set
    bool ballast = false;
    bool passage = false;
    bool clock = false;  ///< windows of running or a low tariff are set
};
[[nodiscard]] ServiceFacts service_facts(const Job& job, const plan::Plan& plan);

struct ServiceText {
    Step::Kind kind = Step::Kind::work;
    const char16_t* text = u"";
    const char16_t* why = u"";
    bool (*applies)(const ServiceFacts&) = [](const ServiceFacts&) { return true; };
};
/// In working order.
[[nodiscard]] const std::vector<ServiceText>& service_texts();

struct ServicePart {
    const char16_t* text = u"";
    bool (*applies)(const ServiceFacts&) = [](const ServiceFacts&) { return true; };
};
/// What the van carries to a service.
[[nodiscard]] const std::vector<ServicePart>& service_parts();

/// The steps that apply, numbered without gaps.
[[nodiscard]] std::vector<Step> service_steps(const Job& job, const plan::Plan& plan);

}  // namespace wg::ui::paper
