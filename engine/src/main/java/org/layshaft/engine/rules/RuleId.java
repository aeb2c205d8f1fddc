package org.layshaft.engine.rules;

import org.kie.api.definition.rule.Rule;

/** The stable short id of a rule, {@code drive/tied}, apart from its wording. */
final class RuleId {
    private RuleId() {}

    static String of(Rule rule) {
        Object id = rule.getMetaData().get("id");
        if (id == null) {
            throw new IllegalStateException("The rule '%s' has no @id.".formatted(rule.getName()));
        }
        return id.toString().replace("\"", "");
    }
}
