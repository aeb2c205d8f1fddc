package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Reach;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;

/**
 * What a box sounds in one gear, and what of it fits.
 *
 * @param inputRpm turns of the input a minute; empty where no speed was told, and then there are only orders
 * @param road the road speed that was told, if any
 * @param measured empty where nothing was
 * @param fits the likeliest first
 */
public record Listened(
        Layout layout,
        Sounds sounds,
        Optional<Fraction> inputRpm,
        Optional<RoadSpeed> road,
        Optional<Measured> measured,
        Reach reach,
        List<Match> fits) {
    public Listened {
        fits = List.copyOf(fits);
    }

    /** A road speed as told. */
    public record RoadSpeed(Fraction value, SpeedUnit unit) {
        Fraction kmh() {
            return unit.toKmh(value);
        }

        /** {@code 60 km/h}. */
        public String says() {
            return Decimals.plain(value, 1) + " " + unit.sign();
        }
    }

    /** {@code 3rd, 2400 turns a minute at the input, 60 km/h}. */
    public String says() {
        String gear = Names.gearName(sounds.gear());
        return gear
                + inputRpm.map(rpm -> ", %s turns a minute at the input".formatted(Decimals.plain(rpm, 1)))
                        .orElse("")
                + road.map(speed -> ", " + speed.says()).orElse("");
    }
}
