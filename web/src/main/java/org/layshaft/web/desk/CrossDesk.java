package org.layshaft.web.desk;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.kb.catalogue.PartSet;

/**
 * Every set against every box. The table is made once and remembered: without companions when it is first asked for, with
 * them beside whoever asks, because that takes far longer. Thread-safe.
 */
public final class CrossDesk {
    private final PartsDesk parts;
    private final Supplier<CrossTable> asTheyAre;
    private final AtomicInteger done = new AtomicInteger();
    private CompletableFuture<CrossTable> withCompanions;

    CrossDesk(PartsDesk parts) {
        this.parts = parts;
        this.asTheyAre = new Lazily<>(() -> make(false, any -> {}));
    }

    /** As many sets as there are. */
    public int size() {
        return sets().size();
    }

    /** How many sets are done with companions. */
    public int done() {
        return done.get();
    }

    /** Without companions. */
    public CrossTable asTheyAre() {
        return asTheyAre.get();
    }

    /** With companions, if that is made; if not, it is begun. */
    public Optional<CrossTable> withCompanions() {
        return Optional.ofNullable(begun().getNow(null));
    }

    /** With companions; waits until it is made. */
    public CrossTable awaitWithCompanions() {
        return begun().join();
    }

    /** Makes it here and now, with companions or without, and remembers nothing. */
    public CrossTable make(boolean companions, IntConsumer progress) {
        return parts.counter().cross(sets(), boxes(), companions ? FitDesk.BRIEFLY : 0, progress);
    }

    private synchronized CompletableFuture<CrossTable> begun() {
        if (withCompanions == null) {
            withCompanions = CompletableFuture.supplyAsync(() -> make(true, done::set));
        }
        return withCompanions;
    }

    private List<PartSet> sets() {
        return parts.orderable(false);
    }

    private Collection<BuiltBox> boxes() {
        return parts.counter().boxes().values();
    }

    /** What is wanted of a table. Throws {@link BadInputException} with everything that is not known. */
    public CrossChoice choice(CrossRequest request) {
        return CrossChoice.of(request, parts.boxes());
    }
}
