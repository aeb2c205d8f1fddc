package org.layshaft.engine.fault;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.failure.Effect;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** What faults say that can be so in one way only: where a sleeve stays, where a shaft is cut, how a part is bent. */
public final class Claims {
    private final Layout layout;

    public Claims(Layout layout) {
        this.layout = layout;
    }

    /** Whether no two of these faults, everything told, say different things of the same matter. */
    public boolean areAtOne(List<Fault> faults, List<FailureMode> modes) {
        Map<List<String>, Object> said = new HashMap<>();
        for (int i = 0; i < faults.size(); i++) {
            boolean differs = of(faults.get(i), modes.get(i))
                    .anyMatch(claim -> !Optional.ofNullable(said.putIfAbsent(claim.matter(), claim.says()))
                            .orElse(claim.says())
                            .equals(claim.says()));
            if (differs) {
                return false;
            }
        }
        return true;
    }

    private record Claim(List<String> matter, Object says) {}

    private Stream<Claim> of(Fault fault, FailureMode mode) {
        Stream<Claim> made = mode.effects().stream()
                .filter(effect -> effect.appliesTo(fault.told()))
                .flatMap(effect -> made(effect, fault));
        return Stream.concat(Stream.of(new Claim(List.of(fault.part(), fault.mode()), fault.told())), made);
    }

    private Stream<Claim> made(Effect effect, Fault fault) {
        String argument = effect.argument().map(given -> given.in(fault.told())).orElse("");
        return switch (effect.kind()) {
            case STUCK_AT, LEFT_AT ->
                Served.by(layout, layout.the(Part.class, fault.part())).stream()
                        .map(served -> new Claim(List.of("stays", served.member()), argument));
            case CUT_BEHIND -> Stream.of(new Claim(List.of("cut", fault.part()), argument));
            default -> Stream.of();
        };
    }
}
