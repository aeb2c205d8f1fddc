package org.layshaft.engine.suspects;

import java.util.List;

/**
 * Repairs told by their owners, examination items with a sound key, and service bulletins; each entered as it was told, on
 * the nearest demo box.
 */
final class PublishedCases {
    static final List<PublishedCase> ALL = List.of(
            new PublishedCase(
                    "C027",
                    "limited-slip hypoid axle, once apart: howls on the overrun, stops with the throttle, locks up coasting",
                    "snipe",
                    "overrun: whines; pulling: not whines; overrun: locks-up; after-work",
                    "pinion nut worked loose, the pinion walked into the differential",
                    "final-drive pinion-nut-loose"),
            new PublishedCase(
                    "C065",
                    "hypoid axle: howls on the overrun, quiet under power",
                    "knot",
                    "overrun: whines; pulling: not noise",
                    "pinion preload lost, the pinion moves and changes the depth of mesh",
                    "final-drive preload-lost"),
            new PublishedCase(
                    "C073",
                    "jumps out of any gear since the engine was replaced",
                    "curlew",
                    "pulling 1, 2, 3, 4, 5: jumps-out; after-work",
                    "clutch housing misaligned, or pilot worn, so that the input shaft is tipped",
                    "clutch-housing misaligned|mountings misaligned|flywheel-bearing worn|pilot-bearing worn"),
            new PublishedCase(
                    "C043",
                    "rear-wheel drive: vibrates at cruising speed under load, stops coasting in neutral",
                    "egret",
                    "pulling: vibrates; floating: vibrates; rolling-in-neutral: not vibrates",
                    "universal joint worn",
                    "propeller-shaft universal-joint-worn"),
            new PublishedCase(
                    "C042",
                    "inline four-speed: knocks in first and reverse under load, other gears quiet",
                    "avocet",
                    "pulling 1, R: clatters; pulling 2, 3, 4: not noise",
                    "broken tooth of the section of the cluster that first and reverse share",
                    "(cluster-first|first|cluster-reverse) (chipped|stripped)"),
            new PublishedCase(
                    "C070",
                    "twin-countershaft box after overhaul: gears are damaged throughout",
                    "heron",
                    "damages-gears; after-work",
                    "one countershaft timed a tooth out",
                    "countershaft-timing a-tooth-out"),
            new PublishedCase(
                    "C056",
                    "inline five-speed with overdrive: fifth jumps out at once under load, the others hold",
                    "whimbrel",
                    "pulling 5: jumps-out; pulling 1, 2, 3, 4, R: not jumps-out",
                    "hub and sleeve, or fork, of fifth worn or only partly engaged",
                    "(5-R-hub|5-R-sleeve|5-R-fork) .*"),
            new PublishedCase(
                    "C016",
                    "three-shaft four-speed on the bench: jammed in first after gears were tried without the cover",
                    "avocet",
                    "selected 1: locks-up; shifting-out-of 1: will-not-move; after-work",
                    "hub of first and second pushed past its travel, its balls out",
                    "1-2-(keys (out|broken)|sleeve stuck|hub .*)"),
            new PublishedCase(
                    "C047",
                    "tractor with sliding gears: now and then stuck in reverse and in first",
                    "phalarope",
                    "shifting-out-of 1, R: will-not-move; shifting-out-of 2, 3, 4: not will-not-move",
                    "detent springs rusted, plungers jammed the rail",
                    ".*-detent jammed"),
            new PublishedCase(
                    "C001",
                    "tractor with sliding gears: two gears at once, first and fourth, will not roll",
                    "phalarope",
                    "selected 1, 4: locks-up",
                    "fork of first and reverse broken, its gear stayed in mesh",
                    "first-fork (broken|pin-sheared)"),
            new PublishedCase(
                    "C004",
                    "inline four-speed, rebuilt: vibrates in third under hard load, later stuck in third and fourth",
                    "avocet",
                    "pulling 3: vibrates; shifting-out-of 3, 4: will-not-move; after-work",
                    "pilot bearing left out at the rebuild",
                    "pilot-bearing left-out"),
            new PublishedCase(
                    "C038",
                    "four-speed with a sliding first: growls, all gears work",
                    "avocet",
                    "growls",
                    "needle bearings of the cluster ruined by chips",
                    "countershaft-(front|rear)-bearing worn"),
            new PublishedCase(
                    "C012",
                    "any constant-mesh box: clatters in neutral at idle when hot, quiet with the pedal down, all else well",
                    "curlew",
                    "hot neutral-pedal-up: clatters; neutral-pedal-down: not noise",
                    "no fault; at most the damper of the clutch disc",
                    "box-case rattling-at-idle|clutch damper-worn"),
            new PublishedCase(
                    "C015",
                    "transverse five-speed with two cables: no second, fourth or reverse, the lever moves without feel",
                    "plover",
                    "selected 2, 4, R: no-drive; at-the-lever 2, 4, R: moves-without-feel; selected 1, 3, 5: not no-drive",
                    "fore-and-aft cable broken or detached",
                    "shift-cable (off|out-of-adjustment)"),
            new PublishedCase(
                    "C018",
                    "two-speed gear transfer box: jumps out of high at a cruise, high gets harder to select, low is well",
                    "oystercatcher",
                    "floating high two-wheel: jumps-out; shifting-into high two-wheel: hard-to-select; low two-wheel: not jumps-out; shifting-into low two-wheel: not hard-to-select",
                    "mud round the range lever kept the linkage from its full travel",
                    "range-linkage (blocked|out-of-adjustment)"),
            new PublishedCase(
                    "C031",
                    "chain-driven transfer box: knocks under load with four wheels driven, two-wheel drive is well",
                    "greenshank",
                    "pulling: clatters",
                    "chain stretched, it rides up and strikes the case",
                    "upper-sprocket-chain stretched"),
            new PublishedCase(
                    "C051",
                    "four-wheel drive with a viscous coupling: binds in tight turns as if braked",
                    "crane",
                    "in-a-bend: binds-in-bends",
                    "viscous coupling too stiff: front and rear axle tied",
                    "transfer-centre-differential-(pinions seized|cross-shaft .*|limited-slip .*)|transfer-centre-lock-actuator stuck|transfer-lock-.* (stuck|seized|broken)"));

    private PublishedCases() {}
}
