package asfound.sample.kestrel;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;

/**
 * The story of Kestrel Wharf Maker Hall, an invented building. Its record set is made from it, and its test asserts it.
 *
 * <p><b>The building.</b> A ropeworks on the quay became a hall of workshops in 2019: wood and metal shops on the ground
 * floor, textile, print, electronics and ceramics on the second, studios and a hall on the third. The utility comes in at
 * 480Y/277 V through the service disconnect SVC-1/S1 to the main switchboard MSB. A solar inverter on the roof, INV-1,
 * backfeeds MSB. HDP feeds the shops and the big machines; T-1 steps down to LDP, which feeds the floors; a generator and
 * the transfer switch ATS-1 keep EDP and, through T-E1, ELP-1 alive. Two offices drew it: Dunnock and Rill, engineers, and
 * Brackwater Electric, who built it. Of RP-1, the roof panel, only a scan of its card is left, and no machine reads it.
 *
 * <p><b>What was wrong from the start.</b> The schedules say that HL-1 is fed from HDP-13; the one-line says MSB F5. On
 * KP-1's schedule the sums do not follow from the rows: a load on phase B was taken out and the sums were not. One entry of
 * LP-1B says MISC, and one of LP-3A says nothing.
 *
 * <p><b>The first modification, September 2021: the shops.</b> While the shop feeders were re-pulled, HP-1A and HP-1B changed
 * places on HDP 1 and 2. The resaw band saw was sold; its breaker, HP-1B 13, feeds nothing. RTU-1 was replaced and its
 * breaker went from 40 to 50 A. LP-1C, the laser room's panel, came back on the breaker labelled LP-1B, LDP 2; nobody has
 * traced the breaker labelled LP-1C, so what feeds LP-1B is not known. An exhaust fan for the laser room went on LP-1A 38, a
 * spare.
 *
 * <p><b>The second modification, March 2024: kitchen, third floor and sun.</b> LDP was rebuilt in a night: LP-2A, LP-2B and
 * LP-3A came back each on another's breaker (7 feeds LP-2B, 8 feeds LP-3A, 13 feeds LP-2A). The kitchen panel ran meanwhile
 * from a spare, LDP 38, and that feed was never taken off. A panel for electric vans, EVP-1, went into the yard on HDP 31, a
 * spare. The makers put a second inverter, INV-2, on the roof by themselves
 * and landed it on a spare of LP-3A, 38-40-42. On the third floor a circuit went in at LP-3A 15, and five entries below it
 * moved down by one row. On LP-2B the lights of rooms 221 and 223 changed breakers, and LP-2A 12 came to feed room 216.
 *
 * <p><b>The survey, autumn 2025.</b> N. Okafor traced the electrical room and the 480 V side, S. Lindqvist the floors: about
 * seven entries in ten. They disagree about LP-2A 22. Okafor could only read the label on MSB F3, so nobody knows what
 * feeds the normal side of ATS-1. EDP's feeder to T-E1 was traced in 2023, before EDP was changed in 2024.
 */
public final class KestrelWharfStory {

    private KestrelWharfStory() {}

    /** What was found where the drawing says something else. */
    record Otherwise(String relation, String found, String kind, String remark) {}

    static final String RECORD_YAML = """
            # What asfound should know about this record set. Every key is optional.
            building: Kestrel Wharf Maker Hall

            # S. Lindqvist's own column names, and what they are called here
            columns:
              Board: panel
              Cct: circuit
              Result: relation
              Serves: found
              Sort: kind
              How: method
              P: poles
              Amps: rating_a
              Where: location
              Who: by
              Day: date
              Remarks: note

            # names that mean one thing
            same:
              - [KP-1, Kitchen panel]

            # the latest modification of each: older observations of it are stale
            modified:
              HDP: 2021-09-18
              HP-1A: 2021-09-18
              HP-1B: 2021-09-18
              LDP: 2024-03-22
              LP-3A: 2024-03-22
              KP-1: 2024-03-22
              EDP: 2024-03-25

            # named first wherever supply is lost
            life_safety: [EDP, ELP-1]

            # how the traced circuits were chosen: random or targeted
            chosen: targeted
            """;

