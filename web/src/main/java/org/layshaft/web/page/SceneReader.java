package org.layshaft.web.page;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Understanding;
import org.layshaft.web.asking.Understanding.Understood;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.ByHand;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.HandDesk;
import org.layshaft.web.desk.Supposing;

/** Finds out what an address comes to. */
final class SceneReader {
    private final Desk desk;

    SceneReader(Desk desk) {
        this.desk = desk;
    }

    /** The same, with a question that follows another put so that it stands alone. */
    Address standingAlone(Address address, Optional<String> before) {
        if (before.isEmpty() || address.question().isEmpty()) {
            return address;
        }
        String whole = desk.standingAlone(
                address.layout().map(desk::layout), address.question().get(), before);
        return address.withQuestion(whole);
    }

    /** Throws {@link BadInputException} where the address names something that is not known. */
    Scene read(Address address) {
        Layout named = address.layout().map(desk::layout).orElseGet(this::firstLayout);
        Optional<Understanding> understanding =
                address.question().map(question -> desk.understand(Optional.of(named), question));
        Optional<Question> question = understanding
                .filter(Understood.class::isInstance)
                .map(understood -> ((Understood) understood).reading().question());
        Layout layout = question.map(asked -> desk.layout(asked.layout())).orElse(named);
        List<Fault> given = layout.equals(named) ? desk.faults(layout, address.faults()) : List.of();
        List<Fault> own = question.map(asked -> Supposing.besides(asked, given)).orElse(given);
        Answer answer = question.map(asked -> desk.answer(Supposing.also(asked, own)))
                .orElseGet(() -> desk.gearsLeft(layout, own));
        return scene(address, layout, understanding, answer, own);
    }

    private Scene scene(
            Address address, Layout layout, Optional<Understanding> understanding, Answer answer, List<Fault> own) {
        Running running = Running.of(address.sight());
        List<Fault> faults = answer.question().faults();
        Optional<ByHand> byHand = byHand(address, layout, answer);
        Drawn drawn = byHand.map(set -> Drawn.byHand(set, answer))
                .or(() -> address.gear().map(gear -> Drawn.inGear(gear, layout, answer, desk)))
                .orElseGet(() -> Drawn.asAsked(answer));
        return new Scene(
                address.inLayout(layout.id()).besides(own),
                layout,
                desk.names(layout),
                understanding,
                answer,
                own,
                drawn.stance(),
                drawn.motion(),
                drawn.gear(),
                address.part().map(id -> part(layout, id)),
                byHand,
                byHand.map(ByHand::torques)
                        .orElseGet(() ->
                                drawn.motion().flatMap(motion -> desk.hand().torques(layout, faults, drawn.stance()))),
                running);
    }

    /** Empty where nothing was set by hand, or where the question turned to another layout. */
    private Optional<ByHand> byHand(Address address, Layout layout, Answer answer) {
        boolean same = address.layout().map(desk::layout).filter(layout::equals).isPresent()
                || address.layout().isEmpty();
        if (address.sight().sleeves().isEmpty() || !same) {
            return Optional.empty();
        }
        HandDesk hand = desk.hand();
        return Optional.of(hand.at(
                layout,
                desk.names(layout),
                answer.question().faults(),
                answer.whatIf(),
                hand.stance(layout, address.sight().sleeves())));
    }

    private Layout firstLayout() {
        return desk.knowledge().layouts().values().stream()
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN, "No layout is loaded. Start Layshaft again with --packs and a folder that has some."));
    }

    private static Part part(Layout layout, String id) {
        Part part = layout.parts().get(id);
        if (part == null) {
            throw new BadInputException(
                    UNKNOWN,
                    "%s has no part \"%s\". Its parts are listed at the foot of its page."
                            .formatted(layout.name(), id));
        }
        return part;
    }
}
