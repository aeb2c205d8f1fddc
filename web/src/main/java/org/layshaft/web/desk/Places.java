package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** What is engaged at the places of a sleeve, a sliding gear or a clutch, in words. */
public record Places(Layout layout, Names names) {

    /** What it engages there: {@code first}, {@code reverse idler and rim}; {@code neutral}. */
    public String engaged(String member, Optional<Side> side) {
        return side.flatMap(to -> layout.member(member).at(to))
                .map(engagement -> engaged(member, engagement))
                .orElse("neutral");
    }

    /** As a clause: {@code the 1-2 sleeve to the front (first)}. */
    public String standing(String member, Side side) {
        return "%s to the %s (%s)".formatted(names.the(member), side.word(), engaged(member, Optional.of(side)));
    }

    private String engaged(String member, Engagement engagement) {
        if (engagement instanceof Engagement.Couples couples) {
            return names.of(couples.to());
        }
        if (engagement instanceof Engagement.Meshes meshes) {
            List<String> mates = meshes.meshes().stream()
                    .map(mesh -> names.of(mesh.joins(member) ? mesh.other(member) : mesh.second()))
                    .distinct()
                    .toList();
            return "mesh with " + Names.joined(mates);
        }
        return "closed, driving " + names.the(((Engagement.Closes) engagement).shaft());
    }
}
