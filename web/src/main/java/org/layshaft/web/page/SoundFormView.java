package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.engine.words.Names;
import org.layshaft.web.desk.SoundRequest;

/** The form, filled in as it was sent. */
record SoundFormView(
        String layout,
        String layoutName,
        List<GearChoice> gears,
        String rpm,
        String kmh,
        String mph,
        String hz,
        String within) {

    /** One gear to choose, or neutral. */
    record GearChoice(String value, String name, boolean chosen) {}

    static SoundFormView of(SoundRequest request, Box box, String gear) {
        Stream<GearChoice> neutral = Stream.of(new GearChoice(Address.NEUTRAL, "neutral", gear.equals(Sounds.NEUTRAL)));
        Stream<GearChoice> gears = box.gears().stream()
                .map(Box.DerivedGear::name)
                .map(name -> new GearChoice(name, Names.gearName(name), name.equals(gear)));
        return new SoundFormView(
                box.layout().id(),
                box.layout().name(),
                Stream.concat(neutral, gears).toList(),
                written(request.rpm()),
                written(request.kmh()),
                written(request.mph()),
                written(request.hz()),
                written(request.within()));
    }

    private static String written(Optional<String> value) {
        return value.orElse("");
    }
}
