package org.layshaft.kb.parts;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.InterlockPiece.Form;
import org.layshaft.kb.layout.Named;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** The interlock as a whole, and its pieces. */
final class InterlockParts {
    private static final String INTERLOCK = "interlock";

    private final TypedSelector selector;
    private final PartLedger ledger;

    private InterlockParts(TypedSelector selector, PartLedger ledger) {
        this.selector = selector;
        this.ledger = ledger;
    }

    static void add(TypedSelector selector, PartLedger ledger) {
        new InterlockParts(selector, ledger).add();
    }

    /** Nothing where no rails are, or nothing keeps them apart. */
    private void add() {
        List<String> rails =
                selector.rails().stream().map(TypedRail::id).distinct().toList();
        List<InterlockPiece> pieces = pieces(rails);
        if (rails.isEmpty() || pieces.isEmpty()) {
            return;
        }
        List<String> ids = pieces.stream().map(InterlockPiece::id).toList();
        ledger.add(new Interlock(named(INTERLOCK, INTERLOCK), selector.interlock(), rails, ids), selector.pointer());
        pieces.forEach(piece -> ledger.add(piece, selector.pointer()));
    }

    private Named named(String id, String name) {
        return ledger.named(selector.prefix() + id, DefaultNames.before(selector.prefix()) + name);
    }

    private List<InterlockPiece> pieces(List<String> rails) {
        return switch (selector.interlock()) {
            case PINS -> pins();
            case PLATE -> List.of(whole(Form.PLATE, "interlock plate", rails));
            case COLLAR -> List.of(whole(Form.COLLAR, "interlock collar", rails));
            case DRUM -> List.of(whole(Form.DRUM, "drum tracks", rails));
            case NONE -> List.of();
        };
    }

    private InterlockPiece whole(Form form, String name, List<String> rails) {
        return new InterlockPiece(named(name.replace(' ', '-'), name), form, rails);
    }

    /** A plunger between each two neighbouring rails, a pin through each rail that has one on either side. */
    private List<InterlockPiece> pins() {
        List<TypedRail> rails = selector.rails();
        List<InterlockPiece> pieces = new ArrayList<>();
        for (int gap = 1; gap < rails.size(); gap++) {
            TypedRail one = rails.get(gap - 1);
            TypedRail other = rails.get(gap);
            String id = numbered("interlock-plunger", gap, rails.size() - 1);
            String name = "interlock plunger between the %s and %s rails".formatted(words(one), words(other));
            pieces.add(new InterlockPiece(named(id, name), Form.PLUNGER, List.of(one.id(), other.id())));
        }
        for (int middle = 1; middle < rails.size() - 1; middle++) {
            TypedRail rail = rails.get(middle);
            String id = numbered("interlock-pin", middle, rails.size() - 2);
            String name = "interlock pin through the %s rail".formatted(words(rail));
            pieces.add(new InterlockPiece(named(id, name), Form.PIN, List.of(rail.id())));
        }
        return pieces;
    }

    private static String numbered(String id, int number, int of) {
        return of == 1 ? id : id + "-" + number;
    }

    private static String words(TypedRail rail) {
        return DefaultNames.words(rail.base());
    }
}
