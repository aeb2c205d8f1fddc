package org.layshaft.web.gallery;

/** How reverse is put in. */
public enum ReverseBy {
    NONE("no reverse"),
    SYNCHRONISED_SLEEVE("reverse on a sleeve, synchronised"),
    DOG_SLEEVE("reverse on a sleeve, without a blocking ring"),
    SLIDING_IDLER("reverse by a sliding idler"),
    SLIDING_GEAR("reverse by a gear slid into mesh");

    private final String says;

    ReverseBy(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }

    boolean onSleeve() {
        return this == SYNCHRONISED_SLEEVE || this == DOG_SLEEVE;
    }
}
