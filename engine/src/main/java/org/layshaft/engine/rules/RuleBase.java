package org.layshaft.engine.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.conf.EqualityBehaviorOption;

/**
 * The built-in rules, compiled when the project was built. Thread-safe; one for the whole program.
 */
final class RuleBase {
    private static final String COMPILED = "/META-INF/kie/org.layshaft/layshaft-engine/drools-model";
    private static final String VERSION_LINE = "Drools-Model-Version:";

    private RuleBase() {}

    static KieBase builtIn() {
        return Holder.BUILT_IN;
    }

    /** Loaded at first use: loading takes some tenths of a second, and not every command needs rules. */
    private static final class Holder {
        static final KieBase BUILT_IN = load();
    }

    private static KieBase load() {
        List<Model> models = modelNames().stream().map(RuleBase::model).toList();
        // Equal facts are one fact: a conclusion drawn twice is kept once, with its first reason.
        return KieBaseBuilder.createKieBaseFromModel(models, EqualityBehaviorOption.EQUALITY);
    }

    private static List<String> modelNames() {
        try (InputStream in = RuleBase.class.getResourceAsStream(COMPILED)) {
            if (in == null) {
                throw new IllegalStateException(
                        "The compiled rules (%s) are not on the class path; build the module with Maven."
                                .formatted(COMPILED));
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith(VERSION_LINE))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Model model(String name) {
        try {
            return (Model) Class.forName(name).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The compiled rules '%s' cannot be loaded.".formatted(name), e);
        }
    }
}
