#include "ui/window/stage_factories.h"

#include <QDateTime>

#include "core/store/store.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/common/photo_shelf.h"
#include "ui/documents/paper_pane.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/layout/layout_stage.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/offer_stage.h"
#include "ui/visit/visit_stage.h"
#include "ui/window/settings.h"
#include "ui/yield/yield_stage.h"

namespace wg::ui {

namespace {

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
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new OfferStage(desk, parent);
            share_look(stage, desk);
            return stage;
        },
        [desk](QWidget* parent) -> StageWidget* {
            auto* stage = new FittingStage(parent);
            stage->set_firm_source([desk] { return read_firm(desk); });
            share_look(stage, desk);
            return stage;
        },
        [](QWidget* parent) -> StageWidget* { return new AftercareStage(parent); },
    };
}

}  // namespace wg::ui
