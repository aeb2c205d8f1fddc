package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a box is drawn, each as written in the address.
 *
 * @param sleeves where sleeves were set by hand, {@code 1-2-sleeve:front}; empty where the gear or the question says it
 * @param view {@code end} for the view along the shafts
 * @param words {@code us} or {@code uk}, for whose words parts are called by
 * @param rpm speed of the input in turns a minute
 * @param nm torque on the input in N·m
 * @param ink {@code black} for black and white
 */
public record Sight(
        List<String> sleeves,
        Optional<String> view,
        Optional<String> words,
        Optional<String> rpm,
        Optional<String> nm,
        Optional<String> ink) {
    /** From the side, nothing moved by hand. */
    public static final Sight USUAL = new Sight(
            List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Sight {
        sleeves = List.copyOf(sleeves);
    }

    Sight moved(List<String> others) {
        return new Sight(others, view, words, rpm, nm, ink);
    }

    Sight withNothingMoved() {
        return moved(List.of());
    }

    Sight from(Optional<String> other) {
        return new Sight(sleeves, other, words, rpm, nm, ink);
    }

    Sight saying(Optional<String> other) {
        return new Sight(sleeves, view, other, rpm, nm, ink);
    }

    Sight in(Optional<String> other) {
        return new Sight(sleeves, view, words, rpm, nm, other);
    }

    /** For the query of an address. */
    Stream<String> pairs() {
        return Stream.of(
                        Address.pairs("sleeve", sleeves.stream()),
                        Address.pairs("view", view.stream()),
                        Address.pairs("words", words.stream()),
                        Address.pairs("rpm", rpm.stream()),
                        Address.pairs("nm", nm.stream()),
                        Address.pairs("ink", ink.stream()))
                .flatMap(each -> each);
    }

    /** Sleeves and view, which a form for the rest carries along. */
    List<FieldView> carried() {
        List<FieldView> pairs = new ArrayList<>();
        sleeves.forEach(value -> pairs.add(new FieldView("sleeve", value)));
        view.ifPresent(value -> pairs.add(new FieldView("view", value)));
        return pairs;
    }
}
