package org.layshaft.kb.pack;

import java.util.List;
import org.layshaft.kb.finding.Finding;

/**
 * The files of one pack.
 *
 * @param from the folder or jar they came from
 * @param findings what could not be opened, and what nobody reads
 */
record PackFiles(String from, List<PackFile> files, List<Finding> findings) {
    PackFiles {
        files = List.copyOf(files);
        findings = List.copyOf(findings);
    }
}
