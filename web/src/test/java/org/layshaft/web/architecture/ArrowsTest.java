package org.layshaft.web.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the page and the command line may use of the engine, and that their rooms use one another one way only. */
@AnalyzeClasses(packages = "org.layshaft", importOptions = ImportOption.DoNotIncludeTests.class)
class ArrowsTest {
    @ArchTest
    static final ArchRule the_engine_is_asked_through_its_interface = noClasses()
            .that()
            .resideInAPackage("org.layshaft.web..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.layshaft.engine..")
                    .and(resideInAnyPackage(
                                    "org.layshaft.engine",
                                    "org.layshaft.engine.api",
                                    "org.layshaft.engine.exact",
                                    "org.layshaft.engine.fit",
                                    "org.layshaft.engine.identify",
                                    "org.layshaft.engine.involute",
                                    "org.layshaft.engine.road",
                                    "org.layshaft.engine.sound",
                                    "org.layshaft.engine.spline",
                                    "org.layshaft.engine.stated",
                                    "org.layshaft.engine.swap",
                                    "org.layshaft.engine.teeth",
                                    "org.layshaft.engine.words")
                            .negate()
                            .as("reside in its inner packages")));

    @ArchTest
    static final ArchRule rooms_go_round_in_no_circle =
            slices().matching("org.layshaft.web.(*)..").should().beFreeOfCycles();
}
