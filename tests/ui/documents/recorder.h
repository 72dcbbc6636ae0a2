#pragma once
// A paint device that draws nothing and remembers lettering and shapes with their place and size on paper.

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QString>
#include <cmath>
#include <vector>

#include "ui/documents/sheet.h"

namespace wg::ui::sample {

struct SeenText {
    QString text;
    double height_pt = 0.0;  ///< of the font on paper
};

class Recorder : public QPaintDevice {
    class Engine : public QPaintEngine {
       public:
        explicit Engine(Recorder& to) : QPaintEngine(AllFeatures), to_(to) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState&) override {}
        [[nodiscard]] Type type() const override { return User; }
        void drawTextItem(const QPointF&, const QTextItem& item) override {
            const QTransform t = painter()->combinedTransform();
            const double scale = std::hypot(t.m12(), t.m22());
            const int pixels = item.font().pixelSize();
            to_.texts.push_back({item.text(), pixels * scale / paper::units_per_point});
        }
        void drawPath(const QPainterPath& path) override { keep(path.boundingRect()); }
        void drawPolygon(const QPointF* points, int count, PolygonDrawMode) override {
            QPolygonF polygon;
            for (int i = 0; i < count; ++i)
                polygon << points[i];
            keep(polygon.boundingRect());
        }
        void drawRects(const QRectF* rects, int count) override {
            for (int i = 0; i < count; ++i)
                keep(rects[i]);
        }
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override { ++to_.pixmaps; }
        void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {
            ++to_.pixmaps;
        }

       private:
        void keep(const QRectF& rect) { to_.shapes.push_back(painter()->combinedTransform().mapRect(rect)); }
        Recorder& to_;
    };

   public:
    Recorder() : engine_(*this) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &engine_; }

    std::vector<SeenText> texts;
    std::vector<QRectF> shapes;  ///< bounding boxes, page units
    int pixmaps = 0;             ///< anything that is not vector

   protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
            case PdmWidth: return static_cast<int>(paper::Sheet().width);
            case PdmHeight: return static_cast<int>(paper::Sheet().height);
            case PdmWidthMM: return 210;
            case PdmHeightMM: return 297;
            case PdmNumColors: return 1 << 24;
            case PdmDepth: return 24;
            case PdmDpiX:
            case PdmDpiY:
            case PdmPhysicalDpiX:
            case PdmPhysicalDpiY: return static_cast<int>(paper::units_per_inch);
            case PdmDevicePixelRatio: return 1;
            default: return 0;
        }
    }

   private:
    mutable Engine engine_;
};

inline void paint_on(Recorder& recorder, const paper::Page& page) {
    QPainter painter(&recorder);
    paper::paint_page(painter, page);
}

}  // namespace wg::ui::sample
