package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.OtherTyre;
import org.layshaft.engine.swap.Wish;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Ordinals;
import org.layshaft.web.desk.WishRead.WishedAxle;

/** Takes in what was written of a wish; what is missing or cannot be read is told at once. */
final class WishReading {
    private static final Fraction HUNDRED = Fraction.of(100);
    private static final Fraction TWO_PER_CENT = Fraction.of(2, 100);

    private final WrittenNumbers written = new WrittenNumbers();
    private final WishRequest request;
    private final WishKind kind;
    private final Gearing gearing;
    private final String box;

    WishReading(WishRequest request, WishKind kind, Gearing gearing, String box) {
        this.request = request;
        this.kind = kind;
        this.gearing = gearing;
        this.box = box;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    WishRead read() {
        if (kind == WishKind.READING) {
            return reading();
        }
        if (kind == WishKind.AXLE) {
            return axle();
        }
        Optional<String> gear = gear();
        Optional<Fraction> centreMm = written.positive("centre distance", request.centre(), "96");
        Optional<Fraction> within =
                written.positive("miss in per cent", request.within(), "2").map(percent -> percent.over(HUNDRED));
        Optional<Said> said = gear.flatMap(name -> wish(name, within.orElse(TWO_PER_CENT)));
        written.refuse();
        return new WishRead(
                "%s %s"
                        .formatted(
                                Names.gearName(gear.orElseThrow()),
                                said.orElseThrow().words()),
                Optional.of(said.orElseThrow().wish()),
                centreMm,
                engineSpeed(gear.get()),
                Optional.empty());
    }

    /** A wish, and the words after its gear. */
    private record Said(Wish wish, String words) {}

    private Optional<Said> wish(String gear, Fraction within) {
        switch (kind) {
            case NEARER:
                return other(gear).map(to -> new Said(new Wish.Nearer(gear, to), "nearer " + Names.gearName(to)));
            case STEP:
                Optional<String> to = other(gear);
                return value("step", "1.5")
                        .flatMap(step -> to.map(stays -> new Said(
                                new Wish.StepTo(gear, stays, step, within),
                                "a step of %s from %s".formatted(value(), Names.gearName(stays)))));
            case RATIO:
                return value("ratio", "1.65")
                        .map(ratio -> new Said(new Wish.RatioOf(gear, ratio, within), "at " + value()));
            case LONGER, SHORTER:
                return value("per cent", "10").flatMap(percent -> byPercent(gear, percent, within));
            default:
                Optional<Fraction> kmh = kmh();
                return value("engine speed", "300")
                        .flatMap(rpm -> kmh.map(speed -> engineSpeed(gear, rpm, speed, within)));
        }
    }

    private Optional<Said> byPercent(String gear, Fraction percent, Fraction within) {
        boolean longer = kind == WishKind.LONGER;
        if (longer && percent.compareTo(HUNDRED) >= 0) {
            written.add(new BadInputException(
                    UNFIT,
                    "A gear cannot be %s per cent longer: nothing would be left of its ratio.".formatted(value())));
            return Optional.empty();
        }
        Fraction part = percent.over(HUNDRED);
        Fraction factor = longer ? Fraction.ONE.minus(part) : Fraction.ONE.plus(part);
        Fraction ratio = gearing.ratios().get(gear).absolute().times(factor);
        return Optional.of(new Said(
                new Wish.RatioOf(gear, ratio, within),
                "%s per cent %s, its ratio that much %s".formatted(value(), kind.word(), longer ? "lower" : "higher")));
    }

    private Said engineSpeed(String gear, Fraction rpm, Fraction kmh, Fraction within) {
        String where = "rpm at %s km/h".formatted(Decimals.plain(kmh, 1));
        if (kind == WishKind.RPM) {
            return new Said(new Wish.RpmAt(gear, kmh, rpm, within), "at %s %s".formatted(value(), where));
        }
        boolean lower = kind == WishKind.RPM_LOWER;
        return new Said(
                new Wish.CruiseBy(gear, kmh, lower ? rpm.negated() : rpm, within),
                "%s %s %s".formatted(value(), where, lower ? "lower" : "higher"));
    }

    /** The axle that would do the same as other teeth; none where the wish is not of the engine's speed. */
    private Optional<WishedAxle> engineSpeed(String gear) {
        return kind == WishKind.RPM
                ? Optional.of(new WishedAxle(gear, value("engine speed", "2500"), kmh(), Optional.empty()))
                : Optional.empty();
    }

    private WishRead axle() {
        Optional<String> gear = gear();
        Optional<String> tyre = request.tyre();
        Optional<Fraction> rpm = written.positive("engine speed", request.value(), "2500");
        Optional<Fraction> kmh = written.positive("road speed", request.at(), "90");
        if (request.value().isEmpty() && tyre.isEmpty()) {
            written.add(
                    new BadInputException(
                            MISSING,
                            "What the axle is for is missing. Give an engine speed and a road speed, or the tyre that goes on."));
        } else if (request.value().isPresent() != request.at().isPresent()) {
            written.add(new BadInputException(
                    MISSING, "An engine speed needs a road speed, and a road speed an engine speed. Give both."));
        }
        written.refuse();
        List<String> what = new ArrayList<>();
        rpm.ifPresent(turns -> what.add("%s rpm at %s km/h in %s"
                .formatted(
                        Decimals.plain(turns, 1),
                        Decimals.plain(kmh.orElseThrow(), 1),
                        Names.gearName(gear.orElseThrow()))));
        if (rpm.isEmpty()) {
            what.add("the engine speed that there was");
        }
        tyre.ifPresent(code -> what.add("tyres of " + code));
        return new WishRead(
                "an axle ratio for " + String.join(" on ", what),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new WishedAxle(gear.orElseThrow(), rpm, kmh, tyre)),
                Optional.empty());
    }

