package hobside;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between the packages, as DEVELOPERS.md draws them. An arrow that is not drawn there fails the build. */
@AnalyzeClasses(packages = "hobside", importOptions = ImportOption.DoNotIncludeTests.class)
class ArrowsTest {

    @ArchTest
    static final ArchRule arrows_go_up_the_list_only = layeredArchitecture().consideringOnlyDependenciesInLayers()
            .layer("measure").definedBy("hobside.measure")
            .layer("words").definedBy("hobside.words")
            .layer("food").definedBy("hobside.food")
            .layer("dish").definedBy("hobside.dish")
            .layer("ledger").definedBy("hobside.ledger")
            .layer("advice").definedBy("hobside.advice")
            .layer("guide").definedBy("hobside.guide")
            .layer("talk").definedBy("hobside.talk..")
            .layer("stage").definedBy("hobside.stage..")
            .optionalLayer("practice").definedBy("hobside.practice..")
            .layer("file").definedBy("hobside.file..")
            .layer("screen").definedBy("hobside.screen..")
            .layer("command").definedBy("hobside.command")
            .layer("start").definedBy("hobside")
            .whereLayer("measure").mayNotAccessAnyLayer()
            .whereLayer("words").mayNotAccessAnyLayer()
            .whereLayer("food").mayOnlyAccessLayers("measure")
            .whereLayer("dish").mayOnlyAccessLayers("measure", "words", "food")
            .whereLayer("ledger").mayOnlyAccessLayers("measure", "food", "dish")
            .whereLayer("advice").mayOnlyAccessLayers("measure", "words", "food", "dish", "ledger")
            .whereLayer("guide").mayOnlyAccessLayers("measure", "food", "dish", "ledger")
            .whereLayer("talk").mayOnlyAccessLayers("measure", "words", "food", "dish", "ledger", "advice", "guide")
            .whereLayer("stage").mayOnlyAccessLayers("measure", "words", "food", "dish", "ledger", "advice", "guide", "talk")
            .whereLayer("practice").mayOnlyAccessLayers("measure", "words", "food", "dish", "ledger", "advice", "guide", "talk", "stage")
            .whereLayer("file").mayOnlyAccessLayers("measure", "words", "food", "dish", "ledger", "advice", "guide", "talk", "stage", "practice")
            .whereLayer("screen").mayOnlyBeAccessedByLayers("start")
            .whereLayer("start").mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule only_file_knows_jackson = noClasses().that().resideOutsideOfPackage("hobside.file")
            .should().dependOnClassesThat().resideInAPackage("com.fasterxml..");

    @ArchTest
    static final ArchRule the_kitchen_knows_nothing_of_what_is_brought_in = noClasses().that().resideInAPackage("hobside.file")
            .should().dependOnClassesThat().resideInAPackage("hobside.file.bring..");

    @ArchTest
    static final ArchRule everything_above_file_is_pure = noClasses()
            .that().resideInAnyPackage("hobside.measure", "hobside.words", "hobside.food", "hobside.dish", "hobside.ledger", "hobside.advice", "hobside.guide", "hobside.talk..", "hobside.stage..", "hobside.practice..")
            .should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio..", "java.time..", "java.lang.reflect..", "java.util.concurrent..");

    @ArchTest
    static final ArchRule the_scheduler_knows_nothing_of_the_kitchen = classes().that().resideInAPackage("hobside.stage.order")
            .should().onlyDependOnClassesThat().resideInAnyPackage("hobside.stage.order", "java.lang", "java.util", "java.util.function",
                    "java.util.stream").allowEmptyShould(true);

    @ArchTest
    static final ArchRule plain_words_know_nothing_of_the_kitchen = classes().that().resideInAPackage("hobside.talk.plain")
            .should().onlyDependOnClassesThat().resideInAnyPackage("hobside.talk.plain", "java.lang", "java.util", "java.util.function",
                    "java.util.regex", "java.util.stream");

    @ArchTest
    static final ArchRule screens_do_not_touch_the_disk = noClasses()
            .that().resideInAPackage("hobside.screen..").and().resideOutsideOfPackage("hobside.screen.terminal").and().doNotHaveSimpleName("DiskWork")
            .should().dependOnClassesThat().resideInAPackage("java.nio.file..");
}
