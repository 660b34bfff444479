package hobside.screen;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "hobside", importOptions = ImportOption.DoNotIncludeTests.class)
class ArrowsOfTheScreenTest {
    @ArchTest
    static final ArchRule only_the_terminal_layer_knows_lanterna = noClasses()
            .that().resideOutsideOfPackage("hobside.screen.terminal")
            .should().dependOnClassesThat().resideInAPackage("com.googlecode.lanterna..");

    @ArchTest
    static final ArchRule the_terminal_layer_shows_only_its_door = classes()
            .that().resideInAPackage("hobside.screen.terminal").and().doNotHaveSimpleName("Opening")
            .and().areTopLevelClasses()
            .should().notBePublic();

    @ArchTest
    static final ArchRule screens_do_not_know_the_terminal_layer = noClasses()
            .that().resideInAPackage("hobside.screen..").and().resideOutsideOfPackage("hobside.screen.terminal")
            .should().dependOnClassesThat().resideInAPackage("hobside.screen.terminal");

    @ArchTest
    static final ArchRule only_the_loop_starts_threads = noClasses()
            .that().haveNameNotMatching("hobside\\.screen\\.Loop.*")
            .should().dependOnClassesThat().areAssignableTo(java.util.concurrent.Executor.class)
            .orShould().beAssignableTo(Thread.class);
}
