package asfound;

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
