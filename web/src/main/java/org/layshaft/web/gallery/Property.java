package org.layshaft.web.gallery;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.PartKind;

/** Something that a layout is or is not; told of each from what is derived. */
public enum Property {
    INLINE(Facet.FAMILY, Family.INLINE.says(), "in-?line(?: (?:gear)?box)?", of(Family.INLINE)),
    OFFSET(
            Facet.FAMILY,
            Family.OFFSET.says(),
            "motor(?:cycle|bike)(?: box)?|offset output|output beside the input",
            of(Family.OFFSET)),
    TRANSAXLE(Facet.FAMILY, Family.TRANSAXLE.says(), "trans-?axles?", of(Family.TRANSAXLE)),
    TRANSFER(Facet.FAMILY, Family.TRANSFER.says(), "transfer (?:box|boxes|case|cases|gearbox)", of(Family.TRANSFER)),
    AXLE(Facet.FAMILY, Family.AXLE.says(), "(?:rear |front |drive )?axles?", of(Family.AXLE)),
    VEHICLE(
            Facet.FAMILY,
            Family.VEHICLE.says(),
            "(?:whole |complete )?(?:cars?|vehicles?|drivelines?)",
            of(Family.VEHICLE)),

    REVERSE_ON_SLEEVE(
            Facet.REVERSE,
            "reverse on a sleeve",
            "reverse (?:is )?(?:on|by|through|with) (?:a |its own )?(?:synchro )?(?:sleeve|slider)|sleeve reverse",
            each -> each.reverseBy().onSleeve()),
    REVERSE_SYNCHRONISED(
            Facet.REVERSE,
            "reverse synchronised",
            "(?:reverse (?:is )?(?:synchroni[sz]ed|with (?:a )?synchro(?:niser)?)|synchroni[sz]ed reverse|synchro reverse)",
            each -> each.reverseBy() == ReverseBy.SYNCHRONISED_SLEEVE),
    REVERSE_BY_IDLER(
            Facet.REVERSE,
            "reverse by a sliding idler",
            "(?:reverse (?:is )?(?:by|on|with|through) (?:a )?)?(?:sliding|slid|shifted) (?:reverse )?idler",
            each -> each.reverseBy() == ReverseBy.SLIDING_IDLER),
    REVERSE_BY_GEAR(
            Facet.REVERSE,
            "reverse by a gear slid into mesh",
            "reverse (?:is )?(?:by (?:a )?)?(?:gear )?(?:sliding gear|slid(?:es)? into mesh)|sliding reverse(?: gear)?",
            each -> each.reverseBy() == ReverseBy.SLIDING_GEAR),
    NO_REVERSE(Facet.REVERSE, "no reverse", "(?:no|without(?: a)?) reverse", each -> each.reverse() == 0),

    DIRECT(
            Facet.GEARS,
            "a gear straight through",
            "direct(?: drive)?(?: (?:top|gear))?|straight through|direct top",
            Likeness::direct),
    OVERDRIVE(Facet.GEARS, "overdrive top", "overdrive(?: top| gear)?|over-driven top", Likeness::overdrive),
    SYNCHRONISED(
            Facet.GEARS,
            "every forward gear synchronised",
            "(?:fully|all|every(?: forward)? gears?|all gears) synchroni[sz]ed|all[- ]synchro(?:mesh)?|synchromesh",
            Likeness::synchronised),
    SLIDING(
            Facet.GEARS,
            "forward gears slid into mesh",
            "crash(?: box)?|sliding[- ](?:mesh|gears?)|gears? slid into mesh",
            Likeness::slidIntoMesh),
    SEVERAL_LEVERS(
            Facet.GEARS,
            "several levers or switches",
            "range(?: change)?|splitter|several levers|high and low|low range|two levers",
            Likeness::severalLevers),
    DRUM(
            Facet.GEARS,
            "shift drum",
            "(?:shift |selector )?drum|sequential",
            each -> each.isKeptApartBy(InterlockKind.DRUM)),

    EPICYCLIC(
            Facet.INSIDE,
            "epicyclic gears",
            "epicyclic(?: gears?| set| range)?|planetary(?: gears?)?|planets?",
            Likeness::epicyclic),
    CHAIN(
            Facet.INSIDE,
            "chain or belt",
            "chains?(?:[- ]driven)?|(?:toothed )?belts?",
            each -> each.hasMesh(MeshKind.CHAIN)),
    BEVEL(
            Facet.INSIDE,
            "bevel or hypoid pair",
            "bevel(?: gears?| pair)?|hypoid(?: pair| final drive)?|crown wheel and pinion",
            each -> each.hasMesh(MeshKind.BEVEL, MeshKind.BEVEL_OPPOSITE)),
    TWIN(
            Facet.INSIDE,
            "countershafts that share",
            "twin[- ](?:countershafts?|layshafts?)|two (?:countershafts|layshafts)|countershafts that share",
            each -> each.has(PartKind.TIMING)),
    CLUTCHES(
            Facet.INSIDE,
            "clutch inside",
            "clutch(?:es)? inside|(?:dual|double|twin|two)[- ]clutch(?:es)?|inside clutch",
            each -> each.clutchesInside() > 0),
    TAKE_OFF(Facet.INSIDE, "power take-off", "power take-?offs?|pto", Likeness::takeOff),
    DIFFERENTIAL(Facet.INSIDE, "differential", "(?:open |with (?:a )?)?differentials?", Likeness::differential),
    LIMITED_SLIP(
            Facet.INSIDE,
            "limited-slip differential",
            "limited[- ]slip(?: differential)?|lsd|torque[- ]sensing(?: differential)?",
            Likeness::limitedSlip),
    LOCK(
            Facet.INSIDE,
            "differential lock",
            "(?:differential|diff)[- ]?locks?|lock(?:able|ing|ed)? differentials?|differential that locks",
            Likeness::locks);

    /** What it is a matter of. */
    public enum Facet {
        FAMILY("What it is"),
        REVERSE("Reverse"),
        GEARS("Gears"),
        INSIDE("Inside");

        private final String title;

        Facet(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    private final Facet facet;
    private final String says;
    private final Pattern pattern;
    private final Predicate<Likeness> holds;

    Property(Facet facet, String says, String words, Predicate<Likeness> holds) {
        this.facet = facet;
        this.says = says;
        this.pattern = Pattern.compile("\\b(?:%s)\\b".formatted(words));
        this.holds = holds;
    }

    private static Predicate<Likeness> of(Family family) {
        return each -> each.family() == family;
    }

    public Facet facet() {
        return facet;
    }

    /** {@code reverse on a sleeve}. */
    public String says() {
        return says;
    }

    /** As written in an address: {@code reverse-on-sleeve}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The words that mean it, in small letters. */
    Pattern pattern() {
        return pattern;
    }

    public boolean holds(Likeness likeness) {
        return holds.test(likeness);
    }

    /** Everything that holds of a layout. */
    public static List<Property> of(Likeness likeness) {
        return List.of(values()).stream()
                .filter(property -> property.holds(likeness))
                .toList();
    }
}
