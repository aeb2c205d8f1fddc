package org.layshaft.engine.suspects;

/** Where symptoms and their causes are published. */
final class Sources {
    static final String A1 =
            "US Department of the Army, TM 5-3820-256-24-5, transmission troubleshooting section IX, noisy operation";
    static final String A2 =
            "US Department of the Army, TM 5-3820-256-24-5, section IX, noise in neutral, noise in gear, walking out of gear";
    static final String A3 =
            "US Department of the Army, TM 5-3810-300-24 & P2, transmission troubleshooting table, page 4-103";
    static final String A4 =
            "US Department of the Army, TM 9-2320-361-34 (1992), table 2-1, mechanical troubleshooting, item 31";
    static final String N1 = "US Navy, NAVEDTRA 14050A, sections 2.1.3 and 2.1.4, transfer cases";
    static final String N2 = "US Navy, training course 14050, troubleshooting transmissions";
    static final String T2 = "Manual Drive Trains and Axles, Goodheart-Willcox, 2021, chapter 11, p. 228";
    static final String T3 = "Manual Drive Trains and Axles, Goodheart-Willcox, 2021, chapter 11, p. 229";
    static final String V1 = "workshop manual of 2009, maker withheld, transaxle complaints and possible causes";
    static final String V2 = "workshop manual of 2007-2008, maker withheld, transaxle noise isolation";
    static final String V4 = "service bulletin of 1987, maker withheld, gearbox noise guide";

    private Sources() {}
}
