package org.layshaft.engine.rules;

import java.util.Set;
import java.util.stream.Collectors;

/** The ids of the built-in rules, for tests of other packages. */
public final class RuleIds {
    private RuleIds() {}

    public static Set<String> all() {
        return RuleBase.builtIn().getKiePackages().stream()
                .flatMap(rules -> rules.getRules().stream())
                .map(RuleId::of)
                .collect(Collectors.toSet());
    }
}
