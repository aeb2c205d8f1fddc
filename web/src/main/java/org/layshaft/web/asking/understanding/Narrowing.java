package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From "the ring on third" to third's ring: finds what stands before or after the general name of a part and keeps the
 * parts that belong to it.
 */
final class Narrowing {
    private final Heard heard;
    private final Set<Integer> used;

    Narrowing(Heard heard, Set<Integer> used) {
        this.heard = heard;
        this.used = used;
    }

    /**
     * The parts that remain.
     *
     * @param absent words for a part that the box does not have: {@code 5-6 fork}; empty where all is well
     */
    record Narrowed(List<String> parts, Optional<String> absent) {}

    /** Narrows these parts by what stands directly before their name, and then by what follows. */
    Narrowed narrow(List<String> parts, Mention name, Mention mode) {
        List<Mention> before = before(name);
        if (!before.isEmpty()) {
            List<String> kept = keep(parts, before);
            boolean unknownGear = before.stream()
                    .anyMatch(mention -> mention.one(Meaning.NoSuchGear.class).isPresent());
            boolean oneName = before.size() > 1
                    && heard.tokens().get(before.get(before.size() - 1).from()).joined();
            if (unknownGear || kept.isEmpty() && oneName) {
                before.forEach(this::use);
                return new Narrowed(
                        parts,
                        Optional.of(Lexicon.typed(
                                heard.tokens().subList(before.get(0).from(), name.to()))));
            }
            if (!kept.isEmpty()) {
                // beyond a comma it says which part is meant, and is asked about as well
                before.stream()
                        .filter(mention -> clause(mention) == clause(name))
                        .forEach(this::use);
                return new Narrowed(kept, Optional.empty());
            }
        }
        for (Mention after : List.of(name, mode)) {
            Optional<Mention> belongsTo = after(after.to()).filter(mention -> !mention.equals(mode));
            List<String> kept =
                    belongsTo.map(mention -> keep(parts, List.of(mention))).orElse(List.of());
            if (!kept.isEmpty() && parts.size() > 1) {
                use(belongsTo.get());
                return new Narrowed(kept, Optional.empty());
            }
        }
        return new Narrowed(parts, Optional.empty());
    }

    private List<String> keep(List<String> parts, List<Mention> qualifiers) {
        return parts.stream()
                .filter(part -> qualifiers.stream()
                        .allMatch(mention -> heard.words().belongings().belongs(part, mention)))
                .toList();
    }

    private List<Mention> before(Mention name) {
        List<Mention> before = new ArrayList<>();
        int at = name.from();
        while (true) {
            Optional<Mention> next = heard.endingAt(at).filter(Narrowing::qualifies);
            if (next.isEmpty()) {
                return before;
            }
            before.add(0, next.get());
            at = next.get().from();
            if (heard.word(at - 1).equals("and")
                    && heard.endingAt(at - 1).filter(Narrowing::qualifies).isPresent()) {
                at--;
            }
        }
    }

    private Optional<Mention> after(int to) {
        int at = to;
        while (heard.isLink(at) && at < to + 3) {
            at++;
        }
        boolean linked = at > to;
        return heard.startingAt(at)
                .filter(Narrowing::qualifies)
                .filter(mention -> linked || mention.gear().isEmpty());
    }

    private static boolean qualifies(Mention mention) {
        return mention.gear().isPresent()
                || mention.one(Meaning.NoSuchGear.class).isPresent()
                || mention.isSpecificPart();
    }

    private int clause(Mention mention) {
        return heard.tokens().get(mention.from()).clause();
    }

    private void use(Mention mention) {
        for (int at = mention.from(); at < mention.to(); at++) {
            used.add(at);
        }
    }
}
