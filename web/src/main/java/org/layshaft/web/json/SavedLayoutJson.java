package org.layshaft.web.json;

import java.util.List;
import org.layshaft.web.board.Saved;
import org.layshaft.web.json.FindingsJson.FindingJson;

/**
 * That a layout is saved.
 *
 * @param version SHA-256 of its text, in hexadecimal
 * @param loaded whether it is known from now on
 * @param unloaded what keeps its pack from being loaded
 */
public record SavedLayoutJson(
        String layout, String pack, String version, boolean created, boolean loaded, List<FindingJson> unloaded) {
    public static SavedLayoutJson of(Saved.Done done) {
        return new SavedLayoutJson(
                done.kept().place().layout(),
                done.kept().place().pack(),
                done.kept().version(),
                done.created(),
                done.unloaded().isEmpty(),
                done.unloaded().stream().map(FindingJson::of).toList());
    }
}
