package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.stream.Stream;

/** What somebody can wish of a box in its vehicle. */
public enum WishKind {
    NEARER("nearer", "nearer to another gear"),
    STEP("step", "a step to another gear"),
    RATIO("ratio", "a ratio of its own"),
    LONGER("longer", "longer, by per cent"),
    SHORTER("shorter", "shorter, by per cent"),
    RPM("rpm", "an engine speed at a road speed"),
    RPM_LOWER("rpm-lower", "the engine lower by so many rpm"),
    RPM_HIGHER("rpm-higher", "the engine higher by so many rpm"),
    AXLE("axle", "an axle ratio for an engine speed or for other tyres"),
    READING("reading", "the speed reading kept right");

    private final String word;
    private final String spoken;

    WishKind(String word, String spoken) {
        this.word = word;
        this.spoken = spoken;
    }

    /** As written in an address: {@code rpm-lower}. */
    public String word() {
        return word;
    }

    /** As a clause. */
    public String spoken() {
        return spoken;
    }

    /** Whether it is had by other teeth of one gear. */
    public boolean isOfGear() {
        return this != AXLE && this != READING;
    }

    /** Whether it speaks of the engine's speed on the road. */
    boolean isOfEngineSpeed() {
        return this == RPM || this == RPM_LOWER || this == RPM_HIGHER;
    }

    /** Throws {@link BadInputException} with all that there are. */
    static WishKind of(String written) {
        List<String> words = Stream.of(values()).map(WishKind::word).toList();
        return Stream.of(values())
                .filter(kind -> kind.word.equalsIgnoreCase(written.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no wish \"%s\". There are: %s.".formatted(written, String.join(", ", words)),
                        Nearest.to(written, words)));
    }
}
