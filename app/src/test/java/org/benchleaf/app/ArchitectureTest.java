package org.benchleaf.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;

/// The arrows of the house: data flows one way, and engines stay in their rooms.
@AnalyzeClasses(packages = "org.benchleaf", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<String> ENGINES = List.of(
            "org.apache.lucene",
            "java.sql",
            "javax.sql",
            "org.jdbi",
            "org.sqlite",
            "org.postgresql",
            "com.zaxxer",
            "org.openpdf",
            "org.xhtmlrenderer",
            "freemarker",
            "com.google.zxing",
            "de.siegmar",
            "org.dhatim",
            "io.javalin",
            "org.bouncycastle",
            "com.fasterxml");

    /// Packages whose classes are public for the other packages of their own module.
    private static final String[] INNER_ROOMS = {
        "org.benchleaf.render.pdf..",
        "org.benchleaf.render.view..",
        "org.benchleaf.render.figure..",
        "org.benchleaf.render.code..",
        "org.benchleaf.catalog.store.."
    };

    @ArchTest
    static final ArchRule dataFlowsOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.benchleaf..")
            .layer("shared")
            .definedBy("org.benchleaf.shared..")
            .layer("catalog")
            .definedBy("org.benchleaf.catalog..")
            .layer("search")
            .definedBy("org.benchleaf.search..")
            .layer("content")
            .definedBy("org.benchleaf.content..")
            .layer("render")
            .definedBy("org.benchleaf.render..")
            .layer("demo")
            .definedBy("org.benchleaf.demo..")
            .layer("app")
            .definedBy("org.benchleaf.app..")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("search")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("catalog")
            .mayOnlyBeAccessedByLayers("search", "app")
            .whereLayer("render")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("content")
            .mayOnlyBeAccessedByLayers("render", "app")
            .whereLayer("demo")
            .mayOnlyBeAccessedByLayers("app")
            .because("render never sees the catalog, the catalog never calls search, and only app knows all");

    @ArchTest
    static final ArchRule sharedKnowsNothing = noClasses()
            .that()
            .resideInAPackage("org.benchleaf.shared..")
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages("org.benchleaf.shared..", "java..", "org.jspecify..")
            .because("values depend on nothing but annotations");

    @ArchTest
    static final ArchRule enginesStayOutOfPublicSignatures = noMethods()
            .that(arePublicInPublicClasses())
            .should(new com.tngtech.archunit.lang.ArchCondition<JavaMethod>("name a type of an engine") {
                @Override
                public void check(JavaMethod method, com.tngtech.archunit.lang.ConditionEvents events) {
                    List<JavaClass> named = Stream.concat(
                                    Stream.of(method.getRawReturnType()), method.getRawParameterTypes().stream())
                            .filter(type -> ENGINES.stream().anyMatch(type.getPackageName()::startsWith))
                            .toList();
                    events.add(new com.tngtech.archunit.lang.SimpleConditionEvent(
                            method, !named.isEmpty(), method.getFullName() + " names " + named));
                }
            })
            .because("an engine can be changed only while nobody outside its module sees it");

    @ArchTest
    static final ArchRule innerRoomsStayClosed = noClasses()
            .that()
            .resideInAPackage("org.benchleaf.app..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(INNER_ROOMS)
            .because("these packages are public to their own module only");

    @ArchTest
    static final ArchRule onlyTheRouterKnowsTheWebFramework = noClasses()
            .that()
            .resideOutsideOfPackage("org.benchleaf.app.web.route..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..")
            .because("an address that is not in the table of routes would obey no rule");

    @ArchTest
    static final ArchRule oneClassRegistersRoutes = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.benchleaf.app.web.route.Router")
            .should()
            .dependOnClassesThat()
            .haveNameMatching("io\\.javalin\\.(?:Javalin|config\\..*|router\\..*)")
            .because("an address that is not in the table of routes would obey no rule");

    @ArchTest
    static final ArchRule nothingStaticChanges = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("settings are read once and nothing is shared behind anybody's back");

    @ArchTest
    static final ArchRule onlyMainEndsTheProgram = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.benchleaf.app.Main")
            .should()
            .callMethod(System.class, "exit", int.class)
            .because("a service that ends the program takes the server with it");

    private static DescribedPredicate<JavaMethod> arePublicInPublicClasses() {
        return new DescribedPredicate<>("are public in a public class of a module other than app") {
            @Override
            public boolean test(JavaMethod method) {
                return method.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC)
                        && method.getOwner()
                                .getModifiers()
                                .contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC)
                        && !method.getOwner().getPackageName().startsWith("org.benchleaf.app")
                        && java.util.Arrays.stream(INNER_ROOMS)
                                .noneMatch(room ->
                                        method.getOwner().getPackageName().startsWith(room.replace("..", "")));
            }
        };
    }
}
