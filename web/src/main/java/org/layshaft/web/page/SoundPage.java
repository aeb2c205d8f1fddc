package org.layshaft.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Source;
import org.layshaft.engine.sound.SourceKind.Family;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.Listened;
import org.layshaft.web.desk.SoundDesk;
import org.layshaft.web.desk.SoundRequest;
import org.layshaft.web.desk.SoundWording;

/** Decides what the page of what a box sounds shows. Thread-safe. */
final class SoundPage {
    private static final String PATH = "/sound";

    private final Desk desk;
    private final SoundDesk sounds;

    SoundPage(Desk desk) {
        this.desk = desk;
        this.sounds = new SoundDesk(desk);
    }

    /** What was asked for; where layout or gear are left open, the first. */
    SoundView view(SoundRequest request) {
        SoundRequest ofLayout = request.layout().isPresent() ? request : request.ofLayout(first());
        SoundRequest asked = ofLayout.gear().isPresent() ? ofLayout : ofLayout.inGear(firstGear(ofLayout));
        Listened listened = sounds.listen(asked);
        String heading = "%s in %s".formatted(listened.layout().name(), listened.says());
        return new SoundView(
                layouts(listened.layout()),
                SoundFormView.of(
                        asked, desk.box(listened.layout()), listened.sounds().gear()),
                heading,
                listened.measured()
                        .map(measured -> "%s Hz, within %s Hz"
                                .formatted(Decimals.plain(measured.hz(), 2), Decimals.plain(measured.toleranceHz(), 2)))
                        .orElse(null),
                fits(listened),
                SoundLanes.figure(listened).svg("Orders of " + heading),
                families(listened),
                listened.inputRpm().isPresent(),
                listened.sounds().untold(),
                "/api" + PATH + query(asked));
    }

    private String first() {
        return desk.knowledge().layouts().keySet().stream().findFirst().orElse("");
    }

    private String firstGear(SoundRequest request) {
        return desk.box(desk.layout(request.layout().orElseThrow()))
                .gears()
                .get(0)
                .name();
    }

    private List<PageView.LayoutView> layouts(Layout current) {
        return desk.knowledge().layouts().values().stream()
                .map(layout -> new PageView.LayoutView(
                        layout.name(), layout.summary(), PATH + "?layout=" + layout.id(), layout.equals(current)))
                .toList();
    }

    private static List<SoundView.FitView> fits(Listened listened) {
        List<Integer> ranks = listened.fits().stream().map(Match::rank).toList();
        return listened.fits().stream()
                .map(match -> fit(
                        match,
                        ranks.indexOf(match.rank()) != ranks.lastIndexOf(match.rank()),
                        listened.sounds().sources().indexOf(match.source()) + 1))
                .toList();
    }

    private static SoundView.FitView fit(Match match, boolean shared, int number) {
        return new SoundView.FitView(
                match.rank(),
                shared,
                number,
                match.source().what(),
                match.says().orElse(null),
                SoundWording.exact(match.order()),
                SoundWording.hz(match.hz()),
                SoundWording.off(match.offPercent()),
                match.source().how(),
                SoundWording.load(match.source().loaded()));
    }

    private static List<SoundView.FamilyView> families(Listened listened) {
        List<Source> sources = listened.sounds().sources();
        Map<Family, List<SoundView.LineView>> families = new EnumMap<>(Family.class);
        for (int place = 0; place < sources.size(); place++) {
            families.computeIfAbsent(sources.get(place).kind().family(), any -> new ArrayList<>())
                    .add(line(place + 1, sources.get(place), listened.inputRpm()));
        }
        return families.entrySet().stream()
                .map(family -> new SoundView.FamilyView(SoundWording.of(family.getKey()), family.getValue()))
                .toList();
    }

    private static SoundView.LineView line(int number, Source source, Optional<Fraction> rpm) {
        return new SoundView.LineView(
                number,
                source.what(),
                source.how(),
                SoundWording.decimal(source.order()),
                SoundWording.exact(source.order()),
                rpm.map(source.order()::hz).map(SoundWording::hz).orElse(null),
                source.loaded(),
                SoundWording.load(source.loaded()));
    }

    private static String query(SoundRequest request) {
        return Stream.of(
                        pair("layout", request.layout()),
                        pair("gear", request.gear()),
                        pair("rpm", request.rpm()),
                        pair("kmh", request.kmh()),
                        pair("mph", request.mph()),
                        pair("hz", request.hz()),
                        pair("within", request.within()),
                        pair("harmonics", request.harmonics()),
                        pair("sidebands", request.sidebands()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("&", "?", ""));
    }

    private static Optional<String> pair(String name, Optional<String> value) {
        return value.map(written -> name + "=" + URLEncoder.encode(written, StandardCharsets.UTF_8));
    }
}
