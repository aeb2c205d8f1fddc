package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Sides;

/** Turns what is said with a gear or a part into a side of a sleeve or a place along a shaft. */
final class Places {
    private final BoxWords words;
    private final List<String> along;

    Places(BoxWords words, String shaft) {
        this.words = words;
        this.along = words.layout().find(Shaft.class, shaft).map(Shaft::along).orElse(List.of());
    }

    /** The side, of what this part moves or belongs to, on which the mentioned gear lies: {@code front}. */
    static Optional<String> sideOf(BoxWords words, String part, Mention mention) {
        return mention.gear()
                .flatMap(gear -> Sides.sideOf(words.box(), part, gear))
                .or(() -> Sides.sideOfWheel(words.box(), part, mention.parts()));
    }

    /** Just behind what is mentioned. */
    Optional<String> behind(Mention mention) {
        return onShaft(mention);
    }

    /** What sits just in front of what is mentioned. */
    Optional<String> inFrontOf(Mention mention) {
        return onShaft(mention).map(along::indexOf).filter(at -> at > 0).map(at -> along.get(at - 1));
    }

    /** Every place between the two, from the front. */
    List<String> between(Mention one, Mention other) {
        int first = onShaft(one).map(along::indexOf).orElse(-1);
        int second = onShaft(other).map(along::indexOf).orElse(-1);
        boolean both = first >= 0 && second >= 0;
        return both ? along.subList(Math.min(first, second), Math.max(first, second)) : List.of();
    }

    /** The mentioned thing itself if it sits on the shaft, else the one gear there that meshes with it. */
    private Optional<String> onShaft(Mention mention) {
        return mention.parts().stream().filter(along::contains).findFirst().or(() -> {
            List<String> partners = words.layout()
                    .everyMesh()
                    .flatMap(
                            mesh -> mention.parts().stream().filter(mesh::joins).map(mesh::other))
                    .filter(along::contains)
                    .distinct()
                    .toList();
            return partners.size() == 1 ? Optional.of(partners.get(0)) : Optional.empty();
        });
    }
}