    /** Okafor's rows on feeders and equipment, in the order walked. */
    static final String FEEDERS_TRACED = """
            SVC-1,S1,feeds,MSB,switchboard,visual,3,1200,480Y/277,,,Service vault,N. Okafor,2025-10-06,With the utility's crew,
            MSB,F1,feeds,HDP,panel,opened,3,400,480Y/277,,500 kcmil Cu,Elec rm 106,N. Okafor,2025-10-06,,
            MSB,F2,feeds,T-1,transformer,opened,3,350,480,,500 kcmil Cu,Elec rm 106,N. Okafor,2025-10-06,,
            MSB,F3,feeds,ATS-1,transfer switch,label,3,200,480Y/277,,,Elec rm 106,N. Okafor,2025-10-06,Label read only: could not be opened with the building occupied,IMG_0107.jpg
            MSB,F6,fed by,INV-1,inverter,opened,3,80,480,,#4 Cu,Elec rm 106,N. Okafor,2025-10-06,,
            INV-1,D1,feeds,MSB,switchboard,visual,3,80,480,,#4 Cu,Roof east,N. Okafor,2025-10-06,,
            GEN-1,G1,feeds,ATS-1,transfer switch,visual,3,200,480Y/277,,3/0 Cu,Generator yard,N. Okafor,2025-10-07,,
            ATS-1,,feeds,EDP,panel,visual,,,,,3/0 Cu,Elec rm 106,N. Okafor,2025-10-07,,
            T-1,,feeds,LDP,panel,visual,,,208Y/120,,,Elec rm 106,N. Okafor,2025-10-07,,
            T-E1,,feeds,ELP-1,panel,visual,,,208Y/120,,1/0 Cu,Elec rm 106,N. Okafor,2025-10-07,,
            EDP,1-3-5,feeds,T-E1,transformer,tone,3,70,480,,#4 Cu,Elec rm 106,P. Amadi,2023-05-11,From the survey of 2023,
            HDP,1-3-5,feeds,HP-1B,panel,opened,3,225,480Y/277,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-08,Label says HP-1A,IMG_0121.jpg
            HDP,2-4-6,feeds,HP1A,panel,opened,3,225,480Y/277,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-08,Label says HP-1B,IMG_0122.jpg
            HDP,7-9-11,feeds,DC-1,motor,opened,3,70,480,,#4 Cu,Elec rm 106,N. Okafor,2025-10-08,,
            HDP,8-10-12,feeds,FE-1,motor,opened,3,70,480,,#4 Cu,Elec rm 106,N. Okafor,2025-10-08,,
            HDP,13-15-17,feeds,HL-1,panel,opened,3,100,480Y/277,,#3 Cu,Elec rm 106,N. Okafor,2025-10-08,,
            HDP,14-16-18,feeds,AC-1,motor,label,3,60,480,,,Elec rm 106,N. Okafor,2025-10-08,Label read only,
            HDP,19-21-23,feeds,RTU-1,load,tone,3,50,480,,#8 Cu,Elec rm 106,N. Okafor,2025-10-08,Breaker is 50 A,IMG_0125.jpg
            HDP,20-22-24,feeds,RTU-2,load,tone,3,40,480,,#8 Cu,Elec rm 106,N. Okafor,2025-10-08,,
            HDP,25-27-29,feeds,RP-1,panel,opened,3,60,480Y/277,,#6 Cu,Elec rm 106,N. Okafor,2025-10-08,,
            HDP,31-33-35,feeds,EVP-1,panel,opened,3,100,480Y/277,,#3 Cu,Elec rm 106,N. Okafor,2025-10-08,A panel in the yard for vans. Spare by the schedule,IMG_0128.jpg
            HDP,26-28-30,nothing,,,opened,3,60,,,,Elec rm 106,N. Okafor,2025-10-08,,
            LDP,1-3-5,feeds,LP-1A,panel,opened,3,225,208Y/120,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,2-4-6,feeds,LP-1C,panel,opened,3,225,208Y/120,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-09,Laser room 109 went dark. Label says LP-1B,IMG_0133.jpg
            LDP,7-9-11,feeds,LP2B,panel,opened,3,200,208Y/120,,3/0 Cu,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,8-10-12,feeds,LP-3A,panel,opened,3,200,208Y/120,,3/0 Cu,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,13-15-17,feeds,Panel LP 2A,panel,opened,3,200,208Y/120,,3/0 Cu,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,14-16-18,feeds,KP-1,panel,opened,3,225,208Y/120,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-09,KP-1 stayed live: see 38,
                        LDP,38-40-42,feeds,Kitchen panel,panel,opened,3,225,208Y/120,,4/0 Cu,Elec rm 106,N. Okafor,2025-10-09,KP-1 dead only with 14 and 38 open,IMG_0140.jpg
            LDP,25-27,feeds,EV charger EV-1 dock,,opened,2,50,,,,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,26-28,feeds,EV charger EV-2 dock,,opened,2,50,,,,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,30-32,feeds,Laser cutter LZ-1 room 109,,tone,2,40,,,,Elec rm 106,N. Okafor,2025-10-09,,
            LDP,34-36,feeds,Laser cutter LZ-2 room 109,,tone,2,40,,,,Elec rm 106,N. Okafor,2025-10-09,,
            """;

