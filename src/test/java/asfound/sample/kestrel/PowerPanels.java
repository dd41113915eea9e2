package asfound.sample.kestrel;

/** The directories of the 480Y/277 V side and of the two distribution panels, as drawn in 2019. */
final class PowerPanels {

    private PowerPanels() {}

    static final String HDP = """
            HDP | ELEC RM 106 | MSB-F1 | 480Y/277 | 400 | MLO | 35 | SURFACE | 42
            1  225/3 @HP-1A PANEL HP-1A
            2  225/3 @HP-1B PANEL HP-1B
            7  70/3  22440 DUST COLLECTOR DC-1
            8  70/3  28260 FREIGHT ELEVATOR FE-1
            13 100/3 @HL-1  PANEL HL-1
            14 60/3  22440 AIR COMPRESSOR AC-1
            19 40/3  16620 ROOFTOP UNIT RTU-1
            20 40/3  16620 ROOFTOP UNIT RTU-2
            25 60/3  @RP-1  PANEL RP-1
            26 60/3  -     SPARE
            31 100/3 -     SPARE
            32 -     -     SPACE
            34 -     -     SPACE
            36 -     -     SPACE
            37 -     -     SPACE
            38 -     -     SPACE
            39 -     -     SPACE
            40 -     -     SPACE
            41 -     -     SPACE
            42 -     -     SPACE
            """;

    static final String HP_1A = """
            HP-1A | RM 104 METAL SHOP | HDP-1 | 480Y/277 | 225 | MLO | 25 | SURFACE | 42
            1  30/3  9150  ENGINE LATHE EL-1 RM 104
            2  30/3  9150  ENGINE LATHE EL-2 RM 104
            7  20/3  6330  VERTICAL MILL VM-1 RM 104
            8  20/3  6330  VERTICAL MILL VM-2 RM 104
            13 15/3  3990  DRILL PRESS PR-1 RM 104
            14 15/3  3990  DRILL PRESS PR-2 RM 104
            19 50/3  17460 CNC MILL CM-2 RM 104
            20 35/3  11640 WELDER WR-1 RM 105
            25 35/3  11640 SURFACE GRINDER SG-1 RM 104
            26 35/3  11640 WELDER WR-2 RM 105
            31 20/1  3000  UNIT HEATER UH-1 RM 104
            32 20/3  4200  WELDING FUME FAN WF-1 RM 105
            33 20/1  3000  UNIT HEATER UH-2 RM 104
            35 20/1  3000  UNIT HEATER UH-3 RM 105
            37 30/3  -     SPARE
            38 -     -     SPACE
            40 -     -     SPACE
            42 -     -     SPACE
            """;

    static final String HP_1B = """
            HP-1B | RM 103 WOOD SHOP | HDP-2 | 480Y/277 | 225 | MLO | 25 | SURFACE | 30
            1  30/3  9150  THICKNESS PLANER TP-1 RM 103
            2  30/3  9150  JOINTER JN-1 RM 103
            7  50/3  17460 CNC ROUTER CN-1 RM 103
            8  20/3  6330  WIDE BELT SANDER WB-1 RM 103
            13 25/3  6330  RESAW BAND SAW BS-2 RM 103
            14 20/3  3990  SHAPER SH-1 RM 103
            19 20/1  3000  UNIT HEATER UH-4 RM 103
            20 20/3  3990  PANEL SAW PS-1 RM 103
            21 20/1  3000  UNIT HEATER UH-5 RM 103
            23 20/1  3000  UNIT HEATER UH-6 RM 107
            25 30/3  -     SPARE
            26 20/1  -     SPARE
            28 -     -     SPACE
            30 -     -     SPACE
            """;