    private WishRead reading() {
        Change change = Change.NONE;
        List<String> what = new ArrayList<>();
        if (written.positive("axle ratio", request.axle(), "3.9").isPresent()) {
            String ratio = request.axle().get().strip();
            change = change.withAxleRatio(new BigDecimal(ratio));
            what.add("an axle ratio of " + ratio);
        }
        if (request.tyre().isPresent()) {
            change = change.with(new OtherTyre.OfSize(request.tyre().get()));
            what.add("tyres of " + request.tyre().get());
        }
        if (request.axle().isEmpty() && request.tyre().isEmpty()) {
            written.add(new BadInputException(
                    MISSING,
                    "What upsets the speed reading is missing. Give the axle ratio that goes in, or the tyre that goes"
                            + " on."));
        }
        written.refuse();
        return new WishRead(
                "the speed reading kept right with " + Names.joined(what),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(change));
    }

    private Optional<String> gear() {
        if (request.gear().isPresent()) {
            return named("gear", request.gear().get());
        }
        if (kind.isOfEngineSpeed() || kind == WishKind.AXLE) {
            return gearing.ratios().entrySet().stream()
                    .filter(entry -> entry.getValue().signum() > 0)
                    .reduce((low, high) -> high.getValue().compareTo(low.getValue()) < 0 ? high : low)
                    .map(entry -> entry.getKey());
        }
        written.add(new BadInputException(MISSING, "The gear that is to change is missing. Give its number: 3"));
        return Optional.empty();
    }

    private Optional<String> other(String gear) {
        if (request.other().isEmpty()) {
            written.add(new BadInputException(MISSING, "The other gear is missing. Give its number: 2"));
            return Optional.empty();
        }
        Optional<String> other = named("gear", request.other().get());
        if (other.filter(gear::equals).isPresent()) {
            written.add(new BadInputException(
                    UNFIT,
                    "The other gear is %s, the gear that is to change. Give one of the others."
                            .formatted(request.other().get().strip())));
            return Optional.empty();
        }
        return other;
    }

    /** {@code 3}, {@code 3rd} and {@code third}. */
    private Optional<String> named(String what, String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT).replaceFirst(" gear$", "");
        List<String> names = List.copyOf(gearing.ratios().keySet());
        Optional<String> name = names.stream()
                .filter(each -> each.equalsIgnoreCase(wanted) || each.equalsIgnoreCase(Ordinals.normal(wanted)))
                .findFirst();
        if (name.isEmpty()) {
            written.add(new BadInputException(
                    UNKNOWN,
                    "%s has no %s \"%s\". Its gears are %s.".formatted(box, what, words, String.join(", ", names)),
                    names));
        }
        return name;
    }

    private Optional<Fraction> kmh() {
        if (request.at().isEmpty()) {
            written.add(new BadInputException(MISSING, "The road speed is missing. Give it in km/h: 90"));
        }
        return written.positive("road speed", request.at(), "90");
    }

    private Optional<Fraction> value(String name, String like) {
        if (request.value().isEmpty()) {
            written.add(new BadInputException(
                    MISSING, "The %s that is wished for is missing. Write it like this: %s".formatted(name, like)));
        }
        return written.positive(name, request.value(), like);
    }

    private String value() {
        return request.value().orElseThrow().strip();
    }
}
