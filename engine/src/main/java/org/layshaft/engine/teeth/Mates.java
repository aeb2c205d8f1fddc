package org.layshaft.engine.teeth;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Hand;

/** Two gears in mesh: what must be alike on both is known of both when it is stated of either. */
record Mates(Toothing driver, Toothing driven) {

    /** Throws {@link ImpossibleFactsException} where the two cannot mesh, with everything that keeps them from it. */
    void check() {
        objections().refuse();
    }

    Objections objections() {
        return new Objections()
                .unless(
                        driver.form() == driven.form() || !isBevel() && !isChain(),
                        "%s cannot mesh: their teeth are %s and %s.",
                        names(),
                        driver.form().word(),
                        driven.form().word())
                .unless(
                        !(driver.isInternal() && driven.isInternal()),
                        "%s cannot mesh: both have their teeth on the inside.",
                        names())
                .unless(agree(Toothing::moduleMm), unlike(Toothing::moduleMm, "modules", "mm"))
                .unless(isBevel() || agree(Toothing::helixDeg), unlike(Toothing::helixDeg, "helix angles", "degrees"))
                .unless(
                        agree(Toothing::pressureAngleDeg),
                        unlike(Toothing::pressureAngleDeg, "pressure angles", "degrees"))
                .unless(
                        handFromDriven().isEmpty() || driverHand().equals(handFromDriven()),
                        isInternal()
                                ? "%s cannot mesh: a gear and its internal gear must have helices of the same hand."
                                : "%s cannot mesh: their helices are of the same hand. They must be of opposite hands.",
                        names());
    }

    boolean isBevel() {
        return driver.isBevel() || driven.isBevel();
    }

    boolean isChain() {
        return driver.isSprocket() || driven.isSprocket();
    }

    boolean isInternal() {
        return driver.isInternal() || driven.isInternal();
    }

    /** Spiral angles of bevel gears differ where their shafts do not meet. */
    boolean isHypoid() {
        return isBevel() && !agree(Toothing::helixDeg);
    }

    Telling<Double> shared(Function<Toothing, OptionalDouble> fact, String name) {
        return Telling.of(stated(fact).stream().findFirst(), "%s of %s".formatted(name, names()));
    }

    /** Of the driver: external gears and bevels wind opposite ways, a pinion and its internal gear the same way. */
    Optional<Hand> driverHand() {
        return driver.hand().or(this::handFromDriven);
    }

    String names() {
        return driver.name() + " and " + driven.name();
    }

    private Optional<Hand> handFromDriven() {
        return driven.hand().map(hand -> isInternal() ? hand : hand.opposite());
    }

    private boolean agree(Function<Toothing, OptionalDouble> fact) {
        return stated(fact).stream().distinct().count() <= 1;
    }

    private List<Double> stated(Function<Toothing, OptionalDouble> fact) {
        return Stream.of(driver, driven)
                .map(fact)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }

    private String unlike(Function<Toothing, OptionalDouble> fact, String name, String unit) {
        List<Double> both = stated(fact);
        return both.size() < 2
                ? ""
                : "%s cannot mesh: their %s are %s and %s %s. They must be equal."
                        .formatted(names(), name, both.get(0), both.get(1), unit);
    }
}
