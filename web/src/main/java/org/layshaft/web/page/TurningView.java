package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.desk.Turning;
import org.layshaft.web.desk.Wording;

/**
 * How one part turns.
 *
 * @param speed turns for one of the input, without a sign; null where the input does not fix it
 * @param way which way, in words
 * @param carries whether power goes through it
 */
record TurningView(LinkView part, NumberView speed, String way, boolean carries) {
    static List<TurningView> all(Scene scene) {
        return scene.turning().stream().map(turning -> of(turning, scene)).toList();
    }

    private static TurningView of(Turning turning, Scene scene) {
        return new TurningView(
                scene.linkTo(turning.part()),
                turning.speed().map(speed -> NumberView.of(speed.absolute())).orElse(null),
                Wording.of(turning.sense()),
                scene.motion()
                        .filter(motion -> motion.carrying().contains(turning.part()))
                        .isPresent());
    }
}
