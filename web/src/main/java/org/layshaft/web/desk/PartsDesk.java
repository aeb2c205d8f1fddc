package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** The catalogue, and whoever answers about it: made ready when it is first asked. Thread-safe. */
public final class PartsDesk {
    private final KnowledgeBase knowledge;
    private final Supplier<PartsCounter> counter;
    private final CrossDesk cross;

    public PartsDesk(KnowledgeBase knowledge) {
        this.knowledge = knowledge;
        this.counter = new Lazily<>(() -> PartsCounter.of(knowledge));
        this.cross = new CrossDesk(this);
    }

    public PartsCounter counter() {
        return counter.get();
    }

    /** Where sets are held against boxes. */
    public CrossDesk cross() {
        return cross;
    }

    public Catalogue catalogue() {
        return knowledge.catalogue();
    }

    /** For layouts that are only tried: what it is asked about goes with it. */
    Reasoner passingReasoner() {
        return Reasoners.standard(knowledge);
    }

    /** The layout of this id or name. */
    Optional<Layout> layout(String written) {
        String wanted = written.strip();
        return knowledge.layouts().values().stream()
                .filter(layout ->
                        layout.id().equalsIgnoreCase(wanted) || layout.name().equalsIgnoreCase(wanted))
                .findFirst();
    }

    BuiltBoxes boxes() {
        return new BuiltBoxes(
                knowledge.layouts().values(), List.copyOf(counter().boxes().values()));
    }

    /** The set, or the part by itself, of this number or name, in small or capital letters. Throws {@link BadInputException} with the nearest. */
    public PartSet set(String written) {
        String wanted = written.strip();
        return everything()
                .filter(set -> set.number().equalsIgnoreCase(wanted))
                .findFirst()
                .or(() -> ofName(wanted))
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "No set or part has the number \"%s\"%s."
                                .formatted(
                                        wanted,
                                        catalogue().parts().isEmpty()
                                                ? ": no catalogue is loaded. Give a folder of packs that has one"
                                                : ". Look it up in the list of sets"),
                        Nearest.to(wanted, everything().map(PartSet::number).toList())));
    }

    private Optional<PartSet> ofName(String name) {
        List<PartSet> named =
                everything().filter(set -> set.name().equalsIgnoreCase(name)).toList();
        if (named.size() > 1) {
            throw new BadInputException(
                    UNFIT,
                    "%d sets and parts are called \"%s\". Give the number of one.".formatted(named.size(), name),
                    named.stream().map(PartSet::number).toList());
        }
        return named.stream().findFirst();
    }

    /** Sets, and the parts by themselves, each of whose numbers or names holds all these words; the sets come first. */
    public List<PartSet> holding(String words) {
        List<String> wanted = List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+"));
        return everything()
                .filter(set -> {
                    String text = (set.number() + " " + set.name() + " "
                                    + set.shape().word() + " "
                                    + String.join(" ", set.parts().values()))
                            .toLowerCase(Locale.ROOT);
                    return wanted.stream().allMatch(text::contains);
                })
                .toList();
    }

    /**
     * What can be ordered.
     *
     * @param withParts whether parts count that are to be had by themselves, and not only sets
     */
    List<PartSet> orderable(boolean withParts) {
        Set<String> onlyInSets = catalogue().sets().values().stream()
                .filter(PartSet::onlyWhole)
                .flatMap(set -> set.parts().values().stream())
                .collect(Collectors.toSet());
        return everything()
                .filter(set -> set.shape() != SetShape.SINGLE || withParts && !onlyInSets.contains(set.number()))
                .toList();
    }

    private Stream<PartSet> everything() {
        return Stream.concat(
                catalogue().sets().values().stream(),
                catalogue().parts().values().stream().map(PartSet::of));
    }
}
