package org.layshaft.kb.catalogue;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;

/** What is known of a part or of a place on it. Immutable. Whatever is not stated is absent. */
public final class Facts {
    /** Nothing is known. */
    public static final Facts NONE = of(List.of());

    private final EnumMap<FactName, Fact> byName;

    private Facts(EnumMap<FactName, Fact> byName) {
        this.byName = byName;
    }

    public static Facts of(Collection<Fact> facts) {
        EnumMap<FactName, Fact> byName = new EnumMap<>(FactName.class);
        facts.forEach(fact -> byName.put(fact.name(), fact));
        return new Facts(byName);
    }

    /** The fact; null where it is not stated. For loops that ask millions of times; others ask {@link #find}. */
    public Fact get(FactName name) {
        return byName.get(name);
    }

    public Optional<Fact> find(FactName name) {
        return Optional.ofNullable(byName.get(name));
    }

    public boolean has(FactName name) {
        return byName.containsKey(name);
    }

    /** In the order of {@link FactName}. */
    public Collection<Fact> all() {
        return Collections.unmodifiableCollection(byName.values());
    }

    public Facts with(Fact fact) {
        EnumMap<FactName, Fact> changed = new EnumMap<>(byName);
        changed.put(fact.name(), fact);
        return new Facts(changed);
    }

    public Facts without(FactName name) {
        EnumMap<FactName, Fact> changed = new EnumMap<>(byName);
        changed.remove(name);
        return new Facts(changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Facts facts && byName.equals(facts.byName);
    }

    @Override
    public int hashCode() {
        return byName.hashCode();
    }

    @Override
    public String toString() {
        return byName.values().toString();
    }
}
