package org.layshaft.engine.symptom;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** Where sleeves, sliding gears and clutches come to stand, and which gears can be engaged at once. */
final class Shifting {
    private final Layout layout;
    private final Effects effects;

    Shifting(Layout layout, Effects effects) {
        this.layout = layout;
        this.effects = effects;
    }

    /** @param pushes what the levers do; none of it for neutral, but for levers that have none */
    Stance stance(List<Box.Push> pushes) {
        Map<String, Side> engaged = new TreeMap<>();
        for (Box.Push push : pushes) {
            if (isFollowed(push)) {
                engaged.put(push.member(), push.side());
            }
        }
        effects.stuck().forEach((member, side) -> side.ifPresent(at -> engaged.put(member, at)));
        effects.left().forEach((member, side) -> side.ifPresent(at -> engaged.put(member, at)));
        return new Stance(engaged);
    }

    private boolean isFollowed(Box.Push push) {
        String member = push.member();
        boolean isClutch = push.rail().equals(member);
        return isClutch
                || !isShut(push)
                        && !effects.stuck().containsKey(member)
                        && !effects.left().containsKey(member)
                        && !effects.unreached().contains(new Effects.Place(member, push.side()));
    }

    private boolean isShut(Box.Push push) {
        return effects.lostRails().contains(push.rail())
                || effects.stuck().entrySet().stream().anyMatch(stuck -> bars(stuck.getKey(), stuck.getValue(), push));
    }

    /** Whether what is stuck holds the rail elsewhere, or keeps it shut by the interlock. */
    private boolean bars(String member, Optional<Side> at, Box.Push push) {
        return layout.forkOf(member)
                .map(Fork::rail)
                .filter(rail -> rail.equals(push.rail())
                        ? !at.equals(Optional.of(push.side()))
                        : at.isPresent() && areKeptApart(rail, push.rail()))
                .isPresent();
    }

    private boolean areKeptApart(String one, String other) {
        return between(one, other)
                .filter(pieces -> pieces.stream().noneMatch(effects.gonePieces()::contains))
                .isPresent();
    }

    /** Rails that can be out of neutral together because something between them is gone. */
    Set<String> letGo() {
        Set<String> letGo = new HashSet<>();
        List<String> rails = layout.all(Rail.class).map(Rail::id).toList();
        for (String one : rails) {
            for (String other : rails) {
                boolean gone = between(one, other)
                        .filter(pieces -> pieces.stream().anyMatch(effects.gonePieces()::contains))
                        .isPresent();
                if (gone) {
                    letGo.add(one);
                }
            }
        }
        return letGo;
    }

    /** The pieces that keep two rails apart; empty where no interlock rules both, or they are one. */
    private Optional<List<String>> between(String one, String other) {
        return layout.all(Interlock.class)
                .filter(interlock -> !one.equals(other)
                        && !interlock.pieces().isEmpty()
                        && interlock.rails().containsAll(List.of(one, other)))
                .findFirst()
                .map(interlock -> between(interlock, one, other));
    }

    private List<String> between(Interlock interlock, String one, String other) {
        List<String> rails = interlock.rails();
        int first = Math.min(rails.indexOf(one), rails.indexOf(other));
        int last = Math.max(rails.indexOf(one), rails.indexOf(other));
        List<String> between = new ArrayList<>();
        for (String id : interlock.pieces()) {
            InterlockPiece piece = layout.the(InterlockPiece.class, id);
            Stream<Integer> places = piece.rails().stream().map(rails::indexOf);
            boolean lies = switch (piece.form()) {
                case PLUNGER -> places.allMatch(place -> first <= place && place <= last);
                case PIN -> places.allMatch(place -> first < place && place < last);
                case PLATE, COLLAR, DRUM -> true;
            };
            if (lies) {
                between.add(id);
            }
        }
        return between;
    }
}
