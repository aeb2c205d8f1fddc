package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.pack.Reading;

/**
 * What {@code check} found.
 *
 * @param sound whether everything can be loaded
 * @param layouts what each layout that can be loaded comes to
 */
public record FindingsJson(boolean sound, List<FindingJson> findings, List<ComesTo> layouts) {

    /**
     * What a layout comes to.
     *
     * @param differences printed ratios that are not what is derived
     */
    public record ComesTo(String layout, List<LayoutJson.Derived> gears, List<Box.Difference> differences) {
        static ComesTo of(Box box) {
            return new ComesTo(
                    box.layout().id(),
                    box.gears().stream()
                            .map(gear -> LayoutJson.derived(gear, box.layout()))
                            .toList(),
                    box.differences());
        }
    }

    /**
     * One finding.
     *
     * @param grade {@code broken} or {@code doubtful}
     * @param line from 1; 0 where there is none
     */
    public record FindingJson(
            String grade, String file, String pointer, int line, String what, String value, String advice) {
        static FindingJson of(Finding finding) {
            return new FindingJson(
                    Spelling.of(finding.grade()),
                    finding.file(),
                    finding.pointer(),
                    finding.line(),
                    finding.what(),
                    finding.value(),
                    finding.advice());
        }
    }

    public static FindingsJson of(Reading reading, List<Box> boxes) {
        return new FindingsJson(
                reading.isSound(),
                reading.findings().stream().map(FindingJson::of).toList(),
                boxes.stream().map(ComesTo::of).toList());
    }
}
