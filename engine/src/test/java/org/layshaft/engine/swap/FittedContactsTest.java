package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Placement;
import org.layshaft.engine.involute.BasicRack;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

class FittedContactsTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());
    private static final BuiltBox CURLEW = COUNTER.boxes().get("curlew-early");
    private static final Mesh THIRD = new Mesh("third", "cluster-third");

    private static FittedContacts with(String number) {
        Placement placement = COUNTER.placements(COUNTER.catalogue().set(number).orElseThrow(), CURLEW).stream()
                .filter(at -> at.parts().containsKey("third"))
                .findFirst()
                .orElseThrow();
        return new FittedContacts(
                COUNTER,
                FittedGears.layout(CURLEW.fitted()),
                CURLEW.fitted(),
                CURLEW.fitted().with(placement.parts()));
    }

    private static Telling<Double> after(FittedContacts contacts) {
        Layout changed = FittedGears.change(contacts.before(), contacts.then())
                .value()
                .orElseThrow()
                .applyTo(contacts.was());
        return contacts.of(changed, THIRD);
    }

    @Test
    void a_pair_of_other_teeth_has_another_contact_ratio() {
        FittedContacts contacts = with("SM-1154");
        assertEquals(
                reckoned(contacts.before()),
                contacts.of(contacts.was(), THIRD).value().orElseThrow(),
                0.01);
        assertEquals(reckoned(contacts.then()), after(contacts).value().orElseThrow(), 1e-9);
        assertTrue(Math.abs(reckoned(contacts.before()) - reckoned(contacts.then())) > 0.001);
    }

    /** At the greatest distance that the case allows, from shifts and tips as the catalogue states them. */
    private static double reckoned(Fitted fitted) {
        Facts shafts = fitted.centre("countershaft", "output");
        double centreMm = shafts.get(FactName.CENTRE_MM).number()
                + shafts.get(FactName.CENTRE_TOLERANCE_MM).number();
        return new InvolutePair(gear(fitted.at("third")), gear(fitted.at("cluster-third")), centreMm)
                .transverseContactRatio();
    }

    private static InvoluteGear gear(Facts facts) {
        return new InvoluteGear(
                GearForm.EXTERNAL,
                (int) facts.get(FactName.TEETH).number(),
                facts.get(FactName.MODULE_MM).number(),
                facts.get(FactName.PRESSURE_ANGLE_DEG).number(),
                facts.get(FactName.HELIX_DEG).number(),
                facts.get(FactName.PROFILE_SHIFT).number(),
                BasicRack.A,
                OptionalDouble.of(facts.get(FactName.TIP_MM).number()));
    }

    @Test
    void what_is_missing_of_the_parts_is_named() {
        CataloguePart third = CURLEW.fitted().partAt("third");
        CataloguePart untold = new CataloguePart(
                third.number(),
                third.kind(),
                third.name(),
                third.facts().without(FactName.TIP_MM),
                third.features(),
                third.note());
        FittedContacts contacts = new FittedContacts(
                COUNTER,
                FittedGears.layout(CURLEW.fitted()),
                CURLEW.fitted().with(Map.of("third", untold)),
                CURLEW.fitted());
        assertEquals(
                List.of("the tip diameter of the third gear %s is missing".formatted(third.number())),
                contacts.of(contacts.was(), THIRD).because());
    }
}
