package dev.sunthread;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Controller;

/** Rules of the code that the compiler can't see, each as a sentence. */
class ArchitectureTests {

    private static final Set<String> TIMES =
            Set.of("Instant", "LocalDate", "LocalDateTime", "LocalTime", "OffsetDateTime", "ZonedDateTime", "Year");

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.sunthread");

    @Test
    void entitiesAreNotPublic() {
        check(classes().that().areAnnotatedWith(Entity.class).should().notBePublic());
    }

    @Test
    void repositoriesAreNotPublic() {
        check(classes().that().areAssignableTo(Repository.class).should().notBePublic());
    }

    @Test
    void controllersAreNotPublicAndOnlyInWebPackages() {
        check(classes()
                .that()
                .areMetaAnnotatedWith(Controller.class)
                .should()
                .notBePublic()
                .andShould()
                .resideInAPackage("..web.."));
    }

    @Test
    void onlyTheGenealogyItselfKnowsItsInnerPackages() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("dev.sunthread.genealogy..")
                .or()
                .resideInAPackage("dev.sunthread.genealogy.web..")
                .should()
                .dependOnClassesThat(resideInAPackage("dev.sunthread.genealogy.*..")
                        .and(not(resideInAPackage("dev.sunthread.genealogy.web..")))));
    }

    @Test
    void computationKnowsNeitherSpringNorTheDatabase() {
        check(noClasses()
                .that()
                .resideInAnyPackage(
                        "dev.sunthread.cure.profile..",
                        "dev.sunthread.cure.kinetics..",
                        "dev.sunthread.cure.light..",
                        "dev.sunthread.cure.recipe..",
                        "dev.sunthread.electrical.curve..",
                        "dev.sunthread.electrical.diode..",
                        "dev.sunthread.electrical.translate..",
                        "dev.sunthread.electrical.terms..",
                        "dev.sunthread.kernel..")
                .and()
                .haveSimpleNameNotEndingWith("package-info")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.springframework..", "java.sql..", "jakarta.."));
    }

    @Test
    void nothingAsksForTheTimeWithoutAClock() {
        check(noClasses().should().accessTargetWhere(asksForNowWithoutAClock()));
    }

    private static DescribedPredicate<JavaAccess<?>> asksForNowWithoutAClock() {
        return DescribedPredicate.describe(
                "they ask for now without a clock",
                access -> access.getName().equals("now")
                        && TIMES.contains(access.getTargetOwner().getSimpleName())
                        && access.getTarget().getFullName().endsWith("now()"));
    }

    @Test
    void nothingIsInjectedIntoFields() {
        check(fields().should().notBeAnnotatedWith(Autowired.class));
    }

    @Test
    void entitiesHaveNoSetters() {
        check(methods()
                .that()
                .areDeclaredInClassesThat()
                .areAnnotatedWith(Entity.class)
                .should()
                .haveNameNotMatching("set[A-Z].*"));
    }

    @Test
    void entitiesLieInTheSchemaOfTheirModule() {
        CODE.stream()
                .filter(type -> type.isAnnotatedWith(Entity.class))
                .forEach(
                        type -> assertThat(type.getAnnotationOfType(Table.class).schema())
                                .isEqualTo(type.getPackageName().split("\\.")[2]));
    }

    @Test
    void nothingOfTheGenealogyWritesHistory() {
        check(noClasses()
                .that()
                .resideInAPackage("..genealogy..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("dev.sunthread.ledger.Door"));
    }

    @Test
    void whatScannedTextsMeanIsPureComputation() {
        check(noClasses()
                .that()
                .resideInAnyPackage("..scan.meaning..", "..scan.gs1..", "..scan.message..", "..scan.parse..")
                .should()
                .dependOnClassesThat(resideInAPackage("org.springframework..")
                        .and(not(resideInAPackage("org.springframework.modulith..")))));
    }

    private static void check(ArchRule rule) {
        rule.check(CODE);
    }
}
