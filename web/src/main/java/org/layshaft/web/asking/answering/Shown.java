package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Saying;

/** What packs may have shown of a box, computed from its facts; nothing where the box has no such thing. */
final class Shown {
    private final Facts facts;
    private final Layout layout;

    Shown(Facts facts) {
        this.facts = facts;
        this.layout = facts.box().layout();
    }

    List<String> of(String what) {
        return switch (what) {
            case "reverse-train" -> reverseTrain();
            case "idler-cancels" -> idlerCancels();
            case "direct-gear" -> directGear();
            case "interlocks" -> interlocks();
            case "train-of-ratio" -> trainOfRatio();
            case "countershaft-way" -> shaftWays();
            case "reverse-engagement" -> reverseEngagement();
            case "differentials" -> differentials();
            case "helices" -> helices();
            case "turned-round" -> turnedRound();
            case "meshes" -> meshes();
            case "rings" -> rings();
            case "torque-by-gear" -> torqueByGear();
            default -> List.of();
        };
    }

    private Optional<Box.DerivedGear> reverse() {
        return facts.box().gears().stream()
                .filter(gear -> gear.direction() == Direction.REVERSE)
                .findFirst();
    }

    /** The gears of a path that mesh with their neighbour, mesh by mesh. */
    private List<Mesh> meshesOf(Box.DerivedGear gear) {
        List<String> wheels = gear.path().stream()
                .map(PathStep::part)
                .filter(part -> layout.find(Gear.class, part).isPresent())
                .toList();
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 1; i < wheels.size(); i++) {
            String before = wheels.get(i - 1);
            String after = wheels.get(i);
            layout.everyMesh()
                    .filter(mesh -> mesh.joins(before) && mesh.other(before).equals(after))
                    .findFirst()
                    .map(mesh -> new Mesh(before, after, mesh.kind()))
                    .ifPresent(meshes::add);
        }
        return meshes;
    }

    private List<String> reverseTrain() {
        return reverse()
                .map(gear -> {
                    List<Mesh> meshes = meshesOf(gear);
                    return "In reverse %s goes through %d mesh%s: %s."
                            .formatted(
                                    layout.name(),
                                    meshes.size(),
                                    meshes.size() == 1 ? "" : "es",
                                    meshes.stream()
                                            .map(mesh -> facts.names().of(mesh.first()) + " on "
                                                    + facts.names().of(mesh.second()))
                                            .collect(Collectors.joining(", ")));
                })
                .map(says -> List.of(says, comparedWithFirst()))
                .orElse(List.of());
    }

    private String comparedWithFirst() {
        Box.DerivedGear first = facts.box().gears().get(0);
        int meshes = meshesOf(first).size();
        return "In %s it goes through %d.".formatted(Names.gearName(first.name()), meshes);
    }

    private List<String> idlerCancels() {
        return reverse()
                .map(gear -> {
                    List<Mesh> meshes = meshesOf(gear);
                    Optional<String> idler = meshes.stream()
                            .map(Mesh::second)
                            .filter(wheel -> meshes.stream()
                                    .anyMatch(mesh -> mesh.first().equals(wheel)))
                            .findFirst();
                    return idler.map(wheel ->
                                    "In %s that is %s, with %d teeth: reverse is %s = %s to 1, and the %d cancel."
                                            .formatted(
                                                    layout.name(),
                                                    facts.names().the(wheel),
                                                    layout.gear(wheel).teeth(),
                                                    product(meshes),
                                                    Saying.number(gear.ratio()),
                                                    layout.gear(wheel).teeth()))
                            .map(List::of)
                            .orElse(List.of(
                                    "In %s no gear on the way of reverse both is driven and drives with the same teeth."
                                            .formatted(layout.name())));
                })
                .orElse(List.of());
    }

    /** {@code 45/23 × 23/18}: driven over driving, mesh by mesh. */
    private String product(List<Mesh> meshes) {
        return meshes.stream()
                .map(mesh -> "%d/%d"
                        .formatted(
                                layout.gear(mesh.second()).teeth(),
                                layout.gear(mesh.first()).teeth()))
                .collect(Collectors.joining(" × "));
    }

    private List<String> directGear() {
        List<String> direct = facts.box().gears().stream()
                .filter(gear ->
                        gear.direction() == Direction.FORWARD && meshesOf(gear).isEmpty())
                .map(Box.DerivedGear::name)
                .toList();
        return List.of(
                direct.isEmpty()
                        ? "%s has no direct drive: every gear goes through teeth.".formatted(layout.name())
                        : "In %s that is %s.".formatted(layout.name(), Saying.gears(direct)));
    }

    private List<String> interlocks() {
        List<Conflict> conflicts = facts.whatIf().conflicts();
        Set<String> by = new TreeSet<>();
        conflicts.forEach(conflict -> by.addAll(conflict.preventedBy()));
        long kept = conflicts.stream().filter(conflict -> !conflict.canMeet()).count();
        return by.isEmpty()
                ? List.of("In %s gears on different rails: %d pairs, %d of them kept apart."
                        .formatted(layout.name(), conflicts.size(), kept))
                : List.of("In %s %s keep%s %d pairs of gears apart that stand on different rails."
                        .formatted(layout.name(), facts.names().list(by), by.size() == 1 ? "s" : "", kept));
    }

    private List<String> trainOfRatio() {
        return facts.box().gears().stream()
                .filter(gear -> meshesOf(gear).size() > 0)
                .limit(2)
                .filter(gear -> product(gear).equals(gear.ratio()))
                .map(gear -> "%s of %s: %s = %s to 1."
                        .formatted(
                                Saying.sentence(Names.gearName(gear.name())),
                                layout.name(),
                                product(meshesOf(gear)),
                                Saying.number(gear.ratio())))
                .toList();
    }

    private Fraction product(Box.DerivedGear gear) {
        Fraction product = Fraction.ONE;
        for (Mesh mesh : meshesOf(gear)) {
            product = product.times(Fraction.of(
                    layout.gear(mesh.second()).teeth(),
                    layout.gear(mesh.first()).teeth()));
        }
        return product;
    }

    private List<String> shaftWays() {
        Box.DerivedGear first = facts.box().gears().get(0);
        String ways = layout.all(Shaft.class)
                .filter(shaft -> !shaft.held())
                .flatMap(shaft -> first.motion().speedOf(shaft.id()).stream()
                        .filter(speed -> !speed.isZero())
                        .map(speed -> "%s %s"
                                .formatted(
                                        facts.names().the(shaft.id()),
                                        speed.signum() > 0 ? "as the engine" : "against the engine")))
                .collect(Collectors.joining(", "));
        return List.of("In %s of %s turn: %s.".formatted(Names.gearName(first.name()), layout.name(), ways));
    }

    private List<String> reverseEngagement() {
        return reverse()
                .flatMap(Box.DerivedGear::first)
                .map(push -> layout.members().stream()
                        .filter(member -> member.part().equals(push.member()))
                        .flatMap(member -> member.at(push.side()).stream())
                        .findFirst()
                        .map(this::engagedBy)
                        .orElse("Its reverse is engaged by a clutch."))
                .map(List::of)
                .orElse(List.of());
    }

    private String engagedBy(Engagement engagement) {
        String box = layout.name();
        if (engagement instanceof Engagement.Couples couples) {
            return couples.ring()
                    .map(ring ->
                            "In %s reverse has %s: it ought not to crunch once the pedal is right down; if it does, that ring or the clutch is worth a look."
                                    .formatted(box, facts.names().the(ring)))
                    .orElse("In %s reverse is coupled by plain dogs, without a blocking ring.".formatted(box));
        }
        return engagement instanceof Engagement.Meshes
                ? "In %s reverse slides into mesh, without a blocking ring.".formatted(box)
                : "In %s reverse is engaged by a clutch.".formatted(box);
    }

    private List<String> differentials() {
        List<String> all = layout.all(Differential.class).map(Differential::id).toList();
        return List.of(
                all.isEmpty()
                        ? "%s has no differential in it.".formatted(layout.name())
                        : "%s has %s.".formatted(layout.name(), facts.names().list(all)));
    }

    private List<String> helices() {
        List<String> straight = new ArrayList<>();
        List<String> slanted = new ArrayList<>();
        facts.box().gears().forEach(gear -> {
            List<Mesh> meshes = meshesOf(gear);
            if (!meshes.isEmpty()) {
                boolean last =
                        layout.gear(meshes.get(meshes.size() - 1).second()).helixDeg() == 0;
                (last ? straight : slanted).add(gear.name());
            }
        });
        List<String> says = new ArrayList<>();
        if (!straight.isEmpty()) {
            says.add("In %s the last pair of %s is straight cut.".formatted(layout.name(), Saying.gears(straight)));
        }
        if (!slanted.isEmpty()) {
            says.add("In %s the last pair of %s is helical.".formatted(layout.name(), Saying.gears(slanted)));
        }
        return says;
    }

    private List<String> turnedRound() {
        long forward = facts.box().gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .count();
        long back = facts.box().gears().size() - forward;
        Optional<Differential> last = layout.finalDrives().stream().findFirst();
        if (last.isEmpty()) {
            return List.of(
                    "%s drives an axle behind it, so for it the way round does not come up so: its %d forward gears and %d reverse stay what they are as long as the axle is set out for it."
                            .formatted(layout.name(), forward, back));
        }
        boolean bevel = last.get()
                .ringGear()
                .filter(ring -> layout.everyMesh()
                        .anyMatch(mesh -> mesh.joins(ring) && mesh.kind().isBevel()))
                .isPresent();
        return List.of(
                "%s turned round would have %d forward gear%s and %d reverse."
                        .formatted(layout.name(), back, back == 1 ? "" : "s", forward),
                bevel
                        ? "Its final drive is a bevel or hypoid pair, so the ring gear could change sides if the case allows it."
                        : "Its final drive is cylindrical: swapping the ring gear over changes nothing.");
    }

    private List<String> meshes() {
        long free = layout.all(Gear.class).filter(Gear::isFree).count();
        long always = layout.meshes().size();
        long slid = layout.everyMesh().count() - always;
        return List.of("%s has %d meshes that are always made%s, and %d gears that run free until they are tied."
                .formatted(layout.name(), always, slid == 0 ? "" : " and %d made by sliding".formatted(slid), free));
    }

    private List<String> rings() {
        List<String> with = new ArrayList<>();
        List<String> without = new ArrayList<>();
        facts.box().gears().forEach(gear -> {
            boolean ring = gear.first()
                    .map(push -> layout.members().stream()
                            .filter(member -> member.part().equals(push.member()))
                            .flatMap(member -> member.at(push.side()).stream())
                            .anyMatch(how -> how instanceof Engagement.Couples couples
                                    && couples.ring().isPresent()))
                    .orElse(false);
            (ring ? with : without).add(gear.name());
        });
        return List.of(
                with.isEmpty()
                        ? "%s has no blocking rings.".formatted(layout.name())
                        : "In %s %s %s a blocking ring%s."
                                .formatted(
                                        layout.name(),
                                        Saying.gears(with),
                                        with.size() == 1 ? "has" : "have",
                                        without.isEmpty() ? "" : "; not %s".formatted(Saying.gears(without))));
    }

    private List<String> torqueByGear() {
        return List.of("In %s, before losses: %s times the engine's torque."
                .formatted(
                        layout.name(),
                        facts.box().gears().stream()
                                .map(gear ->
                                        "%s %s".formatted(Names.gearName(gear.name()), Saying.decimals(gear.ratio())))
                                .collect(Collectors.joining(", "))));
    }
}