    /** Besides her walk along the panels, Lindqvist looked into Okafor's notes on two circuits. */
    static final String LINDQVIST_BESIDES = """
            LP2A;22;nothing;;;opened;1;20;CLOSET 209;S. Lindqvist;2025-11-19;Second visit: nothing went off
            LP-3A;33;feeds;Plugs closet 309;;label;1;20;CLOSET 309;S. Lindqvist;2025-11-19;Label read only
            """;

    /** How Lindqvist writes some of the names. */
    static final Map<String, String> LINDQVIST_WRITES =
            Map.of("LP-1B", "Panel LP1B", "LP-2A", "LP2A", "LP-2B", "LP 2-B", "KP-1", "Kitchen panel");

    static final Map<String, LocalDate> SURVEYED = Map.ofEntries(
            Map.entry("HP-1A", LocalDate.of(2025, 10, 13)),
            Map.entry("HP-1B", LocalDate.of(2025, 10, 13)),
            Map.entry("HL-1", LocalDate.of(2025, 10, 14)),
            Map.entry("EDP", LocalDate.of(2025, 10, 14)),
            Map.entry("LP-1A", LocalDate.of(2025, 11, 3)),
            Map.entry("LP-1B", LocalDate.of(2025, 11, 3)),
            Map.entry("LP-2A", LocalDate.of(2025, 11, 4)),
            Map.entry("LP-2B", LocalDate.of(2025, 11, 5)),
            Map.entry("LP-3A", LocalDate.of(2025, 11, 6)),
            Map.entry("KP-1", LocalDate.of(2025, 11, 7)),
            Map.entry("ELP-1", LocalDate.of(2025, 11, 7)));

    /** Panel and lowest position to what was found there. */
    static final Map<String, Otherwise> OTHERWISE = Map.ofEntries(
            Map.entry("HP-1B/13", new Otherwise("nothing", "", "", "")),
            Map.entry("LP-1A/38", new Otherwise("feeds", "Exhaust fan EF-4 laser room 109", "", "Spare by the card")),
            Map.entry("LP-2A/12", new Otherwise("feeds", "Plugs rm 216", "", "")),
            Map.entry("LP-2A/22", new Otherwise("feeds", "Plugs rm 208 south wall", "", "")),
            Map.entry("LP-2B/5", new Otherwise("feeds", "Lts rm 223", "", "")),
            Map.entry("LP-2B/7", new Otherwise("feeds", "Lts rm 221", "", "")),
            Map.entry("LP-3A/17", new Otherwise("feeds", "Plugs rm 302", "", "")),
            Map.entry("LP-3A/19", new Otherwise("feeds", "Plugs rm 304", "", "")),
            Map.entry("LP-3A/21", new Otherwise("feeds", "Plugs rm 306", "", "")),
            Map.entry("LP-3A/23", new Otherwise("feeds", "Plugs rm 308", "", "")),
            Map.entry("LP-3A/25", new Otherwise("feeds", "Plugs rm 310", "", "Spare by the card")),
            Map.entry(
                    "LP-3A/38",
                    new Otherwise("fed by", "INV-2", "inverter", "Second solar inverter. Live with LDP open")));

    /** Entries that the even spread would take and that nobody traced. */
    static final Set<String> NOT_TRACED = Set.of("EDP/1", "LP-3A/15", "LP-3A/30", "LP-1B/17", "LP-1B/27", "LP-3A/33");
}
