package asfound;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;

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

    private static final String[] READING_ROOMS = {
        "text", "phrase", "header", "spine", "column", "table", "row", "device", "doubt", "sheet", "cell", "pdf"
    };

    @ArchTest
    static final ArchRule no_package_knows_a_later_one = oneWay("asfound.", ROOMS);

    @ArchTest
    static final ArchRule no_step_of_reading_a_schedule_knows_a_later_one =
            oneWay("asfound.drawing.schedule.", READING_ROOMS);

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

    private static ArchRule oneWay(String within, String[] rooms) {
        var house = layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String room : rooms) house = house.layer(room).definedBy(within + room + "..");
        for (int i = 0; i < rooms.length; i++) {
            String[] later = Arrays.copyOfRange(rooms, i + 1, rooms.length);
            house = later.length == 0
                    ? house.whereLayer(rooms[i]).mayNotBeAccessedByAnyLayer()
                    : house.whereLayer(rooms[i]).mayOnlyBeAccessedByLayers(later);
        }
        return house.because("a value is read once and then only carried on");
    }
}
