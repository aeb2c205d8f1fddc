package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DialectTest {
    @ParameterizedTest
    @CsvSource({
        "left countershaft, left layshaft, left countershaft",
        "3-4 fork, 3-4 selector fork, 3-4 shift fork",
        "3-4 selector fork, 3-4 selector fork, 3-4 shift fork",
        "ring gear, crown wheel, ring gear",
        "third, third, third",
        "forklift, forklift, forklift"
    })
    void aPartIsCalledAsOnItsSideOfTheOcean(String name, String british, String american) {
        assertEquals(british, Dialect.BRITISH.say(name));
        assertEquals(american, Dialect.AMERICAN.say(name));
        assertEquals(name, Dialect.AS_TYPED.say(name));
    }

    @Test
    void bothAreToldWhereTheyDiffer() {
        assertEquals(List.of("British: layshaft", "American: countershaft"), Dialect.both("countershaft"));
        assertEquals(List.of(), Dialect.both("third"));
    }
}
