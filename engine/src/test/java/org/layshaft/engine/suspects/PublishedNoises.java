package org.layshaft.engine.suspects;

import static org.layshaft.engine.suspects.Sources.A1;
import static org.layshaft.engine.suspects.Sources.A2;
import static org.layshaft.engine.suspects.Sources.N1;
import static org.layshaft.engine.suspects.Sources.N2;
import static org.layshaft.engine.suspects.Sources.T3;
import static org.layshaft.engine.suspects.Sources.V1;
import static org.layshaft.engine.suspects.Sources.V2;
import static org.layshaft.engine.suspects.Sources.V4;

import java.util.List;

/** Noises and their published causes. */
final class PublishedNoises {
    private static final String NEUTRAL = "neutral-pedal-up: noise";
    private static final String NEUTRAL_RATTLE = "neutral-pedal-up: rattles";
    private static final String IN_GEAR = "pulling: noise";
    private static final String ALL = "pulling 1, 2, 3, 4, 5: noise";
    private static final String ALL_BUT_DIRECT = "pulling 1, 2, 3, 5: whines; pulling 4: not whines";
    private static final String IN_FIRST = "pulling 1: noise; pulling 2, 3: not noise";
    private static final String IN_SECOND = "pulling 2: noise; pulling 1, 3: not noise";
    private static final String IN_THIRD = "pulling 3: noise; pulling 2, 4: not noise";
    private static final String SEEMINGLY = "noise";

