package org.layshaft.web.page;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.words.Words;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.Diagnosis;

/**
 * A diagnosis on the page.
 *
 * @param trouble what could not be used of what was typed; empty where all could
 * @param typed what was typed then
 * @param seen what was noticed, each to be taken out again
 * @param written the same as a form passes it on
 * @param why what it comes to; null where nothing is told yet
 * @param first the first suspects
 * @param others the rest
 */
record SuspectsView(
        String layout,
        String layoutName,
        List<LinkView> layouts,
        List<String> trouble,
        String typed,
        List<SeenView> seen,
        List<String> written,
        boolean afterWork,
        List<ChoiceView> notices,
        List<ChoiceView> situations,
        List<ChoiceView> gears,
        String verdict,
        String why,
        List<SuspectView> first,
        List<SuspectView> others,
        List<SuspectView> pairs,
        List<TestView> tests,
        String boxHref,
        String fileHref,
        String apiHref) {
    private static final int FIRST = 8;

    /** An observation, to be taken out or turned round. */
    record SeenView(String says, boolean noticed, String removeHref) {}

    /** Something to choose in the form. */
    record ChoiceView(String value, String text) {}

    static SuspectsView of(
            Diagnosis diagnosis,
            Box box,
            Words words,
            Names names,
            Function<Observation, String> say,
            List<LinkView> layouts,
            List<String> trouble,
            String typed) {
        Suspects suspects = diagnosis.suspects();
        Evidence evidence = diagnosis.evidence();
        String layout = diagnosis.layout().id();
        DiagnosisAddress address = DiagnosisAddress.of(layout, evidence);
        boolean told = !address.seen().isEmpty();
        List<SuspectView> singles = SuspectView.all(suspects.singles(), diagnosis, say);
        int split = Math.min(FIRST, singles.size());
        return new SuspectsView(
                layout,
                diagnosis.layout().name(),
                layouts,
                trouble,
                typed,
                seen(diagnosis, address),
                address.seen(),
                evidence.afterWork(),
                words.notices().entrySet().stream()
                        .map(entry ->
                                new ChoiceView(entry.getKey(), entry.getValue().name()))
                        .toList(),
                Arrays.stream(Situation.values())
                        .map(situation -> new ChoiceView(situation.word(), names.condition(situation)))
                        .toList(),
                box.gears().stream()
                        .map(gear -> new ChoiceView(gear.name(), Names.gearName(gear.name())))
                        .toList(),
                told ? verdict(suspects.outcome()) : null,
                told ? suspects.why() : null,
                singles.subList(0, split),
                singles.subList(split, singles.size()),
                SuspectView.all(suspects.pairs(), diagnosis, say),
                TestView.all(diagnosis),
                Address.of(layout).link(),
                address.file(),
                address.api());
    }

    private static String verdict(Suspects.Outcome outcome) {
        return switch (outcome) {
            case SUSPECTS -> "Suspects";
            case NO_FAULT -> "Perhaps no fault at all";
            case CANNOT_BE_TOLD -> "Cannot be told from this";
        };
    }

    private static List<SeenView> seen(Diagnosis diagnosis, DiagnosisAddress address) {
        List<Diagnosis.Understood> all = diagnosis.understood();
        return IntStream.range(0, all.size())
                .mapToObj(place -> new SeenView(
                        Saying.sentence(all.get(place).says()),
                        all.get(place).observation().seen(),
                        without(address, place)))
                .toList();
    }

    private static String without(DiagnosisAddress address, int place) {
        return new DiagnosisAddress(
                        address.layout(),
                        IntStream.range(0, address.seen().size())
                                .filter(each -> each != place)
                                .mapToObj(address.seen()::get)
                                .toList())
                .link();
    }

    /** To the same without its earlier work. */
    public String workHref() {
        return new DiagnosisAddress(
                        layout,
                        written.stream()
                                .filter(each -> !each.equals(Evidence.AFTER_WORK))
                                .toList())
                .link();
    }

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean isStarting() {
        return written.isEmpty();
    }

    public boolean hasOthers() {
        return !others.isEmpty();
    }

    public int othersCount() {
        return others.size();
    }

    public boolean hasPairs() {
        return !pairs.isEmpty();
    }

    public boolean hasTests() {
        return !tests.isEmpty();
    }
}
