#include "ui/window/stage_factories.h"

#include <QDateTime>

#include "core/store/store.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/aftercare/papers_page.h"
#include "ui/aftercare/performance_page.h"
#include "ui/common/format.h"
#include "ui/common/photo_shelf.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/session_input.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/layout/layout_stage.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/offer_stage.h"
#include "ui/visit/visit_stage.h"
#include "ui/window/settings.h"
#include "ui/yield/yield_stage.h"

namespace wg::ui {
namespace {

PhotoShelf* shelf_of(store::Store* desk, QObject* parent) {
    return new PhotoShelf(
        [desk](const std::string& sha256) { return desk->photograph(sha256); },
        [desk](std::string_view bytes) { return desk->add_photograph(bytes, {QDateTime::currentSecsSinceEpoch()}); },
        parent);
}

std::function<QImage(const std::string&)> pictures_of(store::Store* desk) {
    return [desk](const std::string& sha256) {
        const auto bytes = desk->photograph(sha256);
        return bytes.ok() ? picture_for_paper(bytes.value()) : QImage();
    };
}

/// Every pane of papers has the look last chosen in any of them.
void share_look(QWidget* stage, store::Store* desk) {
    for (PaperPane* pane : stage->findChildren<PaperPane*>()) {
        pane->set_look(paper_look_setting(*desk));
        QObject::connect(pane, &PaperPane::look_changed, pane, [pane, desk](const PaperLook& look) {
            static_cast<void>(keep_paper_look(*desk, look));
            for (PaperPane* other : pane->window()->findChildren<PaperPane*>())
                if (other != pane) other->set_look(look);
        });
    }
}

}  // namespace

std::array<StageFactory, stage_count> stage_factories(store::Store& store) {
    store::Store* const desk = &store;
    return {
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new VisitStage(parent);
            stage->set_shelf(shelf_of(desk, stage));
            return stage;
        },
        [](QWidget* parent) -> StageWidget* { return new LayoutStage(parent); },
        [](QWidget* parent) -> StageWidget* { return new YieldStage(parent); },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new OfferStage(desk, parent);
            share_look(stage, desk);
            return stage;
        },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new FittingStage(parent);
            stage->set_firm_source([desk] { return read_firm(desk); });
            stage->set_picture_source(pictures_of(desk));
            stage->set_shelf(shelf_of(desk, stage));
            stage->set_settings({[desk](const QString& key) {
                                     const auto value = desk->setting(key.toStdString(), "");
                                     return value.ok() ? qs(value.value()) : QString();
                                 },
                                 [desk](const QString& key, const QString& value) {
                                     // A list of instruments that is not kept is typed again: no reason to stop work.
                                     (void)desk->set_setting(key.toStdString(), value.toStdString());
                                 }});
            share_look(stage, desk);
            return stage;
        },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new AftercareStage(parent);
            stage->set_library({[desk] {
                                    Result<std::vector<store::WeatherYearRow>> years = desk->weather_years();
                                    return years.ok() ? std::move(years).value() : std::vector<store::WeatherYearRow>();
                                },
                                [desk](const std::string& id) { return desk->weather_year(id); }});
            stage->papers()->set_firm_source([desk] { return read_firm(desk); });
            stage->papers()->set_picture_source(pictures_of(desk));
            share_look(stage, desk);
            return stage;
        },
    };
}

}  // namespace wg::ui
