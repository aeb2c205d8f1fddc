package org.layshaft.engine.suspects;

import static org.layshaft.engine.suspects.Sources.A2;
import static org.layshaft.engine.suspects.Sources.A3;
import static org.layshaft.engine.suspects.Sources.A4;
import static org.layshaft.engine.suspects.Sources.N1;
import static org.layshaft.engine.suspects.Sources.T2;
import static org.layshaft.engine.suspects.Sources.T3;
import static org.layshaft.engine.suspects.Sources.V1;

import java.util.List;

/** What is noticed other than noise, and its published causes. */
final class PublishedShifts {
    private static final String JUMPS = "pulling: jumps-out";
    private static final String JUMPS_AND_GRINDS = "pulling: jumps-out; shifting-into: grinds-going-in";
    private static final String HARD = "shifting-into: hard-to-select";
    private static final String HARD_STANDING_TOO = HARD + "; at-the-lever: hard-to-select";
    private static final String HARD_RUNNING_ONLY = HARD + "; at-the-lever: not hard-to-select";
    private static final String GRINDS = "shifting-into: grinds-going-in";
    private static final String GRINDS_EVERYWHERE = "shifting-into 1, 2, 3, 4, 5, R: grinds-going-in";
    private static final String GRINDS_IN_ONE =
            "shifting-into 3: grinds-going-in; shifting-into 1, 2, 4, 5: not grinds-going-in";
    private static final String STICKS = "shifting-out-of: will-not-move";
    private static final String LOCKED = "selected: locks-up";
    private static final String NO_DRIVE = "selected: no-drive";
    private static final String CLUNKS = "on-and-off: clunks";
    private static final String LEAKS = "at-rest: leaks";

    static final List<PublishedRow> ROWS = List.of(
            new PublishedRow("S098", A2, "curlew", JUMPS, "(lever-boot|linkage) .*", "in-the-way|blocked"),
            new PublishedRow("S099", A2, "curlew", JUMPS, "clutching-teeth .*", "rounded"),
            new PublishedRow("S100", A3, "curlew", JUMPS, "(mountings|clutch-housing) .*", "misaligned"),
            new PublishedRow("S101", A3, "curlew", JUMPS, "detent .*", "weak"),
            new PublishedRow("S102", A3, "curlew", JUMPS, "detent .*", "weak"),
            new PublishedRow("S103", A3, "curlew", JUMPS, "fork .*", "bent|worn|pin-sheared"),
            new PublishedRow("S104", A3, "lapwing", JUMPS, "(linkage|shift-cable|gate-cable) .*", "out-of-adjustment"),
            new PublishedRow("S105", A3, "curlew", JUMPS, "clutching-teeth .*", "rounded"),
            new PublishedRow("S106", A3, "curlew", JUMPS, "bearing .*", "worn"),
            new PublishedRow("S107", A3, "curlew", JUMPS, "mountings .*", "misaligned|loose|broken"),
            new PublishedRow("S108", A4, "curlew", JUMPS_AND_GRINDS, "fork .*", "misplaced"),
            new PublishedRow(
                    "S109", A4, "curlew", JUMPS_AND_GRINDS, "(blocking-ring|keys|sleeve|hub) .*", "worn|broken|out"),
            new PublishedRow(
                    "S110",
                    N1,
                    "oystercatcher",
                    "pulling high two-wheel: jumps-out; pulling low two-wheel: not jumps-out",
                    "(gear|clutching-teeth) high.*",
                    "worn|chipped|rounded"),
            new PublishedRow(
                    "S137",
                    T2,
                    "lapwing",
                    HARD_STANDING_TOO,
                    "(linkage|shift-cable|gate-cable) .*",
                    "stiff|out-of-adjustment|worn|kinked"),
            new PublishedRow("S138", T2, "lapwing", HARD_RUNNING_ONLY, "clutch .*", "dragging"),
            new PublishedRow(
                    "S139",
                    T2,
                    "lapwing",
                    HARD_RUNNING_ONLY,
                    "(blocking-ring|keys|clutching-teeth) .*",
                    "worn|stuck|broken|rounded"),
            new PublishedRow("S140", T2, "lapwing", HARD, "(rail|fork) .*", "bent|seized"),
            new PublishedRow("S141", T2, "lapwing", HARD, "(mountings|clutch-housing) .*", "misaligned|broken|loose"),
            new PublishedRow("S158", T3, "curlew", GRINDS_EVERYWHERE, "clutch .*", "dragging"),
            new PublishedRow("S159", T3, "curlew", GRINDS_IN_ONE, "blocking-ring third-ring", "worn"),
            new PublishedRow("S160", T3, "curlew", GRINDS, "(mountings|clutch-housing) .*", "misaligned|loose"),
            new PublishedRow("S168", A3, "curlew", STICKS, "clutch .*", "dragging|stuck"),
            new PublishedRow("S169", A3, "phalarope", STICKS, "gear (first|second|third)", "galled"),
            new PublishedRow("S170", A3, "lapwing", STICKS, "(linkage|shift-cable|gate-cable) .*", "out-of-adjustment"),
            new PublishedRow("S177", T2, "curlew", LOCKED, "interlock(-piece)? .*", "missing|worn"),
            new PublishedRow("S178", T2, "heron", LOCKED, "linkage .*", "off"),
            new PublishedRow("S182", T2, "curlew", NO_DRIVE, "shaft .*", "cut"),
            new PublishedRow("S183", T2, "lapwing", NO_DRIVE, "gear input-.*", "stripped"),
            new PublishedRow("S184", T2, "lapwing", NO_DRIVE, "(linkage|shift-cable|gate-cable) .*", "off"),
            new PublishedRow("S188", T3, "egret", CLUNKS, "(final-drive|differential.*) .*", "backlash-large|worn"),
            new PublishedRow("S189", V1, "lapwing", CLUNKS, "inner-joint .*", "worn"),
            new PublishedRow("S190", V1, "lapwing", CLUNKS, "cross-shaft .*", "worn"),
            new PublishedRow("S191", V1, "lapwing", CLUNKS, "(side-gears|differential) .*", "worn|case-worn"),
            new PublishedRow("S193", V1, "lapwing", "in-a-bend: noise", "(side-gears|differential-pinions) .*", "worn"),
            new PublishedRow("S194", V1, "lapwing", "in-a-bend: clicks", "outer-joint .*", "worn"),
            new PublishedRow("S204", A3, "curlew", LEAKS, "oil .*", "overfull|wrong"),
            new PublishedRow("S205", A3, "curlew", LEAKS, "breather .*", "blocked"),
            new PublishedRow("S206", A3, "curlew", LEAKS, "box-case .*", "drain-holes-blocked"),
            new PublishedRow(
                    "S207", A3, "curlew", LEAKS, "(seals|box-case) .*", "leaking|misfitted|cracked|plug-loose"));

    private PublishedShifts() {}
}
