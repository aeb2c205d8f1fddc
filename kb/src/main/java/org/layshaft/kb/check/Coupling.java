package org.layshaft.kb.check;

import java.util.stream.Stream;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedSide;

/**
 * What a sleeve or sliding gear couples, typed or by default.
 *
 * @param to id of the gear, dog ring or differential, which may not exist
 */
record Coupling(TypedMember member, Side side, String to, String pointer) {

    static Stream<Coupling> all(TypedLayout layout) {
        return layout.members().stream()
                .flatMap(member -> EffectiveSides.of(member, layout).entrySet().stream()
                        .filter(entry -> entry.getValue() instanceof TypedSide.Couples)
                        .map(entry -> new Coupling(
                                member,
                                entry.getKey(),
                                ((TypedSide.Couples) entry.getValue()).to().id(),
                                entry.getValue().pointer())));
    }
}
