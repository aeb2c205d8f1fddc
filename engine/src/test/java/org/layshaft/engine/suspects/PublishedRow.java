package org.layshaft.engine.suspects;

import java.util.regex.Pattern;
import org.layshaft.engine.symptom.FaultDictionary.Entry;

/**
 * A published pair of symptom and cause, in our words, on a demo box that has the part.
 *
 * @param source where it is published
 * @param layout id of the box
 * @param evidence the symptom as evidence is written
 * @param part matches kind and id of a part: {@code bearing countershaft-.*}
 * @param mode matches the names of the modes that say what the source says
 */
record PublishedRow(String id, String source, String layout, String evidence, String part, String mode) {

    /** Whether the source may be cited; workshop manuals without a name are a guide only. */
    boolean isCited() {
        return !source.contains("maker withheld");
    }

    boolean means(Entry entry) {
        return means(entry.part().kind().word(), entry.part().id(), entry.mode().name());
    }

    boolean means(String kind, String partId, String modeName) {
        return Pattern.matches(part, kind + " " + partId) && Pattern.matches(mode, modeName);
    }
}
