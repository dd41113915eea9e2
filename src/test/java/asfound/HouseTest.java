package asfound;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Data walks through the house once, from left to right: no room knows a later one. */
@AnalyzeClasses(packages = "asfound", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

    private static final String[] ROOMS = {
        "model",
        "recordset",
        "drawing",
        "survey",
        "names",
        "network",
        "isolation",
        "finding",
        "trust",
        "audit",
        "report",
        "command"
    };

    @ArchTest
    static final ArchRule no_package_knows_a_later_one = oneWay();

    @ArchTest
    static final ArchRule nothing_depends_on_the_language_of_the_machine = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .because("the same record set gives the same bytes; a Turkish machine writes 'conf\u0131rmed'");

    private static ArchRule oneWay() {
        var house = layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String room : ROOMS) house = house.layer(room).definedBy("asfound." + room + "..");
        for (int i = 0; i < ROOMS.length; i++) {
            String[] later = java.util.Arrays.copyOfRange(ROOMS, i + 1, ROOMS.length);
            house = later.length == 0
                    ? house.whereLayer(ROOMS[i]).mayNotBeAccessedByAnyLayer()
                    : house.whereLayer(ROOMS[i]).mayOnlyBeAccessedByLayers(later);
        }
        return house.because("a value is read once and then only carried on");
    }
}
