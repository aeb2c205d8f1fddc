package org.layshaft.kb.parts;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.InterlockPiece.Form;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** The interlock as a whole, and its pieces. */
final class InterlockParts {
    private static final String ID = "interlock";

    private InterlockParts() {}

    static void add(TypedSelector selector, PartLedger ledger) {
        List<String> rails =
                selector.rails().stream().map(TypedRail::id).distinct().toList();
        List<InterlockPiece> pieces = pieces(selector, rails, ledger);
        List<String> ids = pieces.stream().map(InterlockPiece::id).toList();
        ledger.add(new Interlock(ledger.named(ID, ID), selector.interlock(), rails, ids), selector.pointer());
        pieces.forEach(piece -> ledger.add(piece, selector.pointer()));
    }

    private static List<InterlockPiece> pieces(TypedSelector selector, List<String> rails, PartLedger ledger) {
        return switch (selector.interlock()) {
            case PINS -> pins(selector, ledger);
            case PLATE -> List.of(whole(Form.PLATE, "interlock plate", rails, ledger));
            case COLLAR -> List.of(whole(Form.COLLAR, "interlock collar", rails, ledger));
            case NONE -> List.of();
        };
    }

    private static InterlockPiece whole(Form form, String name, List<String> rails, PartLedger ledger) {
        return new InterlockPiece(ledger.named(name.replace(' ', '-'), name), form, rails);
    }

    /** A plunger between each two neighbouring rails, a pin through each rail that has one on either side. */
    private static List<InterlockPiece> pins(TypedSelector selector, PartLedger ledger) {
        List<TypedRail> rails = selector.rails();
        List<InterlockPiece> pieces = new ArrayList<>();
        for (int gap = 1; gap < rails.size(); gap++) {
            TypedRail one = rails.get(gap - 1);
            TypedRail other = rails.get(gap);
            String id = numbered("interlock-plunger", gap, rails.size() - 1);
            String name = "interlock plunger between the %s and %s rails".formatted(words(one), words(other));
            pieces.add(new InterlockPiece(ledger.named(id, name), Form.PLUNGER, List.of(one.id(), other.id())));
        }
        for (int middle = 1; middle < rails.size() - 1; middle++) {
            TypedRail rail = rails.get(middle);
            String id = numbered("interlock-pin", middle, rails.size() - 2);
            String name = "interlock pin through the %s rail".formatted(words(rail));
            pieces.add(new InterlockPiece(ledger.named(id, name), Form.PIN, List.of(rail.id())));
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
