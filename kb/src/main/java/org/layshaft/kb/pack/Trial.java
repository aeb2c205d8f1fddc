package org.layshaft.kb.pack;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;
import org.layshaft.kb.layout.Layout;

/**
 * What would come of a layout if it stood in its pack.
 *
 * @param file of the layout, as findings name it
 * @param layout empty where anything in its file is broken
 * @param all everything that would be found, in whatever pack
 */
public record Trial(String file, Optional<Layout> layout, List<Finding> all) {
    public Trial {
        all = List.copyOf(all);
    }

    /** What is found in the file itself. */
    public List<Finding> own() {
        return all.stream().filter(finding -> finding.file().equals(file)).toList();
    }

    /**
     * What it would break in other files.
     *
     * @param before what is found without it
     */
    public List<Finding> brokenElsewhere(List<Finding> before) {
        return all.stream()
                .filter(finding -> finding.grade() == Grade.BROKEN)
                .filter(finding -> !finding.file().equals(file))
                .filter(finding -> !before.contains(finding))
                .toList();
    }
}
