package org.layshaft.web.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;

/**
 * What a text comes to that is not loaded.
 *
 * @param findings in the text itself, by line
 * @param elsewhere what it would break in other files
 * @param box what it comes to; empty where anything in the text is broken
 * @param unsolved why there is no box though nothing is broken; empty otherwise
 */
public record Look(
        String text, List<Finding> findings, List<Finding> elsewhere, Optional<Box> box, Optional<String> unsolved) {
    public Look {
        findings = List.copyOf(findings);
        elsewhere = List.copyOf(elsewhere);
    }

    /** Whether it may be saved as a layout. */
    public boolean isSound() {
        return box.isPresent() && elsewhere.isEmpty();
    }

    /** Everything that stands in the way of saving it as a layout. */
    public List<Finding> broken() {
        return Stream.concat(findings.stream().filter(finding -> finding.grade() == Grade.BROKEN), elsewhere.stream())
                .toList();
    }

    /** The gear of this name; else the first. */
    public Optional<Box.DerivedGear> gear(Optional<String> name) {
        List<Box.DerivedGear> gears = box.map(Box::gears).orElse(List.of());
        return gears.stream()
                .filter(gear -> name.filter(gear.name()::equalsIgnoreCase).isPresent())
                .findFirst()
                .or(() -> gears.stream().findFirst());
    }
}
