package org.layshaft.engine.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinearSystemTest {
    @Test
    void aSolvedUnknownIsAFormInTheFreeOnes() {
        LinearSystem system = new LinearSystem(3);
        system.require(form(1, 1, -2, 0));
        assertEquals(List.of(0, 1), system.free());
        assertEquals(Fraction.of(1, 2), system.valueOf(2).coefficientOf(0));
        assertEquals(Fraction.of(1, 2), system.valueOf(2).coefficientOf(1));
    }

    @Test
    void whatIsGivenIsAMultipleOfOne() {
        LinearSystem system = new LinearSystem(2);
        system.require(form(2, 3, -12));
        system.require(form(1, -1, -1));
        assertTrue(system.isSolvable());
        assertEquals(Fraction.of(3), system.valueOf(0).coefficientOf(system.one()));
        assertEquals(Fraction.of(2), system.valueOf(1).coefficientOf(system.one()));
        assertTrue(system.free().isEmpty());
    }

    @Test
    void aContradictionLeavesNothingSolvable() {
        LinearSystem system = new LinearSystem(2);
        system.require(form(1, 1, -1));
        system.require(form(2, 2, -3));
        assertFalse(system.isSolvable());
    }

    /** Random systems with small whole numbers: every equation holds for what is read off, and the rank is right. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void solutionsPutInMakeEveryFormZero(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 60; round++) {
            int unknowns = random.nextInt(1, 8);
            List<LinearForm> forms = new ArrayList<>();
            SimpleMatrix matrix = new SimpleMatrix(8, unknowns + 1);
            LinearSystem system = new LinearSystem(unknowns);
            int equations = random.nextInt(0, 9);
            for (int row = 0; row < equations; row++) {
                long[] coefficients = random.longs(unknowns + 1, -2, 3).toArray();
                for (int column = 0; column <= unknowns; column++) {
                    matrix.set(row, column, coefficients[column]);
                }
                forms.add(form(coefficients));
                system.require(forms.get(row));
            }
            forms.forEach(form -> assertTrue(putIn(form, system).isZero(), () -> "seed " + seed));
            int free = system.free().size() + (system.isSolvable() ? 1 : 0);
            assertEquals(unknowns + 1 - matrix.svd().rank(), free, () -> "seed " + seed);
        }
    }

    private static LinearForm putIn(LinearForm form, LinearSystem system) {
        LinearForm sum = LinearForm.ZERO;
        for (int unknown : form.unknowns()) {
            sum = sum.plus(system.valueOf(unknown), form.coefficientOf(unknown));
        }
        return sum;
    }

    /** The coefficients of the unknowns in turn, that of 1 last. */
    private static LinearForm form(long... coefficients) {
        LinearForm form = LinearForm.ZERO;
        for (int unknown = 0; unknown < coefficients.length; unknown++) {
            form = form.plus(LinearForm.of(unknown, Fraction.of(coefficients[unknown])));
        }
        return form;
    }
}
