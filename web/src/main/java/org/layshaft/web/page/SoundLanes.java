package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Source;
import org.layshaft.engine.sound.SourceKind.Family;
import org.layshaft.web.desk.Listened;
import org.layshaft.web.desk.SoundWording;
import org.layshaft.web.drawing.OrderFigure;
import org.layshaft.web.drawing.OrderFigure.Band;
import org.layshaft.web.drawing.OrderFigure.Bar;
import org.layshaft.web.drawing.OrderFigure.Lane;

/** Puts what a box sounds into the lanes of a figure. */
final class SoundLanes {
    private SoundLanes() {}

    static OrderFigure figure(Listened listened) {
        Map<Family, List<Bar>> lanes = new EnumMap<>(Family.class);
        List<Source> sources = listened.sounds().sources();
        for (int place = 0; place < sources.size(); place++) {
            Source source = sources.get(place);
            lanes.computeIfAbsent(source.kind().family(), any -> new ArrayList<>())
                    .add(new Bar(
                            place + 1,
                            source.order().perTurn().toDouble(),
                            source.loaded(),
                            "%d: %s, order %s"
                                    .formatted(place + 1, source.what(), SoundWording.decimal(source.order()))));
        }
        return new OrderFigure(
                lanes.entrySet().stream()
                        .map(lane -> new Lane(SoundWording.of(lane.getKey()), lane.getValue()))
                        .toList(),
                listened.measured().flatMap(measured -> listened.inputRpm().map(rpm -> band(measured, rpm))),
                listened.inputRpm().map(SoundLanes::hzOfOrderOne));
    }

    private static Band band(Measured measured, Fraction rpm) {
        double one = hzOfOrderOne(rpm);
        double hz = measured.hz().toDouble();
        // a tolerance as wide as the frequency itself would reach down to nothing, which no scale of tenfolds has
        double lowest = Math.max(hz - measured.toleranceHz().toDouble(), hz / 100);
        return new Band(
                lowest / one,
                (hz + measured.toleranceHz().toDouble()) / one,
                "measured: %s Hz".formatted(SoundWording.hz(measured.hz())));
    }

    private static double hzOfOrderOne(Fraction rpm) {
        return rpm.toDouble() / 60;
    }
}
