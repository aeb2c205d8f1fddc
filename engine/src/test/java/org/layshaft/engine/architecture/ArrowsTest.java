package org.layshaft.engine.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;
import org.layshaft.engine.rules.fact.Fact;

/** Which package may use which. */
@AnalyzeClasses(
        packages = "org.layshaft",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArrowsTest.WithoutCompiledRules.class})
class ArrowsTest {

    /** Leaves out the classes that the rules are compiled to: they stand in packages of their own making. */
    static final class WithoutCompiledRules implements ImportOption {
        private static final Pattern COMPILED =
                Pattern.compile(".*/engine/rules/(P[0-9A-F]{2}/|Rules[0-9A-F]{8}|DomainClassesMetadata).*");

        @Override
        public boolean includes(Location location) {
            return !location.matches(COMPILED);
        }
    }

    @ArchTest
    static final ArchRule what_is_known_uses_nothing_that_follows_or_shows = noClasses()
            .that()
            .resideInAPackage("org.layshaft.kb..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.layshaft..")
                    .and(resideInAPackage("org.layshaft.kb..").negate().as("reside outside of kb")));

    @ArchTest
    static final ArchRule what_follows_uses_of_ours_only_what_is_known = noClasses()
            .that()
            .resideInAPackage("org.layshaft.engine..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.layshaft..")
                    .and(resideInAnyPackage("org.layshaft.engine..", "org.layshaft.kb..")
                            .negate()
                            .as("reside outside of engine and kb")));

    @ArchTest
    static final ArchRule what_is_asked_and_answered_rests_on_exact_numbers_alone = noClasses()
            .that()
            .resideInAPackage("org.layshaft.engine.api..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.layshaft.engine..")
                    .and(resideInAnyPackage("org.layshaft.engine.api..", "org.layshaft.engine.exact..")
                            .negate()
                            .as("reside outside of api and exact")));

    @ArchTest
    static final ArchRule equations_know_nothing_of_rules = noClasses()
            .that()
            .resideInAnyPackage(
                    "org.layshaft.engine.train..",
                    "org.layshaft.engine.exact..",
                    "org.layshaft.engine.fault..",
                    "org.layshaft.engine.symptom..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.layshaft.engine.rules..", "org.layshaft.engine.whatif..");

    @ArchTest
    static final ArchRule rules_know_nothing_of_equations = noClasses()
            .that()
            .resideInAPackage("org.layshaft.engine.rules..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.layshaft.engine.train..", "org.layshaft.engine.whatif..");

    @ArchTest
    static final ArchRule packages_go_round_in_no_circle =
            slices().matching("org.layshaft.engine.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule packages_of_facts_go_round_in_no_circle =
            slices().matching("org.layshaft.kb.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule facts_stand_in_one_place =
            classes().that(assignableTo(Fact.class)).should().resideInAPackage("org.layshaft.engine.rules.fact");

    @ArchTest
    static final ArchRule facts_are_public_and_what_else_is_there_serves_them = classes()
            .that()
            .resideInAPackage("org.layshaft.engine.rules.fact")
            .and(assignableTo(Record.class))
            .should()
            .bePublic();

    @ArchTest
    static final ArchRule the_rule_engine_is_the_business_of_the_rules = noClasses()
            .that()
            .resideInAPackage("org.layshaft..")
            .and()
            .resideOutsideOfPackages("org.layshaft.engine.rules..", "org.layshaft.layshaft_engine..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.kie..", "org.drools..");
}
