#include "ui/window/stage_factories.h"

#include <QDateTime>

#include "core/store/store.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/aftercare/performance_page.h"
#include "ui/common/photo_shelf.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/layout/layout_stage.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/offer_stage.h"
#include "ui/visit/visit_stage.h"
#include "ui/yield/yield_stage.h"

namespace wg::ui {

std::array<StageFactory, stage_count> stage_factories(store::Store& store) {
    store::Store* const desk = &store;
    return {
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new VisitStage(parent);
            stage->set_shelf(new PhotoShelf([desk](const std::string& sha256) { return desk->photograph(sha256); },
                                            [desk](std::string_view bytes) {
                                                return desk->add_photograph(bytes,
                                                                            {QDateTime::currentSecsSinceEpoch()});
                                            },
                                            stage));
            return stage;
        },
        [](QWidget* parent) -> StageWidget* { return new LayoutStage(parent); },
        [](QWidget* parent) -> StageWidget* { return new YieldStage(parent); },
        [desk](QWidget* parent) -> StageWidget* { return new OfferStage(desk, parent); },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new FittingStage(parent);
            stage->set_firm_source([desk] { return read_firm(desk); });
            return stage;
        },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new AftercareStage(parent);
            stage->set_library({[desk] {
                                    Result<std::vector<store::WeatherYearRow>> years = desk->weather_years();
                                    return years.ok() ? std::move(years).value() : std::vector<store::WeatherYearRow>();
                                },
                                [desk](const std::string& id) { return desk->weather_year(id); }});
            return stage;
        },
    };
}

}  // namespace wg::ui
