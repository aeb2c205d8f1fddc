package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.failure.Fault;

class AddressTest {
    private final Address address = new Address(
            Optional.of("curlew"),
            Optional.of("why & how?"),
            Optional.of("3"),
            List.of("3-4-fork bent side=front"),
            Optional.of("third"),
            List.of());

    @Test
    void everythingStandsInTheLink() {
        assertEquals(
                "/?layout=curlew&q=why+%26+how%3F&gear=3&fault=3-4-fork+bent+side%3Dfront&part=third", address.link());
    }

    @Test
    void theApiIsAskedTheSame() {
        assertEquals("/api/ask?layout=curlew&q=why+%26+how%3F&fault=3-4-fork+bent+side%3Dfront", address.api());
        assertEquals(
                "/api/gears?layout=curlew&fault=first+stripped",
                address.supposing(List.of(Fault.of("first", "stripped"))).api());
    }

    @Test
    void anotherQuestionStartsFromItsOwnGear() {
        assertEquals(
                "/?layout=curlew&q=again&fault=3-4-fork+bent+side%3Dfront&part=third",
                address.asking("again").link());
    }

    @Test
    void nothingLeadsToTheStart() {
        Address bare = new Address(
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of());
        assertEquals("/", bare.link());
    }
}
