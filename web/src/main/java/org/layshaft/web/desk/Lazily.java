package org.layshaft.web.desk;

import java.util.function.Supplier;

/** Something that takes a while to make: made once, when it is first wanted. Thread-safe. */
final class Lazily<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private T made;

    Lazily(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public synchronized T get() {
        if (made == null) {
            made = maker.get();
        }
        return made;
    }
}
