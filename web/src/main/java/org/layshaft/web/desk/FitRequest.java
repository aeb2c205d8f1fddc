package org.layshaft.web.desk;

import java.util.Optional;

/**
 * What somebody asks at the parts counter, as written.
 *
 * @param set number or name of a set or a part; empty for all that there are
 * @param box id or name of a build or a layout; empty for all
 * @param serial serial number of the box
 * @param place id or name of a place in it; empty for wherever something can stand
 */
public record FitRequest(Optional<String> set, Optional<String> box, Optional<String> serial, Optional<String> place) {
    /** Of one set, wherever it can stand. */
    public static FitRequest of(String set) {
        return new FitRequest(Optional.of(set), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public FitRequest in(String other) {
        return new FitRequest(set, Optional.of(other), serial, place);
    }

    public FitRequest at(String other) {
        return new FitRequest(set, box, serial, Optional.of(other));
    }
}
