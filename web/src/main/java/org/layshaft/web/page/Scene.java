package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.Understanding;
import org.layshaft.web.desk.ByHand;
import org.layshaft.web.desk.Turning;

/**
 * What an address comes to.
 *
 * @param address the same, with the layout filled in
 * @param names what its parts are called
 * @param understanding of the question; empty where none was asked
 * @param answer to the question, or, without one that was understood, what becomes of the gears
 * @param own what the address supposes besides the question
 * @param stance where sleeves stand in the drawing
 * @param motion how everything turns in it; empty where it shows no one motion
 * @param gear the gear that is drawn; empty where it is none
 * @param part the part that is looked at
 * @param byHand what came of sleeves set by hand; empty where none were
 * @param torques on everything in what is drawn; empty where none reach the output, or nothing is drawn in motion
 * @param running speed and torque of the input, where told
 */
record Scene(
        Address address,
        Layout layout,
        Names names,
        Optional<Understanding> understanding,
        Answer answer,
        List<Fault> own,
        Stance stance,
        Optional<Motion> motion,
        Optional<GearVerdict> gear,
        Optional<Part> part,
        Optional<ByHand> byHand,
        Optional<Torques> torques,
        Running running) {

    /** Everything that is supposed: by the question and by the address. */
    List<Fault> faults() {
        return answer.question().faults();
    }

    /** Whether a question was answered, and not merely the gears listed. */
    boolean answered() {
        return understanding.filter(Understanding.Understood.class::isInstance).isPresent();
    }

    /** A link to a part; for a piece of a shaft, to the shaft. */
    LinkView linkTo(String body) {
        return LinkView.to(called(body), address.at(ShaftPiece.shaftOf(body)));
    }

    /** How everything turns in what is drawn; empty where that shows no one motion. */
    List<Turning> turning() {
        return motion.map(each -> Turning.of(layout, names, each)).orElse(List.of());
    }

    Dialect dialect() {
        return running.dialect();
    }

    /** What a part is called by those who read. */
    String called(String part) {
        return dialect().say(names.of(part));
    }

    boolean inNeutral() {
        return gear.isEmpty() && stance.engaged().isEmpty();
    }
}
