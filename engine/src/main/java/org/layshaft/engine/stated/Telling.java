package org.layshaft.engine.stated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A value that follows from stated facts, or why it cannot be told. Tellings are put together with {@link #with} and
 * {@link #then}; what is missing for any of them is missing for the whole, and all of it is said at once.
 */
public sealed interface Telling<T> {

    record Told<T>(T it) implements Telling<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(it);
        }

        @Override
        public List<String> because() {
            return List.of();
        }
    }

    /** @param because clauses, at least one: {@code the mass is missing} */
    record CannotBeTold<T>(List<String> because) implements Telling<T> {
        public CannotBeTold {
            because = because.stream().distinct().toList();
        }

        @Override
        public Optional<T> value() {
            return Optional.empty();
        }
    }

    Optional<T> value();

    /** Why it cannot be told; empty where it is told. */
    List<String> because();

    static <T> Telling<T> told(T value) {
        return new Told<>(value);
    }

    static <T> Telling<T> missing(String fact) {
        return cannotBeTold(List.of(fact + " is missing"));
    }

    static <T> Telling<T> cannotBeTold(List<String> because) {
        return new CannotBeTold<>(because);
    }

    /** The stated fact; where it is not stated, that it is missing, by the name it has in a sentence. */
    static <T> Telling<T> of(Optional<T> stated, String fact) {
        return stated.map(Telling::told).orElseGet(() -> missing(fact));
    }

    /** All of them, or all that is missing for any of them. */
    static <T> Telling<List<T>> all(List<Telling<T>> tellings) {
        Telling<List<T>> together = told(List.of());
        for (Telling<T> telling : tellings) {
            together = together.with(telling, Telling::appended);
        }
        return together;
    }

    default <U> Telling<U> map(Function<? super T, ? extends U> follows) {
        return then(value -> told(follows.apply(value)));
    }

    default <U> Telling<U> then(Function<? super T, Telling<U>> follows) {
        return value().map(follows).orElseGet(() -> cannotBeTold(because()));
    }

    /** What follows from both. */
    default <U, V> Telling<V> with(Telling<U> other, BiFunction<? super T, ? super U, ? extends V> follows) {
        List<String> because = new ArrayList<>(because());
        because.addAll(other.because());
        if (!because.isEmpty()) {
            return cannotBeTold(because);
        }
        return then(mine -> other.map(theirs -> follows.apply(mine, theirs)));
    }

    /** {@code cannot be told, the mass is missing, the air density is missing}; empty where it is told. */
    default Optional<String> whyNot() {
        return because().isEmpty() ? Optional.empty() : Optional.of("cannot be told, " + String.join(", ", because()));
    }

    private static <T> List<T> appended(List<T> list, T last) {
        List<T> longer = new ArrayList<>(list);
        longer.add(last);
        return List.copyOf(longer);
    }
}