    static final List<PublishedRow> ROWS = List.of(
            new PublishedRow("S001", A2, "curlew", NEUTRAL, "(mountings|clutch-housing) .*", "misaligned"),
            new PublishedRow("S002", A2, "curlew", NEUTRAL, "flywheel-bearing .*", "worn"),
            new PublishedRow("S003", A2, "curlew", NEUTRAL, "bearing countershaft-.*", "worn"),
            new PublishedRow("S004", A2, "curlew", NEUTRAL, "gear reverse-idler", "worn|chipped"),
            new PublishedRow("S005", A2, "curlew", NEUTRAL, "shaft countershaft", "bent"),
            new PublishedRow("S006", A2, "curlew", NEUTRAL, "gear (input-gear|cluster-driven)", "worn"),
            new PublishedRow("S007", A2, "curlew", NEUTRAL, "bearing pilot-bearing", "worn"),
            new PublishedRow("S008", A2, "curlew", NEUTRAL, "gear .*", "worn"),
            new PublishedRow("S009", A2, "curlew", NEUTRAL, "oil oil", "low"),
            new PublishedRow("S010", A2, "curlew", NEUTRAL, "oil oil", "wrong"),
            new PublishedRow("S013", V1, "lapwing", NEUTRAL, "bearing input-.*", "worn"),
            new PublishedRow("S014", V1, "lapwing", NEUTRAL, "bearing first-needles", "worn"),
            new PublishedRow("S015", V2, "lapwing", NEUTRAL, "bearing input-.*", "worn"),
            new PublishedRow("S016", V2, "lapwing", NEUTRAL, "gear input-.*", "worn"),
            new PublishedRow("S017", V2, "lapwing", NEUTRAL, "bearing .*-needles", "worn"),
            new PublishedRow("S019", V2, "lapwing", NEUTRAL, "release-bearing .*", "worn"),
            new PublishedRow("S023", T3, "lapwing", NEUTRAL, "(gear|blocking-ring) .*", "worn|broken|chipped"),
            new PublishedRow("S028", V4, "curlew", NEUTRAL_RATTLE, "oil oil", "low"),
            new PublishedRow("S029", V4, "curlew", NEUTRAL_RATTLE, "clutch-housing .*", "misaligned"),
            new PublishedRow("S030", V4, "curlew", NEUTRAL_RATTLE, "clutch clutch", "disc-untrue"),
            new PublishedRow("S032", A2, "curlew", IN_GEAR, "bearing output-bearing", "worn"),
            new PublishedRow("S033", A2, "phalarope", IN_GEAR, "gear (first|second|third)", "chipped|worn|tapered"),
            new PublishedRow("S034", A2, "curlew", IN_GEAR, "speed-reading .*", "noisy"),
            new PublishedRow("S035", A2, "curlew", IN_GEAR, "shaft countershaft", "end-play"),
            new PublishedRow("S037", A1, "curlew", "pulling: growls", "gear .*", "worn|chipped"),
            new PublishedRow("S038", A1, "curlew", "pulling: growls", "oil oil", "low|wrong"),
            new PublishedRow("S039", A1, "curlew", "pulling: hisses", "bearing .*", "worn"),
            new PublishedRow("S040", V4, "curlew", "pulling: clicks", "gear .*", "chipped"),
            new PublishedRow(
                    "S042", T3, "lapwing", "pulling: growls", "(bearing|carrier-bearings) (in|out|diff).*", "worn"),
            new PublishedRow("S047", V4, "curlew", "pulling: rattles", "gear .*", "worn"),
            new PublishedRow("S048", V4, "curlew", "pulling: rattles", "clutch-housing .*", "misaligned"),
            new PublishedRow("S049", N1, "oystercatcher", "pulling: whines", "oil oil", "low"),
            new PublishedRow("S050", N1, "oystercatcher", "pulling: whines", "gear (input-gear|high|low)", "worn"),
            new PublishedRow("S051", N1, "oystercatcher", "pulling: growls", "bearing .*", "worn"),
            new PublishedRow("S052", N1, "greenshank", "pulling: growls", "gear (sun|planet|ring)", "worn"),
            new PublishedRow("S053", T3, "lapwing", ALL + "; " + NEUTRAL, "oil oil", "low"),
            new PublishedRow("S054", T3, "redshank", ALL + "; " + NEUTRAL, "gear .*", "worn|chipped"),
            new PublishedRow("S055", T3, "curlew", ALL, "speed-reading .*", "noisy"),
            new PublishedRow("S068", V4, "whimbrel", ALL_BUT_DIRECT, "gear (input-gear|cluster-driven)", "worn"),
            new PublishedRow("S069", V4, "whimbrel", ALL_BUT_DIRECT, "oil oil", "low"),
            new PublishedRow("S070", A1, "curlew", IN_THIRD, "gear (cluster-)?third", "worn"),
            new PublishedRow(
                    "S072", T3, "curlew", IN_THIRD, "(gear|blocking-ring|hub|sleeve) .*third.*", "worn|broken|chipped"),
            new PublishedRow("S074", V1, "lapwing", IN_FIRST, "gear (input-)?first", "worn|chipped"),
            new PublishedRow("S076", V1, "lapwing", IN_SECOND, "gear (input-)?second", "worn|chipped"),
            new PublishedRow(
                    "S079",
                    V2,
                    "lapwing",
                    "pulling 1: noise",
                    "(differential|carrier-bearings|gear) (diff|ring).*",
                    "worn|case-worn"),
            new PublishedRow("S084", A1, "curlew", SEEMINGLY, "engine .*", "fan-out-of-balance"),
            new PublishedRow("S085", A1, "curlew", SEEMINGLY, "engine .*", "damper-defective"),
            new PublishedRow("S086", A1, "curlew", SEEMINGLY, "engine .*", "crankshaft-out-of-balance"),
            new PublishedRow("S087", A1, "curlew", SEEMINGLY, "engine .*", "flywheel-loose"),
            new PublishedRow("S088", A1, "curlew", SEEMINGLY, "engine .*", "rough-idle"),
            new PublishedRow("S089", A1, "curlew", SEEMINGLY, "clutch .*", "out-of-balance"),
            new PublishedRow("S090", A1, "curlew", SEEMINGLY, "mountings .*", "loose|broken"),
            new PublishedRow("S092", A1, "egret", SEEMINGLY, "joint .*", "universal-joint-worn"),
            new PublishedRow("S093", A1, "egret", SEEMINGLY, "joint .*", "out-of-balance"),
            new PublishedRow("S094", A1, "egret", SEEMINGLY, "joint .*", "centre-bearing-dry"),
            new PublishedRow("S095", A1, "egret", SEEMINGLY, "tyres .*", "humming|out-of-balance"),
            new PublishedRow("S096", A1, "curlew", SEEMINGLY, "engine .*", "induction-leak"),
            new PublishedRow(
                    "S097", N2, "egret", "rolling-in-neutral: noise", "(wheel-bearing|tyres) .*", "worn|humming"));

    private PublishedNoises() {}
}
