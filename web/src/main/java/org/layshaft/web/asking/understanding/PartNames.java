package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Sleeve;
import org.layshaft.web.asking.Ordinals;

/**
 * What people may call the parts of one box: by id, by name, by the names the layout adds, by the gear that they serve,
 * all with every other word that the packs have for a thing; and by the general end of a name, for all that share it.
 */
final class PartNames {
    private static final Set<String> WITHIN = Set.of("through", "between", "of", "on", "under", "in");

    private final Map<List<String>, Set<String>> exact = new LinkedHashMap<>();
    private final Map<List<String>, Set<String>> general = new LinkedHashMap<>();
    private final Box box;
    private final Synonyms synonyms;

    PartNames(Box box, Synonyms synonyms) {
        this.box = box;
        this.synonyms = synonyms;
        box.layout().parts().values().forEach(this::name);
    }

    /** Names that stand for just these parts; as a rule for one. */
    Map<List<String>, Set<String>> exact() {
        return exact;
    }

    /** General ends of names, with every part that has such a name. */
    Map<List<String>, Set<String>> general() {
        return general;
    }

    /** What tells a part well enough to know it by in another box. */
    Map<List<String>, Set<String>> severalWordsOrExact() {
        Map<List<String>, Set<String>> telling = new LinkedHashMap<>(exact);
        general.forEach((words, ids) -> {
            if (words.size() > 1) {
                telling.putIfAbsent(words, ids);
            }
        });
        return telling;
    }

    private void name(Part part) {
        Set<List<String>> given = new LinkedHashSet<>();
        given.add(Tokens.normal(part.id()));
        given.add(Tokens.normal(part.name()));
        part.also().forEach(also -> given.add(Tokens.normal(also)));
        given.addAll(byGear(part));
        if (part instanceof Sleeve) {
            given.add(List.of(Lexicon.joined(base(part))));
        }
        given.removeIf(List::isEmpty);
        for (List<String> name : given) {
            for (List<String> head : new LinkedHashSet<>(List.of(name, head(name)))) {
                synonyms.of(head).forEach(form -> {
                    exact.computeIfAbsent(form, none -> new LinkedHashSet<>()).add(part.id());
                    ends(form)
                            .forEach(end -> general.computeIfAbsent(end, none -> new LinkedHashSet<>())
                                    .add(part.id()));
                });
            }
        }
        synonyms.of(Tokens.normal(part.kind().word()))
                .forEach(kind -> general.computeIfAbsent(kind, none -> new LinkedHashSet<>())
                        .add(part.id()));
    }

    /** The ring and the teeth on the side of a sleeve that engages a gear are that gear's. */
    private List<List<String>> byGear(Part part) {
        String sleeve = part instanceof BlockingRing ring
                ? ring.sleeve()
                : part instanceof ClutchingTeeth teeth ? teeth.sleeve() : "";
        return box.gears().stream()
                .filter(gear -> gear.first()
                        .filter(push -> push.member().equals(sleeve) && engages(push, part))
                        .isPresent())
                .map(gear -> Tokens.normal(gear.name() + " " + part.kind().word()))
                .toList();
    }

    private boolean engages(Box.Push push, Part part) {
        Layout layout = box.layout();
        return layout.member(push.member())
                .at(push.side())
                .filter(Engagement.Couples.class::isInstance)
                .map(Engagement.Couples.class::cast)
                .filter(couples -> couples.clutchingTeeth().equals(part.id())
                        || couples.ring().equals(Optional.of(part.id())))
                .isPresent();
    }

    /** The {@code 3-4} of the 3-4 sleeve. */
    private static List<String> base(Part sleeve) {
        List<String> words = new ArrayList<>(Tokens.normal(sleeve.id()));
        words.removeIf(word -> !Ordinals.isGear(word));
        return words;
    }

    /** A name up to the first word that says where the part is: {@code interlock pin}. */
    private static List<String> head(List<String> name) {
        for (int at = 1; at < name.size(); at++) {
            if (WITHIN.contains(name.get(at))) {
                return name.subList(0, at);
            }
        }
        return name;
    }

    private static List<List<String>> ends(List<String> name) {
        List<List<String>> ends = new ArrayList<>();
        for (int at = 1; at < head(name).size() && head(name).size() == name.size(); at++) {
            boolean belongsToWordBefore = name.get(at).equals("gear") && at + 1 < name.size();
            if (!Ordinals.isGear(name.get(at)) && !belongsToWordBefore) {
                ends.add(name.subList(at, name.size()));
            }
        }
        return ends;
    }
}
