package org.layshaft.web.gallery;

/** What kind of thing a layout is. */
public enum Family {
    INLINE("inline box"),
    OFFSET("box with its output beside the input"),
    TRANSAXLE("transaxle"),
    TRANSFER("transfer box"),
    AXLE("axle"),
    VEHICLE("whole car");

    private final String says;

    Family(String says) {
        this.says = says;
    }

    /** {@code transfer box}. */
    public String says() {
        return says;
    }
}
