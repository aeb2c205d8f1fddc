package org.layshaft.kb.pack;

import java.util.List;
import org.layshaft.kb.finding.Finding;

/**
 * What came of reading packs.
 *
 * @param knowledge what the sound packs hold; nothing of a broken one
 * @param findings everything found wrong or doubtful, in the order of packs, files and lines
 */
public record Reading(KnowledgeBase knowledge, List<Finding> findings) {
    public Reading {
        findings = List.copyOf(findings);
    }

    public boolean isSound() {
        return findings.stream().noneMatch(finding -> finding.grade() == Finding.Grade.BROKEN);
    }
}