    static final String HL_1 = """
            HL-1 | ELEC RM 106 | HDP-13 | 480Y/277 | 100 | MLO | 25 | SURFACE | 30
            1  20/1  2400  LTG RM 103 WOOD SHOP ROW 1
            2  20/1  2400  LTG RM 104 METAL SHOP ROW 1
            3  20/1  2400  LTG RM 103 WOOD SHOP ROW 2
            4  20/1  2400  LTG RM 104 METAL SHOP ROW 2
            5  20/1  2400  LTG RM 103 WOOD SHOP ROW 3
            6  20/1  2400  LTG RM 104 METAL SHOP ROW 3
            7  20/1  2000  LTG RM 105 WELDING BAY ROW 1
            8  20/1  2000  LTG RM 105 WELDING BAY ROW 2
            9  20/1  1200  LTG EXTERIOR WHARF SIDE POLES
            10 20/1  1200  LTG EXTERIOR STREET SIDE POLES
            11 20/1  900   LTG EXTERIOR DOCK CANOPY
            12 20/1  900   LTG EXTERIOR WALL PACKS
            13 20/1  1100  LTG STAIR 1
            14 20/1  1100  LTG STAIR 2
            15 20/1  1800  LTG ATRIUM HIGH BAY EAST
            16 20/1  1800  LTG ATRIUM HIGH BAY WEST
            17 20/1  800   LTG RM 109 LASER ROOM
            18 20/1  700   LTG GALLERY 200
            19 20/1  1500  LTG ROOF MECHANICAL YARD
            20 20/1  700   LTG GALLERY 300
            21 20/1  600   LIGHTING CONTACTOR LC-1
            22 20/1  -     SPARE
            23 20/1  -     SPARE
            24 20/1  -     SPARE
            25 20/1  -     SPARE
            26 -     -     SPACE
            27 -     -     SPACE
            28 -     -     SPACE
            29 -     -     SPACE
            30 -     -     SPACE
            """;

    static final String RP_1 = """
            RP-1 | ROOF PENTHOUSE 401 | HDP-25 | 480Y/277 | 100 | MLO | 14 | SURFACE | 18
            1  20/3  4200  EXHAUST FAN EF-10
            2  20/3  4200  EXHAUST FAN EF-11
            7  15/3  2100  EXHAUST FAN EF-12
            8  20/1  2400  UNIT HEATER UH-7 RM 401
            10 20/1  600   LTG PENTHOUSE 401
            12 20/1  -     SPARE
            13 15/3  3600  MAKE-UP AIR FAN MAF-1
            14 -     -     SPACE
            16 -     -     SPACE
            18 -     -     SPACE
            """;

    static final String LDP = """
            LDP | ELEC RM 106 | T-1 | 208Y/120 | 800 | 800 | 42 | SURFACE | 42
            1  225/3 @LP-1A PANEL LP-1A
            2  225/3 @LP-1B PANEL LP-1B
            7  200/3 @LP-2A PANEL LP-2A
            8  200/3 @LP-2B PANEL LP-2B
            13 200/3 @LP-3A PANEL LP-3A
            14 225/3 @KP-1  PANEL KP-1
            19 60/3  15000 WATER HEATER WH-1 RM 111
            20 225/3 12000 PANEL LP-1C
            25 50/2  7680  EV CHARGER EV-1 DOCK
            26 50/2  7680  EV CHARGER EV-2 DOCK
            29 30/3  -     SURGE PROTECTIVE DEVICE SPD-1
            30 40/2  6240  LASER CUTTER LZ-1 RM 109
            34 40/2  6240  LASER CUTTER LZ-2 RM 109
            35 20/1  1200  LASER CHILLER CH-1 RM 109
            37 20/1  800   LASER EXHAUST FAN EF-3 RM 109
            38 225/3 -     SPARE
            39 -     -     SPACE
            41 -     -     SPACE
            """;

    static final String EDP = """
            EDP | ELEC RM 106 | ATS-1 | 480Y/277 | 225 | 200 | 25 | SURFACE | 30
            1  70/3  @ELP-1 TRANSFORMER T-E1
            2  35/3  11640 SMOKE EXHAUST FAN SEF-1
            7  20/1  1800  EGRESS LTG GROUND FLOOR EAST
            8  35/3  11640 STAIR PRESSURIZATION FAN SPF-1
            9  20/1  1800  EGRESS LTG GROUND FLOOR WEST
            11 20/1  1500  EGRESS LTG SECOND FLOOR
            13 20/1  1500  EGRESS LTG THIRD FLOOR
            14 20/1  900   EGRESS LTG STAIR 1
            15 20/1  900   EGRESS LTG EXTERIOR DOORS
            16 20/1  900   EGRESS LTG STAIR 2
            17 20/3  4200  ELEVATOR MACHINE ROOM COOLING
            18 20/1  700   EGRESS LTG ELEC RM 106
            20 20/1  -     SPARE
            22 20/1  -     SPARE
            23 20/1  -     SPARE
            24 -     -     SPACE
            25 -     -     SPACE
            26 -     -     SPACE
            27 -     -     SPACE
            28 -     -     SPACE
            29 -     -     SPACE
            30 -     -     SPACE
            """;
}
